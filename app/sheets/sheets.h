// One function a sheet: little more than a list of parts.
#pragma once

#include "app/parts/ui.h"

namespace gs::sheets {

void header(parts::Ui& ui);  // mark, outing, undo, pin, theme, more
void overview(parts::Ui& ui);
void link(parts::Ui& ui);  // the open link
void more(parts::Ui& ui);  // outing, reading aids, files, about
void text(parts::Ui& ui);  // a page of words
void on_air(parts::Ui& ui);

}  // namespace gs::sheets
