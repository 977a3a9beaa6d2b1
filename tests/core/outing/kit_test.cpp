// The kit in the outing: to and from files, its readings, its reasons, the list to start from.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <set>
#include <string>

#include "core/kit/catalogue.h"
#include "core/outing/archive.h"
#include "core/outing/kit_start.h"
#include "core/outing/trial.h"
#include "core/outing/why.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

LoadedOuting file_with_kit(const std::string& kit) {
  return read_outing(R"({"groundsheet": 1, "kind": "outing", "kit": )" + kit + "}");
}

bool noted(const LoadedOuting& loaded, const std::string& a, const std::string& b) {
  return std::any_of(loaded.notes.begin(), loaded.notes.end(), [&](const std::string& note) {
    return note.find(a) != std::string::npos && note.find(b) != std::string::npos;
  });
}

Outing carrying(std::vector<kit::Item> items) {
  Outing outing = test::whole_outing();
  outing.kit = std::move(items);
  return outing;
}

}  // namespace

TEST_CASE("kit archive: every member is read, written and read back the same; what is absent is usual") {
  const LoadedOuting loaded = file_with_kit(
      R"([{"name": "Wire \"A\"", "function": "antenna", "weight_g": 512.5, "backups": 2, "works_pct": 97.25, "vital": false},
          {"name": "Set"}])");
  REQUIRE(loaded.refusal.empty());
  CHECK(loaded.notes.empty());
  CHECK(loaded.outing.kept.empty());
  REQUIRE(loaded.outing.kit.size() == 2);
  CHECK(loaded.outing.kit[0] == kit::Item{"Wire \"A\"", "antenna", 512.5, 2, 0.9725, false});
  CHECK(loaded.outing.kit[1] == kit::Item{"Set", "Set", 0, 0, 1, true});
  const std::string written = write_outing(loaded.outing);
  CHECK(written.find(R"("kit": [
    {"name": "Wire \"A\"", "function": "antenna", "weight_g": 512.5, "backups": 2, "works_pct": 97.25, "vital": false},
    {"name": "Set", "function": "Set", "weight_g": 0, "backups": 0, "works_pct": 100, "vital": true}
  ])") != std::string::npos);
  const LoadedOuting again = read_outing(written);
  CHECK(again.outing == loaded.outing);
  CHECK(again.notes.empty());
  CHECK(write_outing(Outing{}).find("kit") == std::string::npos);
}

TEST_CASE("kit archive: 500 drawn lists and the whole catalogue come back to the same bits") {
  constexpr unsigned kSeed = 20261125;
  std::mt19937_64 bits(kSeed);
  const auto below = [&bits](std::size_t n) { return std::size_t(test::unit_of(bits) * double(n)); };
  const std::vector<std::string> names = {"Rope", "Spare \"B\"", "Grün", "\u20AC \\ tab", "Set, 5 W"};
  std::size_t compared = 0;
  for (int i = 0; i < 500; ++i) {
    Outing outing;
    for (std::size_t n = below(kMostKitItems + 1); n > 0; --n)
      outing.kit.push_back({names[below(names.size())], names[below(names.size())],
                            test::unit_of(bits) * kMostItemGrams, int(below(kMostBackups + 1)),
                            double(below(1000001)) / 1e6, below(2) == 0});
    const LoadedOuting loaded = read_outing(write_outing(outing));
    CHECK(loaded.notes.empty());
    CHECK(loaded.outing == outing);
    compared += outing.kit.size();
  }
  Outing all;
  for (const kit::UsualItem& row : kit::usual_items()) all.kit.push_back(as_item(row));
  CHECK(read_outing(write_outing(all)).outing == all);
  MESSAGE("seed " << kSeed << ": " << compared << " items compared, and " << all.kit.size() << " of the catalogue");
}

