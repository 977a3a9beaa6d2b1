#include "core/feedline/line.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/feedline/swr.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::feedline;
using gs::test::Closeness;

TEST_CASE("line: nominal data and distributed constants describe the same line") {
  // R = 2 alpha_c Z0, G = 2 alpha_d / Z0, L = Z0/v, C = 1/(Z0 v): the low-loss form differs in second order of
  // alpha/beta (Hayt and Buck, ch. 10), here (0.0067 / 0.45)^2 = 2e-4.
  const double conductor = 5.5, dielectric = 0.3, z0 = 50, v = 0.66 * kSpeedOfLightMPerS, f_hz = 14.2e6;
  const double r = 2 * conductor / 100 / kDbPerNeper * z0, g = 2 * dielectric / 100 / kDbPerNeper / z0;
  const Line exact = line_from_constants(r, z0 / v, g, 1 / (z0 * v), f_hz, 15);
  const Line nominal = line_from_nominal(z0, 0.66, conductor, dielectric, 14.2, 15);
  Closeness off("low-loss form against constants, relative", "");
  CHECK(off.within(std::abs(nominal.gamma_per_m / exact.gamma_per_m - 1.0), 0, 2e-4));
  CHECK(off.within(std::abs(nominal.z0_ohm / exact.z0_ohm - 1.0), 0, 2e-4));
  CHECK(nominal.z0_ohm.imag() < 0);  // conductor loss turns Z0 capacitive
  CHECK(line_from_nominal(z0, 0.66, 0, 5, 14.2, 15).z0_ohm.imag() > 0);
  CHECK(matched_loss_db(nominal) == doctest::Approx(0.15 * 5.8).epsilon(1e-12));
}

TEST_CASE("line: an almost loss-free line keeps its loss to the last digits") {
  // alpha = R / (2 Z0), in the limit of small R (Hayt and Buck, ch. 10)
  const Line line = line_from_constants(1e-9, 2.5e-7, 0, 1e-10, 14e6, 1);
  CHECK(std::abs(line.gamma_per_m.real() / 1e-11 - 1) < 1e-12);
  CHECK(std::abs(total_loss_db(line, 50.0) / (1e-11 * kDbPerNeper) - 1) < 1e-9);
}

TEST_CASE("line: constants that make a resistive line, not a wave") {
  // R G above w^2 L C: gamma^2 has a positive real part. Squares give the product and the quotient back.
  for (const double r : {1e-3, 1.0, 1e3}) {
    const double w = 2 * kPi * 1e3, l = 2.5e-7, g = 0.5, c = 1e-10;
    const Line line = line_from_constants(r, l, g, c, 1e3, 1);
    const Complex series{r, w * l}, shunt{g, w * c};
    CHECK(std::abs(line.gamma_per_m * line.gamma_per_m / (series * shunt) - 1.0) < 1e-14);
    CHECK(std::abs(line.z0_ohm * line.z0_ohm / (series / shunt) - 1.0) < 1e-14);
    CHECK(line.gamma_per_m.real() > 0);
  }
}

TEST_CASE("line: loss-free special lengths") {
  const double quarter_m = 0.66 * kSpeedOfLightMPerS / 14e6 / 4;
  const Line quarter = line_from_nominal(50, 0.66, 0, 0, 14, quarter_m);
  CHECK(electrical_length_wavelengths(quarter) == doctest::Approx(0.25).epsilon(1e-14));
  // A quarter wave turns Z into Z0^2 / Z, a short into an open end and an open end into a short.
  CHECK(std::abs(input_impedance_ohm(quarter, 100.0) - 25.0) < 1e-12);
  CHECK(std::abs(input_impedance_ohm(quarter, 0.0)) > 1e11);
  CHECK(std::isfinite(std::abs(input_impedance_ohm(quarter, 0.0))));
  CHECK(std::abs(input_impedance_ohm(quarter, kOpenEndOhm)) < 1e-8);
  CHECK(total_loss_db(quarter, 100.0) == 0);
  const Line half = line_from_nominal(50, 0.66, 0, 0, 14, 2 * quarter_m);
  CHECK(std::abs(input_impedance_ohm(half, Complex{20, -70}) - Complex{20, -70}) < 1e-10);
  const Line eighth = line_from_nominal(50, 0.66, 0, 0, 14, quarter_m / 2);
  CHECK(std::abs(input_impedance_ohm(eighth, 0.0) - Complex{0, 50}) < 1e-12);
  CHECK(std::abs(input_impedance_ohm(eighth, kOpenEndOhm) - Complex{0, -50}) < 1e-7);
}

