// Mistakes that people and programs make about batteries, each beside the right answer; and packs of the wrong
// voltage. Makers' tables and measurements are named where they stand; the rest was worked out apart from the same
// published constants (100 W set of 21 A, 2.5 A keyed without drive, 1.2 A on receive; 40 Ah standby block S40, its
// 30 Ah S30).
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/battery/charge.h"
#include "core/battery/discharge.h"
#include "core/battery/rate_sheet.h"
#include "core/radio/current.h"
#include "core/radio/lead.h"
#include "core/radio/mode.h"
#include "tests/reference/battery_sheets.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/power_tables.h"

using namespace gs;
using namespace gs::battery;
using gs::test::Closeness;

namespace {

constexpr radio::SetCurrents kSet{100, 21, 2.5, 1.2};
const Chemistry& lifepo4() { return *find_chemistry("lifepo4"); }

double speech_a() { return radio::transmit_a(kSet, 100, *radio::find_mode("ssb")); }
/// Overs of 20 s, 40 % of the time.
Load speech(double power_w, double lead_ohm) {
  const radio::Mode& ssb = *radio::find_mode("ssb");
  return {kSet.receive_a, radio::transmit_a(kSet, power_w, ssb), radio::key_down_a(kSet, power_w), 0.4, 20.0 / 3600,
          lead_ohm};
}
double lithium_h(const Load& load) { return hours_alone({.chemistry = &lifepo4(), .capacity_ah = 20}, load); }

/// Share of a pack's charge that is out when its resting curve stands at `v`.
double out_pct(const Chemistry& kind, double v) { return 100 - where(kind.resting_v, v); }

}  // namespace

// CSB GP 12400 data sheet, 30 A to 1.75 V a cell: 1.00 h (seen); the label says 1.33.
TEST_CASE("battery mistake: a label in ampere-hours divided by a hard load") {
  const double law_h = hours_alone({.chemistry = find_chemistry("sealed_lead"), .capacity_ah = 40}, steady(20));
  std::printf("  40 Ah at 20 A: %.2f h, plain division 2.00\n", law_h);
  CHECK(law_h < 1.8);  // 1.70 h of the standby block, and makers differ by 14 %
  CHECK(law_h > 1.70 * 0.8);
}

// 30 Ah, speech of 100 W: 6.39 h to 10.5 V at the terminals (S30), 1.82 h (M30) to 11.7 V at the set.
TEST_CASE("battery mistake: the set's own floor forgotten") {
  const test::M40Block m40;
  const Law law = law_of({.chemistry = &m40.chemistry, .capacity_ah = 30});
  const Load load = speech(100, 0.0171);
  const double block_h = end_of(law, full(law.wells), load, {0, 10.5, 1000}).hours;
  const double set_h = end_of(law, full(law.wells), load, {11.7, 10.5, 1000}).hours;
  Closeness off("30 Ah, speech of 100 W, to the set's floor", "h");
  CHECK(off.within(set_h, 1.82, 50.0 / 3600 + 0.005));
  CHECK(block_h > 3 * set_h);
}

// Average radio power over 13.8 V gives 0.58 A and 34.5 h; the supply's current gives 4.68 A and 4.27 h.
TEST_CASE("battery mistake: radio power averaged in place of the supply's current") {
  Closeness off("20 Ah, speech of 100 W", "h");
  CHECK(off.within(lithium_h(speech(100, 0)), 4.27, 0.05));
  const double rf_a = 100 * radio::find_mode("ssb")->average_power_share * 0.4 / 13.8;
  CHECK(20 / rf_a == doctest::Approx(34.5).epsilon(1e-3));
}

// The exposure bulletin's 20 % of speech is power, not current: 9.90 A, not 4.2.
TEST_CASE("battery mistake: exposure's duty used for the supply's current") {
  CHECK(std::abs(speech_a() - 9.90) < 0.005);
  CHECK(radio::find_mode("ssb")->average_power_share * 21 == doctest::Approx(4.2));
}

// A quarter of the power: 11.75 A of 21. An independent bench measured 6.85 A at about 5 W (note of 16 Feb 2009).
TEST_CASE("battery mistake: a quarter of the power, a quarter of the current") {
  CHECK(std::abs(radio::key_down_a(kSet, 25) - 11.75) < 0.005);
  CHECK(std::abs(radio::key_down_a(kSet, 5) / 6.85 - 1) < 0.035);
}

// 20 Ah of LiFePO4 hold 256 Wh, not 276: the cells stand at 12.8 V, not at a supply's 13.8.
TEST_CASE("battery mistake: watt-hours by the supply's voltage") {
  CHECK(20 * lifepo4().nominal_v == doctest::Approx(256));
  // lead-acid to half at about 12.3 V: 185 Wh from 30 Ah
  const Law law = law_of({.chemistry = find_chemistry("sealed_lead"), .capacity_ah = 30});
  const double between_v = rested_v(law, {0.75 * law.wells.capacity_ah, 0});
  CHECK(15 * between_v == doctest::Approx(185).epsilon(0.02));
}

// 3 m of 12 AWG at 21 A: 0.66 V for both conductors, 0.76 V with 5 milliohm of fuse and plugs.
TEST_CASE("battery mistake: one conductor of the lead") {
  CHECK(21 * radio::lead_ohm({12, 3}) == doctest::Approx(0.66).epsilon(0.01));
  CHECK(21 * radio::lead_ohm({12, 3, 20, 0.005}) == doctest::Approx(0.76).epsilon(0.01));
}

