#include "core/outing/overhead_join.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/outing/antenna_setup.h"
#include "core/safety/keep_out.h"

namespace gs {

OverheadJoin join_overhead(const Plan& plan) {
  constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
  OverheadJoin join{kNone, kNone, kNone, {kNone, kNone, kNone, kNone}, kNone, kNone, {}, {}};
  const std::size_t voltage = plan.has(L::safety_line_voltage) ? std::size_t(plan[L::safety_line_voltage]) : 0;
  join.clearance_m = safety::line_clearances()[voltage].clearance_m;
  join.antenna = first_missing(plan, {L::antenna_kind, L::antenna_frequency_mhz, L::antenna_apex_m});
  if (join.antenna.doubt == Doubt::none) {
    const antenna::Kind& kind = *antenna_kind(plan);
    const antenna::Rig rig = antenna::rig_of(kind, plan[L::antenna_frequency_mhz], antenna_setup(plan));
    if (kind.is_whip()) {
      join.height_m = antenna::kVehicleM + rig.wire_m;
      join.loose_m = 0;
    } else {
      join.height_m = plan[L::antenna_apex_m];
      join.loose_m = std::max({rig.wire_m, rig.radial_m, antenna::rope_over_branch_m(join.height_m)});
    }
    join.off = safety::stay_off_power_lines(join.height_m, join.loose_m, join.clearance_m);
    join.stay_off_m = safety::round_up_m(join.off.stay_off_m);
    if (!std::isfinite(join.stay_off_m)) join.antenna = {Doubt::not_in_catalogue, L::antenna_kind};
  }
  join.room = join.antenna;
  if (plan.has(L::safety_line_m)) {
    join.room_m = plan[L::safety_line_m] - join.stay_off_m;
  } else {
    const bool looked = plan[L::safety_looked_at_lines] > 0;
    join.room = looked ? Doubtful{Doubt::line_not_paced, L::safety_line_m}
                       : Doubtful{Doubt::not_looked_at, L::safety_looked_at_lines};
  }
  return join;
}

}  // namespace gs
