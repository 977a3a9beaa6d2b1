// The person's own things: what goes with them, what stays with the outing, and their file.
#include "core/outing/own_things.h"

#include <doctest/doctest.h>

#include "core/outing/archive.h"
#include "core/outing/plan.h"

using namespace gs;

namespace {

Outing sample() {
  Outing outing;
  outing = with(std::move(outing), L::battery_chemistry,
                Value{std::string(lever(L::battery_chemistry).options()[0].key)});
  outing = with(std::move(outing), L::battery_capacity_ah, 12.5);
  outing = with(std::move(outing), L::battery_temperature_c, -3.0);
  outing = with(std::move(outing), L::feedline_length_m, 21.0);
  outing = with(std::move(outing), L::radio_full_power_w, 100.0);
  outing = with(std::move(outing), L::radio_transmit_power_w, 40.0);
  return outing;
}

}  // namespace

TEST_CASE("a thing takes what is its own and leaves what is the outing's") {
  const OwnThing battery = take_own(OwnGroup::battery, "  the old one\n", sample());
  CHECK(battery.set[std::size_t(L::battery_capacity_ah)] == Value{12.5});
  CHECK(battery.set[std::size_t(L::battery_temperature_c)] == Value{});  // the park is cold, not the battery
  CHECK(battery.set[std::size_t(L::feedline_length_m)] == Value{});
  CHECK(battery.name == "  the old one");
  CHECK(take_own(OwnGroup::battery, "", sample()).name.find("12.5 Ah") != std::string::npos);

  Outing other;
  other = with(std::move(other), L::battery_temperature_c, 25.0);
  other = with(std::move(other), L::battery_health_pct, 80.0);
  other = with(std::move(other), L::feedline_length_m, 5.0);
  const Outing used = with_own(other, battery);
  CHECK(used.set[std::size_t(L::battery_capacity_ah)] == Value{12.5});
  CHECK(used.set[std::size_t(L::battery_health_pct)] == Value{});  // the other battery's health goes with it
  CHECK(used.set[std::size_t(L::battery_temperature_c)] == Value{25.0});
  CHECK(used.set[std::size_t(L::feedline_length_m)] == Value{5.0});
  CHECK(resolve(used.set).from[std::size_t(L::battery_capacity_ah)] == From::yours);

  CHECK(take_own(OwnGroup::radio, "", sample()).set[std::size_t(L::radio_transmit_power_w)] == Value{});
  CHECK(has_own(OwnGroup::cable, sample()));
  CHECK_FALSE(has_own(OwnGroup::antenna, sample()));
}

TEST_CASE("every lever belongs to one thing at most, and taking and using again changes nothing") {
  for (std::size_t i = 0; i < std::size_t(L::count); ++i) {
    int groups = 0;
    for (int g = 0; g < int(OwnGroup::count); ++g) groups += belongs_to(OwnGroup(g), L(i));
    CHECK_MESSAGE(groups <= 1, lever(L(i)).key);
  }
  for (int g = 0; g < int(OwnGroup::count); ++g)
    CHECK(with_own(sample(), take_own(OwnGroup(g), "x", sample())) == sample());
}

TEST_CASE("things come back from their file as they were") {
  std::vector<OwnThing> things;
  for (int g = 0; g < int(OwnGroup::count); ++g)
    things.push_back(take_own(OwnGroup(g), "Thing \"" + std::to_string(g) + "\" \u2126", sample()));
  const LoadedThings loaded = read_things(write_things(things));
  CHECK(loaded.refusal.empty());
  CHECK(loaded.notes.empty());
  CHECK(loaded.things == things);
  CHECK(write_things(loaded.things) == write_things(things));
  CHECK(read_things(write_things({})).things.empty());
}

TEST_CASE("a doubtful file of things: what can be read is read, the rest is said, levers of later versions stay") {
  const LoadedThings loaded = read_things(
      R"({"groundsheet": 1, "kind": "things", "things": [
        {"group": "battery", "name": "Good", "levers": {"battery.capacity_ah": "7 Ah", "battery.cells": 4, "feedline.length_m": 3}},
        {"group": "kite", "name": "Unknown", "levers": {}},
        {"group": "cable", "levers": {}},
        {"group": "cable", "name": "Too long", "levers": {"feedline.length_m": 1e9}},
        17]})");
  CHECK(loaded.refusal.empty());
  REQUIRE(loaded.things.size() == 2);
  CHECK(loaded.things[0].set[std::size_t(L::battery_capacity_ah)] == Value{7.0});
  CHECK(loaded.things[0].set[std::size_t(L::feedline_length_m)] == Value{});
  CHECK(write_things(loaded.things).find("battery.cells") != std::string::npos);
  CHECK(loaded.things[1].set[std::size_t(L::feedline_length_m)] == Value{});
  CHECK(loaded.notes.size() >= 4);
  CHECK(read_things("{\"groundsheet\": 2, \"kind\": \"things\", \"things\": []}").newer);
  CHECK_FALSE(read_things("{\"groundsheet\": 1, \"kind\": \"outing\"}").refusal.empty());
  CHECK_FALSE(read_things("[]").refusal.empty());
}