TEST_CASE("kit archive: what cannot be is left out with a reason, the rest stays") {
  struct Bad {
    const char* item;
    const char* says;
  };
  for (const Bad& bad :
       {Bad{R"({"function": "power"})", "name"}, Bad{R"({"name": ""})", "name"}, Bad{R"({"name": 5})", "name"},
        Bad{R"({"name": "A", "weight_g": -1})", "weight_g"}, Bad{R"({"name": "A", "weight_g": 1e6})", "weight_g"},
        Bad{R"({"name": "A", "weight_g": "heavy"})", "weight_g"},
        Bad{R"({"name": "A", "backups": 1.5})", "backups"}, Bad{R"({"name": "A", "backups": 100})", "backups"},
        Bad{R"({"name": "A", "works_pct": 100.1})", "works_pct"},
        Bad{R"({"name": "A", "works_pct": 1e999})", "works_pct"}, Bad{R"({"name": "A", "vital": 1})", "vital"},
        Bad{"7", "object"}, Bad{"[[]]", "object"}}) {
    INFO(bad.item);
    const LoadedOuting loaded = file_with_kit(std::string("[{\"name\": \"Good\"}, ") + bad.item + "]");
    REQUIRE(loaded.refusal.empty());
    REQUIRE(loaded.outing.kit.size() == 1);
    CHECK(loaded.outing.kit[0].name == "Good");
    CHECK(noted(loaded, "kit item 2", bad.says));
    CHECK(read_outing(write_outing(loaded.outing)).outing == loaded.outing);
  }
  CHECK(noted(file_with_kit("{}"), "kit", "list"));
  const LoadedOuting strange = file_with_kit(R"([{"name": "A", "colour": "red"}])");
  CHECK(strange.outing.kit.size() == 1);
  CHECK(noted(strange, "colour", "does not know"));

  const LoadedOuting long_name = file_with_kit("[{\"name\": \"" + std::string(500, 'x') + "\\u0007\"}]");
  REQUIRE(long_name.outing.kit.size() == 1);
  CHECK(long_name.outing.kit[0].name == std::string(kMostNameChars, 'x'));

  std::string many = "[";
  for (std::size_t i = 0; i < 3 * kMostKitItems; ++i) many += (i ? "," : "") + std::string("{\"name\":\"A\"}");
  const LoadedOuting most = file_with_kit(many + "]");
  CHECK(most.outing.kit.size() == kMostKitItems);
  CHECK(most.notes.size() == 1);
}

TEST_CASE("kit readings: not known without a list, known with one, with the chance judged alone") {
  const Plan empty = resolve(test::whole_outing());
  const Outlook nothing = evaluate(empty);
  for (const R id : {R::kit_chance_pct, R::kit_single_points, R::kit_weight_kg}) {
    CHECK(nothing[id].state == State::unknown);
    CHECK(reason(empty, id, nothing[id]) == "needs a kit list");
  }
  CHECK(standing(nothing, Link::kit).binds == R::kit_chance_pct);

  // Worked by hand: power 0.98 alone; antenna 1 - 0.05 x 0.10 = 0.995; line with one spare 1 - 0.02^2 = 0.9996.
  // Product 0.97471. The chair counts for its weight only.
  const Outing outing = carrying({{"Battery", "power", 1500, 0, 0.98, true},
                                  {"Wire", "antenna", 500, 0, 0.95, true},
                                  {"Whip", "antenna", 700, 0, 0.90, false},
                                  {"Line", "feed line", 400, 1, 0.98, true},
                                  {"Chair", "seat", 900, 0, 0.5, false}});
  const Plan plan = resolve(outing);
  const Outlook out = evaluate(plan);
  const double by_hand = 100 * 0.98 * 0.995 * 0.9996;
  MESSAGE("chance " << out[R::kit_chance_pct].value << " %, by hand " << by_hand << " %");
  CHECK(out[R::kit_chance_pct].value == doctest::Approx(by_hand).epsilon(1e-12));
  CHECK(out[R::kit_chance_pct].state == State::holds);
  CHECK(out[R::kit_single_points].value == 1);
  CHECK(out[R::kit_single_points].state == State::none);
  CHECK(out[R::kit_weight_kg].value == doctest::Approx(4.4).epsilon(1e-12));
  CHECK(out[R::kit_weight_kg].state == State::none);
  CHECK(standing(out, Link::kit).state == State::holds);

  // What the levers say is the same with and without a kit.
  for (std::size_t i = 0; i < kReadingCount; ++i)
    if (reading(R(i)).link != Link::kit) CHECK(out[R(i)].state == nothing[R(i)].state);
}

