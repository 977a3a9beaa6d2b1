// The chain across: a line whose height is slack, six links that open their sheets. Strip above a sheet, large on
// Overview, folded to one level line where height is short.
#include <algorithm>
#include <cmath>

#include "app/parts/chain_cells.h"
#include "app/parts/change.h"
#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
using mirror::Role;
namespace type = look::type;
namespace metric = look::chain;

namespace {

struct Drawing {
  Box area;        // from the first shape to the last, the whole width of the band
  float limit_y;   // the limit line
  float slack_px;  // height of one slack
  float shape_r;
  float line_w;
  std::array<Point, 6> at;
  std::array<Point, 6> pinned;
};

/// The line itself, back to front: tight zone, fill above it, limit line, pin, live line, shapes.
void draw_line(Ui& ui, const Drawing& d, const std::array<Cell, 6>& cells, bool notes) {
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
  for (std::size_t i = 0; i + 1 < d.at.size(); ++i) {
    const Point leg[] = {d.at[i], d.at[i + 1]};
    const bool known = cells[i].now.state != State::unknown && cells[i + 1].now.state != State::unknown;
    if (!known) {
      pen.dashed(leg, look::stroke::kNeed, theme.ink, look::stroke::kStrong);
    } else if (dead_from(cells, i)) {
      pen.dashed(leg, look::stroke::kDead, theme.ink, d.line_w);
    } else {
      pen.polyline(leg, theme.ink, d.line_w);
    }
  }
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

/// Where the state's word stands: above the shape, and above a pinned diamond that would lie under it.
float word_baseline(const Drawing& d, std::size_t i, const Cell& link, float rise) {
  const float base = d.at[i].y - d.shape_r - rise;
  if (link.pinned.state == State::unknown || std::abs(d.pinned[i].y - d.at[i].y) <= d.shape_r) return base;
  const bool under = d.pinned[i].y > base - 20 && d.pinned[i].y < base + 8;
  return under ? d.pinned[i].y - 10 : base;
}

/// Places the six shapes in cells of equal width.
Drawing laid_out(const std::array<Cell, 6>& cells, Box band, float limit_y, float slack_px, float shape_r,
                 float line_w, float cell_w, float first_x) {
  Drawing d{band, limit_y, slack_px, shape_r, line_w, {}, {}};
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const float at_x = first_x + cell_w * float(i);
    d.at[i] = {at_x, limit_y - slack_px * drawn_slack(cells[i].now)};
    d.pinned[i] = {at_x, limit_y - slack_px * drawn_slack(cells[i].pinned)};
  }
  return d;
}

void go_to(Ui& ui, Link link) {
  ui.session.view.sheet = Sheet::link;
  ui.session.view.link = link;
  ui.session.view.panel = Panel::none;
  ui.session.view.unfolded.clear();
  ui.hand.scroll_to("sheet", 0);
  ui.hand.scroll_to("controls", 0);
  ui.wake_at(ui.now_s);
}

void cell_target(Ui& ui, const Cell& link, Box box, bool open) {
  mirror::Node item;
  item.role = Role::button;
  item.id = "chain:" + std::string(link_key(link.link));
  item.name = link.spoken;
  item.current = open;
  if (ui.target(std::move(item), box, 10)) go_to(ui, link.link);
}

void open_chain(Ui& ui, Box box) {
  ui.open_group(Role::navigation, "chain", "Chain", box);
  ui.open_group(Role::list, "chain:list", "", box);
}

void close_list(Ui& ui) { ui.close_group(); }
void close_chain(Ui& ui) { ui.close_group(); }

/// The figure of a link, as large as fits its cell.
void cell_figure(Ui& ui, const Cell& link, float at_x, float base, float size, float room) {
  if (link.figure.empty()) {
    ui.pen.line({at_x, base - size * 0.36F}, {at_x + 38, base - size * 0.36F}, ui.theme.ink2,
                look::stroke::kStrong);
    return;
  }
  for (const float smaller : {type::kFigure, type::kValue, type::kLead, type::kBody})
    if (size > smaller && ui.pen.figure_width(link.figure, size, type::kChainUnitRatio) > room) size = smaller;
  const ImU32 colour = link.now.state == State::holds ? ui.theme.ink : colour_of(ui.theme, link.now.state);
  ui.pen.figure(at_x, base, link.figure, size, colour, look::Align::left, type::kChainUnitRatio);
}

}  // namespace

