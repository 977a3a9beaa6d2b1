// The cheapest change that brings what limits the plan to ease: it does what it says, and is the first that can.
#include "core/outing/remedy.h"

#include <doctest/doctest.h>

#include <cmath>

#include "core/outing/solve.h"
#include "core/outing/trial.h"
#include "tests/core/outing/outings.h"

using namespace gs;

TEST_CASE("a remedy reaches ease, or the limit where nothing reaches ease, and breaks nothing") {
  int found = 0, tried_plans = 0;
  for (const double battery_ah : {4.0, 6.0, 8.0, 10.0, 12.0, 20.0}) {
    for (const double watts : {10.0, 40.0, 100.0}) {
      for (const double length_m : {10.0, 40.0, 90.0}) {
        Outing outing = with(
            with(with(test::whole_outing(), L::battery_capacity_ah, battery_ah), L::radio_transmit_power_w, watts),
            L::feedline_length_m, length_m);
        const Plan plan = resolve(outing);
        const Outlook now = evaluate(plan);
        const Verdict words = verdict(plan, now, {});
        if (words.binds == R::count) continue;
        ++tried_plans;
        const std::optional<Remedy> remedy = cheapest_remedy(outing, words.binds, {});
        const State state = now[words.binds].state;
        if (state != State::tight && state != State::fails) {
          CHECK(!remedy);
          continue;
        }
        if (!remedy) continue;
        ++found;
        const Outlook then = evaluate(resolve(with(outing, remedy->lever, remedy->value)));
        INFO(battery_ah << " Ah, " << watts << " W, " << length_m << " m: " << remedy->words << ", "
                        << remedy->gains);
        CHECK((then[words.binds].state == State::holds || then[words.binds].state == State::tight));
        CHECK(then[words.binds].slack > now[words.binds].slack);
        CHECK(broken_by(now, then) == R::count);
        CHECK(remedy->lever != L::radio_transmit_share_pct);
        CHECK(!remedy->words.empty());
        CHECK(!remedy->gains.empty());
      }
    }
  }
  MESSAGE(tried_plans << " plans, a remedy for " << found);
  CHECK(found > 10);
}

TEST_CASE("watts come before a purchase where both would do") {
  int both_do = 0;
  for (double battery_ah = 5; battery_ah <= 25; battery_ah += 0.5) {
    const Outing outing = with(test::whole_outing(), L::battery_capacity_ah, battery_ah);
    const Plan plan = resolve(outing);
    const Outlook now = evaluate(plan);
    if (now[R::power_spare_min].state != State::tight && now[R::power_spare_min].state != State::fails) continue;
    const Goal goal{R::power_spare_min, plan[ease_lever(R::power_spare_min)]};
    const Answer by_watts = solve_for(outing, L::radio_transmit_power_w, goal),
                 by_battery = solve_for(outing, L::battery_capacity_ah, goal);
    if (!by_watts.trouble.empty() || broken_by(now, by_watts.outlook) != R::count) continue;
    if (!by_battery.trouble.empty()) continue;
    ++both_do;
    const std::optional<Remedy> remedy = cheapest_remedy(outing, R::power_spare_min, {});
    REQUIRE(remedy.has_value());
    CHECK(remedy->lever == L::radio_transmit_power_w);
  }
  MESSAGE(both_do << " batteries with which either would do");
  CHECK(both_do > 0);
}

TEST_CASE("what is not judged has no remedy") {
  CHECK(!cheapest_remedy(test::whole_outing(), R::feedline_weight_g, {}));
  CHECK(!cheapest_remedy(Outing{}, R::power_spare_min, {}));
}
