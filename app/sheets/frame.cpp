#include "app/sheets/frame.h"

#include <algorithm>

namespace gs::sheets {

using look::Box;
using look::Icon;
using mirror::Role;
using parts::Ui;
namespace type = look::type;

namespace {

void open_check(Ui& ui, const Check& check) {
  View& view = ui.session.view;
  view.panel = Panel::check;
  view.check = &check;
  view.check_given.assign(check.inputs.size(), Value{});
  view.input.reset();
  view.along.reset();
  ui.hand.scroll_to("check:scroll", 0);
  ui.wake_at(ui.now_s);
}

void head(Ui& ui, const LinkSheet& sheet) {
  const float top = ui.y, width = ui.w;
  // Why stands beside the title, or below it where that would break the link's name
  constexpr float kWhy = 100;
  const std::string_view title = link_name(sheet.link);
  const bool beside_title =
      !look::Pen::breaks_word(ui.pen.lines(title, width - kWhy, look::Face::bold, type::kValue));
  if (sheet.headline != R::count && beside_title) ui.w -= kWhy;
  ui.title(title, "sheet");
  ui.w = width;
  if (sheet.headline == R::count) return;
  const Box why_box = beside_title ? Box{ui.right() - 92, top - 4, 92, 48} : ui.take(48);
  const std::string name = lower_first(std::string(reading(sheet.headline).name));
  if (ui.button_in(why_box, "why:headline", "Why", parts::Weight::plain, Icon::why, type::kBody, true,
                   "Why this " + name)) {
    ui.session.view.panel = Panel::why;
    ui.session.view.why = sheet.headline;
    ui.wake_at(ui.now_s);
  }
  ui.gap(6);
  // beside the headline stand the first two readings in short
  std::string beside, spoken;
  int told = 0;
  for (const R id : sheet.readings) {
    const Figure& figure = ui.session.outlook()[id];
    if (figure.state == State::unknown || told == 2) continue;
    const Reading& row = reading(id);
    const std::string words = told == 0 ? std::string(row.name) : ", " + lower_first(std::string(row.name));
    beside += words + " " + say_reading(id, figure.value, ui.session.style());
    spoken += words + " " + speak_reading(id, figure.value, ui.session.style());
    ++told;
  }
  ui.headline(sheet.headline, beside, spoken);
}

void figures(Ui& ui, const LinkSheet& sheet) {
  head(ui, sheet);
  if (sheet.drawing) sheet.drawing(ui);
  ui.rule();
  for (const R id : sheet.readings) ui.reading_row(id);
  if (sheet.below) {
    ui.gap();
    sheet.below(ui);
  }
  if (sheet.link == Link::antenna || sheet.link == Link::contacts || sheet.link == Link::safety) {
    ui.gap();
    ui.may_transmit();
  }
  if (!sheet.cautions_at_hand) ui.cautions(sheet.link);
  if (sheet.headline == R::count && sheet.readings.empty())
    ui.paragraph("Not known. This link joins later; the others do not wait for it.", "sheet:none", ui.theme.ink2);
}

/// A choice with many options opens a list in the place of the levers; the others unfold where they stand.
void lever_or_list(Ui& ui, L id) {
  const Lever& row = lever(id);
  if (row.kind == Kind::text) return ui.text_lever(id);
  if (row.applies && !row.applies(ui.session.plan())) return;
  if (row.kind != Kind::choice || row.options().size() <= 6) return ui.lever_row(id);
  const std::string value = value_text(ui.session.plan(), id, ui.session.style());
  const bool open = ui.session.view.panel == Panel::choices && ui.session.view.lever == id;
  if (ui.row(std::string(row.key) + ":row", row.name, value, value, open ? 1 : 0)) {
    ui.session.view.panel = Panel::choices;
    ui.session.view.lever = id;
    ui.session.view.sought.clear();
    ui.hand.scroll_to("choices", 0);
    ui.wake_at(ui.now_s);
  }
}

std::string turn_question(const Ui& ui, const LinkSheet& sheet) {
  return sheet.turn.question ? sheet.turn.question(ui.session) : std::string{};
}

void turn_offer(Ui& ui, const LinkSheet& sheet) {
  const std::string question = turn_question(ui, sheet);
  if (question.empty()) return;
  if (ui.button("turn:open", question, parts::Weight::main, Icon::turn)) {
    ui.session.view.turn = sheet.turn.turn(ui.session);
    ui.session.view.panel = Panel::turned;
    ui.hand.scroll_to("sheet", 0);
    ui.hand.scroll_to("controls", 0);
    ui.wake_at(ui.now_s);
  }
  ui.gap();
}

/// Where the control that limits the plan cheapest lies open, the value that would do.
void offer_remedy(Ui& ui, L id) {
  const R binds = verdict(ui.session.plan(), ui.session.outlook(), ui.session.style()).binds;
  if (binds == R::count) return;
  // while anything is dragged the offer stays as it stood: seeking takes longer than all else in a frame
  const std::optional<Remedy>& found = ui.hand.dragging() ? ui.session.last_remedy() : ui.session.remedy(binds);
  if (!found || found->lever != id) return;
  const Remedy remedy = *found;
  const std::string words = remedy.words + (remedy.gains.empty() ? "" : ", " + remedy.gains);
  if (ui.button("remedy:set", words, parts::Weight::plain)) {
    ui.session.set_all({{remedy.lever, remedy.value}}, remedy.words);
    ui.wake_at(ui.now_s);
  }
  ui.gap();
}

void levers(Ui& ui, const LinkSheet& sheet, bool with_slider, bool turn_here) {
  if (with_slider && sheet.slider != L::count) {
    ui.slider(sheet.slider);
    ui.gap();
  }
  if (sheet.slider != L::count) offer_remedy(ui, sheet.slider);
  if (sheet.cautions_at_hand) {
    ui.cautions(sheet.link);
    ui.gap();
  }
  if (sheet.at_hand) sheet.at_hand(ui);
  for (const L id : sheet.levers) {
    lever_or_list(ui, id);
    if (ui.session.view.unfolded == std::string(lever(id).key) + ":row") offer_remedy(ui, id);
  }
  ui.gap();
  if (turn_here) turn_offer(ui, sheet);
  for (const Check& check : checks()) {
    if (check.link != sheet.link) continue;
    if (ui.button("open:" + std::string(check.key), check.question, parts::Weight::plain, Icon::why))
      open_check(ui, check);
    ui.gap();
  }
}

void choices(Ui& ui) {
  const bool low = ui.low();
  if (low) ui.begin_scroll("choices", {ui.x, ui.y, ui.w, ui.surface.bottom() - ui.y - 8});
  const std::string name(lever(ui.session.view.lever).name);
  const std::vector<std::string_view> lines = ui.pen.lines(name, ui.w - 56, look::Face::bold, type::kLead);
  const float step = type::line_height(type::kLead);
  const Box head_box = ui.take(std::max(48.0F, float(lines.size()) * step + 6));
  float base = look::Pen::centred(head_box.mid_y(), type::kLead) - float(lines.size() - 1) * step / 2;
  for (const std::string_view line : lines) {
    ui.pen.text(head_box.x, base, line, look::Face::bold, type::kLead, ui.theme.ink);
    base += step;
  }
  ui.node(Role::heading, "choices:title", name, head_box).level = 2;
  if (ui.icon_button({head_box.right() - 48, head_box.y, 48, 48}, "choices:close", "Close", Icon::close,
                     ui.theme.ink)) {
    ui.session.view.panel = Panel::none;
    ui.wake_at(ui.now_s);
  }
  if (!low) ui.begin_scroll("choices", {ui.x, ui.y, ui.w, ui.surface.bottom() - ui.y - 8});
  ui.column(ui.x, ui.w - 8, ui.y);  // beside the mark of where one is
  ui.lever_list(ui.session.view.lever);
  ui.end_scroll();
}

/// The open panel fills the column it is given.
void panel_here(Ui& ui) {
  switch (ui.session.view.panel) {
    case Panel::check:
      return ui.check_panel();
    case Panel::why:
      return ui.why_panel();
    case Panel::keypad:
      return ui.session.view.lever == L::count ? ui.turn_keypad() : ui.keypad();
    case Panel::choices:
      return choices(ui);
    case Panel::turned:
      ui.turn_target();
      ui.gap();
      return ui.turn_choices();
    case Panel::none:
    case Panel::pin:
    case Panel::forgotten:
      return;
  }
}

float foot_height(const Ui& ui, const LinkSheet& sheet) {
  if (sheet.slider != L::count) return ui.slider_height(sheet.slider) + 16;
  const float height = sheet.foot.height ? sheet.foot.height(ui) : 0;
  return height > 0 ? height + 16 : 0;
}

/// One column: on a phone the open slider is fixed at the foot, everything else scrolls above it.
void one_column(Ui& ui, const LinkSheet& sheet, Box area) {
  const Panel panel = ui.session.view.panel;
  ui.column(area.x, area.w, area.y);
  const float foot_h = ui.phone() && !ui.low() && panel != Panel::turned ? foot_height(ui, sheet) : 0.0F;
  const bool foot = foot_h > 0, slides = foot && sheet.slider != L::count;
  ui.begin_scroll("sheet", {ui.surface.x, area.y, ui.surface.w, area.h - foot_h});
  if (ui.low()) ui.chain_strip(sheet.link);  // with little height nothing stands still
  ui.column(area.x, area.w, ui.y + (ui.low() ? 12.0F : 4.0F));
  if (panel == Panel::turned) {
    ui.turn_target();
    ui.gap();
    ui.turn_answers();
    ui.gap();
    ui.turn_choices();
    ui.gap(16);
    ui.end_scroll();
    return;
  }
  figures(ui, sheet);
  ui.gap(16);
  if (panel == Panel::keypad || panel == Panel::choices) {
    panel_here(ui);
  } else {
    levers(ui, sheet, !slides, true);
  }
  ui.gap(16);
  ui.end_scroll();
  if (!foot) return;
  const float top = ui.surface.bottom() - foot_h;
  ui.pen.line({ui.surface.x, top}, {ui.surface.right(), top}, ui.theme.ink, look::stroke::kRule);
  ui.column(area.x, area.w, top + 8);
  slides ? ui.slider(sheet.slider) : sheet.foot.draw(ui);
}

void two_columns(Ui& ui, const LinkSheet& sheet, Box area) {
  const Panel panel = ui.session.view.panel;
  constexpr float kGutter = 30, kScrollMark = 14;
  const float hand_w = ui.layout == look::Layout::wide ? 400 : std::min(368.0F, area.w * 0.42F);
  const float draw_w = area.w - hand_w - kGutter;
  const bool left_hand = ui.session.settings.left_hand;
  const float draw_x = left_hand ? area.x + hand_w + kGutter : area.x;
  const float hand_x = left_hand ? area.x : area.right() - hand_w;
  if (panel == Panel::why) {
    ui.column(draw_x, draw_w, area.y);
    panel_here(ui);
  } else {
    ui.begin_scroll("sheet", {draw_x, area.y, draw_w, area.h});
    ui.column(draw_x, draw_w - kScrollMark, ui.y + 8);
    if (panel == Panel::turned || (panel == Panel::keypad && ui.session.view.lever == L::count)) {
      ui.turn_answers();
    } else {
      figures(ui, sheet);
    }
    ui.gap(16);
    ui.end_scroll();
  }
  if (panel == Panel::keypad || panel == Panel::choices) {
    ui.column(hand_x, hand_w, area.y);
    panel_here(ui);
    return;
  }
  // the sheet's question turned round stands at the foot of the controls
  const bool asks = panel != Panel::turned && !turn_question(ui, sheet).empty();
  const float asks_h = asks ? 72.0F : 0.0F;
  ui.begin_scroll("controls", {hand_x, area.y, hand_w, area.h - asks_h});
  ui.column(hand_x, hand_w - kScrollMark, ui.y);
  if (panel == Panel::turned) {
    panel_here(ui);
  } else {
    levers(ui, sheet, true, false);
  }
  ui.gap(16);
  ui.end_scroll();
  if (!asks) return;
  ui.column(hand_x, hand_w - kScrollMark, area.bottom() - asks_h + 8);
  turn_offer(ui, sheet);
}

}  // namespace

void link_sheet(Ui& ui, const LinkSheet& sheet) {
  const Panel panel = ui.session.view.panel;
  const bool on_side = ui.layout == look::Layout::on_side;
  const bool narrow = ui.phone() || ui.layout == look::Layout::portrait;
  const bool typing = panel == Panel::keypad || panel == Panel::choices;
  const bool alone = panel == Panel::check || (panel == Panel::why && narrow) || (typing && ui.phone());
  // with little height the chain scrolls with the sheet, and gives way to a panel
  if (!ui.low()) ui.chain_strip(sheet.link);
  const Box area{ui.surface.x + ui.margin(), ui.y + 4, ui.surface.w - 2 * ui.margin(),
                 ui.surface.bottom() - ui.y - 4};
  ui.open_group(Role::main, "main", std::string(link_name(sheet.link)),
                {ui.surface.x, area.y, ui.surface.w, area.h});
  if (panel == Panel::keypad && (on_side || ui.phone())) {
    ui.begin_scroll("keypad:scroll", {ui.surface.x, area.y, ui.surface.w, area.h});
    ui.column(area.x, area.w, ui.y);
    panel_here(ui);
    ui.gap(8);
    ui.end_scroll();
  } else if (alone) {
    ui.column(area.x, area.w, area.y);
    panel_here(ui);
  } else if (narrow) {
    one_column(ui, sheet, area);
  } else {
    two_columns(ui, sheet, area);
  }
  ui.close_group();
}

}  // namespace gs::sheets
