// The outing by the clock as it stands now: what was on the air, what is to come, and which UTC days both belong
// to.
#pragma once

#include <limits>
#include <vector>

#include "core/outing/now.h"
#include "core/outing/stretches.h"
#include "core/pace/pace.h"

namespace gs {

/// Why there is no clock to go by.
enum class NoClock : unsigned char { none, missing, impossible };

/// Local minutes of the outing's date, running on over a change of the clock; NaN where not known. The start moves:
/// to when the person said it began, or to now where that is late and nobody said so yet.
struct OutingDay {
  Phase phase = Phase::planning;
  NoClock no_clock = NoClock::none;
  L missing = L::count;  // where no_clock is not none: the lever to look at
  double now_min = std::numeric_limits<double>::quiet_NaN();
  double planned_start_min = now_min, starts_min = now_min, pack_by_min = now_min;
  std::vector<Stretch> past, to_come;  // on the air; pauses and breaks left out. Points into the plan
  double past_min = 0, to_come_min = 0;
};
OutingDay day_of(const Plan& plan, const Now& now);

/// What counts on one UTC day: contacts so far, and minutes to come worth at the outing's own usual pace.
struct DayCount {
  double utc_day;  // since 1970; since the outing's date where that is not known
  double contacts = 0, to_come_worth_min = 0;
};
/// By day, in order; one row where the counting rule is the outing, or its UTC offset is not known. `to_come` may
/// be shorter than the day's: a battery may end it.
std::vector<DayCount> count_by_day(const Plan& plan, const Now& now, const std::vector<Stretch>& to_come);

/// The first so many minutes on the air.
std::vector<Stretch> first_minutes(const std::vector<Stretch>& stretches, double minutes);

/// The usual pace with what has been counted since: conjugate update over the minutes on the air so far.
pace::Pace pace_now(const Plan& plan, const OutingDay& day);

}  // namespace gs
