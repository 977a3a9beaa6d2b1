// The outing as it stands: late starts, live forecasts, UTC days, clocks that jump. Figures worked out by hand.
#include "core/outing/live.h"

#include <doctest/doctest.h>

#include <cmath>

#include "core/pace/utc.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

/// 10:00 to 14:00 at UTC-4, twenty minutes of work at both ends: on the air from 10:20 until 13:40, 200 min.
Outing day_out(const char* date = "2026-06-13", double offset_min = -240) {
  Outing outing = test::also(test::whole_outing(), {{L::clock_utc_offset_min, offset_min},
                                                    {L::battery_capacity_ah, 100.0},
                                                    {L::clock_set_up_min, 20.0},
                                                    {L::clock_pack_down_min, 20.0},
                                                    {L::pace_per_hour, 12.0},
                                                    {L::pace_spread_pct, 50.0},
                                                    {L::pace_target, 10.0}});
  outing.date = date;
  return outing;
}

/// The clock at a local minute of an outing's date.
Now at(const Outing& outing, double local_min) {
  Now now{0, std::get<double>(outing.set[std::size_t(L::clock_utc_offset_min)])};
  now.utc_s = utc_s_of(resolve(outing), now, local_min);
  return now;
}

void start(Outing& outing, double local_min) {
  REQUIRE(start_on_air(outing.happened, at(outing, local_min).utc_s));
}
void contacts(Outing& outing, double from_min, double until_min, int count) {
  for (int i = 1; i <= count; ++i)
    REQUIRE(add_contact(outing.happened, at(outing, from_min + (until_min - from_min) * i / count).utc_s));
}

struct Seen {
  Plan plan;
  Outlook out;
  Live live;
};
Seen seen(const Outing& outing, const Now& now) {
  Seen result{resolve(outing), {}, {}};
  result.out = evaluate(result.plan, now);
  result.live = gs::live(result.plan, result.out, now);
  return result;
}
bool near(double value, double wanted) { return std::abs(value - wanted) < 1e-6; }

}  // namespace

TEST_CASE("live: planned, nothing is late and nothing is now on another day") {
  const Outing outing = day_out();
  for (const Now now : {Now{}, at(outing, -600), at(outing, 3000), at(outing, 500)}) {
    const Seen day = seen(outing, now);
    CHECK(day.live.phase == Phase::planning);
    CHECK(near(day.out[R::clock_on_air_min].value, 200));
    CHECK(near(day.out[R::pace_expected_contacts].value, 40));
    CHECK(day.out[R::clock_late_min].value == 0);
    CHECK(say_late(day.live, {}).empty());
    CHECK(day.out[R::pace_so_far].value == 0);
  }
}

TEST_CASE("live: a late start moves what follows and says what it costs") {
  Outing outing = day_out();
  // nobody started, and it is 10:50
  const Seen waiting = seen(outing, at(outing, 650));
  CHECK(near(waiting.out[R::clock_starts_min].value, 650));
  CHECK(near(waiting.out[R::clock_late_min].value, 30));
  CHECK(near(waiting.out[R::clock_on_air_min].value, 170));
  CHECK(near(waiting.out[R::pace_expected_contacts].value, 34));
  CHECK(near(waiting.live.late_cost, 6));
  CHECK(say_late(waiting.live, {}) == "30 min late: that costs about 6 contacts.");
  CHECK(waiting.out[R::power_lasts_until_min].value > seen(outing, {}).out[R::power_lasts_until_min].value + 29.9);
  start(outing, 650);
  const Seen started = seen(outing, at(outing, 650));
  CHECK(started.live.phase == Phase::on_air);
  CHECK(near(started.out[R::pace_expected_contacts].value, 34));
  CHECK(near(started.live.late_min, 30));
}

