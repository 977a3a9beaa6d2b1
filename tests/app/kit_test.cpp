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

namespace {

void type(Stage& stage, const std::string& id, std::string_view text) {
  stage.tap(id);
  REQUIRE(stage.tree().focus == id);
  for (const char c : text) c == ' ' ? stage.press(platform::Key::space) : stage.type(c);
  stage.press(platform::Key::enter);
}

}  // namespace

TEST_CASE("kit: an own item is named, weighed, ordered, taken out, all undone, and offered again") {
  Stage stage(1024, 768);
  open_kit(stage);
  stage.tap("kit:start");
  const std::size_t count = items(stage).size();
  stage.tap("kit:own");
  REQUIRE(items(stage).size() == count + 1);
  const std::string id = "kit:" + std::to_string(count);
  CHECK(stage.at(id + ":text").expanded == 1);  // it opens where it stands
  type(stage, id + ":name", "Rope bag");
  CHECK(items(stage).back().name == "Rope bag");
  type(stage, id + ":function", "support");
  type(stage, id + ":weight", "1.2 kg");
  CHECK(items(stage).back().weight_g == 1200);
  const kit::Item as_weighed = items(stage).back();
  // what cannot be is said below the field and changes nothing
  type(stage, id + ":weight", "-3");
  CHECK_FALSE(stage.at(id + ":weight").trouble.empty());
  CHECK(items(stage).back() == as_weighed);
  stage.tap(id + ":weight");
  stage.press(platform::Key::escape);

  type(stage, id + ":works", "97,5");
  CHECK(items(stage).back().works == doctest::Approx(0.975).epsilon(1e-12));
  type(stage, id + ":volume", "2.5");
  CHECK(items(stage).back().volume_l == 2.5);
  stage.tap(id + ":charge");
  CHECK(items(stage).back().charge);
  const kit::Item made = items(stage).back();

  stage.tap(id + ":up");
  CHECK(items(stage)[count - 1] == made);
  const std::string up = "kit:" + std::to_string(count - 1);
  CHECK(stage.at(up + ":text").expanded == 1);
  stage.tap("undo");
  CHECK(items(stage).back() == made);
  stage.tap(id + ":remove");
  CHECK(items(stage).size() == count);
  stage.tap("undo");
  CHECK(items(stage).back() == made);

  // another outing offers it again
  stage.session().open(Outing{}, "another outing");
  stage.settle();
  REQUIRE(stage.session().settings.own_items.size() == 1);
  stage.tap("kit:add");
  stage.tap("kit:again:0");
  REQUIRE(items(stage).size() == 1);
  CHECK(items(stage)[0] == made);
}

TEST_CASE("kit: three styles, ticks for charging, packing and packing down, each one step of undo") {
  for (const char* style : {"car", "carry", "backpack"}) {
    Stage stage(390, 844);
    open_kit(stage);
    stage.tap(std::string("kit:start:") + style);
    CAPTURE(style);
    REQUIRE(items(stage).size() > 14);
    CHECK(stage.find("kit:missing") == nullptr);
    const double to_pack = stage.session().outlook()[R::kit_to_pack].value;
    CHECK(to_pack == double(items(stage).size()));
    stage.tap("kit:pack");
    stage.tap("kit:pack:0");
    CHECK(items(stage)[0].packed);
    CHECK(stage.at("kit:pack:0").checked == 1);
    CHECK(stage.session().outlook()[R::kit_to_pack].value == to_pack - 1);
    stage.tap("undo");
    CHECK_FALSE(items(stage)[0].packed);
    stage.tap("kit:stow");
    stage.tap("kit:stow:1");
    CHECK(items(stage)[1].stowed);
    stage.tap("kit:charge");
    std::size_t listed = 0;
    for (std::size_t i = 0; i < items(stage).size(); ++i)
      listed += stage.find("kit:charge:" + std::to_string(i)) != nullptr;
    CHECK(listed == std::size_t(stage.session().plan().kit.to_charge));
    CHECK(listed > 0);
  }
}

