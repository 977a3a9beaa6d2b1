// The better of two UTC days, against the joint distribution summed term by term.
#include "core/pace/better_day.h"

#include <cmath>
#include <random>
#include <vector>

#include "tests/reference/feedline_closeness.h"

using namespace gs::pace;
using gs::test::Closeness;

namespace {

constexpr unsigned kSeed = 20260613;

double unit_of(std::mt19937_64& bits) { return double(bits() >> 11) * 0x1p-53; }

/// P(i on one day and j on the other): negative multinomial (Johnson, Kotz, Balakrishnan, Discrete Multivariate
/// Distributions, ch. 36, from memory); a product of two Poisson terms where the pace is certain.
double together(double shape, double mean, double other, int i, int j) {
  const auto log_power = [](double x, int n) { return n > 0 ? n * std::log(x) : 0.0; };
  const double falls = std::lgamma(i + 1.0) + std::lgamma(j + 1.0);
  if (shape <= 0) return std::exp(log_power(mean, i) + log_power(other, j) - mean - other - falls);
  const double whole = shape + mean + other;
  return std::exp(std::lgamma(shape + i + j) - std::lgamma(shape) - falls + shape * std::log(shape / whole) +
                  log_power(mean / whole, i) + log_power(other / whole, j));
}

struct Summed {
  double chance = 0, expected = 0;
  std::vector<double> at_most;
};
Summed summed(Pace pace, const TwoDays& days, int target) {
  const double shape = pace.spread_pct > 0 ? std::pow(100 / pace.spread_pct, 2) : 0;
  const double mean = expected_contacts(pace, days.first_min), other = expected_contacts(pace, days.next_min);
  constexpr int kMost = 420;
  Summed sum;
  sum.at_most.assign(2 * kMost, 0);
  for (int i = 0; i < kMost; ++i)
    for (int j = 0; j < kMost; ++j) {
      const double p = together(shape, mean, other, i, j);
      const int better = std::max(int(days.first_counted) + i, int(days.next_counted) + j);
      if (better >= target) sum.chance += p;
      sum.expected += p * better;
      sum.at_most[std::size_t(better)] += p;
    }
  for (std::size_t k = 1; k < sum.at_most.size(); ++k) sum.at_most[k] += sum.at_most[k - 1];
  return sum;
}

}  // namespace

TEST_CASE("better day: chance, mean and range against the joint distribution summed") {
  std::mt19937_64 bits(kSeed);
  Closeness chance("chance on the better day", ""), mean("greater count", "contacts");
  for (int n = 0; n < 60; ++n) {
    const Pace pace{1 + 20 * unit_of(bits), n % 4 ? 20 + 60 * unit_of(bits) : 0};
    const TwoDays days{n % 3 ? std::floor(8 * unit_of(bits)) : 0, n % 5 ? 0 : std::floor(8 * unit_of(bits)),
                       n % 7 ? 120 * unit_of(bits) : 0, 120 * unit_of(bits)};
    const int target = int(15 * unit_of(bits));
    const BetterDay better = better_day(pace, days, target);
    const Summed wanted = summed(pace, days, target);
    CHECK(chance.within(better.chance, wanted.chance, 1e-9));
    CHECK(mean.within(better.expected, wanted.expected, 1e-7));
    REQUIRE(better.range);
    CHECK(wanted.at_most[std::size_t(better.range->least)] >= .1 - 1e-9);
    CHECK(wanted.at_most[std::size_t(better.range->most)] >= .9 - 1e-9);
    if (better.range->least > 0) CHECK(wanted.at_most[std::size_t(better.range->least) - 1] <= .1 + 1e-9);
  }
}

// Six contacts before 00:00 UTC and five after it are six and five, not eleven: neither day has ten. A worked
// mistake of the trade; common practice.
TEST_CASE("better day: six and five are not ten") {
  const BetterDay over = better_day({20, 50}, {6, 5, 0, 0}, 10);
  CHECK(over.chance == 0);
  CHECK(over.expected == 6);
  CHECK(over.range->most == 6);
  CHECK(better_day({20, 50}, {6, 5, 0, 0}, 6).chance == 1);
}

TEST_CASE("better day: one day alone, many contacts, impossible input") {
  const Pace pace{12, 50};
  CHECK(std::abs(better_day(pace, {0, 0, 120, 0}, 10).chance - chance_of_target(pace, 120, 10)) < 1e-12);
  CHECK(std::abs(better_day(pace, {0, 0, 0, 120}, 10).chance - chance_of_target(pace, 120, 10)) < 1e-12);
  CHECK(std::abs(better_day(pace, {3, 0, 120, 0}, 10).chance - chance_of_target(pace, 120, 7)) < 1e-12);
  // far beyond any day the greater half stands for both, and the step to that is small
  const double below = better_day({200, 30}, {0, 0, 145, 150}, 10).expected,
               above = better_day({200, 30}, {0, 0, 150, 155}, 10).expected;
  MESSAGE("greater of two days near the switch: " << below << " and " << above);
  CHECK(std::abs(above / below - 155.0 / 150) < .03);
  CHECK(std::isnan(better_day({-1, 50}, {}, 10).chance));
  CHECK(std::isnan(better_day(pace, {-1, 0, 10, 10}, 10).chance));
  CHECK(std::isnan(better_day(pace, {0, 0, -10, 10}, 10).chance));
}