TEST_CASE("kit readings: limit 80 and ease 90 part fails, tight and holds, and a trial keeps the kit") {
  for (const auto& [works, state] :
       {std::pair{0.79, State::fails}, std::pair{0.81, State::tight}, std::pair{0.91, State::holds}})
    CHECK(evaluate(resolve(carrying({{"A", "a", 1, 0, works, true}})))[R::kit_chance_pct].state == state);
  const std::vector<Trial> rolls = other_rolls(carrying({{"A", "a", 1, 0, 0.91, true}}), {});
  REQUIRE_FALSE(rolls.empty());
  for (const Trial& trial : rolls) CHECK(trial.outlook[R::kit_chance_pct].value == doctest::Approx(91));
}

TEST_CASE("kit reasons: a line a function, what hangs on one piece, and what twice as many failures make") {
  const Plan plan = resolve(carrying({{"Battery", "power", 1500, 0, 0.98, true},
                                      {"Wire", "antenna", 500, 1, 0.95, true},
                                      {"Chair", "seat", 900, 0, 0.5, false}}));
  const Why chance = why(R::kit_chance_pct, plan);
  CHECK_FALSE(chance.formula.empty());
  REQUIRE(chance.lines.size() == 3);
  CHECK(chance.lines[0].text == "power, 1 piece");
  CHECK(chance.lines[1].text == "antenna, 2 pieces");
  CHECK(chance.lines[2].result);
  // by hand: (1 - 0.04) x (1 - 0.10^2) = 0.9504
  CHECK(chance.if_wrong.find("95 %") != std::string::npos);
  const Why single = why(R::kit_single_points, plan);
  REQUIRE(single.lines.size() == 2);
  CHECK(single.lines[0].text == "power, 1 piece");
  const Why weight = why(R::kit_weight_kg, plan);
  CHECK(weight.lines.size() == 4);
  const Why none = why(R::kit_chance_pct, resolve(Outing{}));
  REQUIRE(none.lines.size() == 1);
  CHECK(none.lines[0].value.number == "not set");
  CHECK(none.if_wrong.empty());
}

TEST_CASE("kit to start from: every job once, by the plan's power, battery, mode and antenna") {
  const auto has = [](const std::vector<kit::Item>& items, std::string_view name) {
    return std::any_of(items.begin(), items.end(), [&](const kit::Item& item) { return item.name == name; });
  };
  const std::vector<kit::Item> plain = usual_kit(resolve(Outing{}));
  std::set<std::string> functions;
  for (const kit::Item& item : plain) {
    CHECK(kit::item_trouble(item).empty());
    CHECK_MESSAGE(functions.insert(item.function).second, item.function << " twice");
  }
  for (const char* function : {"power", "radio", "lead", "keying", "feedline", "antenna", "support", "writing"})
    CHECK_MESSAGE(functions.count(function) == 1, function);
  const std::vector<kit::Item> light = usual_kit(test::plan_of({{L::radio_full_power_w, 5.0},
                                                                {L::radio_mode, "cw"},
                                                                {L::battery_chemistry, "li_ion_3s"},
                                                                {L::battery_capacity_ah, 3.0},
                                                                {L::antenna_kind, "end_fed_half_wave"},
                                                                {L::feedline_cable, "rg174"}}));
  for (const char* name : {"Set, 5 W", "Lithium battery, 3 Ah", "Key or paddle with its lead",
                           "End-fed wire with its transformer", "Thin feed line, 8 m, with plugs"})
    CHECK_MESSAGE(has(light, name), name);
  const std::vector<kit::Item> heavy = usual_kit(test::plan_of(
      {{L::radio_full_power_w, 100.0}, {L::battery_chemistry, "sealed_lead"}, {L::antenna_kind, "loaded_whip"}}));
  for (const char* name : {"Set, 100 W", "Lead battery, 7 Ah", "Loaded whip with its base", "Radial wires"})
    CHECK_MESSAGE(has(heavy, name), name);
}
