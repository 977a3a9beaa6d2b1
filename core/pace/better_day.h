// Contacts that count by the UTC day, where the day turns while one is on the air.
#pragma once

#include <optional>

#include "core/pace/pace.h"

namespace gs::pace {

/// What is already counted on each of the two days, and the minutes still to come on each.
struct TwoDays {
  double first_counted = 0, next_counted = 0;
  double first_min = 0, next_min = 0;
};

/// The better of the two days, on each of which only its own contacts count. One pace, roughly known, holds for
/// both: given it the two counts are Poisson and independent, so together they are negative multinomial.
struct BetterDay {
  double chance;                    // 0..1, of `target` or more on one of the days
  double expected;                  // of the greater count
  std::optional<CountRange> range;  // eight in ten; nothing where it passes kMostTarget
};
/// Exact: the joint distribution is summed along equal counts, each step from the one before; 1e-9. Above 1000
/// contacts to come the chance and the range are those of the day with more of them; the mean is exact there too.
/// Pace as in pace.h, counts and minutes 0 or more; NaN outside.
BetterDay better_day(Pace pace, const TwoDays& days, int target);

}  // namespace gs::pace
