// Packs against makers' tables, measured blocks and worked examples.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <iterator>
#include <utility>

#include "core/battery/charge.h"
#include "core/battery/discharge.h"
#include "tests/reference/battery_sheets.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/power_tables.h"

using namespace gs;
using namespace gs::battery;
using gs::test::Closeness;

namespace {

const Chemistry& lead() { return *find_chemistry("sealed_lead"); }
const Chemistry& lifepo4() { return *find_chemistry("lifepo4"); }

double lead_h(double label_ah, double a) {
  return hours_alone({.chemistry = &lead(), .capacity_ah = label_ah}, steady(a));
}
/// Hours of a full sealed block at a load until its terminals stand at `v`.
double lead_to_v_h(double label_ah, const Load& load, double v, Luck luck = Luck::usual) {
  const Law law = law_of({.chemistry = &lead(), .capacity_ah = label_ah}, luck);
  return end_of(law, full(law.wells), load, {0, v, 1e9}).hours;
}

}  // namespace

// Makers differ: in one hour the blocks below give 0.56 (4 Ah) to 0.75 (40 Ah standby, 28 Ah) of their label. A law
// that stands between them misses either by up to the ratio of the two; its range must hold them all. The 115 Ah
// sheet was left out of the fit.
TEST_CASE("battery: the lead law against six makers' tables, and its range") {
  constexpr double kSpread = 0.75 / 0.5625 - 1;
  double sum = 0, worst = 0, left_out_sum = 0;
  int left_out = 0;
  for (const test::RateRow& row : test::kRates) {
    const Pack pack{.chemistry = &lead(), .capacity_ah = row.label_ah};
    // the label that the law takes for this time, against the one that the table belongs to
    const double off = row.label_ah / needed_label_ah(pack, steady(row.current_a), row.hours) - 1;
    const double low_h = lead_to_v_h(row.label_ah, steady(row.current_a), lead().empty_v, Luck::worse),
                 high_h = lead_to_v_h(row.label_ah, steady(row.current_a), lead().empty_v, Luck::better);
    std::printf("  %s, %.4g A: %.3g h (%.3g to %.3g), table %.3g h; label %+.1f %%\n", row.block, row.current_a,
                lead_h(row.label_ah, row.current_a), low_h, high_h, row.hours, 100 * off);
    CHECK(low_h <= row.hours);
    CHECK(row.hours <= high_h);
    CHECK(std::abs(off) < kSpread);
    sum += off * off;
    if (row.source == test::kDeep) {
      ++left_out;
      left_out_sum += off * off;
    }
    worst = std::max(worst, std::abs(off));
  }
  const double rms = std::sqrt(sum / double(std::size(test::kRates))),
               left_out_rms = std::sqrt(left_out_sum / left_out);
  std::printf("  labels: rms %.1f %%, worst %.1f %%; of the %d points left out rms %.1f %%\n", 100 * rms,
              100 * worst, left_out, 100 * left_out_rms);
  CHECK(rms < kSpread / 2);
  CHECK(left_out_rms < kSpread / 2);
}

// Plain division of the label misses far more: the first of the trade's mistakes.
TEST_CASE("battery mistake: the 20 h label divided by a 30 A load") {
  const double table_h = 1.0;  // CSB GP 12400 data sheet, 30 A to 1.75 V a cell (seen)
  CHECK(40.0 / 30 / table_h - 1 > 0.3);
  CHECK(std::abs(lead_h(40, 30) / table_h - 1) < 0.14);
}

// 12V-40AH sheet (Vinachem; seen): 103, 90 and 74 % at 30, 10 and -10 C. The curve is Panasonic's.
TEST_CASE("battery: lead-acid in the cold, another maker's points") {
  Closeness off("lead-acid capacity against temperature", "of capacity at 25 C");
  for (const auto& [c, share] : {std::pair{30.0, 1.03}, {10.0, 0.90}, {-10.0, 0.74}})
    CHECK(off.within(at(lead().capacity_at_c, c), share, 0.03));
}

