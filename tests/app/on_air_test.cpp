// Being on the air by hand, by key, by mirror: every contact counts once, none is lost, the plan says what it
// costs.
#include <doctest/doctest.h>

#include <cmath>

#include "app/tally_journal.h"
#include "core/outing/archive.h"
#include "tests/app/stage.h"

using namespace gs;
using platform::Key;
using platform::PointerKind;
using stage::machine;
using stage::Stage;

namespace {

int count(Stage& stage) { return contacts_in(stage.session().outing().happened); }

/// The sample outing on its own day, so many minutes after its planned start.
void at_start(Stage& stage, double minutes_late = 0) {
  stage.open_sample();
  const Plan& plan = stage.session().plan();
  machine().utc_s =
      utc_s_of(plan, stage.session().now(), plan[L::clock_arrive_min] + plan[L::clock_set_up_min] + minutes_late);
  stage.session().view.sheet = Sheet::on_air;
  stage.settle();
}

void go_on_air(Stage& stage) {
  at_start(stage);
  stage.tap("air:start");
  REQUIRE(stage.session().phase() == Phase::on_air);
}

void wait(double seconds) {
  machine().now_s += seconds;
  machine().utc_s += seconds;
}

/// A quick press without waiting for frames in between.
void press(Stage& stage, const mirror::Node& button) {
  const float x = button.x + button.w / 2, y = button.y + button.h / 2;
  stage.touch(PointerKind::down, x, y);
  wait(0.05);
  stage.touch(PointerKind::up, x, y);
}

}  // namespace

TEST_CASE("1,000 taps 450 ms apart are 1,000 contacts, 1,000 pairs 100 ms apart as many") {
  for (const bool pairs : {false, true}) {
    Stage stage(390, 844);
    go_on_air(stage);
    const mirror::Node button = stage.at("air:contact");
    for (int i = 0; i < 1000; ++i) {
      press(stage, button);
      if (pairs) {
        wait(0.05);
        press(stage, button);
      }
      stage.settle();
      wait(0.45 - (pairs ? 0.15 : 0.05));
    }
    stage.settle();
    MESSAGE((pairs ? "1,000 pairs 100 ms apart: " : "1,000 taps 450 ms apart: ")
            << count(stage) << " contacts, " << machine().buzzes << " buzzes");
    CHECK(count(stage) == 1000);
    CHECK(machine().buzzes == 1000);
    CHECK(machine().journal.size() == 1001);  // and the start
  }
}

TEST_CASE("taps that come while a frame hangs all count") {
  Stage stage(390, 844);
  go_on_air(stage);
  const mirror::Node button = stage.at("air:contact");
  const double first_s = machine().utc_s;
  for (int i = 0; i < 5; ++i) {
    press(stage, button);
    wait(0.45);
  }
  stage.settle();
  CHECK(count(stage) == 5);
  const auto& tally = stage.session().outing().happened.tally;
  for (std::size_t i = 0; i < tally.size(); ++i)
    CHECK(std::abs(tally[i].at_utc_s - (first_s + 0.05 + 0.5 * double(i))) < 0.01);
}

TEST_CASE("a finger that leaves the button before it lifts counts nothing") {
  Stage stage(390, 844);
  go_on_air(stage);
  const mirror::Node button = stage.at("air:contact");
  const float x = button.x + button.w / 2, y = button.y + button.h / 2;
  stage.touch(PointerKind::down, x, y);
  stage.frame();
  CHECK(count(stage) == 0);
  stage.touch(PointerKind::move, x, y - 200);
  stage.frame();
  stage.touch(PointerKind::up, x, y - 200);
  stage.settle();
  CHECK(count(stage) == 0);
}

TEST_CASE("undo takes back the last contact, and says which") {
  Stage stage(820, 1180);
  go_on_air(stage);
  CHECK(stage.at("air:undo").disabled);
  stage.tap("air:contact");
  wait(600);
  stage.tap("air:contact");
  CHECK(count(stage) == 2);
  CHECK(stage.at("air:undo").name == "Undo the one at 16:50");
  CHECK(stage.at("air:count").name.find("2 of 10 contacts") == 0);
  stage.tap("air:undo");
  CHECK(count(stage) == 1);
  CHECK(stage.at("air:undo").name == "Undo the one at 16:40");
  // the plan's own undo is out of reach here, and elsewhere leaves the tally alone
  CHECK(stage.find("undo") == nullptr);
  stage.press(Key::undo);
  CHECK(count(stage) == 1);
  stage.tap("home");
  stage.session().set(L::pace_target, 4.0);
  stage.settle();
  stage.tap("undo");
  CHECK(stage.session().plan()[L::pace_target] == 10);
  CHECK(count(stage) == 1);
}

TEST_CASE("some that were forgotten: digits by finger and by key, taken back in one") {
  Stage stage(390, 844);
  go_on_air(stage);
  stage.tap("air:forgotten");
  stage.tap("keypad:1");
  stage.type('2');
  CHECK(stage.at("keypad:typed").name == "12 forgotten");
  stage.press(Key::backspace);
  stage.type('3');
  stage.tap("keypad:set");
  CHECK(count(stage) == 13);
  CHECK(stage.find("keypad") == nullptr);
  CHECK(stage.at("air:undo").name == "Undo 13 forgotten");
  stage.tap("air:undo");
  CHECK(count(stage) == 0);
}