void Ui::chain_strip(Link open) {
  const std::array<Cell, 6> cells = chain_cells(session);
  const bool folded = layout == look::Layout::on_side;
  const bool narrow = phone();
  const float side_w = folded || narrow || layout == look::Layout::portrait ? 0 : metric::side_width(surface.w);
  const float strip_h = folded ? metric::kFoldedStrip + 20 : narrow ? metric::kPhoneStrip : metric::kStrip;
  const float left = surface.x + (narrow ? 8 : margin()), top = y;
  const float chain_w = surface.w - 2 * (narrow ? 8 : margin()) - side_w - (side_w > 0 ? 22 : 0);
  const float cell_w = chain_w / 6;
  open_chain(*this, {left, top, chain_w, strip_h});
  if (folded) {
    const float line_y = top + 18;
    for (std::size_t i = 0; i + 1 < cells.size(); ++i) {
      const Point leg[] = {{left + cell_w * float(i) + 12, line_y}, {left + cell_w * float(i + 1) + 12, line_y}};
      const bool known = cells[i].now.state != State::unknown && cells[i + 1].now.state != State::unknown;
      if (!known) {
        pen.dashed(leg, look::stroke::kNeed, theme.ink, look::stroke::kStrong);
      } else if (dead_from(cells, i)) {
        pen.dashed(leg, look::stroke::kDead, theme.ink, look::stroke::kChainStrip);
      } else {
        pen.polyline(leg, theme.ink, look::stroke::kChainStrip);
      }
    }
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const float at_x = left + cell_w * float(i);
      pen.sign(sign_of(cells[i].now.state), {at_x + 12, line_y}, look::sign::kFolded);
      const bool is_open = cells[i].link == open;
      const std::string_view name = link_name(cells[i].link);
      if (is_open) {
        const Box pill{at_x - 6, line_y + 16, pen.width(name, Face::bold, type::kLabel) + 16, 24};
        pen.fill(pill, theme.ink, 12);
        const look::Ground ground(pen, theme.ink);
        pen.text(at_x + 2, line_y + 34, name, Face::bold, type::kLabel, theme.on_ink);
      } else {
        pen.text(at_x, line_y + 34, name, Face::regular, type::kLabel, theme.ink);
      }
      cell_figure(*this, cells[i], at_x, line_y + 62, type::kValue, cell_w - 8);
      cell_target(*this, cells[i], {at_x - 4, top, cell_w, strip_h}, is_open);
    }
    close_list(*this);
    close_chain(*this);
    y = top + strip_h;
    return;
  }
  const float limit_y = narrow ? top + 50 : top + 62;
  const float slack_px = narrow ? metric::kSlackPhone : metric::kSlackStrip;
  const float shape_dx = narrow ? cell_w / 2 : 20;
  const Drawing d = laid_out(cells, {left, 0, chain_w, 0}, limit_y, slack_px, look::sign::kStrip,
                             look::stroke::kChainStrip, cell_w, left + shape_dx);
  draw_line(*this, d, cells, false);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Cell& link = cells[i];
    const bool is_open = link.link == open;
    const float at_x = left + cell_w * float(i) + (narrow ? 0 : 8);
    const std::string_view name = link_name(link.link);
    if (narrow) {
      const float mid = left + cell_w * (float(i) + 0.5F);
      const Box pill{mid - 22, limit_y + 22, 44, 30};
      if (is_open) pen.fill(pill, theme.ink, 15);
      pen.icon(icon_of(link.link), mid - 12, pill.mid_y() - 12, 24, is_open ? theme.on_ink : theme.ink);
      if (link.figure.empty()) {
        pen.line({mid - 14, limit_y + 70}, {mid + 14, limit_y + 70}, theme.ink2, look::stroke::kStrong);
      } else {
        const ImU32 colour = link.now.state == State::holds ? theme.ink : colour_of(theme, link.now.state);
        const float size = pen.figure_width(link.figure, type::kBody) < cell_w - 4 ? type::kBody : type::kTick;
        pen.figure(mid, limit_y + 76, link.figure, size, colour, look::Align::centre);
        if (link.change.kind != Change::Kind::none) {
          const look::Delta delta = link.change.kind == Change::Kind::better  ? look::Delta::better
                                    : link.change.kind == Change::Kind::worse ? look::Delta::worse
                                                                              : look::Delta::same;
          pen.delta(delta, mid - 6, limit_y + 98,
                    delta == look::Delta::better  ? theme.holds
                    : delta == look::Delta::worse ? theme.fails
                                                  : theme.ink2);
        }
      }
    } else {
      const bool in_band = word_baseline(d, i, link, 10) - 2 > limit_y - slack_px;
      const look::Ground ground(pen, in_band ? theme.band : theme.paper);
      const bool known = link.now.state != State::unknown;
      pen.text(d.at[i].x - 11, word_baseline(d, i, link, 10), state_word(link.now.state),
               known && link.now.state != State::holds ? Face::bold : Face::regular, type::kLabel,
               colour_of(theme, link.now.state));
      if (is_open) {
        const Box pill{at_x - 10, limit_y + 32, pen.width(name, Face::bold, type::kLabel) + 20, 27};
        pen.fill(pill, theme.ink, 13.5F);
        const look::Ground dark(pen, theme.ink);
        pen.text(at_x, limit_y + 51, name, Face::bold, type::kLabel, theme.on_ink);
      } else {
        pen.text(at_x, limit_y + 51, name, Face::regular, type::kLabel, theme.ink);
      }
      cell_figure(*this, link, at_x, limit_y + 86, type::kValue, cell_w - 12);
      if (link.change.kind != Change::Kind::none) {
        draw_change(pen, theme, at_x, limit_y + 110, link.now.binds, link.change, session.style());
      } else {
        const std::vector<std::string_view> lines = pen.lines(link.second, cell_w - 12, Face::regular, type::kTick);
        for (std::size_t k = 0; k < std::min<std::size_t>(lines.size(), 2); ++k)
          pen.text(at_x, limit_y + 106 + 17 * float(k), lines[k], Face::regular, type::kTick, theme.ink2);
      }
    }
    cell_target(*this, link, {left + cell_w * float(i), top, cell_w, strip_h - 4}, is_open);
  }
  close_list(*this);
  if (side_w > 0) alongside({surface.right() - margin() - side_w, top, side_w, strip_h}, false);
  close_chain(*this);
  y = top + strip_h;
}

