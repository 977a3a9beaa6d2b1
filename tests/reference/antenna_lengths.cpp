// Trade lengths, trimming and higher resonances against figures from outside.
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "core/antenna/length.h"
#include "core/units.h"
#include "tests/reference/antenna_tables.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::antenna;
using gs::test::Closeness;

TEST_CASE("antenna: trade lengths in metres") {
  Closeness off("trade lengths", "m");
  for (const test::TradeLength& row : test::kTradeLengths) {
    CAPTURE(row.frequency_mhz);
    for (const char* key : {"dipole", "inverted_v", "end_fed_half_wave"})
      CHECK(off.within(cut_length_m(*find_kind(key), row.frequency_mhz), row.dipole_m, 0.00051));
    for (const char* key : {"quarter_wave_vertical", "ground_plane"})
      CHECK(off.within(cut_length_m(*find_kind(key), row.frequency_mhz), row.quarter_wave_m, 0.00051));
    CHECK(off.within(cut_length_m(*find_kind("loop"), row.frequency_mhz), row.loop_m, 0.00051));
    CHECK(off.within(raised_radial_m(row.frequency_mhz), row.quarter_wave_m, 0.00051));
  }
}

// Wire theory (thin-wire models and King's theory agree within 0.6 %): bare half-wave wire 146.0/f m, quarter
// wave 72.5/f, square loop 314.5/f (wire model of our own, not this code). The trade stands 1.6 to 2.6 % under
// them, and says so.
TEST_CASE("antenna: how far the trade stands under bare-wire theory") {
  struct Row {
    const char* key;
    double theory_m_mhz, under_pct;
  };
  for (const Row& row :
       {Row{"dipole", 146.0, 2.3}, Row{"quarter_wave_vertical", 72.5, 1.6}, Row{"loop", 314.5, 2.6}}) {
    const double under = 100 * (1 - cut_length_m(*find_kind(row.key), 1) / row.theory_m_mhz);
    MESSAGE(std::string(row.key) << ": " << under << " % under theory, said to be " << row.under_pct);
    CHECK(std::abs(under - row.under_pct) < 0.06);
  }
}

// 453/f feet as a starting length for insulated wire (second hand, mailing list), against 468/f x 0.97.
TEST_CASE("antenna: insulated wire against the trade's own start") {
  Closeness off("insulated, ft MHz", "");
  CHECK(off.within(cut_length_m(*find_kind("dipole"), 1, Wire::insulated) / kMetresPerFoot, 453, 1.5));
}

TEST_CASE("antenna: length times frequency stays, near ground too") {
  Closeness off("trim by proportion, relative", "");
  for (const test::TrimRow& row : test::kTrims)
    CHECK(off.within(trimmed_length_m(row.length_m, row.resonant_mhz, row.wanted_mhz) / row.right_m, 1, 1e-3));
  // 66 ft from 7150 to 7010 kHz: 67.32 ft (mailing list of 2007, worked out apart)
  CHECK(std::abs(trimmed_length_m(66, 7.15, 7.01) - 67.318) < 0.0005);
  // 3.4, 13.7 and 55 kHz a centimetre on 7.1, 14.15 and 28.5 MHz, worked out apart from the lengths above (to their
  // digits)
  CHECK(std::abs(khz_per_cm(20.77, 7.1) - 3.4) < 0.05);
  CHECK(std::abs(khz_per_cm(10.34, 14.15) - 13.7) < 0.05);
  CHECK(std::abs(khz_per_cm(5.075, 28.5) - 55) < 1.2);
}

// The rule of end effect once a wire: f3/f1 = 2.95/0.95 = 3.105 (handbook formula, memory). A dipole of a question
// board: 7.030 and 21.600 MHz.
TEST_CASE("antenna: third resonance lies above three times the first") {
  const double third = higher_resonance_mhz(7.03, 3);
  MESSAGE("third resonance " << third << " MHz, measured 21.600 (" << 100 * (third / 21.6 - 1) << " %)");
  CHECK(std::abs(third / 7.03 - 3.10526) < 1e-5);
  CHECK(std::abs(third - 21.6) < 0.015 * 21.6);
}
