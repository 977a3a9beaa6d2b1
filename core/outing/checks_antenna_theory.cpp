// Rule of thumb beside theory, wires of any length, and what height does.
#include <cmath>
#include <vector>

#include "core/antenna/any_length.h"
#include "core/antenna/emf.h"
#include "core/antenna/feed.h"
#include "core/antenna/ground.h"
#include "core/antenna/king.h"
#include "core/antenna/match.h"
#include "core/outing/checks_antenna.h"
#include "core/sky/hop.h"

namespace gs::antenna_rows {
namespace {

double thin_wire(const Plan&) { return antenna::Setup{}.wire_diameter_m; }
double average_permittivity(const Plan&) { return antenna::Ground{}.permittivity; }
double average_conductivity(const Plan&) { return 1000 * antenna::Ground{}.conductivity_s_per_m; }

// ---- Rule of thumb or theory? ----

const CheckInput kRuleInputs[] = {
    {kFrequency},
    {asked("diameter_m", "Thickness of the wire", Unit::metre, 4, 0.0002, 0.05, 0.0002,
           "the metal alone; usual value: 1 mm, common practice", thin_wire)},
    {wire_row("usual value: bare")},
};
const CheckResult kRuleResults[] = {
    {told("rule_m", "Rule of thumb", Unit::metre, 2, "468/f feet: common practice")},
    {told("theory_m", "End-effect theory", Unit::metre, 2,
          "induced EMF in free space; insulated: 2.3 to 3.3 % less, 3 % taken")},
    {told("under_pct", "Rule under theory", Unit::percent, 1, "how much less")},
    {told("shortest_m", "In a park, shortest", Unit::metre, 2, "theory less 4 %: low ends, trees, insulation")},
    {told("longest_m", "In a park, longest", Unit::metre, 2, "theory and 1 %: height alone")},
    {told("three_term_m", "A second theory", Unit::metre, 2,
          "King's three-term current in free space; insulated as above")},
    {told("apart_pct", "The two theories differ by", Unit::percent, 2, "of the length", Better::less)},
    {told("r_ohm", "Resistance, sine current", Unit::ohm, 1, "at that theory's own length, free space")},
    {told("three_term_ohm", "Resistance, three terms", Unit::ohm, 1,
          "at that theory's own length; published theories differ by up to 8 %")},
};
std::string rule_or_theory(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kRuleInputs, in); !trouble.empty()) return trouble;
  const antenna::Wire wire = in[2] > 0 ? antenna::Wire::insulated : antenna::Wire::bare;
  out[0] = antenna::cut_length_m(*antenna::find_kind("dipole"), in[0], wire);
  out[1] = antenna::half_wave_m(in[0], in[1]) * (in[2] > 0 ? antenna::kInsulatedShare : 1);
  if (!std::isfinite(out[1])) return "too thick for thin-wire theory at this frequency";
  out[2] = 100 * (1 - out[0] / out[1]);
  out[3] = 0.96 * out[1];
  out[4] = 1.01 * out[1];
  const double wave_m = antenna::wavelength_m(in[0]), radius_waves = in[1] / 2 / wave_m;
  const double three_waves = antenna::three_term_resonant_waves(radius_waves);
  const double sine_waves = antenna::resonant_waves(radius_waves);
  out[5] = three_waves * wave_m * (in[2] > 0 ? antenna::kInsulatedShare : 1);
  out[6] = 100 * std::abs(out[5] / out[1] - 1);
  out[7] = antenna::dipole_ohm(sine_waves, radius_waves).real();
  out[8] = antenna::three_term_ohm(three_waves, radius_waves).real();
  return "cut the longest and trim";
}

// ---- Which lengths to keep away from? ----

