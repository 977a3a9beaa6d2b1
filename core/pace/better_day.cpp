#include "core/pace/better_day.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "core/pace/gamma.h"
#include "core/pace/greater_mean.h"

namespace gs::pace {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kMostTogether = 1000;
// A pace known to a thousandth is known: shapes beyond lose digits in the gamma functions and change nothing.
constexpr double kLargestShape = 1e6;
constexpr double kTail = 0.1;  // eight in ten leave one in ten at either end

/// P(N = k) of one day and P(M <= j) of the other given that N is k, moved along k and j together. Means and shape
/// of the common gamma pace; an infinite shape makes both Poisson.
class Step {
 public:
  Step(double shape, double mean, double other_mean, int k, int j) : a_(shape), m_(mean), o_(other_mean) {
    poisson_ = a_ > kLargestShape;
    k_ = k;
    j_ = j;
    w_ = poisson_ ? 1 : (a_ + m_) / (a_ + m_ + o_);
    log_chance_ = poisson_ ? (k > 0 ? k * std::log(m_) : 0) - m_ - std::lgamma(k + 1.0)
                           : std::lgamma(a_ + k) - std::lgamma(a_) - std::lgamma(k + 1.0) -
                                 a_ * std::log1p(m_ / a_) + (k > 0 ? k * std::log(m_ / (a_ + m_)) : 0);
    start_at_most();
  }
  double chance() const { return std::exp(log_chance_); }
  double other_at_most() const { return std::clamp(at_most_, 0.0, 1.0); }

  void next() {
    if (poisson_) {
      log_chance_ += std::log(m_ / (k_ + 1));
      log_term_ += std::log(o_ / (j_ + 1));
      at_most_ += std::exp(log_term_);
    } else {
      log_chance_ += std::log((a_ + k_) / (k_ + 1) * (m_ / (a_ + m_)));
      if (o_ > 0) {
        // I_w(s + 1, b) = I_w(s, b) - t and I_w(s + 1, b + 1) = I_w(s + 1, b) + t w (s + b) / b
        const double s = a_ + k_, b = j_ + 1;
        at_most_ += std::exp(log_term_) * (w_ * (s + b) / b - 1);
        log_term_ += std::log(w_ * (1 - w_) * (s + b) * (s + b + 1) / ((s + 1) * b));
      }
    }
    ++k_;
    ++j_;
  }

 private:
  void start_at_most() {
    if (!(o_ > 0)) {
      at_most_ = 1;
      log_term_ = -std::numeric_limits<double>::infinity();
    } else if (poisson_) {
      log_term_ = j_ * std::log(o_) - o_ - std::lgamma(j_ + 1.0);
      at_most_ = gamma_rest(j_ + 1, o_);
    } else {
      const double s = a_ + k_, b = j_ + 1;
      at_most_ = beta_share(s, b, w_);
      // t = w^s (1 - w)^b gamma(s + b) / (gamma(s + 1) gamma(b))
      log_term_ = s * std::log(w_) + b * std::log1p(-w_) + std::lgamma(s + b) - std::lgamma(s + 1) - std::lgamma(b);
    }
  }
  double a_, m_, o_, w_;
  double log_chance_, log_term_ = 0, at_most_ = 1;
  int k_, j_;
  bool poisson_;
};

struct Day {
  double counted, mean, minutes;
};

/// One day stands for both: the same figures from the plain functions.
BetterDay one_day(Pace pace, const Day& day, int target, double expected) {
  const int counted = int(day.counted);
  BetterDay better{chance_of_target(pace, day.minutes, target - counted), expected,
                   contacts_range(pace, day.minutes, 1 - 2 * kTail)};
  if (better.range) better.range = CountRange{better.range->least + counted, better.range->most + counted};
  return better;
}

}  // namespace

BetterDay better_day(Pace pace, const TwoDays& days, int target) {
  const double first_mean = expected_contacts(pace, days.first_min);
  const double next_mean = expected_contacts(pace, days.next_min);
  if (!(first_mean >= 0) || !(next_mean >= 0) || !(days.first_counted >= 0 && days.first_counted <= kMostTarget) ||
      !(days.next_counted >= 0 && days.next_counted <= kMostTarget) || target > kMostTarget)
    return {kNaN, kNaN, {}};
  Day high{std::floor(days.first_counted), first_mean, days.first_min};
  Day low{std::floor(days.next_counted), next_mean, days.next_min};
  if (low.counted > high.counted) std::swap(high, low);
  if (!(low.mean > 0)) return one_day(pace, high, target, high.counted + high.mean);
  const double shape = pace.spread_pct > 0 ? std::pow(100 / pace.spread_pct, 2) : 2 * kLargestShape;
  const double expected = greater_mean(shape > kLargestShape ? std::numeric_limits<double>::infinity() : shape,
                                       {int(high.counted), high.mean}, {int(low.counted), low.mean});
  if (high.mean + low.mean > kMostTogether)
    return one_day(pace, high.counted + high.mean >= low.counted + low.mean ? high : low, target, expected);
  const int ahead = int(high.counted - low.counted);
  // F(k) = P(neither day passes k). From k - 1 to k come: `high` at exactly k while `low` has k or less, and `low`
  // at exactly k while `high` has less.
  Step of_high(shape, high.mean, low.mean, 0, ahead);
  Step of_low(shape, low.mean, high.mean, ahead + 1, 0);
  int k = int(high.counted);
  double below = of_high.chance() * of_high.other_at_most();
  BetterDay result{target <= k ? 1.0 : kNaN, expected, {}};
  int least = -1, most = -1;
  constexpr double kGone = 1e-12, kNothing = 1e-17;
  for (;; ++k) {
    if (least < 0 && below >= kTail) least = k;
    if (most < 0 && below >= 1 - kTail) most = k;
    if (k + 1 == target) result.chance = std::clamp(1 - below, 0.0, 1.0);
    if (1 - below < kGone || k >= kMostTarget || (most >= 0 && k + 1 >= target)) break;
    of_high.next();
    const double more = of_high.chance() * of_high.other_at_most() + of_low.chance() * of_low.other_at_most();
    of_low.next();
    if (below > 0.5 && more < kNothing) break;  // rounding alone is left
    below += more;
  }
  if (std::isnan(result.chance)) result.chance = 0;
  if (least >= 0 && most >= 0) result.range = CountRange{least, most};
  return result;
}

}  // namespace gs::pace
