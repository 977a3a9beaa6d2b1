// What time it is, handed in by the app beside the plan and never saved; and what it means for an outing.
#pragma once

#include <limits>
#include <string>

#include "core/outing/quantity.h"
#include "core/pace/clock.h"
#include "core/pace/zone.h"

namespace gs {

struct Plan;

/// The machine's clock. NaN where there is none: nothing is "now" then.
struct Now {
  double utc_s = std::numeric_limits<double>::quiet_NaN();           // seconds since 1970-01-01, pace/utc.h
  double utc_offset_min = std::numeric_limits<double>::quiet_NaN();  // of the machine's local clock
};

/// How far the outing is. planning: before it, and always without a clock, a date or a UTC offset, as long as
/// nothing happened. on_air: the person said so and has not ended it, and it is still the outing's day. after:
/// ended by the person, or by its day being over.
enum class Phase : unsigned char { planning, on_air, after };
Phase phase_of(const Plan& plan, const Now& now);

/// Minutes from local midnight of the outing's date by the outing's own UTC offset; by the machine's where the
/// outing has none. NaN where date, offset or instant is not known. `utc_s_of` is the way back. They run on over a
/// change of the clock (pace/zone.h), as all minutes within the core do: the plan's arrival, leave-by and stints,
/// and readings of a time of day, are what the clock shows.
double local_min_of(const Plan& plan, const Now& now, double utc_s);
double utc_s_of(const Plan& plan, const Now& now, double local_min);

/// The clock's change during the outing; none where the plan has none.
pace::ClockChange clock_change(const Plan& plan);
double running_min(const Plan& plan, double shown_min);
double shown_min(const Plan& plan, double running_min);
/// Arrival, leave-by and the work at both ends, running on.
pace::Stay stay_of(const Plan& plan);
/// What the change does, in sentences: "The clock goes back an hour at 03:00: ...", and which time does not exist
/// or comes twice. "" where nothing changes between arrival and leave-by.
std::string say_clock_change(const Plan& plan);
/// Minutes that the machine's clock on the outing's date, at arrival, stands ahead of the outing's UTC offset; 0
/// where they agree or one is not known.
double zone_ahead_that_day_min(const Plan& plan);

/// The local minute of now, on the outing's day only: from midnight of its date until it ends or leave-by is four
/// hours past, whichever is later. NaN otherwise: outside the outing's date nothing is "now".
double minute_now(const Plan& plan, const Now& now);

/// Whether the machine's clock stands in another zone than the outing was planned in: minutes it is ahead, 0 where
/// they agree or one is not known.
double zone_ahead_min(const Plan& plan, const Now& now);

}  // namespace gs
