#include "app/parts/chain_line.h"

#include <algorithm>
#include <cmath>

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
using mirror::Role;
namespace type = look::type;

void open_link(Ui& ui, Link link) {
  // while one counts, the contacts' sheet is the counting one; from there the link opens its plan
  const bool counts = link == Link::contacts && ui.session.phase() == Phase::on_air;
  ui.session.view.sheet = counts && ui.session.view.sheet != Sheet::on_air ? Sheet::on_air : Sheet::link;
  ui.session.view.link = link;
  ui.session.view.panel = Panel::none;
  ui.session.view.unfolded.clear();
  // with little height the chain scrolls with the sheet, and what was asked for is the sheet
  const float above = !ui.low() ? 0 : ui.slim() ? look::chain::kTwoRows : look::chain::kPhoneStrip;
  ui.hand.scroll_to("sheet", above);
  ui.hand.scroll_to("controls", 0);
  ui.wake_at(ui.now_s);
}

void draw_leg(Ui& ui, const std::array<Cell, 6>& cells, std::size_t i, Point from, Point to, float line_w) {
  const Point leg[] = {from, to};
  const bool known = cells[i].now.state != State::unknown && cells[i + 1].now.state != State::unknown;
  if (!known) {
    ui.pen.dashed(leg, look::stroke::kNeed, ui.theme.ink, look::stroke::kStrong);
  } else if (dead_from(cells, i)) {
    ui.pen.dashed(leg, look::stroke::kDead, ui.theme.ink, line_w);
  } else {
    ui.pen.polyline(leg, ui.theme.ink, line_w);
  }
}

void draw_chain_line(Ui& ui, const ChainLine& d, const std::array<Cell, 6>& cells, bool notes) {
  look::Pen& pen = ui.pen;
  const look::Theme& theme = ui.theme;
  const float ease_y = d.limit_y - d.slack_px;
  pen.fill({d.area.x, ease_y, d.area.w, d.slack_px}, theme.band);
  for (std::size_t i = 0; i + 1 < d.at.size(); ++i) {
    if (cells[i].now.state == State::unknown || cells[i + 1].now.state == State::unknown) continue;
    Point a = d.at[i], b = d.at[i + 1];
    if (a.y >= ease_y && b.y >= ease_y) continue;
    // where a leg crosses the ease line the fill begins there
    const auto cross = [&] { return a.x + (b.x - a.x) * (ease_y - a.y) / (b.y - a.y); };
    if (a.y > ease_y)
      a = {cross(), ease_y};
    else if (b.y > ease_y)
      b = {cross(), ease_y};
    const Point quad[] = {a, b, {b.x, ease_y}, {a.x, ease_y}};
    pen.polygon(quad, theme.wood, false);
  }
  pen.limit_line(d.area.x, d.area.right(), d.limit_y, theme.ink);
  if (notes) {
    const look::Ground ground(pen, theme.band);
    pen.text(d.area.right() - 8, ease_y + 17, "at ease", Face::italic, type::kTick, theme.contour,
             look::Align::right);
    pen.text(d.area.right() - 8, d.limit_y - 7, "limit", Face::italic, type::kTick, theme.contour,
             look::Align::right);
  }
  const bool has_pin = ui.session.pinned_outlook() != nullptr;
  for (std::size_t i = 0; has_pin && i + 1 < d.at.size(); ++i) {
    if (cells[i].pinned.state == State::unknown || cells[i + 1].pinned.state == State::unknown) continue;
    const Point leg[] = {d.pinned[i], d.pinned[i + 1]};
    pen.dashed(leg, look::stroke::kPin, theme.pin, look::stroke::kRule);
  }
  for (std::size_t i = 0; i + 1 < d.at.size(); ++i) draw_leg(ui, cells, i, d.at[i], d.at[i + 1], d.line_w);
  for (std::size_t i = 0; i < d.at.size(); ++i) {
    if (has_pin && cells[i].pinned.state != State::unknown && std::abs(d.pinned[i].y - d.at[i].y) > d.shape_r) {
      pen.line(d.pinned[i], d.at[i], theme.pin, look::stroke::kRule);
      pen.diamond(d.pinned[i], 5, theme.pin);
    }
    const bool above = d.at[i].y < ease_y + d.shape_r;
    const look::Ground ground(pen, above ? theme.paper : theme.band);
    pen.sign(sign_of(cells[i].now.state), d.at[i], d.shape_r);
  }
}

