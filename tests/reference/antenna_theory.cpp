// Thin-wire closed forms and real ground against figures worked out apart and against print.
#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <utility>

#include "core/antenna/emf.h"
#include "core/antenna/feed.h"
#include "core/antenna/ground.h"
#include "core/antenna/king.h"
#include "core/sky/hop.h"
#include "core/units.h"
#include "tests/reference/antenna_theory_tables.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::antenna;
using gs::test::Closeness;

namespace {
constexpr double kMetresMhz = kSpeedOfLightMPerS / 1e6;
double degrees(std::complex<double> z) { return std::arg(z) * 180 / kPi; }
}  // namespace

// Tables of Abramowitz and Stegun, 5.1 and 5.2 (memory): Si(1), Si(pi), Ci(1), Ci(10).
TEST_CASE("theory: sine and cosine integrals") {
  CHECK(std::abs(sine_integral(1) - 0.946083070367) < 1e-12);
  CHECK(std::abs(sine_integral(kPi) - 1.851937051982) < 1e-12);
  CHECK(std::abs(cosine_integral(1) - 0.337403922900) < 1e-12);
  CHECK(std::abs(cosine_integral(10) + 0.045456433004) < 1e-12);
  for (const double x : {2 - 1e-9, 2 + 1e-9})  // series and fraction meet
    CHECK(std::abs(sine_integral(x) - 1.605412976803) < 1e-9);
}

TEST_CASE("theory: feed impedance by induced EMF") {
  Closeness off("induced-EMF impedance", "ohm");
  for (const test::EmfRow& row : test::kEmf) {
    const auto z = dipole_ohm(row.length_waves, row.radius_waves);
    CHECK(off.within(z.real(), row.r_ohm, 0.05));
    CHECK(off.within(z.imag(), row.x_ohm, 0.05));
  }
  // Orfanidis, Electromagnetic Waves and Antennas, note to his impedance function (seen): a thin wire of half a
  // wave 73.079 + j42.515; no reactance at 0.48574823 and 1.48338445 waves, 67.184 and 100.314 ohm
  constexpr double kThin = 1e-9;
  CHECK(off.within(dipole_ohm(0.5, kThin).real(), 73.079, 0.01));
  CHECK(off.within(dipole_ohm(0.5, kThin).imag(), 42.515, 0.01));
  CHECK(off.within(dipole_ohm(0.48574823, kThin).real(), 67.184, 0.005));
  CHECK(off.within(dipole_ohm(1.48338445, kThin).real(), 100.314, 0.005));
}

// Orfanidis' equations for King's theory worked out apart; 0.015 ohm are one and a half of the table's last digits,
// for the other program's own integrals.
TEST_CASE("theory: feed impedance by King's three terms") {
  Closeness off("three-term impedance", "ohm"), between("two theories' resonant lengths, relative", "");
  for (const test::EmfRow& row : test::kThreeTerm) {
    const auto z = three_term_ohm(row.length_waves, row.radius_waves);
    CAPTURE(row.length_waves);
    CAPTURE(row.radius_waves);
    CHECK(off.within(z.real(), row.r_ohm, 0.015));
    CHECK(off.within(z.imag(), row.x_ohm, 0.015));
  }
  // No reactance at 0.4885, 0.4850, 0.4784 waves (worked out apart); a moment method of our own, not this code, has
  // 0.4879, 0.4838, 0.4756: theories agree within 0.6 %.
  struct Row {
    double radius_waves, three_term, model;
  };
  for (const Row& row : {Row{1e-5, 0.4885, 0.4879}, Row{1e-4, 0.4850, 0.4838}, Row{1e-3, 0.4784, 0.4756}}) {
    const double got = three_term_resonant_waves(row.radius_waves);
    CHECK(std::abs(got - row.three_term) < 0.00006);
    CHECK(between.within(got / row.model, 1, 0.006));
    CHECK(between.within(got / resonant_waves(row.radius_waves), 1, 0.006));
    CHECK(std::abs(three_term_ohm(got, row.radius_waves).imag()) < 1e-6);
  }
  for (const double wrong : {0.0, -1.0, 1.3, std::nan("")}) CHECK(std::isnan(three_term_ohm(wrong, 1e-4).real()));
  for (const double wrong : {0.0, 1e-7, 0.06, std::nan("")}) CHECK(std::isnan(three_term_ohm(0.5, wrong).real()));
  CHECK(std::isnan(three_term_resonant_waves(-1)));
}

