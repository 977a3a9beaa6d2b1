// One root of a rising function between two ends.
#pragma once

#include <algorithm>

namespace gs::pace {

/// The least x found, within `close` relative, at which `rises(x)` is 0 or more. Precondition: rises(low) < 0 <=
/// rises(high), 0 <= low < high. Regula falsi with the Illinois halving, and a bisection wherever that was slow:
/// some ten steps where bisection alone takes forty.
template <class Rises>
double root_between(double low, double high, double at_low, double at_high, double close, Rises rises) {
  for (int step = 0; high - low > close * high; ++step) {
    double x = low + (high - low) * (-at_low / (at_high - at_low));
    if (step % 4 == 3 || !(x > low && x < high)) x = (low + high) / 2;
    // a hair to the far side of the guess closes the bracket from both ends
    x = std::clamp(x, low + 0.3 * close * high, high - 0.3 * close * high);
    if (!(x > low && x < high)) break;
    const double at = rises(x);
    if (at >= 0) {
      high = x;
      at_high = at;
      at_low /= 2;
    } else {
      low = x;
      at_low = at;
      at_high /= 2;
    }
  }
  return high;
}

}  // namespace gs::pace