float word_baseline(const ChainLine& d, std::size_t i, const Cell& link, float rise) {
  const float base = d.at[i].y - d.shape_r - rise;
  if (link.pinned.state == State::unknown || std::abs(d.pinned[i].y - d.at[i].y) <= d.shape_r) return base;
  const bool under = d.pinned[i].y > base - 20 && d.pinned[i].y < base + 8;
  return under ? d.pinned[i].y - 10 : base;
}

void state_word_at(Ui& ui, const ChainLine& d, std::size_t i, const Cell& link, float x, float rise,
                   std::string_view word, bool bold, ImU32 colour) {
  const float base = word_baseline(d, i, link, rise);
  const Face face = bold ? Face::bold : Face::regular;
  const bool dropped = link.pinned.state != State::unknown && std::abs(d.pinned[i].y - d.at[i].y) > d.shape_r;
  if (dropped && d.pinned[i].y < base - type::kLabel) {
    // no wider than it must be, so that the legs beside it stay whole
    const float pole = d.at[i].x;
    ui.pen.fill({pole - 4, base - type::kLabel, 8, type::kLabel + 4}, ui.pen.ground());
  }
  ui.pen.text(x, base, word, face, type::kLabel, colour);
}

ChainLine laid_out(const std::array<Cell, 6>& cells, Box band, float limit_y, float slack_px, float shape_r,
                   float line_w, float cell_w, float first_x) {
  ChainLine d{band, limit_y, slack_px, shape_r, line_w, {}, {}};
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const float at_x = first_x + cell_w * float(i);
    d.at[i] = {at_x, limit_y - slack_px * drawn_slack(cells[i].now)};
    d.pinned[i] = {at_x, limit_y - slack_px * drawn_slack(cells[i].pinned)};
  }
  return d;
}

void cell_target(Ui& ui, const Cell& link, Box box, bool open) {
  mirror::Node item;
  item.role = Role::button;
  item.id = "chain:" + std::string(link_key(link.link));
  item.name = link.spoken;
  item.current = open;
  if (ui.target(std::move(item), box, 10)) open_link(ui, link.link);
}

void open_chain(Ui& ui, Box box) {
  ui.open_group(Role::navigation, "chain", "Chain", box);
  ui.open_group(Role::list, "chain:list", "", box);
}

void close_chain_list(Ui& ui) { ui.close_group(); }
void close_chain(Ui& ui) { ui.close_group(); }

void cell_figure(Ui& ui, const Cell& link, float at_x, float base, float size, float room) {
  if (link.figure.empty()) {
    ui.pen.line({at_x, base - size * 0.36F}, {at_x + 38, base - size * 0.36F}, ui.theme.ink2,
                look::stroke::kStrong);
    return;
  }
  for (const float smaller : {type::kFigure, type::kValue, type::kLead, type::kBody})
    if (size > smaller && ui.pen.figure_width(link.figure, size, type::kChainUnitRatio) > room) size = smaller;
  if (ui.pen.figure_width(link.figure, size, type::kChainUnitRatio) > room) size = type::kTick;
  const ImU32 colour = link.now.state == State::holds ? ui.theme.ink : colour_of(ui.theme, link.now.state);
  ui.pen.figure(at_x, base, link.figure, size, colour, look::Align::left, type::kChainUnitRatio);
}

void narrow_figure(Ui& ui, const Cell& link, float at_x, float base, float room, look::Align align) {
  look::Pen& pen = ui.pen;
  if (link.figure.empty()) {
    constexpr float kLevel = 32;
    const float from = align == look::Align::left ? at_x : at_x - kLevel / 2;
    return pen.line({from, base - 6}, {from + kLevel, base - 6}, ui.theme.ink2, look::stroke::kStrong);
  }
  const ImU32 colour = link.now.state == State::holds ? ui.theme.ink : colour_of(ui.theme, link.now.state);
  const float size = pen.figure_width(link.figure, type::kBody) <= room - 2 ? type::kBody : type::kTick;
  if (pen.figure_width(link.figure, size) <= room) {
    pen.figure(at_x, base, link.figure, size, colour, align);
    return;
  }
  const std::vector<std::string_view> lines = pen.lines(link.figure, room, Face::bold, size);
  for (std::size_t k = 0; k < lines.size(); ++k)
    pen.text(at_x, base - 8 + 16 * float(k), lines[k], Face::bold, size, colour, align);
}

}  // namespace gs::parts
