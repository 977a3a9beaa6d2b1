// Small questions about charging: from a charger, from the sun, in the cold.
#include "core/battery/charge.h"
#include "core/outing/power_rows.h"

namespace gs {
namespace {

using namespace power;

constexpr Lever kMissing{.key = "missing_pct",
                         .name = "To be put back",
                         .link = Link::battery,
                         .unit = Unit::percent,
                         .digits = 0,
                         .least = 0,
                         .most = 100,
                         .step = 5,
                         .usual = [](const Plan&) { return 50.0; },
                         .source = "of the battery's capacity; usual value: half"};
constexpr std::string_view kNoCharge = "too cold: it must not be charged until its cells are warmer than its limit";

// ---- How long does charging take? ----

const CheckInput kChargerInputs[] = {
    {kCapacity},
    {kMissing},
    {{.key = "charger_a",
      .name = "Charger's current",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 2,
      .least = 0.01,
      .most = 200,
      .step = 0.1,
      .scale = Scale::log,
      .source = "the charger's label"}},
    {kChemistry},
    {kTemperature},
};
const CheckResult kChargerResults[] = {
    {{.key = "missing_ah",
      .name = "To be put back",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .source = "share of the capacity"}},
    {{.key = "bulk_h",
      .name = "At full current",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .better = Better::less,
      .source = "charge times the chemistry's charge factor over current"}},
    {{.key = "whole_h",
      .name = "Until really full",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .better = Better::less,
      .source = "with the slow last part; docs/methods/power"}},
    {{.key = "most_a",
      .name = "Most it should get",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 1,
      .source = "the chemistry's charging limits at this temperature; docs/methods/power"}},
};
std::string charger(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kChargerInputs, in); !trouble.empty()) return trouble;
  const battery::Chemistry& kind = chemistry_of(in[3]);
  out[0] = in[0] * in[1] / 100;
  out[3] = in[0] * battery::most_charge_a_per_ah(kind, in[4]);
  if (out[3] <= 0) return std::string(kNoCharge);
  const battery::ChargeTime time = battery::charge_time(kind, out[0], in[2]);
  out[1] = time.bulk_h;
  out[2] = time.bulk_h + time.tail_h;
  if (in[2] > out[3] * (1 + 1e-9)) return "this charger gives more than the battery should get at this temperature";
  return {};
}

// ---- How long does the sun take? ----

const CheckInput kSunInputs[] = {
    {kCapacity},
    {kMissing},
    {{.key = "panel_w",
      .name = "Panel's rating",
      .link = Link::battery,
      .unit = Unit::watt,
      .digits = 1,
      .least = 0.1,
      .most = 2000,
      .step = 1,
      .scale = Scale::log,
      .source = "the panel's label"}},
    {{.key = "measured_w",
      .name = "Measured power",
      .link = Link::battery,
      .unit = Unit::watt,
      .digits = 1,
      .least = 0,
      .most = 2000,
      .step = 0.1,
      .optional = true,
      .source = "volts times amperes into the battery"}},
    {{.key = "measured_a",
      .name = "Measured current",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 2,
      .least = 0,
      .most = 200,
      .step = 0.01,
      .optional = true,
      .source = "into the battery; counts before all else"}},
    // A panel maker's own field factor is 2.5: two fifths of the rating arrive.
    {{.key = "gives_pct",
      .name = "Really gives",
      .link = Link::battery,
      .unit = Unit::percent,
      .digits = 0,
      .least = 1,
      .most = 120,
      .step = 5,
      .usual = [](const Plan&) { return 40.0; },
      .source = "usual value: a panel maker's field factor of 2.5 for voltage mismatch, heat and aim; well aimed "
                "with a tracking controller about 75"}},
    {{.key = "pack_v",
      .name = "Battery voltage",
      .link = Link::battery,
      .unit = Unit::volt,
      .digits = 1,
      .least = 1,
      .most = 60,
      .step = 0.1,
      .optional = true,
      .source = "not given: the chemistry's nominal voltage"}},
    {{.key = "sun_h",
      .name = "Full sun a day",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .least = 0,
      .most = 24,
      .step = 0.5,
      .usual = [](const Plan&) { return 4.0; },
      .source = "usual value: a fair day of the warm half year; common practice"}},
    {kChemistry},
    {kTemperature},
};
const CheckResult kSunResults[] = {
    {{.key = "of_rating_pct",
      .name = "Of its rating",
      .link = Link::battery,
      .unit = Unit::percent,
      .digits = 0,
      .better = Better::more,
      .source = "measured power over rating, or the share assumed"}},
    {{.key = "charging_a",
      .name = "Charging current",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::more,
      .source = "measured, or power over the battery's voltage"}},
    {{.key = "ideal_h",
      .name = "By the label",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .better = Better::less,
      .source = "energy over the panel's rating, nothing lost"}},
    {{.key = "plain_h",
      .name = "Sun needed, charge alone",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .better = Better::less,
      .source = "charge over charging current"}},
    {{.key = "whole_h",
      .name = "Sun needed",
      .link = Link::battery,
      .unit = Unit::hour,
      .digits = 1,
      .better = Better::less,
      .source = "with the chemistry's charge factor; docs/methods/power"}},
    {{.key = "daily_ah",
      .name = "In one day",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .better = Better::more,
      .source = "charging current times hours of full sun over the charge factor"}},
};
std::string sun(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kSunInputs, in); !trouble.empty()) return trouble;
  const battery::Chemistry& kind = chemistry_of(in[8]);
  const double pack_v = std::isfinite(in[6]) ? in[6] : kind.nominal_v;
  const double missing_ah = in[0] * in[1] / 100;
  out[2] = missing_ah * pack_v / in[2];
  out[0] = std::isfinite(in[3]) ? 100 * in[3] / in[2] : std::isfinite(in[4]) ? 100 * in[4] * pack_v / in[2] : in[5];
  out[1] = std::isfinite(in[4]) ? in[4] : battery::panel_current_a(in[2], out[0], pack_v);
  if (battery::most_charge_a_per_ah(kind, in[9]) <= 0) return std::string(kNoCharge);
  out[5] = out[1] * in[7] / kind.charge_factor;
  if (out[1] <= 0) return "no current: no sun will fill it";
  out[3] = missing_ah / out[1];
  out[4] = battery::charge_time(kind, missing_ah, out[1]).bulk_h;
  return {};
}

