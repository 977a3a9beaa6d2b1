// The lines that keep a contact safe before the outing that holds it is saved, and how they are played again.
#pragma once

#include <string>
#include <string_view>

#include "core/outing/outing.h"

namespace gs {

// Every line says what was there before it, and so which state it continues. Played over a saved outing that
// already holds some of them, those say that they are too late and change nothing; the rest follow in their order.

/// The lines; `before` is the outing before the step. Instants are held to the millisecond, as the outing holds
/// them.
std::string start_line(const Outing& before, double utc_s);
std::string end_line(const Outing& before, double utc_s);
std::string contact_line(const Outing& before, double utc_s);
std::string forgotten_line(const Outing& before, double utc_s, int count);
std::string take_back_line(const Outing& before);

/// Does what the line says if it continues this outing. False: it does not, or is no line of ours; nothing changed.
bool play(Outing& outing, std::string_view line);

}  // namespace gs
