// Small questions about the battery: how big, how long, what voltage is left, what a test says.
#include <algorithm>

#include "core/battery/charge.h"
#include "core/outing/power_rows.h"
#include "core/radio/current.h"
#include "core/radio/lead.h"

namespace gs {
namespace {

using namespace power;

// ---- How big a battery does this need? ----

const CheckInput kSizeInputs[] = {
    {kReceive},
    {kTransmit},
    {kTransmitShare},
    {kKeyed},
    {kEvery},
    {{.key = "operating_h",
      .name = "Operating time",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .least = 0,
      .most = 1000,
      .step = 0.5,
      .source = "on the air, listening included"}},
    {kChemistry},
    {kReserve},
    {kHealth},
    {kTemperature},
};
const CheckResult kSizeResults[] = {
    {{.key = "average_a",
      .name = "Average current",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "receive and transmit by their share of the time"}},
    {{.key = "used_ah",
      .name = "Charge taken",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 2,
      .better = Better::less,
      .source = "average current times time"}},
    {{.key = "listening_ah",
      .name = "Taken by listening alone",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 2,
      .better = Better::less,
      .source = "receive current all the time"}},
    {{.key = "plain_ah",
      .name = "Label by plain division",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .better = Better::less,
      .source = "charge taken over what is not reserved"}},
    {{.key = "needed_ah",
      .name = "Label needed",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .better = Better::less,
      .source = "with rate, temperature and health; docs/methods/power"}},
};
std::string size(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kSizeInputs, in); !trouble.empty()) return trouble;
  const SendingShare sending = sending_share(in[2], in[3], in[4]);
  if (!sending.trouble.empty()) return sending.trouble;
  const battery::Chemistry& kind = chemistry_of(in[6]);
  const battery::Pack pack{.chemistry = &kind,
                           .capacity_ah = 1,
                           .health_pct = in[8],
                           .temperature_c = in[9],
                           .reserve_pct = reserve_or_usual_pct(in[7], kind)};
  out[0] = radio::average_a(in[0], in[1], sending.share);
  out[1] = out[0] * in[5];
  out[2] = in[0] * in[5];
  out[3] = out[1] / (1 - pack.reserve_pct / 100);
  out[4] = battery::needed_label_ah(pack, plain_load(in[0], in[1], sending.share), in[5]);
  return {};
}

// ---- How long does this pack last? ----

const CheckInput kLastsInputs[] = {
    {kCapacity},
    {kReceive},
    {kTransmit},
    {kTransmitShare},
    {kKeyed},
    {kEvery},
    {kChemistry},
    {kReserve},
    {kHealth},
    {kTemperature},
    {kUsed},
    {{.key = "spare_ah",
      .name = "Spare battery",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .least = 0,
      .most = 1000,
      .step = 0.5,
      .usual = zero,
      .source = "full, of the same kind; usual value: none"}},
};
const CheckResult kLastsResults[] = {
    {{.key = "average_a",
      .name = "Average current",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "receive and transmit by their share of the time"}},
    {{.key = "usable_ah",
      .name = "May be taken",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .better = Better::more,
      .source = "label with rate, temperature, health, less reserve; docs/methods/power"}},
    {{.key = "runtime_h",
      .name = "Runtime",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .better = Better::more,
      .source = "until the reserve or, for lead-acid, the empty voltage; docs/methods/power"}},
    {{.key = "listening_h",
      .name = "Runtime, only listening",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .better = Better::more,
      .source = "the same at the receive current"}},
};
std::string lasts(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kLastsInputs, in); !trouble.empty()) return trouble;
  const SendingShare sending = sending_share(in[3], in[4], in[5]);
  if (!sending.trouble.empty()) return sending.trouble;
  const battery::Chemistry& kind = chemistry_of(in[6]);
  const battery::Pack pack{.chemistry = &kind,
                           .capacity_ah = in[0],
                           .health_pct = in[8],
                           .temperature_c = in[9],
                           .reserve_pct = reserve_or_usual_pct(in[7], kind),
                           .used_ah = in[10]};
  out[0] = radio::average_a(in[1], in[2], sending.share);
  const auto with_spare_h = [&](const battery::Load& load) {
    battery::Pack second = pack;
    second.capacity_ah = in[11];
    second.used_ah = 0;
    return battery::hours_alone(pack, load) + (in[11] > 0 ? battery::hours_alone(second, load) : 0);
  };
  const battery::Load load = plain_load(in[1], in[2], sending.share);
  out[2] = with_spare_h(load);
  out[1] = battery::usable_ah(pack, load);
  out[3] = with_spare_h(plain_load(in[1], in[1], 1));
  if (out[0] <= 0) return "nothing is drawn, so no end can be named";
  if (in[1] <= 0) return "no current on receive: listening has no end";
  return {};
}

