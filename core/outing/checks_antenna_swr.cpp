// SWR of a resistance, transformers, voltages, and the width of a resonance.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/antenna/match.h"
#include "core/outing/checks_antenna.h"

namespace gs::antenna_rows {
namespace {

double fifty(const Plan&) { return antenna::kReferenceOhm; }
double end_of_a_half_wave(const Plan&) { return 2450; }
double fifty_ohm_in_siemens(const Plan&) { return 1 / antenna::kReferenceOhm; }

constexpr Lever kPower = asked("power_w", "Power", Unit::watt, 1, 0.01, 2000, 1, "as in the plan");

// ---- What SWR is this resistance? ----

const CheckInput kResistanceInputs[] = {
    {asked("resistance_ohm", "Resistance at resonance", Unit::ohm, 1, 0.1, 20000, 1,
           "read off an analyser or a bridge")},
    {asked("reference_ohm", "Line", Unit::ohm, 0, 10, 1000, 1, "usual value: 50 ohm", fifty)},
};
const CheckResult kResistanceResults[] = {
    {told("swr", "SWR", Unit::none, 2, "the larger over the smaller", Better::less), 3, 2},
    {told("reflected_pct", "Comes back", Unit::percent, 1, "((s - 1) / (s + 1))^2", Better::less)},
    {told("impedance_ratio", "Transformer, impedance to 1", Unit::none, 1, "what turns one into the other")},
    {told("turns_ratio", "Transformer, turns to 1", Unit::none, 2, "root of the impedance ratio")},
    {told("quarter_wave_line_ohm", "Or a quarter wave of line of", Unit::ohm, 1, "root of the product")},
};
std::string resistance(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kResistanceInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::swr_of_resistance(in[0], in[1]);
  out[1] = 100 * antenna::reflected_share(out[0]);
  out[2] = antenna::transformer_ratio(in[0], in[1]).impedance;
  out[3] = antenna::transformer_ratio(in[0], in[1]).turns;
  out[4] = antenna::quarter_wave_line_ohm(in[0], in[1]);
  return {};
}

// ---- What line turns one resistance into another? ----

const CheckInput kLineInputs[] = {
    {asked("antenna_ohm", "At the antenna", Unit::ohm, 1, 0.1, 20000, 1, "a resistance, at resonance")},
    {asked("radio_ohm", "At the radio", Unit::ohm, 1, 0.1, 20000, 1, "a resistance")},
};
const CheckResult kLineResults[] = {
    {told("line_ohm", "Line of an odd quarter wave", Unit::ohm, 1, "root of the product")},
    {told("from_50_pct", "Off 50 ohm", Unit::percent, 0,
          "lines are made to a few per cent; more than 10: look closer")},
};
std::string turning_line(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kLineInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::quarter_wave_line_ohm(in[0], in[1]);
  out[1] = 100 * std::abs(out[0] / antenna::kReferenceOhm - 1);
  return {};
}

// ---- How much comes back? ----

const CheckInput kBackInputs[] = {
    {kPower},
    {asked("swr", "SWR", Unit::none, 2, 1, 1000, 0.1, "where the power is read")},
};
const CheckResult kBackResults[] = {
    {told("back_w", "Comes back", Unit::watt, 2, "((s - 1) / (s + 1))^2 of the forward power")},
    {told("forward_less_back_w", "Forward less back", Unit::watt, 2, "what the load takes")},
    {told("back_pct", "Share that comes back", Unit::percent, 1,
          "not lost: line and set send most of it out again")},
};
std::string comes_back(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kBackInputs, in); !trouble.empty()) return trouble;
  const double share = antenna::reflected_share(in[1]);
  out[0] = in[0] * share;
  out[1] = in[0] - out[0];
  out[2] = 100 * share;
  return "what comes back is not lost: only the line's own loss is";
}

// ---- What voltage stands on the wire? ----

