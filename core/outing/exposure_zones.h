// Where people must not stand, on the ground round the antenna: the keep-out seen from above.
#pragma once

#include <vector>

#include "core/outing/plan.h"

namespace gs {

/// A straight part of what radiates, by its ends, the lower one first: across from the middle of the site, and up from the ground. m.
struct WirePart {
  double from_m, from_high_m, to_m, to_high_m;
};
/// The plan's antenna as its own sheet draws it (antenna::sketch), taut. Empty where kind, frequency or apex is not
/// known or the wire does not hang there.
std::vector<WirePart> wire_parts(const Plan& plan);
/// Where it is fed, across from the support; 0 where it cannot be drawn.
double fed_at_m(const Plan& plan);

/// All places within radius_m of the straight line on the ground.
struct GroundZone {
  double from_m, to_m, radius_m;
};
/// Where a standing person, reaching up to 2.5 m (common practice), comes nearer than distance_m to a part: one
/// zone a part at most, as wide as at its lowest point. Empty where all of it hangs higher than that.
std::vector<GroundZone> reach_zones(const std::vector<WirePart>& parts, double distance_m);
/// Free height between the reaching hand and the keep-out under the lowest point, m; 0 where somebody can get into
/// it.
double free_overhead_m(const std::vector<WirePart>& parts, double distance_m);

}  // namespace gs
