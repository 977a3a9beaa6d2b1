// The cable catalogue against its own points, against other makers and against physics.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdio>
#include <string>
#include <vector>

#include "core/feedline/cable.h"
#include "core/feedline/loss_fit.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/feedline_tables.h"

using namespace gs;
using namespace gs::feedline;
using gs::test::Closeness;

namespace {

bool judged(double frequency_mhz) { return frequency_mhz >= 1.8 && frequency_mhz <= 54; }

std::vector<LossPoint> points_of(const Cable& cable) {
  std::vector<LossPoint> points;
  for (const CablePoint& p : cable.points) points.push_back({p.frequency_mhz, p.attenuation_db_per_100m});
  return points;
}

// The constants of these rows are the maker's own; all others are fitted to the row's points.
bool has_makers_law(const Cable& cable) { return cable.key == "foam_240" || cable.key == "foam_400"; }

}  // namespace

TEST_CASE("cable catalogue: every row is complete and says where it comes from") {
  CHECK(cables().size() >= 14);
  for (const Cable& cable : cables()) {
    CAPTURE(std::string(cable.key));
    CHECK(find_cable(cable.key) == &cable);
    CHECK_FALSE(cable.name.empty());
    CHECK_FALSE(cable.loss_source.empty());
    CHECK_FALSE(cable.body_source.empty());
    CHECK(cable.z0_ohm > 0);
    CHECK(cable.velocity_factor > 0);
    CHECK(cable.velocity_factor <= 1);
    // one published point is tested at its own frequency alone, and every other one says so
    CHECK((cable.lowest_mhz < cable.highest_mhz || cable.points.size() == 1));
    CHECK_FALSE(cable.points.empty());
    for (const CablePoint& p : cable.points) {
      CHECK_FALSE(p.source.empty());
      CHECK(p.half_step_db_per_100m > 0);
      CHECK(p.half_step_db_per_100m < p.attenuation_db_per_100m);
      CHECK(p.frequency_mhz >= cable.lowest_mhz);
      CHECK(p.frequency_mhz <= cable.highest_mhz);
      CHECK(int(p.evidence) <= int(cable.loss_evidence));  // a law is no better known than its weakest point
    }
  }
  CHECK(find_cable("no such cable") == nullptr);
  CHECK(find_cable("") == nullptr);
}

TEST_CASE("cable catalogue: each law meets its points from 1.8 to 54 MHz, or says how far off it is and why") {
  for (const Cable& cable : cables()) {
    CAPTURE(std::string(cable.key));
    double worst_pct = 0, missed_pct = 0;
    for (const CablePoint& p : cable.points) {
      if (!judged(p.frequency_mhz)) continue;
      const double off = std::abs(attenuation_db_per_100m(cable, p.frequency_mhz) - p.attenuation_db_per_100m);
      const double allowed = std::max(0.03 * p.attenuation_db_per_100m, p.half_step_db_per_100m);
      const double off_pct = 100 * off / p.attenuation_db_per_100m;
      if (off > allowed * (1 + 1e-9)) missed_pct = std::max(missed_pct, off_pct);
      worst_pct = std::max(worst_pct, off_pct);
    }
    std::printf("  %s: worst %.2f %% of its own points within 1.8-54 MHz%s\n", std::string(cable.key).c_str(),
                worst_pct, missed_pct > 0 ? " (beyond their digits, noted in the row)" : "");
    CHECK(cable.worst_fit_pct == doctest::Approx(worst_pct).epsilon(1e-9));
    CHECK((missed_pct == 0) == cable.fit_note.empty());
    if (missed_pct > 0) {
      char figure[32];
      std::snprintf(figure, sizeof figure, "%.1f %%", missed_pct);
      CAPTURE(figure);
      CHECK(cable.fit_note.find(figure) != std::string_view::npos);
    }
  }
}

