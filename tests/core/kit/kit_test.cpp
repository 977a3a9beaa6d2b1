// Properties of a kit over seeded random lists, and what impossible items get.
#include "core/kit/kit.h"

#include <cmath>
#include <cstdio>
#include <random>
#include <set>
#include <string>

#include "core/kit/catalogue.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs::kit;
using gs::test::Closeness;

namespace {

constexpr unsigned kSeed = 20260615;

struct Draw {
  std::mt19937_64 engine;
  explicit Draw(unsigned seed) : engine(seed) { std::printf("  seed %u\n", seed); }
  double between(double low, double high) { return low + (high - low) * (double(engine() >> 11) * 0x1p-53); }
  int below(int n) { return int(between(0, n)); }
  std::vector<Item> items(int most) {
    std::vector<Item> list;
    for (int i = 1 + below(most); i > 0; --i)
      list.push_back({"item", std::string(1, char('a' + below(4))), between(0, 3000), below(3) ? 0 : below(3),
                      between(0, 1), below(4) != 0});
    return list;
  }
};

}  // namespace

TEST_CASE(
    "kit property: the chance is the share of all states of all pieces in which every vital function has one "
    "left") {
  Draw draw(kSeed);
  Closeness off("chance against every state of every piece", "");
  for (int trial = 0; trial < 200; ++trial) {
    const std::vector<Item> items = draw.items(5);
    std::vector<std::size_t> piece_of;
    std::set<std::string> vital;
    double weight = 0;
    for (std::size_t i = 0; i < items.size(); ++i) {
      piece_of.insert(piece_of.end(), std::size_t(items[i].backups) + 1, i);
      if (items[i].vital) vital.insert(items[i].function);
      weight += items[i].weight_g * (items[i].backups + 1);
    }
    double chance = 0;
    for (unsigned state = 0; state < (1u << piece_of.size()); ++state) {
      double weight_of_state = 1;
      std::set<std::string> done;
      for (std::size_t p = 0; p < piece_of.size(); ++p) {
        const Item& item = items[piece_of[p]];
        const bool works = state >> p & 1;
        weight_of_state *= works ? item.works : 1 - item.works;
        if (works && vital.count(item.function)) done.insert(item.function);
      }
      if (done == vital) chance += weight_of_state;
    }
    const Holds result = holds(items);
    CHECK(off.within(result.chance, chance, 1e-12));
    CHECK(std::abs(result.weight_g - weight) < 1e-9);
    for (const std::size_t i : result.single_points) {
      // without it the outing stops for certain
      std::vector<Item> without = items;
      without[i].works = 0;
      CHECK(holds(without).chance == 0);
    }
  }
}

TEST_CASE("kit property: a backup never hurts, and the best one is the best") {
  Draw draw(kSeed + 1);
  for (int trial = 0; trial < 500; ++trial) {
    std::vector<Item> items = draw.items(10);
    const double before = holds(items).chance;
    const BestBackup best = best_backup(items);
    for (std::size_t i = 0; i < items.size(); ++i) {
      ++items[i].backups;
      const double then = holds(items).chance;
      CHECK(then >= before - 1e-15);
      CHECK(then <= best.chance);
      --items[i].backups;
    }
  }
}

TEST_CASE("kit: nothing vital, nothing at all, impossible items") {
  CHECK(holds({}).chance == 1);
  CHECK(best_backup({}).item == 0);
  const std::vector<Item> chair = {{"chair", "seat", 900, 0, .5, false}};
  CHECK(holds(chair).chance == 1);
  CHECK(holds(chair).single_points.empty());
  CHECK(holds(chair).weight_g == 900);
  CHECK(best_backup(chair).item == 1);
  const std::vector<Item> bad = {{"a", "x", -1, 0, .5, true},       {"b", "x", 1, -1, .5, true},
                                 {"c", "x", 1, 0, 1.5, true},       {"d", "x", 1, 0, std::nan(""), true},
                                 {"e", "x", INFINITY, 0, .5, true}, {"f", "x", 1, 1000, .5, true}};
  for (const Item& item : bad) CHECK(item_trouble(item).find(item.name + ": ") == 0);
  CHECK(holds(bad).weight_g == 0);
  CHECK(holds(bad).chance == 1);
  // one vital piece makes the function vital; a second piece of any item ends the single point
  const std::vector<Item> mixed = {{"log", "log", 100, 0, .9, true}, {"tablet", "log", 500, 0, .9, false}};
  CHECK(std::abs(holds(mixed).chance - .99) < 1e-15);
  CHECK(holds(mixed).single_points.empty());
  CHECK(std::isnan(at_least(1, 0, .5)));
  CHECK(std::isnan(at_least(1, 2, 1.5)));
  CHECK(at_least(0, 5, .5) == 1);
  CHECK(at_least(6, 5, .5) == 0);
  const double wrong[] = {.5, 1.5};
  CHECK(std::isnan(series(wrong)));
  CHECK(std::isnan(parallel(wrong)));
  CHECK(std::abs(at_least(500, 1000, .5) - .5126) < 1e-4);  // half and half of the middle term, 1 / sqrt(500 pi)
}

TEST_CASE("kit catalogue: keys are unique, functions together make an outing, chances are chances") {
  std::set<std::string_view> keys, functions;
  std::vector<Item> items;
  for (const UsualItem& row : usual_items()) {
    CHECK(keys.insert(row.key).second);
    CHECK(find_usual_item(row.key) == &row);
    if (row.vital) functions.insert(row.function);
    items.push_back({std::string(row.name), std::string(row.function), row.weight_g, 0, row.works, row.vital});
    CHECK(item_trouble(items.back()).empty());
    CHECK(row.works > 0.9);
    CHECK(row.works < 1);
  }
  for (const char* function : {"radio", "power", "lead", "feedline", "antenna", "keying", "support", "writing"})
    CHECK(functions.count(function) == 1);
  CHECK(find_usual_item("no_such") == nullptr);
  std::printf("  %d usual items, %.1f kg together\n", int(keys.size()), holds(items).weight_g / 1000);
}
