// The kinetic law against makers' tables, against figures of another program, and against stepping it over by over.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string>
#include <utility>
#include <vector>

#include "core/battery/discharge.h"
#include "core/battery/rate_sheet.h"
#include "tests/reference/battery_sheets.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/power_tables.h"

using namespace gs;
using namespace gs::battery;
using gs::test::Closeness;

namespace {

/// Two sets of constants for the 40 Ah standby block, worked out apart: S40 has a resting slope from a maker's
/// guidance, M40 that of a measured block. Voltage: full - slope (1 - s) - bend (1/s - 1) - I R.
struct Block {
  Wells wells;
  double ohm, bend_v, full_v, slope_v;
};
constexpr Block kS40{{43.605, 3.3169, 0.4098}, 0.00978, 0.01872, 12.80, 1.2};
constexpr Block kM40{{42.757, 3.3644, 0.41494}, 0.0098, 0.00552, 12.78, 1.35};

Block scaled(Block block, double k) {
  block.wells.capacity_ah *= k;
  block.ohm /= k;
  return block;
}

double volts(const Block& block, const WellState& state, double a) {
  const double s = filling(block.wells, state);
  return block.full_v - a * block.ohm - block.bend_v * (1 / s - 1) - block.slope_v * (1 - s);
}

/// Hours at a steady current to an end voltage, by halving on the voltage itself.
double hours_to_v(const Block& block, double a, double v) {
  double low = 0, high = block.wells.capacity_ah / a;
  for (int i = 0; i < 200; ++i) {
    const double middle = (low + high) / 2;
    const WellState state = after(block.wells, full(block.wells), a, middle);
    (filling(block.wells, state) > 0 && volts(block, state, a) > v ? low : high) = middle;
  }
  return low;
}

/// Overs one by one in small steps of the differential equations themselves: time to the start of the over whose
/// end stands under `v` at the set.
struct Stepped {
  double hours, taken_ah;
};
Stepped stepped(const Block& block, double sending_a, double peak_a, double over_h, double pause_a, double pause_h,
                double lead_ohm, double v, int steps) {
  const Wells& w = block.wells;
  const double k = w.rate_per_h * w.share * (1 - w.share);  // k' of the two wells
  double used = w.share * w.capacity_ah, bound = (1 - w.share) * w.capacity_ah, hours = 0, taken = 0;
  const auto run = [&](double a, double h) {
    for (int i = 0; i < steps; ++i) {
      // Heun's rule on the two wells
      const double dt = h / steps;
      const double flow = k * (bound / (1 - w.share) - used / w.share);
      const double used1 = used + dt * (flow - a), bound1 = bound - dt * flow;
      const double flow1 = k * (bound1 / (1 - w.share) - used1 / w.share);
      used += dt * ((flow + flow1) / 2 - a);
      bound -= dt * (flow + flow1) / 2;
    }
  };
  while (hours < 1000) {
    run(sending_a, over_h);
    const double s = used / (w.share * w.capacity_ah);
    if (s <= 0 ||
        block.full_v - peak_a * (block.ohm + lead_ohm) - block.bend_v * (1 / s - 1) - block.slope_v * (1 - s) < v)
      break;
    run(pause_a, pause_h);
    hours += over_h + pause_h;
    taken += sending_a * over_h + pause_a * pause_h;
  }
  return {hours, taken};
}

/// The filling at which this block stands at `v` under `a`: by halving.
double least_filling(const Block& block, double a, double v) {
  double low = 1e-9, high = 1;
  for (int i = 0; i < 200; ++i) {
    const double s = (low + high) / 2;
    (block.full_v - a * block.ohm - block.bend_v * (1 / s - 1) - block.slope_v * (1 - s) > v ? high : low) = s;
  }
  return high;
}

const Chemistry& lead() { return *find_chemistry("sealed_lead"); }

}  // namespace

TEST_CASE("kinetic: two sheets contradict themselves and are left out, by name") {
  std::vector<const char*> named;
  for (const test::Sheet& sheet : test::kSheets)
    if (const auto found = contradiction(sheet.points)) {
      const Rate &gentle = sheet.points[found->gentler], &hard = sheet.points[found->harder];
      std::printf("  %s: %.4g A for %.4g h is %.1f Ah, but %.4g A for %.4g h is %.1f Ah\n", sheet.name,
                  gentle.current_a, gentle.hours, gentle.current_a * gentle.hours, hard.current_a, hard.hours,
                  hard.current_a * hard.hours);
      named.push_back(sheet.name);
      CHECK_FALSE(fit_wells(sheet.points).has_value());
    }
  REQUIRE(named.size() == 2);
  CHECK(std::string(named[0]).substr(0, 4) == "J305");
  CHECK(std::string(named[1]).substr(0, 4) == "CB12");
}

