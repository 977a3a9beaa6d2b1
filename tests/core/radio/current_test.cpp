#include "core/radio/current.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <random>
#include <string>

using namespace gs::radio;

namespace {

double unit_of(std::mt19937_64& bits) { return double(bits() >> 11) * 0x1p-53; }

}  // namespace

TEST_CASE("current property: rises with power, from idle to full, and two readings give it back") {
  constexpr unsigned long long kSeed = 0x616d70;
  std::printf("  seed %llu\n", kSeed);
  std::mt19937_64 bits(kSeed);
  double worst = 0;
  for (int i = 0; i < 2000; ++i) {
    const double full_w = 1 + 199 * unit_of(bits), idle_a = 5 * unit_of(bits);
    const SetCurrents set{full_w, idle_a + 0.1 + 20 * unit_of(bits), idle_a, unit_of(bits)};
    CHECK(key_down_a(set, 0) == set.keyed_idle_a);
    CHECK(std::abs(key_down_a(set, full_w) - set.full_power_a) < 1e-12);
    const double low_w = full_w * (0.01 + 0.4 * unit_of(bits)), high_w = low_w * (1.5 + unit_of(bits));
    CHECK(key_down_a(set, high_w) > key_down_a(set, low_w));
    const FromReadings back =
        from_two_readings(low_w, key_down_a(set, low_w), high_w, key_down_a(set, high_w), full_w);
    CHECK((back.sound || idle_a < 1e-9));
    worst = std::max({worst, std::abs(back.keyed_idle_a - idle_a), std::abs(back.full_power_a - set.full_power_a)});
    for (const Mode& mode : modes()) {
      const double a = transmit_a(set, low_w, mode);
      CHECK(a >= set.keyed_idle_a);
      CHECK(a <= key_down_a(set, low_w) + 1e-12);
    }
  }
  std::printf("  two readings give idle and full back to %.1e A\n", worst);
  CHECK(worst < 1e-9);
}

TEST_CASE("current: an average lies between its two") {
  CHECK(average_a(1, 10, 0) == 1);
  CHECK(average_a(1, 10, 1) == 10);
  CHECK(average_a(1, 10, 0.1) == doctest::Approx(1.9));
}

TEST_CASE("current: readings that cannot be true are refused") {
  CHECK_FALSE(from_two_readings(5, 8, 100, 7, 100).sound);     // falls with power
  CHECK_FALSE(from_two_readings(5, 0.1, 100, 20, 100).sound);  // idle below nothing
  CHECK_FALSE(from_two_readings(5, 1, 5, 2, 100).sound);       // one power twice
  CHECK_FALSE(from_two_readings(5, 1, 50, 2, 0).sound);
}

TEST_CASE("current: usual sets meet their class, and grow all the way") {
  for (const RadioClass& row : radio_classes()) {
    const SetCurrents set = usual_currents(row.full_power_w);
    CHECK(set.full_power_a == doctest::Approx(row.full_power_a));
    CHECK(set.keyed_idle_a == doctest::Approx(row.keyed_idle_a));
    CHECK(set.receive_a == doctest::Approx(row.receive_a));
    CHECK_FALSE(row.source.empty());
  }
  SetCurrents last{0, 0, 0, 0};
  for (double w = 0.1; w <= 400; w *= 1.05) {
    const SetCurrents set = usual_currents(w);
    CHECK(set.full_power_a > last.full_power_a);
    CHECK(set.keyed_idle_a > last.keyed_idle_a);
    CHECK(set.receive_a >= last.receive_a);
    CHECK(set.keyed_idle_a < set.full_power_a);
    // no set of the trade is better than a class-B final at full swing
    CHECK(efficiency_pct(w, 13.8, set.full_power_a) < 78.5);
    last = set;
  }
}

TEST_CASE("mode: every row is complete") {
  CHECK(modes().size() >= 6);
  for (const Mode& mode : modes()) {
    CAPTURE(std::string(mode.key));
    CHECK(find_mode(mode.key) == &mode);
    CHECK(mode.average_power_share > 0);
    CHECK(mode.average_power_share <= 1);
    CHECK(mode.current_share <= 1);
    // mean of an envelope is at most the root of its mean square (Cauchy), never less than the mean square itself
    CHECK(mode.current_share >= mode.average_power_share - 1e-12);
    CHECK(mode.current_share <= std::sqrt(mode.average_power_share) + 1e-12);
    CHECK_FALSE(mode.power_source.empty());
    CHECK_FALSE(mode.current_source.empty());
  }
}
