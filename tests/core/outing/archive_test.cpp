#include "core/outing/archive.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <vector>

#include "core/outing/plan.h"
#include "core/outing/utf8.h"

using namespace gs;

namespace {

const std::string kHead = R"({"groundsheet": 1, "kind": "outing")";
std::string file_with(const std::string& members) { return kHead + ", " + members + "}"; }
std::string with_levers(const std::string& levers) { return file_with("\"levers\": {" + levers + "}"); }

const std::string kGood =
    R"({"groundsheet": 1, "kind": "outing", "name": "By the pond \"north\"", "date": "2026-06-13",
 "levers": {"radio.full_power_w": 100, "radio.tuner": "in_set", "feedline.length_m": 15.5, "antenna.frequency_mhz": 14.06,
  "sky.someday": [1, {"deep": -2.50e-3}], "antenna.feed_x_ohm": -12},
 "pinned": {"name": "40 W", "levers": {"radio.transmit_power_w": 40, "other.lever": "x"}, "colour": null},
 "stints": [], "kit": [{"name": "rope", "weight_g": 1.50, "works_pct": 99.5, "vital": false}], "tally": [], "measured": [], "mood": "gr\u00fcn €"})";

/// Every refusal: one line that says why, and nothing of the file in the outing.
void check_refused(const std::string& text, const char* says = "") {
  const LoadedOuting loaded = read_outing(text);
  CHECK_FALSE(loaded.refusal.empty());
  CHECK(loaded.refusal.find('\n') == std::string::npos);
  CHECK_MESSAGE(loaded.refusal.find(says) != std::string::npos, loaded.refusal);
  CHECK(loaded.outing == Outing{});
  CHECK_FALSE(loaded.newer);
}

/// Either refused as above, or an outing that writes and reads back the same.
bool refused_or_sound(const std::string& text) {
  const LoadedOuting loaded = read_outing(text);
  if (!loaded.refusal.empty()) return loaded.outing == Outing{} && loaded.refusal.find('\n') == std::string::npos;
  const std::string written = write_outing(loaded.outing);
  const LoadedOuting again = read_outing(written);
  return again.refusal.empty() && again.outing == loaded.outing && write_outing(again.outing) == written;
}

bool noted(const std::vector<std::string>& notes, const std::string& a, const std::string& b = "") {
  return std::any_of(notes.begin(), notes.end(), [&](const std::string& note) {
    return note.find(a) != std::string::npos && note.find(b) != std::string::npos;
  });
}

Value value_of(const LoadedOuting& loaded, const char* key) {
  return loaded.outing.set[std::size_t(find_lever(key))];
}

}  // namespace

TEST_CASE("archive: a good file is read, written in table order and read back the same") {
  const LoadedOuting loaded = read_outing(kGood);
  REQUIRE_MESSAGE(loaded.refusal.empty(), loaded.refusal);
  CHECK(loaded.outing.name == "By the pond \"north\"");
  CHECK(loaded.outing.date == "2026-06-13");
  CHECK(value_of(loaded, "radio.full_power_w") == Value{100.0});
  CHECK(value_of(loaded, "radio.tuner") == Value{"in_set"});
  CHECK(value_of(loaded, "antenna.feed_x_ohm") == Value{-12.0});
  CHECK(value_of(loaded, "feedline.cable") == Value{});
  REQUIRE(loaded.outing.pinned);
  CHECK(loaded.outing.pinned_name == "40 W");
  CHECK((*loaded.outing.pinned)[std::size_t(L::radio_transmit_power_w)] == Value{40.0});
  CHECK(loaded.outing.kit ==
        std::vector<kit::Item>{
            {.name = "rope", .function = "rope", .weight_g = 1.5, .backups = 0, .works = 0.995, .vital = false}});
  CHECK(loaded.notes.size() == 4);
  for (const char* key : {"sky.someday", "pinned other.lever", "pinned colour", "mood"})
    CHECK(noted(loaded.notes, key, "kept"));
  CHECK_FALSE(loaded.newer);
  CHECK(write_outing(loaded.outing) == R"({
  "groundsheet": 1,
  "kind": "outing",
  "name": "By the pond \"north\"",
  "date": "2026-06-13",
  "levers": {
    "radio.full_power_w": 100,
    "radio.tuner": "in_set",
    "antenna.frequency_mhz": 14.06,
    "antenna.feed_x_ohm": -12,
    "feedline.length_m": 15.5,
    "sky.someday": [1,{"deep":-2.50e-3}]
  },
  "pinned": {
    "name": "40 W",
    "levers": {
      "radio.transmit_power_w": 40,
      "other.lever": "x"
    },
    "colour": null
  },
  "kit": [
    {"name": "rope", "function": "rope", "weight_g": 1.5, "backups": 0, "works_pct": 99.5, "vital": false}
  ],
  "stints": [],
  "tally": [],
  "measured": [],
  "mood": "grün €"
}
)");
  CHECK(refused_or_sound(kGood));
}