// Master Battery 12.8 V sheets (seen): at least 0.80 at 0 C and 0.70 at -20 C at 0.33 A per Ah. The curve is a more
// cautious maker's; at -20 C the two differ by what the methods page says.
TEST_CASE("battery: LiFePO4 in the cold, another maker's promise is not passed") {
  CHECK(std::abs(at(lifepo4().capacity_at_c, 0) - 0.80) < 0.005);
  CHECK(at(lifepo4().capacity_at_c, -20) <= 0.70);
  CHECK(at(lifepo4().capacity_at_c, -20) >= 0.50 - 1e-12);
}

// Each run by its own charge to 10.8 V, 18.2 to 19.4 Ah: more than the label. The law stands between this block and
// five makers' weaker ones, so towards the end it gives it too little; where a set stops it is met.
TEST_CASE("battery: voltage of a measured lead block under load, seven runs") {
  Closeness share("17 Ah block, share of its charge out when it stands at 12.3 to 11.1 V", "of its charge");
  Closeness at117("17 Ah block at 11.7 V", "of its charge");
  for (const test::BlockRun& run : test::kBlock) {
    const double charge_ah = run.current_a * run.hours[5];
    for (int i = 0; i < 5; ++i) {
      const double out = run.current_a * run.hours[i] / charge_ah;
      const double found = run.current_a * lead_to_v_h(17, steady(run.current_a), test::kBlockV[i]) / charge_ah;
      CHECK(share.within(found, out, 0.18));
      if (i == 2) CHECK(at117.within(found, out, 0.11));
    }
  }
}

// This guidance took no part in the fit. Its own points do not lie on a line either.
TEST_CASE("battery: resting voltage of sealed lead, a maker's guidance") {
  Closeness off("resting voltage against charge left", "V");
  const Law law = law_of({.chemistry = &lead(), .capacity_ah = 40});
  for (const test::RestingRow& row : test::kResting) {
    CHECK(off.within(rested_v(law, {law.wells.capacity_ah * row.left_pct / 100, 0}), row.v, 0.2));
    CHECK(std::abs(left_at_rest_pct(law, row.v) - row.left_pct) < 18);
  }
}

TEST_CASE("battery: hours to 11.7 V, a kinetic model worked out apart") {
  Closeness off("hours to 11.7 V, relative", "");
  const test::M40Block m40_block;
  const Chemistry& m40 = m40_block.chemistry;
  for (const test::KineticRow& row : test::kKinetic) {
    CAPTURE(row.key_down_a);
    CAPTURE(row.label_ah);
    // the average drains it, the peak tests it
    const Load load{0, row.average_a, row.key_down_a, 1, 0, row.lead_ohm};
    const Law law = law_of({.chemistry = &m40, .capacity_ah = row.label_ah});
    CHECK(off.within(end_of(law, full(law.wells), load, {11.7, 0, 1e9}).hours / row.hours, 1, 0.008));
  }
}

// Pack sheets (seen): "<= 50 mohm" for low-cost 12.8 V packs of 3.6 to 50 Ah, <= 15 mohm for one of 300 Ah (Master
// Battery). Both are upper limits.
TEST_CASE("battery: LiFePO4 packs stay within their sheets' resistance") {
  for (const auto& [ah, mohm] : {std::pair{3.6, 50.0}, {50.0, 50.0}, {300.0, 15.0}}) {
    const Law law = law_of({.chemistry = &lifepo4(), .capacity_ah = ah});
    const WellState start = full(law.wells);
    const double found = 1000 * (rested_v(law, start) - key_down_v(law, start, steady(1), 0));
    std::printf("  %.4g Ah: %.1f mohm, sheet at most %.0f\n", ah, found, mohm);
    CHECK(found <= mohm);
  }
}

