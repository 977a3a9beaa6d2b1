// What the sky comes to: sun, distance, bearing.
#include "core/outing/levers.h"
#include "core/outing/reading_rows.h"

namespace gs {
namespace {

constexpr L kSunRests[] = {L::site_locator, L::clock_utc_offset_min};
constexpr L kSunHeightRests[] = {L::site_locator,       L::clock_utc_offset_min, L::clock_arrive_min,
                                 L::clock_leave_by_min, L::clock_set_up_min,     L::clock_pack_down_min};
constexpr L kWayRests[] = {L::site_locator, L::sky_toward_locator};
constexpr std::string_view kSunSource = "Meeus, Astronomical Algorithms, 2nd ed., ch. 25; docs/methods/sky";
constexpr std::string_view kSunAssumes =
    "the middle of the locator's cell; a free horizon, refraction of 34' at rise and set";

constexpr ReadingRow kRows[] = {
    {R::sky_sunrise_min,
     {.key = "sky.sunrise_min",
      .name = "Sunrise",
      .link = Link::sky,
      .unit = Unit::clock_minute,
      .source = kSunSource,
      .assumes = kSunAssumes,
      .formula =
          "when the sun's centre stands 0.833\u00B0 under the horizon on the outing's date, by the local clock",
      .rests_on = kSunRests}},
    {R::sky_sunset_min,
     {.key = "sky.sunset_min",
      .name = "Sunset",
      .link = Link::sky,
      .unit = Unit::clock_minute,
      .source = kSunSource,
      .assumes = kSunAssumes,
      .formula =
          "when the sun's centre stands 0.833\u00B0 under the horizon on the outing's date, by the local clock",
      .rests_on = kSunRests}},
    {R::sky_sun_at_start_deg,
     {.key = "sky.sun_at_start_deg",
      .name = "Sun at the start",
      .link = Link::sky,
      .unit = Unit::degree,
      .source = kSunSource,
      .assumes = "the middle of the locator's cell; no refraction; minus is under the horizon",
      .formula = "height of the sun over the horizon when the time on the air begins",
      .rests_on = kSunHeightRests}},
    {R::sky_sun_at_pack_by_deg,
     {.key = "sky.sun_at_pack_by_deg",
      .name = "Sun at packing",
      .link = Link::sky,
      .unit = Unit::degree,
      .source = kSunSource,
      .assumes = "the middle of the locator's cell; no refraction; minus is under the horizon",
      .formula = "height of the sun over the horizon when one starts packing",
      .rests_on = kSunHeightRests}},
    {R::sky_distance_km,
     {.key = "sky.distance_km",
      .name = "Distance",
      .link = Link::sky,
      .unit = Unit::kilometre,
      .source = "Karney, Algorithms for geodesics, 2013; docs/methods/sky",
      .assumes = "the middles of the two locators' cells",
      .formula = "shortest way over the WGS-84 ellipsoid",
      .rests_on = kWayRests}},
    {R::sky_bearing_deg,
     {.key = "sky.bearing_deg",
      .name = "Bearing",
      .link = Link::sky,
      .unit = Unit::degree,
      .source = "Karney, Algorithms for geodesics, 2013; docs/methods/sky",
      .assumes = "the middles of the two locators' cells; true north, not the compass's",
      .formula = "direction in which the shortest way begins, from north through east",
      .rests_on = kWayRests}},
};

}  // namespace

std::span<const ReadingRow> sky_readings() { return kRows; }

}  // namespace gs
