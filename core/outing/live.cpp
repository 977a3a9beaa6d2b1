#include "core/outing/live.h"

#include <algorithm>
#include <cmath>

#include "core/pace/clock.h"

namespace gs {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kEightInTen = 0.8;
// A clock that stands further behind the last contact than this was set back; less is a correction that nobody
// feels.
constexpr double kJumpMin = 2;

/// Minutes on the air at which each contact came. Presses in a pause belong to its edge.
std::vector<double> on_air_times(const Plan& plan, const OutingDay& day, const Now& now) {
  std::vector<double> times;
  double latest_min = 0;
  for (const Tap& tap : plan.happened.tally) {
    const double at = worth_min(plan, before(day.past, local_min_of(plan, now, tap.at_utc_s)));
    latest_min = std::max(latest_min, at);  // a clock set back moves none of them before another
    times.insert(times.end(), std::size_t(tap.count), latest_min);
  }
  return times;
}

void count(const Plan& plan, const OutingDay& day, const Now& now, Live& live) {
  live.counted = day.phase == Phase::planning ? 0 : contacts_in(plan.happened);
  for (const DayCount& row : count_by_day(plan, now, {})) live.counts = std::max(live.counts, row.contacts);
  live.target = int(std::lround(plan[L::pace_target]));
  live.pace = pace_now(plan, day);
  live.likely = pace::pace_range(live.pace, kEightInTen);
  live.last_utc_s = live.since_last_min = kNaN;
  if (live.counted == 0) return;
  live.last_utc_s = plan.happened.tally.back().at_utc_s;
  const double since_min = (now.utc_s - live.last_utc_s) / 60;
  live.clock_doubtful = since_min < -kJumpMin;
  live.since_last_min = std::fmax(0, since_min);
  // where a time cannot be placed on the outing's day there is nothing to compare
  if (day.phase != Phase::on_air) return;
  live.drying = pace::drying(on_air_times(plan, day, now), worth_min(plan, day.past),
                             {plan[L::pace_per_hour], plan[L::pace_spread_pct]},
                             worth_min(plan, day.past) + worth_min(plan, day.to_come));
}

}  // namespace

Live live(const Plan& plan, const Outlook& outlook, const Now& now) {
  const OutingDay day = day_of(plan, now);
  Live live;
  live.phase = day.phase;
  live.now_min = day.now_min;
  live.starts_min = day.starts_min;
  live.planned_start_min = day.planned_start_min;
  live.pack_by_min = day.pack_by_min;
  live.leave_by_min = plan[L::clock_leave_by_min];
  live.on_air_min = day.past_min;
  live.left_min = day.no_clock == NoClock::none ? day.to_come_min : kNaN;
  live.pack_in_min = std::max(0.0, day.pack_by_min - day.now_min);
  if (!std::isfinite(day.pack_by_min - day.now_min)) live.pack_in_min = kNaN;
  const double offset_min = plan.has(L::clock_utc_offset_min) ? plan[L::clock_utc_offset_min] : now.utc_offset_min;
  const double from_min = std::isfinite(day.now_min) ? day.now_min : day.starts_min;
  live.utc_midnight_min =
      pace::utc_midnight_between(from_min, stay_of(plan).leave_by_min, offset_min).value_or(kNaN);
  live.late_min = std::max(0.0, day.starts_min - day.planned_start_min);
  live.late_cost =
      plan[L::pace_per_hour] / 60 *
      worth_min(plan, stretches_of(plan, day.planned_start_min, std::min(day.starts_min, day.pack_by_min)));
  if (day.no_clock != NoClock::none) live.late_min = live.late_cost = kNaN;
  count(plan, day, now, live);
  const double average_a = outlook[R::power_average_current_a].value;
  live.mah_per_contact =
      live.counted > 0 && day.past_min > 0 ? 1000 * average_a * day.past_min / 60 / live.counted : kNaN;
  live.zone_ahead_min = zone_ahead_min(plan, now);
  for (double* of_clock :
       {&live.now_min, &live.starts_min, &live.planned_start_min, &live.pack_by_min, &live.utc_midnight_min})
    *of_clock = shown_min(plan, *of_clock);
  return live;
}

std::string say_drying(const Live& live, const Style& style) {
  if (!live.drying.shown) return {};
  // two digits are all that such a chance is worth
  const double times = 1 / std::max(live.drying.chance, 1e-6),
               grid = std::pow(10, std::floor(std::log10(times)) - 1);
  const std::string once = say_quantity(std::round(times / grid) * grid, Unit::none, 0, style);
  const std::string took = say_quantity(live.drying.minutes, Unit::minute, 0, style);
  return live.drying.sign == pace::Drying::Sign::wait
             ? "It may be drying up: " + took + " without a contact. At a steady pace such a wait comes once in " +
                   once + "."
             : "It may be drying up: the last five took " + took +
                   ". At a steady pace five take that long once in " + once + ".";
}

std::string say_late(const Live& live, const Style& style) {
  if (!(live.late_min >= 1)) return {};
  const double cost = std::round(live.late_cost);
  return say_quantity(live.late_min, Unit::minute, 0, style) + " late: that costs " +
         (cost < 1    ? std::string("less than a contact.")
          : cost == 1 ? std::string("about 1 contact.")
                      : "about " + say_quantity(cost, Unit::none, 0, style) + " contacts.");
}

std::string say_clock(const Live& live) {
  if (live.clock_doubtful) return "The clock stands before your last contact: check it. Contacts still count.";
  if (live.zone_ahead_min == 0) return {};
  return "This device's clock stands " + say_quantity(std::abs(live.zone_ahead_min), Unit::minute, 0) +
         (live.zone_ahead_min > 0 ? " ahead of" : " behind") +
         " the outing's UTC offset. Times here go by the outing's.";
}

}  // namespace gs