TEST_CASE("cable catalogue: fitted constants are what the fit gives, to six digits") {
  Closeness k("refit, largest departure of a constant, relative", "");
  for (const Cable& cable : cables()) {
    CAPTURE(std::string(cable.key));
    if (has_makers_law(cable)) continue;
    const LossLaw law = fit_loss(points_of(cable), cable.k0_db_per_100m > 0);
    const double half_of_sixth_digit = 5.1e-6;
    CHECK(k.within(law.k0_db_per_100m, cable.k0_db_per_100m, half_of_sixth_digit * cable.k0_db_per_100m));
    CHECK(k.within(law.k1_db_per_100m, cable.k1_db_per_100m, half_of_sixth_digit * cable.k1_db_per_100m));
    CHECK(k.within(law.k2_db_per_100m, cable.k2_db_per_100m, half_of_sixth_digit * cable.k2_db_per_100m));
  }
}

// Maker's data sheets of the two sizes, as quoted in a detector-simulation library (second hand): dB/100 ft, f in
// MHz.
TEST_CASE("cable catalogue: the maker's own laws, converted from 100 ft") {
  Closeness k("maker's constants", "dB/100 m");
  const Cable &small = *find_cable("foam_240"), &large = *find_cable("foam_400");
  CHECK(k.within(small.k1_db_per_100m, 0.242080 / kMetresPerFoot, 5.1e-7));
  CHECK(k.within(small.k2_db_per_100m, 0.000330 / kMetresPerFoot, 5.1e-9));
  CHECK(k.within(large.k1_db_per_100m, 0.122290 / kMetresPerFoot, 5.1e-7));
  CHECK(k.within(large.k2_db_per_100m, 0.000260 / kMetresPerFoot, 5.1e-9));
  // The printed table is the law rounded to 0.1 dB/100 ft.
  for (const Cable* cable : {&small, &large})
    for (const CablePoint& p : cable->points)
      CHECK(k.within(attenuation_db_per_100m(*cable, p.frequency_mhz), p.attenuation_db_per_100m,
                     p.half_step_db_per_100m * 1.0001));
}

// How far a row's law stands from a point that it was not shown: the honest figure for frequencies between points.
TEST_CASE("cable catalogue: leave one point out") {
  for (const Cable& cable : cables()) {
    if (has_makers_law(cable) || cable.points.size() < 3) continue;
    CAPTURE(std::string(cable.key));
    double worst_pct = 0, at_mhz = 0, worst_steps = 0;
    for (std::size_t out = 0; out < cable.points.size(); ++out) {
      const CablePoint& p = cable.points[out];
      if (!judged(p.frequency_mhz)) continue;
      std::vector<LossPoint> rest = points_of(cable);
      rest.erase(rest.begin() + std::ptrdiff_t(out));
      const LossLaw law = fit_loss(rest, cable.k0_db_per_100m > 0);
      const double off = std::abs(attenuation_db_per_100m(law, p.frequency_mhz) - p.attenuation_db_per_100m);
      worst_steps = std::max(worst_steps, off / p.half_step_db_per_100m);
      if (100 * off / p.attenuation_db_per_100m > worst_pct) {
        worst_pct = 100 * off / p.attenuation_db_per_100m;
        at_mhz = p.frequency_mhz;
      }
    }
    std::printf("  %s: left out, a point within 1.8-54 MHz is met to %.1f %% (at %g MHz; %.1f half steps)\n",
                std::string(cable.key).c_str(), worst_pct, at_mhz, worst_steps);
    // Steel cores bend the law; on copper the printed digits are the larger doubt.
    CHECK(worst_pct < (cable.k0_db_per_100m > 0 ? 10 : 7));
  }
}

