// An outing that lasts over the beginning or the end of summer time, and one in the hour that is none or comes
// twice.
#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <string>

#include "core/outing/archive.h"
#include "core/outing/live.h"
#include "core/outing/plan.h"
#include "core/pace/utc.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

/// The evening of 24 October 2026 in central Europe, until five in the morning; the clock goes back at 01:00 UTC,
/// from 03:00 to 02:00. Source: Directive 2000/84/EC, article 3 (from memory).
Outing autumn() {
  Outing outing = test::also(test::whole_outing(), {{L::battery_capacity_ah, 100.0},  // it ends nothing
                                                    {L::clock_utc_offset_min, 120.0},
                                                    {L::clock_arrive_min, 23 * 60.0},
                                                    {L::clock_leave_by_min, 29 * 60.0},
                                                    {L::clock_set_up_min, 20.0},
                                                    {L::clock_pack_down_min, 15.0}});
  outing.date = "2026-10-24";
  return outing;
}
const pace::ZoneDay kAutumn{120, {27 * 60, -60}};
/// The night of 28 March: the clock goes forward at 01:00 UTC, from 02:00 to 03:00; article 2.
Outing spring() {
  Outing outing = test::also(autumn(), {{L::clock_utc_offset_min, 60.0}});
  outing.date = "2026-03-28";
  return outing;
}
const pace::ZoneDay kSpring{60, {26 * 60, 60}};

Outing with_zone(Outing outing, pace::ZoneDay zone) {
  outing.habits.zone = zone;
  return outing;
}
double value_of(const Outing& outing, R id) { return evaluate(resolve(outing))[id].value; }
Now at(const char* utc) { return {pace::read_utc(utc).value(), std::nan("")}; }

}  // namespace

TEST_CASE("summer time: the stay is an hour longer in autumn, an hour shorter in spring") {
  const Outing back = with_zone(autumn(), kAutumn), forward = with_zone(spring(), kSpring);
  CHECK(value_of(autumn(), R::clock_on_air_min) == 360 - 35);  // a machine that knows of no change
  CHECK(value_of(back, R::clock_on_air_min) == 420 - 35);
  CHECK(value_of(forward, R::clock_on_air_min) == 300 - 35);
  CHECK(value_of(back, R::clock_pack_by_min) == 29 * 60 - 15);
  CHECK(value_of(forward, R::clock_pack_by_min) == 29 * 60 - 15);
  CHECK(value_of(back, R::pace_expected_contacts) > value_of(forward, R::pace_expected_contacts));
  CHECK(say_clock_change(resolve(back)) ==
        "At 03:00 next day the clock is set back to 02:00: the stay is an hour longer than its times say.");
  CHECK(say_clock_change(resolve(forward)) ==
        "At 02:00 next day the clock is set forward to 03:00: the stay is an hour shorter than its times say.");
  CHECK(say_clock_change(resolve(autumn())).empty());
  // an outing in another zone than the machine's does not follow the machine's
  CHECK(value_of(with_zone(test::also(autumn(), {{L::clock_utc_offset_min, 0.0}}), kAutumn), R::clock_on_air_min) ==
        360 - 35);
  // by day, before or behind the change, nothing changes
  for (const double arrive : {10 * 60.0, 29 * 60.0}) {
    const Outing by_day = with_zone(
        test::also(autumn(), {{L::clock_arrive_min, arrive}, {L::clock_leave_by_min, arrive + 180}}), kAutumn);
    CHECK(value_of(by_day, R::clock_on_air_min) == 180 - 35);
    CHECK(say_clock_change(resolve(by_day)).empty());
  }
}

TEST_CASE("summer time: instants go by UTC, what is shown by the clock of the hour") {
  Outing outing = with_zone(autumn(), kAutumn);
  start_on_air(outing.happened, at("2026-10-24T21:20:00Z").utc_s);  // 23:20
  add_contact(outing.happened, at("2026-10-25T00:30:00Z").utc_s);   // 02:30
  add_contact(outing.happened, at("2026-10-25T01:30:00Z").utc_s);   // 02:30 once more
  const Plan plan = resolve(outing);
  const Now now = at("2026-10-25T02:30:00Z");  // 03:30
  const Live then = live(plan, evaluate(plan, now), now);
  CHECK(then.phase == Phase::on_air);
  CHECK(then.on_air_min == 310);
  CHECK(then.now_min == 27 * 60 + 30);
  CHECK(then.pack_in_min == 75);  // 04:45
  CHECK(then.left_min == 75);
  CHECK(then.since_last_min == 60);
  CHECK(then.counted == 2);
  CHECK(then.utc_midnight_min != then.utc_midnight_min);  // behind
  // the machine's clock, which was set back with all others, stands in the same zone
  CHECK(zone_ahead_min(plan, {at("2026-10-25T00:30:00Z").utc_s, 120}) == 0);
  CHECK(zone_ahead_min(plan, {now.utc_s, 60}) == 0);
  end_on_air(outing.happened, now.utc_s);
  CHECK(value_of(outing, R::clock_on_air_min) == 310);
}