const CheckInput kVoltageInputs[] = {
    {kPower},
    {asked("resistance_ohm", "Resistance there", Unit::ohm, 0, 0.1, 20000, 50,
           "usual value: the end of a half-wave wire behind 49:1", end_of_a_half_wave)},
};
const CheckResult kVoltageResults[] = {
    {told("rms_v", "Voltage, rms", Unit::volt, 0, "root of power times resistance")},
    {told("peak_v", "Voltage, peak", Unit::volt, 0, "1.414 times rms")},
    {told("peak_to_peak_v", "Voltage, peak to peak", Unit::volt, 0, "twice the peak")},
};
std::string voltage(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kVoltageInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::voltage_rms_v(in[0], in[1]);
  out[1] = out[0] * std::numbers::sqrt2;
  out[2] = 2 * out[1];
  return "keep people and wet branches off the wire's ends: a touch burns";
}

// ---- Does this transformer stand the power? ----

const CheckInput kCoreInputs[] = {
    {asked("core_siemens", "Conductance without load, siemens", Unit::none, 5, 1e-6, 1, 0.0005,
           "real part across the primary, the far side open")},
    {asked("loaded_siemens", "Conductance with load, siemens", Unit::none, 4, 1e-5, 1, 0.001,
           "usual value: matched to 50 ohm, 0.02", fifty_ohm_in_siemens)},
    {asked("heat_w", "Heat that it bears", Unit::watt, 1, 0.01, 200, 0.1, "judged from its size; may be left out")},
};
const CheckResult kCoreResults[] = {
    {told("core_pct", "Heats the core", Unit::percent, 0, "one conductance over the other", Better::less)},
    {told("loss_db", "Loss", Unit::decibel, 2, "the same in decibels", Better::less)},
    {told("bears_w", "Bears without pause", Unit::watt, 1, "heat over the share that heats", Better::more)},
};
std::string core_heat(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1)})
    if (!std::isfinite(in[i])) return needs(kCoreInputs[i].row);
  if (in[0] >= in[1]) return "the core alone cannot conduct as much as core and load together";
  const double share = antenna::core_share(in[0], in[1]);
  out[0] = 100 * share;
  out[1] = -10 * std::log10(1 - share);
  if (!std::isfinite(in[2])) return needs(kCoreInputs[2].row) + " for the power it bears";
  out[2] = in[2] / share;
  return {};
}

// ---- What does my transformer lose? ----

double usual_ratio(const Plan&) { return 49; }
const CheckInput kThroughInputs[] = {
    {asked("through_db", "Through-loss read", Unit::decibel, 2, 0, 60, 0.1,
           "from the 50 ohm side to the receiver, the resistor below in series")},
    {asked("ratio", "Impedance ratio", Unit::none, 1, 1, 200, 1, "square of the turns ratio; usual value: 49:1",
           usual_ratio)},
};
const CheckResult kThroughResults[] = {
    {told("loss_db", "Lost", Unit::decibel, 2, "reading less 10 log ratio; 0.4 good, 1 usual, 2 poor",
          Better::less)},
    {told("lost_pct", "Heats core and wire", Unit::percent, 0, "the same as a share of the power", Better::less)},
    {told("resistor_ohm", "Series resistor", Unit::ohm, 0, "ratio times 50 ohm less the receiver's 50")},
};
std::string through(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kThroughInputs, in); !trouble.empty()) return trouble;
  out[2] = antenna::series_resistor_ohm(in[1]);
  const double loss_db = antenna::transformer_loss_db(in[0], in[1]);
  constexpr double kReads = 0.1;  // what a simple instrument is good for
  if (loss_db < -kReads)
    return "less comes off than the ratio alone takes: resistor, ratio or calibration is wrong";
  out[0] = std::max(0.0, loss_db);
  out[1] = 100 * (1 - std::pow(10, -out[0] / 10));
  return "good within the instrument's 0.1 dB; hold it against another frequency";
}

// ---- How wide is the good part of the band? ----

