// The outing's notes: several lines of free words that the file keeps and nothing reads.
#include <doctest/doctest.h>

#include "core/outing/archive.h"
#include "core/outing/utf8.h"
#include "tests/core/outing/outings.h"

using namespace gs;

TEST_CASE("notes are kept with their line breaks, and an outing without any has no such key") {
  Outing outing = test::whole_outing();
  CHECK(write_outing(outing).find("notes") == std::string::npos);
  outing.notes = "Park by the \"old\" gate.\nAsk the warden\tfirst: \xC3\xA4\xE2\x84\xA6";
  outing.notes = clean_lines(outing.notes, kMostNotesChars);
  const LoadedOuting loaded = read_outing(write_outing(outing));
  REQUIRE_MESSAGE(loaded.refusal.empty(), loaded.refusal);
  CHECK(loaded.notes.empty());
  CHECK(loaded.outing == outing);
  CHECK(evaluate(resolve(loaded.outing))[R::feedline_power_to_antenna_w].value ==
        evaluate(resolve(test::whole_outing()))[R::feedline_power_to_antenna_w].value);
}

TEST_CASE("notes that are too long, hold controls or are no text are mended, and said") {
  const auto read = [](const std::string& value) {
    return read_outing(R"({"groundsheet": 1, "kind": "outing", "notes": )" + value + "}");
  };
  const LoadedOuting long_one = read("\"" + std::string(kMostNotesChars + 10, 'x') + "\"");
  CHECK(long_one.outing.notes == std::string(kMostNotesChars, 'x'));
  CHECK(long_one.notes.size() == 1);
  const LoadedOuting controls = read(R"("a\u0007b\r\nc\rd")");
  CHECK(controls.outing.notes == "ab\nc\nd");
  CHECK(controls.notes.size() == 1);
  const LoadedOuting number = read("7");
  CHECK(number.outing.notes.empty());
  CHECK(number.notes.size() == 1);
  CHECK(read(R"("one\ntwo")").notes.empty());
}

TEST_CASE("cleaning lines keeps breaks alone of all controls, and cleaning twice changes nothing") {
  for (const char* text :
       {"", "\n", "\r", "\r\n\r\n", "a\r\nb\rc\nd", "tab\there", "\xE2\x80\xA8x", "\xFF\n\xC3"}) {
    const std::string once = clean_lines(text, 100);
    CHECK(clean_lines(once, 100) == once);
    CHECK(once.find('\r') == std::string::npos);
    CHECK(once.find('\t') == std::string::npos);
  }
  CHECK(clean_lines("ab\ncd", 4) == "ab\nc");
}
