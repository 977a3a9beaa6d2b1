// What the plan says about its battery in sentences.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/outing/findings_battery.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

Outing base(test::Sets more) {
  return test::also(test::outing_of({{L::radio_full_power_w, 100.0},
                                     {L::radio_transmit_power_w, 100.0},
                                     {L::radio_transmit_share_pct, 40.0},
                                     {L::radio_mode, "ssb"},
                                     {L::battery_chemistry, "lifepo4"},
                                     {L::battery_capacity_ah, 20.0}}),
                    more);
}

std::vector<Finding> findings(test::Sets more) {
  const Plan plan = resolve(base(more).set);
  return battery_findings(plan, evaluate(plan));
}

const Finding* saying(const std::vector<Finding>& found, std::string_view part) {
  const auto at = std::find_if(found.begin(), found.end(),
                               [&](const Finding& one) { return one.sentence.find(part) != std::string::npos; });
  return at == found.end() ? nullptr : &*at;
}

}  // namespace

// 4.032 V a cell at rest (cell maker's curve in a public battery header): 16.1 V for four, above 13.8 V + 15 %.
TEST_CASE("findings: a full pack of four lithium-ion cells stands above what sets take, others do not") {
  const auto four = findings({{L::battery_chemistry, "li_ion_4s"}});
  const Finding* warns = saying(four, "Full, this pack rests at 16.1 V");
  REQUIRE(warns);
  CHECK(warns->state == State::tight);
  CHECK(warns->sentence.find("15.9 V") != std::string::npos);
  for (const char* other : {"lifepo4", "sealed_lead", "li_ion_3s", "nimh"}) {
    CAPTURE(other);
    CHECK_FALSE(saying(findings({{L::battery_chemistry, other}}), "Full, this pack"));
  }
  // some of it taken out: 7 % on that curve brings it below
  CHECK_FALSE(saying(findings({{L::battery_chemistry, "li_ion_4s"}, {L::battery_used_ah, 2.0}}), "Full, this"));
}

// A 3-cell pack falls below 11.7 V with 86 % in it on a light load (worked example): a hard one gives up at once.
TEST_CASE("findings: charge that the set's minimum supply leaves in the pack is told, with the share") {
  const auto three = findings({{L::battery_chemistry, "li_ion_3s"}, {L::radio_transmit_power_w, 5.0}});
  const Finding* told = saying(three, "The set gives up at 11.7 V");
  REQUIRE(told);
  CHECK(told->state == State::tight);
  CHECK(told->sentence.find("% still in the pack") != std::string::npos);
  CHECK_FALSE(saying(findings({{L::radio_transmit_power_w, 5.0}}), "The set gives up"));
}

TEST_CASE("findings: what the reserve is worth, and the price of a lead block's") {
  const auto lithium = findings({{L::battery_reserve_pct, 20.0}, {L::radio_transmit_power_w, 5.0}});
  const Finding* worth = saying(lithium, "The reserve kept back is worth");
  REQUIRE(worth);
  CHECK(worth->state == State::none);
  CHECK(worth->sentence.find("life") == std::string::npos);
  const auto block = findings({{L::battery_chemistry, "sealed_lead"},
                               {L::battery_capacity_ah, 40.0},
                               {L::radio_full_power_w, 10.0},
                               {L::radio_transmit_power_w, 5.0},
                               {L::battery_reserve_pct, 50.0}});
  REQUIRE(saying(block, "The reserve kept back is worth"));
  CHECK(saying(block, "at the price of the battery's life"));
  CHECK_FALSE(saying(findings({{L::battery_reserve_pct, 0.0}}), "The reserve kept back"));
}

// No charging at or below 0 C: makers' sheets in the catalogue. Measured tubular blocks: 29 to 47 % at 0.28 A per
// Ah.
TEST_CASE("findings: cold cells and blocks built for slow loads") {
  CHECK(saying(findings({{L::battery_temperature_c, -5.0}}), "must not be charged: warm it above 0"));
  CHECK_FALSE(saying(findings({{L::battery_temperature_c, 15.0}}), "must not be charged"));
  CHECK(saying(findings({{L::battery_chemistry, "sealed_lead"}}), "tubular plates"));
  CHECK_FALSE(saying(
      findings(
          {{L::battery_chemistry, "sealed_lead"}, {L::radio_full_power_w, 10.0}, {L::radio_transmit_power_w, 5.0}}),
      "tubular plates"));
  CHECK_FALSE(saying(findings({}), "tubular plates"));
}

TEST_CASE("findings: without a pack or a radio the battery says nothing") {
  const Plan empty = resolve(Values(lever_count()));
  CHECK(battery_findings(empty, evaluate(empty)).empty());
  const Plan no_radio =
      resolve(test::outing_of({{L::battery_chemistry, "lifepo4"}, {L::battery_capacity_ah, 9.0}}).set);
  CHECK(battery_findings(no_radio, evaluate(no_radio)).empty());
}
