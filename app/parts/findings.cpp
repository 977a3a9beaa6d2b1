// What figures mean, a sentence a line with the sign of how much it matters.
#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

void Ui::findings(const std::vector<Finding>& found) {
  if (found.empty()) return;
  section("What it means", "findings");
  open_group(Role::list, "findings:list", "What it means", {x, y, w, 0});
  constexpr float kSignRoom = 30;
  for (std::size_t i = 0; i < found.size(); ++i) {
    const Finding& one = found[i];
    const std::size_t lines = pen.lines(one.sentence, w - kSignRoom, Face::regular, type::kBody).size();
    const Box box = take(float(lines) * type::line_height(type::kBody) + 8);
    const look::Point mark{box.x + 11, box.y + 4 + type::kBody * 0.65F};
    if (one.state == State::none)
      pen.disc(mark, 3, theme.ink2);
    else
      pen.sign(sign_of(one.state), mark, look::sign::kList);
    pen.paragraph(box.x + kSignRoom, box.y + 4 + type::kBody, w - kSignRoom, one.sentence, Face::regular,
                  type::kBody, theme.ink);
    const std::string word(state_word(one.state));
    node(Role::listitem, "findings:" + std::to_string(i), (word.empty() ? "" : word + ": ") + one.sentence, box);
  }
  close_group();
}

}  // namespace gs::parts
