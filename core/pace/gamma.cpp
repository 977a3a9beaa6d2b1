#include "core/pace/gamma.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/pace/root.h"

namespace gs::pace {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kEnough = 1e-16, kTiny = 1e-300;
constexpr int kMostTerms = 100'000;

bool is_shape(double shape) { return shape > 0 && std::isfinite(shape); }

/// x^shape e^-x / gamma(shape + 1): what both series are multiples of.
double lead(double shape, double x) { return std::exp(shape * std::log(x) - x - std::lgamma(shape + 1)); }

double by_series(double shape, double x) {
  double term = 1, sum = 1;
  for (int n = 1; n < kMostTerms && term > kEnough * sum; ++n) sum += term *= x / (shape + n);
  return sum * lead(shape, x);
}

/// Modified Lentz: never divides by nothing.
struct Fraction {
  double value, c, d;
  explicit Fraction(double first) : value(first), c(first), d(0) {}
  /// One more level a / (b + ...). True while it still changes.
  bool add(double a, double b) {
    d = b + a * d;
    c = b + a / c;
    if (std::abs(d) < kTiny) d = kTiny;
    if (std::abs(c) < kTiny) c = kTiny;
    d = 1 / d;
    const double change = c * d;
    value *= change;
    return std::abs(change - 1) > kEnough;
  }
};

double by_fraction(double shape, double x) {
  Fraction below(x + 1 - shape);
  if (std::abs(below.value) < kTiny) below = Fraction(kTiny);
  for (int n = 1; n < kMostTerms && below.add(-n * (n - shape), x + 1 - shape + 2 * n); ++n) {
  }
  return lead(shape, x) * shape / below.value;
}

double beta_fraction(double a, double b, double x) {
  Fraction below(1);
  for (int m = 0; m < kMostTerms; ++m) {
    const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
    const double even = (m + 1) * (b - m - 1) * x / ((a + 2 * m + 1) * (a + 2 * m + 2));
    const bool moved = below.add(odd, 1);
    if (!below.add(even, 1) && !moved) break;
  }
  return 1 / below.value;
}

}  // namespace

double gamma_share(double shape, double x) {
  if (!is_shape(shape) || !(x >= 0)) return kNaN;
  if (x == 0) return 0;
  if (std::isinf(x)) return 1;
  return x < shape + 1 ? std::min(1.0, by_series(shape, x)) : std::max(0.0, 1 - by_fraction(shape, x));
}

double gamma_rest(double shape, double x) {
  if (!is_shape(shape) || !(x >= 0)) return kNaN;
  if (x == 0) return 1;
  if (std::isinf(x)) return 0;
  return x < shape + 1 ? std::max(0.0, 1 - by_series(shape, x)) : std::min(1.0, by_fraction(shape, x));
}

double gamma_quantile(double shape, double share) {
  if (!is_shape(shape) || !(share >= 0 && share <= 1)) return kNaN;
  if (share == 0) return 0;
  if (share == 1) return kInfinity;
  // the smaller tail decides, so that neither end loses digits; by its logarithm, which is nearly straight
  const bool low_tail = share <= 0.5;
  const double wanted = std::log(low_tail ? share : 1 - share);
  const auto over = [&](double x) {
    return low_tail ? std::log(gamma_share(shape, x)) - wanted : wanted - std::log(gamma_rest(shape, x));
  };
  double high = shape + 1, at_high = over(high);
  while (at_high < 0) high *= 2, at_high = over(high);
  double low = high / 2, at_low = over(low);
  // quantiles of small shapes lie many decades below the mean
  while (at_low >= 0) {
    high = low;
    at_high = at_low;
    low /= 16;
    if (low < 1e-290) return high;
    at_low = over(low);
  }
  return root_between(low, high, at_low, at_high, 1e-13, over);
}

double beta_share(double a, double b, double x) {
  if (!is_shape(a) || !is_shape(b) || !(x >= 0 && x <= 1)) return kNaN;
  if (x == 0 || x == 1) return x;
  // the fraction converges fast on the near side of the mean only
  if (x > (a + 1) / (a + b + 2)) return 1 - beta_share(b, a, 1 - x);
  const double lead =
      std::exp(std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log1p(-x));
  return std::min(1.0, lead * beta_fraction(a, b, x) / a);
}

MeanRange exact_interval(double count, double confidence) {
  if (!(count >= 0) || !std::isfinite(count) || !(confidence > 0 && confidence < 1)) return {kNaN, kNaN};
  const double tail = (1 - confidence) / 2;
  return {count > 0 ? gamma_quantile(count, tail) : 0, gamma_quantile(count + 1, 1 - tail)};
}

}  // namespace gs::pace
