// Turned round in the hand: the value to reach by slider and keypad, an answer taken and undone; and the power on
// the drawing of the set's current.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "core/outing/feedline_join.h"
#include "tests/app/stage.h"

using namespace gs;
using stage::Stage;

namespace {

void open(Stage& stage, Link link) {
  stage.open_sample();
  View& view = stage.session().view;
  view.sheet = Sheet::link;
  view.link = link;
  view.panel = Panel::none;
  stage.settle();
}

void press(Stage& stage, const std::string& id) {
  stage.shell().act({id, platform::MirrorAction::Verb::press});
  stage.settle();
}

void set(Stage& stage, const std::string& id, double value) {
  stage.shell().act({id, platform::MirrorAction::Verb::set, value});
  stage.settle();
}

}  // namespace

TEST_CASE("turned round: what is to be reached has the lever's slider, steppers and keypad") {
  Stage stage(1024, 768);
  open(stage, Link::battery);
  press(stage, "turn:open");
  REQUIRE(stage.session().view.panel == Panel::turned);
  const mirror::Node slider = stage.at("turn:wanted");
  CHECK(slider.role == mirror::Role::slider);
  CHECK(slider.h >= 48);
  set(stage, "turn:wanted", 2.5);
  CHECK(stage.session().view.turn.wanted == 2.5);
  press(stage, "turn:wanted:more");
  CHECK(stage.session().view.turn.wanted == 2.75);
  press(stage, "turn:wanted:type");
  CHECK(stage.session().view.panel == Panel::keypad);
  press(stage, "keypad:3");
  // before it is set the keypad says what it would take
  CHECK(stage.at("keypad:typed").name.find("takes ") != std::string::npos);
  press(stage, "keypad:set");
  CHECK(stage.session().view.panel == Panel::turned);
  CHECK(stage.session().view.turn.wanted == 3);
  CHECK(stage.find("turn:take:battery.capacity_ah") != nullptr);
}

TEST_CASE("turned round: a step past the answer is said, and asked for the supply it says the lead") {
  Stage stage(1024, 768);
  open(stage, Link::battery);
  press(stage, "turn:open");
  CHECK(stage.at("turn:take:battery.capacity_ah").name.find("one step on, ") != std::string::npos);
  press(stage, "turn:goal=power.supply_at_key_down_v");
  CHECK(stage.session().view.turn.reading == R::power_supply_at_key_down_v);
  CHECK(stage.at("turn:wanted").name.find("Supply at key-down") != std::string::npos);
  press(stage, "turn:may:lead.wire");
  CHECK(stage.find("turn:take:lead.wire") != nullptr);
}

TEST_CASE("turned round: the lightest cable under a loss goes into the plan in one step, and out again") {
  Stage stage(1024, 768);
  open(stage, Link::feedline);
  stage.session().set(L::feedline_measured_swr, 1.8);
  stage.settle();
  press(stage, "turn:open");
  press(stage, "turn:goal=feedline.total_loss_db");
  set(stage, "turn:wanted", 1.2);
  const std::string before = std::get<std::string>(stage.session().outing().set[std::size_t(L::feedline_cable)]);
  const double at_antenna = join_feedline(stage.session().plan()).swr_at_antenna;
  press(stage, "turn:take:feedline.cable");
  CHECK(stage.session().view.panel == Panel::none);
  const std::string after = std::get<std::string>(stage.session().outing().set[std::size_t(L::feedline_cable)]);
  CHECK(after != before);
  CHECK(stage.session().outlook()[R::feedline_total_loss_db].value <= 1.2 + 1e-9);
  // the antenna stays as it is, whatever the roll
  CHECK(join_feedline(stage.session().plan()).swr_at_antenna == doctest::Approx(at_antenna).epsilon(1e-6));
  stage.session().undo();
  CHECK(std::get<std::string>(stage.session().outing().set[std::size_t(L::feedline_cable)]) == before);
}

TEST_CASE("radio: the power is dragged on the drawing of the current, in one step of undo") {
  Stage stage(1024, 768);
  open(stage, Link::radio);
  const mirror::Node cursor = stage.at("current-plot:power");
  CHECK(cursor.role == mirror::Role::slider);
  const double before = stage.session().plan()[L::radio_transmit_power_w];
  const float y = cursor.y + cursor.h / 2;
  const float x = cursor.x + cursor.w * float(before / stage.session().plan()[L::radio_full_power_w]);
  stage.drag(x, y, x - 60, y);
  stage.settle();
  const double after = stage.session().plan()[L::radio_transmit_power_w];
  CHECK(after < before);
  stage.session().undo();
  CHECK(stage.session().plan()[L::radio_transmit_power_w] == before);
  set(stage, "current-plot:power", 5);
  CHECK(stage.session().plan()[L::radio_transmit_power_w] == 5);
  // a table of its points for whoever cannot see it
  CHECK(stage.find("current-plot:table") != nullptr);
}

TEST_CASE("feed line: an SWR alone draws a band, never one line") {
  Stage stage(1024, 768);
  open(stage, Link::feedline);
  stage.session().set(L::feedline_measured_swr, 3.0);
  stage.settle();
  for (const char* id : {"loss-plot", "along-swr", "along-volt"}) {
    CAPTURE(id);
    REQUIRE(stage.find(id) != nullptr);
    int least = 0, most = 0;
    for (const mirror::Node& node : stage.tree().nodes) {
      if (node.role != mirror::Role::columnheader || node.id.rfind(std::string(id) + ":table", 0) != 0) continue;
      least += node.name.rfind("least", 0) == 0;
      most += node.name.rfind("most", 0) == 0;
    }
    CHECK(least == 1);
    CHECK(most == 1);
  }
  CHECK(stage.at("along-swr").value.find(" to ") != std::string::npos);
}
