// May I transmit here: the rules' text, the examiners' questions, and dial ranges.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "tests/reference/feedline_closeness.h"
#include "tests/reference/rules_tables.h"

using namespace gs;
using namespace gs::rules;
using gs::test::Closeness;

TEST_CASE("rules: signals that the text allows and forbids") {
  Closeness off("edges of signals", "MHz");
  int allowed = 0;
  for (const test::SignalRow& row : test::kSignals) {
    CAPTURE(row.dial_mhz);
    CAPTURE(std::string(row.mode));
    CAPTURE(int(row.licence));
    const Answer answer = may_transmit(row.region, row.licence, row.dial_mhz, *find_mode(row.mode), row.width_khz);
    CHECK(answer.allowed == row.allowed);
    CHECK(answer.allowed == (answer.why == Why::allowed));
    CHECK(off.within(answer.signal_low_mhz, row.low_mhz, 1e-9));
    CHECK(off.within(answer.signal_high_mhz, row.high_mhz, 1e-9));
    allowed += row.allowed;
  }
  std::printf("  %d of %d signals allowed\n", allowed, int(std::size(test::kSignals)));
}

TEST_CASE("rules: voice segments and dial ranges of Region 2") {
  Closeness off("voice dial ranges", "MHz");
  for (const test::VoiceRow& row : test::kVoice) {
    CAPTURE(std::string(row.band));
    CAPTURE(int(row.licence));
    const double width = std::string(row.band) == "60m" ? 2.8 : 3.0,
                 middle = (row.dial_low_mhz + row.dial_high_mhz) / 2;
    for (const char* mode : {row.mode, "ssb"}) {  // by name, and by the sideband people use
      const Answer answer = may_transmit(Region::two, row.licence, middle, *find_mode(mode), width);
      CHECK(answer.allowed);
      CHECK(off.within(answer.nearest.low_mhz, row.low_mhz, 1e-9));
      CHECK(off.within(answer.nearest.high_mhz, row.high_mhz, 1e-9));
      CHECK(off.within(answer.nearest.dial_low_mhz, row.dial_low_mhz, 1e-9));
      CHECK(off.within(answer.nearest.dial_high_mhz, row.dial_high_mhz, 1e-9));
    }
  }
}

// US Amateur Extra question pool 2024-2028 (seen).
TEST_CASE("rules: the examiners' four") {
  const auto room = [](double dial, const char* mode, double width) {
    return may_transmit(Region::two, Class::extra, dial, *find_mode(mode), width).room_khz;
  };
  Closeness off("examiners' room on the dial", "kHz");
  CHECK(off.within(room(14.348, "usb", 3), -1, 1e-6));         // E1A01: the upper 1 kHz is outside
  CHECK(off.within(room(3.603, "lsb", 3), 0, 1e-6));           // E1A02: 3 kHz above the lower edge
  CHECK(off.within(room(14.1472, "data_usb", 2.8), 0, 1e-6));  // E1A03
  CHECK(off.within(room(3.601, "lsb", 3), -2, 1e-6));          // E1A04: not at 3.601
}

// 47 CFR 97.303(h): carrier 1.5 kHz below the channel's centre, CW on it. 97.313(c), (i): power.
TEST_CASE("rules: 60 m channels and power") {
  for (const double centre : {5.332, 5.348, 5.373, 5.405}) {
    CAPTURE(centre);
    CHECK(may_transmit(Region::two, Class::general, centre - 0.0015, *find_mode("usb"), 2.8).allowed);
    CHECK(may_transmit(Region::two, Class::general, centre, *find_mode("cw")).allowed);
    CHECK(!may_transmit(Region::two, Class::general, centre - 0.0010, *find_mode("usb"), 2.8).allowed);
    CHECK(!may_transmit(Region::two, Class::general, centre - 0.0015, *find_mode("usb"), 3.0).allowed);
    CHECK(!may_transmit(Region::two, Class::general, centre, *find_mode("lsb"), 2.8).allowed);
    CHECK(!may_transmit(Region::two, Class::technician, centre - 0.0015, *find_mode("usb"), 2.8).allowed);
    CHECK(power_limit(centre, Region::two, Class::general).limit_w == 100);
    CHECK(power_limit(centre, Region::two, Class::general).erp);
  }
  CHECK(!may_transmit(Region::two, Class::extra, 5.3600, *find_mode("lsb"), 2.8).allowed);
  CHECK(power_limit(5.36, Region::two, Class::general).limit_w == 9.15);
  CHECK(power_limit(14.1, Region::two, Class::general).limit_w == 1500);
  CHECK(!power_limit(14.1, Region::two, Class::general).erp);
  CHECK(power_limit(10.12, Region::one, Class::extra).limit_w == 200);
  CHECK(power_limit(7.06, Region::two, Class::extra).limit_w == 1500);
  CHECK(power_limit(7.06, Region::three, Class::extra).limit_w == 200);
  CHECK(power_limit(28.4, Region::two, Class::technician).limit_w == 200);
}