TEST_CASE("archive: a kit item that cannot be read is left out with a reason, the others stay") {
  const LoadedOuting loaded = read_outing(file_with(
      R"("kit": [{"name": "radio", "weight_g": 900}, {"weight_g": 5}, {"name": "rope", "weight_g": -1}, 7,
       {"name": "fuse", "backups": 1.5}, {"name": "pole", "works_pct": 101}, {"name": "pencil", "colour": "red"}])"));
  REQUIRE_MESSAGE(loaded.refusal.empty(), loaded.refusal);
  REQUIRE(loaded.outing.kit.size() == 2);
  CHECK(loaded.outing.kit[0].name == "radio");
  CHECK(loaded.outing.kit[1].name == "pencil");
  CHECK(loaded.notes.size() == 6);
  for (const char* item : {"kit item 2", "kit item 3", "kit item 4", "kit item 5", "kit item 6"})
    CHECK(noted(loaded.notes, item, "left out"));
  // a member that a later version may know stays with its item
  CHECK(noted(loaded.notes, "kit item 7 colour", "kept"));
  CHECK(write_outing(loaded.outing).find(R"("colour": "red"})") != std::string::npos);
}

TEST_CASE("archive: any outing writes and reads back the same, 500 times") {
  constexpr unsigned kSeed = 20261128;
  std::mt19937 random(kSeed);
  const std::vector<std::string> pieces = {"a", " ", "\"", "\\", "ü", "€", "😀", "/", "\u2212", "</script>"};
  const auto words = [&] {
    std::string text;
    for (std::size_t i = random() % 12; i > 0; --i) text += pieces[random() % pieces.size()];
    return clean_text(text, kMostNameChars);
  };
  const auto fill = [&](Values& values) {
    for (std::size_t i = 0; i < lever_count(); ++i) {
      const Lever& row = lever(L(i));
      if (random() % 3 == 0) continue;
      if (row.kind == Kind::number) {
        const double share = double(random()) / double(std::mt19937::max());
        values[i] = std::clamp(row.least + share * (row.most - row.least), row.least, row.most);
      } else if (row.kind == Kind::choice) {
        values[i] = std::string(row.options()[random() % row.options().size()].key);
      } else {
        values[i] = words();
      }
    }
  };
  std::size_t longest = 0;
  for (int i = 0; i < 500; ++i) {
    Outing outing;
    outing.name = words();
    outing.date = random() % 2 ? "" : "2024-02-29";
    fill(outing.set);
    if (random() % 2) fill(outing.pinned.emplace(lever_count()));
    if (random() % 2) outing.pinned_name = words();
    if (random() % 2) outing.kept = "{\"top\":{" + json_quote(words() + "!") + ":[1,2.50,\"x\"]}}";
    const std::string text = write_outing(outing);
    const LoadedOuting loaded = read_outing(text);
    CAPTURE(text);
    REQUIRE_MESSAGE(loaded.refusal.empty(), loaded.refusal);
    CHECK(loaded.outing == outing);
    CHECK(loaded.notes.size() == (outing.kept.empty() ? 0 : 1));
    longest = std::max(longest, text.size());
  }
  MESSAGE("seed " << kSeed << ": longest file " << longest << " bytes");
}

