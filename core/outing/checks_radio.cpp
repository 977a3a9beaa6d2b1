// Small questions about what a set draws.
#include <limits>
#include <vector>

#include "core/outing/power_rows.h"
#include "core/radio/current.h"

namespace gs {
namespace {

using namespace power;

constexpr Lever power_row(std::string_view key, std::string_view name, std::string_view source) {
  return {.key = key,
          .name = name,
          .link = Link::radio,
          .unit = Unit::watt,
          .digits = 1,
          .least = 0.1,
          .most = 2000,
          .step = 1,
          .scale = Scale::log,
          .source = source};
}
constexpr Lever third_power_row() {
  Lever row = power_row("third_w", "A third power", "one in between shows how well the law fits this set");
  row.optional = true;
  return row;
}
constexpr Lever current_row(std::string_view key, std::string_view name, bool optional, std::string_view source) {
  return {.key = key,
          .name = name,
          .link = Link::radio,
          .unit = Unit::ampere,
          .digits = 2,
          .least = 0,
          .most = 200,
          .step = 0.1,
          .optional = optional,
          .source = source};
}

// ---- What does the set draw in this mode? ----

const CheckInput kDrawInputs[] = {
    {power_row("full_power_w", "Radio's full power", "the set's own data")},
    {power_row("transmit_power_w", "Transmit power", "peak envelope power; the set's own data")},
    {{.key = "mode",
      .name = "Mode",
      .link = Link::radio,
      .kind = Kind::choice,
      .options = mode_options,
      .source = "the mode catalogue"}},
    {{.key = "transmit_share_pct",
      .name = "Transmit share",
      .link = Link::radio,
      .unit = Unit::percent,
      .digits = 0,
      .least = 0,
      .most = 100,
      .step = 5,
      .usual = [](const Plan&) { return 30.0; },
      .source = "usual value: calling and answering 40 to 50, mostly listening 10 to 20; common practice"}},
    {current_row("full_power_a", "Full-power current", true, "not given: usual for a set of this power")},
    {current_row("keyed_idle_a", "Keyed idle current", true, "not given: usual for a set of this power")},
    {current_row("receive_a", "Receive current", true, "not given: usual for a set of this power")},
};
const CheckResult kDrawResults[] = {
    {{.key = "key_down_a",
      .name = "Key-down current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "idle plus the root of the power; docs/methods/power"}},
    {{.key = "sending_a",
      .name = "Current while sending",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "the mode's share of the current above idle; docs/methods/power"}},
    {{.key = "average_a",
      .name = "Average current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "receive and transmit by their share of the time"}},
    {{.key = "average_w",
      .name = "Average radio power",
      .link = Link::radio,
      .unit = Unit::watt,
      .digits = 1,
      .source = "power times the mode's duty times transmit share; FCC OET Bulletin 65 Supplement B, table 2"}},
};
std::string draw(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kDrawInputs, in); !trouble.empty()) return trouble;
  radio::SetCurrents set = radio::usual_currents(in[0]);
  if (std::isfinite(in[4])) {
    set.keyed_idle_a *= in[4] / set.full_power_a;  // a set that draws more idles higher, too
    set.full_power_a = in[4];
  }
  if (std::isfinite(in[5])) set.keyed_idle_a = in[5];
  if (std::isfinite(in[6])) set.receive_a = in[6];
  if (set.keyed_idle_a > set.full_power_a) return "Keyed idle current is above Full-power current";
  const radio::Mode& mode = radio::modes()[std::size_t(in[2])];
  out[0] = radio::key_down_a(set, in[1]);
  out[1] = radio::transmit_a(set, in[1], mode);
  out[2] = radio::average_a(set.receive_a, out[1], in[3] / 100);
  out[3] = in[1] * mode.average_power_share * in[3] / 100;
  if (in[1] > in[0]) return "Transmit power is above Radio's full power";
  return {};
}

// ---- What do two or three readings say about other powers? ----

const CheckInput kReadingsInputs[] = {
    {power_row("low_w", "Low power", "the set's own power meter, or a better one")},
    {current_row("low_a", "Current at low power", false, "key-down into a dummy load")},
    {power_row("high_w", "High power", "the set's own power meter, or a better one")},
    {current_row("high_a", "Current at high power", false, "key-down into a dummy load")},
    {power_row("full_power_w", "Radio's full power", "the set's own data")},
    {power_row("wanted_w", "Power wanted", "any power of this set")},
    {third_power_row()},
    {current_row("third_a", "Current at the third power", true, "key-down into a dummy load")},
};
const CheckResult kReadingsResults[] = {
    {{.key = "wanted_a",
      .name = "Current at the power wanted",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "idle plus the root of the power; docs/methods/power"}},
    {{.key = "keyed_idle_a",
      .name = "Keyed idle current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "where the readings' line meets no power"},
     0,
     0,
     L::radio_keyed_idle_current_a},
    {{.key = "full_power_a",
      .name = "Full-power current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "the same line at full power"},
     0,
     0,
     L::radio_full_power_current_a},
    // The law misses three measured sets by up to 3.5 %: beyond twice that a reading is doubtful.
    {{.key = "worst_miss_pct",
      .name = "The law misses a reading by",
      .link = Link::radio,
      .unit = Unit::percent,
      .digits = 1,
      .better = Better::less,
      .source =
          "least squares over three readings; limit and ease: twice and once what three measured sets miss by"},
     7,
     3.5},
};
std::string readings_work(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kReadingsInputs, in); !trouble.empty()) return trouble;
  if (in[0] >= in[2]) return "High power must be above Low power";
  std::vector<radio::KeyedReading> readings{{in[0], in[1]}, {in[2], in[3]}};
  const bool third = std::isfinite(in[6]) && std::isfinite(in[7]);
  if (third) readings.push_back({in[6], in[7]});
  const radio::FromReadings found = radio::from_readings(readings, in[4]);
  if (!found.sound)
    return (third ? std::string("these readings cannot all be true")
                  : std::string("these two readings cannot both be true")) +
           ": current grows with the root of power, from an idle "
           "current above 0";
  out[0] = radio::key_down_a({in[4], found.full_power_a, found.keyed_idle_a, 0}, in[5]);
  out[1] = found.keyed_idle_a;
  out[2] = found.full_power_a;
  if (!third) return needs(kReadingsInputs[6].row) + " with its current to see how well the law fits this set";
  out[3] = 100 * found.worst_miss;
  return {};
}

// ---- How much of the battery's power goes out? ----

const CheckInput kEfficiencyInputs[] = {
    {power_row("power_w", "Radio power", "read off a power meter")},
    {{.key = "supply_v",
      .name = "Supply",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 1,
      .least = 1,
      .most = 60,
      .step = 0.1,
      .source = "at the set, while sending"}},
    {{.key = "current_a",
      .name = "Current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .least = 0.01,
      .most = 200,
      .step = 0.1,
      .source = "key-down, at that power"}},
    {current_row("full_power_a", "Full-power current", true, "to compare with; the set's own data")},
};
const CheckResult kEfficiencyResults[] = {
    {{.key = "input_w",
      .name = "From the battery",
      .link = Link::radio,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::less,
      .source = "volts times amperes"}},
    {{.key = "efficiency_pct",
      .name = "Goes out",
      .link = Link::radio,
      .unit = Unit::percent,
      .digits = 1,
      .better = Better::more,
      .source = "radio power over power from the battery"}},
    {{.key = "heat_w",
      .name = "Warms the set",
      .link = Link::radio,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::less,
      .source = "what does not go out"}},
    {{.key = "of_full_pct",
      .name = "Of full-power current",
      .link = Link::radio,
      .unit = Unit::percent,
      .digits = 0,
      .better = Better::less,
      .source = "current over full-power current"}},
};
std::string efficiency(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kEfficiencyInputs, in); !trouble.empty()) return trouble;
  if (in[0] > in[1] * in[2]) return "more goes out than the battery gives: one of the three cannot be true";
  out[0] = in[1] * in[2];
  out[1] = radio::efficiency_pct(in[0], in[1], in[2]);
  out[2] = out[0] - in[0];
  if (!(in[3] > 0)) return needs(kEfficiencyInputs[3].row) + " to compare with";
  out[3] = 100 * in[2] / in[3];
  return {};
}

const Check kChecks[] = {
    {"radio.draw", "What does the set draw in this mode?", Link::radio, kDrawInputs, kDrawResults,
     "Two readings make it the set's own: key-down at full power, and keyed on SSB without a word.",
     "current by the root of power; docs/methods/power", draw},
    {"radio.two_readings", "What do two or three readings say about other powers?", Link::radio, kReadingsInputs,
     kReadingsResults,
     "Into a dummy load, key down for some seconds at a low and at a high power, and once in between; read power "
     "and current each time.",
     "current by the root of power; docs/methods/power", readings_work},
    {"radio.efficiency", "How much of the battery's power goes out?", Link::radio, kEfficiencyInputs,
     kEfficiencyResults, "Key down into a dummy load; read volts at the set, amperes in its lead and watts out.",
     "power out over power in; docs/methods/power", efficiency},
};

}  // namespace

std::span<const Check> radio_checks() { return kChecks; }

}  // namespace gs