TEST_CASE("theory: wires side by side and over perfect ground") {
  Closeness mutual("mutual impedance", "ohm"), image("over perfect ground", "ohm");
  for (const test::MutualRow& row : test::kMutual) {
    CHECK(mutual.within(mutual_ohm(row.apart_waves).real(), row.r_ohm, 0.05));
    CHECK(mutual.within(mutual_ohm(row.apart_waves).imag(), row.x_ohm, 0.05));
  }
  for (const test::ImageRow& row : test::kOverPerfectGround)
    CHECK(image.within(over_perfect_ground_ohm(row.height_waves), row.r_ohm, 0.1));
}

// Length of a bare half-wave wire. Induced-EMF resonances for radii of 1e-5, 1e-4, 1e-3 waves (worked out apart)
// and a wire model of our own, not this code: 20.27 m of 1.6 mm resonate at 7.2006 MHz. Theories agree within 0.6
// %.
TEST_CASE("theory: resonant length, and 20.27 m of 1.6 mm wire") {
  Closeness off("resonant length", "wavelengths"), share("20.27 m wire against a wire model", "% of frequency");
  CHECK(off.within(resonant_waves(1e-5), 0.4883, 0.00006));
  CHECK(off.within(resonant_waves(1e-4), 0.4846, 0.00006));
  CHECK(off.within(resonant_waves(1e-3), 0.4775, 0.00006));
  double low = 7, high = 7.4;
  for (int i = 0; i < 50; ++i) {
    const double f = (low + high) / 2;
    (half_wave_m(f, 0.0016) > 20.27 ? low : high) = f;
  }
  MESSAGE("20.27 m of 1.6 mm: " << low << " MHz, wire model 7.2006");
  CHECK(share.within(100 * (low / 7.2006 - 1), 0, 0.6));
  // The trade's 468/f for bare wire stands 2.3 % under theory, and fits insulated wire (2.3 to 3.3 % shorter)
  const double bare_pct = 100 * (1 - cut_length_m(*find_kind("dipole"), 7.1) / half_wave_m(7.1, 0.0016));
  MESSAGE("468/f stands " << bare_pct << " % under bare theory");
  CHECK(bare_pct > 2);
  CHECK(bare_pct < 3);
}

// Slope of the reactance at resonance against a wire model of our own, not this code: ohm for 1 % of frequency.
TEST_CASE("theory: how fast a dipole leaves its resonance") {
  struct Row {
    double length_over_diameter, ohm_for_1_pct;
  };
  Closeness off("slope of the reactance, relative", "");
  for (const Row& row : {Row{50, 5.6}, Row{100, 7.2}, Row{500, 10.3}, Row{1000, 11.7}, Row{2500, 13.4},
                         Row{5000, 14.7}, Row{10000, 16.1}, Row{25000, 17.8}, Row{100000, 20.4}}) {
    const Kind& dipole = *find_kind("dipole");
    const double x = detuning(dipole, 7.001, 7, 20, 20 / row.length_over_diameter, 72) * 72 * 7 / 0.1;
    CHECK(off.within(x / row.ohm_for_1_pct, 1, 0.06));
    CHECK(x < row.ohm_for_1_pct);
  }
}

// News-group formula with its worked figure (second hand): 1.6 and 2.6 mm, permittivity 3.5, 10 m up: 0.983.
TEST_CASE("theory: velocity factor of an insulated wire") {
  const double factor = insulated_velocity_factor(0.0016, 0.0026, 3.5, 10);
  MESSAGE("insulated wire " << factor << ", printed 0.983; a wire model says 0.977, what is cut here 0.97");
  CHECK(std::abs(factor - 0.983) < 0.001);
}

// 195.0 mV/m at a mile for 1 kW (worked out apart); 196 is quoted for Proc. IRE, June 1937 (second hand). 5.16 dBi.
TEST_CASE("theory: field of a quarter-wave vertical") {
  CHECK(std::abs(field_mv_per_m(1000, kQuarterWaveDirectivity, 1609.344) - 195) < 1);
  CHECK(std::abs(10 * std::log10(kQuarterWaveDirectivity) - 5.18) < 0.03);
}

