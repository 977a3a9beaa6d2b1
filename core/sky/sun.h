// Where the sun stands, when it rises and sets, and whether it is day, grey or night up where the waves turn.
#pragma once

#include <optional>

#include "core/sky/calendar.h"
#include "core/sky/place.h"

namespace gs::sky {

/// Seen from the ground, without refraction. Azimuth from true north through east.
struct Sun {
  double elevation_deg, azimuth_deg, declination_deg, equation_of_time_min;
};

/// The sun at a place and moment; utc_min counts from 00:00 UTC of `date` and may lie outside 0..1440. All NaN for
/// no place, no date (1900 to 2100) or a time that is not finite. Accuracy: 0.01 degree in position, against worked
/// examples. Source: Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 25 (low accuracy) and eq. 28.3; the same
/// series stand in NOAA's solar calculator. Constants from memory, checked against worked examples. Delta T is left
/// out: 0.001 degree.
Sun sun_at(Place place, Date date, double utc_min);

/// Elevations of the sun's centre at which light comes and goes.
inline constexpr double kSunriseElevationDeg = -0.833;  // 34' of refraction and 16' of radius: Astronomical Almanac
// At 100 km, where D and E layers lie, the sun sets when it stands this far under the ground's horizon:
// acos(6371/6471).
inline constexpr double kLayerElevationDeg = -10.09;

/// Crossings of one elevation within a local date, in minutes from local midnight (0 to 1440). Nothing where there
/// is none; then `up_at_midnight` holds all day. When there are two of a kind in one date, the first.
struct Crossings {
  std::optional<double> rise_min, set_min;
  bool up_at_midnight = false;
};

/// When the sun passes `elevation_deg` on `date` by a clock that stands utc_offset_min before UTC (UTC-4: -240;
/// within -1440 to 1440). Nothing and false for impossible input. Accuracy: 1 minute up to 60 degrees of latitude
/// for an unobstructed horizon at sea level; the weather bends more than this formula errs. Crossings that last
/// under 0.1 s may be missed.
Crossings sun_crossings(Place place, Date date, double utc_offset_min, double elevation_deg = kSunriseElevationDeg);

/// day: sun up at the ground. grey: set there, still shining at 100 km. night: dark up there too.
enum class Light : unsigned char { day, grey, night };
Light light_of(double sun_elevation_deg);

}  // namespace gs::sky
