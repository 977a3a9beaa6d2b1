// The program as a person meets it: taps, drags, scrolling, keys, typing, undo, pin, keeping. No screen needed.
#include <doctest/doctest.h>

#include <cmath>
#include <set>

#include "app/parts/scale.h"
#include "core/outing/archive.h"
#include "tests/app/stage.h"

using namespace gs;
using platform::Device;
using platform::Key;
using platform::PointerKind;
using stage::machine;
using stage::Stage;

namespace {

double length_m(Stage& stage) { return stage.session().plan()[L::feedline_length_m]; }

void open_feedline(Stage& stage) {
  stage.open_sample();
  stage.tap("chain:feedline");
  REQUIRE(stage.find("feedline.length_m") != nullptr);
}

/// Where the slider's thumb stands, CSS px.
float thumb_x(Stage& stage) {
  const mirror::Node node = stage.at("feedline.length_m");
  const parts::Track track = parts::track_of(lever(L::feedline_length_m));
  return node.x + look::slider::kThumb +
         (node.w - 2 * look::slider::kThumb) * float(parts::place_of(track, node.least, node.most, node.now));
}

}  // namespace

TEST_CASE("a first run knows nothing and offers two ways to begin") {
  Stage stage(1024, 768);
  CHECK(stage.at("verdict").name.find("Nothing known yet") != std::string::npos);
  CHECK(stage.find("begin:own") != nullptr);
  stage.tap("begin:sample");
  CHECK(stage.at("verdict").name.find("holds") != std::string::npos);
  CHECK(machine().outing.find("rg58c") != std::string::npos);
}

TEST_CASE("an outing of one's own begins with today's date and offset, and nothing else") {
  Stage stage(1024, 768);
  stage.tap("begin:own");
  CHECK(stage.session().outing().date == "2026-06-13");
  CHECK(stage.session().plan()[L::clock_utc_offset_min] == -240);
  int set = 0;
  for (const Value& value : stage.session().outing().set) set += !std::holds_alternative<std::monostate>(value);
  CHECK(set == 1);
  CHECK(stage.at("sheet").name == "Battery");
}

TEST_CASE("a finger drags the thumb, every frame is computed anew, the whole drag is one step of undo") {
  for (const float ratio : {1.0F, 2.0F, 2.625F}) {
    Stage stage(1024, 768, ratio);
    open_feedline(stage);
    const mirror::Node node = stage.at("feedline.length_m");
    const float y = node.y + node.h / 2, from = thumb_x(stage);
    const double before = length_m(stage);
    const double watts = stage.session().outlook()[R::feedline_power_to_antenna_w].value;
    stage.touch(PointerKind::down, from, y);
    stage.frame();
    double last = before;
    int moved = 0;
    for (int i = 1; i <= 10; ++i) {
      stage.touch(PointerKind::move, from + 12 * float(i), y);
      stage.frame();
      moved += length_m(stage) > last;
      last = length_m(stage);
      CHECK(stage.at("feedline.length_m").now == last);
    }
    stage.touch(PointerKind::up, from + 120, y);
    stage.settle();
    CHECK(moved == 10);
    const Lever& row = lever(L::feedline_length_m);
    const double moved_by = 120 / double(node.w - 2 * look::slider::kThumb);
    const double expected =
        parts::value_at(parts::track_of(row), row.least, row.most,
                        parts::place_of(parts::track_of(row), row.least, row.most, before) + moved_by);
    MESSAGE("ratio " << ratio << ": dragged to " << length_m(stage) << " m, by the track's scale " << expected
                     << " m");
    // half a step of 0.5 m, and where half a px of the drawn thumb stands at this place of the track
    CHECK(std::abs(length_m(stage) - expected) <= 0.51);
    CHECK(stage.session().outlook()[R::feedline_power_to_antenna_w].value < watts);
    stage.press(Key::undo);
    CHECK(length_m(stage) == before);
    stage.press(Key::redo);
    CHECK(length_m(stage) == last);
  }
}

TEST_CASE("a finger that scrolls over a slider scrolls, and leaves the slider alone") {
  Stage stage(1024, 600);
  open_feedline(stage);
  const mirror::Node node = stage.at("feedline.length_m");
  const double before = length_m(stage);
  const float x = node.x + node.w * 0.8F, y = node.y + node.h / 2;
  stage.drag(x, y, x + 2, y - 120);
  CHECK(length_m(stage) == before);
  CHECK(stage.at("feedline.length_m").y < node.y - 60);
}

