// Any link by its rows in the tables: its readings, then its levers. A link without rows says so.
#include "app/sheets/sheets.h"

namespace gs::sheets {

using mirror::Role;
using parts::Ui;

void link(Ui& ui) {
  const Link which = ui.session.view.link;
  ui.chain_strip(which);
  const Panel panel = ui.session.view.panel;
  const float left = ui.surface.x + ui.margin(), width = ui.surface.w - 2 * ui.margin();
  const float top = ui.y + 4, height = ui.surface.bottom() - top;
  const std::string name(link_name(which));
  ui.open_group(Role::main, "main", name, {ui.surface.x, top, ui.surface.w, height});
  if (panel == Panel::why || panel == Panel::keypad) {
    ui.column(left, std::min(width, 560.0F), top);
    panel == Panel::why ? ui.why_panel() : ui.keypad();
    ui.close_group();
    return;
  }
  ui.begin_scroll("sheet", {ui.surface.x, top, ui.surface.w, height});
  ui.column(left, std::min(width, 640.0F), ui.y + 8);
  ui.title(name, "sheet");
  ui.gap();
  bool any = false;
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    if (reading(R(i)).link != which) continue;
    any = true;
    ui.reading_row(R(i));
    ui.rule();
  }
  for (std::size_t i = 0; i < std::size_t(L::count); ++i) {
    if (lever(L(i)).link != which) continue;
    any = true;
    ui.lever_row(L(i));
  }
  if (!any)
    ui.paragraph("Not known. This link does not answer yet; the others do not wait for it.", "sheet:none",
                 ui.theme.ink2);
  ui.gap(16);
  ui.end_scroll();
  ui.close_group();
}

}  // namespace gs::sheets
