// Phases of an outing, and what the clock says about it.
#include "core/outing/now.h"

#include <doctest/doctest.h>

#include <cmath>

#include "core/outing/plan.h"
#include "core/pace/utc.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

Outing dated(double offset_min = -240) {
  Outing outing = test::also(test::whole_outing(), {{L::clock_utc_offset_min, offset_min}});
  outing.date = "2026-06-13";
  return outing;
}
Now at(const char* text, double offset_min = -240) { return {*pace::read_utc(text), offset_min}; }

}  // namespace

TEST_CASE("now: planning, on the air, after") {
  Outing outing = dated();
  const Now noon = at("2026-06-13T16:00:00Z");
  CHECK(phase_of(resolve(outing), noon) == Phase::planning);
  start_on_air(outing.happened, noon.utc_s);
  CHECK(phase_of(resolve(outing), noon) == Phase::on_air);
  CHECK(phase_of(resolve(outing), at("2026-06-13T15:00:00Z")) == Phase::on_air);  // set back an hour
  CHECK(phase_of(resolve(outing), {}) == Phase::planning);                        // no clock, no now
  CHECK(phase_of(resolve(outing), at("2026-06-14T04:00:00Z")) == Phase::after);   // its day is over
  end_on_air(outing.happened, noon.utc_s + 600);
  CHECK(phase_of(resolve(outing), noon) == Phase::after);
  CHECK(phase_of(resolve(outing), {}) == Phase::after);
}

TEST_CASE("now: outside the outing's date nothing is now") {
  const Plan plan = resolve(dated());
  CHECK(minute_now(plan, at("2026-06-13T16:00:00Z")) == 720);
  CHECK(minute_now(plan, at("2026-06-13T04:00:00Z")) == 0);
  CHECK(std::isnan(minute_now(plan, at("2026-06-13T03:59:59Z"))));
  CHECK(std::isnan(minute_now(plan, at("2026-06-14T04:00:00Z"))));
  CHECK(std::isnan(minute_now(plan, {})));
  const Plan late = resolve(test::also(dated(), {{L::clock_leave_by_min, 1500.0}}));  // 01:00 of the next day
  CHECK(minute_now(late, at("2026-06-14T05:00:00Z")) == 1500);
  CHECK(std::isnan(minute_now(late, at("2026-06-14T09:00:00Z"))));
  Outing undated = dated();
  undated.date.clear();
  CHECK(std::isnan(minute_now(resolve(undated), at("2026-06-13T16:00:00Z"))));
}

TEST_CASE("now: the outing's offset counts, the machine's only where it has none") {
  const Plan plan = resolve(dated());
  const Now moved = at("2026-06-13T16:00:00Z", -300);
  CHECK(minute_now(plan, moved) == 720);
  CHECK(zone_ahead_min(plan, moved) == -60);
  CHECK(zone_ahead_min(plan, at("2026-06-13T16:00:00Z")) == 0);
  CHECK(zone_ahead_min(plan, {}) == 0);
  Outing none = test::whole_outing();
  none.date = "2026-06-13";
  CHECK(minute_now(resolve(none), moved) == 660);
  CHECK(utc_s_of(plan, moved, 720) == moved.utc_s);
}
