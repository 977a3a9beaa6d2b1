// My own things and the foot of an answer, as a person meets them.
#include <doctest/doctest.h>

#include "core/outing/own_things.h"
#include "tests/app/stage.h"

using namespace gs;
using platform::Key;
using stage::machine;
using stage::Stage;

namespace {

void to_things(Stage& stage) {
  stage.tap("more");
  stage.tap("things");
  REQUIRE(stage.find("things:words") != nullptr);
}

double capacity_ah(Stage& stage) { return stage.session().plan()[L::battery_capacity_ah]; }

}  // namespace

TEST_CASE("my battery: kept from one outing, named, used on another, there at the next start") {
  std::string things;
  {
    Stage stage(390, 844);
    stage.open_sample();
    stage.session().set(L::battery_capacity_ah, 17.0);
    to_things(stage);
    CHECK(stage.find("thing:0") == nullptr);
    stage.tap("things:battery:keep");
    stage.tap("thing:0:rename");
    for (const char c : std::string_view("Blue")) stage.type(c);
    stage.press(Key::enter);
    CHECK(stage.at("thing:0").name.find("Blue") == 0);
    CHECK(stage.find("things:battery:keep") == nullptr);  // kept already
    things = machine().records["things"];
    CHECK(read_things(things).things.at(0).name == "Blue");
  }
  machine().records["things"] = things;
  Stage stage(1024, 768);
  stage.open_sample();
  stage.session().set(L::battery_capacity_ah, 5.0);
  to_things(stage);
  stage.tap("thing:0");
  stage.tap("thing:0:use");
  CHECK(capacity_ah(stage) == 17);
  CHECK(stage.session().plan().from[std::size_t(L::battery_capacity_ah)] == From::yours);
  stage.tap("undo");
  CHECK(capacity_ah(stage) == 5);
}

TEST_CASE("a thing thrown away can be brought back") {
  Stage stage(1024, 768);
  stage.open_sample();
  to_things(stage);
  stage.tap("things:cable:keep");
  REQUIRE(read_things(machine().records["things"]).things.size() == 1);
  stage.tap("thing:0:bin");
  CHECK(read_things(machine().records["things"]).things.empty());
  stage.tap("things:back");
  CHECK(read_things(machine().records["things"]).things.size() == 1);
  CHECK(stage.find("things:back") == nullptr);
}

TEST_CASE("things of a newer version are used and never written over; what cannot be read stays") {
  for (const char* kept :
       {"{\"groundsheet\": 9, \"kind\": \"things\", \"things\": [{\"group\": \"battery\", \"name\": \"New\", "
        "\"levers\": {\"battery.capacity_ah\": 9}}]}",
        "{\"groundsheet\": 1, \"kind\""}) {
    machine().records["things"] = kept;
    Stage stage(1024, 768);
    stage.open_sample();
    to_things(stage);
    CHECK(stage.find("things:trouble") != nullptr);
    if (stage.find("things:cable:keep")) stage.tap("things:cable:keep");
    CHECK(machine().records["things"] == kept);
    if (stage.find("thing:0") == nullptr) continue;
    stage.tap("thing:0");
    stage.tap("thing:0:use");
    CHECK(capacity_ah(stage) == 9);
  }
}

TEST_CASE("two windows that keep a thing at the same moment keep both") {
  Stage stage(1024, 768);
  stage.open_sample();
  to_things(stage);
  stage.tap("things:cable:keep");
  OwnThing theirs;
  theirs.name = "Theirs";
  theirs.set[std::size_t(L::battery_capacity_ah)] = 3.0;
  stage.shell().kept_elsewhere("things", write_things({theirs}), true);
  stage.settle();
  CHECK(read_things(machine().records["things"]).things.size() == 2);
}

TEST_CASE("own things go out as a file and come in from one; what is here already is not doubled") {
  std::string file;
  {
    Stage stage(1024, 768);
    stage.open_sample();
    to_things(stage);
    CHECK(stage.find("things:save") == nullptr);
    stage.tap("things:cable:keep");
    stage.tap("things:battery:keep");
    stage.tap("things:save");
    CHECK(machine().saved_name == "my-own-things.json");
    file = machine().saved_text;
    CHECK(read_things(file).things.size() == 2);
    const Outing before = stage.session().outing();
    stage.shell().file_picked("my-own-things.json", file);
    CHECK(stage.session().things().size() == 2);
    CHECK(stage.session().notes.back().find("0 of 2") != std::string::npos);
    CHECK(stage.session().outing() == before);
  }
  machine().records.erase("things");
  Stage stage(390, 844);
  stage.open_sample();
  to_things(stage);
  stage.tap("things:open");
  CHECK(machine().asked_for_file);
  stage.shell().file_picked("my-own-things.json", file);
  stage.settle();
  CHECK(stage.session().things() == read_things(file).things);
  CHECK(read_things(machine().records["things"]).things.size() == 2);
  for (const char* wrong : {"", "{}", "{\"groundsheet\": 1, \"kind\": \"things\", \"things\": 7}"}) {
    stage.shell().file_picked("wrong.json", wrong);
    CHECK(stage.session().things().size() == 2);
    CHECK(!stage.session().notes.empty());
  }
}

TEST_CASE("why and check end with their method and with themselves as text") {
  Stage stage(1024, 768);
  stage.open_sample();
  stage.tap("chain:feedline");
  stage.tap("feedline.swr_at_radio");
  stage.tap("why:copy");
  CHECK(machine().copied.find("SWR at radio: ") == 0);
  CHECK(machine().copied.find("\nSource: ") != std::string::npos);
  CHECK(stage.at("why:copy").name == "Copied");
  stage.tap("why:method");
  CHECK(machine().opened_page == "methods/feedline.html");
  stage.tap("home");
  stage.tap("chain:feedline");
  stage.tap("open:feedline.roll_loss");
  stage.shell().act({"check:swr", platform::MirrorAction::Verb::set, 3.2});
  stage.settle();
  stage.tap("check:copy");
  CHECK(machine().copied.find(find_check("feedline.roll_loss")->question) == 0);
  CHECK(machine().copied.find(" dB") != std::string::npos);
  CHECK(machine().copied.find("(yours)") != std::string::npos);
}
