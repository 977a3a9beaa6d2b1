// The chain above every sheet; folded to one level line where height is short, icons only on a phone.
#include <algorithm>
#include <cmath>

#include "app/parts/chain_line.h"
#include "app/parts/change.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
namespace type = look::type;
namespace metric = look::chain;

namespace {

constexpr float kSlimCell = 92;

/// The chain in two rows of three: what six links beside each other leave too little width for.
void two_rows(Ui& ui, const std::array<Cell, 6>& cells, Link open) {
  look::Pen& pen = ui.pen;
  const float left = ui.surface.x + 4, top = ui.y, cell_w = (ui.surface.w - 8) / 3;
  open_chain(ui, {left, top, 3 * cell_w, 2 * kSlimCell});
  const auto at = [&](std::size_t i) {
    return look::Box{left + cell_w * float(i % 3), top + kSlimCell * float(i / 3), cell_w, kSlimCell};
  };
  for (std::size_t i = 0; i + 1 < cells.size(); ++i)
    if (i != 2)
      draw_leg(ui, cells, i, {at(i).x + 14, at(i).y + 20}, {at(i + 1).x + 14, at(i).y + 20},
               look::stroke::kChainStrip);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Cell& link = cells[i];
    const look::Box box = at(i);
    const bool is_open = link.link == open;
    pen.sign(sign_of(link.now.state), {box.x + 14, box.y + 20}, look::sign::kList);
    const look::Box pill{box.x + 27, box.y + 4, 30, 32};
    pen.fill(pill, is_open ? ui.theme.ink : ui.theme.paper, 15);
    pen.icon(icon_of(link.link), pill.mid_x() - 12, pill.mid_y() - 12, 24,
             is_open ? ui.theme.on_ink : ui.theme.ink);
    if (link.figure.empty()) {
      pen.line({box.x + 6, box.y + 54}, {box.x + 40, box.y + 54}, ui.theme.ink2, look::stroke::kStrong);
    } else {
      const ImU32 colour = link.now.state == State::holds ? ui.theme.ink : colour_of(ui.theme, link.now.state);
      const float size = pen.figure_width(link.figure, type::kBody) < cell_w - 8 ? type::kBody : type::kTick;
      const bool split = pen.figure_width(link.figure, size) > cell_w - 8;
      const std::vector<std::string_view> lines = pen.lines(link.figure, cell_w - 8, Face::bold, size);
      for (std::size_t k = 0; k < lines.size() && split; ++k)
        pen.text(box.x + 6, box.y + 52 + 16 * float(k), lines[k], Face::bold, size, colour);
      if (!split) pen.figure(box.x + 6, box.y + 60, link.figure, size, colour);
    }
    if (link.change.kind == Change::Kind::better || link.change.kind == Change::Kind::worse) {
      const bool better = link.change.kind == Change::Kind::better;
      pen.delta(better ? look::Delta::better : look::Delta::worse, box.x + 6, box.y + 86,
                better ? ui.theme.holds : ui.theme.fails);
    }
    cell_target(ui, link, box, is_open);
  }
  close_chain_list(ui);
  close_chain(ui);
  ui.y = top + 2 * kSlimCell;
}

}  // namespace

void Ui::chain_strip(Link open) {
  const std::array<Cell, 6> cells = chain_cells(session);
  if (slim()) return two_rows(*this, cells, open);
  const bool folded = layout == look::Layout::on_side;
  const bool narrow = phone();
  const float side_w = folded || narrow || layout == look::Layout::portrait || surface.w < metric::kSideFrom
                           ? 0
                           : metric::side_width(surface.w);
  const float strip_h = folded ? metric::kFoldedStrip + 20 : narrow ? metric::kPhoneStrip : metric::kStrip;
  const float left = surface.x + (narrow ? 8 : margin()), top = y;
  const float chain_w = surface.w - 2 * (narrow ? 8 : margin()) - side_w - (side_w > 0 ? 22 : 0);
  const float cell_w = chain_w / 6;
  open_chain(*this, {left, top, chain_w, strip_h});
  if (folded) {
    const float line_y = top + 18;
    for (std::size_t i = 0; i + 1 < cells.size(); ++i)
      draw_leg(*this, cells, i, {left + cell_w * float(i) + 12, line_y},
               {left + cell_w * float(i + 1) + 12, line_y}, look::stroke::kChainStrip);
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
    close_chain_list(*this);
    close_chain(*this);
    y = top + strip_h;
    return;
  }
  const float limit_y = narrow ? top + 50 : top + 64;
  const float slack_px = narrow ? metric::kSlackPhone : metric::kSlackStrip;
  const float shape_dx = narrow ? cell_w / 2 : 20;
  const ChainLine d = laid_out(cells, {left, 0, chain_w, 0}, limit_y, slack_px, look::sign::kStrip,
                               look::stroke::kChainStrip, cell_w, left + shape_dx);
  draw_chain_line(*this, d, cells, false);
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
        const bool split = pen.figure_width(link.figure, size) > cell_w - 2;
        if (split) {
          const std::vector<std::string_view> lines = pen.lines(link.figure, cell_w - 2, Face::bold, size);
          for (std::size_t k = 0; k < lines.size(); ++k)
            pen.text(mid, limit_y + 68 + 16 * float(k), lines[k], Face::bold, size, colour, look::Align::centre);
        } else {
          pen.figure(mid, limit_y + 76, link.figure, size, colour, look::Align::centre);
        }
        if (link.change.kind != Change::Kind::none) {
          const look::Delta delta = link.change.kind == Change::Kind::better  ? look::Delta::better
                                    : link.change.kind == Change::Kind::worse ? look::Delta::worse
                                                                              : look::Delta::same;
          pen.delta(delta, mid - 6, limit_y + 100,
                    delta == look::Delta::better  ? theme.holds
                    : delta == look::Delta::worse ? theme.fails
                                                  : theme.ink2);
        }
      }
    } else {
      const bool in_band = word_baseline(d, i, link, 10) - 2 > limit_y - slack_px;
      const look::Ground ground(pen, in_band ? theme.band : theme.paper);
      const bool known = link.now.state != State::unknown;
      state_word_at(*this, d, i, link, d.at[i].x - 11, 10, state_word(link.now.state),
                    known && link.now.state != State::holds, colour_of(theme, link.now.state));
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
        draw_change_in(pen, theme, at_x, limit_y + 110, cell_w - 10, link.now.binds, link.change, session.style());
      } else {
        std::vector<std::string_view> lines = pen.lines(link.second, cell_w - 12, Face::regular, type::kTick);
        if (lines.size() > 2) lines = pen.lines(link.short_second, cell_w - 12, Face::regular, type::kTick);
        for (std::size_t k = 0; k < std::min<std::size_t>(lines.size(), 2); ++k)
          pen.text(at_x, limit_y + 106 + 17 * float(k), lines[k], Face::regular, type::kTick, theme.ink2);
      }
    }
    cell_target(*this, link, {left + cell_w * float(i), top, cell_w, strip_h - 4}, is_open);
  }
  close_chain_list(*this);
  if (side_w > 0) alongside({surface.right() - margin() - side_w, top, side_w, strip_h}, false);
  close_chain(*this);
  y = top + strip_h;
}

}  // namespace gs::parts