// ---- What voltage is left at key-down? ----

const CheckInput kKeyDownInputs[] = {
    {kCapacity},
    {kChemistry},
    {{.key = "charge_left_pct",
      .name = "Charge left",
      .link = Link::battery,
      .unit = Unit::percent,
      .digits = 0,
      .least = 0,
      .most = 100,
      .step = 5,
      .usual = [](const Plan&) { return 50.0; },
      .source = "usual value: half"}},
    {kHealth},
    {kTemperature},
    {{.key = "key_down_a",
      .name = "Key-down current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 1,
      .least = 0,
      .most = 100,
      .step = 0.5,
      .source = "the peak, read with a steady carrier"}},
    {{.key = "lasting_a",
      .name = "Average while sending",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 1,
      .least = 0,
      .most = 100,
      .step = 0.5,
      .optional = true,
      .source = "not given: the carrier lasts"}},
    {kWire},
    {kOneWay},
    {kWireTemperature},
    {kContacts},
    {{.key = "minimum_v",
      .name = "Minimum supply",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 1,
      .least = 3,
      .most = 30,
      .step = 0.1,
      .usual = [](const Plan&) { return 11.7; },
      .source = "usual value: 13.8 V less 15 %, as many sets are specified"}},
};
const CheckResult kKeyDownResults[] = {
    {{.key = "battery_v",
      .name = "At the battery",
      .link = Link::battery,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::more,
      .source = "resting voltage less what the current takes; docs/methods/power"}},
    {{.key = "lead_v",
      .name = "Lost in the lead",
      .link = Link::battery,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::less,
      .source = "both conductors, fuse and plugs; docs/methods/power"}},
    {{.key = "set_v",
      .name = "Supply at key-down",
      .link = Link::battery,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::more,
      .source = "at the battery, less what the lead takes"}},
    // 0.3 V is what one battery of a kind differs from another at half charge: common practice.
    {{.key = "margin_v",
      .name = "Above the minimum",
      .link = Link::battery,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::more,
      .source = "limit: the set's minimum; ease 0.3 V: common practice"},
     0,
     0.3},
};
std::string key_down(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kKeyDownInputs, in); !trouble.empty()) return trouble;
  const battery::Pack pack{
      .chemistry = &chemistry_of(in[1]), .capacity_ah = in[0], .health_pct = in[3], .temperature_c = in[4]};
  const double lasting_a = std::isfinite(in[6]) ? std::min(in[6], in[5]) : in[5];
  const radio::Lead lead{radio::wires()[std::size_t(in[7])].gauge, in[8], in[9], in[10]};
  // the plan's own law, rested at this charge and only just keyed
  const battery::Law law = battery::law_of(pack);
  const battery::Load load{
      .pause_a = 0, .sending_a = lasting_a, .key_down_a = in[5], .share = 1, .over_h = 0, .lead_ohm = 0};
  out[0] = battery::key_down_v(law, {.charge_ah = law.wells.capacity_ah * in[2] / 100, .lag_ah = 0}, load, 0);
  out[2] = radio::supply_v(out[0], in[5], radio::lead_ohm(lead));
  out[1] = out[0] - out[2];
  out[3] = out[2] - in[11];
  if (in[5] > battery::usual_max_current_a(*pack.chemistry, in[0]))
    return "this is more than a pack of this kind and size usually gives: see its own limit";
  return {};
}

