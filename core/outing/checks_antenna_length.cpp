// How long to cut, how to trim, and what else a wire does with its length.
#include <cmath>

#include "core/antenna/feed.h"
#include "core/outing/checks_antenna.h"

namespace gs::antenna_rows {
namespace {

double third(const Plan&) { return 3; }

constexpr Lever kWire =
    wire_row("usual value: bare, as the trade's rules have it; insulated wire 3 % shorter, second hand");
constexpr Lever kLength = asked("length_m", "Length now", Unit::metre, 2, 0.1, 200, 0.1, "measured along the wire");

// ---- How long do I cut it? ----

// A wire is cut this much longer than the rule and trimmed: 2 to 3 %, common practice.
constexpr double kStartLonger = 1.03;

const CheckInput kCutInputs[] = {{kKind}, {kFrequency}, {kWire}};
const CheckResult kCutResults[] = {
    {told("length_m", "Cut length", Unit::metre, 2, "the trade's rule of the kind; docs/methods/antenna")},
    {told("half_m", "Half of it", Unit::metre, 2, "one leg of a dipole or V")},
    {told("start_m", "Cut to start with", Unit::metre, 2, "3 % longer, then trimmed: common practice")},
    {told(
        "total_wire_m", "All wire to carry", Unit::metre, 1,
        "with sixteen radials of a tenth of a wave, four raised ones, or a counterpoise, where the kind has them")},
};
std::string cut_length(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kCutInputs, in); !trouble.empty()) return trouble;
  const antenna::Kind& kind = antenna::kinds()[std::size_t(in[0])];
  antenna::Setup setup;
  setup.wire = in[2] > 0 ? antenna::Wire::insulated : antenna::Wire::bare;
  out[0] = antenna::cut_length_m(kind, in[1], setup.wire);
  if (!std::isfinite(out[0])) return "a loaded whip is not cut to length: its coil brings it to resonance";
  out[1] = out[0] / 2;
  out[2] = out[0] * kStartLonger;
  out[3] = antenna::total_wire_m(kind, in[1], setup);
  return {};
}

// ---- Where does this wire resonate? ----

const CheckInput kResonanceInputs[] = {{kKind}, {kLength}, {kWire}};
const CheckResult kResonanceResults[] = {
    {told("frequency_mhz", "Resonance", Unit::megahertz, 3,
          "the trade's rule turned round; surroundings move it by 2 to 4 %")},
};
std::string resonance(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kResonanceInputs, in); !trouble.empty()) return trouble;
  const antenna::Kind& kind = antenna::kinds()[std::size_t(in[0])];
  out[0] = antenna::cut_frequency_mhz(kind, in[1], in[2] > 0 ? antenna::Wire::insulated : antenna::Wire::bare);
  return std::isfinite(out[0]) ? "" : "a loaded whip's length does not say where it resonates: its coil does";
}

// ---- How much do I cut off? ----

constexpr double kFewPerCent = 0.06;

const CheckInput kTrimInputs[] = {
    {kLength},
    {asked("resonant_mhz", "Resonates at", Unit::megahertz, 3, 0.5, 60, 0.01, "where the SWR is least")},
    {asked("wanted_mhz", "Wanted", Unit::megahertz, 3, 0.5, 60, 0.01, "as in the plan")},
};
const CheckResult kTrimResults[] = {
    {told("new_length_m", "New length", Unit::metre, 2, "length x frequency stays; docs/methods/antenna")},
    {told("change_m", "Change in all", Unit::metre, 3, "below 0: cut or fold back; above 0: add")},
    {told("each_end_m", "Change at each end", Unit::metre, 3, "half of it, for a wire fed in the middle")},
    {told("khz_per_cm", "kHz for a centimetre", Unit::none, 1, "frequency over whole length")},
};
std::string trim(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kTrimInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::trimmed_length_m(in[0], in[1], in[2]);
  out[1] = out[0] - in[0];
  out[2] = out[1] / 2;
  out[3] = antenna::khz_per_cm(in[0], in[1]);
  if (std::abs(out[1]) > kFewPerCent * in[0]) return "a large step: go half of it, measure again, then the rest";
  return {};
}

// ---- I cut some off: how much more? ----

const CheckInput kTrimOnInputs[] = {
    {asked("taken_off_m", "Taken off", Unit::metre, 3, 0.001, 20, 0.01, "the first cut, of wire or whip")},
    {asked("before_mhz", "Resonance before", Unit::megahertz, 3, 0.5, 60, 0.01, "where the SWR was least")},
    {asked("after_mhz", "Resonance after", Unit::megahertz, 3, 0.5, 60, 0.01, "where the SWR is least now")},
    {asked("wanted_mhz", "Wanted", Unit::megahertz, 3, 0.5, 60, 0.01, "as in the plan")},
};
const CheckResult kTrimOnResults[] = {
    {told("more_m", "More to take off", Unit::metre, 3,
          "below 0: put back. What the first cut did foretells the next")},
};
std::string trim_on(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kTrimOnInputs, in); !trouble.empty()) return trouble;
  if (!(in[2] > in[1])) return "a cut raises resonance: one of the two readings, before or after, is to be doubted";
  out[0] = antenna::further_change_m(in[0], in[1], in[2], in[3]);
  return {};
}

