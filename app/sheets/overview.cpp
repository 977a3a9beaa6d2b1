#include "app/parts/on_air.h"
#include "app/sheets/begin.h"
#include "app/sheets/sheets.h"

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
  pen.text(ui.x, ui.y + size, words.headline, Face::bold, size, ui.theme.ink);
  if (one_line) {
    pen.text(ui.x + head_w + gap_w, ui.y + size, words.cause, Face::bold, size, cause_colour);
    ui.gap(step);
  } else {
    ui.gap(step);
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

/// The bar at the foot: what limits, and the way there.
void limits_me(Ui& ui, const Verdict& words, Box box) {
  if (words.binds == R::count) return;
  const bool holds = words.state == State::holds;
  const std::string name(link_name(reading(words.binds).link));
  const std::string label = holds ? "Nearest to its limit: " + name : name + " limits you";
  if (ui.button_in(box, "limits", label, ui.phone() ? parts::Weight::main : parts::Weight::plain,
                   parts::icon_of(reading(words.binds).link), type::kBody)) {
    ui.session.view.sheet = Sheet::link;
    ui.session.view.link = reading(words.binds).link;
    ui.session.view.panel = Panel::none;
    ui.wake_at(ui.now_s);
  }
}

}  // namespace

void overview(Ui& ui) {
  const Session& session = ui.session;
  const Verdict words = verdict(session.plan(), session.outlook(), session.style());
  const float left = ui.surface.x + ui.margin(), width = ui.surface.w - 2 * ui.margin();
  const bool bar = words.binds != R::count;
  const float foot = bar ? 56 + 20 : 0;
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
  ui.end_scroll();
  if (bar) limits_me(ui, words, {left, ui.surface.bottom() - 56 - 12, width, 56});
  ui.close_group();
}

}  // namespace gs::sheets
