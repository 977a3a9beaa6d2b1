// Earlier outings: one that is ended stands in the history, gives the usual pace, can be taken out and brought
// back, and outlives the program.
#include <doctest/doctest.h>

#include <algorithm>

#include "core/outing/archive.h"
#include "core/outing/past.h"
#include "tests/app/stage.h"

using namespace gs;
using stage::machine;
using stage::Stage;

namespace {

/// The sample outing once more, so many days later: so many contacts within an hour, ended.
void one_outing(Stage& stage, int days_later, int contacts) {
  constexpr double kDayS = 86400;
  Outing outing = stage.session().outing();
  outing.happened = {};
  outing.date = sky::date_text(sky::date_of(sky::day_number({2026, 6, 13}) + days_later));
  stage.session().open(std::move(outing), "the next");
  const Plan& plan = stage.session().plan();
  const double start = utc_s_of(plan, {}, plan[L::clock_arrive_min] + plan[L::clock_set_up_min]);
  machine().utc_s = start;
  stage.settle();
  REQUIRE(stage.session().go_on_air(start));
  for (int i = 1; i <= contacts; ++i)
    stage.session().count_contact(start + 3600.0 * i / contacts, days_later * kDayS + 3600.0 * i / contacts);
  machine().utc_s = start + 3600;
  stage.settle();
  REQUIRE(stage.session().leave_air(machine().utc_s));
  stage.settle();
}

void three_outings(Stage& stage) {
  stage.open_sample();
  one_outing(stage, 0, 8);
  one_outing(stage, 7, 12);
  one_outing(stage, 14, 10);
}

std::string kept() { return machine().records["history"]; }

/// The sample outing, on the air since its planned first call; when that is.
double sample_on_air(Stage& stage) {
  stage.open_sample();
  const Plan& plan = stage.session().plan();
  const double start = utc_s_of(plan, {}, plan[L::clock_arrive_min] + plan[L::clock_set_up_min]);
  machine().utc_s = start;
  stage.settle();
  REQUIRE(stage.session().go_on_air(start));
  return start;
}

}  // namespace

TEST_CASE("an outing that is ended stands in the history, on the disk at once, and at the next start") {
  stage::Machine left;
  LoadedHistory written;
  {
    Stage stage(1024, 768);
    stage.open_sample();
    CHECK(kept().empty());
    one_outing(stage, 0, 8);
    written = read_history(kept());
    REQUIRE(written.outings.size() == 1);
    CHECK(written.outings[0].contacts == 8);
    CHECK(written.outings[0].on_air_min == 60);
    CHECK(written.outings[0].name == stage.session().outing().name);
    CHECK(written.outings[0].left_planned_pct);
    left = machine();
  }
  machine() = left;
  Stage again(390, 844);
  CHECK(again.session().past() == written.outings);
}

TEST_CASE("on the air again is the same outing, and what is changed afterwards is changed in its row") {
  Stage stage(1024, 768);
  stage.open_sample();
  one_outing(stage, 0, 8);
  const double then = machine().utc_s;
  const double planned = stage.session().past()[0].left_planned_pct.value();
  REQUIRE(stage.session().go_on_air(then + 600));
  stage.session().count_contact(then + 900, 1e6);
  REQUIRE(stage.session().leave_air(then + 1200));
  REQUIRE(stage.session().past().size() == 1);
  CHECK(stage.session().past()[0].contacts == 9);
  CHECK(stage.session().past()[0].on_air_min == 70);
  CHECK(stage.session().note_measured("power.left_at_leave_by_pct", 41.0, then).empty());
  CHECK(stage.session().past()[0].left_pct == 41);
  stage.session().rename("Another name");
  CHECK(stage.session().past()[0].name == "Another name");
  stage.session().set(L::battery_capacity_ah, 7.0);
  CHECK(stage.session().past()[0].left_planned_pct == planned);  // what was planned stays
  stage.settle();
  CHECK(read_history(kept()).outings == stage.session().past());
}