TEST_CASE("a resting finger takes hold of the track, a tap on it goes straight there, a mouse drags at once") {
  Stage stage(1024, 768);
  open_feedline(stage);
  const mirror::Node node = stage.at("feedline.length_m");
  const float y = node.y + node.h / 2, x = node.x + node.w * 0.75F;
  const Lever& row = lever(L::feedline_length_m);
  const auto at = [&](float px) {  // by the track's own scale
    const double place = double(px - node.x - look::slider::kThumb) / double(node.w - 2 * look::slider::kThumb);
    return parts::value_at(parts::track_of(row), row.least, row.most, place);
  };
  stage.touch(PointerKind::down, x, y);
  for (int i = 0; i < 12; ++i) stage.frame();  // 200 ms
  CHECK(std::abs(length_m(stage) - at(x)) <= 0.51);
  stage.touch(PointerKind::up, x, y);
  stage.settle();
  stage.drag(node.x + node.w * 0.25F, y, node.x + node.w * 0.25F, y, 1, Device::mouse);
  CHECK(std::abs(length_m(stage) - at(node.x + node.w * 0.25F)) <= 0.51);
  stage.touch(PointerKind::down, x, y);
  stage.frame();
  stage.touch(PointerKind::up, x, y);
  stage.settle();
  CHECK(std::abs(length_m(stage) - at(x)) <= 0.51);
}

TEST_CASE("far from the track the drag is ten times finer") {
  Stage stage(1024, 768);
  open_feedline(stage);
  const mirror::Node node = stage.at("feedline.length_m");
  const float y = node.y + node.h / 2, x = thumb_x(stage);
  stage.drag(x, y, x + 31, y + 100, 10);
  const double tenths = length_m(stage) * 20;  // the step is 0.5 m, fine 0.05 m
  CHECK(std::abs(tenths - std::round(tenths)) < 1e-6);
}

TEST_CASE("steppers step once a tap and repeat while they are held") {
  Stage stage(1024, 768);
  open_feedline(stage);
  const double before = length_m(stage);
  stage.tap("feedline.length_m:more");
  CHECK(length_m(stage) == doctest::Approx(before + 0.5));
  const mirror::Node node = stage.at("feedline.length_m:more");
  stage.touch(PointerKind::down, node.x + 20, node.y + 20);
  for (int i = 0; i < 60; ++i) stage.frame();  // one second: 0.4 s wait, then 6 a second
  stage.touch(PointerKind::up, node.x + 20, node.y + 20);
  stage.settle();
  const double steps = (length_m(stage) - before - 0.5) / 0.5;
  MESSAGE("held one second: " << steps << " steps");
  CHECK(steps >= 3);
  CHECK(steps <= 5);
}

TEST_CASE("1000 taps on random controls: each acts once, none acts on another") {
  Stage stage(1024, 768);
  open_feedline(stage);
  int acted = 0;
  for (int i = 0; i < 500; ++i) {
    const double before = length_m(stage);
    stage.tap("feedline.length_m:more");
    acted += std::abs(length_m(stage) - before - 0.5) < 1e-9;
    stage.tap("feedline.length_m:less");
    acted += std::abs(length_m(stage) - before) < 1e-9;
  }
  CHECK(acted == 1000);
}

TEST_CASE("the keypad converts its unit, refuses what is out of range, sets, and takes keys of a keyboard") {
  Stage stage(1024, 768);
  open_feedline(stage);
  stage.tap("feedline.length_m:type");
  stage.tap("keypad:5");
  stage.tap("keypad:0");
  stage.tap("keypad:unit=ft");
  CHECK(stage.at("keypad:typed").name.find("164.04") != std::string::npos);  // 50 m
  stage.tap("keypad:clear");
  for (const char c : {'5', '0'}) stage.type(c);
  stage.tap("keypad:set");
  CHECK(length_m(stage) == doctest::Approx(15.24));
  stage.tap("feedline.length_m:type");
  for (const char c : {'9', '9', '9'}) stage.type(c);
  CHECK(stage.at("keypad:set").disabled);
  stage.press(Key::escape);
  CHECK(stage.find("keypad:set") == nullptr);
  CHECK(length_m(stage) == doctest::Approx(15.24));
}

TEST_CASE("the pin stays, changes are shown against it, undo takes it back") {
  Stage stage(1024, 768);
  open_feedline(stage);
  stage.tap("pin");
  CHECK(stage.at("feedline.total_loss_db").name.find("same as pinned") != std::string::npos);
  for (int i = 0; i < 8; ++i) stage.tap("feedline.length_m:more");
  CHECK(stage.at("feedline.total_loss_db").name.find("worse than pinned") != std::string::npos);
  stage.tap("pin");
  stage.tap("pin:back");
  CHECK(length_m(stage) == 15);
  stage.tap("undo");
  CHECK(length_m(stage) == 19);
}

TEST_CASE("why opens from a reading, shows provenance and lets the limit be moved") {
  Stage stage(1024, 768);
  open_feedline(stage);
  stage.tap("feedline.swr_at_radio");
  CHECK(stage.find("why:source") != nullptr);
  CHECK(stage.find("why:wrong") != nullptr);
  stage.tap("why:close");
  CHECK(stage.find("why") == nullptr);
}

