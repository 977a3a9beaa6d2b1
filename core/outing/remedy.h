// The cheapest change of one lever that brings what limits the plan to where it is at ease.
#pragma once

#include <optional>
#include <string>

#include "core/outing/outlook.h"

namespace gs {

struct Remedy {
  L lever = L::count;
  Value value;
  std::string words;  // "Turn down to 30 W"
  std::string gains;  // what the binding reading gains: "+11 min"
  std::string costs;  // what pays most for it: "power to antenna −8.1 W", or ""
  Outlook outlook;    // with the change
};

/// Levers are tried in the order of their cost: watts, time, weight, a purchase; the first that brings `binds` to
/// ease, else to its limit where it fails, and breaks nothing else. The share of the time that one transmits is
/// never offered: it is tied to the pace. Nothing where the reading is not judged, holds, or no single lever does.
/// About a millisecond: bisection on evaluate().
std::optional<Remedy> cheapest_remedy(const Outing& outing, R binds, const Style& style);

}  // namespace gs
