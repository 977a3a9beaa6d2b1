// A number in the person's hand: typed from the keyboard, in a check as well as in the plan; long lists searched;
// notes.
#include <doctest/doctest.h>

#include <cmath>
#include <set>

#include "app/parts/scale.h"
#include "tests/app/stage.h"

using namespace gs;
using platform::Key;
using stage::Stage;
using Verb = platform::MirrorAction::Verb;

namespace {

void type(Stage& stage, std::string_view text) {
  for (const char c : text) stage.type(c);
}

void open_link(Stage& stage, Link link) {
  stage.open_sample();
  stage.session().view.sheet = Sheet::link;
  stage.session().view.link = link;
  platform::wake(2);
  stage.settle();
}

void focus(Stage& stage, const std::string& id) {
  stage.shell().act({id, Verb::focus});
  stage.settle();
}

void open_check(Stage& stage, const std::string& key) {
  const Check* check = find_check(key);
  REQUIRE(check != nullptr);
  open_link(stage, check->link);
  stage.tap("open:" + key);
  REQUIRE(stage.find("check") != nullptr);
}

}  // namespace

TEST_CASE("digits on a focused number open the keypad with them; Enter sets it and gives the keyboard back") {
  Stage stage(1024, 768);
  open_link(stage, Link::feedline);
  focus(stage, "feedline.length_m");
  type(stage, "2");
  REQUIRE(stage.find("keypad") != nullptr);
  CHECK(stage.session().view.typed == "2");
  type(stage, "2,5");
  CHECK(stage.session().view.typed == "22.5");
  stage.press(Key::enter);
  CHECK(stage.session().plan()[L::feedline_length_m] == 22.5);
  CHECK(stage.find("keypad") == nullptr);
  CHECK(stage.tree().focus == "feedline.length_m");
  stage.press(Key::right);  // and arrows go on from there
  CHECK(stage.session().plan()[L::feedline_length_m] > 22.5);
}

TEST_CASE("Escape drops what was begun; a letter begins nothing") {
  Stage stage(1024, 768);
  open_link(stage, Link::feedline);
  const double before = stage.session().plan()[L::feedline_length_m];
  focus(stage, "feedline.length_m");
  type(stage, "x");
  CHECK(stage.find("keypad") == nullptr);
  type(stage, "7");
  REQUIRE(stage.find("keypad") != nullptr);
  stage.press(Key::escape);
  CHECK(stage.find("keypad") == nullptr);
  CHECK(stage.session().plan()[L::feedline_length_m] == before);
}

TEST_CASE("an input of a check is dragged, stepped and typed like a lever, and leaves the plan alone") {
  for (const auto& [w, h] : {std::pair{1024.0F, 768.0F}, std::pair{390.0F, 844.0F}}) {
    Stage stage(w, h);
    open_check(stage, "feedline.roll_loss");
    const Check& check = *stage.session().view.check;
    std::size_t at = check.inputs.size();
    for (std::size_t i = 0; i < check.inputs.size(); ++i)
      if (at == check.inputs.size() && check.inputs[i].row.kind == Kind::number) at = i;
    REQUIRE(at < check.inputs.size());
    const std::string id = "check:" + std::string(check.inputs[at].row.key);
    const Values before = stage.session().outing().set;
    const auto given = [&] {
      const Value& value = stage.session().view.check_given[at];
      return std::holds_alternative<double>(value) ? std::get<double>(value) : std::nan("");
    };
    stage.tap(id + ":more");
    const double stepped = given();
    CHECK(std::isfinite(stepped));
    stage.bring_into_sight(id);
    const mirror::Node node = stage.at(id);
    stage.drag(node.x + node.w * 0.3F, node.y + node.h / 2, node.x + node.w * 0.3F + 60, node.y + node.h / 2, 8,
               platform::Device::mouse);
    CHECK(given() != stepped);
    stage.tap(id + ":type");
    REQUIRE(stage.find("keypad") != nullptr);
    type(stage, "3.5");
    stage.tap("keypad:set");
    CHECK(given() == 3.5);
    CHECK(stage.find("keypad") == nullptr);
    CHECK(stage.find("check") != nullptr);
    stage.tap(id + ":type");
    stage.press(Key::escape);  // closes the keypad, not the check
    CHECK(stage.find("keypad") == nullptr);
    CHECK(stage.find("check") != nullptr);
    CHECK(stage.session().outing().set == before);
  }
}

