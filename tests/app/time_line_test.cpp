// The time line's edges in the hand: dragged by five minutes, stepped by keys, set through the mirror.
#include <doctest/doctest.h>

#include <cmath>

#include "tests/app/stage.h"

using namespace gs;
using platform::Key;
using platform::PointerKind;
using stage::machine;
using stage::Stage;

namespace {

constexpr const char* kEdges[] = {"timeline:arrive", "timeline:starts", "timeline:packs", "timeline:leave"};

struct Times {
  double arrive, starts, packs, leave;
  bool operator==(const Times&) const = default;
};
Times times(Stage& stage) {
  const Plan& plan = stage.session().plan();
  const double arrive = plan[L::clock_arrive_min], leave = plan[L::clock_leave_by_min];
  return {arrive, arrive + plan[L::clock_set_up_min], leave - plan[L::clock_pack_down_min], leave};
}

void open(Stage& stage, Sheet sheet, Link link) {
  stage.open_sample();
  stage.session().view.sheet = sheet;
  stage.session().view.link = link;
  stage.settle();
}

/// Drags an edge by this many px and gives how far its time went, minutes.
double dragged(Stage& stage, const char* id, float px) {
  stage.bring_into_sight(id);
  const mirror::Node node = stage.at(id);
  const float x = node.x + node.w / 2, y = node.y + node.h / 2;
  stage.drag(x, y, x + px, y, 12);
  return stage.at(id).now - node.now;
}

}  // namespace

TEST_CASE("every edge of the time line drags in steps of five minutes, on every sheet that shows it") {
  for (const auto& [sheet, link] :
       {std::pair{Sheet::overview, Link::feedline}, {Sheet::link, Link::clock}, {Sheet::link, Link::contacts}}) {
    for (const auto& [w, h] : {std::pair{1024.0F, 768.0F}, {820.0F, 1180.0F}, {390.0F, 844.0F}}) {
      Stage stage(w, h);
      open(stage, sheet, link);
      for (const char* id : kEdges) {
        INFO(id << " at " << w << "x" << h << ", sheet " << int(sheet) << ", " << link_name(link));
        const double before = stage.at(id).now;
        stage.bring_into_sight(id);
        const float way =
            id == kEdges[0] || id == kEdges[1] ? 24.0F : -24.0F;  // towards the middle: always possible
        const double moved = dragged(stage, id, way);
        CHECK(moved * way > 0);
        CHECK(std::fmod(stage.at(id).now, 5) == 0);
        stage.press(Key::undo);
        CHECK_MESSAGE(stage.at(id).now == before, "one drag is one step of undo");
      }
    }
  }
}

TEST_CASE("a dragged edge follows the finger by the scale that stood when it was taken up") {
  Stage stage(1024, 768);
  open(stage, Sheet::link, Link::clock);
  const Times before = times(stage);
  stage.bring_into_sight("timeline:leave");
  const mirror::Node edge = stage.at("timeline:leave"), line = stage.at("timeline");
  const float x = edge.x + edge.w / 2, y = edge.y + edge.h / 2;
  const double px_per_min = double(line.w) / (before.leave + 45 - before.arrive + 15);
  stage.touch(PointerKind::down, x, y);
  stage.frame();
  double worst = 0;
  for (int i = 1; i <= 40; ++i) {
    stage.touch(PointerKind::move, x - 3 * float(i), y);
    stage.frame();
    const double wanted = before.leave - 3 * i / px_per_min;
    worst = std::max(worst, std::abs(stage.at("timeline:leave").now - wanted));
  }
  stage.touch(PointerKind::up, x - 120, y);
  stage.settle();
  MESSAGE("leave by dragged 120 px: at most " << worst << " minutes from the finger");
  CHECK(worst <= 2.5 + 1e-6);  // half a step
}

TEST_CASE("an edge moves what it stands for and nothing else") {
  Stage stage(1024, 768);
  open(stage, Sheet::link, Link::clock);
  const Times before = times(stage);
  const double work = before.starts - before.arrive;
  stage.shell().act({"timeline:arrive", platform::MirrorAction::Verb::set, before.arrive - 30});
  stage.settle();
  CHECK(times(stage) == Times{before.arrive - 30, before.arrive - 30 + work, before.packs, before.leave});
  stage.shell().act({"timeline:starts", platform::MirrorAction::Verb::set, before.arrive + 10});
  stage.settle();
  CHECK(times(stage) == Times{before.arrive - 30, before.arrive + 10, before.packs, before.leave});
  stage.shell().act({"timeline:packs", platform::MirrorAction::Verb::set, before.leave - 40});
  stage.settle();
  CHECK(times(stage) == Times{before.arrive - 30, before.arrive + 10, before.leave - 40, before.leave});
}

TEST_CASE("no edge can be dragged to where the outing has no time on the air") {
  for (const char* id : kEdges) {
    for (const float way : {-4000.0F, 4000.0F}) {
      Stage stage(1024, 768);
      open(stage, Sheet::link, Link::clock);
      dragged(stage, id, way);
      INFO(id << " by " << way << " px");
      const Figure& on_air = stage.session().outlook()[R::clock_on_air_min];
      CHECK(on_air.state != State::unknown);
      CHECK(on_air.value > 0);
      const Times now = times(stage);
      CHECK(now.arrive <= now.starts);
      CHECK(now.starts < now.packs);
      CHECK(now.packs <= now.leave);
    }
  }
}

TEST_CASE("by keyboard: arrows go to the next five minutes, Page keys by fifty, and the mirror says the time") {
  Stage stage(1024, 768);
  open(stage, Sheet::link, Link::clock);
  stage.session().set(L::clock_leave_by_min, 1043.0);
  stage.shell().act({"timeline:leave", platform::MirrorAction::Verb::focus, 0});
  stage.settle();
  stage.press(Key::right);
  CHECK(times(stage).leave == 1045);
  stage.press(Key::right);
  CHECK(times(stage).leave == 1050);
  stage.session().set(L::clock_leave_by_min, 1043.0);
  stage.press(Key::left);
  CHECK(times(stage).leave == 1040);
  stage.press(Key::page_up);
  CHECK(times(stage).leave == 1090);
  const mirror::Node& node = stage.at("timeline:leave");
  CHECK(node.name == "Leave by");
  CHECK(node.value == "18:10");
  CHECK(stage.at("timeline:starts").value.find("set-up") != std::string::npos);
}
