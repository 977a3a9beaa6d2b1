// The antenna's sheet in the hand: every ring of the side view drags its lever and all that follows from it, by
// finger, keyboard and mirror; what fits is put into the plan by a tap; power lines are asked for.
#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

#include "tests/app/stage.h"

using namespace gs;
using platform::Key;
using stage::Stage;
using Verb = platform::MirrorAction::Verb;

namespace {

struct Ring {
  L lever;
  float dx, dy;          // a drag that is always possible, px
  int sign;              // of the lever's change
  std::vector<R> moves;  // what must follow
};
const std::vector<Ring>& rings() {
  static const std::vector<Ring> all = {
      {L::antenna_apex_m, 0, -30, 1, {R::antenna_rope_m, R::safety_stay_off_m, R::antenna_clears_m}},
      {L::antenna_span_m, 40, 0, 1, {R::antenna_fits_m}},
      {L::antenna_end_m, 0, -12, 1, {R::antenna_low_m}},
      {L::antenna_obstacle_m, 25, 0, 1, {R::antenna_clears_m}},
      {L::antenna_obstacle_high_m, 0, -20, 1, {R::antenna_clears_m}},
  };
  return all;
}
std::string ring_id(L id) { return "side_view:" + std::string(lever(id).key); }

/// A V on 20 m that hangs down to its ends, with a hedge under it, and span to spare.
void open(Stage& stage) {
  stage.open_sample();
  Session& session = stage.session();
  session.set(L::antenna_kind, std::string("inverted_v"));
  session.set(L::antenna_frequency_mhz, 14.2);
  session.set(L::antenna_apex_m, 5.5);
  session.set(L::antenna_span_m, 11.5);
  session.set(L::antenna_end_m, 2.5);
  session.set(L::antenna_obstacle_m, 1.5);
  session.set(L::antenna_obstacle_high_m, 1.5);
  session.view.sheet = Sheet::link;
  session.view.link = Link::antenna;
  stage.settle();
}

/// Rows on the sheet say the figures of the plan as it is now.
void check_rows(Stage& stage) {
  for (const R id : {R::antenna_fits_m, R::antenna_low_m, R::antenna_rope_m, R::antenna_clears_m}) {
    const Figure& figure = stage.session().outlook()[id];
    const std::string spoken = speak_reading(id, figure.value, stage.session().style());
    CAPTURE(spoken);
    CHECK(stage.at(reading(id).key).name.find(spoken) != std::string::npos);
  }
}

struct Size {
  float w, h;
};
constexpr Size kSizes[] = {{1366, 1024}, {1024, 768}, {820, 1180}, {390, 844}};

}  // namespace

TEST_CASE("side view: every ring drags its lever by the drawing's own scale, and what follows follows") {
  for (const Size& size : kSizes) {
    for (const Ring& ring : rings()) {
      Stage stage(size.w, size.h);
      open(stage);
      const std::string id = ring_id(ring.lever);
      CAPTURE(id);
      CAPTURE(size.w);
      stage.bring_into_sight(id);
      const mirror::Node node = stage.at(id);
      const double before = stage.session().plan()[ring.lever];
      CHECK(node.now == before);
      const Outlook was = stage.session().outlook();
      const float x = node.x + node.w / 2, y = node.y + node.h / 2;
      stage.drag(x, y, x + ring.dx, y + ring.dy, 12);
      const double after = stage.session().plan()[ring.lever];
      CHECK((after - before) * ring.sign > 0);
      CHECK(stage.at(id).now == after);
      // the ring went where the finger went, within half a step of the lever and the drawing's change of scale
      const Outlook now = stage.session().outlook();
      for (const R moved : ring.moves) {
        CAPTURE(std::string(reading(moved).key));
        CHECK(now[moved].value != was[moved].value);
      }
      const Outlook anew = evaluate(resolve(stage.session().outing()));
      for (std::size_t i = 0; i < kReadingCount; ++i)
        if (std::isfinite(anew.at[i].value) && reading(R(i)).link == Link::antenna)
          CHECK(now.at[i].value == anew.at[i].value);
      check_rows(stage);
      stage.press(Key::undo);
      CHECK_MESSAGE(stage.session().plan()[ring.lever] == before, "one drag is one step of undo");
      check_rows(stage);
    }
  }
}

TEST_CASE("side view: while it is dragged a ring follows the finger, half a step at most behind") {
  Stage stage(1024, 768);
  open(stage);
  const std::string id = ring_id(L::antenna_apex_m);
  stage.bring_into_sight(id);
  const mirror::Node node = stage.at(id);
  const float x = node.x + node.w / 2, y = node.y + node.h / 2;
  stage.touch(platform::PointerKind::down, x, y);
  stage.frame();
  float worst_px = 0;
  double px_per_step = 0;
  const double apex_m = stage.session().plan()[L::antenna_apex_m];
  for (int i = 1; i <= 30; ++i) {
    const float to_y = y - 2 * float(i);
    stage.touch(platform::PointerKind::move, x, to_y);
    stage.frame();
    stage.frame();
    const mirror::Node now = stage.at(id);
    worst_px = std::max(worst_px, std::abs(now.y + now.h / 2 - to_y));
    const double moved_m = stage.session().plan()[L::antenna_apex_m] - apex_m;
    if (moved_m > 1) px_per_step = double(y - (now.y + now.h / 2)) / moved_m * lever(L::antenna_apex_m).step;
  }
  stage.touch(platform::PointerKind::up, x, y - 60);
  stage.settle();
  MESSAGE("apex dragged 60 px: at most " << worst_px << " px from the finger, a step is " << px_per_step << " px");
  CHECK(px_per_step > 0);
  CHECK(double(worst_px) <= px_per_step / 2 + 1);
}

