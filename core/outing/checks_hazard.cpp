// Power lines, thunder, and a hand on the wire.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/outing/checks_safety.h"
#include "core/safety/overhead.h"

namespace gs {
namespace {

std::span<const Option> voltage_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const safety::LineClearance& row : safety::line_clearances()) rows.push_back({row.key, row.name});
    return rows;
  }();
  return options;
}
double nothing(const Plan&) { return 0; }

constexpr Reading away_row(std::string_view key, std::string_view name, std::string_view source) {
  return {.key = key,
          .name = name,
          .link = Link::safety,
          .unit = Unit::metre,
          .digits = 1,
          .better = Better::less,
          .source = source};
}

// ---- How far from the power line? ----

// clang-format off
const CheckInput kLineInputs[] = {
    {{.key = "height_m", .name = "Height of the top", .link = Link::safety, .unit = Unit::metre, .digits = 1,
      .least = 0, .most = 100, .step = 0.5, .source = "mast, antenna and all"}},
    {{.key = "line_m", .name = "Longest loose line or wire", .link = Link::safety, .unit = Unit::metre, .digits = 1,
      .least = 0, .most = 200, .step = 1, .usual = nothing, .source = "thrown or raised; usual value: none"}},
    {{.key = "voltage", .name = "Voltage of the power line", .link = Link::safety, .kind = Kind::choice,
      .options = voltage_options, .usual = nothing, .source = "usual value: an ordinary line"}},
    {{.key = "distance_m", .name = "To the point under the nearest wire", .link = Link::safety, .unit = Unit::metre,
      .digits = 1, .least = 0, .most = 1000, .step = 0.5, .optional = true, .source = "paced out on the ground"}},
};
const CheckResult kLineResults[] = {
    {away_row("stay_off_m", "Stay off by", "the largest of the rules below; docs/methods/safety")},
    {away_row("falls_clear_m", "Fallen mast clears the wire from",
      "US question pool 2022-2026, T0B06; 29 CFR 1926.1408 Table A")},
    {away_row("twice_height_m", "Twice the height",
      "a utility's safety page, 1.5 to 2 times; Consumer Product Safety Commission release, 1.5 times")},
    {away_row("line_clears_m", "Loose line clears the wire from", "line and clearance: common practice")},
    // The clearance once more in hand is at ease: common practice.
    {{.key = "room_m", .name = "Room to spare", .link = Link::safety, .unit = Unit::metre, .digits = 1,
      .better = Better::more, .source = "distance less the largest rule; ease: 10 ft in hand, common practice"}, 0,
      3.048},
};
// clang-format on
std::string power_lines(std::span<const double> in, std::span<double> out) {
  for (std::size_t i = 0; i < 3; ++i)
    if (!std::isfinite(in[i])) return needs(kLineInputs[i].row);
  const double clearance_m = safety::line_clearances()[std::size_t(in[2])].clearance_m;
  const safety::StayOff stay = safety::stay_off_power_lines(in[0], in[1], clearance_m);
  out[0] = stay.stay_off_m;
  out[1] = stay.falls_clear_m;
  out[2] = stay.times_height_m;
  out[3] = stay.throw_clear_m;
  if (!std::isfinite(in[3])) return needs(kLineInputs[3].row) + " to see what is to spare";
  out[4] = in[3] - stay.stay_off_m;
  return {};
}

// ---- How far off is the thunder? ----

// clang-format off
const CheckInput kThunderInputs[] = {
    {{.key = "delay_s", .name = "Seconds from flash to thunder", .link = Link::safety, .digits = 0, .least = 0,
      .most = 120, .step = 1, .source = "counted"}},
    {{.key = "since_min", .name = "Since the last thunder", .link = Link::safety, .unit = Unit::minute, .digits = 0,
      .least = 0, .most = 1440, .step = 1, .usual = nothing, .source = "usual value: heard just now"}},
};
// clang-format on
constexpr std::string_view kThunderSource = "US National Weather Service lightning guidance, as reprinted";
// clang-format off
const CheckResult kThunderResults[] = {
    {{.key = "distance_km", .name = "Flash was away", .link = Link::safety, .unit = Unit::kilometre, .digits = 1,
      .better = Better::more, .source = "sound at 343 m/s"}},
    {{.key = "reach_km", .name = "Lightning reaches", .link = Link::safety, .unit = Unit::kilometre, .digits = 0,
      .source = kThunderSource}},
    {{.key = "wait_min", .name = "Stay inside for", .link = Link::safety, .unit = Unit::minute, .digits = 0,
      .better = Better::less, .source = kThunderSource}},
};
// clang-format on
std::string thunder(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kThunderInputs, in); !trouble.empty()) return trouble;
  out[0] = safety::thunder_distance_km(in[0]);
  out[1] = safety::kThunderReachKm;
  out[2] = std::max(0.0, safety::kAfterThunderMin - in[1]);
  return out[2] > 0 ? "thunder that you hear is near enough, whatever its distance: drop the line, touch no wire, "
                      "go in now"
                    : "";
}

// ---- What would a hand on the wire meet? ----

// clang-format off
const CheckInput kTouchInputs[] = {
    {{.key = "power_w", .name = "Power", .link = Link::safety, .unit = Unit::watt, .digits = 1, .least = 0.001,
      .most = 2000, .step = 1, .scale = Scale::log, .source = "what arrives there"}},
    {{.key = "resistance_ohm", .name = "Resistance at that point", .link = Link::safety, .unit = Unit::ohm,
      .digits = 0, .least = 1, .most = 100000, .step = 50, .scale = Scale::log,
      .source = "feed of an end-fed half wave: some 2000 to 5000 ohm, common practice"}},
};
// clang-format on
constexpr std::string_view kTouchSource = "square root of power times resistance; sine wave";
// clang-format off
const CheckResult kTouchResults[] = {
    {{.key = "rms_v", .name = "Voltage", .link = Link::safety, .unit = Unit::volt, .digits = 0,
      .better = Better::less, .source = kTouchSource}},
    {{.key = "peak_v", .name = "Peak voltage", .link = Link::safety, .unit = Unit::volt, .digits = 0,
      .better = Better::less, .source = kTouchSource}},
};
// clang-format on
std::string touch(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kTouchInputs, in); !trouble.empty()) return trouble;
  out[0] = safety::touch_voltage_v(in[0], in[1]);
  out[1] = std::numbers::sqrt2 * out[0];
  return {};
}

// clang-format off
const Check kChecks[] = {
    {"safety.power_lines", "How far from the power line?", Link::safety, kLineInputs, kLineResults,
      "Stand at the foot of the mast and look all round. Pace to the point under the nearest wire. Take every wire "
      "as bare and live.", "US question pool 2022-2026, T0B06; 29 CFR 1926.1408 Table A; docs/methods/safety",
      power_lines},
    {"safety.thunder", "How far off is the thunder?", Link::safety, kThunderInputs, kThunderResults,
      "Count the seconds from the flash to its thunder. Start the wait again at every thunder.",
      "US National Weather Service lightning guidance, as reprinted", thunder},
    {"safety.touch_voltage", "What would a hand on the wire meet?", Link::safety, kTouchInputs, kTouchResults,
      "The power that arrives at that point and the resistance there, both at resonance. Never try it.",
      "power and resistance; docs/methods/safety", touch},
};
// clang-format on

}  // namespace

std::span<const Check> hazard_checks() { return kChecks; }

}  // namespace gs