void Ui::chain_overview() {
  const std::array<Cell, 6> cells = chain_cells(session);
  const bool across = layout == look::Layout::portrait;
  const float side_w = across ? 0 : metric::side_width(surface.w);
  const float left = surface.x + margin(), top = y;
  const float chain_w = surface.w - 2 * margin() - side_w - (side_w > 0 ? 22 : 0);
  const float cell_w = chain_w / 6;
  const float slack_px = across ? metric::kSlackTall : metric::kSlackOverview;
  const float figure_size = layout == look::Layout::wide ? type::kHeadline : type::kFigure;
  const float limit_y = top + slack_px * 2 + 34;
  const Drawing d = laid_out(cells, {left, 0, chain_w, 0}, limit_y, slack_px, look::sign::kOverview,
                             look::stroke::kChainOverview, cell_w, left + 20);
  const bool nothing =
      std::all_of(cells.begin(), cells.end(), [](const Cell& c) { return c.now.state == State::unknown; });
  float lowest = limit_y + 24;
  for (const Point& p : d.pinned) lowest = std::max(lowest, session.pinned_outlook() ? p.y + 16 : 0);
  for (const Point& p : d.at) lowest = std::max(lowest, p.y + 24);
  const float words_y = lowest + 26;
  const float bottom = words_y + 104;
  open_chain(*this, {left, top, chain_w, bottom - top});
  draw_line(*this, d, cells, true);
  if (const Plan* pinned = session.pinned_plan(); pinned && !session.outing().pinned_name.empty()) {
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (cells[i].pinned.state == State::unknown || std::abs(d.pinned[i].y - d.at[i].y) <= d.shape_r) continue;
      pen.text(d.pinned[i].x + 18, d.pinned[i].y + 5, "pinned " + session.outing().pinned_name, Face::italic,
               type::kTick, theme.pin);
      break;
    }
  }
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Cell& link = cells[i];
    const float at_x = left + cell_w * float(i) + 6;
    const bool in_band = word_baseline(d, i, link, 12) > limit_y - slack_px;
    {
      const look::Ground ground(pen, in_band ? theme.band : theme.paper);
      const bool begin = nothing && link.link == Link::feedline;
      const std::string_view word = begin ? std::string_view("begin here") : state_word(link.now.state);
      pen.text(
          d.at[i].x - 15, word_baseline(d, i, link, 12), word,
          begin || link.now.state == State::tight || link.now.state == State::fails ? Face::bold : Face::regular,
          type::kLabel, begin ? theme.ink : colour_of(theme, link.now.state));
    }
    pen.icon(icon_of(link.link), at_x, words_y - 18, 24, theme.ink);
    pen.text(at_x + 30, words_y, link_name(link.link), Face::bold, type::kLabel, theme.ink);
    cell_figure(*this, link, at_x, words_y + 42, figure_size, cell_w - 10);
    const std::vector<std::string_view> lines = pen.lines(link.second, cell_w - 12, Face::regular, type::kLabel);
    for (std::size_t k = 0; k < std::min<std::size_t>(lines.size(), 2); ++k)
      pen.text(at_x, words_y + 68 + 21 * float(k), lines[k], Face::regular, type::kLabel, theme.ink2);
    if (link.change.kind != Change::Kind::none)
      draw_change(pen, theme, at_x,
                  words_y + 68 + 23 * float(std::max<std::size_t>(1, std::min<std::size_t>(lines.size(), 2))),
                  link.now.binds, link.change, session.style());
    cell_target(*this, link, {left + cell_w * float(i), top, cell_w, bottom - top}, false);
  }
  close_list(*this);
  if (side_w > 0) {
    alongside({surface.right() - margin() - side_w, top, side_w, bottom - top}, false);
    y = bottom;
  } else {
    y = bottom + 8;
    pen.line({left, y}, {left + chain_w, y}, theme.rule, look::stroke::kHair);
    alongside({left, y + 8, chain_w, 96}, true);
    y += 112;
  }
  close_chain(*this);
}

