// Packs carried to an outing, used up one after another over stretches of different load.
#pragma once

#include <span>

#include "core/battery/discharge.h"

namespace gs::battery {

/// One stretch and how long it is; a pause off the air has a load of nothing.
struct Stretch {
  Load load;
  double hours;
};

/// One pack with what stops it.
struct Carry {
  Law law;
  Floors floors;
};

/// What becomes of them. `least_v`: supply at the set at key-down when it is least within the hours asked for. A
/// pack is changed when it ends; the last one goes on until its reserve, so that a supply that fails earlier says
/// by how much. `left_pct`: what all packs still hold then, of what they give.
struct Course {
  double hours;  // until the last pack ends; at most kLongestH
  EndBy by;
  double least_v, left_pct;
};

/// A listening set on a large battery: no outing lasts longer, so no figure needs to.
inline constexpr double kLongestH = 1000;

/// At least one pack and one stretch. The last stretch goes on as long as needed. on_air_h >= 0; infinite: every
/// pack runs to its own end.
Course course_of(std::span<const Carry> packs, std::span<const Stretch> stretches, double on_air_h);

}  // namespace gs::battery
