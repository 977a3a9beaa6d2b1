#include <algorithm>
#include <optional>

#include "app/parts/on_air.h"
#include "app/sheets/begin.h"
#include "app/sheets/sheets.h"
#include "core/outing/remedy.h"

namespace gs::sheets {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
using parts::Ui;
namespace type = look::type;

namespace {

void say_verdict(Ui& ui, const Verdict& words) {
  look::Pen& pen = ui.pen;
  const float size = ui.phone() || ui.layout == look::Layout::on_side ? type::kLead : type::kValue;
  const ImU32 cause_colour =
      words.state == State::none || words.state == State::holds || words.state == State::unknown
          ? ui.theme.ink2
          : parts::colour_of(ui.theme, words.state);
  const float top = ui.y;
  const float step = type::line_height(size);
  const float head_w = pen.width(words.headline, Face::bold, size);
  const float gap_w = size * 0.3F;
  const bool one_line = head_w + gap_w + pen.width(words.cause, Face::bold, size) <= ui.w;
  const int head_lines = pen.paragraph(ui.x, ui.y + size, ui.w, words.headline, Face::bold, size, ui.theme.ink);
  if (one_line) {
    pen.text(ui.x + head_w + gap_w, ui.y + size, words.cause, Face::bold, size, cause_colour);
    ui.gap(step);
  } else {
    ui.gap(step * float(head_lines));
    const float small = size == type::kValue ? type::kLead : type::kLabel;
    const int lines = pen.paragraph(ui.x, ui.y + small, ui.w, words.cause, Face::bold, small, cause_colour);
    ui.gap(float(lines) * type::line_height(small));
  }
  mirror::Node& record =
      ui.node(Role::status, "verdict", words.headline + " " + words.cause, {ui.x, top, ui.w, ui.y - top});
  record.live = true;
}

void two_ways(Ui& ui) {
  Session& session = ui.session;
  ui.section("Two ways to begin", "begin");
  const float each = ui.phone() ? ui.w : (ui.w - 16) / 2;
  const Box first{ui.x, ui.y + 8, each, 64};
  const Box second =
      ui.phone() ? Box{ui.x, first.bottom() + 8, each, 64} : Box{first.right() + 16, first.y, each, 64};
  if (ui.button_in(first, "begin:own", "Fill in the battery", parts::Weight::main, Icon::battery, type::kBody)) {
    if (session.outing() == Outing{}) session.open(new_outing(), "beginning a new outing");
    session.view.sheet = Sheet::link;
    session.view.link = Link::battery;
    ui.wake_at(ui.now_s);
  }
  if (ui.button_in(second, "begin:sample", "Start from a sample outing", parts::Weight::plain, Icon::kit,
                   type::kBody)) {
    session.open(sample_outing(), "opening the sample");
    ui.wake_at(ui.now_s);
  }
  ui.y = second.bottom() + 12;
  ui.paragraph(
      "Each link shows a figure as soon as it can; the rest stay \u201Cnot known\u201D. Nothing is guessed without "
      "saying so, and nothing leaves this device.",
      "begin:words", ui.theme.ink);
}

/// What limits the plan and the cheapest change that mends it. On a narrow surface one stands over the other.
struct Limits {
  std::string label, try_label, spoken;
  std::optional<Remedy> remedy;
  bool stacked = false;
  float high = 0;  // of the whole foot
};

Limits what_limits(const Ui& ui, const Verdict& words, float width) {
  Limits limits;
  if (words.binds == R::count) return limits;
  const Session& session = ui.session;
  const std::string name(link_name(reading(words.binds).link));
  limits.label = words.state == State::holds ? "Nearest to its limit: " + name : name + " limits you";
  limits.remedy = cheapest_remedy(session.outing(), words.binds, session.style());
  limits.high = 56;
  if (!limits.remedy) return limits;
  const Remedy& remedy = *limits.remedy;
  std::string effect = remedy.gains;
  if (!remedy.costs.empty()) effect += (effect.empty() ? "" : "; ") + remedy.costs;
  limits.spoken = "Cheapest: " + lower_first(remedy.words) + (effect.empty() ? "" : ", " + effect);
  limits.stacked = width < 700;
  const float room = (limits.stacked ? width : width * 0.68F) - 64;
  // the price goes where it cannot be said in two lines; the mirror has it all
  for (const std::string& text : {limits.spoken, "Cheapest: " + lower_first(remedy.words) + ", " + remedy.gains,
                                  "Cheapest: " + lower_first(remedy.words)}) {
    limits.try_label = text;
    if (ui.pen.lines(text, room, Face::bold, type::kLabel).size() <= 2) break;
  }
  const float lines = float(ui.pen.lines(limits.try_label, room, Face::bold, type::kLabel).size());
  const float try_high = std::max(56.0F, 20 + lines * type::line_height(type::kLabel));
  limits.high = limits.stacked ? try_high + 8 + 56 : try_high;
  return limits;
}

void limits_me(Ui& ui, const Verdict& words, const Limits& limits, Box box) {
  if (words.binds == R::count) return;
  Session& session = ui.session;
  const bool two = limits.remedy.has_value();
  const float label_w = two && !limits.stacked ? box.w * 0.32F - 8 : box.w;
  const Box first{box.x, box.y, label_w, two && !limits.stacked ? box.h : 56};
  if (ui.button_in(first, "limits", limits.label, ui.phone() && !two ? parts::Weight::main : parts::Weight::plain,
                   parts::icon_of(reading(words.binds).link), type::kBody)) {
    session.view.sheet = Sheet::link;
    session.view.link = reading(words.binds).link;
    session.view.panel = Panel::none;
    ui.wake_at(ui.now_s);
  }
  if (!two) return;
  const Box second = limits.stacked ? Box{box.x, first.bottom() + 8, box.w, box.bottom() - first.bottom() - 8}
                                    : Box{first.right() + 8, box.y, box.right() - first.right() - 8, box.h};
  if (ui.button_in(second, "limits:try", limits.try_label, parts::Weight::main, Icon::chev, type::kBody, true,
                   limits.spoken + ". Try it")) {
    session.set_all({{limits.remedy->lever, limits.remedy->value}}, limits.remedy->words);
    ui.wake_at(ui.now_s);
  }
}

}  // namespace

void overview(Ui& ui) {
  const Session& session = ui.session;
  const Verdict words = verdict(session.plan(), session.outlook(), session.style());
  const float left = ui.surface.x + ui.margin(), width = ui.surface.w - 2 * ui.margin();
  const bool bar = words.binds != R::count;
  const Limits limits = what_limits(ui, words, width);
  // with little height the bar scrolls with the rest
  const bool fixed = bar && ui.surface.h - limits.high > 420;
  const float foot = fixed ? limits.high + 20 : 0;
  ui.open_group(Role::main, "main", "Overview", {ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y});
  ui.begin_scroll("overview", {ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y - foot});
  ui.column(left, width, ui.y + (ui.phone() ? 0 : 20));
  say_verdict(ui, words);
  ui.gap();
  if (ui.phone()) {
    if (!bar) two_ways(ui);  // on a phone the chain would push them out of sight
    if (!bar) ui.gap(16);
    ui.chain_column();
    ui.rule();
    ui.gap(ui.alongside({left, ui.y + 4, width, 92}, true) + 12);
  } else if (ui.layout == look::Layout::on_side) {
    ui.chain_strip(Link::count);
  } else {
    ui.chain_overview();
  }
  ui.column(left, width, ui.y + 16);
  if (!bar) {
    if (!ui.phone()) two_ways(ui);
  } else {
    const bool two = width > 900;
    const float each = two ? (width - 40) / 2 : width;
    const float top = ui.y;
    ui.column(left, each, top);
    ui.section("The outing", "overview:outing");
    ui.time_line();
    parts::pace_from(ui);
    for (const R id : {R::feedline_power_to_antenna_w, R::pace_expected_contacts, R::safety_public_m}) {
      ui.reading_row(id);
      ui.rule();
    }
    const float first_bottom = ui.y;
    ui.column(two ? left + each + 40 : left, each, two ? top : ui.y + 16);
    ui.what_ifs(4);
    if (two && ui.y < first_bottom) ui.y = first_bottom;
  }
  ui.gap(16);
  if (bar && !fixed) {
    limits_me(ui, words, limits, {left, ui.y, width, limits.high});
    ui.gap(limits.high + 16);
  }
  ui.end_scroll();
  if (fixed) limits_me(ui, words, limits, {left, ui.surface.bottom() - limits.high - 12, width, limits.high});
  ui.close_group();
}

}  // namespace gs::sheets