TEST_CASE("cable catalogue: loss rises with frequency and never falls below smooth copper") {
  for (const Cable& cable : cables()) {
    CAPTURE(std::string(cable.key));
    double before = 0;
    for (double f = cable.lowest_mhz; f <= cable.highest_mhz; f *= 1.05) {
      const double now = attenuation_db_per_100m(cable, f);
      CHECK(now > before);
      before = now;
    }
  }
  // Conductor loss of smooth copper, dB/100 ft = 0.433 sqrt(f)/Z0 (1/d + 1/D), inches: a cable maker's design page
  // (seen) with the constant worked out apart. Solid RG-58: d 0.032, D 0.116; stranded: d 0.035.
  for (const double f : {1.8, 10.0, 30.0, 54.0, 100.0}) {
    const double solid = 0.433 * std::sqrt(f) / 51.5 * (1 / 0.032 + 1 / 0.116) / kMetresPerFoot;
    const double stranded = 0.433 * std::sqrt(f) / 50 * (1 / 0.035 + 1 / 0.116) / kMetresPerFoot;
    CHECK(attenuation_db_per_100m(*find_cable("rg58"), f) > 0.97 * solid);
    CHECK(attenuation_db_per_100m(*find_cable("rg58c"), f) > stranded);
    CHECK(attenuation_db_per_100m(*find_cable("rg58c_lossier"), f) > stranded);
  }
}

TEST_CASE("cable catalogue: capacitance, impedance and velocity factor belong together") {
  double worst_pct = 0;
  for (const test::CapacitanceRow& row : test::kCapacitance) {
    CAPTURE(row.key);
    const Cable* cable = find_cable(row.key);
    REQUIRE(cable != nullptr);
    const double pf = capacitance_pf_per_m(*cable);
    const double off_pct = 100 * std::abs(pf / row.pf_per_m - 1);
    // Half the last printed digit of all three: capacitance as in its row, impedance 0.5 ohm, velocity factor
    // 0.005.
    const double allowed_pct =
        100 * (row.half_step_pf_per_m / row.pf_per_m + 0.5 / cable->z0_ohm + 0.005 / cable->velocity_factor);
    worst_pct = std::max(worst_pct, off_pct);
    CHECK(off_pct <= allowed_pct);
  }
  std::printf("  C = 1/(Z0 VF c): worst %.2f %%\n", worst_pct);
}

TEST_CASE("cable catalogue: what other makes print for the same class") {
  double worst_pct = 0;
  for (const test::OtherMake& row : test::kOthers) {
    CAPTURE(row.key);
    CAPTURE(row.frequency_mhz);
    const Cable* cable = find_cable(row.key);
    REQUIRE(cable != nullptr);
    const double off_pct = 100 * std::abs(attenuation_db_per_100m(*cable, row.frequency_mhz) / row.db_per_100m - 1);
    worst_pct = std::max(worst_pct, off_pct);
    CHECK(off_pct <= row.spread_pct);
  }
  std::printf("  other makes of the same class: up to %.1f %% apart\n", worst_pct);
}

// Ratings of the two sizes from 30 to 900 MHz (recalled, with attenuation second hand): at SWR 1, 40 C, 100 C
// inside.
TEST_CASE("cable catalogue: power rating times attenuation is one figure") {
  Closeness off("power rating, relative", "");
  struct Rated {
    const char* key;
    double frequency_mhz, w;
  };
  for (const Rated& row : {Rated{"foam_240", 30, 1490},
                           {"foam_240", 50, 1150},
                           {"foam_240", 150, 660},
                           {"foam_240", 220, 540},
                           {"foam_240", 450, 380},
                           {"foam_240", 900, 260},
                           {"foam_400", 30, 3330},
                           {"foam_400", 50, 2570},
                           {"foam_400", 150, 1470},
                           {"foam_400", 220, 1200},
                           {"foam_400", 450, 830},
                           {"foam_400", 900, 580}})
    CHECK(off.within(rated_power_w(*find_cable(row.key), row.frequency_mhz, 1) / row.w, 1, 0.013));
  CHECK(rated_power_w(*find_cable("foam_400"), 30, 3) == doctest::Approx(3330 / 3.0).epsilon(0.013));
  CHECK(std::isnan(rated_power_w(*find_cable("rg174"), 30, 1)));  // nobody's table was found
  for (const Cable& cable : cables())
    CHECK((cable.rating_w_db_per_100m > 0 || cable.working_vrms > 0) == !cable.rating_source.empty());
}
