#include "core/pace/drying.h"

#include <algorithm>
#include <cmath>

#include "core/pace/gamma.h"

namespace gs::pace {
namespace {

constexpr std::size_t kFewest = 2, kFive = 5;
// Of the false alarms that may be, seven in ten go to waits, the others to fives: waits are what one notices.
constexpr double kForWaits = 0.7 * kMostFalseAlarms, kForFives = 0.3 * kMostFalseAlarms;

/// The part of all false alarms that may fall to one stretch: what it is expected to take, by the contacts before
/// it, over the minutes in which one that takes as long as this could begin. `before_min` is never more than those.
double share_of(double more, double n, double before_min, double took_min, double whole_min) {
  return more * (before_min / n) / (whole_min - took_min);
}

/// Chance that `more` contacts after the n-th take this long: from the contacts alone, and with the guessed pace
/// counted in; the greater one.
double chance_of(double n, double before_min, double took_min, double more, Pace usual) {
  const double alone = before_min > 0 ? beta_share(n, more, before_min / (before_min + took_min)) : 1;
  double together = 1;
  if (usual.spread_pct > 0) {
    const double shape = std::pow(100 / usual.spread_pct, 2), worth_min = 60 * shape / usual.per_hour;
    const double whole_min = worth_min + before_min;
    together = beta_share(shape + n, more, whole_min / (whole_min + took_min));
  } else {
    together = gamma_rest(more, usual.per_hour * took_min / 60);
  }
  return std::max(alone, together);
}

}  // namespace

Drying drying(std::span<const double> at_min, double now_min, Pace usual, double whole_min) {
  if (at_min.size() < kFewest || !is_pace(usual) || !(usual.per_hour > 0) ||
      !std::is_sorted(at_min.begin(), at_min.end()) || !(at_min.front() >= 0) || !(now_min >= at_min.back()) ||
      !std::isfinite(now_min) || !std::isfinite(whole_min))
    return {};
  whole_min = std::fmax(whole_min, now_min);
  const std::size_t count = at_min.size();
  const double wait_min = now_min - at_min.back();
  Drying result{false, Drying::Sign::none, chance_of(double(count), at_min.back(), wait_min, 1, usual), wait_min};
  if (result.chance <= kForWaits * share_of(1, double(count), at_min.back(), wait_min, whole_min)) {
    result.shown = true;
    result.sign = Drying::Sign::wait;
    return result;
  }
  // The five that are under way, or those that the last contact just completed.
  const std::size_t fives = (count - 1) / kFive;
  if (fives == 0) return result;
  const double before_min = at_min[fives * kFive - 1], until_min = count % kFive == 0 ? at_min.back() : now_min;
  const double took_min = until_min - before_min;
  const double before = double(fives * kFive), chance = chance_of(before, before_min, took_min, kFive, usual);
  if (!(chance <= kForFives * share_of(kFive, before, before_min, took_min, whole_min))) return result;
  return {true, Drying::Sign::slow_five, chance, took_min};
}

}  // namespace gs::pace
