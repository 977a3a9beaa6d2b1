// The outing by the clock: minutes on the air, when to pack, and where the UTC day turns.
#pragma once

#include <optional>

namespace gs::pace {

// Times are minutes from local midnight of the outing's date and may pass 1440. UTC offsets are minutes that the
// local clock stands before UTC: UTC-4 is -240; within -720 to 840 on earth, -1440 to 1440 taken.

/// When one is there, must be gone, and what the work at both ends takes.
struct Stay {
  double arrive_min = 0, leave_by_min = 0, set_up_min = 0, pack_down_min = 0;
};

/// Why a stay leaves no time on the air.
enum class NoTime : unsigned char {
  none,           // there is time
  not_known,      // a time is not a finite number, or work takes less than nothing
  leaves_first,   // leave-by is not after arrival: past midnight it counts on, 01:00 of the next day is 25:00
  work_fills_it,  // set-up and pack-down take the whole stay or more
};

struct OnAir {
  double starts_min, pack_by_min;  // first call, start packing; NaN only when not_known
  double minutes;                  // between them; 0 where there is no time
  double short_by_min;             // what the work takes more than the stay has; else 0
  NoTime trouble;
};
/// Definition: minutes = leave_by - pack_down - (arrive + set_up).
OnAir on_air(const Stay& stay);

/// Contacts an hour of the whole stay, set-up and pack-down included; NaN for a stay without length.
double per_hour_on_site(double contacts, const Stay& stay);

/// UTC of a local time: minute of the UTC day (0 to below 1440) and days after the local date (-1, 0, 1 or more).
struct UtcTime {
  double minute_of_day;
  int day_shift;
};
UtcTime utc_of(double local_min, double utc_offset_min);
/// The local time of a UTC time on a UTC date so many days after the local date.
double local_of(UtcTime utc, double utc_offset_min);

/// The local time of the first 00:00 UTC after `from_min` and before `to_min`; nothing where the UTC day does not
/// turn between.
std::optional<double> utc_midnight_between(double from_min, double to_min, double utc_offset_min);

}  // namespace gs::pace
