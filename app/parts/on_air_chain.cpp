// The chain where height is needed for the contact button: six shapes on their line, no words, still the way to
// every sheet.
#include "app/parts/chain_line.h"
#include "app/parts/on_air.h"

namespace gs::parts {

using look::Box;

void chain_small(Ui& ui) {
  constexpr float kHigh = 60, kLimit = 40;
  const std::array<Cell, 6> cells = chain_cells(ui.session);
  const float side = ui.phone() ? 8 : ui.margin(), top = ui.y;
  const float left = ui.surface.x + side, wide = ui.surface.w - 2 * side, cell_w = wide / 6;
  open_chain(ui, {left, top, wide, kHigh});
  const ChainLine line = laid_out(cells, {left, 0, wide, 0}, top + kLimit, 14, look::sign::kStrip,
                                  look::stroke::kChainStrip, cell_w, left + cell_w / 2);
  draw_chain_line(ui, line, cells, false);
  for (std::size_t i = 0; i < cells.size(); ++i)
    cell_target(ui, cells[i], {left + cell_w * float(i), top, cell_w, kHigh - 4}, cells[i].link == Link::contacts);
  close_chain_list(ui);
  close_chain(ui);
  ui.y = top + kHigh;
}

}  // namespace gs::parts