// Makers give 0.50 (Victron) to 0.70 (Master Battery) at -20 C (seen): 10 to 14 Ah of 20; and no charging there.
TEST_CASE("battery mistake: the cold ignored") {
  const double ah = usable_ah({.chemistry = &lifepo4(), .capacity_ah = 20, .temperature_c = -20}, steady(4.68));
  std::printf("  20 Ah at -20 C: %.1f Ah\n", ah);
  CHECK(ah >= 9.8);
  CHECK(ah <= 14);
  CHECK(most_charge_a_per_ah(lifepo4(), -20) == 0);
}

// A cell maker's two rates (Sunland, 0.2 and 3 A per Ah) make an exponent of 1.011, and 0.97 h of 20 Ah at 20 A;
// the 1.25 of flooded lead-acid would make it 0.47 h.
TEST_CASE("battery mistake: Peukert's law with lead-acid's exponent on lithium") {
  Closeness off("20 Ah of LiFePO4 at 20 A", "h");
  CHECK(off.within(lithium_h(steady(20)), 0.97, 0.03));
  CHECK(20 * std::pow(20 / (20.0 * 20), 1.25) == doctest::Approx(0.47).epsilon(0.01));
}

// CSB GP 12400 at 8 A: 4.87 h by interpolation of its table. With the label for the law's constant 3.71 h; in the
// rated form 4.10 h.
TEST_CASE("battery mistake: the label put in as Peukert's constant") {
  CHECK(40 / std::pow(8, 1.143) == doctest::Approx(3.71).epsilon(2e-3));
  CHECK(20 * std::pow(40 / (8.0 * 20), 1.143) == doctest::Approx(4.10).epsilon(2e-3));
  const double law_h = hours_alone({.chemistry = find_chemistry("sealed_lead"), .capacity_ah = 40}, steady(8));
  std::printf(
      "  40 Ah at 8 A: %.2f h (this block's table 4.87 h; the law stands between five makers and a block)\n",
      law_h);
  CHECK(std::abs(law_h / 4.87 - 1) < 0.19);
}

// Needed resting voltage 11.7 V + peak x (battery + lead); the measured curve of a 26650 cell, four in series.
TEST_CASE("battery: how much of a LiFePO4 pack a set of 11.7 V can use, by resistance of pack and lead") {
  struct Row {
    double peak_a, lead_ohm, battery_ohm, usable_pct;
  };
  Closeness off("usable share of the charge", "%");
  for (const Row& row : {Row{21, 0.0171, 0.010, 93}, Row{21, 0.0171, 0.030, 88}, Row{21, 0.0171, 0.050, 62},
                         Row{21, 0.0363, 0.010, 89}, Row{21, 0.0363, 0.030, 63}, Row{21, 0.0363, 0.050, 7},
                         Row{10, 0.0363, 0.010, 94}, Row{10, 0.0363, 0.030, 92}, Row{10, 0.0363, 0.050, 91}}) {
    CAPTURE(row.lead_ohm);
    CAPTURE(row.battery_ohm);
    Law law = law_of({.chemistry = &lifepo4(), .capacity_ah = 20});
    law.quick_ohm = row.battery_ohm;
    law.slow_ohm = law.fixed_ohm = 0;
    // gentle on average: rate and over take nothing from the curve
    const Load load{0.1, 0.1, row.peak_a, 0.5, 0, row.lead_ohm};
    const End end = end_of(law, full(law.wells), load, {11.7, 0, 1000});
    const double left = left_pct(law, after(law, full(law.wells), load, end.hours), load);
    // the last tenth rests on the charge at a cell's surface (13.8 V at 99 %), which the catalogue leaves out
    if (row.usable_pct < 10)
      CHECK(100 - left <= row.usable_pct);
    else
      CHECK(off.within(100 - left, row.usable_pct, 0.5));
  }
}

// Backup for 30 and 60 minutes of speech at 100 W to 11.7 V at the set: the standby block with the measured slope,
// scaled in steps of half an ampere-hour (another program): new at 25 C; at 0 C (capacity x 0.85, resistance
// x 1.3); aged to 80 % at 0 C (x 0.68, x 1.6). Voltage, not charge, sizes it.
TEST_CASE("battery: the smallest lead block for half an hour and an hour") {
  struct Row {
    double charge, ohm, half_hour_ah, hour_ah;
  };
  const test::M40Block m40;
  const auto smallest_ah = [&](const Row& row, double hours) {
    for (double label_ah = 1;; label_ah += 0.5) {
      Law law = law_of({.chemistry = &m40.chemistry, .capacity_ah = label_ah});
      law.wells.capacity_ah *= row.charge;
      law.quick_ohm *= row.ohm;
      const End end = end_of(law, full(law.wells), speech(100, 0.0171), {11.7, 10.5, 1000});
      if (end.hours >= hours || label_ah > 100) return label_ah;
    }
  };
  Closeness off("smallest block", "Ah");
  for (const Row& row : {Row{1, 1, 18.5, 23.5}, Row{0.85, 1.3, 23.5, 29}, Row{0.68, 1.6, 28.5, 35.5}}) {
    CAPTURE(row.charge);
    CHECK(off.within(smallest_ah(row, 0.5), row.half_hour_ah, 0.5));
    CHECK(off.within(smallest_ah(row, 1), row.hour_ah, 0.5));
  }
}

// Light-load curves of makers' data sheets, as a public battery header tabulates them.
TEST_CASE("battery: packs of the wrong voltage") {
  Closeness off("charge out at a voltage, light load", "%");
  CHECK(off.within(out_pct(*find_chemistry("li_ion_3s"), 11.7), 14, 1));
  CHECK(off.within(out_pct(*find_chemistry("li_ion_4s"), 15.87), 7, 1));
  CHECK(off.within(out_pct(*find_chemistry("li_ion_4s"), 11.7), 93, 1.5));
  CHECK(off.within(out_pct(*find_chemistry("nimh"), 11.7), 91, 1.5));
}
