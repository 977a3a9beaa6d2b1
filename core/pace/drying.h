// Is it drying up? How unlikely the wait since the last contact, or the slowness of the last five, would be at a
// steady pace.
#pragma once

#include <span>

#include "core/pace/pace.h"

namespace gs::pace {

/// What the tally says against a steady pace. `chance`: of a wait or a stretch at least as long, had the pace
/// stayed what the contacts before show. Shown only where it is so small that all outings together whose pace is
/// steady raise it in at most one of twenty.
struct Drying {
  bool shown = false;
  enum class Sign : unsigned char { none, wait, slow_five } sign = Sign::none;
  double chance = 1;   // of the sign that is shown; else of the present wait
  double minutes = 0;  // that the wait, or the last five contacts so far, took
};
inline constexpr double kMostFalseAlarms = 0.05;

/// `at_min`: operating minutes (breaks left out) of each contact so far, from the start of being on the air, not
/// falling; `now_min`: operating minutes so far, not before the last of them; `whole_min`: operating minutes that
/// the outing is to have in all, `now_min` at least. `usual` is the pace as it was guessed. Nothing is shown before
/// two contacts, or for input that is out of order or not finite.
///
/// The predictive chance of the silence: for steady Poisson contacts the ratio of the time of the n-th to that of
/// the (n + k)-th contact is beta(n, k) distributed whatever the pace, and the ratios of stretches that follow one
/// another are independent (Renyi; Feller, An Introduction to Probability Theory II, I.6; from memory). So each
/// wait has an exact chance, and the chances at which an alarm is raised may be added up. They are spent by the
/// minute: a wait may raise an alarm by its share of kMostFalseAlarms, its expected length over the minutes in
/// which one as long could begin; for a steady pace these shares come to less than one. The usual pace must agree:
/// counted as the contacts that its spread is worth, it keeps a lucky start from looking like a pace.
Drying drying(std::span<const double> at_min, double now_min, Pace usual, double whole_min);

}  // namespace gs::pace
