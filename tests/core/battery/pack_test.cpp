// Laws that every pack must obey, tried on generated packs; and packs at the edge.
#include "core/battery/pack.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <limits>
#include <random>
#include <string>
#include <vector>

#include "core/battery/carried.h"
#include "core/battery/charge.h"
#include "core/battery/discharge.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::battery;
using gs::test::Closeness;

namespace {

constexpr std::uint64_t kSeed = 0x7061636b;
constexpr int kTrials = 2000;

class Draws {
 public:
  explicit Draws(std::uint64_t seed) : random_(seed) {
    std::printf("  seed %llu\n", static_cast<unsigned long long>(seed));
  }
  double between(double least, double most) { return least + (most - least) * (double(random_() >> 11) * 0x1p-53); }
  double log_between(double least, double most) { return std::exp(between(std::log(least), std::log(most))); }
  Pack pack() {
    const Chemistry& kind = chemistries()[std::size_t(between(0, double(chemistries().size())))];
    return {.chemistry = &kind,
            .capacity_ah = log_between(0.5, 300),
            .health_pct = between(20, 100),
            .temperature_c = between(-30, 50),
            .reserve_pct = between(0, 90),
            .used_ah = 0};
  }

 private:
  std::mt19937_64 random_;
};

// The plan's own law at a steady load.
double runtime_h(const Pack& pack, double a) { return hours_alone(pack, steady(a)); }
double capacity_at_load_ah(Pack pack, double a) {
  pack.reserve_pct = pack.used_ah = 0;
  return usable_ah(pack, steady(a));
}
double left_after_pct(const Pack& pack, double a, double hours) {
  const Law law = law_of(pack);
  return left_pct(law, after(law, at_start(law, steady(a)), steady(a), hours), steady(a));
}
/// Rested at this charge, and with a peak and a lasting current that have only just begun.
double loaded_v(const Pack& pack, double charge_left_pct, double peak_a, double lasting_a) {
  const Law law = law_of(pack);
  const WellState state{law.wells.capacity_ah * charge_left_pct / 100, 0};
  return key_down_v(law, state, {0, lasting_a, peak_a, 1, 0, 0}, 0);
}
double resting_v(const Chemistry& kind, double charge_left_pct) {
  return loaded_v({.chemistry = &kind, .capacity_ah = 10}, charge_left_pct, 0, 0);
}
double sag_v(const Pack& pack, double peak_a, double lasting_a) {
  const Law law = law_of(pack);
  return peak_a * (law.quick_ohm + law.fixed_ohm) + lasting_a * law.slow_ohm;
}

}  // namespace

TEST_CASE("chemistry: every row is complete, and its curves go one way") {
  CHECK(chemistries().size() >= 5);
  for (const Chemistry& row : chemistries()) {
    CAPTURE(std::string(row.key));
    CHECK(find_chemistry(row.key) == &row);
    for (const std::string_view source :
         {row.pack_source, row.reserve_source, row.resistance_source, row.discharge_source, row.charge_source})
      CHECK_FALSE(source.empty());
    CHECK(at(row.capacity_at_c, 25) == doctest::Approx(1));
    CHECK(at(row.resistance_at_c, 25) == doctest::Approx(1));
    // one law a chemistry: wells, or curves
    CHECK(row.resting_v.empty() == (row.kinetic != nullptr));
    CHECK(row.capacity_at_rate.empty() == (row.kinetic != nullptr));
    if (!row.kinetic) {
      CHECK(row.resting_v.front().x == 0);
      CHECK(row.resting_v.back().x == 100);
      CHECK(at(row.capacity_at_rate, 0) == 1);
    }
    CHECK(row.empty_v < row.nominal_v);
    CHECK(resting_v(row, 100) > row.nominal_v);
    for (double x = -60; x < 120; x += 0.7) {
      if (x > 0 && x + 0.7 < 100) CHECK(resting_v(row, x + 0.7) >= resting_v(row, x));
      CHECK(at(row.capacity_at_c, x + 0.7) >= at(row.capacity_at_c, x));
      CHECK(at(row.resistance_at_c, x + 0.7) <= at(row.resistance_at_c, x));
    }
  }
  CHECK(find_chemistry("") == nullptr);
}

