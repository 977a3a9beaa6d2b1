// Ropes, legs and catenaries of rigging.h.
#include <cmath>
#include <limits>

#include "core/antenna/rigging.h"
#include "core/units.h"

namespace gs::antenna {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kDegrees = 180 / kPi;

bool at_least_0(double x) { return x >= 0 && std::isfinite(x); }
bool above_0(double x) { return x > 0 && std::isfinite(x); }

}  // namespace

LegReach leg_reach(double leg_m, double apex_m, double end_m) {
  const double drop = std::abs(apex_m - end_m);
  if (!above_0(leg_m) || !at_least_0(apex_m) || !at_least_0(end_m) || drop > leg_m) return {kNone, kNone, kNone};
  const double out = std::sqrt((leg_m - drop) * (leg_m + drop));
  return {out, 2 * out, 2 * std::atan2(out, drop) * kDegrees};
}

SlopeLine slope_line(double height_m, double out_m, double end_m) {
  const double drop = std::abs(height_m - end_m);
  if (!at_least_0(height_m) || !at_least_0(out_m) || !at_least_0(end_m) || !(drop + out_m > 0))
    return {kNone, kNone, kNone};
  const double angle = std::atan2(out_m, drop) * kDegrees;
  return {std::hypot(drop, out_m), angle, 2 * angle};
}

double rope_over_branch_m(double branch_m, double spare_m) {
  return above_0(branch_m) && at_least_0(spare_m) ? 2 * branch_m + spare_m : kNone;
}

double branch_height_m(double cord_m, double ends_m) {
  return above_0(cord_m) && at_least_0(ends_m) ? ends_m + cord_m / 2 : kNone;
}

double lean_loss_db(double lean_deg) {
  if (!(lean_deg >= 0 && lean_deg < 90)) return kNone;
  // log of a cosine near 1 by its square's shortfall, which keeps small leans exact
  const double sine = std::sin(lean_deg / kDegrees);
  return -10 / std::log(10.0) * std::log1p(-sine * sine) + 0.0;
}

Arm catenary_arm(double constant_m, double angle_deg) {
  if (!above_0(constant_m) || !(angle_deg > 0 && angle_deg < 90)) return {kNone, kNone, kNone};
  const double ratio = 1 / std::cos(angle_deg / kDegrees), slope = std::tan(angle_deg / kDegrees);
  return {constant_m * slope * std::tan(angle_deg / kDegrees / 2), constant_m * slope, ratio};
}

double constant_of_arm_m(double length_m, double angle_deg) {
  if (!above_0(length_m) || !(angle_deg > 0 && angle_deg < 90)) return kNone;
  return length_m / std::tan(angle_deg / kDegrees);
}

Sag catenary_sag(double constant_m, double span_m) {
  if (!above_0(constant_m) || !above_0(span_m)) return {kNone, kNone};
  const double x = span_m / 2 / constant_m, half = std::sinh(x / 2);
  // sinh x - x from its series while the difference would lose digits
  const double over = x < 0.1 ? x * x * x / 6 * (1 + x * x / 20 * (1 + x * x / 42)) : std::sinh(x) - x;
  return {2 * constant_m * half * half, 2 * constant_m * over};
}

double catenary_constant_m(double pull_kg, double mass_g_per_m) {
  return above_0(pull_kg) && above_0(mass_g_per_m) ? 1000 * pull_kg / mass_g_per_m : kNone;
}

}  // namespace gs::antenna
