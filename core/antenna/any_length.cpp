#include "core/antenna/any_length.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/antenna/length.h"

namespace gs::antenna {

AnyLength clear_of_half_waves(double length_m, std::span<const double> frequencies_mhz) {
  AnyLength found{std::numeric_limits<double>::infinity(), -1};
  for (std::size_t i = 0; i < frequencies_mhz.size(); ++i) {
    const double half_m = wavelength_m(frequencies_mhz[i]) / 2;
    if (!(length_m > 0) || !std::isfinite(length_m) || !(half_m > 0))
      return {std::numeric_limits<double>::quiet_NaN(), -1};
    const double halves = length_m / half_m + kEndEffect;  // a wire of n - 0.05 half waves resonates as n
    const double nearest = std::max(1.0, std::round(halves));
    const double away = std::min(1.0, 2 * std::abs(halves - nearest));
    if (away < found.quarter_waves) found = {away, int(i)};
  }
  if (found.worst < 0) found.quarter_waves = std::numeric_limits<double>::quiet_NaN();
  return found;
}

double clearest_length_m(double low_m, double high_m, std::span<const double> frequencies_mhz) {
  double best_m = std::numeric_limits<double>::quiet_NaN(), best = -1;
  if (!(low_m > 0) || !(high_m >= low_m) || !std::isfinite(high_m)) return best_m;
  const int steps = int(std::min(20000.0, std::ceil((high_m - low_m) * 100)));
  for (int i = 0; i <= steps; ++i) {
    const double length_m = low_m + (high_m - low_m) * (steps ? double(i) / steps : 0);
    const double away = clear_of_half_waves(length_m, frequencies_mhz).quarter_waves;
    if (away > best) {
      best = away;
      best_m = length_m;
    }
  }
  return best_m;
}

}  // namespace gs::antenna