TEST_CASE("line: loads that take no power, and lines without end") {
  const Line line = line_from_nominal(50, 0.66, 5, 0.5, 14, 15);
  CHECK(std::isinf(total_loss_db(line, 0.0)));
  CHECK(std::isinf(total_loss_db(line, Complex{0, 1e12})));
  CHECK(std::isinf(total_loss_db(line, Complex{-1, 5})));
  CHECK(std::isinf(total_loss_db(line_from_nominal(50, 0.66, 0, 0, 14, 15), Complex{0, 20})));
  CHECK(total_loss_db(line, 1e-300) > 2900);
  CHECK(total_loss_db(line, Complex{1, 1e200}) > 1000);

  // 10 km: 5 500 dB. The input is Z0 whatever hangs at the far end.
  const Line endless = line_from_nominal(50, 0.66, 50, 5, 14, 10000);
  for (const Complex load : {Complex{0, 0}, Complex{kOpenEndOhm, 0}, Complex{3, -400}})
    CHECK(input_impedance_ohm(endless, load) == endless.z0_ohm);
  CHECK(total_loss_db(endless, endless.z0_ohm) == doctest::Approx(5500).epsilon(1e-12));
  // The two ways of computing meet where one hands over to the other (20 Np, 173.7 dB).
  const double per_m = line.gamma_per_m.real();
  for (const Complex load : {Complex{7, 90}, Complex{700, -90}, Complex{50, 0}}) {
    const Line before{line.gamma_per_m, line.z0_ohm, 19.999999 / per_m},
        after{line.gamma_per_m, line.z0_ohm, 20.000001 / per_m};
    CHECK(std::abs(total_loss_db(after, load) - total_loss_db(before, load) - 2e-6 * kDbPerNeper) < 1e-10);
    CHECK(std::abs(input_impedance_ohm(after, load) - input_impedance_ohm(before, load)) < 1e-12);
  }
}