TEST_CASE("the usual pace comes from earlier outings, and the sheets say so") {
  Stage stage(1024, 768);
  stage.open_sample();
  stage.session().set(L::pace_per_hour, Value{});
  stage.settle();
  CHECK(stage.at("pace:from").name == "The pace, 12 an hour, is a guess until outings of your own say more.");
  for (const auto& [days, contacts] : {std::pair{0, 8}, {7, 12}, {14, 10}}) one_outing(stage, days, contacts);
  // gamma(4, 1/3 h) and 30 in 3 h
  stage.session().open(with(Outing(stage.session().outing()), L::pace_per_hour, Value{}), "a new one");
  stage.session().view = View{};
  stage.settle();
  // the one just opened still holds what happened to the third: only the two before it count for it
  CHECK(stage.session().plan()[L::pace_per_hour] == doctest::Approx(24 / (1 / 3.0 + 2)).epsilon(0.01));
  Outing next = stage.session().outing();
  next.happened = {};
  stage.session().open(next, "the next");
  stage.settle();
  CHECK(stage.session().plan()[L::pace_per_hour] == doctest::Approx(34 / (1 / 3.0 + 3)).epsilon(0.01));
  CHECK(stage.session().plan().from[std::size_t(L::pace_per_hour)] == From::usual);
  CHECK(stage.at("pace:from").name == "The pace, 10.2 an hour, is from your 3 outings with this antenna.");
  stage.session().view.sheet = Sheet::link;
  stage.session().view.link = Link::contacts;
  stage.settle();
  CHECK(stage.at("pace:from").name == "The pace, 10.2 an hour, is from your 3 outings with this antenna.");
  stage.session().make_usual({{"pace.per_hour", 9.0}});
  stage.settle();
  CHECK(stage.at("pace:from").name == "The pace, 9 an hour, is what you adopted after an outing.");
  stage.session().view.sheet = Sheet::history;
  stage.settle();
  stage.tap("usual:pace.per_hour:drop");
  CHECK(stage.at("pace:from").name == "The pace, 10.2 an hour, is from your 3 outings with this antenna.");
  CHECK(read_settings(machine().settings).settings.usual.empty());
}

TEST_CASE("the history shows plots and rows; one is taken out by a tap and brought back by another") {
  for (const auto& [w, h] : {std::pair{1024.0F, 768.0F}, {390.0F, 844.0F}}) {
    Stage stage(w, h);
    three_outings(stage);
    stage.session().note_measured("power.left_at_leave_by_pct", 41.0, machine().utc_s);
    stage.session().view.sheet = Sheet::after;
    stage.settle();
    CHECK(stage.find("after:kept") != nullptr);
    stage.tap("after:open_history");
    for (const char* plot : {"history:pace", "history:count", "history:battery"})
      CHECK_FALSE(stage.at(plot).value.empty());
    CHECK(stage.at("history:count").value == "2 of 3 reached their target.");
    CHECK(stage.at("past:2").name == "Sat 27 Jun 2026, Quillet Meadow, 10 of 10, 10 an hour");
    const std::vector<PastOuting> before = stage.session().past();
    stage.tap("past:1");
    stage.tap("past:1:out");
    CHECK(stage.session().past().size() == 2);
    CHECK(read_history(kept()).outings.size() == 2);
    stage.tap("past:back");
    CHECK(stage.session().past() == before);
    CHECK(read_history(kept()).outings == before);
    CHECK(stage.find("past:back") == nullptr);
    stage.tap("history:csv");
    CHECK(machine().saved_name == "earlier-outings.csv");
    CHECK(machine().saved_text == history_csv(before));
    stage.tap("history:share");
    CHECK(machine().shared_name == "earlier-outings.csv");
  }
}