void Ui::chain_column() {
  const std::array<Cell, 6> cells = chain_cells(session);
  const float step = 77, top = y;
  const float limit_x = surface.x + margin() + 40;
  const float slack_px = metric::kSlackColumn;
  const Box area{surface.x + margin(), top, surface.w - 2 * margin(), step * 6};
  open_chain(*this, area);
  pen.fill({limit_x, top, slack_px, step * 6}, theme.band);
  pen.limit_line_upright(limit_x, top, top + step * 6, theme.ink);
  const auto at = [&](std::size_t i, const Standing& s) {
    return Point{limit_x + slack_px * drawn_slack(s), top + step * float(i) + step / 2};
  };
  for (std::size_t i = 0; i + 1 < cells.size(); ++i) {
    const Point leg[] = {at(i, cells[i].now), at(i + 1, cells[i + 1].now)};
    const bool known = cells[i].now.state != State::unknown && cells[i + 1].now.state != State::unknown;
    if (session.pinned_outlook() && cells[i].pinned.state != State::unknown &&
        cells[i + 1].pinned.state != State::unknown) {
      const Point was[] = {at(i, cells[i].pinned), at(i + 1, cells[i + 1].pinned)};
      pen.dashed(was, look::stroke::kPin, theme.pin, look::stroke::kRule);
    }
    if (!known) {
      pen.dashed(leg, look::stroke::kNeed, theme.ink, look::stroke::kStrong);
    } else if (dead_from(cells, i)) {
      pen.dashed(leg, look::stroke::kDead, theme.ink, look::stroke::kChainOverview);
    } else {
      pen.polyline(leg, theme.ink, look::stroke::kChainOverview);
    }
  }
  const float words_x = surface.x + margin() + 122;
  const float words_right = surface.right() - margin();
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Cell& link = cells[i];
    const Point here = at(i, link.now);
    if (session.pinned_outlook() && link.pinned.state != State::unknown) {
      const Point was = at(i, link.pinned);
      if (std::abs(was.x - here.x) > look::sign::kOverview) pen.diamond(was, 5, theme.pin);
    }
    {
      const look::Ground ground(
          pen, link.now.state == State::unknown || drawn_slack(link.now) > 1 ? theme.paper : theme.band);
      pen.sign(sign_of(link.now.state), here, look::sign::kOverview - 2);
    }
    const float base = top + step * float(i) + 32;
    pen.text(words_x, base, link_name(link.link), Face::bold, type::kBody, theme.ink);
    if (!link.figure.empty()) {
      const ImU32 colour = link.now.state == State::holds ? theme.ink : colour_of(theme, link.now.state);
      pen.figure(words_right, base + 6, link.figure, type::kFigure, colour, look::Align::right,
                 type::kChainUnitRatio);
    } else {
      pen.line({words_right - 38, base - 6}, {words_right, base - 6}, theme.ink2, look::stroke::kStrong);
    }
    const bool has_change = link.change.kind != Change::Kind::none;
    const std::string second = std::string(state_word(link.now.state)) + ", " + link.second;
    const float room = words_right - words_x - (has_change ? 96 : 0);
    const std::vector<std::string_view> lines = pen.lines(second, room, Face::regular, type::kLabel);
    for (std::size_t k = 0; k < std::min<std::size_t>(lines.size(), 2); ++k)
      pen.text(words_x, base + 23 + 19 * float(k), lines[k], Face::regular, type::kLabel,
               colour_of(theme, link.now.state));
    if (has_change)
      draw_change(pen, theme, words_right, base + 30, link.now.binds, link.change, session.style(),
                  look::Align::right);
    cell_target(*this, link, {area.x, top + step * float(i), area.w, step}, false);
  }
  close_list(*this);
  close_chain(*this);
  y = top + step * 6;
  const float label_base = y + 15;
  pen.text(limit_x + 8, label_base, "limit", Face::italic, type::kTick, theme.contour, look::Align::right);
  pen.text(limit_x + slack_px - 8, label_base, "at ease", Face::italic, type::kTick, theme.contour);
  gap(24);
}

}  // namespace gs::parts
