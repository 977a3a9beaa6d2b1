#include "core/outing/exposure_zones.h"

#include <algorithm>
#include <cmath>

#include "core/antenna/kind.h"
#include "core/antenna/length.h"
#include "core/antenna/rigging.h"

namespace gs {
namespace {

using antenna::kOutOfReachM;

/// Half the level run of a leg from high_m down to low_m; the leg itself where it is no longer than that drop.
double run_m(double leg_m, double high_m, double low_m) {
  const double drop_m = high_m - low_m;
  return leg_m > drop_m ? std::sqrt(leg_m * leg_m - drop_m * drop_m) : 0;
}

}  // namespace

std::vector<WirePart> wire_parts(const Plan& plan) {
  if (!plan.has_all(L::antenna_kind, L::antenna_frequency_mhz)) return {};
  const antenna::Kind& kind = antenna::kinds()[std::size_t(plan[L::antenna_kind])];
  if (kind.shape == antenna::Shape::whip)
    return {{0, antenna::kVehicleM, 0, antenna::kVehicleM + antenna::kWhipClearM}};
  if (!plan.has(L::antenna_apex_m)) return {};
  const double wire_m = antenna::cut_length_m(kind, plan[L::antenna_frequency_mhz]),
               apex_m = plan[L::antenna_apex_m];
  if (!std::isfinite(wire_m)) return {};
  switch (kind.shape) {
    case antenna::Shape::dipole:
      return {{-wire_m / 2, apex_m, wire_m / 2, apex_m}};
    case antenna::Shape::inverted_v: {
      const double low_m = std::min(kOutOfReachM, apex_m), out_m = run_m(wire_m / 2, apex_m, low_m);
      return {{-out_m, low_m, 0, apex_m}, {out_m, low_m, 0, apex_m}};
    }
    case antenna::Shape::sloper: {
      const double low_m = std::min(antenna::kFeedBoxM, apex_m), out_m = run_m(wire_m, apex_m, low_m);
      return {{-out_m / 2, low_m, out_m / 2, apex_m}};
    }
    case antenna::Shape::vertical:
      return {{0, 0, 0, std::min(wire_m, apex_m)}};
    case antenna::Shape::ground_plane:
      return {{0, std::max(0.0, apex_m - wire_m), 0, apex_m}};
    case antenna::Shape::loop: {
      const double side_m = wire_m / 3;
      return {{-side_m / 2, kOutOfReachM, side_m / 2, kOutOfReachM},
              {-side_m / 2, kOutOfReachM, 0, apex_m},
              {side_m / 2, kOutOfReachM, 0, apex_m}};
    }
    default:  // bent or sloping otherwise: as if it came down to hand height, the careful side
      return {{-wire_m / 2, std::min(kOutOfReachM, apex_m), wire_m / 2, apex_m}};
  }
}

std::vector<GroundZone> reach_zones(const std::vector<WirePart>& parts, double distance_m) {
  std::vector<GroundZone> zones;
  for (const WirePart& part : parts) {
    const bool from_low = part.from_high_m <= part.to_high_m;
    const double low_m = from_low ? part.from_high_m : part.to_high_m;
    const double high_m = from_low ? part.to_high_m : part.from_high_m;
    const double above_m = std::max(0.0, low_m - kOutOfReachM);
    if (!(above_m < distance_m)) continue;
    const double along =
        high_m > low_m ? std::clamp((kOutOfReachM + distance_m - low_m) / (high_m - low_m), 0.0, 1.0) : 1;
    const double start_m = from_low ? part.from_m : part.to_m, end_m = from_low ? part.to_m : part.from_m;
    zones.push_back(
        {start_m, start_m + along * (end_m - start_m), std::sqrt(distance_m * distance_m - above_m * above_m)});
  }
  return zones;
}

double free_overhead_m(const std::vector<WirePart>& parts, double distance_m) {
  double lowest_m = INFINITY;
  for (const WirePart& part : parts) lowest_m = std::min({lowest_m, part.from_high_m, part.to_high_m});
  return std::isfinite(lowest_m) ? std::max(0.0, lowest_m - distance_m - kOutOfReachM) : 0;
}

}  // namespace gs
