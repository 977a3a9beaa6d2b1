// What the views of the chain share: the line whose height is slack, and the six targets along it.
#pragma once

#include <array>

#include "app/parts/chain_cells.h"
#include "app/parts/ui.h"

namespace gs::parts {

struct ChainLine {
  look::Box area;  // from the first shape to the last, the whole width of the band
  float limit_y;   // the limit line
  float slack_px;  // height of one slack
  float shape_r;
  float line_w;
  std::array<look::Point, 6> at;
  std::array<look::Point, 6> pinned;
};

/// The six shapes at equal distances.
ChainLine laid_out(const std::array<Cell, 6>& cells, look::Box band, float limit_y, float slack_px, float shape_r,
                   float line_w, float cell_w, float first_x);
/// Back to front: tight zone, fill above it, limit line, pin, live line, shapes.
void draw_chain_line(Ui& ui, const ChainLine& line, const std::array<Cell, 6>& cells, bool notes);
/// One leg of the live line: dotted where a link is not known, and from the first failed link on.
void draw_leg(Ui& ui, const std::array<Cell, 6>& cells, std::size_t i, look::Point from, look::Point to,
              float line_w);
/// Where the state's word stands: above the shape, and above a pinned diamond that would lie under it.
float word_baseline(const ChainLine& line, std::size_t i, const Cell& link, float rise);
/// The state's word at its place; the drop line from a pinned diamond above it is interrupted behind it.
void state_word_at(Ui& ui, const ChainLine& line, std::size_t i, const Cell& link, float x, float rise,
                   std::string_view word, bool bold, ImU32 colour);

void open_chain(Ui& ui, look::Box box);  // navigation with a list
void close_chain_list(Ui& ui);
void close_chain(Ui& ui);
void open_link(Ui& ui, Link link);  // its sheet, from the top
void cell_target(Ui& ui, const Cell& link, look::Box box, bool open);
/// The figure of a link, as large as fits its cell.
void cell_figure(Ui& ui, const Cell& link, float at_x, float base, float size, float room);
/// The same where cells are narrow: on two lines where one is too short for it.
void narrow_figure(Ui& ui, const Cell& link, float at_x, float base, float room, look::Align align);

void chain_two_rows(Ui& ui, Link open);  // chain_folded.cpp: three and three
void chain_folded(Ui& ui, Link open);    // chain_folded.cpp: one level line, Safety, Clock and Kit at its end

}  // namespace gs::parts
