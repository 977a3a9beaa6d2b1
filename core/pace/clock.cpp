#include "core/pace/clock.h"

#include <cmath>
#include <limits>

namespace gs::pace {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kMinutesPerDay = 1440, kMinutesPerHour = 60;

bool is_known(const Stay& s) {
  return std::isfinite(s.arrive_min) && std::isfinite(s.leave_by_min) && s.set_up_min >= 0 &&
         std::isfinite(s.set_up_min) && s.pack_down_min >= 0 && std::isfinite(s.pack_down_min);
}

}  // namespace

OnAir on_air(const Stay& stay) {
  if (!is_known(stay)) return {kNaN, kNaN, 0, 0, NoTime::not_known};
  const double starts = stay.arrive_min + stay.set_up_min, pack_by = stay.leave_by_min - stay.pack_down_min;
  const double minutes = pack_by - starts;
  if (stay.leave_by_min <= stay.arrive_min) return {starts, pack_by, 0, -minutes, NoTime::leaves_first};
  if (minutes <= 0) return {starts, pack_by, 0, 0 - minutes, NoTime::work_fills_it};
  return {starts, pack_by, minutes, 0, NoTime::none};
}

double per_hour_on_site(double contacts, const Stay& stay) {
  const double minutes = stay.leave_by_min - stay.arrive_min;
  return minutes > 0 && contacts >= 0 ? contacts * kMinutesPerHour / minutes : kNaN;
}

UtcTime utc_of(double local_min, double utc_offset_min) {
  const double utc = local_min - utc_offset_min, days = std::floor(utc / kMinutesPerDay);
  constexpr double kMostDays = 1e6;
  if (!(std::abs(days) <= kMostDays)) return {kNaN, 0};
  return {utc - days * kMinutesPerDay, int(days)};
}

double local_of(UtcTime utc, double utc_offset_min) {
  return utc.minute_of_day + utc.day_shift * kMinutesPerDay + utc_offset_min;
}

std::optional<double> utc_midnight_between(double from_min, double to_min, double utc_offset_min) {
  const UtcTime from = utc_of(from_min, utc_offset_min);
  if (!std::isfinite(from.minute_of_day)) return std::nullopt;
  const double midnight = local_of({0, from.day_shift + 1}, utc_offset_min);
  if (!(midnight < to_min)) return std::nullopt;
  return midnight;
}

}  // namespace gs::pace