TEST_CASE("a history file of another device is added to, never put in the place of what is there") {
  Stage stage(1024, 768);
  three_outings(stage);
  const std::vector<PastOuting> before = stage.session().past();
  std::vector<PastOuting> file{before[1]};
  file.push_back({"Elsewhere", "2026-05-02", 4, 30, 10, 0, "dipole", {}});
  stage.shell().file_picked("earlier-outings.json", write_history(file));
  stage.settle();
  CHECK(stage.session().past().size() == 4);
  CHECK(stage.session().past()[0].name == "Elsewhere");
  CHECK(stage.session().notes.back() == "earlier-outings.json: 1 outing was added to the history.");
}

TEST_CASE("a history of a newer version counts and is never written over; one that cannot be read stays") {
  for (const char* text :
       {R"({"groundsheet": 9, "kind": "history", "outings": [{"contacts": 20, "on_air_min": 60}]})", "{"}) {
    machine().records["history"] = text;
    Stage stage(1024, 768);
    const bool read = stage.session().past().size() == 1;
    CHECK(read == (std::string(text) != "{"));
    three_outings(stage);
    CHECK(kept() == text);
    CHECK_FALSE(stage.session().past_trouble().empty());
    stage.session().view.sheet = Sheet::history;
    stage.settle();
    CHECK(stage.find("history:trouble") != nullptr);
  }
}

TEST_CASE("two windows that end an outing at the same moment keep both") {
  Stage stage(1024, 768);
  stage.open_sample();
  one_outing(stage, 0, 8);
  std::vector<PastOuting> theirs{{"Theirs", "2026-06-13", 5, 50, 10, 0, "", {}, 1781373600.0}};
  stage.shell().kept_elsewhere("history", write_history(theirs), true);
  stage.settle();
  CHECK(stage.session().past().size() == 2);
  CHECK(read_history(kept()).outings.size() == 2);
}

TEST_CASE("killed right after the end: the journal brings the outing into the history") {
  stage::Machine left;
  {
    Stage stage(1024, 768);
    stage.open_sample();
    one_outing(stage, 0, 8);
    left = machine();
  }
  left.records.erase("history");  // as it stood before the last step was saved
  std::string& record = left.records.at(left.records.at("open"));
  Outing outing = read_outing(record).outing;
  outing.happened.on_air.back().until_utc_s.reset();
  outing.happened.tally.pop_back();
  record = write_outing(outing);
  machine() = left;
  Stage again(1024, 768);
  CHECK(contacts_in(again.session().outing().happened) == 8);
  CHECK(again.session().past().size() == 1);
}

TEST_CASE("an outing whose day went by without an end is offered to the history, and goes in with a tap") {
  Stage stage(1024, 768);
  const double start = sample_on_air(stage);
  for (int i = 1; i <= 6; ++i) stage.session().count_contact(start + 600.0 * i, 600.0 * i);
  machine().utc_s = start + 2 * 86400;
  stage.settle();
  CHECK(stage.session().phase() == Phase::after);
  CHECK(stage.session().past().empty());
  stage.session().view.sheet = Sheet::history;
  stage.settle();
  const std::string said = stage.at("history:open").name;
  CHECK(said.find("does not count here yet: 6 of 10 contacts in 2 h 32") != std::string::npos);
  stage.tap("history:keep");
  REQUIRE(stage.session().past().size() == 1);
  CHECK(stage.session().past()[0].contacts == 6);
  CHECK(stage.find("history:open") == nullptr);
  // taken out on purpose, it is not offered again at once
  stage.session().drop_past(0);
  stage.settle();
  CHECK(stage.find("history:open") == nullptr);
}

TEST_CASE("less than a minute on the air is not offered to the history, and that is said") {
  Stage stage(1024, 768);
  const double start = sample_on_air(stage);
  machine().utc_s = start + 20;
  stage.settle();
  REQUIRE(stage.session().leave_air(machine().utc_s));
  stage.session().view.sheet = Sheet::after;
  stage.settle();
  CHECK(stage.find("after:keep") == nullptr);
  CHECK(stage.at("after:too_short").name.find("Less than a minute") == 0);
  CHECK(stage.session().past().empty());
}
