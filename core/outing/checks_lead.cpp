// Small questions about the DC lead: drop, wire, resistance, fuse.
#include <limits>

#include "core/outing/power_rows.h"
#include "core/radio/fuse.h"
#include "core/radio/lead.h"

namespace gs {
namespace {

using namespace power;

constexpr Lever kCurrent{.key = "current_a",
                         .name = "Current",
                         .link = Link::radio,
                         .unit = Unit::ampere,
                         .digits = 1,
                         .least = 0.01,
                         .most = 200,
                         .step = 0.5,
                         .scale = Scale::log,
                         .source = "key-down; of several sets on one lead the sum"};

// ---- What does this lead take? ----

const CheckInput kDropInputs[] = {{kCurrent}, {kOneWay}, {kWire}, {kWireTemperature}, {kContacts}, {kSupply}};
const CheckResult kDropResults[] = {
    {{.key = "drop_v",
      .name = "Voltage drop",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::less,
      .source = "ASTM B258 wire, IEC 60028 copper, both conductors; docs/methods/power"}},
    // 3 % is the marine trade's figure for what matters, 10 % for the rest (ABYC E-11, from memory).
    {{.key = "drop_pct",
      .name = "Of the supply",
      .link = Link::radio,
      .unit = Unit::percent,
      .digits = 1,
      .better = Better::less,
      .source = "limit 3 %: boat wiring practice for what matters; ease 2 %: common practice"},
     3,
     2},
    {{.key = "lead_ohm",
      .name = "Resistance",
      .link = Link::radio,
      .unit = Unit::ohm,
      .digits = 3,
      .better = Better::less,
      .source = "both conductors, fuse and plugs"}},
    {{.key = "lost_w",
      .name = "Warms the lead",
      .link = Link::radio,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::less,
      .source = "current squared times resistance"}},
};
std::string drop(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kDropInputs, in); !trouble.empty()) return trouble;
  const radio::Wire& wire = radio::wires()[std::size_t(in[2])];
  out[2] = radio::lead_ohm({wire.gauge, in[1], in[3], in[4]});
  out[0] = in[0] * out[2];
  out[1] = 100 * out[0] / in[5];
  out[3] = in[0] * out[0];
  if (in[0] > wire.carries_a)
    return "this wire carries " + say_quantity(wire.carries_a, Unit::ampere, 0) +
           " at most: it would get hot, and no fuse can protect it";
  return {};
}

// ---- Which wire is the thinnest that will do? ----

const CheckInput kThinnestInputs[] = {
    {kCurrent},
    {kOneWay},
    {{.key = "most_v",
      .name = "May be lost",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 2,
      .least = 0.01,
      .most = 10,
      .step = 0.05,
      .scale = Scale::log,
      .source = "the person's own figure"}},
    {kWireTemperature},
    {kContacts},
};
const CheckResult kThinnestResults[] = {
    {{.key = "wire_awg",
      .name = "Thinnest wire, AWG",
      .link = Link::radio,
      .digits = 0,
      .source = "the wire catalogue, even sizes; a smaller number is thicker"}},
    {{.key = "drop_v",
      .name = "Voltage drop",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::less,
      .source = "both conductors, fuse and plugs; docs/methods/power"}},
    {{.key = "thinner_v",
      .name = "One size thinner would lose",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::less,
      .source = "the next even size"}},
};
std::string thinnest(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kThinnestInputs, in); !trouble.empty()) return trouble;
  radio::Lead lead{0, in[1], in[3], in[4]};
  const radio::Wire* wire = radio::thinnest_wire(lead, in[0], in[2]);
  if (!wire) return "no wire of the catalogue does this: shorten the lead or allow more loss";
  lead.gauge = wire->gauge;
  out[0] = wire->gauge;
  out[1] = in[0] * radio::lead_ohm(lead);
  lead.gauge += 2;
  out[2] = in[0] * radio::lead_ohm(lead);
  if (out[2] <= in[2]) return "a thinner one would lose no more than allowed, but does not carry this current";
  return {};
}

// ---- How much resistance may there be? ----

