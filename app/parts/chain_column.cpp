// The chain as a column with slack to the right, on a phone's Overview.
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
    if (session.pinned_outlook() && cells[i].pinned.state != State::unknown &&
        cells[i + 1].pinned.state != State::unknown) {
      const Point was[] = {at(i, cells[i].pinned), at(i + 1, cells[i + 1].pinned)};
      pen.dashed(was, look::stroke::kPin, theme.pin, look::stroke::kRule);
    }
    draw_leg(*this, cells, i, at(i, cells[i].now), at(i + 1, cells[i + 1].now), look::stroke::kChainOverview);
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
    // the fullest of three wordings that stands whole in two lines beside the change
    const float change_w =
        18 + pen.width(say_change(link.now.binds, link.change, session.style()), Face::bold, type::kLabel);
    const float room = words_right - words_x - (has_change ? change_w + 10 : 0);
    const std::string word(state_word(link.now.state));
    const std::string wordings[] = {word + ", " + link.second, word + ", " + link.short_second, word};
    for (const std::string& wording : wordings) {
      const std::vector<std::string_view> lines = pen.lines(wording, room, Face::regular, type::kLabel);
      if (lines.size() > 2 && &wording != &wordings[2]) continue;
      for (std::size_t k = 0; k < lines.size(); ++k)
        pen.text(words_x, base + 23 + 19 * float(k), lines[k], Face::regular, type::kLabel,
                 colour_of(theme, link.now.state));
      break;
    }
    if (has_change)
      draw_change(pen, theme, words_right, base + 30, link.now.binds, link.change, session.style(),
                  look::Align::right);
    cell_target(*this, link, {area.x, top + step * float(i), area.w, step}, false);
  }
  close_chain_list(*this);
  close_chain(*this);
  y = top + step * 6;
  const float label_base = y + 15;
  pen.text(limit_x + 8, label_base, "limit", Face::italic, type::kTick, theme.contour, look::Align::right);
  pen.text(limit_x + slack_px - 8, label_base, "at ease", Face::italic, type::kTick, theme.contour);
  gap(24);
}

}  // namespace gs::parts
