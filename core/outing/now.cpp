#include "core/outing/now.h"

#include <algorithm>
#include <cmath>

#include "core/outing/plan.h"
#include "core/pace/utc.h"
#include "core/sky/calendar.h"

namespace gs {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kDayMin = 1440, kOverMin = 240;

double offset_min_of(const Plan& plan, const Now& now) {
  return plan.has(L::clock_utc_offset_min) ? plan[L::clock_utc_offset_min] : now.utc_offset_min;
}

/// 00:00 UTC of the outing's date, as if its local midnight were that.
double midnight_utc_s(const Plan& plan) {
  constexpr double kDayS = 86400, kYear2000S = 946684800;
  return plan.date ? kYear2000S + kDayS * sky::day_number(*plan.date) : kNaN;
}

/// The last minute that still belongs to the outing's day: midnight, or later where leave-by is late. One that ran
/// over its leave-by is still today's.
double day_ends_min(const Plan& plan) {
  return plan.has(L::clock_leave_by_min) ? std::max(kDayMin, stay_of(plan).leave_by_min + kOverMin) : kDayMin;
}

}  // namespace

double local_min_of(const Plan& plan, const Now& now, double utc_s) {
  if (!pace::is_instant(utc_s)) return kNaN;
  return (utc_s - midnight_utc_s(plan)) / 60 + offset_min_of(plan, now);
}

double utc_s_of(const Plan& plan, const Now& now, double local_min) {
  const double utc_s = midnight_utc_s(plan) + (local_min - offset_min_of(plan, now)) * 60;
  return pace::is_instant(utc_s) ? utc_s : kNaN;
}

pace::ClockChange clock_change(const Plan& plan) {
  return {plan[L::clock_changes_at_min], plan.has(L::clock_change_min) ? plan[L::clock_change_min] : 0};
}

double running_min(const Plan& plan, double shown_min) { return pace::running_of(shown_min, clock_change(plan)); }
double shown_min(const Plan& plan, double running_min) { return pace::shown_of(running_min, clock_change(plan)); }

pace::Stay stay_of(const Plan& plan) {
  return {running_min(plan, plan[L::clock_arrive_min]), running_min(plan, plan[L::clock_leave_by_min]),
          plan[L::clock_set_up_min], plan[L::clock_pack_down_min]};
}

std::string say_clock_change(const Plan& plan) {
  const pace::ClockChange change = clock_change(plan);
  const double arrive = plan[L::clock_arrive_min], leave = plan[L::clock_leave_by_min];
  if (!pace::touches(arrive, leave, change)) return {};
  const auto clock = [](double minute) { return say_result(minute, Unit::clock_minute, 0); };
  const pace::Stay stay = stay_of(plan);
  const double longer_min = stay.leave_by_min - stay.arrive_min - (leave - arrive);
  std::string words = "At " + clock(change.at_min) + " the clock is set " +
                      (change.by_min < 0 ? "back" : "forward") + " to " + wall_clock(change.at_min + change.by_min);
  if (longer_min != 0)
    words += ": the stay is " + say_span(std::abs(longer_min)) + (longer_min > 0 ? " longer" : " shorter") +
             " than its times say";
  words += ".";
  for (const L id : {L::clock_arrive_min, L::clock_leave_by_min}) {
    const std::string what = std::string(lever(id).name) + ", " + clock(plan[id]) + ", ";
    if (pace::is_leapt_over(plan[id], change))
      words += " " + what + "is no time of that day: taken as " + wall_clock(change.at_min + change.by_min) + ".";
    if (pace::comes_twice(plan[id], change)) words += " " + what + "comes twice: the first is meant.";
  }
  return words;
}

double zone_ahead_that_day_min(const Plan& plan) {
  const pace::ZoneDay& zone = plan.habits.zone;
  if (!plan.has(L::clock_utc_offset_min) || !std::isfinite(zone.offset_min)) return 0;
  const bool changed = pace::changes(zone.change) &&
                       plan[L::clock_arrive_min] >= zone.change.at_min + std::max(0.0, zone.change.by_min);
  return zone.offset_min + (changed ? zone.change.by_min : 0) - plan[L::clock_utc_offset_min];
}

double minute_now(const Plan& plan, const Now& now) {
  const double minute = local_min_of(plan, now, now.utc_s);
  return minute >= 0 && minute < day_ends_min(plan) ? minute : kNaN;
}

Phase phase_of(const Plan& plan, const Now& now) {
  if (plan.happened.on_air.empty()) return Phase::planning;
  if (!is_on_air(plan.happened)) return Phase::after;
  const double minute = local_min_of(plan, now, now.utc_s);
  if (!std::isfinite(minute)) return Phase::planning;
  // a clock set back behind the start is no reason to end it
  return minute < day_ends_min(plan) ? Phase::on_air : Phase::after;
}

double zone_ahead_min(const Plan& plan, const Now& now) {
  if (!plan.has(L::clock_utc_offset_min) || !std::isfinite(now.utc_offset_min)) return 0;
  const pace::ClockChange change = clock_change(plan);
  const bool changed = pace::changes(change) && local_min_of(plan, now, now.utc_s) >= change.at_min;
  return now.utc_offset_min - plan[L::clock_utc_offset_min] - (changed ? change.by_min : 0);
}

}  // namespace gs
