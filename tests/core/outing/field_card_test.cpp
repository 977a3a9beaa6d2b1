// The field card holds what the outing's tables hold, each figure as the screen says it, nothing that is not known.
#include "core/outing/field_card.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "core/outing/archive.h"
#include "core/safety/caution.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

FieldCard card_of(const Outing& outing) {
  const Plan plan = resolve(outing);
  return field_card(outing, plan, evaluate(plan), {});
}

std::string value_of(const FieldCard& card, std::string_view what) {
  for (const CardPart& part : card.parts)
    for (const auto& [name, value] : part.rows)
      if (name == what) return value;
  return {};
}

Outing on_the_meadow() {
  Outing outing;
  outing.name = "A \"meadow\"";
  outing.date = "2026-06-13";
  for (const auto& [id, value] : {std::pair{L::clock_utc_offset_min, -240.0},
                                  {L::clock_arrive_min, 1080.0},
                                  {L::clock_leave_by_min, 1290.0},
                                  {L::clock_set_up_min, 10.0},
                                  {L::clock_pack_down_min, 10.0},
                                  {L::feedline_length_m, 15.0}})
    outing = with(std::move(outing), id, value);
  outing.stints = {{.from_min = 1200, .on_air = false},
                   {.from_min = 1215, .set = {{L::radio_transmit_power_w, 10.0}}}};
  outing.kit = {{.name = "Stakes", .function = "antenna", .backups = 3}};
  return outing;
}

}  // namespace

TEST_CASE("field card: times with UTC beside them, over the turn of the UTC day too") {
  const FieldCard card = card_of(on_the_meadow());
  CHECK(card.title == "A \"meadow\", 2026-06-13");
  CHECK(value_of(card, "Arrive") == "18:00 (22:00 UTC)");
  CHECK(value_of(card, "Leave by") == "21:30 (01:30 UTC, next day)");
  CHECK(value_of(card, "Start packing at") == "21:20 (01:20 UTC, next day)");
  CHECK(value_of(card, "Feed line length") == "15 m");
  CHECK(value_of(card, "from 20:00 (00:00 UTC, next day)") == "break");
  CHECK(value_of(card, "from 20:15 (00:15 UTC, next day)") == "transmit power 10 W");
}

TEST_CASE("field card: both clocks show the same minute, and a time past midnight says its day") {
  const FieldCard card =
      card_of(test::also(on_the_meadow(), {{L::clock_arrive_min, 1080.7}, {L::clock_leave_by_min, 1500.0}}));
  CHECK(value_of(card, "Arrive") == "18:01 (22:01 UTC)");
  CHECK(value_of(card, "Leave by") == "01:00 next day (05:00 UTC, next day)");
}

TEST_CASE("field card: every known result and every set lever stands on it, nothing unknown does") {
  const Outing outing = on_the_meadow();
  const Plan plan = resolve(outing);
  const Outlook outlook = evaluate(plan);
  const FieldCard card = field_card(outing, plan, outlook, {});
  int known = 0;
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    const Figure& figure = outlook[R(i)];
    const bool stands = std::isfinite(figure.value) && figure.state != State::unknown;
    known += stands;
    CHECK(!value_of(card, reading(R(i)).name).empty() == stands);
  }
  MESSAGE(known << " known results on the card");
  CHECK(known > 5);
  for (std::size_t i = 0; i < std::size_t(L::count); ++i)
    if (plan.from[i] == From::yours) CHECK(!value_of(card, lever(L(i)).name).empty());
  std::size_t cautions = 0, kit = 0;
  for (const CardPart& part : card.parts) {
    if (part.heading == "Before and while") cautions = part.lines.size();
    for (const std::string& line : part.lines) kit += line == "[ ] Stakes, 4 pieces";
  }
  CHECK(cautions == safety::cautions().size() + 1);
  CHECK(kit == 1);
}

TEST_CASE("field card: as text no row is wider than a page, as JSON it is read back whole") {
  const FieldCard card = card_of(on_the_meadow());
  const std::string text = card_text(card);
  CHECK(text.back() == '\n');
  for (const CardPart& part : card.parts)
    for (const auto& [what, how_much] : part.rows) {
      const auto at = text.find("  " + what + " ");
      REQUIRE(at != std::string::npos);
      CHECK(text.find('\n', at) - at <= 100);
    }
  const std::string json = card_json(card);
  CHECK(json.rfind("{\"title\":\"A \\\"meadow\\\", 2026-06-13\"", 0) == 0);
  CHECK(std::count(json.begin(), json.end(), '\n') == 0);
  CHECK(card_text(card_of(Outing{})).rfind("Outing\n", 0) == 0);
}
