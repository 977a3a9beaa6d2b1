#include "app/sheets/sheets.h"

namespace gs::sheets {

using look::Box;
using look::Icon;
using mirror::Role;
using parts::Ui;
namespace space = look::space;
namespace type = look::type;

namespace {

/// Panels take the place of what they answer, the chain stays.
void open_check(Ui& ui, std::string_view key) {
  View& view = ui.session.view;
  view.panel = Panel::check;
  view.check = find_check(key);
  view.check_given.assign(view.check->inputs.size(), Value{});
  ui.hand.scroll_to("check:scroll", 0);
  ui.wake_at(ui.now_s);
}

void sheet_head(Ui& ui) {
  const Session& session = ui.session;
  const Figure& arrives = session.outlook()[R::feedline_arrives_pct];
  const Figure& loss = session.outlook()[R::feedline_total_loss_db];
  const Figure& weight = session.outlook()[R::feedline_weight_g];
  const float top = ui.y;
  ui.title("Feed line", "sheet");
  const Box why{ui.right() - 92, top - 4, 92, 48};
  if (ui.button_in(why, "why:headline", "Why", parts::Weight::plain, Icon::why, type::kBody, true,
                   "Why this power to antenna")) {
    ui.session.view.panel = Panel::why;
    ui.session.view.why = R::feedline_power_to_antenna_w;
    ui.wake_at(ui.now_s);
  }
  ui.gap(6);
  std::string beside, spoken;
  if (arrives.state != State::unknown) {
    beside = "Arrives " + say_quantity(arrives.value, Unit::percent, 0, session.style()) + ", line loss " +
             say_quantity(loss.value, Unit::decibel, 1, session.style());
    spoken = "Arrives " + speak_quantity(arrives.value, Unit::percent, 0, session.style()) + ", line loss " +
             speak_quantity(loss.value, Unit::decibel, 1, session.style());
    if (weight.state != State::unknown) {
      beside += ", " + say_quantity(weight.value, Unit::gram, 0, session.style()) + " to carry";
      spoken += ", " + speak_quantity(weight.value, Unit::gram, 0, session.style()) + " to carry";
    }
  }
  ui.headline(R::feedline_power_to_antenna_w, beside, spoken);
}

void drawing(Ui& ui) {
  ui.watts_bar();
  ui.rule();
  for (const R id : {R::feedline_total_loss_db, R::feedline_swr_at_radio, R::antenna_swr, R::radio_turned_down_w,
                     R::feedline_arrives_pct, R::feedline_matched_loss_db, R::feedline_weight_g})
    ui.reading_row(id);
  ui.gap();
  ui.rolls(5);
}

void cable_choice(Ui& ui) {
  const Session& session = ui.session;
  if (ui.row("feedline.cable:row", lever(L::feedline_cable).name,
             value_text(session.plan(), L::feedline_cable, session.style()),
             value_text(session.plan(), L::feedline_cable, session.style()),
             session.view.panel == Panel::choices ? 1 : 0)) {
    ui.session.view.panel = Panel::choices;
    ui.session.view.lever = L::feedline_cable;
    ui.hand.scroll_to("choices", 0);
    ui.wake_at(ui.now_s);
  }
}

void levers(Ui& ui, bool with_length) {
  cable_choice(ui);
  if (with_length) {
    ui.slider(L::feedline_length_m);
    ui.gap();
  }
  for (const L id : {L::antenna_frequency_mhz, L::radio_transmit_power_w, L::radio_full_power_w,
                     L::feedline_measured_swr, L::feedline_measured_at, L::antenna_feed_r_ohm,
                     L::antenna_feed_x_ohm, L::radio_tuner, L::radio_fold_back_swr, L::feedline_roll_loss_pct})
    ui.lever_row(id);
  ui.gap();
  for (const Check& check : checks()) {
    if (ui.button("open:" + std::string(check.key), check.question, parts::Weight::plain, Icon::why))
      open_check(ui, check.key);
    ui.gap();
  }
}

void choices(Ui& ui) {
  const std::string name(lever(ui.session.view.lever).name);
  const Box head = ui.take(48);
  ui.pen.text(head.x, look::Pen::centred(head.mid_y(), type::kLead), name, look::Face::bold, type::kLead,
              ui.theme.ink);
  ui.node(Role::heading, "choices:title", name, head).level = 2;
  if (ui.icon_button({head.right() - 48, head.y, 48, 48}, "choices:close", "Close", Icon::close, ui.theme.ink)) {
    ui.session.view.panel = Panel::none;
    ui.wake_at(ui.now_s);
  }
  ui.begin_scroll("choices", {ui.x, ui.y, ui.w, ui.surface.bottom() - ui.y - 8});
  ui.lever_list(ui.session.view.lever);
  ui.end_scroll();
}

}  // namespace

void feedline(Ui& ui) {
  ui.chain_strip(Link::feedline);
  const Panel panel = ui.session.view.panel;
  const float margin = ui.margin(), left = ui.surface.x + margin, width = ui.surface.w - 2 * margin;
  const float top = ui.y + 4, height = ui.surface.bottom() - top;
  ui.open_group(Role::main, "main", "Feed line", {ui.surface.x, top, ui.surface.w, height});
  const bool on_side = ui.layout == look::Layout::on_side;
  const bool side_by_side = ui.layout != look::Layout::phone && ui.layout != look::Layout::portrait;
  if (panel == Panel::check || (panel == Panel::why && !side_by_side) ||
      ((panel == Panel::keypad || panel == Panel::choices) && ui.phone()) || (panel == Panel::keypad && on_side)) {
    ui.column(left, width, top);
    if (panel == Panel::keypad && on_side)
      ui.begin_scroll("keypad:scroll", {ui.surface.x, top, ui.surface.w, height});
    if (panel == Panel::keypad && on_side) ui.column(left, width, ui.y);
    panel == Panel::check    ? ui.check_panel()
    : panel == Panel::why    ? ui.why_panel()
    : panel == Panel::keypad ? ui.keypad()
                             : choices(ui);
    if (panel == Panel::keypad && on_side) ui.end_scroll();
    ui.close_group();
    return;
  }
  if (!side_by_side) {
    // Phone: the open control is fixed at the foot, everything else scrolls above it. Portrait: the same, roomier.
    const float foot = ui.phone() ? 158 : 0;
    ui.begin_scroll("sheet", {ui.surface.x, top, ui.surface.w, height - foot});
    ui.column(left, width, ui.y + 4);
    sheet_head(ui);
    drawing(ui);
    ui.gap(16);
    if (panel == Panel::keypad)
      ui.keypad();
    else if (panel == Panel::choices)
      choices(ui);
    else
      levers(ui, !ui.phone());
    ui.gap(16);
    ui.end_scroll();
    if (foot > 0) {
      ui.pen.line({ui.surface.x, ui.surface.bottom() - foot}, {ui.surface.right(), ui.surface.bottom() - foot},
                  ui.theme.ink, look::stroke::kRule);
      ui.column(left, width, ui.surface.bottom() - foot + 8);
      ui.slider(L::feedline_length_m);
    }
    ui.close_group();
    return;
  }
  const float controls_w = ui.layout == look::Layout::wide ? 400 : std::min(368.0F, width * 0.42F);
  const float controls_x = left + width - controls_w, drawing_w = width - controls_w - 30;
  const bool mirrored = ui.session.settings.left_hand;
  const float draw_x = mirrored ? left + controls_w + 30 : left, hand_x = mirrored ? left : controls_x;
  if (panel == Panel::why) {
    ui.column(draw_x, drawing_w, top);
    ui.why_panel();
  } else {
    ui.begin_scroll("sheet", {draw_x, top, drawing_w, height});
    ui.column(draw_x, drawing_w - 14, ui.y + 8);
    sheet_head(ui);
    drawing(ui);
    ui.gap(16);
    ui.end_scroll();
  }
  if (panel == Panel::keypad) {
    ui.column(hand_x, controls_w, top);
    ui.keypad();
  } else if (panel == Panel::choices) {
    ui.column(hand_x, controls_w, top);
    choices(ui);
  } else {
    ui.begin_scroll("controls", {hand_x, top, controls_w, height});
    ui.column(hand_x, controls_w - 14, ui.y);
    levers(ui, true);
    ui.gap(16);
    ui.end_scroll();
  }
  ui.close_group();
}

}  // namespace gs::sheets
