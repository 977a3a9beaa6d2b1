// What a roll loses: temperature, measured losses, the floor that copper sets.
#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "core/feedline/loss_fit.h"
#include "core/feedline/roll.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::feedline;
using gs::test::Closeness;

// A cable-television operator's technical tip (seen): 5.5 dB/100 ft at 750 MHz and 68 F, so 200 ft lose 11.0 dB,
// and 11.4 dB at 100 F; its rule is 1 % for each 10 F.
TEST_CASE("feed line: a warm cable loses more") {
  Closeness off("200 ft at 100 F", "dB");
  const double at_100f_c = (100 - 32) / 1.8;
  CHECK(off.within(at_temperature({11.0, 0}, at_100f_c).total_db_per_100m(), 11.4, 0.05));
  CHECK(off.within(at_temperature({11.0, 0}, at_100f_c).total_db_per_100m(), 11.0 * (1 + 0.0011 * 32), 0.02));
  // half of the coefficient of copper for each degree: 0.197 % per C (worked out apart); 6 % in the sun at 50 C
  CHECK(at_temperature({1, 0}, 21).total_db_per_100m() == doctest::Approx(1.00197).epsilon(5e-6));
  CHECK(at_temperature({1, 0}, 50).total_db_per_100m() == doctest::Approx(1.06).epsilon(4e-3));
  CHECK(at_temperature({1, 0.5}, 20).total_db_per_100m() == 1.5);
  CHECK(at_temperature({0, 0.5}, 80).total_db_per_100m() == 0.5);  // the dielectric's share stays
  CHECK(at_temperature({1, 0}, -300).total_db_per_100m() == 0);
}

// SSI Cable, general design criteria: attenuation (seen): 0.435 sqrt(f) / (Z0 d) dB/100 ft with d in inches, for
// the inner and the outer conductor; the exact constant of smooth copper is 0.433. Solid RG-58 by it, worked out
// apart: 1.08 dB/100 ft at 10 MHz, 3.49 at 100 MHz dielectric loss included (published 1.1 to 1.2, and 3.8).
TEST_CASE("feed line: no coaxial cable loses less than its copper") {
  Closeness off("copper's floor of solid RG-58, dB/100 ft", "dB");
  const double per_100ft = kMetresPerFoot;
  const double inner_mm = 0.032 * 25.4, outer_mm = 0.116 * 25.4;
  CHECK(off.within(copper_floor_db_per_100m(51.5, inner_mm, outer_mm, 10) * per_100ft, 1.06, 0.005));
  CHECK(copper_floor_db_per_100m(1, 25.4, 1e12, 1) * per_100ft == doctest::Approx(0.433).epsilon(1e-3));
  const Cable& rg58 = *find_cable("rg58");
  CHECK(copper_floor_db_per_100m(51.5, inner_mm, outer_mm, 10) < attenuation_db_per_100m(rg58, 10));
  CHECK(copper_floor_db_per_100m(51.5, inner_mm, outer_mm, 50) < attenuation_db_per_100m(rg58, 50));
}

// The sheet's own points (RG-58C, Belden 8262, 10 MHz corroborated) taken for measurements: what the law then says
// of the other points. A cable is not a formula: 4 % is what the sheet's digits and a braid allow.
TEST_CASE("feed line: one or two measured losses make a law") {
  Closeness one_off("RG-213 from one point, another make's points, relative", ""),
      two_off("RG-58C from two points, the others, relative", "");
  // RG-213 as an array calibration code lists it (second hand): 1.8, 2.7, 4.4, 6.4 dB/100 m at 10, 20, 50, 100 MHz
  const Cable& rg213 = *find_cable("rg213");
  for (const auto& [f, db] : {std::pair{10.0, 1.8}, {20.0, 2.7}, {50.0, 4.4}, {100.0, 6.4}})
    CHECK(one_off.within(measured_loss(rg213, {20, 2.7}, f).total_db_per_100m() / db, 1, 0.09));
  // RG-58C as a repeater guide lists it (seen): 10.8 and 20.0 at 50 and 150 MHz; the same from Belden at 10 MHz
  const Cable& rg58c = *find_cable("rg58c");
  for (const auto& [f, db] : {std::pair{10.0, 4.593}, {50.0, 10.8}, {150.0, 20.0}})
    CHECK(two_off.within(measured_loss(rg58c, {10, 4.593}, {150, 20.0}, f).total_db_per_100m() / db, 1, 0.04));
  CHECK(measured_loss(rg213, {14, 5.0}, 14).total_db_per_100m() == doctest::Approx(5).epsilon(1e-12));
}

TEST_CASE("feed line: two measurements give the constants that the fit gives") {
  std::mt19937_64 random(9);
  std::uniform_real_distribution<double> one(0, 1);
  const Cable& cable = *find_cable("rg58c");
  for (int i = 0; i < 300; ++i) {
    const double f = 1.8 + 50 * one(random), g = 1.8 + 50 * one(random);
    const LossPoint points[] = {{f, 0.5 + 10 * one(random)}, {g, 0.5 + 10 * one(random)}};
    const LossLaw law = fit_loss(points, false);
    for (const double at : {2.0, 14.2, 50.0})
      CHECK(measured_loss(cable, {f, points[0].attenuation_db_per_100m}, {g, points[1].attenuation_db_per_100m}, at)
                .total_db_per_100m() == doctest::Approx(attenuation_db_per_100m(law, at)).epsilon(1e-7));
  }
  CHECK(measured_loss(cable, {14, 4}, {14, 6}, 14).total_db_per_100m() == doctest::Approx(5).epsilon(1e-12));
}
