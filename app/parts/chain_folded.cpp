// The chain where it cannot be drawn by heights: on one level line where height is short, in two rows of three
// where width is.
#include <algorithm>
#include <cmath>

#include "app/parts/chain_line.h"
#include "app/parts/change.h"

namespace gs::parts {

using look::Box;
using look::Face;
namespace type = look::type;
namespace metric = look::chain;

namespace {

constexpr float kLineY = 14, kNameBase = 41, kFigureBase = 70, kChangeBase = 91;  // of a folded cell, from its top

void folded_cell(Ui& ui, const Cell& link, Box box, bool is_open, bool changes) {
  look::Pen& pen = ui.pen;
  const float x = box.x + 4;
  pen.sign(sign_of(link.now.state), {x + 12, box.y + kLineY}, look::sign::kFolded);
  const std::string_view name = link_name(link.link);
  const float name_w = pen.width(name, Face::bold, type::kLabel);
  const bool by_icon = name_w + 14 > box.w;
  if (is_open) {
    const Box pill{x - 4, box.y + kNameBase - 18, by_icon ? 40 : name_w + 12, 24};
    pen.fill(pill, ui.theme.ink, 12);
  }
  const look::Ground ground(pen, is_open ? ui.theme.ink : ui.theme.paper);
  const ImU32 ink = is_open ? ui.theme.on_ink : ui.theme.ink;
  if (by_icon)
    pen.icon(icon_of(link.link), x + 6, box.y + kNameBase - 17, 22, ink);
  else
    pen.text(is_open ? x + 2 : x, box.y + kNameBase, name, is_open ? Face::bold : Face::regular, type::kLabel, ink);
  const look::Ground paper(pen, ui.theme.paper);
  cell_figure(ui, link, x, box.y + kFigureBase, type::kValue, box.w - 8);
  if (!changes) return;
  if (link.now.state != State::holds) {
    const std::string_view word = state_word(link.now.state);
    if (28 + pen.width(word, Face::bold, type::kTick) < box.w - 6) {
      const float from = x + 28, wide = pen.width(word, Face::bold, type::kTick);
      pen.fill({from - 2, box.y + 2, wide + 4, 24}, ui.theme.paper);  // the line is interrupted behind the word
      pen.text(from, box.y + kLineY + 5, word, Face::bold, type::kTick, colour_of(ui.theme, link.now.state));
    }
  }
  if (link.change.kind != Change::Kind::none)
    draw_change_in(pen, ui.theme, x, box.y + kChangeBase, box.w - 8, link.now.binds, link.change,
                   ui.session.style());
}

void folded_legs(Ui& ui, const std::array<Cell, 6>& cells, float left, float cell_w, float line_y) {
  for (std::size_t i = 0; i + 1 < cells.size(); ++i)
    draw_leg(ui, cells, i, {left + cell_w * float(i) + 16, line_y}, {left + cell_w * float(i + 1) + 16, line_y},
             look::stroke::kChainStrip);
}

}  // namespace

void chain_two_rows(Ui& ui, Link open) {
  const std::array<Cell, 6> cells = chain_cells(ui.session);
  look::Pen& pen = ui.pen;
  const float left = ui.surface.x + 4, top = ui.y, cell_w = (ui.surface.w - 8) / 3;
  open_chain(ui, {left, top, 3 * cell_w, metric::kTwoRows});
  const auto at = [&](std::size_t i) {
    return look::Box{left + cell_w * float(i % 3), top + metric::kSlimCell * float(i / 3), cell_w,
                     metric::kSlimCell};
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
    narrow_figure(ui, link, box.x + 6, box.y + 60, cell_w - 8, look::Align::left);
    if (link.change.kind == Change::Kind::better || link.change.kind == Change::Kind::worse) {
      const bool better = link.change.kind == Change::Kind::better;
      pen.delta(better ? look::Delta::better : look::Delta::worse, box.x + 6, box.y + 86,
                better ? ui.theme.holds : ui.theme.fails);
    }
    cell_target(ui, link, box, is_open);
  }
  close_chain_list(ui);
  close_chain(ui);
  ui.y = top + metric::kTwoRows;
}

void chain_folded(Ui& ui, Link open) {
  constexpr float kBetween = 16;
  const std::array<Cell, 6> cells = chain_cells(ui.session);
  const float left = ui.surface.x + ui.margin() - 4, wide = ui.surface.w - 2 * ui.margin() + 8, top = ui.y;
  const float beside_w = std::min(78.0F, wide / 10), cell_w = (wide - kBetween - 3 * beside_w) / 6;
  open_chain(ui, {left, top, wide, metric::kFoldedStrip});
  folded_legs(ui, cells, left, cell_w, top + kLineY);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Box box{left + cell_w * float(i), top, cell_w, metric::kFoldedStrip};
    folded_cell(ui, cells[i], box, cells[i].link == open, false);
    cell_target(ui, cells[i], box, cells[i].link == open);
  }
  close_chain_list(ui);
  const float beside_x = left + wide - 3 * beside_w;
  ui.open_group(mirror::Role::list, "beside", "Alongside", {beside_x, top, 3 * beside_w, metric::kFoldedStrip});
  for (std::size_t i = 0; i < kBeside.size(); ++i) {
    const Cell link = cell(ui.session, kBeside[i]);
    const Box box{beside_x + beside_w * float(i), top, beside_w, metric::kFoldedStrip};
    folded_cell(ui, link, box, link.link == open, false);
    cell_target(ui, link, box, link.link == open);
  }
  ui.close_group();
  close_chain(ui);
  ui.y = top + metric::kFoldedStrip + 4;
}

void Ui::chain_level(Box box) {
  constexpr float kHigh = 96;
  const std::array<Cell, 6> cells = chain_cells(session);
  const float cell_w = (box.w + 4) / 6, left = box.x - 4;
  open_chain(*this, {left, box.y, box.w + 4, kHigh});
  folded_legs(*this, cells, left, cell_w, box.y + kLineY);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Box at{left + cell_w * float(i), box.y, cell_w, kHigh};
    folded_cell(*this, cells[i], at, false, true);
    cell_target(*this, cells[i], at, false);
  }
  close_chain_list(*this);
  close_chain(*this);
  y = box.y + kHigh;
}

}  // namespace gs::parts
