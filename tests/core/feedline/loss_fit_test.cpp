#include "core/feedline/loss_fit.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <limits>
#include <random>
#include <vector>

#include "tests/reference/feedline_closeness.h"

using namespace gs::feedline;
using gs::test::Closeness;

namespace {

double sum_of_squares(const LossLaw& law, const std::vector<LossPoint>& points) {
  double sum = 0;
  for (const LossPoint& p : points) {
    const double off = attenuation_db_per_100m(law, p.frequency_mhz) / p.attenuation_db_per_100m - 1;
    sum += off * off;
  }
  return sum;
}

}  // namespace

// Constants of the 240 size as its maker publishes them (second hand), in dB/100 m.
TEST_CASE("loss fit: gives back the law that made the points") {
  Closeness off("law from its own exact points", "dB/100 m");
  for (const LossLaw& law : {LossLaw{0, 0.794226, 0.00108268}, LossLaw{4.5, 1.7, 0.06}, LossLaw{0, 0.4, 0},
                             LossLaw{0, 0, 0.02}, LossLaw{2, 0, 0}}) {
    std::vector<LossPoint> points;
    for (const double f : {1.0, 3.5, 10.0, 29.0, 50.0, 144.0})
      points.push_back({f, attenuation_db_per_100m(law, f)});
    const LossLaw fit = fit_loss(points, law.k0_db_per_100m > 0);
    CHECK(off.within(fit.k0_db_per_100m, law.k0_db_per_100m, 1e-12));
    CHECK(off.within(fit.k1_db_per_100m, law.k1_db_per_100m, 1e-12));
    CHECK(off.within(fit.k2_db_per_100m, law.k2_db_per_100m, 1e-12));
  }
}

TEST_CASE("loss fit: a term that brings nothing stays out") {
  std::vector<LossPoint> points;
  for (const double f : {1.0, 3.5, 10.0, 29.0, 50.0, 144.0}) points.push_back({f, 0.4 * std::sqrt(f)});
  const LossLaw fit = fit_loss(points, true);
  CHECK(fit.k0_db_per_100m == 0);
  CHECK(fit.k2_db_per_100m == 0);
}

// Relative least squares of published points, worked out apart with an independent program (normal equations).
TEST_CASE("loss fit: known fits of published points") {
  Closeness off("known fits, largest departure of a constant", "dB/100 m");
  struct Row {
    std::vector<LossPoint> points;
    double k1, k2;
  };
  const Row rows[] = {
      // RG-58, calibration code of an air-shower radio array (second hand)
      {{{10, 4.5}, {20, 6.5}, {50, 10.4}, {100, 15.1}, {200, 21.9}}, 1.39532, 0.011043},
      // RG-58C/U, detector test report (second hand)
      {{{1, 1.6}, {10, 5.3}, {50, 12.5}, {100, 18.4}}, 1.58184, 0.026196},
      // 3D-2V, JIS C 3501 (second hand)
      {{{1, 1.3}, {10, 4.4}, {200, 22}}, 1.30365, 0.018255},
      // RG-213, repeater planning guide (seen)
      {{{50, 4.9}, {150, 8.9}, {450, 16.3}}, 0.65791, 0.005286},
      // RG-8 solid polyethylene, maker's sheet (second hand): the second constant comes to rest on 0
      {{{1, 0.656}, {10, 1.969}, {50, 4.265}}, 0.62578, 0},
  };
  for (const Row& row : rows) {
    const LossLaw law = fit_loss(row.points, false);
    CHECK(off.within(law.k1_db_per_100m, row.k1, 5.1e-6));  // half of the last digit
    CHECK(off.within(law.k2_db_per_100m, row.k2, row.k2 > 0 ? 5.1e-7 : 0));
    CHECK(law.k0_db_per_100m == 0);
  }
}

TEST_CASE("loss fit: no neighbour with constants >= 0 fits better") {
  const std::uint64_t seed = 20260613;
  std::printf("  seed %llu\n", static_cast<unsigned long long>(seed));
  std::mt19937_64 random(seed);
  std::uniform_real_distribution<double> unit(0, 1);
  for (int trial = 0; trial < 300; ++trial) {
    const LossLaw truth{trial % 2 ? 5 * unit(random) : 0, 2 * unit(random), 0.05 * unit(random)};
    std::vector<LossPoint> points;
    for (const double f : {1.0, 5.0, 14.0, 50.0, 100.0, 200.0})
      points.push_back({f, attenuation_db_per_100m(truth, f) * (0.8 + 0.4 * unit(random)) + 1e-3});
    const bool with_constant = trial % 2 != 0;
    const LossLaw fit = fit_loss(points, with_constant);
    CHECK(fit.k0_db_per_100m >= 0);
    CHECK(fit.k1_db_per_100m >= 0);
    CHECK(fit.k2_db_per_100m >= 0);
    if (!with_constant) CHECK(fit.k0_db_per_100m == 0);
    const double best = sum_of_squares(fit, points);
    for (int step = 0; step < 40; ++step) {
      const double size = std::pow(10, -1 - 4 * unit(random));
      LossLaw other = fit;
      if (with_constant) other.k0_db_per_100m = std::max(0.0, fit.k0_db_per_100m + size * (2 * unit(random) - 1));
      other.k1_db_per_100m = std::max(0.0, fit.k1_db_per_100m + size * (2 * unit(random) - 1));
      other.k2_db_per_100m = std::max(0.0, fit.k2_db_per_100m + 0.1 * size * (2 * unit(random) - 1));
      CHECK(sum_of_squares(other, points) >= best * (1 - 1e-12));
    }
  }
}

TEST_CASE("loss fit: few, repeated and impossible points") {
  const LossLaw none = fit_loss({}, true);
  CHECK(none.k0_db_per_100m + none.k1_db_per_100m + none.k2_db_per_100m == 0);

  // One measured point, the check of a roll: all of it goes with the root of the frequency.
  const LossPoint one[] = {{25, 10}};
  CHECK(fit_loss(one, false).k1_db_per_100m == doctest::Approx(2).epsilon(1e-14));
  CHECK(fit_loss(one, true).k0_db_per_100m == doctest::Approx(10).epsilon(1e-14));

  // Two measurements at one frequency count as one frequency; the fit in relative error stands between them.
  const LossPoint twice[] = {{25, 10}, {25, 11}};
  const LossLaw law = fit_loss(twice, false);
  CHECK(law.k2_db_per_100m == 0);
  CHECK(attenuation_db_per_100m(law, 25) > 10);
  CHECK(attenuation_db_per_100m(law, 25) < 11);

  const double nan = std::numeric_limits<double>::quiet_NaN(), inf = std::numeric_limits<double>::infinity();
  const LossPoint bad[] = {{nan, 1}, {1, nan}, {0, 1}, {-1, 1}, {1, 0}, {1, -2}, {inf, 1}, {1, inf}, {25, 10}};
  CHECK(fit_loss(bad, false).k1_db_per_100m == doctest::Approx(2).epsilon(1e-14));
  CHECK(std::isnan(attenuation_db_per_100m(LossLaw{0, 1, 0}, -1)));
  CHECK(attenuation_db_per_100m(LossLaw{3, 1, 1}, 0) == 3);
}
