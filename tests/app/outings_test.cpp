// Many outings on one device: none is lost on the way from one to the next, by hand, by undo, by another window.
#include <doctest/doctest.h>

#include "app/shelf.h"
#include "app/store/store.h"
#include "core/outing/archive.h"
#include "tests/app/stage.h"

using namespace gs;
using platform::Key;
using stage::machine;
using stage::Stage;

namespace {

void to_outings(Stage& stage) {
  stage.tap("more");
  stage.tap("outings");
  REQUIRE(stage.find("outings:list") != nullptr);
}

double length_m(Stage& stage) { return stage.session().plan()[L::feedline_length_m]; }

std::string outing_text(const std::string& name, double length) {
  Outing outing;
  outing.name = name;
  return write_outing(with(outing, L::feedline_length_m, length));
}

}  // namespace

TEST_CASE("keys of the store are few and plain") {
  for (const char* key : {"outing", "outing-2", "bin-17", "settings", "things", "history", "open"})
    CHECK(store::is_key(key));
  for (const char* key :
       {"", "outing-", "outing-0", "outing-02", "bin", "outing-2/..", "settings-2", "Outing", "outing-123456789"})
    CHECK_FALSE(store::is_key(key));
  CHECK(record_number("outing", "outing") == 1);
  CHECK(record_number("outing-12", "outing") == 12);
  CHECK(record_number("outings", "outing") == 0);
}

TEST_CASE("a store of before, with its one outing, opens as it was; the next outing stands beside it") {
  machine().outing = outing_text("From before", 33);
  Stage stage(1024, 768);
  CHECK(length_m(stage) == 33);
  to_outings(stage);
  stage.tap("outings:new");
  stage.session().set(L::feedline_length_m, 7.0);
  platform::wake(1);
  stage.settle();
  CHECK(read_outing(machine().outing).outing.name == "From before");
  CHECK(read_outing(machine().records["outing-2"]).outing.set[std::size_t(L::feedline_length_m)] == Value{7.0});
  CHECK(machine().records["open"] == "outing-2");
  to_outings(stage);
  stage.tap("open:outing");
  CHECK(length_m(stage) == 33);
  CHECK(machine().records["open"] == "outing");
  stage.tap("undo");  // opening was a step
  CHECK(length_m(stage) == 7);
  CHECK(stage.session().key() == "outing-2");
}

TEST_CASE("the one that was open is open at the next start") {
  machine().outing = outing_text("One", 1);
  machine().records = {
      {"outing-2", outing_text("Two", 2)}, {"outing-3", outing_text("Three", 3)}, {"open", "outing-2"}};
  Stage stage(390, 844);
  CHECK(length_m(stage) == 2);
  to_outings(stage);
  for (const char* id : {"open:outing", "open:outing-2", "open:outing-3"}) CHECK(stage.find(id) != nullptr);
  CHECK(stage.at("open:outing-2").current);
}

TEST_CASE("duplicate, rename by typing, throw away and bring back") {
  machine().outing = outing_text("Quillet Meadow", 12);
  Stage stage(1024, 768);
  to_outings(stage);
  stage.tap("outing:more");
  stage.tap("outing:copy");
  CHECK(read_outing(machine().records["outing-2"]).outing.name == "Quillet Meadow, copy");
  CHECK(stage.session().key() == "outing");
  stage.tap("outing-2:more");
  stage.tap("outing-2:rename");
  for (const char c : std::string_view("Moor")) stage.type(c);
  stage.press(Key::enter);
  CHECK(read_outing(machine().records["outing-2"]).outing.name == "Moor");
  CHECK(stage.at("open:outing-2").name.find("Moor") != std::string::npos);
  stage.tap("outing-2:rename");
  stage.press(Key::select_all);
  stage.press(Key::backspace);
  stage.press(Key::enter);
  CHECK(!stage.at("outing-2:rename").trouble.empty());  // a name is wanted; the old one stays
  CHECK(read_outing(machine().records["outing-2"]).outing.name == "Moor");
  stage.tap("outing-2:bin");
  CHECK(machine().records.count("outing-2") == 0);
  CHECK(stage.find("open:outing-2") == nullptr);
  REQUIRE(machine().records.count("bin-2") == 1);
  stage.tap("back:bin-2");
  CHECK(machine().records.count("bin-2") == 0);
  CHECK(read_outing(machine().records["outing-3"]).outing.name == "Moor");
}

TEST_CASE("throwing away the open one opens another; the last one leaves an empty sheet and can be brought back") {
  machine().outing = outing_text("One", 1);
  machine().records = {{"outing-2", outing_text("Two", 2)}, {"open", "outing-2"}};
  Stage stage(1024, 768);
  to_outings(stage);
  stage.tap("outing-2:more");
  stage.tap("outing-2:bin");
  CHECK(length_m(stage) == 1);
  stage.tap("outing:more");
  stage.tap("outing:bin");
  CHECK(stage.session().outing() == Outing{});
  CHECK(machine().outing.empty());
  stage.tap("back:bin-2");
  CHECK(stage.session().shelf.outings().size() == 1);
}

