#include "core/outing/reading_words.h"

#include <cmath>

#include "core/units.h"

namespace gs {

std::string trim_in_words(double change_m, const Style& style, bool spoken) {
  constexpr double kFelt_m = 0.0005;
  const double by_m = std::abs(change_m);
  if (by_m < kFelt_m) return "as cut";
  const std::string act = change_m < 0 ? "cut off " : "add ";
  if (by_m >= 1)
    return act + (spoken ? speak_quantity(by_m, Unit::metre, 2, style) : say_quantity(by_m, Unit::metre, 2, style));
  const double small = by_m / (style.feet ? kMetresPerInch : 0.01);
  const std::string unit = style.feet ? (spoken ? "inches" : "in") : spoken ? "centimetres" : "cm";
  return act + print_quantity(small, Unit::none, 1, style).number + " " + unit;
}

std::string runtime_in_words(double hours, const Style& style, bool spoken) {
  constexpr double kToTheMinute_h = 3, kSteps_per_h = 12;
  const double shown_h = hours < kToTheMinute_h ? hours : std::round(hours * kSteps_per_h) / kSteps_per_h;
  return spoken ? speak_quantity(shown_h, Unit::hour, 0, style) : say_quantity(shown_h, Unit::hour, 0, style);
}

}  // namespace gs