TEST_CASE("summer time: an hour that is none, and one that comes twice, are said and never negative") {
  const Outing none = with_zone(test::also(spring(), {{L::clock_leave_by_min, 26 * 60 + 30.0}}), kSpring);
  CHECK(value_of(none, R::clock_on_air_min) == 180 - 35);  // until the leap
  const Outing held = test::also(
      none,
      {{L::clock_change_min, 60.0}, {L::clock_changes_at_min, 26 * 60.0}, {L::clock_leave_by_min, 27 * 60 + 15.0}});
  CHECK(value_of(held, R::clock_on_air_min) == 195 - 35);
  const Outing arrives = test::also(
      spring(),
      {{L::clock_change_min, 60.0}, {L::clock_changes_at_min, 26 * 60.0}, {L::clock_arrive_min, 26 * 60 - 5.0}});
  CHECK(value_of(arrives, R::clock_on_air_min) == 125 - 35);
  const Outing twice = test::also(with_zone(autumn(), kAutumn), {{L::clock_leave_by_min, 26 * 60 + 30.0},
                                                                 {L::clock_change_min, -60.0},
                                                                 {L::clock_changes_at_min, 27 * 60.0}});
  CHECK(value_of(twice, R::clock_on_air_min) == 210 - 35);
  // leaving in the second of the two hours is not told from the first: the earlier one is safe
  const Outing stays = test::also(twice, {{L::clock_leave_by_min, 27 * 60.0}});
  CHECK(value_of(stays, R::clock_on_air_min) == 300 - 35);
  CHECK(say_clock_change(resolve(test::also(held, {{L::clock_leave_by_min, 28 * 60.0}}))).find("shorter") !=
        std::string::npos);
}

TEST_CASE("summer time property: no duration is less than nothing, and without a change all is as it was") {
  constexpr unsigned kSeed = 20261128;
  std::mt19937_64 bits(kSeed);
  std::uniform_real_distribution<double> minute(0, 2880), by(-120, 120);
  int with_time = 0;
  for (int i = 0; i < 2000; ++i) {
    Outing outing = test::also(autumn(), {{L::clock_arrive_min, std::floor(minute(bits))},
                                          {L::clock_leave_by_min, std::floor(minute(bits))},
                                          {L::clock_change_min, std::floor(by(bits))},
                                          {L::clock_changes_at_min, std::floor(minute(bits))}});
    const Plan plan = resolve(outing);
    const double start_s = utc_s_of(plan, {}, minute(bits)), then_s = start_s + 60 * minute(bits);
    if (i % 2) {
      start_on_air(outing.happened, start_s);
      add_contact(outing.happened, start_s + 600);
    }
    const Now now{then_s, std::nan("")};
    const OutingDay day = day_of(resolve(outing), now);
    CHECK(day.past_min >= 0);
    CHECK(day.to_come_min >= 0);
    const Outlook outlook = evaluate(resolve(outing), now);
    const Figure& on_air = outlook[R::clock_on_air_min];
    if (on_air.state == State::unknown) continue;
    ++with_time;
    CHECK(on_air.value >= 0);
    CHECK(outlook[R::clock_late_min].value >= 0);
    CHECK(live(resolve(outing), outlook, now).late_cost >= 0);
    const Outing same = test::also(outing, {{L::clock_change_min, 0.0}});
    if (stay_of(plan).leave_by_min < plan[L::clock_changes_at_min] &&
        stay_of(plan).leave_by_min == plan[L::clock_leave_by_min] && outing.happened.on_air.empty())
      CHECK(value_of(same, R::clock_on_air_min) == value_of(outing, R::clock_on_air_min));
  }
  MESSAGE("seed " << kSeed << ": " << with_time << " of 2000 with time on the air");
  CHECK(with_time > 200);
}

// Leap day: 29 February 2028 is a Tuesday (cal(1)); the day after it is 1 March.
TEST_CASE("leap day: an outing over its midnight keeps its minutes and its UTC days") {
  Outing outing = test::also(autumn(), {{L::clock_utc_offset_min, 0.0}});
  outing.date = "2028-02-29";
  start_on_air(outing.happened, at("2028-02-29T23:30:00Z").utc_s);
  add_contact(outing.happened, at("2028-02-29T23:59:59Z").utc_s);
  add_contact(outing.happened, at("2028-03-01T00:00:01Z").utc_s);
  const Plan plan = resolve(outing);
  const Now now = at("2028-03-01T00:30:00Z");
  const Live then = live(plan, evaluate(plan, now), now);
  CHECK(then.now_min == 24 * 60 + 30);
  CHECK(then.on_air_min == 60);
  CHECK(then.counted == 2);
  CHECK(then.counts == 1);  // by the UTC day
}