// ---- Where is the third resonance? ----

const CheckInput kHigherInputs[] = {
    {asked("first_mhz", "First resonance", Unit::megahertz, 3, 0.5, 60, 0.01, "read on a wire fed in the middle")},
    {asked("order", "Which one", Unit::none, 0, 3, 9, 2, "3, 5, 7 or 9: fed at a current maximum again", third)},
    {asked("measured_mhz", "Measured there", Unit::megahertz, 3, 1, 600, 0.01, "may be left out")},
};
const CheckResult kHigherResults[] = {
    {told("expected_mhz", "Expected at", Unit::megahertz, 3,
          "end effect counts once: (n - 0.05) / 0.95 times the first; surroundings take off 1 to 2 %")},
    {told("expected_ratio", "Expected ratio", Unit::none, 3, "to the first resonance")},
    {told("measured_ratio", "Measured ratio", Unit::none, 3, "to the first resonance")},
};
std::string higher(std::span<const double> in, std::span<double> out) {
  if (!std::isfinite(in[0])) return needs(kHigherInputs[0].row);
  if (!std::isfinite(in[1])) return needs(kHigherInputs[1].row);
  out[0] = antenna::higher_resonance_mhz(in[0], in[1] == std::floor(in[1]) ? int(in[1]) : 0);
  if (!std::isfinite(out[0])) return "only odd resonances feed low in the middle: 3, 5, 7 or 9";
  out[1] = out[0] / in[0];
  if (!std::isfinite(in[2])) return needs(kHigherInputs[2].row) + " to compare";
  out[2] = in[2] / in[0];
  return {};
}

// ---- How long is half a wave of line? ----

const CheckInput kLineInputs[] = {
    {kFrequency},
    {asked("velocity_factor", "Velocity factor", Unit::none, 2, 0.3, 1, 0.01, "printed by the line's maker")},
};
const CheckResult kLineResults[] = {
    {told("half_m", "Half wave of line", Unit::metre, 2, "c x velocity factor / 2 f; no end effect inside a line")},
    {told("quarter_m", "Quarter wave of line", Unit::metre, 2, "c x velocity factor / 4 f")},
};
std::string line_lengths(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kLineInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::wavelength_m(in[0], in[1]) / 2;
  out[1] = out[0] / 2;
  return {};
}

const Check kChecks[] = {
    {"antenna.cut_length", "How long do I cut it?", Link::antenna, kCutInputs, kCutResults,
     "Pick the kind and the middle of what you use. Cut the longer figure, hang it where it will hang, read where "
     "the SWR "
     "is least and trim.",
     "468/f, 234/f and 1005/f feet: common practice; docs/methods/antenna", cut_length},
    {"antenna.resonates_at", "Where does this wire resonate?", Link::antenna, kResonanceInputs, kResonanceResults,
     "Measure the whole wire: both legs of a dipole, all round a loop, the upright alone of a vertical.",
     "468/f, 234/f and 1005/f feet: common practice; docs/methods/antenna", resonance},
    {"antenna.trim", "How much do I cut off?", Link::antenna, kTrimInputs, kTrimResults,
     "Read where the SWR is least with the antenna where it will hang. Not for a loaded whip: ask how much more "
     "instead.",
     "length x frequency stays; docs/methods/antenna", trim},
    {"antenna.trim_on", "I cut some off: how much more?", Link::antenna, kTrimOnInputs, kTrimOnResults,
     "Read where the SWR is least before and after a small cut. Works for whips and bent wires too.",
     "what the first cut did, straight in 1/f; docs/methods/antenna", trim_on},
    {"antenna.higher_resonance", "Where does it resonate again?", Link::antenna, kHigherInputs, kHigherResults,
     "Read the lowest resonance of a dipole, then the next one with a low SWR.",
     "handbook length of a wire of n half waves (memory); docs/methods/antenna", higher},
    {"antenna.line_lengths", "How long is half a wave of line?", Link::antenna, kLineInputs, kLineResults,
     "Take the velocity factor from the line's data. A matched line needs no special length.",
     "velocity factor; docs/methods/antenna", line_lengths},
};

}  // namespace

std::span<const Check> length_checks() { return kChecks; }

}  // namespace gs::antenna_rows