TEST_CASE("a check shows how its answer moves with an input, with where one stands on the curve") {
  Stage stage(1024, 768);
  open_check(stage, "safety.exposure_distance");
  REQUIRE(stage.find("check:plot") != nullptr);
  const std::string sentence = stage.at("check:plot").value;
  CHECK(sentence.find("Keep-out, public") == 0);
}

TEST_CASE("the cable list finds by typing while it is typed, says loss and weight, and takes what is tapped") {
  Stage stage(1024, 768);
  open_link(stage, Link::feedline);
  stage.tap("feedline.cable:row");
  REQUIRE(stage.find("feedline.cable:find") != nullptr);
  const auto options = [&] {
    std::vector<std::string> names;
    for (const mirror::Node& node : stage.tree().nodes)
      if (node.role == mirror::Role::radio && node.parent == "feedline.cable") names.push_back(node.name);
    return names;
  };
  const std::size_t all = options().size();
  CHECK(all > 12);
  for (const std::string& name : options())
    CHECK_MESSAGE((name.find(" dB") != std::string::npos && name.find("a 10 m") != std::string::npos), name);
  stage.shell().act({"feedline.cable:find", Verb::type, 0, "213"});
  stage.settle();
  REQUIRE(options().size() == 1);
  CHECK(options()[0].rfind("RG-213", 0) == 0);
  CHECK(stage.at("feedline.cable:found").live);
  stage.shell().act({"feedline.cable:find", Verb::type, 0, "no such"});
  stage.settle();
  CHECK(options().empty());
  stage.shell().act({"feedline.cable:find", Verb::commit, 0, "rg 213"});
  stage.settle();
  stage.tap("feedline.cable=rg213");
  CHECK(stage.session().outing().set[std::size_t(L::feedline_cable)] == Value{std::string("rg213")});
  stage.tap("feedline.cable:row");  // opened anew it shows all
  CHECK(options().size() == all);
}

TEST_CASE("what limits a plan says the cheapest change, and a tap makes it, one step of undo") {
  Stage stage(1024, 768);
  stage.open_sample();
  stage.session().set(L::battery_capacity_ah, 6.0);
  platform::wake(2);
  stage.settle();
  const Outing before = stage.session().outing();
  const mirror::Node* bar = stage.find("limits:try");
  REQUIRE(bar != nullptr);
  MESSAGE(bar->name);
  CHECK(bar->name.find("Cheapest: ") == 0);
  stage.tap("limits:try");
  CHECK(!(stage.session().outing() == before));
  stage.tap("undo");
  CHECK(stage.session().outing().set == before.set);
}

TEST_CASE("the cheapest change is that of the plan as it is now, whatever was asked before") {
  Session session;
  bool any = false;
  const auto fresh = [&](R binds) { return cheapest_remedy(session.outing(), binds, session.style()); };
  const auto words = [](const std::optional<Remedy>& remedy) {
    return remedy ? remedy->words + remedy->gains : "";
  };
  for (const auto& [id, value] : std::initializer_list<std::pair<L, Value>>{{L::antenna_kind, "inverted_v"},
                                                                            {L::antenna_frequency_mhz, 7.1},
                                                                            {L::antenna_span_m, 17.0},
                                                                            {L::antenna_apex_m, 6.0},
                                                                            {L::antenna_apex_m, 3.0}}) {
    session.set(id, value);
    for (const R binds : {R::antenna_fits_m, R::clock_on_air_min, R::antenna_fits_m})
      for (const bool feet : {true, false}) {
        session.settings.style.feet = feet;
        CHECK(words(session.remedy(binds)) == words(fresh(binds)));
        any = any || session.remedy(binds);
      }
  }
  CHECK(any);
}