const CheckInput kAvoidInputs[] = {
    {asked("length_m", "Length of the wire", Unit::metre, 2, 2, 100, 0.1, "without the counterpoise")},
    {asked("first_mhz", "Band", Unit::megahertz, 3, 1.8, 54, 0.05, "the middle of what you use")},
    {asked("second_mhz", "Second band", Unit::megahertz, 3, 1.8, 54, 0.05, "may be left out")},
    {asked("third_mhz", "Third band", Unit::megahertz, 3, 1.8, 54, 0.05, "may be left out")},
    {asked("fourth_mhz", "Fourth band", Unit::megahertz, 3, 1.8, 54, 0.05, "may be left out")},
    {asked("fifth_mhz", "Fifth band", Unit::megahertz, 3, 1.8, 54, 0.05, "may be left out")},
};
const CheckResult kAvoidResults[] = {
    {told("away_quarters", "Clear of half waves, quarter waves", Unit::none, 2,
          "0 is a half wave or a multiple, 1 midway; under 0.4 to be avoided: common practice", Better::more),
     0.2, 0.4},
    {told("worst_mhz", "Nearest on", Unit::megahertz, 3, "the band that stands worst")},
    {told("better_m", "Clearest length near it", Unit::metre, 2, "within a third shorter or longer")},
    {told("better_quarters", "Clear then", Unit::none, 2, "as above", Better::more)},
};
std::string avoid(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1)})
    if (!std::isfinite(in[i])) return needs(kAvoidInputs[i].row);
  std::vector<double> bands;
  for (std::size_t i = 1; i < in.size(); ++i)
    if (std::isfinite(in[i])) bands.push_back(in[i]);
  const antenna::AnyLength now = antenna::clear_of_half_waves(in[0], bands);
  out[0] = now.quarter_waves;
  out[1] = bands[std::size_t(now.worst)];
  out[2] = antenna::clearest_length_m(in[0] * 2 / 3, in[0] * 4 / 3, bands);
  out[3] = antenna::clear_of_half_waves(out[2], bands).quarter_waves;
  return now.quarter_waves < antenna::kAvoidQuarterWaves
             ? "near a half wave there: thousands of ohms and volts at the box, the matching unit may not reach"
             : "";
}

// ---- What does its height do to a dipole? ----

const CheckInput kHeightInputs[] = {
    {kFrequency},
    {asked("apex_m", "Height", Unit::metre, 1, 0.5, 60, 0.5, "a level half-wave dipole above flat ground")},
    {asked("permittivity", "Permittivity of the ground", Unit::none, 0, 1, 81, 1,
           "usual value: average ground, a list of common types, second hand", average_permittivity)},
    {asked("millisiemens", "Conductivity, mS/m", Unit::none, 1, 0.1, 5000, 1, "usual value: average ground",
           average_conductivity)},
};
const CheckResult kHeightResults[] = {
    {told("r_ohm", "Feed-point resistance", Unit::ohm, 0,
          "72 ohm and what the ground adds: plane-wave spectrum; docs/methods/antenna")},
    {told("x_ohm", "Reactance added", Unit::ohm, 0, "trim takes it out")},
    {told("swr", "SWR once trimmed", Unit::none, 1, "against 50 ohm")},
    {told("zenith_dbi", "Gain straight up", Unit::decibel, 1, "in dBi, ground absorption counted", Better::more)},
    {told("lobe_deg", "Lowest lobe", Unit::degree, 0, "over a good mirror: asin(wave / 4 h)")},
    {told("height_waves", "Height", Unit::wavelength, 2, "over the wavelength")},
};
std::string height(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kHeightInputs, in); !trouble.empty()) return trouble;
  const double waves = in[1] / antenna::wavelength_m(in[0]);
  constexpr double kLowest = 0.01, kHighest = 2, kFreeSpaceOhm = 72.2;
  if (waves < kLowest || waves > kHighest) return "outside what was tested: 0.01 to 2 wavelengths above the ground";
  const antenna::Ground ground{in[2], in[3] / 1000};
  const auto change = antenna::ground_change_ohm(ground, in[0], waves, 0.4866);
  out[0] = kFreeSpaceOhm + change.real();
  out[1] = change.imag();
  out[2] = antenna::swr_of_resistance(out[0]);
  out[3] = antenna::zenith_gain_dbi(ground, in[0], waves);
  out[4] = sky::lowest_lobe_deg(in[0], in[1]);
  out[5] = waves;
  constexpr double kLow = 0.1;
  return waves < kLow ? "low: much of the power warms the ground; military prints are 1 to 4 dB kinder" : "";
}

const Check kChecks[] = {
    {"antenna.rule_or_theory", "Rule of thumb or theory?", Link::antenna, kRuleInputs, kRuleResults,
     "Measure the metal with a calliper. Neither knows the trees: cut long, hang it, read the dip, trim.",
     "Balanis, Antenna Theory, sec. 8.5; 468/f: common practice; docs/methods/antenna", rule_or_theory},
    {"antenna.any_length", "Which lengths to keep away from?", Link::antenna, kAvoidInputs, kAvoidResults,
     "For a wire behind a 9:1 and a matching unit: the bands it shall serve, and its length. Its end and box carry "
     "high voltage: out of reach.",
     "multiples of half a wave, end effect once: common practice; docs/methods/antenna", avoid},
    {"antenna.height", "What does its height do to a dipole?", Link::antenna, kHeightInputs, kHeightResults,
     "Height of the wire over open, level ground; soil by the looks of it. A real park is within 20 % of it.",
     "plane-wave spectrum over a half-space; docs/methods/antenna", height},
};

}  // namespace

std::span<const Check> theory_checks() { return kChecks; }

}  // namespace gs::antenna_rows