// gamma(4, 1/3 h) and 10 contacts in one hour: gamma(14, 4/3 h), 10.5 an hour; 130 min to come bring 22.75.
TEST_CASE("live: the forecast follows the tally") {
  Outing outing = day_out();
  start(outing, 630);
  contacts(outing, 630, 690, 10);
  const Seen now = seen(outing, at(outing, 690));
  CHECK(near(now.out[R::pace_now_per_hour].value, 10.5));
  CHECK(now.out[R::pace_now_per_hour].low < 10.5);
  CHECK(now.out[R::pace_now_per_hour].high > 10.5);
  CHECK(near(now.out[R::pace_expected_contacts].value, 32.75));
  CHECK(now.out[R::pace_chance_of_target_pct].value == 100);
  CHECK(now.out[R::pace_so_far].value == 10);
  CHECK(now.out[R::pace_sure_min].value == 0);
  CHECK(near(now.live.on_air_min, 60));
  CHECK(near(now.live.left_min, 130));
  CHECK(near(now.live.pack_in_min, 130));
  CHECK(near(now.live.since_last_min, 0));
  CHECK(near(now.live.mah_per_contact, 100 * now.out[R::power_average_current_a].value));
  CHECK_FALSE(now.live.drying.shown);
  // an hour and a half later without a contact
  const Seen quiet = seen(outing, at(outing, 780));
  MESSAGE(say_drying(quiet.live, {}));
  CHECK(quiet.live.drying.shown);
  CHECK(quiet.live.drying.sign == pace::Drying::Sign::wait);
  // over: what happened stands
  REQUIRE(end_on_air(outing.happened, at(outing, 700).utc_s));
  const Seen over = seen(outing, at(outing, 720));
  CHECK(over.live.phase == Phase::after);
  CHECK(near(over.out[R::clock_on_air_min].value, 70));
  CHECK(over.out[R::pace_expected_contacts].value == 10);
  CHECK(seen(outing, {}).out[R::pace_expected_contacts].value == 10);
}

TEST_CASE("live: forgotten contacts, pauses and running over") {
  Outing outing = day_out();
  start(outing, 620);
  contacts(outing, 620, 650, 3);
  REQUIRE(add_forgotten(outing.happened, at(outing, 650).utc_s, 2));
  CHECK(seen(outing, at(outing, 650)).out[R::pace_so_far].value == 5);
  REQUIRE(end_on_air(outing.happened, at(outing, 650).utc_s));
  start(outing, 680);
  CHECK(near(seen(outing, at(outing, 700)).live.on_air_min, 50));
  CHECK(near(seen(outing, at(outing, 700)).out[R::clock_on_air_min].value, 50 + 120));
  const Seen over = seen(outing, at(outing, 830));  // packing should have begun ten minutes ago
  CHECK(over.live.left_min == 0);
  CHECK(over.live.pack_in_min == 0);
  CHECK(over.out[R::pace_expected_contacts].value == 5);
}

// 18:00 to 22:00 at UTC-4: the UTC day turns at 20:00.
TEST_CASE("live: where UTC midnight falls inside, the counting rule moves the forecast") {
  Outing outing = test::also(day_out(), {{L::clock_arrive_min, 1080.0}, {L::clock_leave_by_min, 1320.0}});
  const Outing as_one = test::also(outing, {{L::pace_day_rule, "outing"}});
  const Seen by_day = seen(outing, {}), whole = seen(as_one, {});
  CHECK(near(whole.out[R::pace_expected_contacts].value, 40));
  CHECK(by_day.out[R::pace_expected_contacts].value > 20);
  CHECK(by_day.out[R::pace_expected_contacts].value < 30);
  CHECK(by_day.out[R::pace_chance_of_target_pct].value < whole.out[R::pace_chance_of_target_pct].value);
  CHECK(near(by_day.live.utc_midnight_min, 1200));
  // another offset takes midnight out of the outing again
  const Seen west = seen(test::also(outing, {{L::clock_utc_offset_min, -60.0}}), {});
  CHECK(near(west.out[R::pace_expected_contacts].value, 40));
  CHECK(std::isnan(west.live.utc_midnight_min));

  // Six contacts before and five after: neither day has ten (common practice).
  for (Outing* one : {&outing}) {
    start(*one, 1100);
    contacts(*one, 1110, 1170, 6);
    contacts(*one, 1200, 1260, 5);
    REQUIRE(end_on_air(one->happened, at(*one, 1290).utc_s));
  }
  const Seen six_and_five = seen(outing, at(outing, 1310));
  CHECK(six_and_five.live.counted == 11);
  CHECK(six_and_five.live.counts == 6);
  CHECK(six_and_five.out[R::pace_so_far].value == 6);
  CHECK(six_and_five.out[R::pace_chance_of_target_pct].value == 0);
  const Outing eleven = test::also(outing, {{L::pace_day_rule, "outing"}});
  CHECK(seen(eleven, at(outing, 1310)).out[R::pace_chance_of_target_pct].value == 100);
}

