// Sky against published geodesics, solar examples, Julian days, hop geometry and locators.
#include <cmath>
#include <string>

#include "core/sky/geodesic.h"
#include "core/sky/hop.h"
#include "core/sky/locator.h"
#include "core/sky/sun.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/sky_tables.h"

using namespace gs::sky;
using gs::test::Closeness;
using gs::test::kNotGiven;

TEST_CASE("geodesic: published cases to the digits printed") {
  Closeness km("geodesics, distance", "km"), deg("geodesics, bearing", "degrees");
  for (const auto& row : gs::test::kGeodesics) {
    CAPTURE(row.distance_km);
    const Path path =
        shortest_path({row.latitude1_deg, row.longitude1_deg}, {row.latitude2_deg, row.longitude2_deg});
    CHECK(km.within(path.distance_km, row.distance_km, row.half_step_km));
    CHECK(deg.within(path.bearing_deg, row.bearing_deg, row.half_step_deg));
  }
}

TEST_CASE("geodesic: near the antipode, over the poles, along the equator, a few metres") {
  Closeness km("exact geodesics, distance", "km"), deg("exact geodesics, bearing", "degrees");
  for (const auto& row : gs::test::kExactGeodesics) {
    CAPTURE(row.distance_km);
    const Path path =
        shortest_path({row.latitude1_deg, row.longitude1_deg}, {row.latitude2_deg, row.longitude2_deg});
    CHECK(km.within(path.distance_km, row.distance_km, row.half_step_km));
    CHECK(deg.within(path.bearing_deg, row.bearing_deg, row.half_step_deg));
  }
}

// The Australian geodetic manual's test line from Flinders Peak to Buninyong: 54 972.271 m, 306 52 05.37 there, 127
// 10 25.07 back (memory; GRS80, whose flattening differs from WGS-84 by less than shows here).
TEST_CASE("geodesic: Flinders Peak to Buninyong") {
  const auto deg = [](double d, double m, double s) { return d + m / 60 + s / 3600; };
  const Path path =
      shortest_path({-deg(37, 57, 3.7203), deg(144, 25, 29.5244)}, {-deg(37, 39, 10.1561), deg(143, 55, 35.3839)});
  MESSAGE("distance " << path.distance_km * 1000 << " m, printed 54972.271");
  CHECK(std::abs(path.distance_km * 1000 - 54972.271) < 0.0015);
  CHECK(std::abs(path.bearing_deg - deg(306, 52, 5.37)) < 0.01 / 3600);
  CHECK(std::abs(path.arrival_bearing_deg - 180 - deg(127, 10, 25.07)) < 0.01 / 3600);
}

TEST_CASE("sun: worked examples") {
  Closeness deg("sun, position", "degrees"), equation("equation of time", "min");
  for (const auto& row : gs::test::kSuns) {
    const Sun sun = sun_at({row.latitude_deg, row.longitude_deg}, {row.year, row.month, row.day}, row.utc_min);
    constexpr double kLowAccuracy = 0.01;  // what the source says of its short series
    if (row.elevation_deg > kNotGiven) {
      CHECK(deg.within(sun.elevation_deg, row.elevation_deg, kLowAccuracy));
      CHECK(
          deg.within(sun.azimuth_deg, row.azimuth_deg, kLowAccuracy / std::cos(row.elevation_deg * gs::kPi / 180)));
    }
    CHECK(deg.within(sun.declination_deg, row.declination_deg, kLowAccuracy));
    if (row.equation_min > kNotGiven)
      CHECK(equation.within(sun.equation_of_time_min, row.equation_min, 4 * kLowAccuracy));
  }
}

TEST_CASE("sun: published rise and set") {
  Closeness minutes("sunrise and sunset", "min");
  for (const auto& row : gs::test::kRises) {
    const Crossings sun =
        sun_crossings({row.latitude_deg, row.longitude_deg}, {row.year, row.month, row.day}, row.utc_offset_min);
    REQUIRE(sun.rise_min.has_value());
    REQUIRE(sun.set_min.has_value());
    // 0.01 degree of the sun is 0.04 min at the equator, over cos(latitude) and the slant of its path: 0.06 here;
    // print to 1 s
    if (row.rise_min > kNotGiven) CHECK(minutes.within(*sun.rise_min, row.rise_min, 0.07));
    if (row.set_min > kNotGiven) CHECK(minutes.within(*sun.set_min, row.set_min, 0.07));
  }
}

TEST_CASE("calendar: published Julian days") {
  for (const auto& row : gs::test::kJulianDays)
    CHECK(day_number({row.year, row.month, row.day}) + 2451545 == row.julian_day_of_noon);
  std::printf("  Julian days: %d compared, all exact\n", int(std::size(gs::test::kJulianDays)));
}

TEST_CASE("hops: angles, rays and longest hops by P.533") {
  Closeness deg("take-off and incidence", "degrees"), km("rays and hops", "km");
  for (const auto& row : gs::test::kHops) {
    CHECK(deg.within(take_off_deg(row.hop_km, row.layer_km), row.take_off_deg, 0.0051));
    CHECK(km.within(ray_km(row.hop_km, row.layer_km), row.ray_km, 0.51));
    CHECK(deg.within(incidence_deg(row.take_off_deg, row.layer_km), row.incidence_deg, 0.051));
  }
  for (const auto& row : gs::test::kLongest)
    CHECK(km.within(hop_km(row.take_off_deg, row.layer_km), row.hop_km, 0.51));
}

TEST_CASE("locator: places there and back") {
  Closeness deg("middle of a cell", "degrees");
  for (const auto& row : gs::test::kLocators) {
    for (const int characters : {4, 6, 8})
      CHECK(locator_of({row.latitude_deg, row.longitude_deg}, characters) ==
            std::string(row.locator).substr(0, std::size_t(characters)));
  }
  for (const auto& row : gs::test::kCentres) {
    const ReadLocator read = read_locator(row.locator);
    REQUIRE(read.ok());
    CHECK(deg.within(read.centre.latitude_deg, row.latitude_deg, 5.1e-7));
    CHECK(deg.within(read.centre.longitude_deg, row.longitude_deg, 5.1e-7));
  }
}
