// What changes while one is on the air: another band, mode, power, antenna or pace from a time on; and breaks.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/outing/levers.h"
#include "core/outing/value.h"

namespace gs {

/// From a local time on until the next stint or until packing starts. `set` says what is other than in the plan
/// itself, not than in the stint before: one of stint_levers() each, no lever twice, never monostate. A break sets
/// nothing: the set is off then.
struct Stint {
  double from_min = 0;  // minutes from local midnight of the outing's date, 0 to 2880
  bool on_air = true;   // false: a break
  std::vector<std::pair<L, Value>> set = {};
  std::string kept =
      {};  // members of its row in a file that this version does not know, a compact JSON object, or ""
  bool operator==(const Stint&) const = default;
};
inline constexpr std::size_t kMostStints = 48;
inline constexpr double kMostStintMin = 2880;

/// What a stint may set: frequency, mode, power, transmit share, antenna, pace.
std::span<const L> stint_levers();
bool is_stint_lever(L id);

/// Why this stint cannot be, in words, or "" when it can.
std::string refusal(const Stint& stint);

/// The stints with one more, in the order of their times. Precondition: refusal(stint) is empty.
std::vector<Stint> with_stint(std::vector<Stint> stints, Stint stint);

}  // namespace gs
