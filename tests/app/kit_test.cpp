// The kit sheet as a person meets it: the usual list, spares, leaving at home, undo.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "app/look/metrics.h"
#include "core/outing/archive.h"
#include "tests/app/stage.h"

using namespace gs;
using stage::machine;
using stage::Stage;

namespace {

double chance_pct(Stage& stage) { return stage.session().outlook()[R::kit_chance_pct].value; }
const std::vector<kit::Item>& items(Stage& stage) { return stage.session().outing().kit; }

void open_kit(Stage& stage) {
  stage.session().view.sheet = Sheet::link;
  stage.session().view.link = Link::kit;
  stage.settle();
}

/// The record of the first item with this name.
std::string id_of(Stage& stage, std::string_view name) {
  for (std::size_t i = 0; i < items(stage).size(); ++i)
    if (items(stage)[i].name == name) return "kit:" + std::to_string(i);
  FAIL("not carried: " << std::string(name));
  return {};
}

}  // namespace

TEST_CASE("kit: an empty list says so; the usual list starts it, a spare is added, all of it undone") {
  for (const auto& [width, height] : {std::pair{1024.0F, 768.0F}, std::pair{390.0F, 844.0F}}) {
    Stage stage(width, height);
    open_kit(stage);
    CHECK(stage.at("kit.chance_pct").name.find("needs a kit list") != std::string::npos);
    CHECK(stage.find("kit:best:add") == nullptr);
    stage.tap("kit:start");
    REQUIRE(items(stage).size() > 8);
    CHECK(stage.find("kit:start") == nullptr);
    const double before = chance_pct(stage);
    CHECK(before > 50);
    CHECK(before < 100);
    CHECK(std::none_of(items(stage).begin(), items(stage).end(),
                       [](const kit::Item& item) { return item.function == "log"; }));

    const std::string antenna = id_of(stage, "Wire dipole with feed point");
    CHECK(stage.at(antenna + ":text").name.find("no spare") != std::string::npos);
    CHECK(stage.find(antenna + ":less") == nullptr);
    CHECK(stage.at(antenna).h >= look::space::kKitRow);
    stage.tap(antenna + ":more");
    CHECK(stage.at(antenna + ":text").name.find("1 spare") != std::string::npos);
    // 95 % becomes 1 - 0.05^2 = 99.75 %, all else as it was
    MESSAGE(width << " wide: " << before << " % -> " << chance_pct(stage) << " %, by hand "
                  << before * 0.9975 / 0.95 << " %");
    CHECK(chance_pct(stage) == doctest::Approx(before * 0.9975 / 0.95).epsilon(1e-12));
    CHECK(read_outing(machine().outing).outing.kit == items(stage));

    stage.tap("undo");
    CHECK(chance_pct(stage) == before);
    CHECK(stage.at(antenna + ":text").name.find("no spare") != std::string::npos);
    stage.tap("undo");
    CHECK(items(stage).empty());
    CHECK(stage.find("kit:start") != nullptr);
  }
}

TEST_CASE("kit: where a spare helps most is offered until none shows, things stay at home and come along") {
  Stage stage(1024, 768);
  open_kit(stage);
  stage.tap("kit:start");
  int taps = 0;
  for (double last = chance_pct(stage); stage.find("kit:best:add") != nullptr; last = chance_pct(stage)) {
    REQUIRE(++taps < 30);
    stage.tap("kit:best:add");
    CHECK(chance_pct(stage) > last);
  }
  MESSAGE(taps << " spares to " << chance_pct(stage) << " %");
  CHECK(chance_pct(stage) > 98.5);

  const std::size_t count = items(stage).size();
  stage.tap(id_of(stage, "Head lamp") + ":remove");
  CHECK(items(stage).size() == count - 1);
  stage.tap("kit:add");
  stage.tap("kit:add:lamp");
  REQUIRE(items(stage).size() == count);
  CHECK(items(stage).back().name == "Head lamp");
  CHECK(stage.find("kit:add:lamp") == nullptr);
}

TEST_CASE("kit: pinned, the change is against what the same kit came to; the chain's cell shows the chance") {
  Stage stage(1024, 768);
  stage.open_sample();
  CHECK(stage.at("chain:kit").name.find("95 percent") != std::string::npos);
  stage.tap("pin");
  stage.tap("chain:kit");
  CHECK(stage.at("kit.weight_kg").name.find("same as pinned") != std::string::npos);
}