TEST_CASE("kit: a row ticks itself; a narrow row leaves leaving at home to its editor; the hour chooses the list") {
  for (const float width : {390.0F, 1024.0F}) {
    Stage stage(width, 844);
    stage.open_sample();
    open_kit(stage);
    CAPTURE(width);
    const std::string stakes = id_of(stage, "Stakes");
    const std::string tick = "kit:pack" + stakes.substr(3);
    CHECK(stage.at(tick).name == "Stakes, packed");
    CHECK(stage.at(tick).checked == 0);
    stage.tap(tick);
    CHECK(stage.at(tick).checked == 1);
    const auto packed =
        std::count_if(items(stage).begin(), items(stage).end(), [](const kit::Item& item) { return item.packed; });
    CHECK(stage.at("kit:done").name ==
          std::to_string(packed) + " of " + std::to_string(items(stage).size()) + " packed");
    CHECK(stage.at("kit:weight").value.find(" kg") != std::string::npos);
    const std::size_t count = items(stage).size();
    CHECK((stage.find(stakes + ":remove") == nullptr) == (width < 500));
    if (width < 500) stage.tap(stakes + ":text");
    stage.tap(stakes + ":remove");
    CHECK(items(stage).size() == count - 1);
    CHECK(stage.find("kit:stow:0") == nullptr);
    stage.tap("kit:stow");
    CHECK(stage.at("kit:stow:0").checked == 0);
  }
}

TEST_CASE("kit: the spare that is taken along lengthens the runtime, and leaving it takes that back") {
  Stage stage(1024, 768);
  stage.open_sample();
  stage.session().set(L::radio_transmit_power_w, 5.0);
  open_kit(stage);
  const double before_h = stage.session().outlook()[R::power_runtime_h].value;
  stage.tap("kit:add");
  stage.tap("kit:add:battery_20ah");
  CHECK(stage.session().plan()[L::spare_capacity_ah] == 20);
  const double with_h = stage.session().outlook()[R::power_runtime_h].value;
  MESSAGE("12 Ah " << before_h << " h, with 20 Ah more " << with_h << " h");
  CHECK(with_h > before_h);
  stage.tap(id_of(stage, "Lithium battery, 20 Ah") + ":remove");
  CHECK(stage.session().plan()[L::spare_capacity_ah] == 0);
  CHECK(stage.session().outlook()[R::power_runtime_h].value == before_h);
}

TEST_CASE(
    "cautions: each has its source; looking is ticked on the sheet that asks, and unticked; thunder has no tick") {
  Stage stage(390, 844);
  stage.open_sample();
  stage.session().view.sheet = Sheet::link;
  stage.session().view.link = Link::safety;
  stage.settle();
  for (const char* look : {"lines", "fuse", "coax"}) {
    const std::string id = std::string("tick:safety.looked_at_") + look;
    CHECK(stage.at(id).checked == 0);
    stage.tap(id);
    CHECK(stage.at(id).checked == 1);
  }
  CHECK(stage.session().outlook()[R::safety_left_to_look_at].state != State::unknown);
  CHECK(stage.at("caution:lightning").role == mirror::Role::text);
  CHECK(stage.at("caution:lightning:source").name.find("National Weather Service") != std::string::npos);
  CHECK(stage.at("tick:safety.looked_at_lines").name.find("3.1 m") != std::string::npos);
  CHECK(stage.at("rules:line").name.find("Allowed") == 0);
  stage.session().view.link = Link::antenna;
  platform::wake(2);
  stage.settle();
  CHECK(stage.at("tick:safety.looked_at_lines").checked == 1);
  CHECK(stage.find("tick:safety.looked_at_fuse") == nullptr);
  CHECK(stage.at("rules:line").name.find("Allowed") == 0);
  stage.tap("tick:safety.looked_at_lines");
  CHECK(stage.session().outlook()[R::safety_left_to_look_at].state == State::unknown);
}
