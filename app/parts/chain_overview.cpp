// The chain large, on Overview.
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

void Ui::chain_overview() {
  const std::array<Cell, 6> cells = chain_cells(session);
  const bool across = layout == look::Layout::portrait || surface.w < metric::kSideFrom;
  const float side_w = across ? 0 : metric::side_width(surface.w);
  const float left = surface.x + margin(), top = y;
  const float chain_w = surface.w - 2 * margin() - side_w - (side_w > 0 ? 22 : 0);
  const float cell_w = chain_w / 6;
  const float slack_px = across ? metric::kSlackTall : metric::kSlackOverview;
  const float figure_size = layout == look::Layout::wide ? type::kHeadline : type::kFigure;
  const float limit_y = top + slack_px * 2 + 34;
  const ChainLine d = laid_out(cells, {left, 0, chain_w, 0}, limit_y, slack_px, look::sign::kOverview,
                               look::stroke::kChainOverview, cell_w, left + 20);
  const bool nothing =
      std::all_of(cells.begin(), cells.end(), [](const Cell& c) { return c.now.state == State::unknown; });
  float lowest = limit_y + 24;
  for (const Point& p : d.pinned) lowest = std::max(lowest, session.pinned_outlook() ? p.y + 16 : 0);
  for (const Point& p : d.at) lowest = std::max(lowest, p.y + 24);
  const float words_y = lowest + 26;
  const float bottom = words_y + 118;
  open_chain(*this, {left, top, chain_w, bottom - top});
  draw_chain_line(*this, d, cells, true);
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
      const bool begin = nothing && link.link == Link::battery;
      const std::string_view word = begin ? std::string_view("begin here") : state_word(link.now.state);
      const bool bold = begin || link.now.state == State::tight || link.now.state == State::fails;
      state_word_at(*this, d, i, link, d.at[i].x - 15, 12, word, bold,
                    begin ? theme.ink : colour_of(theme, link.now.state));
    }
    pen.icon(icon_of(link.link), at_x, words_y - 18, 24, theme.ink);
    pen.text(at_x + 30, words_y, link_name(link.link), Face::bold, type::kLabel, theme.ink);
    cell_figure(*this, link, at_x, words_y + 42, figure_size, cell_w - 10);
    std::vector<std::string_view> lines = pen.lines(link.second, cell_w - 12, Face::regular, type::kLabel);
    if (lines.size() > 2) lines = pen.lines(link.short_second, cell_w - 12, Face::regular, type::kLabel);
    for (std::size_t k = 0; k < std::min<std::size_t>(lines.size(), 2); ++k)
      pen.text(at_x, words_y + 68 + 21 * float(k), lines[k], Face::regular, type::kLabel, theme.ink2);
    if (link.change.kind != Change::Kind::none)
      draw_change_in(pen, theme, at_x,
                     words_y + 68 + 23 * float(std::max<std::size_t>(1, std::min<std::size_t>(lines.size(), 2))),
                     cell_w - 12, link.now.binds, link.change, session.style());
    cell_target(*this, link, {left + cell_w * float(i), top, cell_w, bottom - top}, false);
  }
  close_chain_list(*this);
  if (side_w > 0) {
    alongside({surface.right() - margin() - side_w, top, side_w, bottom - top}, Beside::column);
    y = bottom;
  } else {
    y = bottom + 8;
    pen.line({left, y}, {left + chain_w, y}, theme.rule, look::stroke::kHair);
    alongside({left, y + 8, chain_w, 96}, Beside::across);
    y += 112;
  }
  close_chain(*this);
}

}  // namespace gs::parts
