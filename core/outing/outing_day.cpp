#include "core/outing/outing_day.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/pace/clock.h"
#include "core/pace/utc.h"
#include "core/sky/calendar.h"

namespace gs {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kDayMin = 1440;

/// An instant as a local minute; where the outing's date or offset is not known, counted on from the planned start
/// at the first one.
double placed_min(const Plan& plan, const Now& now, double planned_start_min, double utc_s) {
  const double minute = local_min_of(plan, now, utc_s);
  if (std::isfinite(minute)) return minute;
  const double start_min = std::isfinite(planned_start_min) ? planned_start_min : 0;
  return start_min + (utc_s - plan.happened.on_air.front().from_utc_s) / 60;
}

std::vector<Stretch> past_of(const Plan& plan, const Now& now, const OutingDay& day) {
  std::vector<Stretch> past;
  const auto placed = [&](double utc_s) { return placed_min(plan, now, day.planned_start_min, utc_s); };
  for (const OnAir& span : plan.happened.on_air) {
    double until_min = kNaN;
    if (span.until_utc_s) {
      until_min = placed(*span.until_utc_s);
    } else {
      // Still open: until now; on a day that is over, until packing began. A clock set back since the last contact
      // takes no time away that contacts came in.
      until_min = day.phase == Phase::on_air ? day.now_min : day.pack_by_min;
      if (!plan.happened.tally.empty())
        until_min = std::fmax(until_min, placed(plan.happened.tally.back().at_utc_s));
    }
    for (const Stretch& stretch : stretches_of(plan, placed(span.from_utc_s), until_min)) past.push_back(stretch);
  }
  return past;
}

}  // namespace

OutingDay day_of(const Plan& plan, const Now& now) {
  OutingDay day;
  day.phase = phase_of(plan, now);
  day.now_min = minute_now(plan, now);
  day.planned_start_min = day.starts_min = day.pack_by_min = kNaN;
  for (const L id : {L::clock_leave_by_min, L::clock_arrive_min})
    if (!plan.has(id)) day.no_clock = NoClock::missing, day.missing = id;
  if (day.no_clock == NoClock::none) {
    const pace::OnAir air = pace::on_air(stay_of(plan));
    if (air.trouble == pace::NoTime::none) {
      day.planned_start_min = day.starts_min = air.starts_min;
      day.pack_by_min = air.pack_by_min;
    } else {
      day.no_clock = NoClock::impossible;
      day.missing = L::clock_leave_by_min;
    }
  }
  if (plan.happened.on_air.empty()) {
    if (day.now_min > day.starts_min && day.now_min < day.pack_by_min) day.starts_min = day.now_min;
  } else {
    day.starts_min = placed_min(plan, now, day.planned_start_min, plan.happened.on_air.front().from_utc_s);
  }
  if (day.phase == Phase::planning) {
    day.to_come = stretches_of(plan, day.starts_min, day.pack_by_min);
  } else {
    day.past = past_of(plan, now, day);
    if (day.phase == Phase::on_air) day.to_come = stretches_of(plan, day.now_min, day.pack_by_min);
  }
  day.past_min = minutes_of(day.past);
  day.to_come_min = minutes_of(day.to_come);
  return day;
}

std::vector<DayCount> count_by_day(const Plan& plan, const Now& now, const std::vector<Stretch>& to_come) {
  std::vector<DayCount> days;
  const double offset_min = plan.has(L::clock_utc_offset_min) ? plan[L::clock_utc_offset_min] : now.utc_offset_min;
  const bool by_day = plan[L::pace_day_rule] == 0 && std::isfinite(offset_min);
  const auto on = [&](double utc_day) -> DayCount& {
    if (!by_day) utc_day = 0;
    const auto at = std::lower_bound(days.begin(), days.end(), utc_day,
                                     [](const DayCount& row, double wanted) { return row.utc_day < wanted; });
    if (at != days.end() && at->utc_day == utc_day) return *at;
    return *days.insert(at, {utc_day});
  };
  constexpr double kYear2000Day = 10957;
  const double date_day = plan.date ? kYear2000Day + sky::day_number(*plan.date) : 0;
  if (phase_of(plan, now) != Phase::planning)
    for (const Tap& tap : plan.happened.tally) on(pace::utc_day(tap.at_utc_s)).contacts += tap.count;
  for (const Stretch& stretch : to_come) {
    const double first = by_day ? std::floor((stretch.from_min - offset_min) / kDayMin) : 0;
    const double last = by_day ? std::floor((stretch.until_min - offset_min) / kDayMin) : 0;
    for (double utc_day = first; utc_day <= last; ++utc_day) {
      Stretch piece = stretch;
      if (utc_day > first) piece.from_min = utc_day * kDayMin + offset_min;
      if (utc_day < last) piece.until_min = (utc_day + 1) * kDayMin + offset_min;
      if (piece.minutes() > 0) on(date_day + utc_day).to_come_worth_min += worth_min(plan, {&piece, 1});
    }
  }
  return days;
}

std::vector<Stretch> first_minutes(const std::vector<Stretch>& stretches, double minutes) {
  std::vector<Stretch> found;
  for (Stretch stretch : stretches) {
    if (!(minutes > 0)) break;
    stretch.until_min = std::min(stretch.until_min, stretch.from_min + minutes);
    minutes -= stretch.minutes();
    found.push_back(stretch);
  }
  return found;
}

pace::Pace pace_now(const Plan& plan, const OutingDay& day) {
  const pace::Pace usual{plan[L::pace_per_hour], plan[L::pace_spread_pct]};
  if (day.phase == Phase::planning) return usual;
  return pace::updated(usual, contacts_in(plan.happened), worth_min(plan, day.past));
}

}  // namespace gs
