// What stands beside the options of a long choice, and how they are found.
#include "core/outing/option_notes.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "core/outing/outing.h"

using namespace gs;

namespace {

Plan plan_at(double mhz) { return resolve(with(Outing{}, L::antenna_frequency_mhz, mhz)); }

std::size_t place_of(const std::vector<OptionNote>& notes, std::string_view key) {
  const auto options = lever(L::feedline_cable).options();
  for (std::size_t i = 0; i < notes.size(); ++i)
    if (options[notes[i].option].key == key) return i;
  return notes.size();
}

}  // namespace

TEST_CASE("cables stand by loss at the plan's frequency, in the order of their published figures at 10 MHz") {
  // dB/100 ft at 10 MHz of the makers' data sheets as the catalogue's points quote them: 3.3, 1.4, 1.1, 0.6, 0.4
  const char* worst_first[] = {"rg174", "rg58c", "rg58", "rg213", "foam_400"};
  const std::vector<OptionNote> notes = noted_options(plan_at(10), L::feedline_cable, {});
  for (std::size_t i = 0; i + 1 < std::size(worst_first); ++i)
    CHECK(place_of(notes, worst_first[i]) > place_of(notes, worst_first[i + 1]));
  CHECK(order_words(plan_at(10), L::feedline_cable, {}) == "least loss first, at 10 MHz");
}

TEST_CASE("a cable's words are its loss and its weight for 10 m") {
  const std::vector<OptionNote> notes = noted_options(plan_at(10), L::feedline_cable, {});
  const std::string words = notes[place_of(notes, "rg58c")].words;
  const double told_db = std::stod(words);
  // 1.4 dB/100 ft at 10 MHz is 0.459 dB for 10 m; read to half a digit, 0.05 dB/100 ft
  MESSAGE("RG-58C: \"" << words << "\"");
  CHECK(std::abs(told_db - 1.4 * 10 / 30.48) <= 0.05 * 10 / 30.48 + 0.005);
  CHECK(words.find(" g a 10 m") != std::string::npos);
}

TEST_CASE("without a frequency the catalogue's order stays, and no loss is told") {
  const Plan plan = resolve(Outing{});
  const std::vector<OptionNote> notes = noted_options(plan, L::feedline_cable, {});
  REQUIRE(!notes.empty());
  CHECK(std::is_sorted(notes.begin(), notes.end(),
                       [](const OptionNote& a, const OptionNote& b) { return a.option < b.option; }));
  for (const OptionNote& note : notes) CHECK_MESSAGE(note.words.find("dB") == std::string::npos, note.words);
  CHECK(order_words(plan, L::feedline_cable, {}).empty());
}

TEST_CASE("every option that is offered stands in the list once, whatever the choice") {
  const Plan plan = plan_at(14.2);
  for (std::size_t i = 0; i < std::size_t(L::count); ++i) {
    const Lever& row = lever(L(i));
    if (row.kind != Kind::choice) {
      CHECK(noted_options(plan, L(i), {}).empty());
      continue;
    }
    const auto options = row.options();
    std::vector<int> seen(options.size(), 0);
    for (const OptionNote& note : noted_options(plan, L(i), {})) ++seen[note.option];
    for (std::size_t k = 0; k < options.size(); ++k) {
      const bool chosen = plan.has(L(i)) && std::size_t(plan[L(i)]) == k;
      CHECK_MESSAGE(seen[k] == (options[k].retired && !chosen ? 0 : 1), row.key << "=" << options[k].key);
    }
  }
}

TEST_CASE("options are found by any words of name or note, without case and hyphens") {
  CHECK(found_by("", "RG-58C", "0.46 dB"));
  CHECK(found_by("rg58", "RG-58C", ""));
  CHECK(found_by("58 rg", "RG-58C", ""));
  CHECK(found_by("400 FOAM", "400 size foam", ""));
  CHECK(found_by("0.46", "RG-58C", "0.46 dB, 370 g a 10 m"));
  CHECK(!found_by("rg213", "RG-58C", "0.46 dB"));
  CHECK(!found_by("rg58 zz", "RG-58C", ""));
  CHECK(!found_by("\xC3\xA9", "RG-58C", ""));
  CHECK(!found_by("--", "RG 58C", ""));
}