constexpr Lever reading_at(std::string_view key, std::string_view name) {
  return asked(key, name, Unit::megahertz, 3, 0.5, 60, 0.01, "below, near and above the least SWR");
}
constexpr Lever reading_of(std::string_view key, std::string_view name) {
  return asked(key, name, Unit::none, 1, 1, 100, 0.1, "read with the matching unit bypassed");
}
const CheckInput kBandInputs[] = {
    {reading_at("first_mhz", "First frequency")},           {reading_of("first_swr", "SWR there")},
    {reading_at("second_mhz", "Second frequency")},         {reading_of("second_swr", "SWR at the second")},
    {reading_at("third_mhz", "Third frequency")},           {reading_of("third_swr", "SWR at the third")},
    {reading_at("fourth_mhz", "Fourth frequency, if any")}, {reading_of("fourth_swr", "SWR at the fourth")},
    {reading_at("fifth_mhz", "Fifth frequency, if any")},   {reading_of("fifth_swr", "SWR at the fifth")},
};
const CheckResult kBandResults[] = {
    {told("resonant_mhz", "Resonates at", Unit::megahertz, 3,
          "series circuit through the readings; docs/methods/antenna")},
    {told("lowest_swr", "SWR there", Unit::none, 2, "series circuit through the readings", Better::less)},
    {told("low_mhz", "2:1 from", Unit::megahertz, 3, "series circuit through the readings")},
    {told("high_mhz", "2:1 to", Unit::megahertz, 3, "series circuit through the readings")},
    {told("width_mhz", "Width at 2:1", Unit::megahertz, 3, "wide on a short antenna is a sign of loss")},
    {told("q", "Q, line left out", Unit::none, 0,
          "slope of the reactance; with an SWR above 1 at the dip by the root of it more or less")},
};
std::string band(std::span<const double> in, std::span<double> out) {
  std::vector<antenna::SwrReading> readings;
  for (std::size_t i = 0; i < in.size(); i += 2) {
    const bool wanted = i < 6;
    if (wanted && !std::isfinite(in[i])) return needs(kBandInputs[i].row);
    if (std::isfinite(in[i]) && !std::isfinite(in[i + 1])) return needs(kBandInputs[i + 1].row);
    if (std::isfinite(in[i])) readings.push_back({in[i], in[i + 1]});
  }
  const antenna::SwrBand fitted = antenna::swr_band(readings);
  if (!std::isfinite(fitted.resonant_mhz))
    return "these readings show no dip: take one below, one near and one above the least SWR";
  out[0] = fitted.resonant_mhz;
  out[1] = fitted.lowest_swr;
  out[2] = fitted.low_mhz;
  out[3] = fitted.high_mhz;
  out[4] = fitted.width_mhz;
  out[5] = fitted.q;
  return fitted.width_mhz > 0 ? "" : "the SWR stays above 2 all over";
}

const Check kChecks[] = {
    {"antenna.swr_of_resistance", "What SWR is this resistance?", Link::antenna, kResistanceInputs,
     kResistanceResults,
     "Read the resistance where the reactance is nil. A low one on a short whip is a sign of low loss: match it, "
     "do not "
     "lengthen it.",
     "definition; docs/methods/antenna", resistance},
    {"antenna.turning_line", "What line turns one resistance into another?", Link::antenna, kLineInputs,
     kLineResults,
     "Read the resistance at both ends of the line, at resonance. An odd number of quarter waves turns them.",
     "quarter-wave line, Pozar ch. 2 (memory)", turning_line},
    {"antenna.comes_back", "How much comes back?", Link::antenna, kBackInputs, kBackResults,
     "Forward power and SWR of the same place.", "definition; docs/methods/antenna", comes_back},
    {"antenna.wire_voltage", "What voltage stands on the wire?", Link::antenna, kVoltageInputs, kVoltageResults,
     "Power that reaches the wire, and the resistance at that point.", "Ohm's law", voltage},
    {"antenna.transformer_heat", "Does this transformer stand the power?", Link::antenna, kCoreInputs, kCoreResults,
     "Read the admittance across the primary with the far side open: its real part heats the core. A flat SWR says "
     "nothing "
     "about it.",
     "power divides as the conductances do", core_heat},
    {"antenna.transformer_loss", "What does my transformer lose?", Link::antenna, kThroughInputs, kThroughResults,
     "A resistor in series with the high side into the receiver's 50 ohm, leads short; calibrate without both. "
     "Milliwatts only, no antenna on it.",
     "a divider takes 10 log ratio; docs/methods/antenna", through},
    {"antenna.swr_band", "How wide is the good part of the band?", Link::antenna, kBandInputs, kBandResults,
     "Read the SWR on three to five frequencies, one of them near the dip.",
     "series circuit: s + 1/s is a parabola in frequency; docs/methods/antenna", band},
};

}  // namespace

std::span<const Check> swr_checks() { return kChecks; }

}  // namespace gs::antenna_rows
