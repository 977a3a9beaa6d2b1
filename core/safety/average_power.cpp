// exposure_duties() itself is written by assets/catalogues/make_tables.py.
#include "core/safety/average_power.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::safety {
namespace {
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
bool is_share(double x) { return x > 0 && x <= 1; }
}  // namespace

bool is_possible(const Emission& emission) {
  return emission.frequency_mhz > 0 && std::isfinite(emission.frequency_mhz) && emission.peak_power_w > 0 &&
         std::isfinite(emission.peak_power_w) && std::isfinite(emission.gain_dbi) && is_share(emission.duty) &&
         is_share(emission.busiest_share);
}

double average_power_w(const Emission& emission) {
  return is_possible(emission) ? emission.peak_power_w * emission.duty * emission.busiest_share : kNone;
}

double gain_factor(double gain_dbi) { return std::pow(10, gain_dbi / 10); }

double busiest_share(double on_min, double off_min, double window_min) {
  if (!(on_min > 0 && off_min >= 0 && window_min > 0) || !std::isfinite(on_min + off_min + window_min))
    return kNone;
  const double turn_min = on_min + off_min;
  const double whole_turns = std::floor(window_min / turn_min);
  const double rest_min = std::max(0.0, window_min - whole_turns * turn_min);
  return std::min(1.0, (whole_turns * on_min + std::min(on_min, rest_min)) / window_min);
}

double share_of_shorter_window(double share, double window_min, double shorter_min) {
  if (!is_share(share) || !(window_min > 0 && shorter_min > 0)) return kNone;
  return std::min(1.0, share * std::max(1.0, window_min / shorter_min));
}

}  // namespace gs::safety
