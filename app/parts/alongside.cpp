// Safety, Clock and Kit: beside the chain, because they do not feed it.
#include <array>

#include "app/parts/chain_cells.h"
#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

float Ui::alongside(Box box, bool across) {
  constexpr std::array<Link, 3> kBeside{Link::safety, Link::clock, Link::kit};
  constexpr float kLeastAcross = 112;
  if (across && box.w / 3 < kLeastAcross) {
    across = false;
    box.h = 3 * look::space::kTarget;
  }
  open_group(Role::list, "beside", "Alongside", box);
  const float step = across ? box.w / 3 : std::min(108.0F, box.h / 3);
  for (std::size_t i = 0; i < kBeside.size(); ++i) {
    const Cell link = cell(session, kBeside[i]);
    const Box place = across ? Box{box.x + step * float(i), box.y, step - 8, box.h}
                             : Box{box.x, box.y + step * float(i), box.w, step};
    const bool roomy = step > 80 && !across;
    const float base = place.y + (roomy ? 22 : 20);
    if (roomy || across) {
      pen.icon(icon_of(link.link), place.x, base - 18, 24, theme.ink);
      pen.text(place.x + 32, base, link_name(link.link), Face::bold, type::kLabel, theme.ink);
      pen.sign(sign_of(link.now.state), {place.x + 12, base + 27}, look::sign::kList);
      const std::string_view word = state_word(link.now.state);
      const bool fits = pen.width(word, Face::bold, type::kLabel) <= place.w - 34;
      pen.text(place.x + 34, base + 33, word, Face::bold, fits ? type::kLabel : type::kTick,
               colour_of(theme, link.now.state));
      // whole words only: two lines where there is room, else the short form, else nothing (the mirror has it all)
      const float room = place.w - 34;
      const std::size_t most = roomy ? 2 : 1;
      for (const std::string* words : {&link.second, &link.short_second}) {
        const std::vector<std::string_view> lines = pen.lines(*words, room, Face::regular, type::kTick);
        if (lines.size() > most) continue;
        for (std::size_t k = 0; k < lines.size(); ++k)
          pen.text(place.x + 34, base + 54 + 17 * float(k), lines[k], Face::regular, type::kTick, theme.ink2);
        break;
      }
    } else {
      pen.sign(sign_of(link.now.state), {place.x + 14, place.mid_y()}, look::sign::kList);
      pen.text(place.x + 38, place.mid_y() - 4, link_name(link.link), Face::regular, type::kLabel, theme.ink);
      pen.text(place.x + 38, place.mid_y() + 16, state_word(link.now.state), Face::bold, type::kTick,
               colour_of(theme, link.now.state));
    }
    if (!link.figure.empty()) {
      const float size = place.w > 200 ? type::kValue : type::kBody;
      const float figure_base = roomy ? base + 4 : across ? base : place.mid_y() + 8;
      if (place.w > 150)
        pen.figure(place.right(), figure_base, link.figure, size,
                   link.now.state == State::unknown
                       ? theme.ink2
                       : colour_of(theme, link.now.state == State::holds ? State::none : link.now.state),
                   look::Align::right);
    } else if (!across || place.w > 220) {
      pen.line({place.right() - 38, base - 6}, {place.right(), base - 6}, theme.ink2, look::stroke::kStrong);
    }
    mirror::Node item;
    item.role = Role::button;
    item.id = "chain:" + std::string(link_key(link.link));
    item.name = link.spoken;
    if (target(std::move(item), place, 10)) {
      session.view.sheet = Sheet::link;
      session.view.link = link.link;
      session.view.panel = Panel::none;
      wake_at(now_s);
    }
  }
  close_group();
  return box.h;
}

}  // namespace gs::parts
