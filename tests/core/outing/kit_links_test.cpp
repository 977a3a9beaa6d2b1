// What a kit list answers of the chain, what of it is ticked, and what later versions may say of an item.
#include <doctest/doctest.h>

#include <algorithm>

#include "core/kit/need.h"
#include "core/outing/archive.h"
#include "core/outing/kit_start.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

kit::Item battery(double capacity_ah, int backups = 0) {
  kit::Item item{"Battery", "power", 900, backups, 0.98, true};
  item.lever = "battery.capacity_ah";
  item.amount = capacity_ah;
  return item;
}

Outing without_battery(std::vector<kit::Item> items) {
  Outing outing = test::also(
      test::whole_outing(),
      {{L::battery_capacity_ah, Value{}}, {L::radio_transmit_power_w, 10.0}, {L::battery_max_current_a, 40.0}});
  outing.kit = std::move(items);
  return outing;
}

double runtime_h(const Outing& outing) { return evaluate(resolve(outing))[R::power_runtime_h].value; }

}  // namespace

TEST_CASE("kit and chain: the first battery feeds the set, the others are spares, and what is typed wins") {
  CHECK_FALSE(resolve(without_battery({})).has(L::battery_capacity_ah));
  const Plan one = resolve(without_battery({battery(12)}));
  CHECK(one[L::battery_capacity_ah] == 12);
  CHECK(one.from[std::size_t(L::battery_capacity_ah)] == From::usual);
  CHECK(one[L::spare_capacity_ah] == 0);
  const Plan three = resolve(without_battery({battery(12), battery(6, 1)}));
  CHECK(three[L::battery_capacity_ah] == 12);
  CHECK(three[L::spare_capacity_ah] == 12);
  // taking the spare along is what the same spare typed in is
  Outing typed = test::also(test::whole_outing(), {{L::battery_capacity_ah, 12.0},
                                                   {L::spare_capacity_ah, 6.0},
                                                   {L::radio_transmit_power_w, 10.0},
                                                   {L::battery_max_current_a, 40.0}});
  const double alone_h = runtime_h(without_battery({battery(12)}));
  const double both_h = runtime_h(without_battery({battery(12), battery(6)}));
  MESSAGE("12 Ah: " << alone_h << " h, with a spare of 6 Ah: " << both_h << " h");
  CHECK(both_h > alone_h);
  CHECK(both_h == runtime_h(typed));
  typed.kit = {battery(3, 5)};
  CHECK(resolve(typed)[L::battery_capacity_ah] == 12);
  CHECK(resolve(typed)[L::spare_capacity_ah] == 6);
}

TEST_CASE("kit and chain: amounts that no lever takes are passed over") {
  kit::Item odd = battery(1e5);
  CHECK_FALSE(resolve(without_battery({odd})).has(L::battery_capacity_ah));
  odd.lever = "no.such";
  CHECK_FALSE(resolve(without_battery({odd})).has(L::battery_capacity_ah));
  odd.lever = "feedline.length_m";
  odd.amount = 8;
  Outing outing = without_battery({odd});
  outing = test::also(std::move(outing), {{L::feedline_length_m, Value{}}});
  CHECK(resolve(outing)[L::feedline_length_m] == 8);
}

TEST_CASE("kit and chain: set-up by the list is the clock's usual set-up") {
  Outing outing = test::also(test::whole_outing(), {{L::clock_set_up_min, Value{}}});
  const double by_kind = resolve(outing)[L::clock_set_up_min];
  outing.kit = {battery(12)};
  CHECK(resolve(outing)[L::clock_set_up_min] == by_kind);
  outing.kit[0].set_up_min = 7;
  outing.kit.push_back({"Mast", "support", 900, 1, 0.98, true});
  outing.kit[1].set_up_min = 12.5;
  CHECK(resolve(outing)[L::clock_set_up_min] == 19.5);
  CHECK(evaluate(resolve(outing))[R::kit_set_up_min].value == 19.5);
}

TEST_CASE("kit: where no item says its minutes, none are told") {
  Outing outing;
  outing.kit = {{.name = "Set", .function = "radio"}};
  const Plan silent = resolve(outing);
  const Figure unsaid = evaluate(silent)[R::kit_set_up_min];
  CHECK(unsaid.state == State::unknown);
  CHECK(reason(silent, R::kit_set_up_min, unsaid) == "no item of the kit says its minutes");
  outing.kit[0].set_up_min = 3;
  CHECK(evaluate(resolve(outing))[R::kit_set_up_min].value == 3);
}

TEST_CASE("kit: ticks and litres are summed, and read back from a file with what is not known") {
  Outing outing = test::whole_outing();
  outing.kit = {battery(12, 1), {"Mast", "support", 900, 0, 0.98, true}};
  outing.kit[0].volume_l = 1.25;
  outing.kit[0].charge = true;
  outing.kit[1].packed = outing.kit[1].stowed = true;
  outing.kit[1].cause = "one wet bag";
  outing.kit[1].kept = ", \"colour\": [1, \"red\"]";
  const Plan plan = resolve(outing);
  const Outlook out = evaluate(plan);
  CHECK(out[R::kit_volume_l].value == 2.5);
  CHECK(out[R::kit_to_pack].value == 1);
  CHECK(plan.kit.to_charge == 1);
  const LoadedOuting loaded = read_outing(write_outing(outing));
  CHECK(loaded.outing.kit[0] == outing.kit[0]);
  CHECK(loaded.outing.kit[1].cause == "one wet bag");
  CHECK(loaded.outing.kit[1].kept.find("colour") != std::string::npos);
  CHECK(read_outing(write_outing(loaded.outing)).outing == loaded.outing);
}

TEST_CASE(
    "kit: each of the three styles serves every vital need and most wise ones, and the backpack is lightest") {
  const Plan plan = resolve(Outing{});
  double weight_g[3] = {};
  const kit::Style styles[] = {kit::Style::car, kit::Style::carry, kit::Style::backpack};
  for (int i = 0; i < 3; ++i) {
    const std::vector<kit::Item> items = usual_kit(plan, styles[i]);
    for (const kit::Need* need : kit::unserved(items)) {
      CAPTURE(std::string(need->key));
      CHECK(need->grade != kit::Need::Grade::vital);
    }
    for (const char* key : {"water", "seat", "found", "safety", "marking", "listening"}) {
      CAPTURE(std::string(key));
      CHECK(std::any_of(items.begin(), items.end(), [key](const kit::Item& item) { return item.function == key; }));
    }
    weight_g[i] = kit::holds(items).weight_g;
  }
  MESSAGE("at the car " << weight_g[0] / 1000 << " kg, short carry " << weight_g[1] / 1000 << " kg, backpack "
                        << weight_g[2] / 1000 << " kg");
  CHECK(weight_g[0] > weight_g[1]);
  CHECK(weight_g[1] > weight_g[2]);
}

// One battery: a single point. Two: not.
TEST_CASE("kit: one battery is a single point, two are not") {
  Outing outing = without_battery({battery(12)});
  CHECK(evaluate(resolve(outing))[R::kit_single_points].value == 1);
  outing.kit.push_back(battery(6));
  CHECK(evaluate(resolve(outing))[R::kit_single_points].value == 0);
  outing.kit = {battery(12, 1)};
  CHECK(evaluate(resolve(outing))[R::kit_single_points].value == 0);
}