TEST_CASE("archive: cut off at any byte, any byte changed") {
  REQUIRE(read_outing(kGood).refusal.empty());
  for (std::size_t length = 0; length < kGood.size(); ++length) {
    CAPTURE(length);
    check_refused(kGood.substr(0, length));
  }
  check_refused("", "empty");
  check_refused(" \n", "empty");
  check_refused(kGood.substr(0, 40), "cut short");
  check_refused(kGood + "x", "line 5");
  int read = 0, tried = 0;
  for (std::size_t at = 0; at < kGood.size(); ++at) {
    for (const int mask : {0x01, 0x10, 0x80, 0xFF}) {
      std::string text = kGood;
      text[at] = char(text[at] ^ mask);
      if (!refused_or_sound(text)) FAIL("byte " << at << " mask " << mask);
      read += read_outing(text).refusal.empty();
      ++tried;
    }
  }
  MESSAGE(read << " of " << tried << " changed files were still readable");
  CHECK(read > 0);
  CHECK(read < tried);
}

TEST_CASE("archive: too large, too deep, not text") {
  check_refused(std::string(10'000'000, '\0'), "too large");
  check_refused(std::string(1000, '\0'), "zero bytes");
  check_refused(kGood + std::string(1, '\0'), "zero bytes");
  const std::string room(kMostFileBytes - kGood.size(), ' ');
  CHECK(read_outing(kGood + room).refusal.empty());
  check_refused(kGood + room + " ", "1000001 bytes");
  const auto nested = [](std::size_t levels) {
    return file_with("\"x\": " + std::string(levels, '[') + "1" + std::string(levels, ']'));
  };
  CHECK(read_outing(nested(15)).refusal.empty());  // the file's own object is the first of 16
  CHECK(refused_or_sound(nested(15)));
  check_refused(nested(16), "deeper than 16");
  check_refused(nested(20'000), "deeper than 16");
  check_refused(std::string(20'000, '['), "not a JSON object");
  std::string objects = "\"x\": ";
  for (int i = 0; i < 20'000; ++i) objects += "{\"a\":";
  check_refused(kHead + ", " + objects, "deeper than 16");
}

TEST_CASE("archive: a file of nothing but strange members stays one that can be opened again") {
  const auto strange = [](std::size_t bytes, const std::string& value) {
    std::string text = kHead;
    for (int i = 0; text.size() + value.size() + 20 < bytes; ++i) text += ",\"" + std::to_string(i) + "\":" + value;
    return text + "}";
  };
  const LoadedOuting third = read_outing(strange(kMostFileBytes / 3, "1"));
  CHECK(third.refusal.empty());
  CHECK(third.notes.size() == 41);
  CHECK(noted(third.notes, "more like these"));
  CHECK(read_outing(write_outing(third.outing)).outing == third.outing);
  check_refused(strange(kMostFileBytes, "1"), "too large");
  check_refused(strange(kMostFileBytes, "\"\xff\xff\xff\xff\xff\xff\""), "too large");
}

TEST_CASE("archive: JSON as RFC 8259 has it, and nothing else") {
  for (const char* value :
       {"NaN",  "Infinity",   "-Infinity", "nan",       "01",    "1.",      ".5",          "+1",       "0x10",
        "1e",   "--1",        "1e400e",    "'x'",       "tru",   "\"\\x\"", "\"\\ud800\"", "\"a\nb\"", "\"\t\"",
        "[1,]", "{\"a\":1,}", "{1:2}",     "{1e400:2}", "[1 2]", "/* */ 1", "1 // x",      ""}) {
    CAPTURE(value);
    check_refused(file_with("\"x\": " + std::string(value)), "not JSON");
  }
  for (const char* value : {"0", "-0", "1E+2", "1.5e-3", "true", "null", "\"\\u20ac\\/\\b\"", "\"\\ud83d\\ude00\"",
                            "[ ]", "{ }", "[[],{},[1,\"]\"]]", "123456789012345678901234567890"}) {
    CAPTURE(value);
    const std::string text = file_with("\"x\":\r\n\t" + std::string(value));
    CHECK(read_outing(text).refusal.empty());
    CHECK(refused_or_sound(text));
  }
  CHECK(read_outing(file_with("\"x\": [123456789012345678901234567890, 1.10]")).outing.kept ==
        R"({"top":{"x":[123456789012345678901234567890,1.10]}})");
  CHECK(read_outing("\xEF\xBB\xBF" + kGood).outing ==
        read_outing(kGood).outing);  // a byte order mark may be ignored (8.1)
}

TEST_CASE("archive: not ours") {
  check_refused("[]", "not a JSON object");
  check_refused("7", "not a JSON object");
  check_refused("{}", "\"groundsheet\" is missing");
  for (const char* version : {"0", "-1", "1.5", "\"1\"", "null", "true", "[]", "1e400"}) {
    CAPTURE(version);
    check_refused("{\"groundsheet\": " + std::string(version) + ", \"kind\": \"outing\"}", "version number");
  }
  for (const char* kind : {"\"settings\"", "\"Outing\"", "1", "null", "[]"}) {
    CAPTURE(kind);
    check_refused("{\"groundsheet\": 1, \"kind\": " + std::string(kind) + "}", "\"kind\"");
  }
  check_refused("{\"groundsheet\": 1}", "\"kind\"");
}

TEST_CASE("archive: a newer file is read as far as known") {
  const LoadedOuting loaded = read_outing(
      R"({"groundsheet": 3, "kind": "outing", "name": "x", "levers": {"radio.full_power_w": 5, "new.one": 1}, "new": {}})");
  CHECK(loaded.refusal.empty());
  CHECK(loaded.newer);
  CHECK(noted(loaded.notes, "newer version"));
  CHECK(value_of(loaded, "radio.full_power_w") == Value{5.0});
  CHECK(loaded.outing.kept == R"({"top":{"new":{}},"levers":{"new.one":1}})");
  CHECK(read_outing(kHead + "}").newer == false);
}

TEST_CASE("archive: members of the wrong kind are left out and noted by key") {
  const std::vector<std::string> values = {"null", "true", "1", "\"?\"", "[]", "{}", "[1]", "{\"a\":1}"};
  for (const std::string key : {"name", "date", "levers", "pinned"}) {
    for (const std::string& value : values) {
      const std::string text = file_with("\"" + key + "\": " + value);
      CAPTURE(text);
      const LoadedOuting loaded = read_outing(text);
      CHECK(loaded.refusal.empty());
      const bool right = key == "name" ? value == "\"?\"" : key != "date" && value[0] == '{';
      CHECK(noted(loaded.notes, key, "left out") == !right);
      if (!right) CHECK(loaded.outing == Outing{});
      CHECK(refused_or_sound(text));
    }
  }
  for (std::size_t i = 0; i < lever_count(); ++i) {
    const Lever& row = lever(L(i));
    for (const std::string& value : values) {
      const std::string text = with_levers("\"" + std::string(row.key) + "\": " + value);
      CAPTURE(text);
      const LoadedOuting loaded = read_outing(text);
      CHECK(loaded.refusal.empty());
      const bool right = (row.kind == Kind::number && value == "1" && row.least <= 1 && row.most >= 1) ||
                         (row.kind == Kind::text && value == "\"?\"");
      CHECK((loaded.outing == Outing{}) == !right);
      CHECK(noted(loaded.notes, std::string(row.key), "left out") == !right);
    }
  }
}

TEST_CASE("archive: numbers outside their range, too large or written with a unit") {
  for (std::size_t i = 0; i < lever_count(); ++i) {
    const Lever& row = lever(L(i));
    if (row.kind != Kind::number) continue;
    for (const double bound : {row.least, row.most}) {
      const double beyond = bound + (bound == row.most ? 1 : -1) * std::max(1e-6, std::fabs(bound) * 1e-9);
      CAPTURE(row.key);
      const std::string key = "\"" + std::string(row.key) + "\": ";
      CHECK(read_outing(with_levers(key + exact_text(bound))).outing.set[i] == Value{bound});
      const LoadedOuting loaded = read_outing(with_levers(key + exact_text(beyond)));
      CHECK(loaded.outing == Outing{});
      CHECK(noted(loaded.notes, std::string(row.key), " to "));
    }
  }
  const auto notes_of = [](const char* value) {
    const LoadedOuting loaded = read_outing(with_levers("\"feedline.length_m\": " + std::string(value)));
    CHECK(loaded.refusal.empty());
    CHECK(loaded.outing == Outing{});
    return loaded.notes;
  };
  CHECK(noted(notes_of("-3"), "feedline.length_m: -3 is left out", "0 to 100"));
  CHECK(noted(notes_of("-1e-300"), "feedline.length_m"));
  CHECK(noted(notes_of("1e400"), "feedline.length_m", "too large"));
  CHECK(noted(notes_of("-1e400"), "feedline.length_m", "too large"));
  CHECK(noted(notes_of("\"1000 ft\""), "feedline.length_m: \"1000 ft\" is left out", "0 to 100"));
  CHECK(noted(notes_of("\"15 W\""), "feedline.length_m", "\"W\" is a power"));
  CHECK(noted(notes_of("\"NaN\""), "feedline.length_m", "no number"));
  const LoadedOuting feet = read_outing(with_levers("\"feedline.length_m\": \"50ft\""));
  CHECK(std::get<double>(value_of(feet, "feedline.length_m")) ==
        doctest::Approx(15.24).epsilon(1e-15));  // 0.3048 m a foot, SP 811 B.8
  CHECK(noted(feet.notes, "feedline.length_m: \"50ft\" was read as 15.2 m"));
}

TEST_CASE("archive: choices by key") {
  for (std::size_t i = 0; i < lever_count(); ++i) {
    const Lever& row = lever(L(i));
    if (row.kind != Kind::choice) continue;
    for (const Option& option : row.options()) {  // retired ones too
      const LoadedOuting loaded =
          read_outing(with_levers("\"" + std::string(row.key) + "\": " + json_quote(option.key)));
      CHECK(loaded.outing.set[i] == Value{std::string(option.key)});
      CHECK(loaded.notes.empty());
    }
    const LoadedOuting loaded = read_outing(with_levers("\"" + std::string(row.key) + "\": \"no such\""));
    CHECK(loaded.outing == Outing{});
    CHECK(noted(loaded.notes, std::string(row.key) + ": \"no such\" is left out"));
  }
}

TEST_CASE("archive: names are cleaned, bad UTF-8 is replaced, dates are days") {
  const auto name_of = [](const std::string& name) {
    return read_outing(file_with("\"name\": \"" + name + "\"")).outing.name;
  };
  CHECK(name_of("a\\u0000b\\n\\tc\\u007f\\u0085\\u2028\\u202ed") == "abcd");
  CHECK(name_of(std::string(200, 'x')) == std::string(80, 'x'));
  std::string euros, eighty;
  for (int i = 0; i < 90; ++i) euros += "€";
  for (int i = 0; i < 80; ++i) eighty += "€";
  CHECK(name_of(euros) == eighty);
  CHECK(noted(read_outing(file_with("\"name\": \"a\\nb\"")).notes, "name"));
  // RFC 3629: lone continuation, slash overlong in 2, 3 and 4 bytes, surrogate, above U+10FFFF, cut off in the
  // middle
  const std::string bad[] = {"\x80",         "\xC0\xAF",         "\xE0\x80\xAF", "\xF0\x80\x80\xAF",
                             "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x82"};
  for (const std::string& bytes : bad) {
    std::string expected;
    for (std::size_t i = 0; i < bytes.size(); ++i) expected += "\uFFFD";
    CHECK(name_of("a" + bytes) == "a" + expected);
    CHECK(noted(read_outing(file_with("\"name\": \"" + bytes + "\"")).notes, "UTF-8"));
  }
  for (const char* name : {"é", "€", "😀", "\U0010FFFF", "\u07FF\u0800\uFFFF\U00010000"})
    CHECK(name_of(name) == name);
  check_refused(kHead + "\xff}", "not JSON");
  for (const char* date : {"2026-06-13", "2024-02-29", "2000-02-29", ""})
    CHECK(read_outing(file_with("\"date\": \"" + std::string(date) + "\"")).outing.date == date);
  // Gregorian leap years: 1900 and 2026 are none
  for (const char* date : {"2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-06-31", "13.6.2026",
                           "2026-6-13", "2026-06-13T10:00"}) {
    CAPTURE(date);
    const LoadedOuting loaded = read_outing(file_with("\"date\": \"" + std::string(date) + "\""));
    CHECK(loaded.outing.date.empty());
    CHECK(noted(loaded.notes, "date", "left out"));
  }
}

TEST_CASE("archive: keys that come twice, in any spelling") {
  const LoadedOuting loaded = read_outing(file_with(
      R"("name": "one", "x": 1, "levers": {"radio.full_power_w": 5, "radio.full\u005fpower_w": 9}, "x": [2], "name": "two")"));
  CHECK(loaded.outing.name == "two");
  CHECK(value_of(loaded, "radio.full_power_w") == Value{9.0});
  CHECK(loaded.outing.kept == R"({"top":{"x":[2]}})");
  for (const char* key : {"name: ", "x: ", "radio.full_power_w: "}) CHECK(noted(loaded.notes, key, "twice"));
}

TEST_CASE("archive: what is kept never pushes aside what is known") {
  Outing outing;
  outing.name = "mine";
  outing.kept =
      R"({"top":{"name":"theirs","kind":"x","y":1},"levers":{"radio.full_power_w":7},"pinned":{"levers":{},"z":2},"odd":{"a":1}})";
  const LoadedOuting loaded = read_outing(write_outing(outing));
  CHECK(loaded.outing.name == "mine");
  CHECK(value_of(loaded, "radio.full_power_w") == Value{});
  CHECK_FALSE(loaded.outing.pinned);
  CHECK(loaded.outing.kept == R"({"top":{"y":1},"pinned":{"z":2}})");
  CHECK(kept_without_pin(loaded.outing.kept) == R"({"top":{"y":1}})");
  CHECK(kept_without_pin(R"({"pinned_levers":{"z":2}})").empty());
  CHECK(kept_without_pin("").empty());
  outing.kept = "{broken";
  CHECK(read_outing(write_outing(outing)).outing.kept.empty());
}

TEST_CASE("archive: settings") {
  for (const ThemeName theme : {ThemeName::daylight, ThemeName::dusk, ThemeName::night}) {
    const Settings settings{theme,
                            140,
                            theme == ThemeName::dusk,
                            {theme == ThemeName::night ? ',' : '.', true, false},
                            theme == ThemeName::dusk ? "general" : ""};
    const LoadedSettings loaded = read_settings(write_settings(settings));
    CHECK(loaded.refusal.empty());
    CHECK(loaded.notes.empty());
    CHECK(loaded.settings == settings);
  }
  const std::string head = R"({"groundsheet": 1, "kind": "settings")";
  for (const std::string member :
       {"\"theme\": \"neon\"", "\"theme\": 1", "\"text_pct\": 99", "\"text_pct\": 201", "\"text_pct\": 120.5",
        "\"text_pct\": \"120\"", "\"text_pct\": 1e400", "\"left_hand\": 1", "\"decimal_sign\": \"..\"",
        "\"decimal_sign\": 1", "\"feet\": null", "\"fahrenheit\": \"true\"", "\"licence\": \"pilot\"",
        "\"licence\": 1", "\"unknown\": 1"}) {
    CAPTURE(member);
    const LoadedSettings loaded = read_settings(head + "," + member + "}");
    CHECK(loaded.refusal.empty());
    CHECK(loaded.settings == Settings{});
    CHECK(noted(loaded.notes, member.substr(1, member.find('"', 1) - 1), "left out"));
  }
  for (const std::string& text :
       {std::string(), std::string("{"), std::string("[]"), kGood, std::string(2'000'000, ' '), head}) {
    const LoadedSettings loaded = read_settings(text);
    CHECK_FALSE(loaded.refusal.empty());
    CHECK(loaded.settings == Settings{});
  }
}

TEST_CASE("archive: JSON string literals") {
  CHECK(json_quote("a\"b\\c/é€😀") == "\"a\\\"b\\\\c/é€😀\"");
  CHECK(json_quote(std::string("\0\x1f\x7f\n\t\xff", 6)) == "\"\\u0000\\u001f\\u007f\\n\\t\uFFFD\"");
  CHECK(json_quote("") == "\"\"");
}
