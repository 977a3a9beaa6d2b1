// The mean of the greater of two counts, against the joint distribution summed and against draws.
#include "core/pace/greater_mean.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

#include "tests/reference/feedline_closeness.h"

using namespace gs::pace;
using gs::test::Closeness;

namespace {

constexpr double kCertain = std::numeric_limits<double>::infinity();

/// The modified Bessel function over e^x, by its power series (Abramowitz and Stegun 9.6.10).
double bessel_i_scaled(int order, double x) {
  double sum = 0;
  for (int k = 0; k < 2000; ++k)
    sum += std::exp((2 * k + order) * std::log(x / 2) - std::lgamma(k + 1.0) - std::lgamma(k + order + 1.0) - x);
  return sum;
}

double poisson(double mean, int n) { return std::exp((n ? n * std::log(mean) : 0) - mean - std::lgamma(n + 1.0)); }

}  // namespace

// Two Poisson counts, summed term by term.
TEST_CASE("greater mean: a certain pace, against the sum over both counts") {
  constexpr unsigned kSeed = 20261129;
  std::mt19937_64 bits(kSeed);
  std::uniform_real_distribution<double> share(0, 1);
  Closeness mean("greater of two Poisson counts", "");
  for (int n = 0; n < 40; ++n) {
    const Count a{int(12 * share(bits)), 40 * share(bits)},
        b{int(12 * share(bits)), n % 5 ? 40 * share(bits) : 0.5};
    double sum = 0;
    for (int i = 0; i < 160; ++i)
      for (int j = 0; j < 160; ++j)
        sum += poisson(a.mean, i) * poisson(b.mean, j) * std::max(a.counted + i, b.counted + j);
    CHECK(mean.within(greater_mean(kCertain, a, b), sum, 1e-10));
    CHECK(greater_mean(kCertain, b, a) == greater_mean(kCertain, a, b));
  }
}

// Equal means with nothing counted, certain: m + m e^-2m (I0(2m) + I1(2m)), from the mean of the absolute
// difference of two like Poisson counts (Ramasubban, The mean difference and the mean deviation of some
// discontinuous distributions, Biometrika 45, 1958, from memory).
TEST_CASE("greater mean: two alike, by Bessel functions") {
  Closeness mean("greater of two alike, relative", "");
  for (const double m : {0.1, 1.0, 10.0, 100.0, 300.0}) {
    const double wanted = m + m * (bessel_i_scaled(0, 2 * m) + bessel_i_scaled(1, 2 * m));
    CHECK(mean.within(greater_mean(kCertain, {0, m}, {0, m}) / wanted, 1, 1e-12));
  }
}

// Thousands of contacts, a pace hardly known, a long lead: where the joint distribution is too long to sum.
TEST_CASE("greater mean: against a million draws of the pace") {
  constexpr unsigned kSeed = 20261130;
  constexpr int kDraws = 1'000'000;
  std::mt19937_64 bits(kSeed);
  struct Row {
    double shape;
    Count one, other;
  };
  double worst = 0;
  for (const Row& row : {Row{0.15, {0, 640}, {0, 390}}, Row{0.15, {0, 640}, {0, 12}}, Row{4, {0, 3000}, {0, 2900}},
                         Row{4, {900, 100}, {0, 900}}, Row{1, {0, 2}, {40, 1}}, Row{1e5, {0, 20000}, {0, 20000}}}) {
    std::gamma_distribution<double> pace(row.shape, 1 / row.shape);
    double sum = 0, squares = 0;
    for (int i = 0; i < kDraws; ++i) {
      const double factor = pace(bits), a = factor * row.one.mean, b = factor * row.other.mean;
      const double x = row.one.counted + (a > 0 ? std::poisson_distribution<int>(a)(bits) : 0);
      const double y = row.other.counted + (b > 0 ? std::poisson_distribution<int>(b)(bits) : 0);
      const double greater = std::max(x, y) - row.one.mean * factor;  // less a count of known mean: it varies less
      sum += greater;
      squares += greater * greater;
    }
    const double mean = sum / kDraws + row.one.mean;
    const double error = std::sqrt((squares / kDraws - sum / kDraws * sum / kDraws) / kDraws);
    const double found = greater_mean(row.shape, row.one, row.other);
    worst = std::max(worst, std::abs(found - mean) / error);
    INFO(found << " against " << mean << " +- " << error);
    CHECK(std::abs(found - mean) < 4 * error);
  }
  MESSAGE("seed " << kSeed << ": worst " << worst << " standard errors, allowed 4");
}

TEST_CASE("greater mean property: more on either day never lowers it, and it is at least either mean") {
  constexpr unsigned kSeed = 20261201;
  std::mt19937_64 bits(kSeed);
  std::uniform_real_distribution<double> share(0, 1);
  for (int n = 0; n < 400; ++n) {
    const double shape = std::exp(8 * share(bits) - 2);
    const Count one{int(400 * share(bits) * share(bits)), std::exp(9 * share(bits) - 2)};
    const Count other{int(400 * share(bits) * share(bits)), std::exp(9 * share(bits) - 2)};
    const double greater = greater_mean(shape, one, other);
    const double room = 1e-9 * (1 + greater);
    CHECK(greater >= one.counted + one.mean - room);
    CHECK(greater >= other.counted + other.mean - room);
    CHECK(greater <= std::max(one.counted, other.counted) + one.mean + other.mean + room);
    CHECK(greater_mean(shape, {one.counted, one.mean * 1.1}, other) >= greater - room);
    CHECK(greater_mean(shape, {one.counted + 1, one.mean}, other) >= greater - room);
  }
}

TEST_CASE("greater mean: nothing to come, and impossible input") {
  CHECK(greater_mean(4, {3, 0}, {5, 0}) == 5);
  CHECK(greater_mean(4, {3, 7}, {3, 0}) == doctest::Approx(10));
  CHECK(std::isnan(greater_mean(0, {0, 1}, {0, 1})));
  CHECK(std::isnan(greater_mean(4, {-1, 1}, {0, 1})));
  CHECK(std::isnan(greater_mean(4, {0, -1}, {0, 1})));
  CHECK(std::isnan(greater_mean(4, {0, std::nan("")}, {0, 1})));
}
