// Contacts in a time: a pace that is itself only roughly known, and what a count says about it.
#pragma once

#include <optional>

namespace gs::pace {

/// Contacts an hour and how far the pace may be off: standard deviation in percent of the mean. The pace is gamma
/// distributed with this mean and deviation, contacts at a given pace are Poisson; so their number is negative
/// binomial, and plain Poisson at spread 0. per_hour 0 or more, spread_pct 0 to 300; all functions answer NaN
/// outside, or for minutes below 0, unless said otherwise. Source: Gelman et al., Bayesian Data Analysis, ch. 2
/// (Poisson model, gamma prior; from memory).
struct Pace {
  double per_hour = 0, spread_pct = 0;
};
bool is_pace(Pace pace);
inline constexpr double kMostSpreadPct = 300;
inline constexpr int kMostTarget = 100'000;

double expected_contacts(Pace pace, double minutes);

/// Chance (0..1) of at least `target` contacts, 0 to 100 000 of them (1 for 0 and below). Exact sum of the
/// distribution's terms from 0; rounding below 1e-9 (1e-13 up to a few hundred contacts).
double chance_of_target(Pace pace, double minutes, int target);

/// Minutes after which the chance of `target` contacts reaches `chance` (0 < chance < 1). 0 for a target of 0;
/// infinite where the pace is 0. Within 1e-9 relative.
double minutes_for(Pace pace, int target, double chance);

/// Least and most contacts that `share` (0..1, say 0.8) of such outings bring: the quantiles (1 -/+ share)/2.
/// Nothing for impossible input, or where more than kMostTarget would be needed.
struct CountRange {
  int least, most;
};
std::optional<CountRange> contacts_range(Pace pace, double minutes, double share);

/// The pace after `counted` contacts (0 or more) in `minutes` of operating time were added to what was known:
/// gamma(a + n, b + t). At spread 0 the pace was certain and stays; minutes 0 changes nothing. per_hour must be
/// above 0.
Pace updated(Pace pace, double counted, double minutes);

/// Between which two paces it lies in `share` (0..1) of the cases: gamma quantiles (1 -/+ share)/2, contacts an
/// hour. Equal at spread 0; NaN for impossible input or a pace of 0.
struct PaceRange {
  double low_per_hour, high_per_hour;
};
PaceRange pace_range(Pace pace, double share);

/// The pace that a count alone shows: n / t with a spread of 1/sqrt(n), which is what a count of n leaves open
/// (shape n). Operating time, not the time on site. counted > 0 and minutes > 0.
Pace pace_from_count(double counted, double minutes);

/// Average time between contacts times the average current: mAh a contact. Current 0 or more, per_hour > 0.
double charge_per_contact_mah(double average_current_a, double per_hour);

}  // namespace gs::pace
