// Where place, date and clock meet: sun and way of an outing, held against published figures.
#include <doctest/doctest.h>

#include <cmath>

#include "core/sky/locator.h"
#include "tests/core/outing/outings.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/sky_tables.h"

using namespace gs;
using test::Closeness;

namespace {

std::string locator(double latitude_deg, double longitude_deg) {
  return sky::locator_of({latitude_deg, longitude_deg}, 8);
}

/// On site from eight to ten and none of it work: the time on the air begins at eight, packing at ten.
Outing two_hours(const std::string& here, const char* date, double utc_offset_min) {
  Outing outing = test::outing_of({{L::clock_arrive_min, 480.0},
                                   {L::clock_leave_by_min, 600.0},
                                   {L::clock_set_up_min, 0.0},
                                   {L::clock_pack_down_min, 0.0},
                                   {L::clock_utc_offset_min, utc_offset_min}});
  outing = with(std::move(outing), L::site_locator, here);
  outing.date = date;
  return outing;
}

}  // namespace

TEST_CASE("joins, sky: published rise and set reach the outing through its locator, date and offset") {
  Closeness minutes("sunrise and sunset of an outing", "min");
  for (const auto& row : test::kRises) {
    const sky::Date date{row.year, row.month, row.day};
    const Outing outing =
        two_hours(locator(row.latitude_deg, row.longitude_deg), sky::date_text(date).c_str(), row.utc_offset_min);
    const Outlook out = evaluate(resolve(outing));
    // the cell is half a minute of arc wide: its middle stands at most a second of the clock away, on top of 0.07
    if (row.rise_min > test::kNotGiven) CHECK(minutes.within(out[R::sky_sunrise_min].value, row.rise_min, 0.09));
    if (row.set_min > test::kNotGiven) CHECK(minutes.within(out[R::sky_sunset_min].value, row.set_min, 0.09));
  }
}

TEST_CASE("joins, sky: published geodesics reach the outing through its two locators") {
  Closeness way("distance between two locators", "km");
  for (const auto& row : test::kGeodesics) {
    Outing outing;
    outing = with(std::move(outing), L::site_locator, locator(row.latitude1_deg, row.longitude1_deg));
    outing = with(std::move(outing), L::sky_toward_locator, locator(row.latitude2_deg, row.longitude2_deg));
    const Outlook out = evaluate(resolve(outing));
    // two cells of at most 0.93 by 0.46 km: their middles stand off by half a diagonal each
    CHECK(way.within(out[R::sky_distance_km].value, row.distance_km, 1.04));
    CHECK(out[R::sky_bearing_deg].state == State::none);
  }
}

TEST_CASE("joins, sky: the sun's height follows the clock, and what is missing is named") {
  const std::string here = locator(39.742476, -105.1786);
  const Outing outing = two_hours(here, "2003-10-17", -420);
  const Outlook out = evaluate(resolve(outing));
  // up since 6:13, not yet at noon: higher at ten than at eight
  CHECK(out[R::sky_sun_at_start_deg].value > 0);
  CHECK(out[R::sky_sun_at_pack_by_deg].value > out[R::sky_sun_at_start_deg].value);
  // set-up of an hour makes the start later and the sun higher
  const Outlook later = evaluate(resolve(with(outing, L::clock_set_up_min, 60.0)));
  CHECK(later[R::sky_sun_at_start_deg].value > out[R::sky_sun_at_start_deg].value);
  // noon of the worked example: 12:30:30 there, height 39.872 degrees
  Outing noon = with(with(outing, L::clock_arrive_min, 750.5), L::clock_leave_by_min, 900.0);
  const double height_deg = evaluate(resolve(noon))[R::sky_sun_at_start_deg].value;
  MESSAGE("sun at the worked example's noon: ", height_deg, " degrees, published 39.872046");
  CHECK(std::abs(height_deg - 39.872046) < 0.015);

  Outing undated = outing;
  undated.date.clear();
  const Plan no_date = resolve(undated);
  CHECK(reason(no_date, R::sky_sunrise_min, evaluate(no_date)[R::sky_sunrise_min]) == "needs the outing's date");
  const Plan nowhere = resolve(with(outing, L::site_locator, Value{}));
  CHECK(reason(nowhere, R::sky_sunrise_min, evaluate(nowhere)[R::sky_sunrise_min]) == "needs locator");
  const Plan aimless = resolve(outing);
  CHECK(evaluate(aimless)[R::sky_distance_km].culprit == L::sky_toward_locator);
  // midsummer inside the polar circle: the sun never comes to the horizon
  const Plan north = resolve(two_hours(locator(78, 16), "2026-06-21", 120));
  const Figure rise = evaluate(north)[R::sky_sunrise_min];
  CHECK(rise.state == State::unknown);
  CHECK(reason(north, R::sky_sunrise_min, rise) == "the sun does not come to the horizon on this date");
  CHECK(evaluate(north)[R::sky_sun_at_start_deg].value > 0);
}