TEST_CASE("the whole flow at 390x844 by mirror and keys: start, count, end") {
  Stage stage(390, 844);
  at_start(stage, 12);
  CHECK(stage.at("air:cost").name.find("12 min late") != std::string::npos);
  const auto press_by_name = [&](std::string_view name) {
    for (const mirror::Node& node : stage.tree().nodes)
      if (node.role == mirror::Role::button && node.name == name) {
        stage.shell().act({node.id, platform::MirrorAction::Verb::press, 0});
        stage.settle();
        return;
      }
    FAIL("no button called " << std::string(name));
  };
  press_by_name("Start being on the air");
  press_by_name("Add one contact, 0 so far");
  wait(60);
  press_by_name("Add one contact, 1 so far");
  CHECK(count(stage) == 2);
  for (int i = 0; i < 60 && stage.tree().focus != "air:contact"; ++i) stage.press(Key::tab);
  wait(60);
  stage.press(Key::enter);
  wait(60);
  stage.press(Key::space);
  CHECK(count(stage) == 4);
  press_by_name("End being on the air");
  CHECK(stage.session().phase() == Phase::after);
  CHECK(count(stage) == 4);
}

TEST_CASE("only while one counts is the screen kept awake and a frame drawn each second") {
  Stage stage(390, 844);
  at_start(stage);
  CHECK(!machine().kept_awake);
  stage.tap("air:start");
  CHECK(machine().kept_awake);
  CHECK(machine().wake_in_s > 0);
  CHECK(machine().wake_in_s <= 1);
  const double second = machine().utc_s + machine().wake_in_s;
  CHECK(std::abs(second - std::round(second)) < 0.02);
  stage.tap("home");
  CHECK(!machine().kept_awake);
  machine().wake_in_s = -1;
  stage.settle();
  const bool rests = machine().wake_in_s < 0 || machine().wake_in_s > 30;
  CHECK(rests);
}

TEST_CASE("outside the outing's date nothing is counted; its date can be set to today") {
  Stage stage(1024, 768);
  at_start(stage);
  machine().utc_s += 40 * 86400;
  machine().date = "2026-07-23";
  stage.settle();
  CHECK(stage.find("air:start") == nullptr);
  stage.tap("air:today");
  CHECK(stage.session().outing().date == "2026-07-23");
  CHECK(stage.find("air:start") != nullptr);
}

TEST_CASE("a clock that is set back loses no contact and says so; another zone is said") {
  Stage stage(390, 844);
  go_on_air(stage);
  stage.tap("air:contact");
  wait(30 * 60);
  stage.tap("air:contact");
  machine().utc_s -= 3600;
  stage.settle();
  CHECK(stage.find("air:clock_doubt") != nullptr);
  machine().now_s += 5;
  stage.tap("air:contact");
  CHECK(count(stage) == 3);
  CHECK(stage.session().phase() == Phase::on_air);
  machine().utc_s += 3600;
  machine().utc_offset_min = -180;
  stage.settle();
  CHECK(stage.at("air:zone").name.find("1 h 00 ahead") != std::string::npos);
  CHECK(count(stage) == 3);
}

TEST_CASE("ended by force after any tap, at most that one is lost: nothing at all where its line was noted") {
  Stage* stage = new Stage(390, 844);
  go_on_air(*stage);
  machine().saves = false;  // the outing itself is never saved again
  std::vector<std::string> lines;
  std::vector<int> counts;
  const auto note = [&] {
    lines = machine().journal;
    counts.push_back(count(*stage));
  };
  note();
  for (int i = 0; i < 30; ++i) {
    wait(20);
    if (i % 7 == 5) {
      stage->tap("air:undo");
    } else {
      stage->tap("air:contact");
    }
    note();
  }
  const std::string kept = machine().outing;
  delete stage;
  for (std::size_t last = 0; last < counts.size(); ++last) {
    machine().outing = kept;
    machine().journal.assign(lines.begin(), lines.begin() + std::ptrdiff_t(last + 1));
    Stage again(390, 844);
    INFO("after line " << last);
    CHECK(count(again) == counts[last]);
    CHECK(is_on_air(again.session().outing().happened));
  }
}

TEST_CASE("lines played over an outing that holds them already change nothing") {
  Outing outing;
  outing.name = "A meadow with a long name";
  outing.date = "2026-06-13";
  std::vector<Outing> states{outing};
  std::vector<std::string> lines;
  unsigned seed = 7;
  const auto random = [&] { return (seed = seed * 1664525u + 1013904223u) >> 16; };
  double utc_s = 1781373600;
  lines.push_back(start_line(outing, utc_s));
  REQUIRE(start_on_air(outing.happened, utc_s));
  states.push_back(outing);
  for (int i = 0; i < 400; ++i) {
    utc_s += 30;
    const unsigned what = random() % 5;
    if (what == 0 && !outing.happened.tally.empty()) {
      lines.push_back(take_back_line(outing));
      REQUIRE(take_back(outing.happened));
    } else if (what == 1) {
      lines.push_back(forgotten_line(outing, utc_s, 3));
      REQUIRE(add_forgotten(outing.happened, utc_s, 3));
    } else {
      lines.push_back(contact_line(outing, utc_s));
      REQUIRE(add_contact(outing.happened, utc_s));
    }
    states.push_back(outing);
  }
  lines.push_back(end_line(outing, utc_s));
  REQUIRE(end_on_air(outing.happened, utc_s));
  states.push_back(outing);
  int wrong = 0;
  for (Outing state : states) {
    for (const std::string& line : lines) play(state, line);
    wrong += !(state == outing);
  }
  MESSAGE(states.size() << " saved states, " << lines.size() << " lines played over each: " << wrong << " differ");
  CHECK(wrong == 0);
  Outing other = states.front();
  other.name = "Another";
  for (const std::string& line : lines) CHECK(!play(other, line));
  for (const char* line :
       {"", "contact", "contact - 0", "start 0 never - x", "forgotten - 0 2026-06-13T18:00:00Z -4"})
    CHECK(!play(other, line));
}