TEST_CASE("live: clock set back an hour, zone changed, daylight saving: no time is less than nothing") {
  Outing outing = day_out();
  start(outing, 620);
  contacts(outing, 620, 680, 8);
  const Seen before = seen(outing, at(outing, 680)), back = seen(outing, at(outing, 620));
  CHECK(back.live.phase == Phase::on_air);
  CHECK(back.live.clock_doubtful);
  CHECK_FALSE(say_clock(back.live).empty());
  CHECK(near(back.live.on_air_min, 60));  // the contacts came in it
  CHECK(near(back.out[R::pace_now_per_hour].value, before.out[R::pace_now_per_hour].value));
  CHECK(back.live.since_last_min == 0);
  const Seen far_back = seen(outing, at(outing, 400));
  for (const double minutes : {far_back.live.on_air_min, far_back.live.left_min, far_back.live.pack_in_min,
                               far_back.live.since_last_min, far_back.live.late_min})
    CHECK(minutes >= 0);
  CHECK(far_back.out[R::clock_on_air_min].value >= 0);
  // ended while it is set back
  Outing ended = outing;
  REQUIRE(end_on_air(ended.happened, at(outing, 610).utc_s));
  CHECK(near(seen(ended, at(outing, 610)).live.on_air_min, 60));

  // The machine's zone changes, or its summer time ends: instants are UTC and the outing's own offset counts.
  Now moved = at(outing, 700);
  moved.utc_offset_min = -300;
  const Seen here = seen(outing, at(outing, 700)), there = seen(outing, moved);
  for (std::size_t i = 0; i < kReadingCount; ++i)
    CHECK((here.out.at[i].value == there.out.at[i].value || std::isnan(here.out.at[i].value)));
  CHECK(there.live.zone_ahead_min == -60);
  MESSAGE(say_clock(there.live));
  CHECK(say_clock(here.live).empty());
}

// 2028 has a 29 February; 1800 min after its midnight it is 06:00 on 1 March.
TEST_CASE("live: leap day, and past midnight") {
  Outing outing =
      test::also(day_out("2028-02-29", 0), {{L::clock_arrive_min, 1380.0}, {L::clock_leave_by_min, 1560.0}});
  CHECK(pace::utc_text(at(outing, 1800).utc_s) == "2028-03-01T06:00:00Z");
  start(outing, 1400);
  contacts(outing, 1400, 1500, 4);
  const Seen night = seen(outing, at(outing, 1500));
  CHECK(night.live.phase == Phase::on_air);
  CHECK(near(night.live.on_air_min, 100));
  CHECK(near(night.live.left_min, 40));
  CHECK(seen(outing, at(outing, 1801)).live.phase == Phase::after);  // four hours past leave-by
}

TEST_CASE("live: what is over is judged by when it ended: packing early leaves the battery time to spare") {
  Outing outing =
      test::also(test::whole_outing(), {{L::clock_leave_by_min, 1500.0}, {L::clock_utc_offset_min, 0.0}});
  outing.date = "2026-06-13";
  const Plan planned = resolve(outing);
  REQUIRE(evaluate(planned)[R::power_spare_min].state == State::fails);
  const double start = utc_s_of(planned, {}, planned[L::clock_arrive_min] + planned[L::clock_set_up_min]);
  start_on_air(outing.happened, start);
  end_on_air(outing.happened, start + 20 * 60);
  const Outlook over = evaluate(resolve(outing), {start + 30 * 60, 0});
  CHECK(over[R::power_spare_min].value > 0);
  CHECK(over[R::power_spare_min].state != State::fails);
  CHECK(over[R::power_spare_min].value == doctest::Approx(60 * over[R::power_runtime_h].value - 20).epsilon(1e-9));
}
