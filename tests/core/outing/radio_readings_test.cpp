// What a person's own meter says of the set: used where it can be true, named and left alone where it cannot.
#include "core/outing/radio_readings.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "core/outing/outlook.h"
#include "tests/core/outing/outings.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/power_tables.h"

using namespace gs;

namespace {

Outing read_at(std::initializer_list<double> pairs) {
  constexpr L kLevers[] = {L::radio_read_one_w, L::radio_read_one_a,   L::radio_read_two_w,
                           L::radio_read_two_a, L::radio_read_three_w, L::radio_read_three_a};
  Outing outing = test::also(test::whole_outing(), {{L::radio_full_power_w, 100.0}, {L::radio_accessories_a, 0.0}});
  for (const L id : {L::radio_full_power_current_a, L::radio_keyed_idle_current_a})
    outing.set[std::size_t(id)] = Value{};
  std::size_t at = 0;
  for (const double value : pairs) outing.set[std::size_t(kLevers[at++])] = value;
  return outing;
}

double key_down_a(const Outing& outing, double power_w) {
  return evaluate(resolve(with(outing, L::radio_transmit_power_w, power_w)))[R::radio_key_down_current_a].value;
}

}  // namespace

// Three 100 W sets on an independent owner's bench (power_tables.h): 5 and 100 W are given, 20 and 50 W foretold.
TEST_CASE("readings of a set: two of them foretell the others, three sets on a bench") {
  test::Closeness off("key-down current from readings at 5 and 100 W, relative", "");
  for (const test::BenchSet& set : test::kBench) {
    const Outing outing = read_at({5, set.current_a[0], 100, set.current_a[3]});
    for (int i = 0; i < 4; ++i)
      CHECK(off.within(key_down_a(outing, test::kBenchW[i]) / set.current_a[i], 1, 0.05));
    const Outing three = read_at({5, set.current_a[0], 100, set.current_a[3], 20, set.current_a[1]});
    for (int i = 0; i < 4; ++i) CHECK(std::abs(key_down_a(three, test::kBenchW[i]) / set.current_a[i] - 1) < 0.05);
    // in whatever order they were read
    CHECK(key_down_a(read_at({100, set.current_a[3], 5, set.current_a[0]}), 20) ==
          doctest::Approx(key_down_a(outing, 20)));
  }
}

TEST_CASE("readings of a set: they narrow the range, and what was typed still wins") {
  const test::BenchSet& set = test::kBench[1];
  const Figure usual = evaluate(resolve(read_at({})))[R::power_average_current_a],
               own = evaluate(
                   resolve(read_at({5, set.current_a[0], 100, set.current_a[3]})))[R::power_average_current_a];
  CHECK(own.high - own.low < usual.high - usual.low);
  const Outing typed =
      with(read_at({5, set.current_a[0], 100, set.current_a[3]}), L::radio_full_power_current_a, 15.0);
  CHECK(resolve(typed)[L::radio_full_power_current_a] == 15);
}

TEST_CASE("readings of a set: what cannot be true is named and not used") {
  const Outing none = read_at({});
  const double usual_a = key_down_a(none, 40);
  for (const Outing& impossible : {read_at({5, 9, 100, 8}), read_at({50, 2, 100, 18}), read_at({40, 9, 40, 8})}) {
    CHECK_FALSE(currents_from_readings(resolve(impossible)).sound);
    CHECK(key_down_a(impossible, 40) == usual_a);
    bool named = false;
    for (const Clash& clash : clashes(resolve(impossible), {}))
      named = named || clash.sentence.find("cannot all be true") != std::string::npos;
    CHECK(named);
  }
  // one alone says nothing of the law, and half a reading is none
  CHECK(key_down_a(read_at({5, 7}), 40) == usual_a);
  CHECK(key_down_a(read_at({5, 7, 100}), 40) == usual_a);
  CHECK(clashes(resolve(read_at({5, 7})), {}).empty());
}
