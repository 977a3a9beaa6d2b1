// Turned round: the answer reaches its goal, a step short of it does not, and where none does it says so.
#include "core/outing/solve.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <string>

#include "core/outing/checks.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

Outing on_battery() {
  return test::also(test::whole_outing(), {{L::battery_capacity_ah, 20.0}, {L::radio_transmit_power_w, 40.0}});
}

}  // namespace

TEST_CASE("solve: the answer just reaches its goal, the next printed value short of it does not") {
  const Outing outing = on_battery();
  const double now_h = evaluate(resolve(outing))[R::power_runtime_h].value;
  struct Row {
    L lever;
    double toward;  // the way in which runtime falls
  };
  for (const double more : {0.8, 1.1, 1.6}) {
    const Goal goal{R::power_runtime_h, now_h * more};
    for (const Row& row : {Row{L::battery_capacity_ah, -1},
                           {L::radio_transmit_power_w, 1},
                           {L::radio_transmit_share_pct, 1},
                           {L::spare_capacity_ah, -1}}) {
      const Answer answer = solve_for(outing, row.lever, goal);
      CAPTURE(std::string(lever(row.lever).key));
      CAPTURE(more);
      if (!answer.trouble.empty()) {
        MESSAGE(answer.trouble);
        continue;
      }
      CHECK(reaches(answer.outlook, goal));
      const double value = std::get<double>(answer.value);
      CHECK(refusal(row.lever, value).empty());
      if (value == lever(row.lever).least) continue;
      const double short_of = value + row.toward * std::pow(10.0, -lever(row.lever).digits);
      CHECK_FALSE(reaches(evaluate(resolve(with(outing, row.lever, short_of))), goal));
    }
  }
}

// Charge counting can be turned round by hand: t hours at I need I t over what the reserve leaves.
TEST_CASE("solve: a battery's size by hand") {
  const Outing outing = test::also(test::whole_outing(), {{L::battery_temperature_c, 25.0},
                                                          {L::battery_reserve_pct, 20.0},
                                                          {L::battery_max_current_a, 500.0},
                                                          {L::battery_cut_off_v, 4.0},
                                                          {L::radio_minimum_supply_v, 6.0},
                                                          {L::radio_receive_current_a, 0.4},
                                                          {L::radio_full_power_current_a, 0.4},
                                                          {L::radio_keyed_idle_current_a, 0.4}});
  // 7 h at 0.4 A over 0.8 is 3.5 Ah; the rate curve is flat below 0.2 A per Ah
  const Answer answer = solve_for(outing, L::battery_capacity_ah, {R::power_runtime_h, 7});
  REQUIRE(answer.trouble.empty());
  CHECK(std::get<double>(answer.value) == doctest::Approx(3.5));
  CHECK(answer.said == "3.5 Ah");
}

TEST_CASE("solve: a list is tried in its order: the thinnest wire that keeps a supply") {
  const Outing outing = test::also(test::whole_outing(), {{L::lead_length_m, 4.0}, {L::lead_wire, "awg10"}});
  const Goal goal{R::lead_drop_v, 0.8};
  const Answer answer = solve_for(outing, L::lead_wire, goal);
  REQUIRE(answer.trouble.empty());
  const std::string key = std::get<std::string>(answer.value);
  CHECK(reaches(answer.outlook, goal));
  // the one before it in the list does not
  const auto options = lever(L::lead_wire).options();
  for (std::size_t i = 1; i < options.size(); ++i)
    if (options[i].key == key)
      CHECK_FALSE(reaches(evaluate(resolve(with(outing, L::lead_wire, std::string(options[i - 1].key)))), goal));
}

