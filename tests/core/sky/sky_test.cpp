// Properties of places, paths, sun and hops over seeded random input, and what impossible input gets.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <random>
#include <string>

#include "core/sky/geodesic.h"
#include "core/sky/hop.h"
#include "core/sky/locator.h"
#include "core/sky/sun.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs::sky;
using gs::test::Closeness;

namespace {

constexpr unsigned kSeed = 20260613;

struct Draw {
  std::mt19937_64 engine;
  explicit Draw(unsigned seed) : engine(seed) { std::printf("  seed %u\n", seed); }
  double between(double low, double high) { return low + (high - low) * (double(engine() >> 11) * 0x1p-53); }
  Place place() { return {std::asin(between(-1, 1)) * 180 / gs::kPi, between(-180, 180)}; }
  Date date() { return date_of(int(between(day_number({1900, 1, 1}), day_number({2100, 12, 31}) + 1))); }
};

double turn(double a, double b) { return std::remainder(a - b, 360.0); }

}  // namespace

TEST_CASE("locator property: a place lies in its cell, and every locator comes back") {
  Draw draw(kSeed);
  for (int i = 0; i < 5000; ++i) {
    const Place place = draw.place();
    for (const int characters : {4, 6, 8}) {
      const std::string text = locator_of(place, characters);
      const ReadLocator cell = read_locator(text);
      REQUIRE(cell.ok());
      CHECK(std::abs(cell.centre.latitude_deg - place.latitude_deg) <= cell.height_deg / 2 + 1e-10);
      CHECK(std::abs(cell.centre.longitude_deg - place.longitude_deg) <= cell.width_deg / 2 + 1e-10);
      CHECK(locator_of(cell.centre, characters) == text);
      CHECK(locator_from_number(locator_number(text)) == text);
    }
  }
}

TEST_CASE("locator: lines, edges, case") {
  // 11 36 30 east is a line between two cells: the point belongs to the eastern one
  CHECK(locator_of({48.14666, 11 + 36.5 / 60}, 8) == "JN58td35");
  CHECK(locator_of({90, 180}, 6) == "AR09ax");
  CHECK(locator_of({0, 360}, 4) == "JJ00");
  CHECK(locator_of({0, 190}, 4) == locator_of({0, -170}, 4));
  CHECK(read_locator(" jn58TD\n").ok());
  CHECK(locator_from_number(locator_number("jn58TD")) == "JN58td");
  CHECK(locator_from_number(locator_number("JN58")) != locator_from_number(locator_number("JN58aa")));
}

TEST_CASE("locator: refusals say what is wrong") {
  const auto said = [](const char* text) { return read_locator(text).trouble; };
  CHECK(said("") == "A locator is 4, 6 or 8 characters, such as JN58 or JN58td.");
  CHECK(said("JN5") == "A locator has 4, 6 or 8 characters, this one has 3.");
  CHECK(said("JN58td123") == "A locator has 4, 6 or 8 characters, this one has 9.");
  CHECK(said("SN58") == "Character 1 of a locator is a letter A to R.");
  CHECK(said("58JN") == "Character 1 of a locator is a letter A to R.");
  CHECK(said("JNX8") == "Character 3 of a locator is a digit.");
  CHECK(said("JN58tz") == "Character 6 of a locator is a letter a to x.");
  CHECK_FALSE(read_locator("J\xc3\x96"
                           "58")
                  .ok());
  CHECK(std::isnan(locator_number("JN5")));
  for (const double number : {-1.0, 0.5, 1e300, std::nan(""), 0.0, 4e10}) CHECK(locator_from_number(number) == "");
  CHECK(locator_of({91, 0}, 6) == "");
  CHECK(locator_of({std::nan(""), 0}, 6) == "");
  CHECK(locator_of({0, 0}, 5) == "");
}

TEST_CASE("geodesic property: both ways alike, arriving where one aimed, never shorter than the chord") {
  Draw draw(kSeed + 1);
  Closeness km("there and back, distance", "km"), deg("there and back, bearing times sin of the way", "degrees");
  Closeness arrive("destination", "km");
  for (int i = 0; i < 4000; ++i) {
    const Place a = draw.place();
    Place b = draw.place();
    if (i % 4 == 1)
      b = {-a.latitude_deg + draw.between(-0.7, 0.7), a.longitude_deg + 180 + draw.between(-0.7, 0.7)};
    if (i % 4 == 2) b = {a.latitude_deg + draw.between(-1e-3, 1e-3), a.longitude_deg + draw.between(-1e-3, 1e-3)};
    b.latitude_deg = std::clamp(b.latitude_deg, -90.0, 90.0);
    b.longitude_deg = std::remainder(b.longitude_deg, 360.0);
    const Path there = shortest_path(a, b), back = shortest_path(b, a);
    CHECK(km.within(there.distance_km, back.distance_km, 2e-9));
    const double lever = std::abs(std::sin(there.distance_km / 6371));
    CHECK(deg.within(lever * turn(there.bearing_deg, back.arrival_bearing_deg + 180), 0, 1e-10));
    CHECK(there.bearing_deg >= 0);
    CHECK(there.bearing_deg < 360);
    CHECK(there.distance_km <= 20003.9315);
    const Place end = destination(a, there.bearing_deg, there.distance_km);
    CHECK(arrive.within(shortest_path(end, b).distance_km, 0, 1e-8));
    // a sphere is off by 0.56 % at most
    const double phi1 = a.latitude_deg * gs::kPi / 180, phi2 = b.latitude_deg * gs::kPi / 180;
    const double dl = (b.longitude_deg - a.longitude_deg) * gs::kPi / 180;
    const double h =
        std::pow(std::sin((phi2 - phi1) / 2), 2) + std::cos(phi1) * std::cos(phi2) * std::pow(std::sin(dl / 2), 2);
    const double sphere_km = 2 * 6371.0088 * std::asin(std::sqrt(std::min(1.0, h)));
    CHECK(std::abs(there.distance_km - sphere_km) <= 0.0057 * sphere_km + 1e-6);
  }
}