const CheckInput kResistanceInputs[] = {
    {{.key = "resting_v",
      .name = "Battery at rest",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 2,
      .least = 1,
      .most = 60,
      .step = 0.1,
      .source = "read with nothing on, some minutes after use"}},
    {{.key = "minimum_v",
      .name = "Minimum supply",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 1,
      .least = 1,
      .most = 60,
      .step = 0.1,
      .source = "where the set stops, or its own data"}},
    {{.key = "current_a",
      .name = "Key-down current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 1,
      .least = 0.01,
      .most = 200,
      .step = 0.5,
      .scale = Scale::log,
      .source = "read with a steady carrier"}},
};
const CheckResult kResistanceResults[] = {
    {{.key = "allowed_ohm",
      .name = "May be in all",
      .link = Link::radio,
      .unit = Unit::ohm,
      .digits = 3,
      .better = Better::more,
      .source = "Ohm's law: battery, lead, fuse and plugs together"}},
    {{.key = "drop_v",
      .name = "May be lost",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::more,
      .source = "battery at rest less minimum supply"}},
};
std::string resistance(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kResistanceInputs, in); !trouble.empty()) return trouble;
  if (in[0] <= in[1]) return "the battery stands at or below the minimum already, with nothing on";
  out[0] = radio::allowed_ohm(in[0], in[1], in[2]);
  out[1] = in[0] - in[1];
  return {};
}

// ---- Which fuse? ----

const CheckInput kFuseInputs[] = {
    {kCurrent},
    {{.key = "wire",
      .name = "Thinnest wire behind the fuse",
      .link = Link::radio,
      .kind = Kind::choice,
      .options = wire_options,
      .optional = true,
      .source = "the wire catalogue"}},
};
const CheckResult kFuseResults[] = {
    {{.key = "least_a",
      .name = "At least",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 1,
      .source = "current over 0.75: a fuse maker's application text, 25 C"}},
    {{.key = "fuse_a",
      .name = "Fuse",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 1,
      .source = "next size of blade fuse; never more than the wire carries"}},
    {{.key = "carries_a",
      .name = "The wire carries",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 0,
      .better = Better::more,
      .source = "boat wiring practice, 60 C insulation, from memory; docs/methods/power"}},
};
std::string fuse(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kFuseInputs, in); !trouble.empty()) return trouble;
  const bool known = std::isfinite(in[1]);
  const double carries_a =
      known ? radio::wires()[std::size_t(in[1])].carries_a : std::numeric_limits<double>::infinity();
  const radio::Fuse found = radio::fuse_for(in[0], carries_a);
  out[0] = found.least_a;
  out[2] = carries_a;
  if (found.fit == radio::FuseFit::none_so_large) return "no blade fuse is that large";
  if (found.fit == radio::FuseFit::too_thin)
    return "no fuse does both: this current needs one of " +
           say_quantity(found.size_a, Unit::ampere, digits_needed(found.size_a, 1)) +
           ", which the wire does not carry. Take thicker wire";
  out[1] = found.size_a;
  if (!known) return "right only if every wire behind it carries that much; give the thinnest one to see";
  return {};
}

const Check kChecks[] = {
    {"radio.lead_drop", "What does this lead take?", Link::radio, kDropInputs, kDropResults,
     "Length one way, from the battery's post to the set's plug. To measure: volts at both ends while sending.",
     "Ohm's law with tabulated copper; docs/methods/power", drop},
    {"radio.lead_wire", "Which wire is the thinnest that will do?", Link::radio, kThinnestInputs, kThinnestResults,
     "Length one way; key-down current of the set, or of all sets on the lead together.",
     "Ohm's law with tabulated copper; docs/methods/power", thinnest},
    {"radio.lead_resistance", "How much resistance may there be?", Link::radio, kResistanceInputs,
     kResistanceResults,
     "Volts at the battery with nothing on; volts at which the set stops, from its data or seen.", "Ohm's law",
     resistance},
    {"radio.fuse", "Which fuse?", Link::radio, kFuseInputs, kFuseResults,
     "Steady current through it, and the thinnest wire behind it. It sits at the battery, in the positive lead. "
     "The "
     "set maker's own fuse counts first.",
     "a fuse maker's application text; boat wiring practice; docs/methods/power", fuse},
};

}  // namespace

std::span<const Check> lead_checks() { return kChecks; }

}  // namespace gs
