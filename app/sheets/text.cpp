// A page of words, line by line: licences and methods where there are no browser tabs.
#include "app/sheets/sheets.h"

namespace gs::sheets {

using parts::Ui;

void text(Ui& ui) {
  const float left = ui.surface.x + ui.margin(), width = std::min(ui.surface.w - 2 * ui.margin(), 760.0F);
  ui.open_group(mirror::Role::main, "main", "A page of words",
                {ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y});
  ui.begin_scroll("text", {ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y});
  ui.column(left, width, ui.y + 8);
  std::string_view rest = ui.session.view.text;
  for (int number = 0; !rest.empty(); ++number) {
    const std::size_t end = rest.find('\n');
    std::string_view line = rest.substr(0, end);
    rest = end == std::string_view::npos ? std::string_view{} : rest.substr(end + 1);
    const std::string id = "text:" + std::to_string(number);
    const std::size_t level = line.find_first_not_of('#');
    if (level != std::string_view::npos && level > 0 && line[level] == ' ') {
      ui.gap();
      ui.section(line.substr(level + 1), id);
    } else if (line.empty()) {
      ui.gap(look::space::kGap);
    } else {
      ui.paragraph(line, id, ui.theme.ink);
    }
  }
  ui.gap(24);
  ui.end_scroll();
  ui.close_group();
}

}  // namespace gs::sheets
