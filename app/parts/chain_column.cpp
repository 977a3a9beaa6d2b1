// The chain as a column with slack to the right, on a phone's Overview.
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "app/parts/chain_line.h"
#include "app/parts/change.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
namespace type = look::type;
namespace metric = look::chain;

namespace {

/// State word, with what the figure is where two lines hold it.
std::vector<std::string_view> wording(const Ui& ui, const std::string& full, const std::string& word, float room) {
  std::vector<std::string_view> lines = ui.pen.lines(full, room, Face::regular, type::kLabel);
  if (lines.size() > 2 || look::Pen::breaks_word(lines))
    lines = ui.pen.lines(word, room, Face::regular, type::kLabel);
  return lines;
}

struct Narrow {
  std::string word, full, change;
  bool by_words, has_change;
};
Narrow narrow_of(const Ui& ui, const Cell& link) {
  const std::string word(state_word(link.now.state));
  return {word, word + ", " + link.short_second, say_change(link.now.binds, link.change, ui.session.style()),
          link.figure.empty(), link.change.kind != Change::Kind::none};
}

float narrow_height(const Ui& ui, const Cell& link, float room) {
  const Narrow told = narrow_of(ui, link);
  const float lines = float(wording(ui, told.full, told.word, room).size());
  return 22 + (told.by_words ? 0 : 34) + 21 * (lines + (told.has_change ? 2 : 0)) + 12;
}

void narrow_words(Ui& ui, const Cell& link, float x, float base, float room) {
  const Narrow told = narrow_of(ui, link);
  if (!told.by_words) {
    base += 32;
    cell_figure(ui, link, x, base, type::kValue, room);
  }
  for (const std::string_view line : wording(ui, told.full, told.word, room)) {
    base += 21;
    ui.pen.text(x, base, line, Face::regular, type::kLabel, colour_of(ui.theme, link.now.state));
  }
  if (told.has_change)
    draw_change_in(ui.pen, ui.theme, x, base + 21, room, link.now.binds, link.change, ui.session.style());
}

}  // namespace

void Ui::chain_column() {
  const std::array<Cell, 6> cells = chain_cells(session);
  const bool narrow = surface.w < 340;  // the figure under the name, slack drawn narrower
  const float top = y, limit_x = surface.x + margin() + (slim() ? 28 : 40);
  const float slack_px = slim() ? 20 : metric::kSlackColumn;
  const float words_x = slim() ? limit_x + slack_px * metric::kSlackMost + 16 : surface.x + margin() + 122;
  const float words_right = surface.right() - margin();
  // rows as high as what stands in them
  std::array<float, 7> tops{top};
  for (std::size_t i = 0; i < cells.size(); ++i)
    tops[i + 1] = tops[i] + (narrow ? narrow_height(*this, cells[i], words_right - words_x) : 77.0F);
  const float bottom = tops[6];
  const Box area{surface.x + margin(), top, surface.w - 2 * margin(), bottom - top};
  open_chain(*this, area);
  pen.fill({limit_x, top, slack_px, bottom - top}, theme.band);
  pen.limit_line_upright(limit_x, top, bottom, theme.ink);
  const auto at = [&](std::size_t i, const Standing& s) {
    return Point{limit_x + slack_px * drawn_slack(s), narrow ? tops[i] + 30 : (tops[i] + tops[i + 1]) / 2};
  };
  for (std::size_t i = 0; i + 1 < cells.size(); ++i) {
    if (session.pinned_outlook() && cells[i].pinned.state != State::unknown &&
        cells[i + 1].pinned.state != State::unknown) {
      const Point was[] = {at(i, cells[i].pinned), at(i + 1, cells[i + 1].pinned)};
      pen.dashed(was, look::stroke::kPin, theme.pin, look::stroke::kRule);
    }
    draw_leg(*this, cells, i, at(i, cells[i].now), at(i + 1, cells[i + 1].now), look::stroke::kChainOverview);
  }
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
    const float base = tops[i] + (narrow ? 22 : 32);
    pen.text(words_x, base, link_name(link.link), Face::bold, type::kBody, theme.ink);
    cell_target(*this, link, {area.x, tops[i], area.w, tops[i + 1] - tops[i]}, false);
    const ImU32 colour = link.now.state == State::holds ? theme.ink : colour_of(theme, link.now.state);
    if (narrow) {
      narrow_words(*this, link, words_x, base, words_right - words_x);
      continue;
    }
    if (!link.figure.empty()) {
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
  }
  close_chain_list(*this);
  close_chain(*this);
  y = bottom;
  const float label_base = y + 15;
  if (slim()) return gap(12);  // no room for what the hachures and the band say as well
  pen.text(limit_x + 8, label_base, "limit", Face::italic, type::kTick, theme.contour, look::Align::right);
  pen.text(limit_x + slack_px - 8, label_base, "at ease", Face::italic, type::kTick, theme.contour);
  gap(24);
}

}  // namespace gs::parts