TEST_CASE("solve: one step past the answer gives more, and the plain value after it") {
  const Outing outing = on_battery();
  const Outlook now = evaluate(resolve(outing));
  const Goal goal{R::power_runtime_h, 1.5 * now[R::power_runtime_h].value};
  int found = 0;
  for (const L id :
       {L::battery_capacity_ah, L::radio_transmit_power_w, L::spare_capacity_ah, L::radio_transmit_share_pct}) {
    const Answer answer = solve_for(outing, id, goal);
    if (!answer.trouble.empty() || answer.beyond.said.empty()) continue;
    ++found;
    CAPTURE(std::string(lever(id).key));
    CHECK(answer.beyond.outlook[goal.reading].value > answer.outlook[goal.reading].value);
    const ReadValue read = read_value(lever(id), answer.beyond.said);
    REQUIRE(read.trouble.empty());
    const double step = std::abs(std::get<double>(read.value) - std::get<double>(answer.value));
    CHECK(step > 0);
    CHECK(step <= lever(id).step + 1e-9);
    CHECK(evaluate(resolve(with(outing, id, read.value)))[goal.reading].value ==
          doctest::Approx(answer.beyond.outlook[goal.reading].value));
  }
  CHECK(found >= 2);
}

// By hand over the whole catalogue: of all cables that keep the loss, none weighs less. And a roll taken for
// another one leaves the antenna as it is: the SWR that was read at the radio moves to its far end.
TEST_CASE("solve: the lightest cable under a loss") {
  const Outing outing = test::also(
      test::whole_outing(),
      {{L::feedline_length_m, 20.0}, {L::feedline_measured_swr, 2.0}, {L::feedline_measured_at, "at_radio"}});
  const Goal goal{R::feedline_total_loss_db, 1.5};
  const Answer answer = solve_for(outing, L::feedline_cable, goal);
  REQUIRE(answer.trouble.empty());
  CHECK(answer.sets.size() == 3);
  CHECK(reaches(answer.outlook, goal));
  CHECK(answer.beyond.outlook[R::feedline_weight_g].value >= answer.outlook[R::feedline_weight_g].value);
  int lighter = 0, heavier = 0;
  for (const Option& option : lever(L::feedline_cable).options()) {
    if (option.retired) continue;
    Outing other = outing;
    for (const auto& [id, value] : answer.sets) other = with(other, id, value);
    const Outlook then = evaluate(resolve(with(other, L::feedline_cable, std::string(option.key))));
    const double weight_g = then[R::feedline_weight_g].value;
    if (!std::isfinite(weight_g)) continue;
    if (weight_g < answer.outlook[R::feedline_weight_g].value) {
      CHECK_FALSE(reaches(then, goal));
      ++lighter;
    } else if (reaches(then, goal)) {
      ++heavier;
    }
  }
  CHECK(lighter > 0);
  CHECK(heavier > 0);
  std::printf("  %s: %.0f g; %d lighter ones lose more, %d heavier ones would do\n", answer.said.c_str(),
              answer.outlook[R::feedline_weight_g].value, lighter, heavier);
}

TEST_CASE("solve: what cannot be says why") {
  const Outing outing = on_battery();
  const Answer lead = solve_for(outing, L::lead_length_m, {R::power_runtime_h, 99});
  CHECK(lead.trouble.starts_with("not even 0 m does: "));
  CHECK(lead.outlook[R::power_runtime_h].value == evaluate(resolve(outing))[R::power_runtime_h].value);
  CHECK_FALSE(solve_for(outing, L::site_locator, {R::power_runtime_h, 1}).trouble.empty());
  Outing unknown = outing;
  unknown.set[std::size_t(L::battery_capacity_ah)] = Value{};
  CHECK(solve_for(unknown, L::battery_capacity_ah, {R::power_runtime_h, 1}).trouble == "needs battery capacity");
  CHECK(solve_for(unknown, L::radio_transmit_power_w, {R::power_runtime_h, 1}).trouble == "needs battery capacity");
  CHECK_FALSE(solve_for(outing, L::lead_wire, {R::lead_drop_v, 1e-6}).trouble.empty());
}

TEST_CASE("solve: who pays, and which links are touched") {
  const Outing outing = on_battery();
  const Outlook now = evaluate(resolve(outing));
  const Answer larger =
      solve_for(outing, L::battery_capacity_ah, {R::power_runtime_h, 1.5 * now[R::power_runtime_h].value});
  REQUIRE(larger.trouble.empty());
  CHECK(touched(now, larger.outlook, Link::battery) == Touch::better);
  CHECK(touched(now, larger.outlook, Link::antenna) == Touch::same);
  CHECK(touched(now, now, Link::battery) == Touch::same);
}