TEST_CASE("kinetic: three points of a sheet foretell its others within 15 %") {
  double squares = 0, peukert_squares = 0, worst = 0, peukert_worst = 0;
  int held_out = 0;
  for (const test::Sheet& sheet : test::kSheets) {
    if (contradiction(sheet.points)) continue;
    std::vector<Rate> three, two;
    for (const std::size_t i : sheet.three) three.push_back(sheet.points[i]);
    for (const std::size_t i : sheet.two) two.push_back(sheet.points[i]);
    const auto wells = fit_wells(three);
    const auto peukert = fit_peukert(two);
    REQUIRE(wells.has_value());
    REQUIRE(peukert.has_value());
    for (std::size_t i = 0; i < sheet.points.size(); ++i) {
      if (std::find(sheet.three.begin(), sheet.three.end(), i) != sheet.three.end()) continue;
      const Rate& point = sheet.points[i];
      const double off = hours_to_empty(*wells, point.current_a) / point.hours - 1;
      const double peukert_off = hours_at(*peukert, point.current_a) / point.hours - 1;
      std::printf("  %s, %.4g A, %.4g h: %+.1f %% (Peukert %+.1f %%)\n", sheet.name, point.current_a, point.hours,
                  100 * off, 100 * peukert_off);
      CHECK(std::abs(off) < 0.15);
      squares += off * off;
      peukert_squares += peukert_off * peukert_off;
      worst = std::max(worst, std::abs(off));
      peukert_worst = std::max(peukert_worst, std::abs(peukert_off));
      ++held_out;
    }
  }
  const double rms = std::sqrt(squares / held_out), peukert_rms = std::sqrt(peukert_squares / held_out);
  std::printf("  %d held-out points: kinetic rms %.1f %%, worst %.1f %%; Peukert rms %.1f %%, worst %.1f %%\n",
              held_out, 100 * rms, 100 * worst, 100 * peukert_rms, 100 * peukert_worst);
  CHECK(held_out >= 14);
  CHECK(rms < peukert_rms);
}

// Link 2000 owner's manual, p. 26 (seen): exponents from the 20 h rating and the minutes at 25 A.
TEST_CASE("Peukert: an instrument maker's exponents, and its misprint refused") {
  Closeness off("exponents", "");
  for (const test::ExponentRow& row : test::kExponents) {
    const Rate two[] = {{row.label_ah / 20, 20}, {25, row.minutes / 60}};
    const auto law = fit_peukert(two);
    REQUIRE(law.has_value());
    CHECK(off.within(law->exponent, row.printed, 0.0052));
  }
  const Rate misprint[] = {{43.0 / 20, 20}, {25, 140.0 / 60}};  // 8GU1: 58 Ah out of 43
  CHECK_FALSE(fit_peukert(misprint).has_value());
  CHECK(contradiction(misprint).has_value());
  // the trade's mistake: the rated ampere-hours as K. 40 Ah, 8 A, n 1.143: 3.71 h; the rated form has 4.10 h
  CHECK(40 / std::pow(8, 1.143) == doctest::Approx(3.71).epsilon(0.002));
  CHECK(20 * std::pow(40.0 / (8 * 20), 1.143) == doctest::Approx(4.10).epsilon(0.002));
}

// Figures of another program (evidence: memory, since they are nobody's print): state and volts after each step.
TEST_CASE("kinetic: states of two sets of constants, step by step") {
  struct Step {
    double a, hours, available_ah, bound_ah, volts, open_v;
  };
  const auto walk = [](const char* name, const Block& block, std::initializer_list<Step> steps) {
    Closeness ah(name, "Ah"), v(name, "V");
    WellState state = full(block.wells);
    for (const Step& step : steps) {
      state = after(block.wells, state, step.a, step.hours);
      CHECK(ah.within(available_ah(block.wells, state), step.available_ah, 6e-5));
      CHECK(ah.within(bound_ah(block.wells, state), step.bound_ah, 6e-5));
      if (step.volts > 0) CHECK(v.within(volts(block, state, step.a), step.volts, 6e-5));
      if (step.open_v > 0) CHECK(v.within(volts(block, state, 0), step.open_v, 6e-5));
    }
  };
  walk("S40 in four steps", kS40,
       {{10, 1, 12.0565, 21.5485, 12.3028, 12.4006},
        {0, 0.5, 13.4448, 20.1602, 0, 12.4967},
        {20, 0.5, 6.7301, 16.8749, 11.8254, 0},
        {0, 1, 9.5666, 14.0384, 0, 12.2262}});
  walk("M40 in four steps", kM40,
       {{10, 1, 11.9134, 20.8436, 12.2358, 12.3338},
        {0, 0.5, 13.2800, 19.4770, 0, 12.4387},
        {20, 0.5, 6.5536, 16.2034, 11.7233, 0},
        {0, 1, 9.3429, 13.4141, 0, 12.1360}});
  CHECK(filling(kS40.wells, after(kS40.wells, full(kS40.wells), 10, 1)) == doctest::Approx(0.6747).epsilon(1e-4));
}

