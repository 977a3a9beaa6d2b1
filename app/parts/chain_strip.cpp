// The chain above every sheet, its heights the slack; icons instead of names on a phone.
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

void Ui::chain_strip(Link open) {
  if (slim()) return chain_two_rows(*this, open);
  if (layout == look::Layout::on_side) return chain_folded(*this, open);
  const std::array<Cell, 6> cells = chain_cells(session);
  const bool narrow = phone();
  const bool below = layout == look::Layout::portrait;  // Safety, Clock and Kit
  const float side_w = narrow || below || surface.w < metric::kSideFrom ? 0 : metric::side_width(surface.w);
  const float strip_h = narrow ? metric::kPhoneStrip : metric::kStrip;
  const float left = surface.x + (narrow ? 8 : margin()), top = y;
  const float chain_w = surface.w - 2 * (narrow ? 8 : margin()) - side_w - (side_w > 0 ? 22 : 0);
  const float cell_w = chain_w / 6;
  open_chain(*this, {left, top, chain_w, strip_h});
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
      const Box pill{mid - 22, limit_y + 28, 44, 30};
      if (is_open) pen.fill(pill, theme.ink, 15);
      pen.icon(icon_of(link.link), mid - 12, pill.mid_y() - 12, 24, is_open ? theme.on_ink : theme.ink);
      narrow_figure(*this, link, mid, limit_y + 81, cell_w - 2, look::Align::centre);
      if (link.change.kind != Change::Kind::none) {
        const look::Delta delta = link.change.kind == Change::Kind::better  ? look::Delta::better
                                  : link.change.kind == Change::Kind::worse ? look::Delta::worse
                                                                            : look::Delta::same;
        pen.delta(delta, mid - 6, limit_y + 102,
                  delta == look::Delta::better  ? theme.holds
                  : delta == look::Delta::worse ? theme.fails
                                                : theme.ink2);
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
  if (side_w > 0) alongside({surface.right() - margin() - side_w, top, side_w, strip_h - 4}, Beside::column, open);
  y = top + strip_h;
  if (below) gap(alongside({left, y, chain_w, look::space::kTarget}, Beside::line, open) + 8);
  close_chain(*this);
}

}  // namespace gs::parts
