// Pace against printed Poisson tables and worked updates; kit against published reliability examples.
#include "core/pace/pace.h"

#include <cmath>
#include <vector>

#include "core/kit/kit.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/pace_tables.h"

using namespace gs::pace;
using gs::test::Closeness;

namespace {

/// A mean as an hour at that pace.
double at_least(double mean, double shape, int target) {
  return chance_of_target({mean, shape > 0 ? 100 / std::sqrt(shape) : 0}, 60, target);
}

}  // namespace

TEST_CASE("pace: printed Poisson tables") {
  Closeness off("Poisson against printed tables", "");
  for (const auto& row : gs::test::kPoisson) {
    CAPTURE(row.mean);
    CAPTURE(row.count);
    const double from = row.cumulative ? 1 : at_least(row.mean, 0, row.count);
    CHECK(off.within(from - at_least(row.mean, 0, row.count + 1), row.printed, .0000501));
  }
}

TEST_CASE("pace: what spread does to the chance") {
  Closeness off("negative binomial", ""), needed("mean for a chance", "contacts");
  for (const auto& row : gs::test::kSpread)
    CHECK(off.within(at_least(row.mean, row.shape, row.target), row.chance, .000501));
  for (const auto& row : gs::test::kNeed)
    CHECK(needed.within(minutes_for({60, 0}, row.target, row.chance), row.mean, .000501));
}

TEST_CASE("pace: counts update the pace as published") {
  Closeness off("mean after the count", "an hour");
  for (const auto& row : gs::test::kUpdates) {
    CAPTURE(row.source);
    const Pace before{row.shape / row.rate, 100 / std::sqrt(row.shape)};
    const Pace after = updated(before, row.counted, row.time * 60);
    CHECK(off.within(after.per_hour, row.mean_after, row.half_step));
    CHECK(std::abs(after.spread_pct - 100 / std::sqrt(row.shape + row.counted)) < 1e-9);
  }
  // 67 in 44 min after 30 +- 20: standard deviation 10.29 an hour; 12, 25 and 8: 2.298, ten in 30 min .2805, in 20
  // min .0514
  const Pace fast = updated({30, 200.0 / 3}, 67, 44), slow = updated({30, 200.0 / 3}, 45, 175);
  CHECK(std::abs(fast.per_hour * fast.spread_pct / 100 - 10.29) < .0051);
  CHECK(std::abs(slow.per_hour * slow.spread_pct / 100 - 2.298) < .00051);
  CHECK(std::abs(chance_of_target(slow, 30, 10) - .2805) < .000051);
  CHECK(std::abs(chance_of_target(slow, 20, 10) - .0514) < .000051);
}

// The brief's own figure: 67 contacts in 44 min are 91.36 an hour, shown as 91.
TEST_CASE("pace: 67 in 44 minutes") {
  MESSAGE("67 in 44 min: " << pace_from_count(67, 44).per_hour << " an hour");
  CHECK(std::abs(pace_from_count(67, 44).per_hour - 91.36) < .0051);
}

// Published reliability examples (a question-and-answer site, textbook exercises, a reliability page; seen), and
// the same exercises worked out apart where only the question was printed.
TEST_CASE("kit: published reliability examples") {
  using namespace gs::kit;
  Closeness off("reliability", "");
  const auto all = [](std::vector<double> x) { return series(x); };
  const auto any = [](std::vector<double> x) { return parallel(x); };
  CHECK(off.within(all({any({.9, .9}), .95, any({all({.95, .95}), all({.95, .95})})}), .93156, 5.1e-6));  // printed
  CHECK(off.within(any({.99, .99, .99, .99, .99}), .9999999999, 5.1e-11));                                // printed
  CHECK(off.within(all({.85, .85}), .7225, 1e-12));
  CHECK(off.within(any({all({.7, .7, .9}), all({.7, .7, .9})}), .6875, 5.1e-5));
  CHECK(off.within(all({.92, .90, .84}), .69552, 5.1e-6));
  CHECK(off.within(any({.92, .90, .84}), .99872, 5.1e-6));
  CHECK(off.within(1 - any({.85, .85}), 1 - .9775, 1e-12));
  CHECK(off.within(all(std::vector<double>(10, .999)), 1 - .009955, 5.1e-7));
  CHECK(off.within(gs::kit::at_least(2, 3, .9), .972, 1e-12));
}

// Seven parts with made-up chances, worked out apart: series .88530; second antenna of .90 .92724; second coax of
// .98 .90301.
TEST_CASE("kit: a spare antenna buys most") {
  using namespace gs::kit;
  std::vector<Item> items;
  const auto add = [&](const char* function, double works) {
    items.push_back({function, function, 100, 0, works, true});
  };
  add("radio", .995), add("power", .98), add("lead", .99), add("feedline", .98), add("antenna", .95),
      add("keying", .99), add("log", .995);
  Closeness off("kit of seven", "");
  CHECK(off.within(holds(items).chance, .88530, 5.1e-6));
  CHECK(holds(items).single_points.size() == 7);
  CHECK(best_backup(items).item == 4);
  add("antenna", .90);
  CHECK(off.within(holds(items).chance, .92724, 5.1e-6));
  CHECK(holds(items).single_points == std::vector<std::size_t>{0, 1, 2, 3, 5, 6});
  items.back() = {"feedline", "feedline", 100, 0, .98, true};
  CHECK(off.within(holds(items).chance, .90301, 5.1e-6));
}