TEST_CASE("side view: rings take keys and the mirror's own values, within their range") {
  Stage stage(1024, 768);
  open(stage);
  for (const Ring& ring : rings()) {
    const std::string id = ring_id(ring.lever);
    CAPTURE(id);
    const Lever& row = lever(ring.lever);
    const double before = stage.session().plan()[ring.lever];
    stage.shell().act({id, Verb::focus, 0});
    stage.settle();
    stage.press(Key::right);
    CHECK(stage.session().plan()[ring.lever] > before);
    check_rows(stage);
    stage.press(Key::left);
    CHECK(stage.session().plan()[ring.lever] == doctest::Approx(before));
    stage.shell().act({id, Verb::set, before + 2 * row.step});
    stage.settle();
    CHECK(stage.session().plan()[ring.lever] == doctest::Approx(before + 2 * row.step));
    CHECK(stage.at(id).now == doctest::Approx(before + 2 * row.step));
    check_rows(stage);
    stage.shell().act({id, Verb::set, row.most + 1000});
    stage.settle();
    CHECK(stage.session().plan()[ring.lever] <= row.most);
    stage.shell().act({id, Verb::set, before});
    stage.settle();
  }
}

TEST_CASE(
    "what fits: offered on the antenna's sheet, every kind told, a tap puts one into the plan, undo takes it "
    "back") {
  for (const Size& size : kSizes) {
    CAPTURE(size.w);
    Stage stage(size.w, size.h);
    open(stage);
    stage.session().set(L::antenna_wire_m, 10.0);
    stage.settle();
    stage.bring_into_sight("turn:open");
    CHECK(stage.at("turn:open").name == "Which antenna fits in 11.5 m?");
    stage.tap("turn:open");
    int told = 0, fitting = 0;
    std::string take;
    for (const mirror::Node& node : stage.tree().nodes) {
      if (node.id.rfind("fits:take:", 0) != 0) continue;
      ++told;
      const bool fits = node.name.find(", fits, ") != std::string::npos;
      fitting += fits;
      CHECK(fits != (node.name.find("does not fit") != std::string::npos));
      CHECK(node.name.find("goes out") != std::string::npos);
      CHECK(node.name.find("up and") != std::string::npos);
      if (fits && node.id != "fits:take:inverted_v" && take.empty()) take = node.id;
    }
    CHECK(told >= 10);
    REQUIRE_FALSE(take.empty());
    CHECK(stage.at("turn:ways").name.find(std::to_string(fitting) + " of " + std::to_string(told)) !=
          std::string::npos);
    stage.bring_into_sight(take);
    stage.tap(take);
    CHECK(stage.session().view.panel == Panel::none);
    const Plan& plan = stage.session().plan();
    CHECK("fits:take:" + std::string(lever(L::antenna_kind).options()[std::size_t(plan[L::antenna_kind])].key) ==
          take);
    CHECK(plan.from[std::size_t(L::antenna_wire_m)] != From::yours);  // cut for another antenna
    CHECK(stage.session().outlook()[R::antenna_fits_m].value >= 0);
    stage.press(Key::undo);
    CHECK(stage.session().plan()[L::antenna_wire_m] == 10);
  }
}

TEST_CASE("power lines: asked for on the antenna's sheet, not known until answered, and too near is said") {
  Stage stage(1024, 768);
  open(stage);
  REQUIRE(stage.find("safety.line_room_m") != nullptr);
  CHECK(stage.at("safety.line_room_m").name.find("not known: power lines not looked at yet") != std::string::npos);
  stage.session().set(L::safety_line_m, 12.0);
  stage.settle();
  // 5.5 m high: 2 x 5.5 + 4 m of throw line and 10 ft are 18.1 m
  CHECK(stage.at("safety.line_room_m").name.find("6.1") != std::string::npos);
  bool warned = false;
  for (const mirror::Node& node : stage.tree().nodes)
    warned = warned || node.name.find("Do not put it up here") != std::string::npos;
  CHECK(warned);
}

// 5.5 m of V cut for 14.2 and read at 13.9 MHz: 10.05 x (13.9 / 14.2 - 1) = -212 mm, half of it at each end.
TEST_CASE("trim: said as what to do, nothing to trim in words") {
  Stage stage(1024, 768);
  open(stage);
  CHECK(stage.at("antenna.trim_m").name.find("as cut") != std::string::npos);
  stage.session().set(L::antenna_dip_mhz, 13.9);
  stage.settle();
  CHECK(stage.at("antenna.trim_m").name.find("cut off 10.6 centimetres") != std::string::npos);
  stage.session().set(L::antenna_dip_mhz, 14.5);
  stage.settle();
  CHECK(stage.at("antenna.trim_m").name.find("add 10.6 centimetres") != std::string::npos);
}
