// The chain where height is needed for the contact button: six shapes on their line, no words, still the way to
// every sheet.
#include "app/parts/chain_line.h"
#include "app/parts/on_air.h"

namespace gs::parts {

using look::Box;

namespace {

/// Three and three, level: a shape over its icon.
void small_rows(Ui& ui, const std::array<Cell, 6>& cells, Box area) {
  constexpr float kRow = 58, kLineY = 15;
  const float cell_w = area.w / 3, top = ui.y;
  open_chain(ui, {area.x, top, area.w, 2 * kRow});
  const auto at = [&](std::size_t i) {
    return Box{area.x + cell_w * float(i % 3), top + kRow * float(i / 3), cell_w, kRow};
  };
  for (std::size_t i = 0; i + 1 < cells.size(); ++i)
    if (i != 2)
      draw_leg(ui, cells, i, {at(i).mid_x(), at(i).y + kLineY}, {at(i + 1).mid_x(), at(i).y + kLineY},
               look::stroke::kChainStrip);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const Box box = at(i);
    ui.pen.sign(sign_of(cells[i].now.state), {box.mid_x(), box.y + kLineY}, look::sign::kStrip);
    ui.pen.icon(icon_of(cells[i].link), box.mid_x() - 12, box.y + 30, 24, ui.theme.ink);
    cell_target(ui, cells[i], box, cells[i].link == Link::contacts);
  }
  close_chain_list(ui);
  close_chain(ui);
  ui.y = top + 2 * kRow;
}

}  // namespace

void chain_small(Ui& ui, Box area) {
  constexpr float kHigh = 60, kLimit = 35;
  const std::array<Cell, 6> cells = chain_cells(ui.session);
  const float side = ui.phone() ? 8 : ui.margin(), top = ui.y;
  const float left = area.x + side, wide = area.w - 2 * side, cell_w = wide / 6;
  if (cell_w < look::space::kTarget) return small_rows(ui, cells, {left, 0, wide, 0});
  open_chain(ui, {left, top, wide, kHigh});
  const ChainLine line = laid_out(cells, {left, 0, wide, 0}, top + kLimit, 11, look::sign::kStrip,
                                  look::stroke::kChainStrip, cell_w, left + cell_w / 2);
  draw_chain_line(ui, line, cells, false);
  for (std::size_t i = 0; i < cells.size(); ++i)
    cell_target(ui, cells[i], {left + cell_w * float(i), top, cell_w, kHigh - 4}, cells[i].link == Link::contacts);
  close_chain_list(ui);
  close_chain(ui);
  ui.y = top + kHigh;
}

}  // namespace gs::parts