TEST_CASE("kinetic: hours to end voltages, against the table and another program") {
  Closeness program("hours to an end voltage against another program, relative", ""),
      table("the same against the maker's table (CSB GP 12400, seen), relative", "");
  struct Row {
    double a, v, model_h, table_h;
  };
  for (const Row& row : {Row{49.0, 10.5, 0.5107, 0.5},
                         {30.0, 10.5, 1.0029, 1},
                         {17.4, 10.5, 2.0241, 2},
                         {12.3, 10.5, 3.0459, 3},
                         {9.71, 10.5, 3.9761, 4},
                         {46.2, 11.1, 0.4983, 0.5},
                         {29.4, 11.1, 0.9750, 1},
                         {9.63, 11.1, 3.9143, 4}}) {
    const double h = hours_to_v(kS40, row.a, row.v);
    CHECK(program.within(h / row.model_h, 1, 2e-4));
    CHECK(table.within(h / row.table_h, 1, 0.026));
  }
  struct Triple {
    double scale, a, h105, h111, h117;
  };
  const Block s30 = scaled(kS40, 0.75);
  for (const Triple& row : {Triple{0.75, 1.5, 21.004, 20.613, 17.579},
                            {0.75, 3, 10.282, 10.077, 8.453},
                            {0.75, 5, 5.993, 5.861, 4.798},
                            {0.75, 10, 2.776, 2.697, 2.048},
                            {0.75, 20, 1.175, 1.118, 0.701}}) {
    CHECK(program.within(hours_to_v(s30, row.a, 10.5) / row.h105, 1, 8e-4));
    CHECK(program.within(hours_to_v(s30, row.a, 11.1) / row.h111, 1, 8e-4));
    CHECK(program.within(hours_to_v(s30, row.a, 11.7) / row.h117, 1, 8e-4));
  }
  for (const Triple& row : {Triple{1, 5, 8.080, 7.980, 6.006},
                            {1, 8, 4.891, 4.821, 3.487},
                            {1, 10, 3.829, 3.768, 2.647},
                            {1, 20, 1.704, 1.655, 0.980},
                            {1, 30, 1.008, 0.951, 0.485}}) {
    CHECK(program.within(hours_to_v(kM40, row.a, 10.5) / row.h105, 1, 8e-4));
    CHECK(program.within(hours_to_v(kM40, row.a, 11.1) / row.h111, 1, 8e-4));
    CHECK(program.within(hours_to_v(kM40, row.a, 11.7) / row.h117, 1, 1.2e-3));
  }
  for (const auto& [a, h] : {std::pair{1.5, 16.078}, {3.0, 7.685}, {5.0, 4.327}, {10.0, 1.807}, {20.0, 0.599}})
    CHECK(program.within(hours_to_v(scaled(kM40, 0.75), a, 11.7) / h, 1, 1e-3));
}

