// Properties of pace and clock over seeded random input, and what impossible input gets.
#include "core/pace/pace.h"

#include <cmath>
#include <cstdio>
#include <random>

#include "core/pace/clock.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs::pace;
using gs::test::Closeness;

namespace {

constexpr unsigned kSeed = 20260614;

struct Draw {
  std::mt19937_64 engine;
  explicit Draw(unsigned seed) : engine(seed) { std::printf("  seed %u\n", seed); }
  double between(double low, double high) { return low + (high - low) * (double(engine() >> 11) * 0x1p-53); }
};

/// Chance of exactly k by the gamma function: another way to the same terms.
double exactly(double mean, double spread_pct, int k) {
  if (spread_pct <= 0) return std::exp(k * std::log(mean) - mean - std::lgamma(k + 1.0));
  const double a = std::pow(100 / spread_pct, 2), p = a / (a + mean);
  return std::exp(std::lgamma(a + k) - std::lgamma(a) - std::lgamma(k + 1.0) + a * std::log(p) +
                  k * std::log1p(-p));
}

}  // namespace

TEST_CASE("pace property: chances are the sums of terms worked out another way") {
  Draw draw(kSeed);
  Closeness off("chance against terms by the gamma function", "");
  for (int i = 0; i < 400; ++i) {
    const double mean = std::exp(draw.between(-3, 6.5)), spread = i % 3 ? draw.between(3, 200) : 0;
    const int target = 1 + int(draw.between(0, 2 * mean + 5));
    double below = 0;
    for (int k = 0; k < target; ++k) below += exactly(mean, spread, k);
    CHECK(off.within(chance_of_target({mean, spread}, 60, target), 1 - below, 1e-10));
  }
}

TEST_CASE("pace property: more time, better pace, nearer target: better chance; minutes_for is its inverse") {
  Draw draw(kSeed + 1);
  Closeness back("chance after minutes_for", "");
  for (int i = 0; i < 400; ++i) {
    const Pace pace{draw.between(1, 150), i % 4 ? draw.between(0, 150) : 0};
    const double minutes = draw.between(5, 300), wanted = draw.between(0.02, 0.98);
    const int target = 1 + int(draw.between(0, 60));
    const double chance = chance_of_target(pace, minutes, target);
    CHECK(chance >= 0);
    CHECK(chance <= 1);
    constexpr double kRounding = 1e-13;  // what pace.h promises
    CHECK(chance_of_target(pace, minutes + 10, target) >= chance - kRounding);
    CHECK(chance_of_target({pace.per_hour * 1.1, pace.spread_pct}, minutes, target) >= chance - kRounding);
    CHECK(chance_of_target(pace, minutes, target + 1) <= chance + kRounding);
    CHECK(back.within(chance_of_target(pace, minutes_for(pace, target, wanted), target), wanted, 1e-7));
    const auto range = contacts_range(pace, minutes, 0.8);
    REQUIRE(range.has_value());
    CHECK(range->least <= range->most);
    CHECK(1 - chance_of_target(pace, minutes, range->least) <= 0.1);
    CHECK(1 - chance_of_target(pace, minutes, range->least + 1) >= 0.1);
    CHECK(1 - chance_of_target(pace, minutes, range->most + 1) >= 0.9);
    CHECK(1 - chance_of_target(pace, minutes, range->most) <= 0.9);
  }
}

TEST_CASE("pace property: counting in two pieces or in one leads to the same pace") {
  Draw draw(kSeed + 2);
  Closeness off("pace by two updates, relative", "");
  for (int i = 0; i < 1000; ++i) {
    const Pace before{draw.between(1, 100), draw.between(5, 200)};
    const double n = std::floor(draw.between(0, 50)), m = std::floor(draw.between(0, 50)), t = draw.between(1, 200),
                 s = draw.between(1, 200);
    const Pace two = updated(updated(before, n, t), m, s), one = updated(before, n + m, t + s);
    CHECK(off.within(two.per_hour / one.per_hour, 1, 1e-13));
    CHECK(off.within(two.spread_pct / one.spread_pct, 1, 1e-13));
    const Pace counted = updated(before, n, t);
    // the new pace lies between the old one and the count's own
    CHECK(counted.per_hour >= std::min(before.per_hour, n / t * 60) * (1 - 1e-12));
    CHECK(counted.per_hour <= std::max(before.per_hour, n / t * 60) * (1 + 1e-12));
  }
}

TEST_CASE("pace: no spread, no time, no pace, large numbers") {
  CHECK(updated({20, 0}, 50, 60).per_hour == 20);
  CHECK(updated({20, 40}, 0, 0).per_hour == 20);
  CHECK(chance_of_target({20, 40}, 0, 1) == 0);
  CHECK(chance_of_target({20, 40}, 0, 0) == 1);
  CHECK(chance_of_target({0, 40}, 60, 1) == 0);
  CHECK(std::isinf(minutes_for({0, 0}, 10, 0.9)));
  CHECK(minutes_for({20, 0}, 0, 0.9) == 0);
  CHECK(contacts_range({0, 0}, 60, 0.8)->most == 0);
  const double half = chance_of_target({50000, 0}, 60, 50000);
  MESSAGE("mean 50000, at least 50000: " << half);
  CHECK(std::abs(half - 0.5) <
        0.002);  // half of the middle term, 1 / sqrt(2 pi mean), and a third of that for skew
  CHECK(chance_of_target({50000, 0}, 60, 100000) < 1e-9);
  CHECK(chance_of_target({1, 0}, 1, 100000) < 1e-12);
  CHECK(std::isfinite(chance_of_target({600, 300}, 2880, 5000)));
  CHECK(charge_per_contact_mah(1.5, 30) == 50);
}

