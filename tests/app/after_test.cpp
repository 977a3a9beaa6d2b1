// After the outing: what happened stands beside the plan, is adopted by a tap, and outlives the program.
#include <doctest/doctest.h>

#include <algorithm>

#include "core/outing/archive.h"
#include "tests/app/stage.h"

using namespace gs;
using stage::machine;
using stage::Stage;

namespace {

/// The sample outing: started 20 minutes late, 5 contacts in an hour, ended.
void after_an_hour(Stage& stage) {
  stage.open_sample();
  const Plan& plan = stage.session().plan();
  const double start =
      utc_s_of(plan, stage.session().now(), plan[L::clock_arrive_min] + plan[L::clock_set_up_min] + 20);
  machine().utc_s = start;
  stage.settle();
  REQUIRE(stage.session().go_on_air(start));
  for (int i = 1; i <= 5; ++i) stage.session().count_contact(start + 600 * i, 600 * i);
  machine().utc_s = start + 3600;
  stage.settle();
  REQUIRE(stage.session().leave_air(machine().utc_s));
  stage.session().view.sheet = Sheet::after;
  stage.settle();
}

}  // namespace

TEST_CASE("set-up and pace are adopted by a tap each and usual from then on; the outing itself stays") {
  for (const auto& [w, h] : {std::pair{1024.0F, 768.0F}, {390.0F, 844.0F}}) {
    Stage stage(w, h);
    after_an_hour(stage);
    CHECK(stage.at("beside:pace.per_hour").name.find("happened 5") != std::string::npos);
    CHECK(stage.at("beside:clock.set_up_min").name.find("happened 30 min") != std::string::npos);
    CHECK(stage.at("after:use").disabled);
    stage.tap("adopt:clock.set_up_min");
    stage.tap("adopt:pace.per_hour");
    CHECK(stage.at("adopt:pace.per_hour").checked == 1);
    CHECK(stage.at("adopt:pace.per_hour").name == "Adopt usual pace, 5");
    CHECK(stage.at("after:use").name == "Use 2 from now on");
    const Values before = stage.session().outing().set;
    stage.tap("after:use");
    CHECK(stage.session().outing().set == before);
    CHECK(read_settings(machine().settings).settings.usual.size() == 2);
    stage.session().open(Outing{}, "a new outing");
    CHECK(stage.session().plan()[L::pace_per_hour] == 5);
    CHECK(stage.session().plan()[L::clock_set_up_min] == 30);
    CHECK(stage.session().plan().from[std::size_t(L::pace_per_hour)] == From::usual);
  }
}

TEST_CASE("what was measured is entered by steps, stands beside the plan and can be adopted") {
  Stage stage(1024, 768);
  after_an_hour(stage);
  stage.tap("measure:radio.receive_current_a");
  const double first = stage.at("measure:radio.receive_current_a").now;
  stage.tap("measure:radio.receive_current_a:more");
  stage.tap("measure:radio.receive_current_a:more");
  CHECK(stage.at("measure:radio.receive_current_a").now > first);
  CHECK(stage.session().outing().happened.measured.size() == 1);
  CHECK(stage.find("beside:radio.receive_current_a") != nullptr);
  CHECK(stage.find("adopt:radio.receive_current_a") != nullptr);
  CHECK(read_outing(machine().outing).outing.happened.measured.size() == 1);
}

TEST_CASE("tally and table are handed out as files of text") {
  Stage stage(1024, 768);
  after_an_hour(stage);
  stage.tap("after:tally");
  CHECK(machine().saved_name == "quillet-meadow-tally.csv");
  CHECK(machine().saved_text.rfind("utc,local,count,forgotten\n", 0) == 0);
  CHECK(std::count(machine().saved_text.begin(), machine().saved_text.end(), '\n') == 6);
  stage.tap("after:table");
  CHECK(machine().saved_name == "quillet-meadow-planned-happened.csv");
  CHECK(machine().saved_text.find("pace.per_hour,") != std::string::npos);
}