TEST_CASE("the bin holds the last ten") {
  Shelf shelf;
  for (int i = 0; i < 15; ++i) {
    const std::string key = shelf.fresh_key();
    shelf.put(key, Outing{});
    shelf.throw_away(key);
  }
  CHECK(shelf.bin().size() == Shelf::kMostBinned);
  CHECK(shelf.outings().empty());
  CHECK(shelf.bin().front().key == "bin-7");
}

TEST_CASE("an outing goes out as a file and through the share sheet, the open one as it is now") {
  machine().outing = outing_text("Quillet Meadow", 12);
  Stage stage(1024, 768);
  stage.session().set(L::feedline_length_m, 13.0);
  to_outings(stage);
  stage.tap("outing:more");
  stage.tap("outing:save");
  CHECK(machine().saved_name == "quillet-meadow.json");
  CHECK(read_outing(machine().saved_text).outing == stage.session().outing());
  machine().saved_text.clear();
  stage.tap("outing:share");
  CHECK(machine().shared_name == "quillet-meadow.json");
  CHECK(read_outing(machine().saved_text).outing == stage.session().outing());
  machine().shares = false;
  platform::wake(2);
  stage.settle();
  CHECK(stage.find("outing:share") == nullptr);
}

TEST_CASE("an example that is here already and untouched is opened, not added again") {
  Stage stage(1024, 768);
  stage.open_sample();
  to_outings(stage);
  stage.tap("demo:0");
  CHECK(stage.session().shelf.outings().size() == 1);
  to_outings(stage);
  stage.tap("demo:1");
  CHECK(stage.session().shelf.outings().size() == 2);
}

TEST_CASE("what cannot be read stays in the list, is not written over and can be handed out") {
  machine().outing = "{\"groundsheet\": 1, \"kind\": \"outing\", \"name\"";
  machine().records["open"] = "outing";
  const std::string broken = machine().outing;
  Stage stage(1024, 768);
  CHECK(stage.at("note").name.find("could not be read") != std::string::npos);
  stage.tap("begin:sample");
  CHECK(machine().outing == broken);
  CHECK(read_outing(machine().records["outing-2"]).outing == stage.session().outing());
  to_outings(stage);
  CHECK(stage.at("open:outing").disabled);
  stage.tap("outing:more");
  stage.tap("outing:save");
  CHECK(machine().saved_text == broken);
}

TEST_CASE("leaving an outing of a newer version keeps what was changed beside it") {
  const std::string newer =
      "{\"groundsheet\": 99, \"kind\": \"outing\", \"name\": \"Ahead\", \"levers\": {\"feedline.length_m\": 12}}";
  machine().outing = newer;
  Stage stage(1024, 768);
  stage.session().set(L::feedline_length_m, 20.0);
  to_outings(stage);
  stage.tap("outings:new");
  CHECK(machine().outing == newer);
  const Outing beside = read_outing(machine().records["outing-2"]).outing;
  CHECK(beside.name == "Ahead, changed");
  CHECK(beside.set[std::size_t(L::feedline_length_m)] == Value{20.0});
}

TEST_CASE("two windows: a change follows; two changes at once are kept both and said") {
  machine().outing = outing_text("Shared", 10);
  Stage stage(1024, 768);
  stage.shell().kept_elsewhere("outing", outing_text("Shared", 11), false);
  stage.settle();
  CHECK(length_m(stage) == 11);
  stage.tap("undo");
  CHECK(length_m(stage) == 10);
  const std::string theirs = outing_text("Shared", 12);
  stage.session().set(L::feedline_length_m, 15.0);
  stage.shell().kept_elsewhere("outing", theirs, true);  // this one's save came second
  stage.settle();
  CHECK(length_m(stage) == 15);
  CHECK(stage.session().key() == "outing-2");
  CHECK(read_outing(machine().records["outing-2"]).outing.name == "Shared, second");
  CHECK(stage.at("note").name.find("another window") != std::string::npos);
  to_outings(stage);
  stage.tap("open:outing");
  CHECK(length_m(stage) == 12);
}

TEST_CASE("another window's other outings come and go in the list") {
  machine().outing = outing_text("Mine", 10);
  Stage stage(1024, 768);
  to_outings(stage);
  stage.shell().kept_elsewhere("outing-4", outing_text("Theirs", 4), false);
  stage.settle();
  CHECK(stage.at("open:outing-4").name.find("Theirs") != std::string::npos);
  stage.shell().kept_elsewhere("outing-4", "", false);
  stage.settle();
  CHECK(stage.find("open:outing-4") == nullptr);
  stage.tap("outings:new");
  CHECK(stage.session().key() == "outing-5");  // a number is never used twice
}
