// Safety, Clock and Kit: beside the chain, because they do not feed it.
#include <algorithm>

#include "app/parts/chain_line.h"

namespace gs::parts {

using look::Box;
using look::Face;
namespace type = look::type;

namespace {

ImU32 figure_colour(const Ui& ui, const Cell& link) {
  if (link.now.state == State::unknown) return ui.theme.ink2;
  return colour_of(ui.theme, link.now.state == State::holds ? State::none : link.now.state);
}

/// Name at its baseline; of the open one reversed in a pill.
void named(Ui& ui, const Cell& link, float x, float base, Face face, bool is_open) {
  const std::string_view name = link_name(link.link);
  if (!is_open) {
    ui.pen.text(x, base, name, face, type::kLabel, ui.theme.ink);
    return;
  }
  ui.pen.fill({x - 9, base - 18, ui.pen.width(name, Face::bold, type::kLabel) + 18, 25}, ui.theme.ink, 12.5F);
  const look::Ground dark(ui.pen, ui.theme.ink);
  ui.pen.text(x, base, name, Face::bold, type::kLabel, ui.theme.on_ink);
}

void figure_at(Ui& ui, const Cell& link, float right, float base, float size) {
  if (link.figure.empty()) {
    ui.pen.line({right - 38, base - 7}, {right, base - 7}, ui.theme.ink2, look::stroke::kStrong);
    return;
  }
  ui.pen.figure(right, base, link.figure, size, figure_colour(ui, link), look::Align::right);
}

/// Icon and name, below them state and what it is about.
void tall(Ui& ui, const Cell& link, Box place, bool roomy) {
  look::Pen& pen = ui.pen;
  const float base = place.y + (roomy ? 22 : 20);
  pen.icon(icon_of(link.link), place.x, base - 18, 24, ui.theme.ink);
  pen.text(place.x + 32, base, link_name(link.link), Face::bold, type::kLabel, ui.theme.ink);
  pen.sign(sign_of(link.now.state), {place.x + 12, base + 27}, look::sign::kList);
  const std::string_view word = state_word(link.now.state);
  const bool fits = pen.width(word, Face::bold, type::kLabel) <= place.w - 34;
  pen.text(place.x + 34, base + 33, word, Face::bold, fits ? type::kLabel : type::kTick,
           colour_of(ui.theme, link.now.state));
  // whole words only: two lines where there is room, else the short form, else nothing (the mirror has it all)
  const float room = place.w - 34;
  const std::size_t most = roomy ? 2 : 1;
  for (const std::string* words : {&link.second, &link.short_second}) {
    const std::vector<std::string_view> lines = pen.lines(*words, room, Face::regular, type::kTick);
    if (lines.size() > most) continue;
    for (std::size_t k = 0; k < lines.size(); ++k)
      pen.text(place.x + 34, base + 54 + 17 * float(k), lines[k], Face::regular, type::kTick, ui.theme.ink2);
    break;
  }
  if (link.figure.empty() ? roomy || place.w > 220 : place.w > 150)
    figure_at(ui, link, place.right(), base + (roomy ? 4 : 0), place.w > 200 ? type::kValue : type::kBody);
}

/// Sign, name over state, figure.
void flat(Ui& ui, const Cell& link, Box place, bool is_open) {
  ui.pen.sign(sign_of(link.now.state), {place.x + 14, place.mid_y()}, look::sign::kList);
  named(ui, link, place.x + 38, place.mid_y() - 4, Face::regular, is_open);
  ui.pen.text(place.x + 38, place.mid_y() + (is_open ? 20 : 16), state_word(link.now.state), Face::bold,
              type::kTick, colour_of(ui.theme, link.now.state));
  if (place.w > 150)
    figure_at(ui, link, place.right(), place.mid_y() + 8, place.w > 200 ? type::kValue : type::kBody);
}

}  // namespace

float Ui::alongside(Box box, Beside how, Link open) {
  constexpr float kLeastAcross = 122;  // "not known" beside its sign
  if (how == Beside::across && box.w / 3 < kLeastAcross) {
    how = Beside::column;
    box.h = 3 * look::space::kTarget;
  }
  open_group(mirror::Role::list, "beside", "Alongside", box);
  const bool column = how == Beside::column;
  const float step = !column ? box.w / 3 : std::min(108.0F, box.h / 3);
  for (std::size_t i = 0; i < kBeside.size(); ++i) {
    const Cell link = cell(session, kBeside[i]);
    const bool is_open = link.link == open;
    const Box place = column ? Box{box.x, box.y + step * float(i), box.w, step}
                             : Box{box.x + step * float(i), box.y, step - 16, box.h};
    const bool roomy = column && step > 80;
    if (roomy || how == Beside::across)
      tall(*this, link, place, roomy);
    else
      flat(*this, link, place, is_open);
    cell_target(*this, link, place, is_open);
  }
  close_group();
  return box.h;
}

}  // namespace gs::parts
