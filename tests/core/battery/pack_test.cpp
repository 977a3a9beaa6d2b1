// Laws that every pack must obey, tried on generated packs; and packs at the edge.
#include "core/battery/pack.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <limits>
#include <random>
#include <string>

#include "core/battery/charge.h"
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

}  // namespace

TEST_CASE("chemistry: every row is complete, and its curves go one way") {
  CHECK(chemistries().size() >= 5);
  for (const Chemistry& row : chemistries()) {
    CAPTURE(std::string(row.key));
    CHECK(find_chemistry(row.key) == &row);
    for (const std::string_view source :
         {row.pack_source, row.reserve_source, row.resistance_source, row.discharge_source, row.charge_source})
      CHECK_FALSE(source.empty());
    CHECK(row.resting_v.front().x == 0);
    CHECK(row.resting_v.back().x == 100);
    CHECK(at(row.capacity_at_c, 25) == doctest::Approx(1));
    CHECK(at(row.resistance_at_c, 25) == doctest::Approx(1));
    CHECK(at(row.capacity_at_rate, 0) == 1);
    CHECK(row.empty_v < row.nominal_v);
    CHECK(resting_v(row, 100) > row.nominal_v);
    for (double x = -60; x < 120; x += 0.7) {
      CHECK(at(row.resting_v, x + 0.7) >= at(row.resting_v, x));
      CHECK(at(row.capacity_at_c, x + 0.7) >= at(row.capacity_at_c, x));
      CHECK(at(row.resistance_at_c, x + 0.7) <= at(row.resistance_at_c, x));
    }
  }
  CHECK(find_chemistry("") == nullptr);
}

TEST_CASE("curve: points are met, ends stay flat, where() finds back") {
  for (const Chemistry& row : chemistries()) {
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
  for (int i = 0; i < kTrials; ++i) {
    const Pack pack = draw.pack();
    const double a = draw.log_between(0.01, 200), b = a * draw.between(1.0001, 3);
    CHECK(capacity_at_load_ah(pack, b) <= capacity_at_load_ah(pack, a));
    CHECK(runtime_h(pack, b) < runtime_h(pack, a));
    CHECK(left_pct(pack, b, 1) <= left_pct(pack, a, 1));
  }
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
    const Draw load{a, draw.between(0, a)};
    for (const Pack& worse : {colder, older, used}) CHECK(runtime_h(worse, a) <= runtime_h(pack, a));
    for (const Pack& worse : {colder, older}) CHECK(sag_v(worse, load) >= sag_v(pack, load));
  }
}

TEST_CASE("pack property: at the end of its runtime the reserve is left") {
  Draws draw(kSeed + 2);
  Closeness off("left at the end of the runtime against the reserve", "points");
  for (int i = 0; i < kTrials; ++i) {
    Pack pack = draw.pack();
    const double a = draw.log_between(0.05, 50);
    pack.used_ah = draw.between(0, 0.9) * usable_ah(pack, a);
    CHECK(off.within(left_pct(pack, a, runtime_h(pack, a)), pack.reserve_pct, 1e-9));
  }
}

TEST_CASE("pack property: the label that is needed runs just that long, and a smaller one does not") {
  Draws draw(kSeed + 3);
  Closeness off("runtime of the label needed, relative", "");
  for (int i = 0; i < kTrials; ++i) {
    Pack pack = draw.pack();
    const double a = draw.log_between(0.05, 50), h = draw.log_between(0.1, 100);
    const double label_ah = needed_capacity_ah(pack, a, h);
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
    const Pack pack = draw.pack();
    const double average_a = draw.log_between(0.05, 10), peak_a = average_a * draw.between(1, 5);
    const Draw load{peak_a, draw.between(average_a, peak_a)};
    const double floor_v = pack.chemistry->nominal_v * draw.between(0.85, 1.02);
    const double h = hours_to_resting_v(pack, average_a, floor_v + sag_v(pack, load));
    CHECK(std::isfinite(h));
    CHECK(h >= 0);
    const double start_v = loaded_v(pack, 100, load);
    if (h == 0) {
      CHECK(start_v <= floor_v + 1e-9);
      continue;
    }
    const double pct = charge_left_pct(pack, average_a * h);
    if (pct <= 1e-9) continue;  // ran flat above the floor
    ++reached;
    CHECK(off.within(loaded_v(pack, pct, load), floor_v, 1e-9));
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
  CHECK(left_pct(pack, 5, 1e9) == 0);
  CHECK(left_pct(pack, 0, 5) == 100);
  CHECK(charge_left_pct(pack, 1e9) == 0);
  CHECK(needed_capacity_ah(pack, 0, 5) == 0);
  CHECK(needed_capacity_ah(pack, 5, 0) == 0);
  CHECK(loaded_v(pack, 50, {1e6, 1e6}) == 0);
  CHECK(loaded_v(pack, 50, {0, 0}) == resting_v(kind, 50));
  CHECK(hours_to_resting_v(pack, 1, 99) == 0);
  CHECK(std::isinf(hours_to_resting_v(pack, 0, 12)));
  CHECK(usual_max_current_a(kind, 10) == 10);
}

TEST_CASE("pack: a spare goes on where the first ends") {
  const Chemistry& kind = *find_chemistry("lifepo4");
  const Pack pack{.chemistry = &kind, .capacity_ah = 10, .reserve_pct = 5, .used_ah = 4};
  Pack second = pack;
  second.capacity_ah = 6;
  second.used_ah = 0;
  CHECK(runtime_with_spare_h(pack, 0, 1) == runtime_h(pack, 1));
  CHECK(runtime_with_spare_h(pack, 6, 1) == doctest::Approx(runtime_h(pack, 1) + runtime_h(second, 1)));
  CHECK(std::isinf(runtime_with_spare_h(pack, 6, 0)));
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