// ---- May it be charged in this cold? ----

const CheckInput kColdInputs[] = {
    {kCapacity},
    {kChemistry},
    {{.key = "temperature_c",
      .name = "Battery temperature",
      .link = Link::battery,
      .unit = Unit::celsius,
      .digits = 0,
      .least = -40,
      .most = 60,
      .step = 1,
      .source = "of the cells, not of the air: a cold pack warms slowly"}},
};
const CheckResult kColdResults[] = {
    // Judged so that no charging at all fails and the gentle rate is tight.
    {{.key = "most_pct",
      .name = "Most charging current, of capacity",
      .link = Link::battery,
      .unit = Unit::percent,
      .digits = 0,
      .better = Better::more,
      .source = "makers' charging tables; docs/methods/power"},
     1,
     20},
    {{.key = "most_a",
      .name = "Most charging current",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 1,
      .better = Better::more,
      .source = "the same in amperes"}},
    {{.key = "charge_above_c",
      .name = "Charge only above",
      .link = Link::battery,
      .unit = Unit::celsius,
      .digits = 0,
      .source = "makers' charging limits; some start at 5 C"}},
    {{.key = "gives_pct",
      .name = "Gives, of its capacity",
      .link = Link::battery,
      .unit = Unit::percent,
      .digits = 0,
      .better = Better::more,
      .source = "makers' temperature tables, gentle load; docs/methods/power"}},
};
std::string cold(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kColdInputs, in); !trouble.empty()) return trouble;
  const battery::Chemistry& kind = chemistry_of(in[1]);
  const double most = battery::most_charge_a_per_ah(kind, in[2]);
  out[0] = 100 * most;
  out[1] = in[0] * most;
  out[2] = kind.charge_from_c;
  out[3] = 100 * battery::at(kind.capacity_at_c, in[2]);
  if (most <= 0) return std::string(kNoCharge);
  if (in[2] < kind.charge_from_c + 5) return "some makers start 5 °C higher: the pack's own sheet counts";
  return {};
}

const Check kChecks[] = {
    {"battery.charger", "How long does charging take?", Link::battery, kChargerInputs, kChargerResults,
     "Capacity from the battery's label, current from the charger's. Use a charger made for this chemistry.",
     "constant current, then constant voltage; docs/methods/power", charger},
    {"battery.sun", "How long does the sun take?", Link::battery, kSunInputs, kSunResults,
     "Measure the current into the battery in full sun, with the panel as it will stand.",
     "charge over current; a panel maker's field factor where nothing was measured; docs/methods/power", sun},
    {"battery.cold", "May it be charged in this cold?", Link::battery, kColdInputs, kColdResults,
     "Measure at the cells, inside the case if you can: the air warms before the pack does.",
     "makers' charging tables; docs/methods/power", cold},
};

}  // namespace

std::span<const Check> charge_checks() { return kChecks; }

}  // namespace gs
