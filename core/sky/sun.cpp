#include "core/sky/sun.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::sky {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kDegree = kPi / 180;
constexpr double kMinutesPerDay = 1440, kMinutesPerDegree = 4;
constexpr double kDaysPerCentury = 36525;
// A crossing is found when it is known to far below a second or the sun stands this near the elevation.
constexpr double kCrossingMin = 1e-9, kCrossingDeg = 1e-7;

double sin_deg(double a) { return std::sin(a * kDegree); }
double cos_deg(double a) { return std::cos(a * kDegree); }

/// Declination and equation of time at so many days since 1 January 2000, 12 h.
struct Ephemeris {
  double declination_deg, equation_of_time_min;
};
Ephemeris ephemeris(double days) {
  const double t = days / kDaysPerCentury;
  // Meeus (25.2) to (25.8): mean longitude, mean anomaly, eccentricity, equation of the centre, apparent longitude.
  const double mean_longitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
  const double anomaly = 357.52911 + t * (35999.05029 - t * 0.0001537);
  const double eccentricity = 0.016708634 - t * (0.000042037 + t * 0.0000001267);
  const double centre = (1.914602 - t * (0.004817 + t * 0.000014)) * sin_deg(anomaly) +
                        (0.019993 - t * 0.000101) * sin_deg(2 * anomaly) + 0.000289 * sin_deg(3 * anomaly);
  const double node = 125.04 - 1934.136 * t;
  const double longitude = mean_longitude + centre - 0.00569 - 0.00478 * sin_deg(node);
  // Meeus (22.2) and the nutation term of ch. 25.
  const double obliquity =
      23.4392911 - t * (0.0130042 + t * (0.00000016 - t * 0.000000504)) + 0.00256 * cos_deg(node);
  // Meeus (28.3), Smart's series.
  const double y = std::pow(std::tan(obliquity / 2 * kDegree), 2);
  const double equation = y * sin_deg(2 * mean_longitude) - 2 * eccentricity * sin_deg(anomaly) +
                          4 * eccentricity * y * sin_deg(anomaly) * cos_deg(2 * mean_longitude) -
                          y * y / 2 * sin_deg(4 * mean_longitude) -
                          1.25 * eccentricity * eccentricity * sin_deg(2 * anomaly);
  return {std::asin(sin_deg(obliquity) * sin_deg(longitude)) / kDegree, kMinutesPerDegree * equation / kDegree};
}

double days_since_2000(Date date, double utc_min) { return day_number(date) - 0.5 + utc_min / kMinutesPerDay; }

}  // namespace

Sun sun_at(Place place, Date date, double utc_min) {
  if (!is_place(place) || !is_date(date) || !std::isfinite(utc_min)) return {kNaN, kNaN, kNaN, kNaN};
  const Ephemeris sun = ephemeris(days_since_2000(date, utc_min));
  // Hour angle: 0 at noon by the sun, west positive.
  const double hour_angle = (utc_min + sun.equation_of_time_min) / kMinutesPerDegree - 180 + place.longitude_deg;
  const double sin_dec = sin_deg(sun.declination_deg), cos_dec = cos_deg(sun.declination_deg);
  const double sin_lat = sin_deg(place.latitude_deg), cos_lat = cos_deg(place.latitude_deg);
  // East, north and up of the direction to the sun; the elevation from all three keeps its digits near the zenith.
  const double east = -cos_dec * sin_deg(hour_angle);
  const double north = sin_dec * cos_lat - cos_dec * sin_lat * cos_deg(hour_angle);
  const double up = sin_dec * sin_lat + cos_dec * cos_lat * cos_deg(hour_angle);
  const double azimuth = std::atan2(east, north) / kDegree;
  return {std::atan2(up, std::hypot(east, north)) / kDegree, azimuth < 0 ? azimuth + 360 : azimuth,
          sun.declination_deg, sun.equation_of_time_min};
}

Crossings sun_crossings(Place place, Date date, double utc_offset_min, double elevation_deg) {
  Crossings found;
  if (!is_place(place) || !is_date(date) || !(std::abs(utc_offset_min) <= kMinutesPerDay) ||
      !std::isfinite(elevation_deg))
    return found;
  const auto above = [&](double local_min) {
    return sun_at(place, date, local_min - utc_offset_min).elevation_deg - elevation_deg;
  };
  found.up_at_midnight = above(0) > 0;

  // Between the sun's highest and lowest of the day it only climbs or only sinks: at most one crossing in each
  // piece.
  const double equation_min =
      ephemeris(days_since_2000(date, kMinutesPerDay / 2 - utc_offset_min)).equation_of_time_min;
  const double noon = kMinutesPerDay / 2 - kMinutesPerDegree * place.longitude_deg - equation_min + utc_offset_min;
  const double half_day = kMinutesPerDay / 2;
  double from = 0;
  for (double to = noon - half_day * std::floor(noon / half_day); from < kMinutesPerDay;
       from = to, to += half_day) {
    to = std::min(to, kMinutesPerDay);
    double low = from, high = to, low_deg = above(low), high_deg = above(high);
    const bool up_after = high_deg > 0;
    if ((low_deg > 0) == up_after) continue;
    // Regula falsi with the Illinois halving: a dozen steps where bisection takes forty.
    double at = low;
    for (int i = 0, kept = 0; i < 60 && high - low > kCrossingMin; ++i) {
      at = std::clamp((low * high_deg - high * low_deg) / (high_deg - low_deg), low, high);
      const double at_deg = above(at);
      if (std::abs(at_deg) < kCrossingDeg) break;
      if ((at_deg > 0) == up_after) {
        high = at;
        high_deg = at_deg;
        if (kept == 1) low_deg /= 2;
        kept = 1;
      } else {
        low = at;
        low_deg = at_deg;
        if (kept == -1) high_deg /= 2;
        kept = -1;
      }
    }
    std::optional<double>& slot = up_after ? found.rise_min : found.set_min;
    if (!slot) slot = at;
  }
  return found;
}

Light light_of(double sun_elevation_deg) {
  if (sun_elevation_deg > kSunriseElevationDeg) return Light::day;
  return sun_elevation_deg > kLayerElevationDeg ? Light::grey : Light::night;
}

}  // namespace gs::sky
