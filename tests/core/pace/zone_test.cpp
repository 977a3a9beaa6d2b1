// A clock that is set forward or back, by the printed rules of two regions and by drawn ones.
#include "core/pace/zone.h"

#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>
#include <random>

#include "core/pace/utc.h"

using namespace gs::pace;

namespace {

double at(const char* text) { return read_utc(text).value(); }
double days(const char* text) { return utc_day(at(text)); }

/// Central Europe in 2026: summer time from 01:00 UTC on the last Sunday of March to 01:00 UTC on the last Sunday
/// of October. Source: Directive 2000/84/EC, articles 2 and 3 (from memory); the days by cal(1).
double europe(double utc_s) {
  return utc_s >= at("2026-03-29T01:00:00Z") && utc_s < at("2026-10-25T01:00:00Z") ? 120 : 60;
}
/// The eastern United States in 2026: from 2:00 standard time on the second Sunday of March to 2:00 daylight time
/// on the first Sunday of November. Source: 15 U.S.C. 260a (from memory); the days by cal(1).
double eastern(double utc_s) {
  return utc_s >= at("2026-03-08T07:00:00Z") && utc_s < at("2026-11-01T06:00:00Z") ? -240 : -300;
}

}  // namespace

TEST_CASE("zone: the days of the change by the printed rules") {
  struct Row {
    double (*rule)(double);
    const char* date;
    double offset_min, at_min, by_min;
  };
  for (const Row& row :
       {Row{europe, "2026-03-29T00:00:00Z", 60, 120, 60}, Row{europe, "2026-10-25T00:00:00Z", 120, 180, -60},
        Row{eastern, "2026-03-08T00:00:00Z", -300, 120, 60}, Row{eastern, "2026-11-01T00:00:00Z", -240, 120, -60},
        // an outing may last past midnight: the change of the next night is seen as well
        Row{europe, "2026-10-24T00:00:00Z", 120, 1440 + 180, -60}}) {
    const ZoneDay zone = zone_day(days(row.date), row.rule);
    INFO(row.date);
    CHECK(zone.offset_min == row.offset_min);
    CHECK(zone.change.at_min == row.at_min);
    CHECK(zone.change.by_min == row.by_min);
  }
  const ZoneDay plain = zone_day(days("2026-06-13T00:00:00Z"), europe);
  CHECK(plain.offset_min == 120);
  CHECK_FALSE(changes(plain.change));
  CHECK(zone_day(days("2028-02-29T00:00:00Z"), eastern).offset_min == -300);
}

TEST_CASE("zone: what the clock shows at the leap and at the hour that comes twice") {
  const ClockChange forward{120, 60}, back{180, -60};
  CHECK(shown_of(119, forward) == 119);
  CHECK(shown_of(120, forward) == 180);
  CHECK(running_of(150, forward) == 120);  // 02:30 is no time of that night
  CHECK(running_of(180, forward) == 120);
  CHECK(running_of(210, forward) == 150);
  CHECK(is_leapt_over(120, forward));
  CHECK(is_leapt_over(179, forward));
  CHECK_FALSE(is_leapt_over(180, forward));
  CHECK_FALSE(comes_twice(150, forward));
  CHECK(shown_of(179, back) == 179);
  CHECK(shown_of(180, back) == 120);
  CHECK(running_of(150, back) == 150);  // the first
  CHECK(running_of(180, back) == 240);
  CHECK(comes_twice(120, back));
  CHECK(comes_twice(179, back));
  CHECK_FALSE(comes_twice(180, back));
  CHECK_FALSE(is_leapt_over(150, back));
  CHECK(std::isnan(running_of(std::nan(""), back)));
  CHECK(running_of(150, {}) == 150);
  CHECK(shown_of(500, {120, 0}) == 500);
}

TEST_CASE(
    "zone property: later is never earlier, and there and back is the same but for the hour that comes twice") {
  constexpr unsigned kSeed = 20261126;
  std::mt19937_64 bits(kSeed);
  std::uniform_real_distribution<double> minute(0, 2880), by(-120, 120);
  for (int i = 0; i < 20'000; ++i) {
    const ClockChange change{minute(bits), by(bits)};
    const double a = minute(bits), b = minute(bits);
    CHECK((running_of(a, change) <= running_of(b, change)) ==
          (a <= b || running_of(a, change) == running_of(b, change)));
    const double back = running_of(shown_of(a, change), change);
    if (comes_twice(shown_of(a, change), change)) {
      CHECK(back <= a);
    } else {
      CHECK(std::abs(back - a) < 1e-9);
    }
    // every change is found again where it was put
    const double offset_min = std::floor(by(bits)), changes_s = 1781222400 + std::floor(60 * change.at_min);
    const double by_min = std::floor(change.by_min);
    if (i % 50 != 0 || by_min == 0) continue;
    const ZoneDay zone = zone_day(20616, [&](double utc_s) {
      return utc_s + 60 * offset_min >= changes_s ? offset_min + by_min : offset_min;
    });
    if (changes_s < 1781222400 + 86400) continue;  // well inside, so that the date's beginning is before it
    CHECK(zone.offset_min == offset_min);
    CHECK(std::abs(zone.change.at_min - std::floor(60 * change.at_min) / 60) < 1e-6);
    CHECK(zone.change.by_min == by_min);
  }
}