TEST_CASE("ground: Fresnel's coefficients and the angle where the upright one is least") {
  Closeness size("reflection", ""), phase("phase of reflection", "degrees"), angle("least reflection", "degrees");
  for (const test::FresnelRow& row : test::kFresnel) {
    const Reflection got =
        reflection({row.permittivity, row.conductivity_s_per_m}, row.frequency_mhz, row.elevation_deg);
    CHECK(size.within(std::abs(got.level), row.level, 0.001));
    CHECK(size.within(std::abs(got.upright), row.upright, 0.001));
    CHECK(phase.within(degrees(got.level), row.level_deg, 0.1));
    CHECK(phase.within(degrees(got.upright), row.upright_deg, 0.1));
  }
  for (const test::BrewsterRow& row : test::kBrewster)
    CHECK(angle.within(brewster_deg({row.permittivity, row.conductivity_s_per_m}, row.frequency_mhz),
                       row.elevation_deg, 0.05));
}

TEST_CASE("ground: a level dipole over average ground, and over perfect ground as image theory has it") {
  Closeness change("change by average ground", "ohm"), perfect("spectrum against image theory", "ohm");
  for (const test::GroundChangeRow& row : test::kGroundChange) {
    const auto z = ground_change_ohm({}, row.frequency_mhz, row.height_waves, 0.4866);
    CHECK(change.within(z.real(), row.r_ohm, 1));
    CHECK(change.within(z.imag(), row.x_ohm, 1));
  }
  for (const double h : {0.05, 0.1, 0.25, 0.5, 1.0}) {
    const auto z = ground_change_ohm({}, 7.1, h, 0.5, true), image = -mutual_ohm(2 * h);
    CHECK(perfect.within(z.real(), image.real(), 0.01));
    CHECK(perfect.within(z.imag(), image.imag(), 0.01));
  }
}

TEST_CASE("ground: gain straight up of a low dipole") {
  Closeness gain("zenith gain", "dB"), ohm("feed resistance of a low dipole", "ohm");
  for (const test::ZenithRow& row : test::kZenith) {
    const Ground ground{row.permittivity, row.conductivity_s_per_m};
    const double waves = row.height_ft * kMetresPerFoot * 6 / kMetresMhz;
    CHECK(gain.within(zenith_gain_dbi(ground, 6, waves), row.gain_dbi, 1));
    CHECK(ohm.within(73.13 + ground_change_ohm(ground, 6, waves).real(), row.r_ohm, 3));
  }
  // Two military prints (seen) are kinder: a dipole 2 ft up on 6 MHz loses 8 dB at the far station (ground not
  // stated), 10 ft up on 3.5 MHz keeps +2.5 dBi over average ground. No measurement settles it: both are shown.
  const double low_35 = zenith_gain_dbi({}, 3.5, 10 * kMetresPerFoot * 3.5 / kMetresMhz);
  const auto up = [](const Ground& ground, double feet) {
    return zenith_gain_dbi(ground, 6, feet * kMetresPerFoot * 6 / kMetresMhz);
  };
  // 2 ft against a good 30 ft on 6 MHz, worked out apart: 9 dB over very poor, 12 over average, 14 over good ground
  for (const auto& [ground, wanted_db] :
       {std::pair{Ground{5, 0.001}, 9.0}, {Ground{}, 12.0}, {Ground{20, 0.03}, 14.0}}) {
    const double lost_db = up(ground, 30) - up(ground, 2);
    MESSAGE("2 ft instead of 30 on 6 MHz, permittivity " << ground.permittivity << ": " << lost_db
                                                         << " dB, print 8");
    CHECK(std::abs(lost_db - wanted_db) < 0.5);
    CHECK(lost_db > 8);
  }
  MESSAGE("10 ft on 3.5 MHz: " << low_35 << " dBi, print +2.5");
  CHECK(std::abs(low_35 + 0.8) < 1);  // worked out apart
  CHECK(std::abs(low_35 - 2.5) < 4);
}

TEST_CASE("ground: lowest lobe of a level dipole over perfect ground") {
  Closeness off("lowest lobe", "degrees");
  for (const test::LobeRow& row : test::kLobes)
    CHECK(off.within(sky::lowest_lobe_deg(kMetresMhz, row.height_waves), row.elevation_deg, 0.1));
}