TEST_CASE("pace: impossible input") {
  for (const Pace bad : {Pace{-1, 0}, Pace{20, -1}, Pace{20, 301}, Pace{std::nan(""), 0}, Pace{INFINITY, 0}}) {
    CHECK(std::isnan(expected_contacts(bad, 60)));
    CHECK(std::isnan(chance_of_target(bad, 60, 5)));
    CHECK(std::isnan(minutes_for(bad, 5, 0.9)));
    CHECK_FALSE(contacts_range(bad, 60, 0.8).has_value());
    CHECK(std::isnan(updated(bad, 5, 60).per_hour));
  }
  CHECK(std::isnan(chance_of_target({20, 0}, -1, 5)));
  CHECK(std::isnan(chance_of_target({20, 0}, 60, kMostTarget + 1)));
  CHECK(std::isnan(minutes_for({20, 0}, 5, 1)));
  CHECK(std::isnan(minutes_for({20, 0}, 5, 0)));
  CHECK(std::isnan(pace_from_count(0, 10).per_hour));
  CHECK(std::isnan(pace_from_count(10, 0).per_hour));
  CHECK(std::isnan(updated({20, 40}, -1, 10).per_hour));
  CHECK(std::isnan(charge_per_contact_mah(1, 0)));
  CHECK_FALSE(contacts_range({20, 40}, 60, 1).has_value());
}

// Facts of the trade: 90 min on site with 10 and 10 min of work at 30 an hour are 35 contacts; with 2 and 2 min 43.
TEST_CASE("clock: time on the air") {
  const OnAir wire = on_air({600, 690, 10, 10}), whip = on_air({600, 690, 2, 2});
  CHECK(wire.minutes == 70);
  CHECK(wire.starts_min == 610);
  CHECK(wire.pack_by_min == 680);
  CHECK(expected_contacts({30, 0}, wire.minutes) == 35);
  CHECK(expected_contacts({30, 0}, whip.minutes) == 43);
  // 67 contacts in 44 min of operating with 10 min up and 10 min down are 62.8 an hour of the stay
  CHECK(std::abs(per_hour_on_site(67, {600, 664, 10, 10}) - 62.8) < .051);
  CHECK(on_air({1380, 1500, 10, 10}).minutes == 100);  // past midnight
}

TEST_CASE("clock: what is impossible is said") {
  CHECK(on_air({600, 690, 10, 10}).trouble == NoTime::none);
  CHECK(on_air({600, 600, 0, 0}).trouble == NoTime::leaves_first);
  CHECK(on_air({1380, 60, 10, 10}).trouble == NoTime::leaves_first);
  const OnAir full = on_air({600, 615, 10, 10});
  CHECK(full.trouble == NoTime::work_fills_it);
  CHECK(full.minutes == 0);
  CHECK(full.short_by_min == 5);
  CHECK(on_air({600, 620, 10, 10}).trouble == NoTime::work_fills_it);
  for (const Stay bad : {Stay{std::nan(""), 700, 0, 0}, Stay{600, INFINITY, 0, 0}, Stay{600, 700, -1, 0},
                         Stay{600, 700, 0, std::nan("")}}) {
    CHECK(on_air(bad).trouble == NoTime::not_known);
    CHECK(on_air(bad).minutes == 0);
  }
  CHECK(std::isnan(per_hour_on_site(5, {600, 600, 0, 0})));
}

// 00:00 UTC by local clocks, from the offsets: -3:30 20:30, -4 20:00, -8 16:00, -10 14:00, +1 01:00, +9:30 09:30,
// +11 11:00.
TEST_CASE("clock: UTC day by the local clock") {
  struct Row {
    double offset_min, midnight_min;
  };
  for (const Row row : {Row{-210, 1230}, Row{-240, 1200}, Row{-480, 960}, Row{-600, 840}, Row{60, 60},
                        Row{570, 570}, Row{660, 660}}) {
    CAPTURE(row.offset_min);
    CHECK(utc_midnight_between(1, 1439, row.offset_min) == row.midnight_min);
    CHECK(utc_of(row.midnight_min, row.offset_min).minute_of_day == 0);
  }
  CHECK(utc_midnight_between(0, 1440, 0) == std::nullopt);
  CHECK(utc_midnight_between(0, 1441, 0) == 1440);
  CHECK(utc_midnight_between(1200, 1300, -240) == std::nullopt);  // it turned just as one began
  // 19:30 at UTC-4 is 23:30 of the same date; half an hour later it is the next
  CHECK(utc_of(1170, -240).minute_of_day == 1410);
  CHECK(utc_of(1170, -240).day_shift == 0);
  CHECK(utc_of(1200, -240).day_shift == 1);
  CHECK(utc_of(30, 60).day_shift == -1);
  CHECK(std::isnan(utc_of(INFINITY, 0).minute_of_day));
  CHECK_FALSE(utc_midnight_between(std::nan(""), 10, 0).has_value());
}

TEST_CASE("clock property: UTC and back") {
  Draw draw(kSeed + 3);
  for (int i = 0; i < 2000; ++i) {
    const double local = std::floor(draw.between(-3000, 5000)), offset = 15 * std::floor(draw.between(-96, 96));
    const UtcTime utc = utc_of(local, offset);
    CHECK(utc.minute_of_day >= 0);
    CHECK(utc.minute_of_day < 1440);
    CHECK(local_of(utc, offset) == local);
  }
}
