// The length at which a wire's reactance is nil.
#pragma once

#include <cmath>
#include <limits>

namespace gs::antenna {

/// Where a reactance that rises with length is nil between two lengths, both > 0: within 1e-13 of the length, or
/// where it is under 1e-9 ohm. False position with the Illinois halving: near resonance reactance is almost
/// straight in length, so some eight evaluations do what takes bisection fifty. NaN where it is not below 0 at
/// `low` and above 0 at `high`.
template <class Reactance>
double resonance_between(double low, double high, Reactance reactance_ohm) {
  constexpr double kClose = 1e-13, kNilOhm = 1e-9;
  double x_low = reactance_ohm(low), x_high = reactance_ohm(high);
  if (!(x_low < 0 && x_high > 0)) return std::numeric_limits<double>::quiet_NaN();
  int kept = 0;  // the end that stayed last time: -1 low, 1 high
  for (int i = 0; i < 60 && high - low > kClose * high; ++i) {
    const double at = low - x_low * (high - low) / (x_high - x_low), x_ohm = reactance_ohm(at);
    if (std::abs(x_ohm) < kNilOhm) return at;
    if (x_ohm < 0) {
      low = at;
      x_low = x_ohm;
      if (kept == 1) x_high /= 2;
      kept = 1;
    } else {
      high = at;
      x_high = x_ohm;
      if (kept == -1) x_low /= 2;
      kept = -1;
    }
  }
  return (low + high) / 2;
}

}  // namespace gs::antenna
