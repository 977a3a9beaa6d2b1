// line_clearances() itself is written by assets/catalogues/make_tables.py.
#include "core/safety/overhead.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::safety {
namespace {
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kSoundMPerS = 343;  // dry air at 20 C, any physics handbook
}  // namespace

StayOff stay_off_power_lines(double height_m, double line_m, double clearance_m) {
  if (!(height_m >= 0 && line_m >= 0 && clearance_m > 0)) return {kNone, kNone, kNone, kNone};
  const double throw_clear_m = line_m > 0 ? line_m + clearance_m : 0;
  const double falls_clear_m = height_m + clearance_m, times_height_m = 2 * height_m;
  return {falls_clear_m, times_height_m, throw_clear_m, std::max({falls_clear_m, times_height_m, throw_clear_m})};
}

double thunder_distance_km(double delay_s) { return delay_s >= 0 ? delay_s * kSoundMPerS / 1000 : kNone; }

double touch_voltage_v(double power_w, double resistance_ohm) {
  return power_w >= 0 && resistance_ohm > 0 ? std::sqrt(power_w * resistance_ohm) : kNone;
}

}  // namespace gs::safety
