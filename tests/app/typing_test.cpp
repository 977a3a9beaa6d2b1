// Texts as a person types them: with a keyboard of the window, and through the page's own field.
#include <doctest/doctest.h>

#include "tests/app/stage.h"

using namespace gs;
using platform::Key;
using stage::machine;
using stage::Stage;
using Verb = platform::MirrorAction::Verb;

namespace {

void open_sky(Stage& stage) {
  stage.open_sample();
  stage.tap("chain:sky");
  REQUIRE(stage.find("site.locator") != nullptr);
}

void type(Stage& stage, std::string_view text) {
  for (const char c : text) c == ' ' ? stage.press(Key::space) : stage.type(c);
}

std::string locator(Stage& stage) { return value_text(stage.session().plan(), L::site_locator, {}); }

void act(Stage& stage, Verb verb, std::string text) {
  platform::MirrorAction action{"site.locator", verb, 0, std::move(text)};
  stage.shell().act(action);
  stage.settle();
}

}  // namespace

TEST_CASE("a text lever is typed where it stands; Enter sets it, one step of undo") {
  Stage stage(1024, 768);
  open_sky(stage);
  const std::string before = locator(stage);
  CHECK(stage.at("site.locator").value == before);
  stage.tap("site.locator");
  CHECK(stage.tree().focus == "site.locator");
  type(stage, "JN58td");  // what stood there is selected, so the first letter takes its place
  CHECK(stage.at("site.locator").value == "JN58td");
  CHECK(locator(stage) == before);
  stage.press(Key::enter);
  CHECK(locator(stage) == "JN58td");
  stage.tap("undo");
  CHECK(locator(stage) == before);
}

TEST_CASE("what cannot be is refused in words below the field, stays there, and can be mended or dropped") {
  Stage stage(390, 844);
  open_sky(stage);
  const std::string before = locator(stage);
  stage.tap("site.locator");
  type(stage, "ZZ99");
  stage.press(Key::enter);
  CHECK(stage.at("site.locator").value == "ZZ99");
  CHECK(!stage.at("site.locator").trouble.empty());
  CHECK(stage.at("site.locator:below").name == stage.at("site.locator").trouble);
  CHECK(stage.at("site.locator:below").live);
  CHECK(locator(stage) == before);
  stage.tap("home");  // away and back: still there
  stage.session().view.sheet = Sheet::link;
  platform::wake(2);
  stage.settle();
  CHECK(stage.at("site.locator").value == "ZZ99");
  stage.tap("site.locator");
  stage.press(Key::escape);
  CHECK(stage.at("site.locator").value == before);
  CHECK(stage.at("site.locator").trouble.empty());
  type(stage, "JO31");    // Escape left all of it selected
  stage.press(Key::tab);  // leaving the field counts too
  CHECK(locator(stage) == "JO31");
}

TEST_CASE("an empty text takes the lever out") {
  Stage stage(1024, 768);
  open_sky(stage);
  stage.tap("site.locator");
  stage.press(Key::backspace);
  stage.press(Key::enter);
  CHECK(!stage.session().plan().has(L::site_locator));
}

TEST_CASE("caret, selection and clipboard of the window's own field go by whole characters") {
  Stage stage(1024, 768);
  open_sky(stage);
  stage.tap("site.locator");
  stage.press(Key::backspace);
  stage.shell().key({Key::character, false, 0xE4});    // two bytes
  stage.shell().key({Key::character, false, 0x2126});  // three
  type(stage, "b");
  CHECK(stage.at("site.locator").value == "\u00E4\u2126b");
  stage.press(Key::left);
  stage.press(Key::backspace);
  CHECK(stage.at("site.locator").value == "\u00E4b");
  stage.press(Key::home);
  stage.press(Key::erase_next);
  CHECK(stage.at("site.locator").value == "b");
  stage.press(Key::end);
  stage.press(Key::home, true);
  stage.press(Key::copy);
  CHECK(machine().copied == "b");
  machine().copied =
      "J O\x01"
      "3" +
      std::string(200, '1');
  stage.press(Key::paste);
  const std::string pasted = stage.at("site.locator").value;
  CHECK(pasted.size() == 80);  // controls dropped, cut where the field is full
  CHECK(pasted.substr(0, 5) == "J O31");
  stage.press(Key::select_all);
  stage.press(Key::cut);
  CHECK(stage.at("site.locator").value.empty());
}

TEST_CASE("typing never presses a key of the keypad nor moves a slider") {
  Stage stage(1024, 768);
  open_sky(stage);
  const Values before = stage.session().outing().set;
  stage.tap("site.locator");
  type(stage, "12");
  for (const Key key : {Key::left, Key::right, Key::home, Key::end, Key::up, Key::down, Key::page_up})
    stage.press(key);
  CHECK(stage.session().outing().set == before);
  CHECK(stage.tree().focus == "site.locator");
}

TEST_CASE("the page's own field tells what is typed and how it ends") {
  Stage stage(1024, 768);
  open_sky(stage);
  const std::string before = locator(stage);
  act(stage, Verb::focus, "");
  act(stage, Verb::type, "JN5");
  act(stage, Verb::type, "JN58");
  CHECK(stage.at("site.locator").value == "JN58");
  CHECK(locator(stage) == before);
  act(stage, Verb::cancel, "");
  CHECK(stage.at("site.locator").value == before);
  act(stage, Verb::type, " JN58 ");
  act(stage, Verb::commit, " JN58 ");
  act(stage, Verb::blur, "");
  CHECK(locator(stage) == "JN58");
  CHECK(stage.tree().focus.empty());
}

TEST_CASE("a press elsewhere counts what was typed, even where it opens another sheet at once") {
  Stage stage(1024, 768);
  open_sky(stage);
  stage.tap("site.locator");
  type(stage, "JN58");
  const mirror::Node home = stage.at("home");
  stage.touch(platform::PointerKind::down, home.x + 20, home.y + 20);
  stage.touch(platform::PointerKind::up, home.x + 20, home.y + 20);
  stage.settle();
  CHECK(stage.find("site.locator") == nullptr);
  CHECK(locator(stage) == "JN58");
}
