// What one change would do: the plan with one lever changed, or few, evaluated beside the plan itself.
#pragma once

#include <string>
#include <vector>

#include "core/outing/outlook.h"

namespace gs {

/// A change worth looking at, its outcome, and the values that make it.
struct Trial {
  std::string key;    // readable and unique within a list: a cable's key, or "shorter"
  std::string title;  // "RG-213, 15 m"
  std::vector<std::pair<L, Value>> sets;
  Outlook outlook;
};

/// Values that leave the antenna as it is when the line before it changes: an SWR that was read at the radio moves
/// to the antenna's end, through the plan's own line. Empty where the antenna is known at its own end, or not at
/// all.
std::vector<std::pair<L, Value>> antenna_as_it_is(const Plan& plan);

/// Other rolls in place of the plan's: each cable offered at the plan's length, and the plan's own cable at two
/// thirds of it. The antenna stays as it is: an SWR that was read at the radio is carried to the antenna's end
/// through the plan's own line, and is among the values that make the trial. Ordered by power to the antenna, best
/// first. Empty while cable or length is missing.
std::vector<Trial> other_rolls(const Outing& outing, const Style& style);

/// One step of each lever that may help: power, time, a shorter line, a higher apex, a larger
/// battery, a lower target. Only what changes the chance of the target or mends a link; those that mend a failing
/// link first, then by the chance, best first.
std::vector<Trial> what_ifs(const Outing& outing, const Style& style);

/// The first judged reading that holds or is tight in `now` and fails in `then`; R::count where none does.
R broken_by(const Outlook& now, const Outlook& then);

}  // namespace gs