// ---- What does a discharge test say? ----

const CheckInput kTestInputs[] = {
    {kCapacity},
    {{.key = "test_a",
      .name = "Current of the test",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 2,
      .least = 0.01,
      .most = 200,
      .step = 0.1,
      .scale = Scale::log,
      .source = "a lamp or another steady load"}},
    {{.key = "test_h",
      .name = "Time until empty",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 2,
      .least = 0,
      .most = 1000,
      .step = 0.1,
      .source = "from full to about 10.5 V, or to the pack's own cut-off"}},
    {{.key = "chemistry",
      .name = "Chemistry",
      .link = Link::battery,
      .kind = Kind::choice,
      .options = chemistry_options,
      .source = "the battery catalogue"}},
    {kTemperature},
    {{.key = "wanted_h",
      .name = "Time wanted",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 2,
      .least = 0.01,
      .most = 1000,
      .step = 0.5,
      .optional = true,
      .source = "at the current of the test"}},
};
const CheckResult kTestResults[] = {
    {{.key = "given_ah",
      .name = "Given at this current",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .better = Better::more,
      .source = "amperes times hours"}},
    {{.key = "sound_ah",
      .name = "A sound one gives",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .source = "the plan's own law at this current and temperature; docs/methods/power"}},
    // Four fifths of the rating is where makers call a battery worn out: common practice, from memory.
    {{.key = "health_pct",
      .name = "Battery health",
      .link = Link::battery,
      .unit = Unit::percent,
      .digits = 0,
      .better = Better::more,
      .source = "limit 60 %, ease 80 %: common practice, from memory"},
     60,
     80},
    {{.key = "wanted_ah",
      .name = "The time wanted takes",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .source = "amperes times hours"}},
    {{.key = "of_wanted_pct",
      .name = "Of the time wanted",
      .link = Link::battery,
      .unit = Unit::percent,
      .digits = 0,
      .better = Better::more,
      .source = "limit: the whole; ease a quarter more: common practice"},
     100,
     125},
};
std::string test(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kTestInputs, in); !trouble.empty()) return trouble;
  const battery::Chemistry& kind = chemistry_of(in[3]);
  out[0] = in[1] * in[2];
  out[1] = battery::usable_ah({.chemistry = &kind, .capacity_ah = in[0], .temperature_c = in[4]},
                              battery::steady(in[1]));
  out[2] = battery::health_from_test_pct(kind, in[0], in[1], in[2], in[4]);
  if (!std::isfinite(in[5])) return needs(kTestInputs[5].row) + " to compare with";
  out[3] = in[1] * in[5];
  out[4] = 100 * in[2] / in[5];
  return {};
}

const Check kChecks[] = {
    {"battery.size", "How big a battery does this need?", Link::battery, kSizeInputs, kSizeResults,
     "Read the current on receive and while sending off a meter in the supply lead.",
     "lead-acid by its kinetic law, others by charge counting; docs/methods/power", size},
    {"battery.lasts", "How long does this pack last?", Link::battery, kLastsInputs, kLastsResults,
     "Capacity from the label; the current on receive and while sending off a meter in the supply lead.",
     "lead-acid by its kinetic law, others by charge counting; docs/methods/power", lasts},
    {"battery.key_down", "What voltage is left at key-down?", Link::battery, kKeyDownInputs, kKeyDownResults,
     "Read the current with a steady carrier into a dummy load. Measure the voltage at the set's own plug while "
     "sending.",
     "resting voltage and resistance of the chemistry; docs/methods/power", key_down},
    {"battery.test", "What does a discharge test say?", Link::battery, kTestInputs, kTestResults,
     "Charge fully, let it rest, load it steadily and stop the clock at the cut-off voltage. Do not go below it.",
     "lead-acid by its kinetic law, others by charge counting; docs/methods/power", test},
};

}  // namespace

std::span<const Check> battery_checks() { return kChecks; }

}  // namespace gs
