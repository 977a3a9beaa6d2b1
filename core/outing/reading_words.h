// Readings that say themselves in words: what to do rather than a figure with a sign.
#pragma once

#include <string>

#include "core/outing/quantity.h"

namespace gs {

/// A change of length in m, as one does it: "as cut" under half a millimetre, "cut off 10.6 cm" below 0, "add 4.2
/// cm" above; inches where the style has feet, metres from one up. `spoken` writes the unit out.
std::string trim_in_words(double change_m, const Style& style, bool spoken);

/// How long a battery lasts in hours: to the minute below three hours, to five minutes from there, since no
/// law of a battery knows it better.
std::string runtime_in_words(double hours, const Style& style, bool spoken);

}  // namespace gs
