// Energy: what the formulas call lost must be what warms the line, metre by metre.
#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "core/feedline/line.h"
#include "core/feedline/run.h"
#include "core/feedline/swr.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::feedline;
using gs::test::Closeness;

namespace {

// Gauss-Legendre nodes and weights of order 8 on -1..1: Abramowitz and Stegun, table 25.4.
constexpr double kNode[] = {0.183434642495650, 0.525532409916329, 0.796666477413627, 0.960289856497536};
constexpr double kWeight[] = {0.362683783378362, 0.313706645877887, 0.222381034453374, 0.101228536290376};

struct Constants {
  double r, l, g, c, f_hz, length_m;
};

/// Integral of R |I|^2 + G |V|^2 from load to radio with the voltages and currents of the telegraph equations.
double heat(const Constants& k, const Line& line, VoltAmpere at_load) {
  const double half_waves = line.gamma_per_m.imag() * k.length_m / kPi;
  const double tenths = line.gamma_per_m.real() * k.length_m;
  const int panels = 2 + int(6 * half_waves + 4 * tenths);
  const double width = k.length_m / panels;
  double sum = 0;
  for (int p = 0; p < panels; ++p)
    for (int n = 0; n < 8; ++n) {
      const double at = (p + 0.5 + (n < 4 ? -0.5 : 0.5) * kNode[n % 4]) * width;
      const VoltAmpere here = along(line, at_load, at);
      sum += kWeight[n % 4] * width / 2 * (k.r * std::norm(here.ampere) + k.g * std::norm(here.volt));
    }
  return sum;
}

}  // namespace

// Poynting's theorem on a line (Hayt and Buck, ch. 10): power in less power out is the integral of R |I|^2 + G
// |V|^2.
TEST_CASE("feed line: lost power is the integral of R I^2 + G V^2, 10,000 random lines") {
  Closeness off("lost power against its integral, relative", "");
  std::mt19937_64 random(20260613);
  const auto between = [&](double low, double high) {
    return low + (high - low) * std::uniform_real_distribution<double>(0, 1)(random);
  };
  const auto log_between = [&](double low, double high) { return low * std::pow(high / low, between(0, 1)); };
  for (int i = 0; i < 10'000; ++i) {
    const double z0 = log_between(25, 600), vf = between(0.6, 1);
    Constants k{log_between(1e-3, 3),     z0 / (vf * kSpeedOfLightMPerS), 0, 1 / (z0 * vf * kSpeedOfLightMPerS),
                log_between(1.8e6, 54e6), log_between(0.1, 100)};
    if (i % 3 != 0) k.g = log_between(1e-8, 1e-4);
    const Line line = line_from_constants(k.r, k.l, k.g, k.c, k.f_hz, k.length_m);
    const Complex load{log_between(0.1, 10'000), between(-2000, 2000)};
    CAPTURE(i);
    const VoltAmpere at_load{load, 1.0};
    const double lost = load.real() * std::expm1(total_loss_db(line, load) / (kDbPerNeper / 2));
    CHECK(off.within(lost / heat(k, line, at_load), 1, 1e-9));
    if (i % 50 != 0) continue;
    // what stands at the radio agrees with the impedance that the other formula gives
    const VoltAmpere at_radio = along(line, at_load, k.length_m);
    const Complex zin = input_impedance_ohm(line, load);
    CHECK(std::abs(at_radio.volt / at_radio.ampere - zin) < 1e-9 * std::abs(zin));
    CHECK((at_radio.volt * std::conj(at_radio.ampere)).real() == doctest::Approx(load.real() + lost).epsilon(1e-9));
  }
}

// Limits that follow from the definitions alone.
TEST_CASE("feed line: the ends of the range") {
  const Line line = line_from_nominal(50, 0.66, 5, 0.4, 14.2, 15);
  const Line none = line_from_nominal(50, 0.66, 5, 0.4, 14.2, 0);
  for (const Complex load : {Complex{50}, Complex{5, -300}, Complex{2000, 40}}) {
    CHECK(total_loss_db(none, load) == doctest::Approx(0).epsilon(1e-15));
    CHECK(std::abs(input_impedance_ohm(none, load) - load) < 1e-12 * std::abs(load));
  }
  CHECK(std::isinf(total_loss_db(line, kOpenEndOhm * Complex{0, 1})));
  CHECK(std::isinf(total_loss_db(line, 0.0)));
  CHECK(std::isinf(total_loss_db(line, Complex{0, 50})));
  CHECK(total_loss_db(line, line.z0_ohm) == doctest::Approx(matched_loss_db(line)).epsilon(1e-3));
  // a kilometre of lossy line hides its far end: the radio sees Z0
  const Line endless = line_from_nominal(50, 0.66, 60, 0.4, 14.2, 1000);
  CHECK(std::abs(input_impedance_ohm(endless, 0.0) - endless.z0_ohm) < 1e-9);
  CHECK(swr_of_open_end(matched_loss_db(endless)) == doctest::Approx(1).epsilon(1e-12));
  // SWR 1 loses the matched loss; SWR 100 stays finite and lies within its phases
  Run run;
  run.add(line);
  const LossRange flat = loss_range_db(run, 50, 1), steep = loss_range_db(run, 50, 100);
  CHECK(flat.least_db == doctest::Approx(matched_loss_db(line)).epsilon(1e-3));
  CHECK(flat.most_db - flat.least_db < 1e-12);
  CHECK(steep.least_db > flat.most_db);
  CHECK(std::isfinite(steep.most_db));
  CHECK(std::isinf(loss_range_db(run, 50, INFINITY).most_db));
  CHECK(std::isnan(loss_range_db(run, 50, 0.9).least_db));
  CHECK(std::isnan(swr_range_at_load(run, 50, NAN).typical));
}
