// The three tables that everything is made of: what a row must have, and that the tables fit together.
#include <doctest/doctest.h>

#include <cmath>
#include <set>
#include <string>
#include <string_view>

#include "core/outing/checks.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

struct Suffix {
  Unit unit;
  std::string_view text;
};
// The trade's units as the ends of keys.
constexpr Suffix kSuffixes[] = {{Unit::watt, "_w"},
                                {Unit::volt, "_v"},
                                {Unit::ampere, "_a"},
                                {Unit::ampere_hour, "_ah"},
                                {Unit::milliampere_hour, "_mah"},
                                {Unit::decibel, "_db"},
                                {Unit::metre, "_m"},
                                {Unit::kilometre, "_km"},
                                {Unit::megahertz, "_mhz"},
                                {Unit::kilohertz, "_khz"},
                                {Unit::ohm, "_ohm"},
                                {Unit::percent, "_pct"},
                                {Unit::hour, "_h"},
                                {Unit::minute, "_min"},
                                {Unit::clock_minute, "_min"},
                                {Unit::celsius, "_c"},
                                {Unit::gram, "_g"},
                                {Unit::kilogram, "_kg"},
                                {Unit::litre, "_l"}};

std::string_view suffix_of(Unit unit) {
  for (const Suffix& suffix : kSuffixes)
    if (suffix.unit == unit) return suffix.text;
  return {};
}

/// Lower case, digits and single underscores, starting with a letter.
bool is_word(std::string_view text) {
  if (text.empty() || text.front() < 'a' || text.front() > 'z' || text.back() == '_') return false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '_' ? text[i - 1] == '_' : !((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))) return false;
  }
  return true;
}

/// The name behind the link ends in its unit, and one without a unit does not look as if it had one.
void check_name_key(std::string_view name, Unit unit) {
  CAPTURE(std::string(name));
  CHECK(is_word(name));
  const std::string_view wanted = suffix_of(unit);
  if (!wanted.empty()) {
    // "mah_per_contact": the unit of what is counted stands in front
    const bool named = name.ends_with(wanted) || name == wanted.substr(1) ||
                       name.starts_with(std::string(wanted.substr(1)) + "_per_") ||
                       (unit == Unit::decibel && name.ends_with("_dbi"));  // decibels over an isotropic antenna
    CHECK(named);
    return;
  }
  if (unit == Unit::wavelength || unit == Unit::s_unit) return;  // their names are the unit
  for (const Suffix& suffix : kSuffixes) CHECK_FALSE(name.ends_with(suffix.text));
}

/// What a link's keys may start with besides its own key, as they were fixed with the first release.
struct Prefix {
  Link link;
  std::string_view text;
};
constexpr Prefix kPrefixes[] = {{Link::battery, "power"}, {Link::battery, "spare"}, {Link::radio, "power"},
                                {Link::radio, "lead"},    {Link::sky, "site"},      {Link::contacts, "pace"},
                                {Link::safety, "rules"},  {Link::clock, "outing"}};

std::string_view behind_link(std::string_view key, Link link) {
  const std::size_t dot = std::min(key.find('.'), key.size());
  const std::string_view start = key.substr(0, dot);
  bool known = start == link_key(link);
  for (const Prefix& prefix : kPrefixes) known = known || (prefix.link == link && prefix.text == start);
  CAPTURE(std::string(key));
  CHECK(known);
  return key.substr(std::min(dot + 1, key.size()));
}

/// What any lever-like row must have, in the plan or in a check.
void check_lever_row(const Lever& row) {
  CAPTURE(std::string(row.key));
  CHECK_FALSE(row.name.empty());
  CHECK_FALSE(row.source.empty());
  CHECK(row.link < Link::count);
  if (row.kind == Kind::choice) {
    REQUIRE((row.options != nullptr));
    REQUIRE_FALSE(row.options().empty());
    CHECK(row.unit == Unit::none);
    std::set<std::string_view> keys, names;
    int offered = 0;
    for (const Option& option : row.options()) {
      CHECK_FALSE(option.name.empty());
      CHECK_FALSE(option.key.empty());
      CHECK(keys.insert(option.key).second);
      CHECK(names.insert(option.name).second);
      offered += option.retired ? 0 : 1;
    }
    CHECK(offered > 0);
    return;
  }
  CHECK((row.options == nullptr));
  if (row.kind == Kind::text) {
    // no range: a text is read and refused by its own two functions
    CHECK(row.unit == Unit::text);
    CHECK((row.read != nullptr));
    CHECK((row.wrong != nullptr));
    CHECK((row.usual == nullptr));
    return;
  }
  CHECK((row.read == nullptr));
  CHECK((row.wrong == nullptr));
  CHECK(row.unit != Unit::text);
  CHECK(std::isfinite(row.least));
  CHECK(std::isfinite(row.most));
  CHECK(row.least < row.most);
  CHECK(row.step > 0);
  CHECK(row.step < row.most - row.least);
  CHECK(row.tolerance >= 0);
  if (row.scale == Scale::log) CHECK(row.least > 0);
  // One step moves the last decimal that is printed, or more.
  const double steps = row.step * std::pow(10, row.digits);
  CHECK(steps >= 1 - 1e-9);
  CHECK(std::abs(steps - std::round(steps)) < 1e-9);
}

