// Power lines, thunder, touch, cautions: against published rules and figures.
#include <doctest/doctest.h>

#include <cmath>
#include <set>
#include <string>
#include <vector>

#include "core/safety/caution.h"
#include "core/safety/overhead.h"

using namespace gs;
using namespace gs::safety;

namespace {
constexpr double kFootM = 0.3048;
}

// US question pool T0B06 with its worked example: a 20 ft mast and 10 ft stay 30 ft off. 29 CFR 1926.1408 Table A
// in feet.
TEST_CASE("power lines: mast, height twice over, and a loose line") {
  const double feet[] = {10, 15, 20, 25, 35, 45};
  REQUIRE(line_clearances().size() == std::size(feet));
  for (std::size_t i = 0; i < std::size(feet); ++i)
    CHECK(std::abs(line_clearances()[i].clearance_m - feet[i] * kFootM) < 1e-12);
  const StayOff mast = stay_off_power_lines(20 * kFootM, 0, 10 * kFootM);
  CHECK(std::abs(mast.falls_clear_m - 30 * kFootM) < 1e-12);
  CHECK(std::abs(mast.stay_off_m - 40 * kFootM) < 1e-12);  // a maker's sheet: twice the height
  CHECK(mast.throw_clear_m == 0);
  const StayOff seven = stay_off_power_lines(7, 0, 10 * kFootM);
  CHECK(std::abs(seven.falls_clear_m - 10.05) < 0.005);
  CHECK(seven.times_height_m == 14);
  CHECK(stay_off_power_lines(2, 30, 3.048).stay_off_m == 33.048);
  CHECK(stay_off_power_lines(0, 0, 3.048).stay_off_m == 3.048);
  CHECK(std::isnan(stay_off_power_lines(-1, 0, 3).stay_off_m));
  CHECK(std::isnan(stay_off_power_lines(5, 0, 0).falls_clear_m));
}

// US National Weather Service, as reprinted: 10 miles, 30 minutes. A mile takes sound "about five seconds": 4.7 s
// at 343 m/s.
TEST_CASE("thunder: a mile in five seconds, and its reach") {
  MESSAGE("5 s are " << thunder_distance_km(5) / 1.609344 << " miles");
  CHECK(std::abs(thunder_distance_km(5) / 1.609344 - 1) < 0.07);
  CHECK(thunder_distance_km(47) / kThunderReachKm == doctest::Approx(1).epsilon(0.005));
  CHECK(thunder_distance_km(0) == 0);
  CHECK(std::isnan(thunder_distance_km(-1)));
  CHECK(kAfterThunderMin * 60 == 1800);
}

// An engineering article on end-fed wires: 100 W at 2450 ohm are 495 V rms, 700 V peak.
TEST_CASE("touch: voltage at the end of a wire") {
  CHECK(std::abs(touch_voltage_v(100, 2450) - 495) < 0.5);
  CHECK(std::abs(touch_voltage_v(100, 2450) * std::sqrt(2.0) - 700) < 0.5);
  CHECK(std::isnan(touch_voltage_v(10, 0)));
  CHECK(std::isnan(touch_voltage_v(-1, 50)));
}

TEST_CASE("cautions: safety is not known until lines, fuse and coax were looked at") {
  std::vector<std::string_view> looked;
  CHECK(left_to_look_at(looked) == 3);
  looked = {"power_lines", "fuse", "lightning", "power_lines"};
  CHECK(left_to_look_at(looked) == 1);
  looked.push_back("coax");
  CHECK(left_to_look_at(looked) == 0);
  std::set<std::string> keys;
  for (const Caution& row : cautions()) {
    CAPTURE(std::string(row.key));
    CHECK(keys.insert(std::string(row.key)).second);
    CHECK(row.words.size() > 30);
    CHECK(row.words.size() < 240);
    CHECK(row.words.back() == '.');
    CHECK(!row.source.empty());
  }
  for (const char* key :
       {"power_lines", "lightning", "mast_fall", "lithium", "fuse", "rf_touch", "coax", "tripping"})
    CHECK(find_caution(key) != nullptr);
  CHECK(find_caution("lightning")->kind == Caution::Kind::know);  // thunder never holds: no state
  CHECK(find_caution("dragons") == nullptr);
}
