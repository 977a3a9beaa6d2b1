// One wire on many bands, wires for many bands, and a wire bent in its middle.
#include <cmath>

#include "core/antenna/bent.h"
#include "core/antenna/emf.h"
#include "core/antenna/feed.h"
#include "core/antenna/length.h"
#include "core/antenna/match.h"
#include "core/outing/checks_antenna.h"

namespace gs::antenna_rows {
namespace {

double thin_wire(const Plan&) { return antenna::Setup{}.wire_diameter_m; }
double right_angle(const Plan&) { return 90; }

// ---- How long for several bands? ----

constexpr Lever band_row(std::string_view key, std::string_view name, std::string_view source) {
  return asked(key, name, Unit::megahertz, 3, 1.8, 54, 0.05, source);
}
const CheckInput kBandsInputs[] = {
    {kKind},
    {wire_row("usual value: bare; insulated wire 3 % shorter, second hand")},
    {band_row("first_mhz", "Band", "the middle of what you use")},
    {band_row("second_mhz", "Second band", "may be left out")},
    {band_row("third_mhz", "Third band", "may be left out")},
    {band_row("fourth_mhz", "Fourth band", "may be left out")},
    {band_row("fifth_mhz", "Fifth band", "may be left out")},
};
constexpr std::string_view kRuleSource = "the trade's rule of the kind; docs/methods/antenna";
const CheckResult kBandsResults[] = {
    {told("first_m", "Wire for the band", Unit::metre, 2, kRuleSource)},
    {told("second_m", "For the second", Unit::metre, 2, kRuleSource)},
    {told("third_m", "For the third", Unit::metre, 2, kRuleSource)},
    {told("fourth_m", "For the fourth", Unit::metre, 2, kRuleSource)},
    {told("fifth_m", "For the fifth", Unit::metre, 2, kRuleSource)},
    {told("all_m", "All of them", Unit::metre, 1, "their sum, 3 % longer to trim: common practice")},
};
std::string bands(std::span<const double> in, std::span<double> out) {
  for (std::size_t i = 0; i < 3; ++i)
    if (!std::isfinite(in[i])) return needs(kBandsInputs[i].row);
  const antenna::Kind& kind = antenna::kinds()[std::size_t(in[0])];
  const antenna::Wire wire = in[1] > 0 ? antenna::Wire::insulated : antenna::Wire::bare;
  if (!(kind.cut_constant_m_mhz > 0)) return "no length of this kind is resonant by itself";
  constexpr double kStartLonger = 1.03;
  double all_m = 0;
  for (std::size_t i = 0; i < 5; ++i) {
    if (!std::isfinite(in[2 + i])) continue;
    out[i] = antenna::cut_length_m(kind, in[2 + i], wire);
    all_m += kStartLonger * out[i];
  }
  out[5] = all_m;
  return "side by side at one feed point they pull each other: trim the longest first, then the next, then look "
         "again";
}

// ---- Where does an end-fed half wave serve again? ----

constexpr std::size_t kOrders = 8;
const CheckInput kAgainInputs[] = {
    {asked("first_mhz", "Lowest dip", Unit::megahertz, 3, 0.5, 60, 0.01, "read on the wire as it hangs")},
    {asked("wanted_mhz", "Wanted there", Unit::megahertz, 3, 0.5, 60, 0.01,
           "may be left out: what moves when the wire is trimmed to it")},
};
constexpr std::string_view kAgainSource =
    "(n - 0.05) / 0.95 times the lowest: end effect once a wire; handbook, memory";
const CheckResult kAgainResults[] = {
    {told("second_mhz", "Two half waves", Unit::megahertz, 3, kAgainSource)},
    {told("third_mhz", "Three half waves", Unit::megahertz, 3, kAgainSource)},
    {told("fourth_mhz", "Four half waves", Unit::megahertz, 3, kAgainSource)},
    {told("fifth_mhz", "Five half waves", Unit::megahertz, 3, kAgainSource)},
    {told("sixth_mhz", "Six half waves", Unit::megahertz, 3, kAgainSource)},
    {told("seventh_mhz", "Seven half waves", Unit::megahertz, 3, kAgainSource)},
    {told("eighth_mhz", "Eight half waves", Unit::megahertz, 3, kAgainSource)},
    {told("over_pct", "Four, over four times", Unit::percent, 1, "how far it is from an exact multiple")},
    {told("fourth_moves_mhz", "Trim moves four by", Unit::megahertz, 3, "as many times what the lowest moves")},
};
std::string again(std::span<const double> in, std::span<double> out) {
  if (!std::isfinite(in[0])) return needs(kAgainInputs[0].row);
  for (std::size_t n = 2; n <= kOrders; ++n)
    out[n - 2] = antenna::higher_resonance_mhz(in[0], int(n), antenna::FedAt::end);
  out[7] = 100 * (out[2] / (4 * in[0]) - 1);
  if (!std::isfinite(in[1]))
    return "trees and a bent wire shift each of them by 1 to 2 %: read them where it hangs";
  out[8] = antenna::higher_resonance_mhz(in[1], 4, antenna::FedAt::end) - out[2];
  return "one cut moves them all: settle on the band that matters most";
}

// ---- What does the angle of a V change? ----

const CheckInput kAngleInputs[] = {
    {kFrequency},
    {asked("between_deg", "Between the legs, degrees", Unit::none, 0, 45, 180, 5,
           "180 is a straight dipole; usual value: a right angle, the least that is advised", right_angle)},
    {asked("diameter_m", "Thickness of the wire", Unit::metre, 4, 0.0002, 0.05, 0.0002,
           "the metal alone; usual value: 1 mm, common practice", thin_wire)},
};
constexpr std::string_view kBentSource = "induced EMF of a bent wire in free space; docs/methods/antenna";
const CheckResult kAngleResults[] = {
    {told("theory_m", "Whole wire, theory", Unit::metre, 2, kBentSource)},
    {told("longer_pct", "Longer than straight", Unit::percent, 1, kBentSource)},
    {told("rule_m", "Whole wire, rule of thumb", Unit::metre, 2,
          "468/f feet, whatever the angle: common practice")},
    {told("r_ohm", "Resistance, clear of the ground", Unit::ohm, 0,
          "72 ohm of a straight wire, less by the angle")},
    {told("swr", "SWR then", Unit::none, 1, "against 50 ohm, trimmed", Better::less)},
};
std::string angle(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kAngleInputs, in); !trouble.empty()) return trouble;
  const double radius_waves = in[2] / 2 / antenna::wavelength_m(in[0]);
  const antenna::Bend bend = antenna::bend_of(radius_waves, in[1]);
  if (!std::isfinite(bend.length_ratio)) return "too thick for thin-wire theory at this frequency";
  constexpr double kStraightOhm = 72.2;
  out[0] = antenna::half_wave_m(in[0], in[2]) * bend.length_ratio;
  out[1] = 100 * (bend.length_ratio - 1);
  out[2] = antenna::cut_length_m(*antenna::find_kind("inverted_v"), in[0]);
  out[3] = kStraightOhm * bend.resistance_ratio;
  out[4] = antenna::swr_of_resistance(out[3]);
  return "low ends shorten it by 2 to 5 % again, and ground lifts the resistance by some 5 ohm: cut long and trim";
}

const Check kChecks[] = {
    {"antenna.bands", "How long for several bands?", Link::antenna, kBandsInputs, kBandsResults,
     "The middle of each band that you use, lowest first. Hang the wires apart at their ends.",
     "468/f, 234/f and 1005/f feet: common practice; docs/methods/antenna", bands},
    {"antenna.end_fed_again", "Where does an end-fed half wave serve again?", Link::antenna, kAgainInputs,
     kAgainResults,
     "Read its lowest dip at the box, the wire where it will hang. Box, far end and counterpoise carry high "
     "voltage: "
     "nobody touches them.",
     "handbook length of a wire of n half waves (memory); docs/methods/antenna", again},
    {"antenna.v_angle", "What does the angle of a V change?", Link::antenna, kAngleInputs, kAngleResults,
     "Angle between the legs at the top: from leg, height and ends (how far do the legs of a V reach?), or "
     "sighted.",
     "sine current on a bent wire; docs/methods/antenna", angle},
};

}  // namespace

std::span<const Check> band_checks() { return kChecks; }

}  // namespace gs::antenna_rows