// 20 A for 60 s, 1 A for 120 s, 20 milliohm of lead (another program): three ends, and what the average alone says.
TEST_CASE("kinetic: bursts end elsewhere than their average as a steady load") {
  Closeness hours("overs of 20 A, 60 s in 180 s, hours", "h"), ah("charge taken by then", "Ah");
  const Overs overs{20, 1, 60.0 / 180, 60.0 / 3600};
  struct Row {
    const Block& block;
    double v, hours, ah;
  };
  for (const Row& row : {Row{kS40, 11.7, 1.95, 14.30},
                         {kS40, 11.0, 4.80, 35.20},
                         {kS40, 10.5, 5.25, 38.50},
                         {kM40, 11.7, 1.60, 11.73},
                         {kM40, 11.0, 4.50, 33.00},
                         {kM40, 10.5, 5.30, 38.87}}) {
    const Stepped one_by_one = stepped(row.block, 20, 20, 60.0 / 3600, 1, 120.0 / 3600, 0.020, row.v, 60);
    CHECK(hours.within(one_by_one.hours, row.hours, 1e-9 + 0.005));
    CHECK(ah.within(one_by_one.taken_ah, row.ah, 0.0051));
    // root finding says when the lower edge of the saw-tooth passes the floor
    const double least = least_filling(row.block, 20, row.v + 20 * 0.020);
    const double root_h = hours_to_filling(row.block.wells, full(row.block.wells), overs, least);
    CHECK(root_h > one_by_one.hours - 120.0 / 3600);  // the end of the last good over
    CHECK(root_h <= one_by_one.hours + 60.0 / 3600);  // the end of the first bad one
  }
  // the same average as a steady load, tested at its own current; and 20 A all the time
  Closeness steady("steady loads behind the same lead, relative", "");
  const auto behind_lead = [](double a) {
    return hours_to_filling(kS40.wells, full(kS40.wells), {a, a, 1, 0}, least_filling(kS40, a, 11.7 + a * 0.020));
  };
  CHECK(steady.within(behind_lead(average_a(overs)) / 3.72, 1, 2e-3));
  CHECK(steady.within(behind_lead(20) / 0.533, 1, 2e-3));
}

TEST_CASE("kinetic: root finding on closed forms against stepping over by over, ever shorter overs") {
  const double least = least_filling(kM40, 20, 11.0 + 20 * 0.020);
  double last = 1;
  for (const double over_s : {60.0, 20.0, 6.0, 2.0, 0.6}) {
    const double over_h = over_s / 3600, cycle_h = 3 * over_h;
    const double root_h = hours_to_filling(kM40.wells, full(kM40.wells), {20, 1, 1.0 / 3, over_h}, least);
    const double step_h = stepped(kM40, 20, 20, over_h, 1, 2 * over_h, 0.020, 11.0, 8).hours;
    const double off = std::abs(step_h - root_h) / root_h;
    std::printf("  overs of %.1f s: stepping %.5f h, root %.5f h, apart %.4f %% (one turn is %.4f %%)\n", over_s,
                step_h, root_h, 100 * off, 100 * cycle_h / root_h);
    CHECK(off <= cycle_h / root_h + 1e-9);  // stepping knows whole turns only
    last = off;
  }
  CHECK(last < 1e-3);
}

TEST_CASE("kinetic: charge is conserved, and every joule has its place") {
  Closeness charge("wells and what was taken against the full wells, relative", ""),
      energy("what the cells gave against set, lead and inner resistance, relative", "");
  for (const Block& block : {kS40, kM40, scaled(kM40, 0.25)}) {
    WellState state = full(block.wells);
    double taken = 0, inner_j = 0, lead_j = 0, set_j = 0, cells_j = 0;
    const double lead_ohm = 0.0363;
    for (int turn = 0; turn < 12; ++turn)
      for (const auto& [a, h] :
           {std::pair{0.3 * block.wells.capacity_ah, 0.05}, {0.02 * block.wells.capacity_ah, 0.1}}) {
        constexpr int kSteps = 50;
        for (int i = 0; i < kSteps; ++i) {
          const double dt = h / kSteps;
          const WellState middle = after(block.wells, state, a, dt / 2);
          const double open_v = volts(block, middle, 0);
          cells_j += open_v * a * dt * 3600;
          inner_j += a * a * block.ohm * dt * 3600;
          lead_j += a * a * lead_ohm * dt * 3600;
          set_j += (volts(block, middle, a) - a * lead_ohm) * a * dt * 3600;
          state = after(block.wells, state, a, dt);
          taken += a * dt;
        }
      }
    CHECK(charge.within(
        (available_ah(block.wells, state) + bound_ah(block.wells, state) + taken) / block.wells.capacity_ah, 1,
        1e-9));
    CHECK(energy.within((set_j + lead_j + inner_j) / cells_j, 1, 1e-9));
  }
}

