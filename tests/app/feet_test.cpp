// What stands at a phone's foot, and what a small surface must not lose: the ways to Safety, Clock and Kit, the
// chain while one counts, a sheet's own answer in sight.
#include <doctest/doctest.h>

#include "core/safety/caution.h"
#include "tests/app/stage.h"

using namespace gs;
using stage::machine;
using stage::Stage;

namespace {

void open_link(Stage& stage, Link link) {
  stage.session().view.sheet = Sheet::link;
  stage.session().view.link = link;
  platform::wake(2);
  stage.settle();
}

bool looked(Stage& stage, const safety::Caution& caution) {
  return stage.session().plan()[find_lever(caution.mark)] > 0;
}

}  // namespace

TEST_CASE("Safety's foot on a phone asks one thing after another; only a clear answer counts as looked at") {
  Stage stage(390, 844);
  stage.open_sample();
  open_link(stage, Link::safety);
  std::vector<const safety::Caution*> asks;
  for (const safety::Caution& caution : safety::cautions())
    if (caution.kind == safety::Caution::Kind::look && !looked(stage, caution)) asks.push_back(&caution);
  REQUIRE(asks.size() == 3);
  for (std::size_t i = 0; i < asks.size(); ++i) {
    const std::string wanted = std::string(asks[i]->ask) + " " + std::to_string(i + 1) + " of 3";
    CHECK(stage.at("look:ask").name == wanted);
    for (const char* id : {"look:trouble", "look:clear"}) CHECK(stage.at(id).h == 64);
    stage.tap("look:trouble");
    CHECK(!looked(stage, *asks[i]));
    CHECK(stage.at("look:ask").name == wanted);
    // the whole caution stands open and in sight
    const mirror::Node& row = stage.at("caution:" + std::string(asks[i]->key) + ":row");
    CHECK(row.expanded == 1);
    CHECK(row.cut_top + row.cut_bottom == 0);
    stage.tap("look:clear");
    CHECK(looked(stage, *asks[i]));
  }
  CHECK(stage.find("look:ask") == nullptr);
  CHECK(stage.session().outlook()[R::safety_left_to_look_at].value == 0);
  stage.tap("undo");
  CHECK(stage.at("look:ask").name.find("3 of 3") != std::string::npos);
}

TEST_CASE("a ticked caution is taken back by its mark; unfolded it says the whole with its source") {
  Stage stage(1024, 768);
  stage.open_sample();
  open_link(stage, Link::safety);
  const safety::Caution& fuse = *safety::find_caution("fuse");
  stage.tap("tick:safety.looked_at_fuse");
  CHECK(looked(stage, fuse));
  CHECK(stage.at("tick:safety.looked_at_fuse").checked == 1);
  stage.tap("caution:fuse:row");
  CHECK(stage.at("caution:fuse").name.find(fuse.words) == 0);
  CHECK(stage.at("caution:fuse:source").name.find(fuse.source) != std::string::npos);
  stage.tap("tick:safety.looked_at_fuse");
  CHECK(!looked(stage, fuse));
}

TEST_CASE("Kit's foot on a phone opens what may be added and the list of packing down") {
  Stage stage(390, 844);
  stage.open_sample();
  open_link(stage, Link::kit);
  stage.tap("kit:foot:add");
  CHECK(stage.at("kit:add").expanded == 1);
  CHECK(stage.at("kit:add").cut_top + stage.at("kit:add").cut_bottom == 0);
  stage.tap("kit:foot:list");
  CHECK(stage.at("kit:stow").checked == 1);
  stage.tap("kit:foot:list");
  CHECK(stage.at("kit:pack").checked == 1);
}

TEST_CASE("the bar of what limits opens the control of the cheapest change, which offers the value") {
  for (const auto& [width, height] : {std::pair{390.0F, 844.0F}, std::pair{1024.0F, 768.0F}}) {
    Stage stage(width, height);
    stage.open_sample();
    stage.session().set(L::feedline_length_m, 60.0);
    platform::wake(2);
    stage.settle();
    const mirror::Node bar = stage.at("limits");
    CHECK(bar.name.find("Feed line limits you. Cheapest: ") == 0);
    stage.tap("limits");
    CHECK(stage.session().view.sheet == Sheet::link);
    const Remedy remedy = *stage.session().remedy(R::feedline_arrives_pct);
    CHECK(stage.tree().focus.rfind(std::string(lever(remedy.lever).key), 0) == 0);
    stage.tap("remedy:set");
    CHECK(stage.session().outing().set[std::size_t(remedy.lever)] == remedy.value);
    CHECK(stage.find("remedy:set") == nullptr);
    MESSAGE(bar.name);
  }
}

TEST_CASE("Safety, Clock and Kit are reached from Overview at every size, and from every sheet that has the room") {
  for (const auto& [width, height] :
       {std::pair{390.0F, 844.0F}, std::pair{320.0F, 568.0F}, std::pair{844.0F, 390.0F}, std::pair{820.0F, 1180.0F},
        std::pair{1024.0F, 768.0F}, std::pair{1440.0F, 900.0F}}) {
    Stage stage(width, height);
    stage.open_sample();
    for (const Link link : {Link::safety, Link::clock, Link::kit}) {
      const std::string id = "chain:" + std::string(link_key(link));
      stage.tap("home");
      stage.tap(id);
      CHECK(stage.at("sheet").name == link_name(link));
      if (width < 600) continue;
      CHECK(stage.at(id).current);
      stage.tap("chain:battery");
      stage.tap(id);
      CHECK(stage.at("sheet").name == link_name(link));
    }
  }
}

TEST_CASE("with large letters on a phone's side a sheet opens on its own answer, the chain above it") {
  Stage stage(844, 390);
  stage.open_sample();
  stage.session().settings.text_pct = 200;
  platform::wake(2);
  stage.settle();
  stage.shell().act({"chain:feedline", platform::MirrorAction::Verb::press});
  stage.settle();
  stage.settle();
  const mirror::Node& title = stage.at("sheet");
  CHECK(title.cut_top + title.cut_bottom == 0);
  CHECK(stage.find("chain:battery") != nullptr);
}

TEST_CASE("while one counts the chain is there at every size of surface and text") {
  for (const auto& [width, height] :
       {std::pair{390.0F, 844.0F}, std::pair{844.0F, 390.0F}, std::pair{820.0F, 1180.0F}})
    for (const int text_pct : {100, 150, 200}) {
      Stage stage(width, height);
      stage.open_sample();
      stage.session().settings.text_pct = text_pct;
      stage.session().go_on_air(machine().utc_s);
      stage.session().view.sheet = Sheet::on_air;
      platform::wake(2);
      stage.settle();
      for (const Link link : {Link::battery, Link::radio, Link::feedline, Link::antenna, Link::sky, Link::contacts})
        CHECK(stage.find("chain:" + std::string(link_key(link))) != nullptr);
    }
}
