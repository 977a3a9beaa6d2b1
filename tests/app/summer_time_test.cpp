// Summer time on the screen: what the sheet says of the night in which the clock is set, and an outing that follows
// the machine's zone to another day.
#include <doctest/doctest.h>

#include "core/outing/now.h"
#include "tests/app/stage.h"

using namespace gs;
using stage::machine;
using stage::Stage;

namespace {

void until_five(Stage& stage) {
  stage.open_sample();
  stage.session().set(L::clock_utc_offset_min, double(machine().utc_offset_min));
  stage.session().set(L::clock_arrive_min, 23 * 60.0);
  stage.session().set(L::clock_leave_by_min, 29 * 60.0);
  stage.session().set_date("2026-10-31");
  stage.session().view.sheet = Sheet::link;
  stage.session().view.link = Link::clock;
  stage.settle();
}

}  // namespace

// In the night to 1 November 2026 the clock goes back at 2:00 in the eastern United States: 15 U.S.C. 260a, from
// memory.
TEST_CASE(
    "summer time that ends during the stay is said on the clock's sheet, and the line is drawn an hour longer") {
  Stage stage(1024, 768);
  machine().change = {26 * 60, -60};
  until_five(stage);
  CHECK(stage.at("clock:change").name ==
        "At 02:00 next day the clock is set back to 01:00: the stay is an hour longer than its times say.");
  CHECK(stage.session().plan()[L::clock_change_min] == -60);
  CHECK(stage.session().plan()[L::clock_changes_at_min] == 26 * 60);
  const double on_air = pace::on_air(stay_of(stage.session().plan())).minutes;
  CHECK(on_air ==
        7 * 60 - stage.session().plan()[L::clock_set_up_min] - stage.session().plan()[L::clock_pack_down_min]);
  CHECK(stage.at("timeline").value.find("leave by 05:00 next day") != std::string::npos);
  CHECK(stage.find("clock:zone") == nullptr);
}

TEST_CASE(
    "a date on which this machine's clock is another: an outing that goes by it follows, any other is asked") {
  Stage stage(1024, 768);
  until_five(stage);
  CHECK(stage.find("clock:change") == nullptr);
  machine().utc_offset_min = -300;  // winter time on the next date that is asked for
  stage.session().set_date("2026-12-05");
  stage.settle();
  CHECK(stage.session().plan()[L::clock_utc_offset_min] == -300);
  stage.session().set(L::clock_utc_offset_min, 60.0);
  stage.settle();
  CHECK(stage.at("clock:zone").name.find("behind the outing's UTC offset") != std::string::npos);
  stage.tap("clock:zone:use");
  CHECK(stage.session().plan()[L::clock_utc_offset_min] == -300);
  CHECK(stage.find("clock:zone") == nullptr);
}