TEST_CASE("kinetic: closed form against another way round, and the edges") {
  // a load that empties full wells in a time is the load whose time that is
  Closeness back("hours from the charge given in them, relative", "");
  for (const double h : {0.3, 1.0, 4.7, 20.0, 90.0})
    CHECK(back.within(hours_to_empty(kM40.wells, given_ah(kM40.wells, h) / h) / h, 1, 1e-9));
  // long and gentle: all of it; short and hard: the well in use alone
  CHECK(given_ah(kM40.wells, 1e6) == doctest::Approx(kM40.wells.capacity_ah));
  CHECK(given_ah(kM40.wells, 1e-9) == doctest::Approx(kM40.wells.capacity_ah * kM40.wells.share));
  CHECK(std::isinf(hours_to_filling(kM40.wells, full(kM40.wells), {0, 0, 0, 0}, 0.5)));
  CHECK(hours_to_filling(kM40.wells, {10, 0}, {5, 5, 1, 0}, 0.5) == 0);
  // a plain tank is charge counting
  CHECK(hours_to_filling({20, 1, 1}, {20, 0}, {4, 1, 0.4, 0}, 0.25) == doctest::Approx(15 / 2.2));
}

// Lead-acid recovers in the pause: the shorter the overs, the longer it lasts (common practice).
TEST_CASE("kinetic: long overs end sooner than short ones of the same share") {
  double last = 1e9;
  for (const double over_s : {1.0, 10.0, 60.0, 300.0}) {
    const double h = hours_to_filling(kM40.wells, full(kM40.wells), {20, 1, 0.3, over_s / 3600}, 0.35);
    CHECK(h < last);
    last = h;
  }
}

TEST_CASE("pack on the air: a block with the set's constants is the set worked out apart") {
  const test::M40Block m40;
  const Law law = law_of({.chemistry = &m40.chemistry, .capacity_ah = 40});
  CHECK(law.wells.capacity_ah == doctest::Approx(kM40.wells.capacity_ah).epsilon(1e-9));
  CHECK(law.quick_ohm == doctest::Approx(kM40.ohm).epsilon(1e-9));
  Closeness off("hours to a floor at the set, relative", "");
  const Load load{1, 20, 20, 1.0 / 3, 60.0 / 3600, 0.020};
  for (const auto& [v, h] : {std::pair{11.7, 1.60}, {11.0, 4.50}}) {
    const End end = end_of(law, full(law.wells), load, {v, 0, 1000});
    CHECK(end.by == EndBy::minimum_supply);
    CHECK(off.within(end.hours / h, 1, 0.05 / h));  // a turn of 3 min
    CHECK(std::abs(key_down_v(law, full(law.wells), load, end.hours) - 20 * 0.020 - v) < 1e-9);
  }
}

// Speech of 100 W: overs of 20 s at 9.9 A average and 21 A peaks, 30 s at 1.2 A; 30 Ah (another program).
TEST_CASE("pack on the air: speech on a 30 Ah block, worked examples") {
  Closeness off("hours, speech on 30 Ah", "h");
  const test::M40Block m40;
  const Law law = law_of({.chemistry = &m40.chemistry, .capacity_ah = 30});
  struct Row {
    double sending_a, peak_a, pause_a, lead_ohm, hours;
  };
  for (const Row& row : {Row{9.9, 21, 1.2, 0.0171, 1.82},
                         {9.9, 21, 1.2, 0.0363, 0.10},
                         {6.2, 11.75, 1.2, 0.0363, 3.26},
                         {4.84, 8.35, 1.2, 0.0363, 5.50}}) {
    const End end =
        end_of(law, full(law.wells), {row.pause_a, row.sending_a, row.peak_a, 0.4, 20.0 / 3600, row.lead_ohm},
               {11.7, 10.5, 1000});
    CHECK(off.within(end.hours, row.hours, 50.0 / 3600 + 0.005));
    CHECK(end.by == EndBy::minimum_supply);
  }
}

// Common practice: 20 Ah of lithium count as 20, 30 Ah of sealed lead-acid as 15.
TEST_CASE("pack on the air: what a label counts as") {
  const auto counts_as = [](const char* key, double label_ah, double a) {
    const Chemistry& kind = *find_chemistry(key);
    const Law law = law_of({.chemistry = &kind, .capacity_ah = label_ah, .reserve_pct = kind.usual_reserve_pct});
    const End end = end_of(law, full(law.wells), {a, a, a, 1, 0, 0}, {0, kind.empty_v, 1000});
    std::printf("  %s, %.0f Ah at %.1f A: %.1f Ah\n", key, label_ah, a, a * end.hours);
    return a * end.hours;
  };
  CHECK(std::abs(counts_as("lifepo4", 20, 4.68) / 20 - 1) < 0.08);
  CHECK(std::abs(counts_as("sealed_lead", 30, 4.68) / 15 - 1) < 0.05);
}

