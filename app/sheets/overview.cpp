#include <algorithm>
#include <optional>

#include "app/parts/chain_line.h"
#include "app/parts/change.h"
#include "app/parts/on_air.h"
#include "app/sheets/begin.h"
#include "app/sheets/sheets.h"

namespace gs::sheets {

using look::Box;
using look::Face;
using look::Icon;
using look::Sign;
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
    parts::open_link(ui, Link::battery);
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

/// What limits the plan and the cheapest change that mends it, said in one bar; a tap opens the control of that
/// change.
struct Limits {
  Sign sign = Sign::unknown;
  std::string head, rest, spoken;
  std::optional<Remedy> remedy;
  std::vector<std::string_view> lines;  // of `rest`, where it does not stand beside the head
  float high = 0;
};

std::string cheapest_words(const Remedy& remedy, int effects) {
  const std::string effect = effects == 2 ? parts::remedy_effect(remedy) : effects == 1 ? remedy.gains : "";
  return "Cheapest: " + lower_first(remedy.words) + (effect.empty() ? "" : ", " + effect);
}

constexpr float kLimitsSign = 52, kLimitsChevron = 44;

Limits what_limits(const Ui& ui, const Verdict& words, float width) {
  Limits limits;
  if (words.binds == R::count) return limits;
  const Session& session = ui.session;
  const std::string name(link_name(reading(words.binds).link));
  limits.sign = parts::sign_of(session.outlook()[words.binds].state);
  limits.head = words.state == State::holds ? "Nearest to its limit: " + name + "." : name + " limits you.";
  limits.spoken = limits.head;
  limits.remedy = session.remedy(words.binds);
  limits.high = 56;
  const float room = width - kLimitsSign - kLimitsChevron;
  if (!limits.remedy) {
    limits.high = std::max(56.0F, 20 + float(ui.pen.lines(limits.head, room, Face::bold, type::kBody).size()) *
                                           type::line_height(type::kBody));
    return limits;
  }
  limits.rest = cheapest_words(*limits.remedy, 2);
  limits.spoken += " " + limits.rest;
  if (ui.pen.width(limits.head, Face::bold, type::kBody) + 12 +
          ui.pen.width(limits.rest, Face::regular, type::kBody) <=
      room)
    return limits;
  // the price goes where it cannot be said in two lines; the mirror has it all
  for (int most = 2; most >= 0; --most) {
    limits.rest = cheapest_words(*limits.remedy, most);
    limits.lines = ui.pen.lines(limits.rest, room, Face::regular, type::kLabel);
    if (limits.lines.size() <= 2) break;
  }
  const float heads = float(ui.pen.lines(limits.head, room, Face::bold, type::kBody).size());
  limits.high =
      22 + heads * type::line_height(type::kBody) + float(limits.lines.size()) * type::line_height(type::kLabel);
  return limits;
}

void limits_me(Ui& ui, const Verdict& words, const Limits& limits, Box box) {
  if (words.binds == R::count) return;
  look::Pen& pen = ui.pen;
  const bool dark = ui.phone() != ui.hand.down("limits");  // a phone's one main action
  const ImU32 fill = dark ? ui.theme.solid : ui.theme.fold, ink = dark ? ui.theme.on_solid : ui.theme.ink;
  const float corner = std::min(box.h / 2, look::radius::kButton);
  pen.fill(box, fill, corner);
  if (!dark || ui.theme.on_solid != ui.theme.paper) pen.outline(box, ui.theme.ink2, look::stroke::kOutline, corner);
  {
    const look::Ground ground(pen, fill);
    // on the dark bar the sign stands in the bar's own ink: its shape says which it is
    pen.sign(limits.sign, {box.x + 28, box.mid_y()}, look::sign::kStrip, false, dark ? ink : 0);
    pen.icon(Icon::chev, box.right() - 36, box.mid_y() - 12, 24, ink);
    const float x = box.x + kLimitsSign, room = box.w - kLimitsSign - kLimitsChevron;
    if (limits.lines.empty()) {
      const auto heads = pen.lines(limits.head, room, Face::bold, type::kBody);
      const float step = type::line_height(type::kBody);
      float base = look::Pen::centred(box.mid_y(), type::kBody) - step * float(heads.size() - 1) / 2;
      float end = x;
      for (const std::string_view line : heads) {
        end = x + pen.text(x, base, line, Face::bold, type::kBody, ink);
        base += step;
      }
      if (!limits.rest.empty()) pen.text(end + 12, base - step, limits.rest, Face::regular, type::kBody, ink);
    } else {
      float base = box.y + 11 + type::kBody;
      for (const std::string_view line : pen.lines(limits.head, room, Face::bold, type::kBody)) {
        pen.text(x, base, line, Face::bold, type::kBody, ink);
        base += type::line_height(type::kBody);
      }
      base -= 2;
      for (const std::string_view line : pen.lines(limits.rest, room, Face::regular, type::kLabel)) {
        pen.text(x, base, line, Face::regular, type::kLabel, ink);
        base += type::line_height(type::kLabel);
      }
    }
  }
  mirror::Node record;
  record.role = Role::button;
  record.id = "limits";
  record.name = limits.spoken;
  if (!ui.target(std::move(record), box, corner)) return;
  const Link binding = reading(words.binds).link;
  if (limits.remedy) return open_control(ui, limits.remedy->lever, binding);
  parts::open_link(ui, binding);
}

}  // namespace

void overview(Ui& ui) {
  const Session& session = ui.session;
  const Verdict words = verdict(session.plan(), session.outlook(), session.style());
  const float left = ui.surface.x + ui.margin(), width = ui.surface.w - 2 * ui.margin();
  const bool bar = words.binds != R::count;
  const Limits limits = what_limits(ui, words, width);
  // with little height the bar scrolls with the rest
  const bool on_side = ui.layout == look::Layout::on_side;
  const bool fixed = bar && ui.surface.h - limits.high > (on_side ? 300 : 420);
  const float foot = fixed ? limits.high + 20 : 0;
  ui.open_group(Role::main, "main", "Overview", {ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y});
  ui.begin_scroll("overview", {ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y - foot});
  // with little height Safety, Clock and Kit stand beside verdict and chain
  const float beside_w = on_side ? std::min(212.0F, width * 0.3F) : 0, beside_y = ui.y;
  ui.column(left, on_side ? width - beside_w - 24 : width, ui.y + (ui.phone() ? 0 : on_side ? 8 : 20));
  say_verdict(ui, words);
  ui.gap();
  if (ui.phone()) {
    if (!bar) two_ways(ui);  // on a phone the chain would push them out of sight
    if (!bar) ui.gap(16);
    ui.chain_column();
    ui.rule();
    ui.gap(ui.alongside({left, ui.y + 4, width, 92}, Ui::Beside::across) + 12);
  } else if (on_side) {
    ui.chain_level({left, ui.y, ui.w, 0});
    const Box beside{left + width - beside_w, beside_y + 2, beside_w, 3 * look::space::kTarget};
    ui.y = std::max(ui.y, beside_y + 2 + ui.alongside(beside, Ui::Beside::column));
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
    ui.what_ifs(4, limits.remedy);
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
