#include "core/pace/prior.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::pace {
namespace {

constexpr double kLeastMin = 1;

bool is_outing(const Counted& one) {
  return one.contacts >= 0 && std::isfinite(one.contacts) && one.minutes >= kLeastMin && std::isfinite(one.minutes);
}

}  // namespace

Pace prior_from(Pace guess, std::span<const Counted> outings) {
  Pace usual = guess;
  if (!is_pace(guess) || !(guess.per_hour > 0)) {
    constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
    return {kNaN, kNaN};
  }
  if (guess.spread_pct <= 0) return guess;
  double count = 0, contacts = 0, hours = 0, hours_squared = 0;
  for (const Counted& one : outings) {
    if (!is_outing(one)) continue;
    ++count;
    contacts += one.contacts;
    hours += one.minutes / 60;
    hours_squared += std::pow(one.minutes / 60, 2);
  }
  if (count == 0) return guess;
  usual.per_hour = updated(guess, contacts, 60 * hours).per_hour;
  double share = std::pow(guess.spread_pct / 100, 2);
  if (count > 1 && contacts > 0) {
    // the sum of (n - m t)^2 is m t from counting and m^2 s^2 t^2 from outing to outing; the mean came from the
    // same counts, which takes one of them
    const double mean = contacts / hours;
    double squares = 0;
    for (const Counted& one : outings)
      if (is_outing(one)) squares += std::pow(one.contacts - mean * one.minutes / 60, 2);
    const double between =
        std::max(0.0, (squares * count / (count - 1) - contacts) / (mean * mean * hours_squared));
    share = (kGuessOutings * share + (count - 1) * between) / (kGuessOutings + count - 1);
  }
  usual.spread_pct = std::min(kMostSpreadPct, 100 * std::sqrt(share));
  return usual;
}

}  // namespace gs::pace