// The 17 Ah block measured at 0.03 to 0.18 A per Ah, and tubular blocks of 81 to 89 Ah under a changing load of
// about 0.28 A per Ah, which are first held under 11.7 V after 0.29 to 0.47 of their charge in six of seven tests
// (open workbook of a charge-estimation project, September 2019 to January 2020; seen).
TEST_CASE("pack on the air: measured blocks against the usual figure and its range") {
  const auto ends = [](double label_ah, double a, double v, Luck luck) {
    const Law law = law_of({.chemistry = &lead(), .capacity_ah = label_ah}, luck);
    return end_of(law, full(law.wells), {a, a, a, 1, 0, 0}, {v, 0, 1000}).hours;
  };
  int inside = 0, compared = 0;
  double worst = 0;
  for (const test::BlockRun& run : test::kBlock)
    for (int i = 0; i < 5; ++i) {
      const double v = test::kBlockV[i], h = run.hours[i];
      const double low = ends(17, run.current_a, v, Luck::worse), usual = ends(17, run.current_a, v, Luck::usual),
                   high = ends(17, run.current_a, v, Luck::better);
      CHECK(low <= usual);
      CHECK(usual <= high);
      ++compared;
      inside += low <= h && h <= high ? 1 : 0;
      if (v < 12) worst = std::max(worst, std::abs(usual / h - 1));
      if (i == 2)
        std::printf("  %.2f A to %.1f V: measured %.2f h, %.2f (%.2f to %.2f) h\n", run.current_a, v, h, usual, low,
                    high);
    }
  std::printf("  %d of %d measured times lie inside the range; worst to 11.7 V and below %.0f %%\n", inside,
              compared, 100 * worst);
  CHECK(inside == compared);
  CHECK(worst < 0.25);
  for (const double a : {19.9, 22.7, 24.1, 24.5, 24.8, 25.0, 25.2}) {
    const double low = ends(85, a, 11.7, Luck::worse) * a / 85, high = ends(85, a, 11.7, Luck::better) * a / 85;
    std::printf("  tubular, %.1f A: %.2f to %.2f of the label\n", a, low, high);
    CHECK(low < 0.47);
  }
}

// Through the pack's own functions, for every chemistry: what the cells give is what set, lead, fuse and plugs, and
// the pack's own resistance take.
TEST_CASE("pack on the air: energy by its parts, every chemistry") {
  Closeness energy("cells against set + lead + fuse and plugs + inner resistance, relative", "");
  for (const Chemistry& kind : chemistries()) {
    const Law law = law_of({.chemistry = &kind, .capacity_ah = 12, .health_pct = 90, .temperature_c = 5});
    const double wire_ohm = 0.0209, contacts_ohm = 0.005;
    double cells_j = 0, set_j = 0, wire_j = 0, contacts_j = 0, inner_j = 0, taken_ah = 0;
    WellState state = full(law.wells);
    for (int i = 0; i < 400; ++i) {
      const double a = i % 5 < 2 ? 7.5 : 0.8, dt_h = 0.005;
      const Load load{a, a, a, 1, 0, wire_ohm + contacts_ohm};
      const Load nothing{0, 0, 0, 1, 0, 0};
      const double open_v = paused_v(law, state, nothing), terminal_v = key_down_v(law, state, load, 0);
      if (terminal_v <= 0) break;
      const double j = a * dt_h * 3600;
      cells_j += open_v * j;
      set_j += (terminal_v - a * load.lead_ohm) * j;
      wire_j += a * wire_ohm * j;
      contacts_j += a * contacts_ohm * j;
      inner_j += a * (law.quick_ohm + law.slow_ohm + law.fixed_ohm) * j;
      state = after(law, state, load, dt_h);
      taken_ah += a * dt_h;
    }
    CHECK(taken_ah > 1);
    CHECK(energy.within((set_j + wire_j + contacts_j + inner_j) / cells_j, 1, 1e-9));
    CHECK(std::abs((state.charge_ah + taken_ah) / law.wells.capacity_ah - 1) < 1e-9);
    std::printf("  %s: set %.1f %%, wire %.2f %%, fuse and plugs %.2f %%, inside %.1f %%\n",
                std::string(kind.key).c_str(), 100 * set_j / cells_j, 100 * wire_j / cells_j,
                100 * contacts_j / cells_j, 100 * inner_j / cells_j);
  }
}
