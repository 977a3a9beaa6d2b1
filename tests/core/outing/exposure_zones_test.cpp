// The keep-out on the ground, by hand.
#include "core/outing/exposure_zones.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/core/outing/outings.h"

using namespace gs;

TEST_CASE("zones: a dipole overhead leaves the ground free, the ends of a V are roped off, a whip all round") {
  // a dipole 8 m up: 8 - 2.5 - 1.5 = 4 m free overhead
  const std::vector<WirePart> dipole = wire_parts(resolve(test::whole_outing()));
  REQUIRE(dipole.size() == 1);
  CHECK(dipole[0].from_high_m == 8);
  CHECK(reach_zones(dipole, 1.5).empty());
  CHECK(free_overhead_m(dipole, 1.5) == doctest::Approx(4).epsilon(1e-12));
  // 6 m keep-out: the hand at 2.5 m stands 5.5 m below; root of 36 - 30.25
  const std::vector<GroundZone> wide = reach_zones(dipole, 6);
  REQUIRE(wide.size() == 1);
  CHECK(wide[0].radius_m == doctest::Approx(std::sqrt(5.75)).epsilon(1e-12));
  CHECK(free_overhead_m(dipole, 6) == 0);

  // an inverted V, apex 8 m, legs of about 10 m: their ends come down to 2.5 m
  const Plan plan = resolve(
      test::also(test::whole_outing(),
                 {{L::antenna_kind, "inverted_v"}, {L::antenna_frequency_mhz, 7.1}, {L::antenna_apex_m, 8.0}}));
  const std::vector<WirePart> vee = wire_parts(plan);
  REQUIRE(vee.size() == 2);
  CHECK(vee[0].from_m == -vee[1].from_m);
  CHECK(vee[0].from_high_m == 2.5);
  const std::vector<GroundZone> ends = reach_zones(vee, 1.5);
  REQUIRE(ends.size() == 2);
  // ends at the hand's height: the whole 1.5 m; inwards until the wire is 4 m up: 1.5 of 5.5 m of rise
  CHECK(ends[0].radius_m == 1.5);
  CHECK(ends[0].from_m == vee[0].from_m);
  CHECK(ends[0].to_m == doctest::Approx(vee[0].from_m * (1 - 1.5 / 5.5)).epsilon(1e-12));

  // on 28.08 MHz its legs of 2.5 m stay far above everybody: 45 degrees at the steepest, so 8 - 2.5 / root 2 up
  const std::vector<WirePart> small = wire_parts(resolve(
      test::also(test::whole_outing(),
                 {{L::antenna_kind, "inverted_v"}, {L::antenna_frequency_mhz, 28.08}, {L::antenna_apex_m, 8.0}})));
  REQUIRE(small.size() == 2);
  for (const WirePart& leg : small) {
    const double leg_m = std::hypot(leg.to_m - leg.from_m, leg.to_high_m - leg.from_high_m);
    CHECK(leg_m == doctest::Approx(2.54).epsilon(0.01));
    CHECK(leg.from_high_m == doctest::Approx(8 - leg_m / std::sqrt(2.0)).epsilon(1e-9));
  }
  CHECK(reach_zones(small, 1.5).empty());

  const std::vector<WirePart> whip =
      wire_parts(test::plan_of({{L::antenna_kind, "loaded_whip"}, {L::antenna_frequency_mhz, 14.2}}));
  REQUIRE(reach_zones(whip, 2).size() == 1);
  CHECK(reach_zones(whip, 2)[0].radius_m == 2);
  CHECK(wire_parts(Plan(resolve(Outing{}))).empty());
}

TEST_CASE("zones: a longer distance never frees ground") {
  std::mt19937_64 bits(20261125);
  int compared = 0;
  for (int trial = 0; trial < 3000; ++trial) {
    Outing outing;
    outing.set = test::random_values(bits);
    const std::vector<WirePart> parts = wire_parts(resolve(outing));
    const double near_m = 0.2 + 10 * test::unit_of(bits), far_m = near_m + 5 * test::unit_of(bits);
    const auto near = reach_zones(parts, near_m), far = reach_zones(parts, far_m);
    REQUIRE(far.size() >= near.size());
    CHECK(free_overhead_m(parts, far_m) <= free_overhead_m(parts, near_m));
    for (const GroundZone& zone : near) {
      CHECK(std::isfinite(zone.from_m + zone.to_m));
      CHECK(zone.radius_m > 0);
      CHECK(zone.radius_m <= near_m);
      ++compared;
    }
  }
  MESSAGE(compared << " zones");
  CHECK(compared > 300);
}