void check_reading_row(const Reading& row) {
  CAPTURE(std::string(row.key));
  CHECK_FALSE(row.name.empty());
  CHECK_FALSE(row.source.empty());
  CHECK(row.link < Link::count);
  CHECK(row.unit != Unit::text);
  CHECK(row.digits >= 0);
  // 0.1 kHz: channels and band edges are published so (5.3305 MHz, 47 CFR 97.303)
  CHECK(row.digits <= (row.unit == Unit::megahertz ? 4 : 3));
}

}  // namespace

TEST_CASE("tables: every plain lever has what a row must have, and its key says link and unit") {
  std::set<std::string_view> keys, names;
  for (std::size_t i = 0; i < std::size_t(L::count); ++i) {
    const Lever& row = lever(L(i));
    check_lever_row(row);
    check_name_key(behind_link(row.key, row.link), row.unit);
    CHECK(keys.insert(row.key).second);
    CHECK(names.insert(row.name).second);
    if (row.usual) CHECK_FALSE(row.optional);  // what has a usual value is never missing
  }
  MESSAGE(keys.size() << " levers");
}

TEST_CASE("tables: every reading has what a row must have, and its key says link and unit") {
  std::set<std::string_view> keys, names;
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    const Reading& row = reading(R(i));
    check_reading_row(row);
    check_name_key(behind_link(row.key, row.link), row.unit);
    CHECK(keys.insert(row.key).second);
    CHECK(names.insert(row.name).second);
    CHECK_FALSE(is_lever(find_lever(row.key)));  // one key, one thing
  }
  MESSAGE(keys.size() << " readings");
}

TEST_CASE("tables: keys find their rows, other words find none") {
  for (std::size_t i = 0; i < lever_count(); ++i) CHECK(find_lever(lever(L(i)).key) == L(i));
  for (std::size_t i = 0; i < kReadingCount; ++i) CHECK(find_reading(reading(R(i)).key) == R(i));
  for (const Check& check : checks()) CHECK(find_check(check.key) == &check);
  for (const char* word :
       {"", "feedline", "feedline.", "feedline.length", "feedline.length_m ", "Feedline.length_m",
        "feedline.arrives_pct.", "feedline.arrives_pct.limits", "length_m"}) {
    CHECK_FALSE(is_lever(find_lever(word)));
    CHECK(find_reading(word) == R::count);
    CHECK(find_check(word) == nullptr);
  }
}

TEST_CASE("tables: link names and keys are all there and all different") {
  std::set<std::string_view> keys, names;
  for (std::size_t i = 0; i < std::size_t(Link::count); ++i) {
    CHECK(is_word(link_key(Link(i))));
    CHECK_FALSE(link_name(Link(i)).empty());
    CHECK(keys.insert(link_key(Link(i))).second);
    CHECK(names.insert(link_name(Link(i))).second);
  }
}

TEST_CASE("tables: every limit names a reading, and has its two levers") {
  REQUIRE_FALSE(limits().empty());
  std::set<std::string_view> judged;
  for (const Limit& row : limits()) {
    CAPTURE(std::string(row.reading_key));
    const R id = find_reading(row.reading_key);
    REQUIRE(id != R::count);
    CHECK(judged.insert(row.reading_key).second);
    CHECK_FALSE(row.source.empty());
    REQUIRE(is_judged(id));
    const Reading& read = reading(id);
    CHECK(read.better != Better::neither);
    CHECK((read.better == Better::more ? row.ease > row.limit : row.ease < row.limit));

    for (const L held : {limit_lever(id), ease_lever(id)}) {
      REQUIRE(is_lever(held));
      const Lever& row_of = lever(held);
      check_lever_row(row_of);
      CHECK(row_of.link == read.link);
      CHECK(row_of.unit == read.unit);
      CHECK(row_of.evidence == row.evidence);
      CHECK(row_of.source == row.source);
    }
    CHECK(lever(limit_lever(id)).key == std::string(row.reading_key) + ".limit");
    CHECK(lever(ease_lever(id)).key == std::string(row.reading_key) + ".ease");
    // A limit over another lever lies in range wherever that lever stands.
    double over_least = 0, over_most = 0;
    if (!row.over.empty()) {
      const L over = find_lever(row.over);
      REQUIRE(over < L::count);
      CHECK(lever(over).unit == read.unit);
      over_least = lever(over).least;
      over_most = lever(over).most;
    }
    CHECK(over_least + row.limit >= lever(limit_lever(id)).least);
    CHECK(over_most + row.limit <= lever(limit_lever(id)).most);
    CHECK(over_least + row.ease >= lever(ease_lever(id)).least);
    CHECK(over_most + row.ease <= lever(ease_lever(id)).most);
  }
  CHECK(lever_count() == std::size_t(L::count) + 2 * limits().size());
  for (std::size_t i = 0; i < kReadingCount; ++i) CHECK(is_judged(R(i)) == (judged.count(reading(R(i)).key) == 1));
}

