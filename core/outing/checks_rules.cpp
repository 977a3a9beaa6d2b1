// May I transmit here?
#include <algorithm>
#include <cmath>

#include "core/outing/checks_safety.h"
#include "core/outing/rules_join.h"
#include "core/outing/rules_rows.h"

namespace gs {
namespace {

std::span<const Option> mode_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const rules::ModeWidth& row : rules::mode_widths()) rows.push_back({row.key, row.name});
    return rows;
  }();
  return options;
}
double first_option(const Plan&) { return 0; }

enum : std::size_t { kInRegion, kInClass, kInMhz, kInMode, kInWidth };
// clang-format off
const CheckInput kInputs[] = {
    {{.key = "region", .name = "Region", .link = Link::safety, .kind = Kind::choice, .options = region_options,
      .source = "ITU Region where you stand"}},
    {{.key = "class", .name = "Licence class", .link = Link::safety, .kind = Kind::choice, .options = licence_options,
      .source = "US licence classes, 47 CFR 97.301"}},
    {{.key = "frequency_mhz", .name = "Frequency", .link = Link::safety, .unit = Unit::megahertz, .digits = 5,
      .least = 1, .most = 150, .step = 0.001, .source = "what the dial shows"}},
    {{.key = "mode", .name = "Mode", .link = Link::safety, .kind = Kind::choice, .options = mode_options,
      .usual = first_option, .source = "usual value: SSB, the widest that most people send"}},
    {{.key = "width_mhz", .name = "Width of the signal", .link = Link::safety, .unit = Unit::megahertz, .digits = 6,
      .least = 0.00001, .most = 0.02, .step = 0.0001, .optional = true,
      .source = "not set: the mode's own, 47 CFR 2.202(g), 97.303(h), question pool 2024-2028 E1A01"}},
};
// clang-format on
constexpr Reading edge_row(std::string_view key, std::string_view name, std::string_view source) {
  return {.key = key, .name = name, .link = Link::safety, .unit = Unit::megahertz, .digits = 4, .source = source};
}
constexpr std::string_view kEdges = "47 CFR 97.301, 97.303, 97.305, 97.307(b)";
// clang-format off
const CheckResult kResults[] = {
    // Sets and readings are off by some 100 Hz: common practice.
    {{.key = "room_khz", .name = "Room on the dial", .link = Link::safety, .unit = Unit::kilohertz, .digits = 2, .better = Better::more,
      .source = "47 CFR 97.307(b): the whole signal inside; ease: 0.1 kHz, common practice"}, 0, 0.1},
    {edge_row("signal_low_mhz", "Signal from", "dial, sideband and width")},
    {edge_row("signal_high_mhz", "Signal to", "dial, sideband and width")},
    {edge_row("dial_low_mhz", "Lowest dial", kEdges)},
    {edge_row("dial_high_mhz", "Highest dial", kEdges)},
    {edge_row("segment_low_mhz", "Segment from", kEdges)},
    {edge_row("segment_high_mhz", "Segment to", kEdges)},
    {{.key = "power_limit_w", .name = "Power limit", .link = Link::safety, .unit = Unit::watt, .digits = 2,
      .source = "47 CFR 97.313"}},
};
// clang-format on

std::string may_transmit(std::span<const double> in, std::span<double> out) {
  for (std::size_t i = 0; i < kInWidth; ++i)
    if (!std::isfinite(in[i])) return needs(kInputs[i].row);
  const rules::Region region = region_at(in[kInRegion]);
  const bool other = in[kInClass] >= double(kLicencesOfTheTable);
  const rules::ModeWidth& mode = rules::mode_widths()[std::size_t(in[kInMode])];
  const double width_khz = std::isfinite(in[kInWidth]) ? 1000 * in[kInWidth] : 0;
  const rules::Answer answer =
      other ? rules::within_region(region, in[kInMhz], mode, width_khz)
            : rules::may_transmit(region, licence_at(in[kInClass]), in[kInMhz], mode, width_khz);
  out[0] = answer.room_khz;
  out[1] = answer.signal_low_mhz;
  out[2] = answer.signal_high_mhz;
  out[3] = answer.nearest.dial_low_mhz;
  out[4] = answer.nearest.dial_high_mhz;
  out[5] = answer.nearest.low_mhz;
  out[6] = answer.nearest.high_mhz;
  if (!std::isfinite(answer.room_khz)) return "this class has no place for so wide a signal of this mode";
  if (!answer.allowed) {
    if (!other) out[7] = limit_near(answer, region, licence_at(in[kInClass]), in[kInMhz]).limit_w;
    return std::string(why_not(answer.why, licence_options()[std::size_t(in[kInClass])].name));
  }
  if (other) return "within the Region's edges; what your licence allows there, and how much power, it alone says";
  const rules::PowerLimit power = limit_near(answer, region, licence_at(in[kInClass]), in[kInMhz]);
  out[7] = power.limit_w;
  return power.erp ? "the power limit here is radiated power over a half-wave dipole" : "";
}

// clang-format off
const Check kChecks[] = {
    {"rules.may_transmit", "May I transmit here?", Link::safety, kInputs, kResults,
      "Dial, mode and class. The segments are those of US licences in each ITU Region: your own licence and the "
      "rules of the place decide, and a band plan may ask for more.",
      "47 CFR 97.301, 97.303, 97.305, 97.307, 97.313, text of 2026-09-23; docs/methods/rules", may_transmit},
};
// clang-format on

}  // namespace

std::span<const Check> rules_checks() { return kChecks; }

}  // namespace gs