TEST_CASE("curve: points are met, ends stay flat, where() finds back") {
  for (const Chemistry& row : chemistries()) {
    if (row.kinetic) continue;  // has no such curve
    for (const CurvePoint& p : row.resting_v) CHECK(at(row.resting_v, p.x) == p.y);
    CHECK(at(row.resting_v, 1e300) == row.resting_v.back().y);
    CHECK(at(row.resting_v, -1e300) == row.resting_v.front().y);
    for (double pct = 0; pct <= 100; pct += 0.5)
      CHECK(std::abs(where(row.resting_v, at(row.resting_v, pct)) - pct) < 1e-9);
    CHECK(where(row.resting_v, 99) == 100);
    CHECK(where(row.resting_v, 0) == 0);
  }
}

TEST_CASE("pack property: a harder load gives no more charge and less time") {
  Draws draw(kSeed);
  int none = 0;
  for (int i = 0; i < kTrials; ++i) {
    const Pack pack = draw.pack();
    const double a = draw.log_between(0.01, 200), b = a * draw.between(1.0001, 3);
    // so hard that the voltage breaks down at once: the same nothing for both
    if (runtime_h(pack, a) == 0) {
      CHECK(runtime_h(pack, b) == 0);
      ++none;
      continue;
    }
    CHECK(capacity_at_load_ah(pack, b) <= capacity_at_load_ah(pack, a));
    CHECK(runtime_h(pack, b) < runtime_h(pack, a));
    CHECK(left_after_pct(pack, b, 1) <= left_after_pct(pack, a, 1));
  }
  std::printf("  %d of %d packs cannot give so much at all\n", none, kTrials);
  CHECK(none < kTrials / 2);
}

TEST_CASE("pack property: cold, age and use never help") {
  Draws draw(kSeed + 1);
  for (int i = 0; i < kTrials; ++i) {
    const Pack pack = draw.pack();
    const double a = draw.log_between(0.05, 50);
    Pack colder = pack, older = pack, used = pack;
    colder.temperature_c -= draw.between(0, 20);
    older.health_pct *= draw.between(0.3, 1);
    used.used_ah = draw.between(0, pack.capacity_ah);
    const double lasting_a = draw.between(0, a);
    for (const Pack& worse : {colder, older, used}) CHECK(runtime_h(worse, a) <= runtime_h(pack, a));
    for (const Pack& worse : {colder, older}) CHECK(sag_v(worse, a, lasting_a) >= sag_v(pack, a, lasting_a));
  }
}

TEST_CASE("pack property: at the end of its runtime the reserve is left") {
  Draws draw(kSeed + 2);
  int by_reserve = 0;
  Closeness off("left at the end of the runtime against the reserve", "points");
  for (int i = 0; i < kTrials; ++i) {
    Pack pack = draw.pack();
    const double a = draw.log_between(0.05, 50);
    pack.used_ah = draw.between(0, 0.9) * usable_ah(pack, steady(a));
    const Law law = law_of(pack);
    const double empty_v = pack.chemistry->kinetic ? pack.chemistry->empty_v : 0;
    const End end =
        end_of(law, at_start(law, steady(a)), steady(a), {0, empty_v, std::numeric_limits<double>::infinity()});
    CHECK(end.hours == runtime_h(pack, a));
    const double left = left_after_pct(pack, a, end.hours);
    if (end.by == EndBy::reserve) {
      ++by_reserve;
      CHECK(off.within(left, pack.reserve_pct, 1e-9));
    } else {
      CHECK(left >= pack.reserve_pct - 1e-9);  // its voltage gave out first
    }
  }
  std::printf("  %d of %d end by their reserve\n", by_reserve, kTrials);
  CHECK(by_reserve > kTrials / 2);
}

TEST_CASE("pack property: the label that is needed runs just that long, and a smaller one does not") {
  Draws draw(kSeed + 3);
  Closeness off("runtime of the label needed, relative", "");
  for (int i = 0; i < kTrials; ++i) {
    Pack pack = draw.pack();
    const double a = draw.log_between(0.05, 50), h = draw.log_between(0.1, 100);
    const double label_ah = needed_label_ah(pack, steady(a), h);
    pack.capacity_ah = label_ah;
    CHECK(off.within(runtime_h(pack, a) / h, 1, 1e-9));
    pack.capacity_ah = label_ah * 0.999;
    CHECK(runtime_h(pack, a) < h);
  }
}