TEST_CASE("notes are typed on several lines, kept in the outing, and taken back by undo") {
  Stage stage(390, 844);
  stage.open_sample();
  stage.tap("more");
  stage.tap("outing:notes");
  CHECK(stage.at("outing:notes").many_lines);
  type(stage, "Gate");
  stage.press(Key::enter);
  type(stage, "Mast");
  CHECK(stage.at("outing:notes").value == "Gate\nMast");
  stage.press(Key::up);
  stage.press(Key::home);
  type(stage, "A");
  CHECK(stage.at("outing:notes").value == "AGate\nMast");
  stage.press(Key::tab);
  CHECK(stage.session().outing().notes == "AGate\nMast");
  stage.shell().act({"outing:notes", Verb::commit, 0, " one\r\ntwo \n"});
  stage.settle();
  CHECK(stage.session().outing().notes == "one\ntwo");
  stage.tap("undo");
  CHECK(stage.session().outing().notes == "AGate\nMast");
}

TEST_CASE("on a phone's track a finger that moves by single px meets every whole value where it is used most") {
  struct Used {
    Link link;
    L lever;
    double from, to, each;
  };
  // the useful ends are common practice: rolls of 5 to 25 m, 1 to 25 W, apex 3 to 15 m
  for (const Used& used : {Used{Link::feedline, L::feedline_length_m, 1, 25, 0.5},
                           Used{Link::radio, L::radio_transmit_power_w, 1, 25, 1},
                           Used{Link::antenna, L::antenna_apex_m, 3, 15, 0.5}}) {
    Stage stage(390, 844);
    open_link(stage, used.link);
    const std::string key(lever(used.lever).key);
    stage.session().set(used.lever, used.from);
    platform::wake(2);
    stage.settle();
    const mirror::Node track = stage.at(key);
    const float y = track.y + track.h / 2, left = track.x + look::slider::kThumb;
    const float wide = track.w - 2 * look::slider::kThumb;
    const auto now = [&] { return stage.session().plan()[used.lever]; };
    const float from =
        left + wide * float(parts::place_of(parts::track_of(lever(used.lever)), track.least, track.most, now()));
    std::set<double> met;
    stage.touch(platform::PointerKind::down, from, y);
    stage.frame();
    for (float x = from; x <= left + wide; x += 1) {
      stage.touch(platform::PointerKind::move, x, y);
      stage.frame();
      met.insert(now());
      if (now() > used.to) break;
    }
    stage.touch(platform::PointerKind::up, left + wide, y);
    stage.settle();
    int missed = 0;
    for (double value = used.from; value <= used.to; value += used.each) missed += met.count(value) == 0;
    MESSAGE(key << ": " << met.size() << " values met, " << missed << " of the useful ones missed");
    CHECK(missed == 0);
  }
}

TEST_CASE("each scale gives back the value of a place, grows, and has its ends at the ends") {
  for (const parts::Track scale : {parts::Track::even, parts::Track::ratios, parts::Track::near}) {
    const double least = scale == parts::Track::ratios ? 0.5 : -3, most = 200;
    CHECK(parts::place_of(scale, least, most, least) == 0);
    CHECK(parts::place_of(scale, least, most, most) == doctest::Approx(1));
    double last = -1, worst = 0;
    for (int i = 0; i <= 200; ++i) {
      const double place = i / 200.0, value = parts::value_at(scale, least, most, place);
      CHECK(parts::place_of(scale, least, most, value) > last);
      last = parts::place_of(scale, least, most, value);
      worst = std::max(worst, std::abs(last - place));
    }
    MESSAGE("places come back within " << worst);
    CHECK(worst < 1e-12);
  }
}
