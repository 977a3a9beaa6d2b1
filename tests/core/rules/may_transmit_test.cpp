// Laws of "may I transmit here?" on seeded frequencies, and what impossible input gets.
#include "core/rules/may_transmit.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <random>
#include <set>
#include <string>

using namespace gs::rules;

namespace {
constexpr std::uint64_t kSeed = 0x72756c65;
constexpr Region kRegions[] = {Region::one, Region::two, Region::three};
constexpr Class kClasses[] = {Class::extra, Class::advanced, Class::general, Class::technician, Class::novice};
}  // namespace

TEST_CASE("rules: a higher class may do all that a lower one may; a narrower signal all that a wider one may") {
  std::mt19937_64 bits(kSeed);
  std::printf("  seed %llu\n", static_cast<unsigned long long>(kSeed));
  int allowed = 0, asked = 0;
  for (int trial = 0; trial < 6000; ++trial) {
    const auto rows = band_segments();
    const BandSegment& near = rows[bits() % rows.size()];
    const double edge = trial % 2 ? near.low_mhz : near.high_mhz;
    const double dial = edge + (double(bits() >> 11) * 0x1p-53 - 0.5) * 0.03;
    const Region region = kRegions[trial % 3];
    const ModeWidth& mode = mode_widths()[bits() % mode_widths().size()];
    CAPTURE(dial);
    CAPTURE(std::string(mode.key));
    bool before = true;
    for (const Class licence : kClasses) {  // from the highest down
      const Answer answer = may_transmit(region, licence, dial, mode);
      CHECK((before || !answer.allowed));
      before = answer.allowed;
      ++asked;
      allowed += answer.allowed;
      if (answer.allowed) {
        CHECK(!band_of(dial, region).empty());
        CHECK(answer.signal_low_mhz >= answer.nearest.low_mhz - 1e-7);
        CHECK(answer.signal_high_mhz <= answer.nearest.high_mhz + 1e-7);
        CHECK(may_transmit(region, licence, dial, mode, mode.width_khz / 2).allowed);
        CHECK(answer.room_khz >= 0);
      } else if (std::isfinite(answer.room_khz)) {
        // moved by what it lacks, it may
        const double there =
            dial < answer.nearest.dial_low_mhz ? answer.nearest.dial_low_mhz : answer.nearest.dial_high_mhz;
        CHECK(std::abs(std::abs(there - dial) * 1000 + answer.room_khz) < 1e-5);
        CHECK(may_transmit(region, licence, there, mode, 0).allowed);
      }
    }
  }
  std::printf("  %d of %d allowed\n", allowed, asked);
  CHECK(allowed > asked / 20);
  CHECK(allowed < asked);
}

TEST_CASE("rules: bands by frequency, and nothing between them") {
  const struct {
    double mhz;
    Region region;
    const char* band;
  } rows[] = {{1.9, Region::two, "160m"},   {1.9, Region::one, ""},      {3.9, Region::two, "80m"},
              {3.9, Region::one, ""},       {5.36, Region::one, "60m"},  {5.332, Region::two, "60m"},
              {5.34, Region::two, ""},      {7.25, Region::two, "40m"},  {7.25, Region::one, ""},
              {10.12, Region::one, "30m"},  {14.35, Region::two, "20m"}, {14.36, Region::two, ""},
              {18.1, Region::three, "17m"}, {21.3, Region::two, "15m"},  {24.95, Region::two, "12m"},
              {29, Region::two, "10m"},     {50.2, Region::two, "6m"},   {50.2, Region::one, ""},
              {145, Region::one, "2m"},     {27.2, Region::two, ""}};
  for (const auto& row : rows) {
    CAPTURE(row.mhz);
    CHECK(std::string(band_of(row.mhz, row.region)) == row.band);
  }
}

TEST_CASE("rules: why not") {
  const auto why = [](Class licence, double mhz, const char* mode) {
    return may_transmit(Region::two, licence, mhz, *find_mode(mode)).why;
  };
  CHECK(why(Class::general, 14.2, "usb") == Why::not_class);
  CHECK(why(Class::general, 14.1, "usb") == Why::not_mode);
  CHECK(why(Class::general, 14.348, "usb") == Why::over_edge);
  CHECK(why(Class::general, 13.9, "cw") == Why::no_band);
  CHECK(why(Class::general, 10.12, "usb") == Why::not_mode);
  CHECK(why(Class::technician, 14.06, "cw") == Why::not_class);
  CHECK(why(Class::general, 7.2, "fm") == Why::not_mode);
  CHECK(why(Class::general, 14.06, "cw") == Why::allowed);
}

TEST_CASE("rules: impossible input is not allowed and says no figure") {
  const ModeWidth& cw = *find_mode("cw");
  for (const double mhz : {0.0, -14.0, std::nan(""), HUGE_VAL}) {
    const Answer answer = may_transmit(Region::two, Class::extra, mhz, cw);
    CHECK(!answer.allowed);
    CHECK(std::isnan(answer.room_khz));
  }
  CHECK(!may_transmit(Region::two, Class::extra, 14.06, cw, -1).allowed);
  CHECK(!may_transmit(Region::two, Class::extra, 14.06, cw, std::nan("")).allowed);
  CHECK(stretches(Region::two, Class::extra, Kind::cw, Place::centred, 0, false).empty());
  CHECK(std::isnan(may_transmit(Region::two, Class::novice, 28.4, *find_mode("fm")).room_khz));
  CHECK(find_mode("semaphore") == nullptr);
}
