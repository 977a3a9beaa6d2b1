// The time on the air, cut wherever something changes: stints, breaks, pauses, now, and 00:00 UTC.
#pragma once

#include <limits>
#include <span>
#include <vector>

#include "core/outing/now.h"
#include "core/outing/plan.h"

namespace gs {

/// A stretch of being on the air under one plan. Local minutes of the outing's date.
struct Stretch {
  double from_min, until_min;
  const Plan* plan;  // as it is in this stretch: a stint's or the outing's own; never null
  int stint;         // its row in Plan::stints, -1 before the first
  bool own_plan;     // whether `plan` is the stint's own
  double leaves_w = std::numeric_limits<double>::quiet_NaN();  // power that the radio lets go in it
  double minutes() const { return until_min - from_min; }
};

/// Being on the air from one time to another, without the breaks: stretches in order of time, none empty. Points
/// into `plan`.
std::vector<Stretch> stretches_of(const Plan& plan, double from_min, double until_min);

double minutes_of(std::span<const Stretch> stretches);

/// The local time when so many minutes on the air are over. Past the last stretch it goes on without breaks; NaN
/// where there are no stretches.
double time_after(std::span<const Stretch> stretches, double on_air_min);

/// The same stretches up to, and from, a local time.
std::vector<Stretch> before(std::span<const Stretch> stretches, double local_min);
std::vector<Stretch> behind(std::span<const Stretch> stretches, double local_min);

/// Minutes at the outing's own usual pace that are worth as much: a stint may have another pace.
double worth_min(const Plan& plan, std::span<const Stretch> stretches);

}  // namespace gs