TEST_CASE("geodesic: degenerate and impossible") {
  for (const Place p : {Place{0, 0}, Place{90, 0}, Place{-90, 33}, Place{45, 180}, Place{12.3, -45.6}}) {
    const Path none = shortest_path(p, p);
    CHECK(none.distance_km == 0);
    CHECK(none.bearing_deg == 0);
  }
  CHECK(shortest_path({90, 0}, {90, 77}).distance_km < 1e-9);
  CHECK(shortest_path({10, 180}, {10, -180}).distance_km < 1e-9);
  CHECK(shortest_path({0, 0}, {0, 0.5}).bearing_deg == 90);
  CHECK(shortest_path({0, 0}, {0, -0.5}).bearing_deg == 270);
  for (const Place bad : {Place{91, 0}, Place{0, 400}, Place{std::nan(""), 0}, Place{0, INFINITY}}) {
    CHECK(std::isnan(shortest_path(bad, {0, 0}).distance_km));
    CHECK(std::isnan(shortest_path({0, 0}, bad).bearing_deg));
    CHECK(std::isnan(destination(bad, 0, 1).latitude_deg));
  }
  CHECK(std::isnan(destination({0, 0}, 0, -1).latitude_deg));
  CHECK(std::isnan(destination({0, 0}, std::nan(""), 1).latitude_deg));
  const Path round = long_path({40, -100}, {50, 10});
  CHECK(std::abs(round.distance_km + shortest_path({40, -100}, {50, 10}).distance_km - 40030.2) < 0.1);
}

TEST_CASE("calendar property: days count on, and dates come back") {
  Date before = date_of(day_number({1900, 1, 1}) - 1);
  for (int day = day_number({1900, 1, 1}); day <= day_number({2100, 12, 31}); ++day) {
    const Date date = date_of(day);
    REQUIRE(is_date(date));
    REQUIRE(day_number(date) == day);
    const bool next_day = date.day == before.day + 1 && date.month == before.month;
    REQUIRE((next_day || date.day == 1));
    if (day % 97 == 0) REQUIRE(read_date(date_text(date)) == date);
    before = date;
  }
  CHECK(day_number({2100, 12, 31}) - day_number({1900, 1, 1}) + 1 ==
        201 * 365 + 49);  // 1900 and 2100 are no leap years
  for (const char* text : {"", "2026-6-13", "2026-02-29", "2100-02-29", "2026-13-01", "2026-00-01", "1899-12-31",
                           "2026/06/13", "2026-06-1x"})
    CHECK_FALSE(read_date(text).has_value());
}

TEST_CASE("calendar: days of the week that stand in the history books") {
  // from memory: Sputnik rose on a Friday, people first walked on the moon (UTC) on a Monday, the leap day of 2000
  CHECK(day_words({1957, 10, 4}) == "Fri 4 Oct");
  CHECK(day_words({1969, 7, 21}) == "Mon 21 Jul");
  CHECK(day_words({2000, 2, 29}) == "Tue 29 Feb");
  CHECK(day_words({2026, 11, 25}) == "Wed 25 Nov");
}

TEST_CASE("sun property: rise and set are where the sun crosses, and light lasts as long as the sun is up") {
  Draw draw(kSeed + 2);
  Closeness deg("elevation at rise and set", "degrees");
  int polar = 0;
  for (int i = 0; i < 1500; ++i) {
    const Place place = draw.place();
    const Date date = draw.date();
    const double offset = 15 * std::round(draw.between(-48, 56)),
                 level = i % 2 ? kSunriseElevationDeg : kLayerElevationDeg;
    const auto above = [&](double local) { return sun_at(place, date, local - offset).elevation_deg - level; };
    const Crossings sun = sun_crossings(place, date, offset, level);
    for (const auto& at : {sun.rise_min, sun.set_min}) {
      if (!at) continue;
      CHECK(*at >= 0);
      CHECK(*at <= 1440);
      CHECK(deg.within(above(*at), 0, 1e-6));
    }
    if (sun.rise_min) CHECK(above(*sun.rise_min + 0.01) > above(*sun.rise_min - 0.01));
    if (sun.set_min) CHECK(above(*sun.set_min + 0.01) < above(*sun.set_min - 0.01));
    if (!sun.rise_min && !sun.set_min) {
      ++polar;
      for (int k = 0; k < 288; ++k) {  // grazing the level within rounding of the sampling is nobody's sunrise
        const double height = above(k * 5);
        CHECK((sun.up_at_midnight ? height > -1e-4 : height < 1e-4));
      }
    }
  }
  std::printf("  %d of 1500 without rise and set\n", polar);
}