TEST_CASE("tables: usual values and caps lie in range, whatever they rest on") {
  const double full_w[] = {lever(L::radio_full_power_w).least, 5.0, 100.0, lever(L::radio_full_power_w).most};
  int usual = 0;
  for (const double w : full_w) {
    // what makes the others apply is set too
    const Plan plan =
        test::plan_of({{L::radio_full_power_w, w}, {L::antenna_feed_r_ohm, 50.0}, {L::feedline_measured_swr, 1.5}});
    for (std::size_t i = 0; i < lever_count(); ++i) {
      const Lever& row = lever(L(i));
      CAPTURE(std::string(row.key));
      if (row.cap) {
        CHECK(row.cap(plan) >= row.least);
        CHECK(row.cap(plan) <= row.most);
      }
      if (plan.from[i] != From::usual) continue;
      ++usual;
      CHECK(refusal(L(i), row.kind == Kind::choice ? Value(std::string(option_key(L(i), plan.x[i])))
                                                   : Value(plan.x[i])) == "");
    }
  }
  MESSAGE(usual << " usual values looked at");
  CHECK(usual > 0);
}

TEST_CASE("tables: every check's rows are sound and fit the plan that they take from and put into") {
  std::set<std::string_view> keys;
  for (const Check& check : checks()) {
    CAPTURE(std::string(check.key));
    CHECK(keys.insert(check.key).second);
    check_name_key(behind_link(check.key, check.link), Unit::none);
    CHECK(check.question.ends_with("?"));
    CHECK_FALSE(check.source.empty());
    CHECK_FALSE(check.measure.empty());
    REQUIRE((check.work != nullptr));
    REQUIRE_FALSE(check.inputs.empty());
    REQUIRE_FALSE(check.results.empty());

    std::set<std::string_view> rows;
    for (const CheckInput& input : check.inputs) {
      CAPTURE(std::string(input.row.key));
      check_lever_row(input.row);
      check_name_key(input.row.key, input.row.unit);
      CHECK(rows.insert(input.row.key).second);
      CHECK_FALSE((input.plan != L::count && input.plan_reading != R::count));  // from one place, not from two
      if (input.plan != L::count) {
        const Lever& from = lever(input.plan);
        CHECK(from.unit == input.row.unit);
        CHECK(from.kind == input.row.kind);
        if (from.kind == Kind::choice) {
          CHECK(from.options().data() == input.row.options().data());
        } else {
          CHECK(input.row.least <= from.least);
          CHECK(input.row.most >= from.most);
        }
      }
      if (input.plan_reading != R::count) CHECK(reading(input.plan_reading).unit == input.row.unit);
    }
    for (const CheckResult& result : check.results) {
      CAPTURE(std::string(result.row.key));
      check_reading_row(result.row);
      check_name_key(result.row.key, result.row.unit);
      CHECK(rows.insert(result.row.key).second);
      if (result.limit != result.ease) CHECK((result.ease > result.limit) == (result.row.better == Better::more));
      if (result.put_into == L::count) continue;
      REQUIRE(is_lever(result.put_into));
      CHECK(lever(result.put_into).kind == Kind::number);
      CHECK(lever(result.put_into).unit == result.row.unit);
      CHECK(lever(result.put_into).link == check.link);
    }
  }
  MESSAGE(keys.size() << " checks");
}

TEST_CASE("tables: a limit stands over nothing or over a plain lever in its own unit") {
  for (const Limit& limit : limits()) {
    CAPTURE(std::string(limit.reading_key));
    if (limit.over.empty()) continue;
    const L over = find_lever(limit.over);
    REQUIRE(std::size_t(over) < std::size_t(L::count));
    CHECK(lever(over).unit == reading(find_reading(limit.reading_key)).unit);
  }
}
