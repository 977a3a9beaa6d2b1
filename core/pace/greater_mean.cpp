#include "core/pace/greater_mean.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace gs::pace {
namespace {

/// A chance that is multiplied on and on; held as its logarithm while it is too small for a double.
class Chance {
 public:
  explicit Chance(double log) : log_(log) { settle(); }
  double value() const { return value_; }
  void times(double ratio) {
    if (value_ > kLeast) {
      value_ *= ratio;
      if (value_ <= kLeast) log_ = std::log(value_);
    } else {
      log_ += std::log(ratio);
      settle();
    }
  }

 private:
  static constexpr double kLeast = 1e-250;
  void settle() { value_ = std::exp(log_); }
  double log_, value_ = 0;
};

/// log of x^n, with x^0 = 1 for every x.
double log_power(double x, int n) { return n > 0 ? n * std::log(x) : 0; }

}  // namespace

double greater_mean(double shape, Count one, Count other) {
  constexpr double kGone = 1e-12;
  if (!(shape > 0) || !(one.mean >= 0) || !(other.mean >= 0) || one.counted < 0 || other.counted < 0)
    return std::numeric_limits<double>::quiet_NaN();
  if (one.mean < other.mean) std::swap(one, other);
  // the walk is `other` less `one`: each that comes is one of `other` with chance up, at most a half
  const double all = one.mean + other.mean, lead = one.counted + one.mean;
  int at = other.counted - one.counted;
  double greater = lead + std::max(at, 0);
  if (!(all > 0)) return greater;
  const double up = other.mean / all, down = 1 - up;
  const bool certain = std::isinf(shape);
  Chance in_all(certain ? -all : -shape * std::log1p(all / shape));
  // where the walk can first stand at 0, or at 1 if it began above
  const int first = at > 0 ? at - 1 : -at;
  Chance middle(at > 0 ? log_power(down, first) : log_power(up, first));
  bool at_zero = at <= 0;
  int ups = at > 0 ? 0 : first;
  double above = at > 0 ? 1 : 0, more = 1, before = 0;
  for (int n = 0;; ++n) {
    more -= in_all.value();  // the chance that more than n come
    in_all.times((certain ? all : (shape + n) * (all / (shape + all))) / (n + 1));
    const bool near = n >= first;
    const double zero = near && at_zero ? middle.value() : 0;
    const double grows = (up - down) * above + up * zero;
    greater += more * grows;
    if (n > all && n > first && (more < kGone || more * (std::abs(grows) + before) * n < kGone)) return greater;
    before = std::abs(grows);
    if (!near) continue;
    if (at_zero) {
      above += zero * up;
      middle.times((n + 1.0) / ++ups * up);
    } else {
      above -= middle.value() * down;
      middle.times((n + 1.0) / (n + 1 - ups) * down);
    }
    at_zero = !at_zero;
  }
}

}  // namespace gs::pace