TEST_CASE("a check works beside the plan and puts its result into it only when asked") {
  Stage stage(1024, 768);
  open_feedline(stage);
  stage.tap("open:feedline.roll_loss");
  CHECK(stage.at("check:result:loss_db").name.find("not known") != std::string::npos);
  stage.shell().act({"check:swr", platform::MirrorAction::Verb::set, 3.2});
  stage.settle();
  CHECK(stage.at("check:result:loss_db").name.find("decibels") != std::string::npos);
  CHECK(stage.session().plan().from[std::size_t(L::feedline_roll_loss_pct)] == From::usual);
  stage.tap("check:put:of_catalogue_pct");
  CHECK(stage.session().plan()[L::feedline_roll_loss_pct] > 150);
}

TEST_CASE("by keyboard only: Tab reaches the slider, arrows, Page, Home and End move it") {
  Stage stage(1024, 768);
  for (int i = 0; i < 40 && stage.tree().focus != "begin:sample"; ++i) stage.press(Key::tab);
  REQUIRE(stage.tree().focus == "begin:sample");
  stage.press(Key::enter);
  for (int i = 0; i < 40 && stage.tree().focus != "chain:feedline"; ++i) stage.press(Key::tab);
  stage.press(Key::space);
  for (int i = 0; i < 60 && stage.tree().focus != "feedline.length_m"; ++i) stage.press(Key::tab);
  REQUIRE(stage.tree().focus == "feedline.length_m");
  stage.press(Key::right);
  CHECK(length_m(stage) == 15.5);
  stage.press(Key::page_up);
  CHECK(length_m(stage) == 20.5);
  stage.press(Key::home);
  CHECK(length_m(stage) == 0);
  stage.press(Key::end);
  CHECK(length_m(stage) == 100);
  stage.press(Key::undo);
  stage.press(Key::undo);
  CHECK(length_m(stage) == 20.5);
}

TEST_CASE("what was set is there at the next start; settings are kept apart") {
  std::string outing;
  {
    Stage stage(390, 844);
    open_feedline(stage);
    stage.tap("feedline.length_m:more");
    stage.tap("theme");
    CHECK(machine().settings.find("dusk") != std::string::npos);
    CHECK(machine().outing.find("dusk") == std::string::npos);
    outing = machine().outing;
  }
  machine().outing = outing;
  Stage again(390, 844);
  CHECK(length_m(again) == 15.5);
  CHECK(!again.session().can_undo());
}

TEST_CASE("a file that cannot be read is refused in words and nothing is lost") {
  Stage stage(1024, 768);
  open_feedline(stage);
  stage.shell().file_picked("broken.json", "{\"groundsheet\": 1, ");
  stage.settle();
  CHECK(stage.at("note").name.find("broken.json was not opened") != std::string::npos);
  CHECK(length_m(stage) == 15);
  stage.shell().file_picked("other.json",
                            "{\"groundsheet\": 1, \"kind\": \"outing\", \"name\": \"Other\", \"levers\": {}}");
  stage.settle();
  CHECK(stage.session().outing().name == "Other");
  stage.tap("undo");
  CHECK(length_m(stage) == 15);
}

TEST_CASE("what a newer version kept is read as far as known and written over only when the person says so") {
  const std::string newer =
      "{\"groundsheet\": 99, \"kind\": \"outing\", \"name\": \"Ahead\", \"levers\": {\"feedline.length_m\": 12}}";
  machine().outing = newer;
  Stage stage(1024, 768);
  CHECK(length_m(stage) == 12);
  stage.session().set(L::feedline_length_m, 20.0);
  platform::wake(1);
  stage.settle();
  CHECK(machine().outing == newer);
  stage.tap("keep");
  CHECK(machine().outing.find("\"feedline.length_m\": 20") != std::string::npos);
  CHECK(stage.find("note") == nullptr);
}

TEST_CASE("a refused save is said until one succeeds") {
  Stage stage(1024, 768);
  stage.shell().stored(false);
  stage.settle();
  CHECK(stage.at("note").name.find("Not saved") != std::string::npos);
  stage.shell().stored(true);
  stage.settle();
  CHECK(stage.find("note") == nullptr);
}

TEST_CASE("nothing is drawn when nothing changes") {
  Stage stage(1024, 768);
  open_feedline(stage);
  CHECK(machine().frames_wanted == 0);
  CHECK(machine().wake_in_s < 0);
}

TEST_CASE("a sheet that came to rest anywhere between two pixels is still") {
  Stage stage(390, 844, 2.625F);
  open_feedline(stage);
  std::set<float> places;
  for (float by = 0.37F; by < 40; by *= 1.07F) {
    for (const float way : {by, -0.61F * by}) {
      stage.shell().wheel(195, 500, 0, way);
      stage.settle();  // fails where frames never end
      places.insert(stage.at("feedline.power_to_antenna_w").y);
    }
  }
  CHECK(machine().frames_wanted == 0);
  CHECK(places.size() > 50);
}
