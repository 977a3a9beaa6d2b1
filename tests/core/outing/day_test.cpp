// Stints, tally and what was measured: what files hold of them, and how they are made.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "core/outing/archive.h"
#include "core/outing/history.h"
#include "core/outing/plan.h"
#include "core/pace/utc.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

std::string file_with(const std::string& members) {
  return R"({"groundsheet": 1, "kind": "outing", "date": "2026-06-13", )" + members + "}";
}
bool noted(const LoadedOuting& loaded, const std::string& a, const std::string& b) {
  return std::any_of(loaded.notes.begin(), loaded.notes.end(), [&](const std::string& note) {
    return note.find(a) != std::string::npos && note.find(b) != std::string::npos;
  });
}
void check_round_trip(const Outing& outing) {
  const std::string text = write_outing(outing);
  const LoadedOuting again = read_outing(text);
  REQUIRE_MESSAGE(again.refusal.empty(), again.refusal);
  CHECK(again.outing == outing);
  CHECK(write_outing(again.outing) == text);
}

constexpr double kNoon = 1781352000;  // 2026-06-13T12:00:00Z by date(1)

}  // namespace

TEST_CASE("day: a whole day is read, written and read back the same") {
  const LoadedOuting loaded = read_outing(file_with(
      R"("stints": [{"from_min": 1080, "on_air": false}, {"from_min": 1050, "levers": {"radio.mode": "cw", "antenna.frequency_mhz": 7.03}, "why": "skip"}],
 "on_air": [{"from": "2026-06-13T20:55:00Z", "until": "2026-06-13T21:40:00Z"}, {"from": "2026-06-13T21:50:00Z"}],
 "tally": [{"at": "2026-06-13T20:57:10.250Z"}, {"at": "2026-06-13T23:10:00+02:00", "count": 3, "forgotten": true, "mood": [1.50]}],
 "measured": [{"key": "feedline.measured_swr", "value": 1.2, "at": "2026-06-13T20:50:00Z"}, {"key": "sky.later", "value": "north"}])"));
  REQUIRE_MESSAGE(loaded.refusal.empty(), loaded.refusal);
  CHECK(loaded.notes.empty());
  const Outing& outing = loaded.outing;
  REQUIRE(outing.stints.size() == 2);
  CHECK(outing.stints[0].from_min == 1050);  // in order of time
  CHECK(outing.stints[0].set.size() == 2);
  CHECK(outing.stints[0].kept == "{\"why\":\"skip\"}");
  CHECK_FALSE(outing.stints[1].on_air);
  REQUIRE(outing.happened.on_air.size() == 2);
  CHECK(outing.happened.on_air[0].from_utc_s == kNoon + 8 * 3600 + 55 * 60);
  CHECK(is_on_air(outing.happened));
  REQUIRE(outing.happened.tally.size() == 2);
  CHECK(outing.happened.tally[0].at_utc_s == kNoon + 8 * 3600 + 57 * 60 + 10.25);
  CHECK(outing.happened.tally[1].at_utc_s == kNoon + 9 * 3600 + 10 * 60);
  CHECK(outing.happened.tally[1].kept == "{\"mood\":[1.50]}");
  CHECK(contacts_in(outing.happened) == 4);
  REQUIRE(last_measured(outing.happened, "feedline.measured_swr"));
  CHECK(last_measured(outing.happened, "feedline.measured_swr")->value == Value{1.2});
  check_round_trip(outing);
}

TEST_CASE("day: a row that cannot be used is noted, kept and written back; the others stay") {
  const LoadedOuting loaded = read_outing(file_with(
      R"("mood": 1, "stints": [{"from_min": 3000}, {"from_min": 1050, "on_air": false, "levers": {"radio.mode": "cw"}}, {"from_min": 60, "levers": {"feedline.length_m": 3}}, {"from_min": 5, "levers": {"radio.mode": "no such"}}, {"levers": 7}, {"from_min": 900}],
 "on_air": [{"from": "2026-06-13T20:55:00Z"}, {"from": "2026-06-13T21:50:00Z"}, {"until": "2026-06-13T21:50:00Z"}],
 "tally": [7, {"at": "2026-02-30T20:57:10Z"}, {"at": "2026-06-13T20:57:10Z", "count": 1.5}, {"at": "2026-06-13T20:57:10Z"}, {"at": "1999-06-13T20:57:10Z"}, {}],
 "measured": [{"key": "feedline.measured_swr", "value": 0.5}, {"value": 3}, {"key": "power.runtime_h", "value": "long"}, {"key": "power.runtime_h"}])"));
  REQUIRE_MESSAGE(loaded.refusal.empty(), loaded.refusal);
  CHECK(loaded.outing.stints.size() == 1);
  CHECK(loaded.outing.happened.on_air.size() == 1);
  CHECK(loaded.outing.happened.tally.size() == 1);
  CHECK(loaded.outing.happened.measured.empty());
  CHECK(noted(loaded, "stints 1", "0:00 to 48:00"));
  CHECK(noted(loaded, "stints 2", "A break sets nothing"));
  CHECK(noted(loaded, "stints 3", "a stint cannot change it"));
  CHECK(noted(loaded, "stints 4", "not one of its choices"));
  CHECK(noted(loaded, "on_air 2", "has not ended"));
  CHECK(noted(loaded, "tally 1", "an object is wanted"));
  CHECK(noted(loaded, "tally 2", "2026-06-13T22:09:14Z is wanted"));
  CHECK(noted(loaded, "tally 3", "whole number"));
  CHECK(noted(loaded, "measured 1", "Measured SWR"));
  CHECK(loaded.notes.size() == 5 + 2 + 5 + 4 + 1);
  const std::string written = write_outing(loaded.outing);
  for (const char* lost : {"3000", "no such", "2026-02-30", "\"until\"", "0.5", "long"})
    CHECK_MESSAGE(written.find(lost) != std::string::npos, lost);
  check_round_trip(loaded.outing);
}

TEST_CASE("day: lists that are none, empty lists and lists that are too long") {
  const LoadedOuting odd = read_outing(file_with(R"("tally": 7, "stints": [], "measured": {"a": 1})"));
  CHECK(odd.notes.size() == 2);
  CHECK(odd.outing.happened == Happened{});
  CHECK(write_outing(odd.outing).find("\"stints\": []") != std::string::npos);
  check_round_trip(odd.outing);

  std::string rows;
  for (std::size_t i = 0; i < kMostTaps + 2; ++i)
    rows += (i ? "," : "") + std::string(R"({"at":"2026-06-13T20:57:10Z"})");
  const LoadedOuting full = read_outing(file_with("\"tally\": [" + rows + "]"));
  CHECK(full.outing.happened.tally.size() == kMostTaps);
  CHECK(noted(full, "tally", "2 more are kept"));
  check_round_trip(full.outing);
}

TEST_CASE("day: contacts, forgotten ones, taking back, starting and ending") {
  Happened happened;
  CHECK_FALSE(take_back(happened));
  CHECK_FALSE(end_on_air(happened, kNoon));
  CHECK(start_on_air(happened, kNoon));
  CHECK_FALSE(start_on_air(happened, kNoon + 5));
  CHECK(add_contact(happened, kNoon + 60.1239));
  CHECK(happened.tally.back().at_utc_s == kNoon + 60.124);
  CHECK(add_forgotten(happened, kNoon + 90, 3));
  CHECK_FALSE(add_forgotten(happened, kNoon + 90, 0));
  CHECK_FALSE(add_forgotten(happened, kNoon + 90, 1000));
  CHECK_FALSE(add_contact(happened, -5));
  CHECK(contacts_in(happened) == 4);
  CHECK(take_back(happened));
  CHECK(contacts_in(happened) == 1);
  // the clock was set back an hour: no time on the air is less than nothing
  CHECK(end_on_air(happened, kNoon - 3600));
  CHECK(*happened.on_air.back().until_utc_s == kNoon + 60.124);
  CHECK(start_on_air(happened, kNoon - 3000));
  CHECK(happened.on_air.back().from_utc_s == kNoon + 60.124);
  CHECK(measure(happened, "feedline.measured_swr", 1.4, kNoon).empty());
  CHECK(measure(happened, "feedline.measured_swr", 1.3, {}).empty());
  CHECK_FALSE(measure(happened, "feedline.measured_swr", 0.2, kNoon).empty());
  CHECK_FALSE(measure(happened, "no.such", 1.0, kNoon).empty());
  CHECK_FALSE(measure(happened, "power.runtime_h", "long", kNoon).empty());
  CHECK(last_measured(happened, "feedline.measured_swr")->value == Value{1.3});
  CHECK_FALSE(last_measured(happened, "power.runtime_h"));
  Outing outing;
  outing.happened = happened;
  check_round_trip(outing);
}

TEST_CASE("day: undoing a plan does not undo what happened") {
  History past;
  Outing outing = test::outing_of({{L::feedline_length_m, 10.0}});
  past.record(outing, "20 m", false);
  outing = test::also(outing, {{L::feedline_length_m, 20.0}});
  add_contact(outing.happened, kNoon);
  const Outing back = past.undo(outing);
  CHECK(back.set[std::size_t(L::feedline_length_m)] == Value{10.0});
  CHECK(contacts_in(back.happened) == 1);
  const Outing forth = past.redo(back);
  CHECK(forth.set[std::size_t(L::feedline_length_m)] == Value{20.0});
  CHECK(contacts_in(forth.happened) == 1);
  // another outing is another tally
  past.record(forth, "another outing", false, true);
  const Outing other = past.undo(test::outing_of({}));
  CHECK(contacts_in(other.happened) == 1);
  CHECK(contacts_in(past.redo(other).happened) == 0);
}

TEST_CASE("day: a stint is the plan with what it sets") {
  Outing outing = test::whole_outing();
  outing.stints = with_stint(outing.stints, {.from_min = 700, .on_air = false});
  outing.stints = with_stint(outing.stints, {.from_min = 650, .set = {{L::radio_transmit_power_w, 20.0}}});
  const Plan plan = resolve(outing);
  REQUIRE(plan.stints.size() == 2);
  REQUIRE(plan.stints[0].plan.size() == 1);
  CHECK(plan.stints[0].plan[0][L::radio_transmit_power_w] == 20);
  CHECK(plan.stints[0].plan[0][L::battery_capacity_ah] == 20);
  CHECK(plan.stints[1].plan.empty());
  CHECK_FALSE(refusal(Stint{.from_min = -1}).empty());
  CHECK_FALSE(refusal(Stint{.set = {{L::radio_mode, "cw"}, {L::radio_mode, "ssb"}}}).empty());
  CHECK_FALSE(refusal(Stint{.set = {{L::radio_mode, Value{}}}}).empty());
}