TEST_CASE("swr: edges of every function") {
  const double inf = std::numeric_limits<double>::infinity();
  CHECK(reflection(50.0, 50) == 0);
  CHECK(reflection(Complex{0, 33}, 50) == doctest::Approx(1).epsilon(1e-15));
  CHECK(reflection(Complex{inf, 0}, 50) == 1);
  CHECK(swr_from_reflection(0) == 1);
  CHECK(std::isinf(swr_from_reflection(1)));
  CHECK(std::isnan(swr_from_reflection(-0.1)));
  CHECK(reflection_from_swr(1) == 0);
  CHECK(reflection_from_swr(inf) == 1);
  CHECK(std::isnan(reflection_from_swr(0.9)));
  CHECK(swr(50.0, 50) == 1);
  CHECK(std::isinf(swr(Complex{0, 20}, 50)));
  CHECK(swr(1e12, 50) == doctest::Approx(2e10).epsilon(1e-12));
  CHECK(swr(1e-12, 50) == doctest::Approx(5e13).epsilon(1e-12));
  CHECK(std::isinf(return_loss_db(0)));
  CHECK(return_loss_db(1) == 0);
  CHECK_FALSE(std::signbit(return_loss_db(1)));
  CHECK(mismatch_loss_db(0) == 0);
  CHECK_FALSE(std::signbit(mismatch_loss_db(0)));
  CHECK(std::isinf(mismatch_loss_db(1)));

  CHECK(swr_at_radio(1, 3) == 1);
  CHECK(swr_at_radio(7, 0) == doctest::Approx(7).epsilon(1e-15));
  CHECK(std::isinf(swr_at_radio(inf, 0)));
  CHECK(std::isinf(swr_of_open_end(0)));
  CHECK(swr_of_open_end(3000) == 1);
  CHECK(swr_at_load(1, 3) == 1);
  CHECK(std::isinf(swr_at_load(inf, 0)));
  CHECK(std::isnan(swr_at_load(inf, 0.1)));
  CHECK(std::isnan(swr_at_load(0.5, 1)));
  CHECK(std::isnan(swr_at_radio(2, -1)));
  for (const double loss_db : {0.01, 0.3, 1.0, 2.346, 9.0}) {
    const double open = swr_of_open_end(loss_db);
    const double back =
        swr_at_load(open, loss_db);  // an open end: infinite, or so high that rounding hides the rest
    CHECK((std::isinf(back) || back > 1e12));
    CHECK(std::isnan(swr_at_load(open * 1.0001, loss_db)));
    CHECK(loss_from_open_end_db(open) == doctest::Approx(loss_db).epsilon(1e-12));
  }
  CHECK(std::isinf(loss_from_open_end_db(1)));
  CHECK(loss_from_open_end_db(inf) == 0);
  CHECK(std::isnan(loss_from_open_end_db(0.9)));

  CHECK(closed_form_loss_db(0, 5) == 0);
  CHECK(closed_form_loss_db(2, 1) == doctest::Approx(2).epsilon(1e-14));
  CHECK(std::isinf(closed_form_loss_db(1, inf)));
  CHECK(std::isnan(closed_form_loss_db(1, 0.99)));
  CHECK(closed_form_loss_db(9000, 3) == doctest::Approx(9000 + 1.2494).epsilon(1e-8));
}

TEST_CASE("swr: loss range at the edges") {
  const double inf = std::numeric_limits<double>::infinity();
  const Line line = line_from_nominal(50, 0.66, 5, 0.5, 14, 15);
  const LossRange matched = loss_range_db(line, 50, 1);
  CHECK(matched.least_db == doctest::Approx(total_loss_db(line, 50.0)).epsilon(1e-12));
  CHECK(matched.most_db == matched.least_db);
  CHECK(matched.typical_db == matched.least_db);
  const LossRange none = loss_range_db(line_from_nominal(50, 0.66, 5, 0.5, 14, 0), 50, 30);
  CHECK(none.least_db == 0);
  CHECK(none.most_db == 0);
  const LossRange lossless = loss_range_db(line_from_nominal(50, 0.66, 0, 0, 14, 15), 50, 30);
  CHECK(lossless.most_db == 0);
  CHECK(std::isinf(loss_range_db(line, 50, inf).least_db));
  CHECK(std::isnan(loss_range_db(line, 50, 0.5).most_db));
  const LossRange endless = loss_range_db(line_from_nominal(50, 0.66, 50, 5, 14, 10000), 50, 3);
  CHECK(endless.typical_db == doctest::Approx(5500 + mismatch_loss_db(0.5)).epsilon(1e-6));
  const Line long_line = line_from_nominal(50, 0.66, 50, 5, 2, 10000);
  const LossRange spread = loss_range_db(long_line, 50, 3);
  double least = inf, most = 0;
  for (int degrees = 0; degrees < 360; ++degrees) {
    const Complex wave = std::polar(0.5, degrees * kPi / 180);
    const double loss = total_loss_db(long_line, 50.0 * ((1.0 + wave) / (1.0 - wave)));
    least = std::min(least, loss);
    most = std::max(most, loss);
  }
  CHECK(spread.most_db - spread.least_db > 0.1);
  CHECK(std::abs(spread.least_db - least) < 1e-4);  // one degree of phase
  CHECK(std::abs(spread.most_db - most) < 1e-4);
  // Where Z0 is exactly real there is no spread at all.
  const LossRange real = loss_range_db(line_from_nominal(50, 0.66, 3, 3, 14, 15), 50, 8);
  CHECK(real.most_db - real.least_db < 1e-12);
  CHECK(real.typical_db == doctest::Approx(closed_form_loss_db(0.9, 8)).epsilon(1e-12));
}
