// The usual pace from one's own earlier outings.
#pragma once

#include <span>

#include "core/pace/pace.h"

namespace gs::pace {

/// One earlier outing: contacts, and operating minutes.
struct Counted {
  double contacts, minutes;
};

/// What to expect next time. Mean: the guess counted as the contacts that its spread is worth, and all outings
/// added to it: (a + sum n) / (b + sum t), the conjugate mean. Spread: how far outings differ from each other
/// beyond what counting itself scatters (method of moments), joined to the guess's own spread as if that were
/// kGuessOutings outings; so few outings change it little, and it never falls to what one steady pace alone would
/// leave. Outings with impossible figures or under a minute are left out. NaN for a guess that is no pace; a guess
/// of spread 0 is certain and stays. Source of the moments: Johnson, Kotz and Kemp, Univariate Discrete
/// Distributions, ch. 5 (from memory).
Pace prior_from(Pace guess, std::span<const Counted> outings);
inline constexpr double kGuessOutings = 3;
/// Before there are any: contacts an hour, and half of it either way, since it is a guess. Common practice.
inline constexpr Pace kGuess{12, 50};

}  // namespace gs::pace
