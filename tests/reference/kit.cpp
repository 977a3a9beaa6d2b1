// Kit against published reliability examples, case by case. "Printed": the figure stood in the source (an open
// question-and-answer page, textbook exercises, a reliability-engineering page; all read). "Worked": the exercise
// was printed, its result worked out apart from the code.
#include "core/kit/kit.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <string_view>
#include <vector>

#include "tests/reference/feedline_closeness.h"

using namespace gs::kit;
using gs::test::Closeness;

namespace {

double all(const std::vector<double>& x) { return series(x); }
double any(const std::vector<double>& x) { return parallel(x); }

/// The same parts as a list, so that the tool's own path is taken too: one function each.
std::vector<Item> functions(const std::vector<double>& works, int backups = 0) {
  std::vector<Item> items;
  for (const double x : works)
    items.push_back({"part", "job " + std::to_string(items.size()), 100, backups, x, true});
  return items;
}

}  // namespace

TEST_CASE("kit, published: series, parallel, both, and a change-over") {
  Closeness off("reliability, case by case", "");
  // printed: 0.93156 and 0.9999999999
  CHECK(off.within(all({any({.9, .9}), .95, any({all({.95, .95}), all({.95, .95})})}), .93156, 5.1e-6));
  CHECK(off.within(any({.99, .99, .99, .99, .99}), .9999999999, 5.1e-11));
  // worked: two needed that each fail with 0.15: 0.7225 (nearest printed choice 0.73)
  CHECK(off.within(holds(functions({.85, .85})).chance, .7225, 1e-12));
  // worked: 0.7, 0.7, 0.9 with the whole set twice: 0.441 -> 0.6875 (nearest printed choice 0.70)
  CHECK(off.within(all({.7, .7, .9}), .441, 1e-12));
  CHECK(off.within(any({.441, .441}), .6875, 5.1e-5));
  // worked: 0.6 and 0.5 with the same set behind a switch of 0.9: 0.489 (nearest printed choice 0.50)
  CHECK(off.within(stand_by(all({.6, .5}), .9, all({.6, .5})), .489, 1e-12));
  // worked: 0.92, 0.90, 0.84: in series, in parallel, the set twice, a spare of each
  CHECK(off.within(holds(functions({.92, .90, .84})).chance, .69552, 5.1e-6));
  CHECK(off.within(any({.92, .90, .84}), .99872, 5.1e-6));
  CHECK(off.within(any({.69552, .69552}), .90729, 5.1e-6));
  CHECK(off.within(holds(functions({.92, .90, .84}, 1)).chance, .95848, 5.1e-6));
  // worked: two that each fail with 0.15: 0.9775; more than 0.9999 takes five
  CHECK(off.within(any({.85, .85}), .9775, 1e-12));
  CHECK(any(std::vector<double>(4, .85)) < .9999);
  CHECK(any(std::vector<double>(5, .85)) > .9999);
  // worked: A and B, 0.01 failure each: a spare of each fails with 0.00019999, a spare pair with 0.00039601
  CHECK(off.within(1 - holds(functions({.99, .99}, 1)).chance, .00019999, 5.1e-9));
  CHECK(off.within(1 - any({all({.99, .99}), all({.99, .99})}), .00039601, 5.1e-9));
  // worked: ten in series that each fail with 0.001: 0.009955
  CHECK(off.within(1 - holds(functions(std::vector<double>(10, .999))).chance, .009955, 5.1e-7));
  // worked: two of three at 0.9: 0.972
  CHECK(off.within(at_least(2, 3, .9), .972, 1e-12));
}

