// The local clock on one date, and a change of it: summer time that begins or ends while an outing lasts.
#pragma once

#include <limits>

namespace gs::pace {

// Minutes from local midnight of the date as the clock ran then, on and on, are called running here; shown is what
// a clock on the wall says after it was set forward or back.

/// A clock that is set forward (by_min above 0) or back (below 0) when it has come to at_min. None: by_min 0 or
/// at_min not finite.
struct ClockChange {
  double at_min = std::numeric_limits<double>::quiet_NaN(), by_min = 0;
};
bool changes(ClockChange change);

/// What the clock shows at a running minute, and the other way. A shown time that does not exist, since the clock
/// leaps over it, is taken as the moment of the leap; one that comes twice as the first. Never falling; the time
/// itself where nothing changes; NaN stays NaN.
double shown_of(double running_min, ClockChange change);
double running_of(double shown_min, ClockChange change);
bool is_leapt_over(double shown_min, ClockChange change);
bool comes_twice(double shown_min, ClockChange change);

/// Whether a stay by shown times comes upon the change: it lasts over it, or one of its ends falls into the hour
/// that is none or comes twice. false where a time is not known.
bool touches(double arrive_min, double leave_by_min, ClockChange change);

/// The local zone on a date: how far it stands before UTC when the date begins, and its first change within
/// kZoneMin.
struct ZoneDay {
  double offset_min = std::numeric_limits<double>::quiet_NaN();  // NaN: not known
  ClockChange change{};
};
inline constexpr double kZoneMin = 3 * 1440;

/// `offset_min_at(utc_s)`: how far the local clock stands before UTC at an instant. `days`: of the date since
/// 1970-01-01. The change is found to the second where offsets stay for a quarter of an hour or longer.
template <class Offset>
ZoneDay zone_day(double days, Offset offset_min_at) {
  constexpr double kDayS = 86400, kStepS = 900;
  const double as_utc_s = days * kDayS;
  double begins_s = as_utc_s - 60 * offset_min_at(as_utc_s);
  begins_s = as_utc_s - 60 * offset_min_at(begins_s);  // the offset of the date's own beginning
  ZoneDay zone{offset_min_at(begins_s), {}};
  for (double from_s = begins_s; from_s < begins_s + 60 * kZoneMin; from_s += kStepS) {
    double before_s = from_s, after_s = from_s + kStepS;
    const double by_min = offset_min_at(after_s) - zone.offset_min;
    if (by_min == 0) continue;
    while (after_s - before_s > 1) {
      const double middle_s = before_s + double(long((after_s - before_s) / 2));
      (offset_min_at(middle_s) == zone.offset_min ? before_s : after_s) = middle_s;
    }
    zone.change = {(after_s - begins_s) / 60, by_min};
    break;
  }
  return zone;
}

}  // namespace gs::pace
