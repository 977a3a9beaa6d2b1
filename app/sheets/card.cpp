// The field card: words for paper as they will stand there, to print or to save.
#include "app/platform/platform.h"
#include "app/sheets/begin.h"
#include "app/sheets/sheets.h"
#include "core/outing/field_card.h"

namespace gs::sheets {

using look::Icon;
using parts::Ui;

namespace {

void part_of(Ui& ui, const CardPart& part, int index) {
  const std::string id = "card:" + std::to_string(index);
  if (!part.heading.empty()) ui.section(part.heading, id);
  int row = 0;
  for (const auto& [what, how_much] : part.rows) {
    ui.row(id + ":" + std::to_string(row++), what, how_much, how_much, -1);
    ui.rule();
  }
  for (const std::string& line : part.lines) {
    ui.gap(4);
    ui.paragraph(line, id + ":" + std::to_string(row++), ui.theme.ink);
  }
  ui.gap(16);
}

}  // namespace

void card(Ui& ui) {
  Session& session = ui.session;
  const FieldCard words = field_card(session.outing(), session.plan(), session.outlook(), session.style());
  const look::Box all{ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y};
  ui.open_group(mirror::Role::main, "main", "Field card", all);
  ui.begin_scroll("card", all);
  const float margin = ui.margin(), wide = all.w - 2 * margin;
  ui.column(all.x + margin, std::min(wide, 760.0F), ui.y + 8);
  ui.title("Field card", "sheet");
  ui.paragraph(words.title, "card:title", ui.theme.ink2);
  ui.gap();
  if (ui.button("card:print", "Print it", parts::Weight::main, Icon::count) && !platform::print(card_json(words))) {
    session.notes.push_back("There is no printing from here: save it and print the file.");
    ui.wake_at(ui.now_s);
  }
  ui.gap();
  if (ui.button("card:save", "Save it as text", parts::Weight::plain, Icon::count))
    platform::save_file(file_stem(session.outing().name) + "-card.txt", card_text(words));
  ui.gap(16);
  int index = 0;
  for (const CardPart& part : words.parts) part_of(ui, part, index++);
  ui.end_scroll();
  ui.close_group();
}

}  // namespace gs::sheets