// A kit with made-up chances, worked out apart: a second lead .89416; second antenna and second coax .94578.
TEST_CASE("kit: what a spare of each part brings") {
  const auto kit_of_seven = [](int leads, int lines, int antennas) {
    std::vector<Item> items;
    const auto add = [&](const char* function, double works, int backups) {
      items.push_back({function, function, 100, backups, works, true});
    };
    add("radio", .995, 0), add("power", .98, 0), add("lead", .99, leads - 1), add("feedline", .98, lines - 1),
        add("antenna", .95, 0), add("keying", .99, 0), add("writing", .995, 0);
    if (antennas > 1) add("antenna", .90, 0);
    return holds(items).chance;
  };
  Closeness off("kit of seven with spares", "");
  CHECK(off.within(kit_of_seven(1, 1, 1), .88530, 5.1e-6));
  CHECK(off.within(kit_of_seven(2, 1, 1), .89416, 1.1e-5));  // the sheet's spare lead: as good as the first
  CHECK(off.within(kit_of_seven(1, 2, 2), .94578, 5.1e-6));
}

// Beta factor of 0.1, worked out apart: two that fail with 0.05 each come to 0.9975 where they fail apart and to
// about 0.9930 where a tenth of the failures are shared.
TEST_CASE("kit: two that share a cause hold less") {
  Closeness off("common cause", "");
  std::vector<Item> items = {{"first", "power", 900, 0, .95, true}, {"second", "power", 900, 0, .95, true}};
  CHECK(off.within(holds(items).chance, .9975, 1e-12));
  for (Item& item : items) item.cause = "one charger";
  CHECK(off.within(holds(items).chance, .9930, 5.1e-5));
  CHECK(off.within(parallel_sharing(std::vector<double>{.95, .95}, kSharedFailures), .9930, 5.1e-5));
  items[1].cause = "another charger";
  CHECK(off.within(holds(items).chance, .9975, 1e-12));
  items.pop_back();
  items[0].backups = 1;  // two of the same, from the same charger
  CHECK(off.within(holds(items).chance, .9930, 5.1e-5));
  CHECK(parallel_sharing(std::vector<double>{.95}, .1) == doctest::Approx(.95).epsilon(1e-15));
  CHECK(parallel_sharing(std::vector<double>{.95, .95}, 0) == doctest::Approx(.9975).epsilon(1e-12));
  CHECK(parallel_sharing(std::vector<double>{.95, .9}, 1) == doctest::Approx(.95).epsilon(1e-12));
  CHECK(std::isnan(parallel_sharing(std::vector<double>{.95, 1.5}, .1)));
  CHECK(std::isnan(stand_by(.5, 2, .5)));
}

TEST_CASE("kit: what helps most a gram, and what may stay at home") {
  // by hand: 0.9 x 0.95 = 0.855; a second battery 0.99 x 0.95 = 0.9405 for 1000 g, a second fuse 0.9 x 0.9975 =
  // 0.89775 for 10 g: 0.0000855 and 0.004275 a gram
  const std::vector<Item> items = {{"battery", "power", 1000, 0, .9, true},
                                   {"fuse", "fuse", 10, 0, .95, true},
                                   {"chair", "seat", 900, 0, .99, false},
                                   {"water", "water", 1000, 0, .99, false}};
  CHECK(best_backup(items).item == 0);
  CHECK(std::abs(best_backup(items).chance - .9405) < 1e-12);
  CHECK(best_backup_per_gram(items).item == 1);
  CHECK(std::abs(best_backup_per_gram(items).chance - .89775) < 1e-12);
  const std::string_view keep[] = {"water"};
  CHECK(may_stay_home(items, .8, keep) == std::vector<std::size_t>{2});
  CHECK(may_stay_home(items, .8) == std::vector<std::size_t>{3, 2});
  // a second antenna may stay only while the rest still holds
  std::vector<Item> two = {{"wire", "antenna", 500, 0, .95, true}, {"whip", "antenna", 700, 0, .9, false}};
  CHECK(may_stay_home(two, .90) == std::vector<std::size_t>{1, 0});
  CHECK(may_stay_home(two, .93) == std::vector<std::size_t>{1});
  CHECK(may_stay_home(two, .999).empty());
}