TEST_CASE("sun: seasons, poles, impossible input") {
  CHECK(sun_at({23.44, 0}, {2026, 6, 21}, 720).elevation_deg > 89);
  CHECK(sun_crossings({80, 0}, {2026, 6, 21}, 0).up_at_midnight);
  CHECK_FALSE(sun_crossings({80, 0}, {2026, 6, 21}, 0).set_min.has_value());
  CHECK_FALSE(sun_crossings({80, 0}, {2026, 12, 21}, 0).up_at_midnight);
  CHECK(std::isfinite(sun_at({90, 0}, {2026, 6, 21}, 0).azimuth_deg));
  CHECK(light_of(10) == Light::day);
  CHECK(light_of(-5) == Light::grey);
  CHECK(light_of(-20) == Light::night);
  CHECK(std::abs(std::acos(6371.0 / 6471.0) * 180 / gs::kPi + kLayerElevationDeg) < 0.005);
  for (const Sun& sun : {sun_at({99, 0}, {2026, 6, 21}, 0), sun_at({0, 0}, {2026, 2, 30}, 0),
                         sun_at({0, 0}, {2026, 6, 21}, INFINITY)})
    CHECK(std::isnan(sun.elevation_deg));
  CHECK_FALSE(sun_crossings({0, 0}, {1800, 1, 1}, 0).rise_min.has_value());
  CHECK_FALSE(sun_crossings({0, 0}, {2026, 1, 1}, 5000).rise_min.has_value());
}

TEST_CASE("hop property: angle and length are each other's inverse; higher layers reach further") {
  Draw draw(kSeed + 3);
  Closeness back("hop there and back, relative", ""), ray("ray by the law of cosines", "km");
  for (int i = 0; i < 3000; ++i) {
    const double layer = draw.between(60, 600), elevation = draw.between(0, 89.9);
    const double hop = hop_km(elevation, layer);
    CHECK(back.within(take_off_deg(hop, layer) - elevation, 0, 1e-9));
    CHECK(hop_km(elevation, layer + 10) > hop);
    CHECK(take_off_deg(hop, layer + 10) > elevation);
    const double r = kEarthRadiusKm, t = hop / 2 / r;
    CHECK(ray.within(ray_km(hop, layer),
                     2 * std::sqrt(r * r + (r + layer) * (r + layer) - 2 * r * (r + layer) * std::cos(t)), 1e-6));
    const double distance = draw.between(1, 20000), least = draw.between(0, 30);
    const int hops = hops_needed(distance, layer, least);
    REQUIRE(hops >= 1);
    CHECK(take_off_deg(distance / hops, layer) >= least - 1e-9);
    if (hops > 1) CHECK(take_off_deg(distance / (hops - 1), layer) < least + 1e-9);
  }
}

TEST_CASE("hop: skip, lobes, edges") {
  CHECK(hop_km(90, 300) < 1e-9);
  CHECK(skip_km(5, 5.7, 300) == 0);
  CHECK(skip_km(5.7, 5.7, 300) == 0);
  CHECK(std::isinf(skip_km(40, 5.7, 300)));
  CHECK(skip_km(7, 5.7, 300) > skip_km(6.5, 5.7, 300));
  CHECK(take_off_deg(5000, 300) < 0);
  CHECK(hops_needed(1000, 300, 90) == 0);
  CHECK(hops_needed(-1, 300, 3) == 0);
  CHECK(lowest_lobe_deg(14.2, 1) == 90);
  CHECK(mirror_km_from_m3000(1.6) == 500);
  for (const double bad : {0.0, -1.0, double(INFINITY), std::nan("")}) {
    CHECK(std::isnan(take_off_deg(bad, 300)));
    CHECK(std::isnan(take_off_deg(500, bad)));
    CHECK(std::isnan(hop_km(10, bad)));
    CHECK(std::isnan(ray_km(500, bad)));
    CHECK(std::isnan(skip_km(bad, 5, 300)));
    CHECK(std::isnan(wavelength_m(bad)));
    CHECK(std::isnan(lowest_lobe_deg(7, bad)));
    CHECK(std::isnan(mirror_km_from_m3000(bad)));
    CHECK(std::isnan(incidence_deg(10, bad)));
  }
  CHECK(std::isnan(hop_km(91, 300)));
}
