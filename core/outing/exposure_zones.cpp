#include "core/outing/exposure_zones.h"

#include <algorithm>
#include <cmath>

#include "core/antenna/hang.h"
#include "core/outing/antenna_setup.h"

namespace gs {
namespace {

using antenna::kOutOfReachM;

/// The antenna as the antenna's own sheet draws it; no lines where it cannot be drawn.
antenna::Sketch drawn(const Plan& plan) {
  const antenna::Kind* kind = antenna_kind(plan);
  if (!kind || !plan.has_all(L::antenna_frequency_mhz, L::antenna_apex_m)) return {};
  const antenna::Rig rig = antenna::rig_of(*kind, plan[L::antenna_frequency_mhz], antenna_setup(plan));
  return antenna::sketch(rig, antenna_space(plan), kind->key == "off_centre_fed" ? 1.0 / 3 : 0.5);
}

bool is_whip(const Plan& plan) {
  const antenna::Kind* kind = antenna_kind(plan);
  return kind && kind->shape == antenna::Shape::whip;
}

}  // namespace

std::vector<WirePart> wire_parts(const Plan& plan) {
  if (is_whip(plan)) return {{0, antenna::kVehicleM, 0, antenna::kVehicleM + antenna::kWhipClearM}};
  std::vector<WirePart> parts;
  for (const antenna::Stroke& stroke : drawn(plan).strokes) {
    // radials in the air carry the same current as the wire; those on the ground are walked over, not stood beside
    const bool radiates =
        stroke.what == antenna::Drawn::wire || (stroke.what == antenna::Drawn::radial && stroke.at.front().z_m > 0);
    for (std::size_t i = 1; radiates && i < stroke.at.size(); ++i) {
      const bool falls = stroke.at[i].z_m < stroke.at[i - 1].z_m;
      const antenna::Point low = stroke.at[falls ? i : i - 1], high = stroke.at[falls ? i - 1 : i];
      parts.push_back({low.x_m, low.z_m, high.x_m, high.z_m});
    }
  }
  return parts;
}

double fed_at_m(const Plan& plan) { return is_whip(plan) ? 0 : drawn(plan).feed.x_m; }

std::vector<GroundZone> reach_zones(const std::vector<WirePart>& parts, double distance_m) {
  std::vector<GroundZone> zones;
  for (const WirePart& part : parts) {
    const double above_m = std::max(0.0, part.from_high_m - kOutOfReachM);
    if (!(above_m < distance_m)) continue;
    const double rise_m = part.to_high_m - part.from_high_m;
    const double along =
        rise_m > 0 ? std::clamp((kOutOfReachM + distance_m - part.from_high_m) / rise_m, 0.0, 1.0) : 1;
    zones.push_back({part.from_m, part.from_m + along * (part.to_m - part.from_m),
                     std::sqrt(distance_m * distance_m - above_m * above_m)});
  }
  return zones;
}

double free_overhead_m(const std::vector<WirePart>& parts, double distance_m) {
  double lowest_m = INFINITY;
  for (const WirePart& part : parts) lowest_m = std::min(lowest_m, part.from_high_m);
  return std::isfinite(lowest_m) ? std::max(0.0, lowest_m - distance_m - kOutOfReachM) : 0;
}

}  // namespace gs