TEST_CASE("pack property: key-down reaches its floor after the hours that were named") {
  Draws draw(kSeed + 4);
  Closeness off("voltage at the hour named against the floor", "V");
  int reached = 0;
  for (int i = 0; i < kTrials; ++i) {
    Pack pack = draw.pack();
    pack.reserve_pct = 0;
    const double average_a = draw.log_between(0.05, 10), peak_a = average_a * draw.between(1, 5),
                 sending_a = draw.between(average_a, peak_a);
    const Load load{0, sending_a, peak_a, average_a / sending_a, 0, 0};
    const double floor_v = pack.chemistry->nominal_v * draw.between(0.85, 1.02);
    const Law law = law_of(pack);
    const WellState start = at_start(law, load);
    const End end = end_of(law, start, load, {0, floor_v, std::numeric_limits<double>::infinity()});
    const double h = end.hours;
    CHECK(std::isfinite(h));
    CHECK(h >= 0);
    const double start_v = key_down_v(law, start, load, 0);
    if (h == 0) {
      CHECK(start_v <= floor_v + 1e-9);
      continue;
    }
    if (end.by == EndBy::reserve) continue;  // ran flat above the floor
    ++reached;
    CHECK(off.within(key_down_v(law, start, load, h), floor_v, 1e-9));
  }
  std::printf("  %d of %d packs reach the floor above empty\n", reached, kTrials);
  CHECK(reached > kTrials / 4);
}

TEST_CASE("pack: nothing drawn, nothing left, nothing there") {
  const Chemistry& kind = *find_chemistry("lifepo4");
  const Pack pack{.chemistry = &kind, .capacity_ah = 10};
  CHECK(std::isinf(runtime_h(pack, 0)));
  CHECK(runtime_h({.chemistry = &kind, .capacity_ah = 10, .used_ah = 11}, 0) == 0);
  CHECK(runtime_h({.chemistry = &kind, .capacity_ah = 10, .used_ah = 11}, 3) == 0);
  CHECK(left_after_pct(pack, 5, 1e9) == 0);
  CHECK(left_after_pct(pack, 0, 5) == 100);
  CHECK(needed_label_ah(pack, steady(0), 5) == 0);
  CHECK(needed_label_ah(pack, steady(5), 0) == 0);
  CHECK(loaded_v(pack, 50, 1e6, 1e6) == 0);
  CHECK(loaded_v(pack, 50, 0, 0) == at(kind.resting_v, 50));
  const Law law = law_of(pack);
  const Floors high{0, 99, 1e9}, low{0, 12, 1e9};
  CHECK(end_of(law, at_start(law, steady(1)), steady(1), high).hours == 0);
  CHECK(std::isinf(end_of(law, at_start(law, steady(0)), steady(0), low).hours));
  CHECK(usual_max_current_a(kind, 10) == 10);
}

TEST_CASE("pack: a spare goes on where the first ends") {
  const Chemistry& kind = *find_chemistry("lifepo4");
  const Pack pack{.chemistry = &kind, .capacity_ah = 10, .reserve_pct = 5, .used_ah = 4};
  Pack second = pack;
  second.capacity_ah = 6;
  second.used_ah = 0;
  const auto one_after_the_other_h = [](std::initializer_list<Pack> packs, double a) {
    std::vector<Carry> carried;
    for (const Pack& each : packs) carried.push_back({law_of(each), {0, 0, 1e9}});
    const Stretch only{steady(a), 0};
    return course_of(carried, {&only, 1}, std::numeric_limits<double>::infinity()).hours;
  };
  CHECK(one_after_the_other_h({pack}, 1) == runtime_h(pack, 1));
  CHECK(one_after_the_other_h({pack, second}, 1) == doctest::Approx(runtime_h(pack, 1) + runtime_h(second, 1)));
  CHECK(one_after_the_other_h({pack, second}, 0) == kLongestH);  // nothing drawn: as long as anybody asks
}

TEST_CASE("charge: edges") {
  const Chemistry& kind = *find_chemistry("lifepo4");
  CHECK(charge_time(kind, 0, 5).bulk_h == 0);
  CHECK(charge_time(kind, 0, 5).tail_h == 0);
  CHECK(std::isinf(charge_time(kind, 5, 0).bulk_h));
  CHECK(panel_current_a(0, 40, 12.8) == 0);
  for (const Chemistry& row : chemistries()) {
    double last = 0;
    for (double c = -40; c <= 40; c += 1) {
      const double most = most_charge_a_per_ah(row, c);
      CHECK(most >= last);
      last = most;
    }
    CHECK(most_charge_a_per_ah(row, row.charge_from_c) == 0);
    // a sound one, tested at any current, is as good as its label
    for (const double a : {0.1, 1.0, 10.0}) {
      const double h = capacity_at_load_ah({.chemistry = &row, .capacity_ah = 20, .temperature_c = 10}, a) / a;
      CHECK(health_from_test_pct(row, 20, a, h, 10) == doctest::Approx(100));
    }
  }
}
