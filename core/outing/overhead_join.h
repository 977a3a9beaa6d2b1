// Power lines: what of this antenna stands, falls or is thrown, against the nearest one that somebody paced out.
#pragma once

#include "core/outing/evaluate_parts.h"
#include "core/safety/overhead.h"

namespace gs {

/// Metres. NaN where the antenna is not known yet; room_m also while nobody gave a distance: an answer that was not
/// given is never taken for a good one.
struct OverheadJoin {
  double height_m;     // the highest that stands
  double loose_m;      // the longest that is raised or thrown: wire, radial or throw line; 0 for a whip
  double clearance_m;  // to the line itself, by its voltage
  safety::StayOff off;
  double stay_off_m;  // its largest, rounded up to the tenth that is shown
  double room_m;
  Doubtful antenna, room;  // why off and room are not known
};
OverheadJoin join_overhead(const Plan& plan);

}  // namespace gs
