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
  return plan.has(L::clock_leave_by_min) ? std::max(kDayMin, plan[L::clock_leave_by_min] + kOverMin) : kDayMin;
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
  return now.utc_offset_min - plan[L::clock_utc_offset_min];
}

}  // namespace gs
