#include "core/pace/pace.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/pace/gamma.h"
#include "core/pace/root.h"

namespace gs::pace {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kMinutesPerHour = 60;

bool is_time(double minutes) { return minutes >= 0 && std::isfinite(minutes); }

/// Chance of fewer than `target` contacts around a mean above 0. Terms follow from one another; they are summed
/// relative to the first and brought back by its logarithm, so that nothing underflows however small the first is.
double chance_below(double mean, double spread_pct, int target) {
  const double shape = spread_pct > 0 ? std::pow(100 / spread_pct, 2) : kInfinity;
  // P(0) = (1 + mean/shape)^-shape; P(k+1) / P(k) = (shape + k) / (k + 1) * mean / (shape + mean).
  const double log_first = std::isinf(shape) ? -mean : -shape * std::log1p(mean / shape);
  const auto ratio = [=](int k) {
    return std::isinf(shape) ? mean / (k + 1) : (1 + k / shape) / (k + 1) * (mean / (1 + mean / shape));
  };
  constexpr double kLarge = 1e250;
  double term = 1, sum = 0, log_scale = log_first;
  for (int k = 0; k < target; ++k) {
    sum += term;
    const double next = term * ratio(k);
    if (next < term && next < sum * 1e-18 && spread_pct <= 0) break;  // Poisson tails fall faster than any power
    term = next;
    if (sum > kLarge || term > kLarge) sum /= kLarge, term /= kLarge, log_scale += std::log(kLarge);
  }
  return std::min(1.0, std::exp(log_scale + std::log(sum)));
}

}  // namespace

bool is_pace(Pace pace) {
  return pace.per_hour >= 0 && std::isfinite(pace.per_hour) && pace.spread_pct >= 0 &&
         pace.spread_pct <= kMostSpreadPct;
}

double expected_contacts(Pace pace, double minutes) {
  return is_pace(pace) && is_time(minutes) ? pace.per_hour * minutes / kMinutesPerHour : kNaN;
}

double chance_of_target(Pace pace, double minutes, int target) {
  const double mean = expected_contacts(pace, minutes);
  if (!(mean >= 0) || target > kMostTarget) return kNaN;
  if (target <= 0) return 1;
  return mean > 0 ? 1 - chance_below(mean, pace.spread_pct, target) : 0;
}

double minutes_for(Pace pace, int target, double chance) {
  if (!is_pace(pace) || !(chance > 0 && chance < 1) || target > kMostTarget) return kNaN;
  if (target <= 0) return 0;
  if (!(pace.per_hour > 0)) return kInfinity;
  const auto over = [&](double minutes) { return chance_of_target(pace, minutes, target) - chance; };
  double high = kMinutesPerHour * target / pace.per_hour, low = 0, at_low = -chance, at_high = over(high);
  while (at_high < 0) {
    low = high;
    at_low = at_high;
    high *= 2;
    if (!std::isfinite(high))
      return kInfinity;  // a pace that may be nothing at all reaches some chances only in endless time
    at_high = over(high);
  }
  return root_between(low, high, at_low, at_high, 1e-9, over);
}

std::optional<CountRange> contacts_range(Pace pace, double minutes, double share) {
  const double mean = expected_contacts(pace, minutes);
  if (!(mean >= 0) || !(share >= 0 && share < 1)) return std::nullopt;
  if (!(mean > 0)) return CountRange{0, 0};
  // The least k with P(N <= k) at or above a quantile.
  const auto quantile = [&](double q) {
    int low = -1, high = std::min(kMostTarget, int(std::min(mean, double(kMostTarget))) + 1);
    while (high < kMostTarget && chance_below(mean, pace.spread_pct, high + 1) < q) {
      low = high;
      high = std::min(kMostTarget, 2 * high);
    }
    while (high - low > 1) {
      const int middle = low + (high - low) / 2;
      (chance_below(mean, pace.spread_pct, middle + 1) >= q ? high : low) = middle;
    }
    return high;
  };
  const CountRange range{quantile((1 - share) / 2), quantile((1 + share) / 2)};
  if (range.most >= kMostTarget) return std::nullopt;
  return range;
}

Pace updated(Pace pace, double counted, double minutes) {
  if (!is_pace(pace) || !(pace.per_hour > 0) || !(counted >= 0) || !std::isfinite(counted) || !is_time(minutes))
    return {kNaN, kNaN};
  if (pace.spread_pct <= 0 || minutes <= 0) return pace;
  const double shape = std::pow(100 / pace.spread_pct, 2), hours = shape / pace.per_hour;
  return {(shape + counted) / (hours + minutes / kMinutesPerHour), 100 / std::sqrt(shape + counted)};
}

PaceRange pace_range(Pace pace, double share) {
  if (!is_pace(pace) || !(pace.per_hour > 0) || !(share >= 0 && share < 1)) return {kNaN, kNaN};
  if (pace.spread_pct <= 0) return {pace.per_hour, pace.per_hour};
  const double shape = std::pow(100 / pace.spread_pct, 2), scale = pace.per_hour / shape;
  return {scale * gamma_quantile(shape, (1 - share) / 2), scale * gamma_quantile(shape, (1 + share) / 2)};
}

Pace pace_from_count(double counted, double minutes) {
  if (!(counted > 0) || !std::isfinite(counted) || !(minutes > 0) || !is_time(minutes)) return {kNaN, kNaN};
  return {counted * kMinutesPerHour / minutes, 100 / std::sqrt(counted)};
}

double charge_per_contact_mah(double average_current_a, double per_hour) {
  if (!(average_current_a >= 0) || !(per_hour > 0)) return kNaN;
  return 1000 * average_current_a / per_hour;
}

}  // namespace gs::pace
