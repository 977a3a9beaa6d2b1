// Instants as text, against RFC 3339's own examples and dates whose seconds are printed elsewhere.
#include "core/pace/utc.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <string>

using namespace gs::pace;

// RFC 3339, section 5.8 (from memory); seconds by date(1) of GNU coreutils.
TEST_CASE("utc: texts of the standard") {
  CHECK(read_utc("2026-06-13T12:00:00Z") == 1781352000.0);
  CHECK(read_utc("2000-01-01T00:00:00Z") == 946684800.0);
  CHECK(read_utc("2024-02-29T23:59:59.5Z") == 1709251199.5);  // leap day
  CHECK(read_utc("2024-03-01T00:00:00Z") == 1709251200.0);
  CHECK(read_utc("2026-06-13T14:00:00+02:00") == 1781352000.0);
  CHECK(read_utc("2026-06-13T08:30:00-03:30") == 1781352000.0);
  CHECK(read_utc("2026-06-13t12:00:00z") == 1781352000.0);
  CHECK(utc_text(1709251199.5) == "2024-02-29T23:59:59.500Z");
  CHECK(utc_text(1781352000) == "2026-06-13T12:00:00Z");
  CHECK(clock_text(1781352059.999, true) == "12:00:59");
  CHECK(clock_text(1781352059.999, false) == "12:00");
}

TEST_CASE("utc: what is no instant of ours") {
  for (const char* text :
       {"", "2026-06-13", "2026-06-13T12:00Z", "2026-06-13 12:00:00Z", "2025-02-29T12:00:00Z",
        "2026-06-13T24:00:00Z", "2026-06-13T12:60:00Z", "2026-12-31T23:59:60Z", "2026-06-13T12:00:00",
        "2026-06-13T12:00:00.Z", "2026-06-13T12:00:00+2:00", "2026-06-13T12:00:00+24:00", "1999-12-31T23:59:59Z",
        "2100-01-01T00:00:00Z", "2026-13-01T12:00:00Z", "2026-06-13T12:00:00Zz", "2026-6-13T012:00:00Z"})
    CHECK_MESSAGE(!read_utc(text), text);
  CHECK(utc_text(5).empty());
  CHECK(utc_text(std::nan("")).empty());
  CHECK(clock_text(-1, true).empty());
  CHECK_FALSE(is_instant(4102444800));
}

TEST_CASE("utc property: text and back, the same bits") {
  constexpr unsigned kSeed = 20260614;
  std::mt19937_64 bits(kSeed);
  for (int i = 0; i < 20'000; ++i) {
    const double utc_s = to_millisecond(946684800 + double(bits() % 3155759999999) / 1000);
    CHECK(read_utc(utc_text(utc_s)) == utc_s);
    CHECK(utc_day(utc_s) == std::floor(utc_s / 86400));
  }
}
