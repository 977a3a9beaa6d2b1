// One function a sheet: little more than a list of parts.
#pragma once

#include "app/parts/ui.h"

namespace gs::sheets {

void header(parts::Ui& ui);  // mark, outing, undo, pin, theme, more
void overview(parts::Ui& ui);
void link(parts::Ui& ui);  // the open link
/// The sheet on which the lever stands, the lever open and with the keyboard; this link's where it stands there
/// too.
void open_control(parts::Ui& ui, L id, Link rather);
void more(parts::Ui& ui);     // outing, reading aids, files, about
void text(parts::Ui& ui);     // a page of words
void outings(parts::Ui& ui);  // all that are kept, and where else one can begin
void things(parts::Ui& ui);   // the person's own battery, radio, cable, antenna
void on_air(parts::Ui& ui);
void card(parts::Ui& ui);     // field card
void after(parts::Ui& ui);    // planned beside what happened
void history(parts::Ui& ui);  // earlier outings, and what they make usual
/// Goes to the history's sheet.
void open_history(parts::Ui& ui);

/// A file name a person recognises: letters and digits of the outing's name; the stem, and with an outing's ending.
std::string file_stem(std::string_view outing_name);
std::string file_name(std::string_view outing_name);

}  // namespace gs::sheets