// A designer's note of November 2003 (seen): 35 mA on receive, 350 mA key-down a tenth of the time, 2800 mAh: 66
// mA, 42 h. Worked examples otherwise computed apart: 20 Ah at 4.68 A, 4.27 h; 6.3 Ah used, 4.61 A, 5 % kept: 2.755
// h.
TEST_CASE("battery: runtimes worked out on paper") {
  Closeness off("runtimes on paper, relative", "");
  CHECK(off.within(hours_alone({.chemistry = &lifepo4(), .capacity_ah = 2.8}, steady(0.0665)) / 42, 1, 0.01));
  const Pack twenty{.chemistry = &lifepo4(), .capacity_ah = 20};
  // the rate curve takes at most 1 % here
  CHECK(off.within(hours_alone(twenty, steady(4.68)) / 4.27, 1, 0.01));
  Pack used = twenty;
  used.reserve_pct = 5;
  used.used_ah = 6.3;
  CHECK(off.within(hours_alone(used, steady(4.61)) / 2.755, 1, 0.01));
  // half of 30 Ah at 0 C: 12.75 Ah at the 20 h rate
  const Pack cold{.chemistry = &lead(), .capacity_ah = 30, .temperature_c = 0, .reserve_pct = 50};
  CHECK(off.within(usable_ah(cold, steady(1.5)) / 12.75, 1, 1e-12));
}

// ODYSSEY technical manual and a distributor (seen): 1.05 to 1.10 of the charge; 100 Ah AGM at 25 A, bulk about 4
// h, then about 6 h. Samsung 30Q specification v1.0 (seen): 180 min at 0.5 A per Ah to the end of its tail.
TEST_CASE("battery: charge times from sheets") {
  Closeness off("charge times, lead-acid", "h"), lithium("charge time, lithium cell", "h");
  const ChargeTime block = charge_time(lead(), 100, 25);
  CHECK(off.within(block.bulk_h, 4.4, 1e-12));
  CHECK(off.within(block.tail_h, 6, 1e-12));
  CHECK(off.within(charge_time(lead(), 15, 4.5).bulk_h, 3.7, 0.05));
  const ChargeTime cell = charge_time(*find_chemistry("li_ion_4s"), 3, 1.5);
  CHECK(lithium.within(cell.bulk_h + cell.tail_h, 3, 0.5));
}

// PVWatts version 5 manual (2014): losses of 14.08 % in all. With a tracking controller (0.95) and LiFePO4's 0.92
// there and back, 50 W in 4 hours of full sun put 11.7 Ah into 12.8 V: worked out apart.
TEST_CASE("battery: a 50 W panel in a day") {
  const double gives_pct = 100 * (1 - 0.1408) * 0.95 * 0.92;
  Closeness off("50 W panel, 4 h", "Ah");
  CHECK(off.within(4 * panel_current_a(50, gives_pct, 12.8), 11.7, 0.05));
}

// Alpha APL48-50LFP manual p. 10, Sunland page, pack sheet of a 14.8 V lithium-ion pack (seen): none at or below 0
// C, never more than the gentlest of them above.
TEST_CASE("battery: charging currents in the cold") {
  struct Row {
    const char* key;
    double c, most;
  };
  for (const Row& row : {Row{"lifepo4", -10, 0},
                         {"lifepo4", 0, 0},
                         {"lifepo4", 3, 0.1},
                         {"lifepo4", 7, 0.2},
                         {"lifepo4", 25, 0.5},
                         {"li_ion_3s", 0, 0},
                         {"li_ion_3s", 3, 0.1},
                         {"li_ion_3s", 10, 0.2},
                         {"li_ion_4s", 20, 0.5},
                         {"sealed_lead", -20, 0},
                         {"sealed_lead", 20, 0.3}}) {
    CAPTURE(row.key);
    CAPTURE(row.c);
    const double found = most_charge_a_per_ah(*find_chemistry(row.key), row.c);
    CHECK(found <= row.most);
    CHECK((found == 0) == (row.most == 0));
  }
}
