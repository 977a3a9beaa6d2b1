// The battery's inputs, and the lead's between battery and radio.
#include "core/battery/chemistry.h"
#include "core/battery/pack.h"
#include "core/outing/checks_power.h"
#include "core/outing/lever_rows.h"
#include "core/outing/plan.h"
#include "core/radio/lead.h"

namespace gs {
namespace {

const battery::Chemistry* chemistry_of(const Plan& plan) {
  return plan.has(L::battery_chemistry) ? &battery::chemistries()[std::size_t(plan[L::battery_chemistry])]
                                        : nullptr;
}
double usual_max_a(const Plan& plan) {
  const battery::Chemistry* chemistry = chemistry_of(plan);
  return chemistry ? battery::usual_max_current_a(*chemistry, plan[L::battery_capacity_ah])
                   : plan[L::battery_capacity_ah];
}
double usual_cut_off_v(const Plan& plan) {
  const battery::Chemistry* chemistry = chemistry_of(plan);
  return chemistry ? chemistry->empty_v : plan[L::battery_chemistry];
}
double usual_reserve(const Plan& plan) {
  const battery::Chemistry* chemistry = chemistry_of(plan);
  return chemistry ? chemistry->usual_reserve_pct : plan[L::battery_chemistry];
}
double usual_wire(const Plan&) {
  const auto wires = radio::wires();
  for (std::size_t i = 0; i < wires.size(); ++i)
    if (wires[i].gauge == 12) return double(i);
  return 0;
}
double kit_battery(const Plan& plan) { return plan.kit.battery_ah; }
double usual_spare(const Plan& plan) { return plan.kit.spare_ah > 0 ? plan.kit.spare_ah : 0; }
double twenty(const Plan&) { return 20; }
double hundred(const Plan&) { return 100; }
double none(const Plan&) { return 0; }
double usual_contacts_ohm(const Plan&) { return 0.005; }
double usual_lead_m(const Plan&) { return 1.5; }

const LeverRow kRows[] = {
    {L::battery_chemistry,
     {.key = "battery.chemistry",
      .name = "Chemistry",
      .link = Link::battery,
      .kind = Kind::choice,
      .options = chemistry_options,
      .source = "printed on the battery"}},
    {L::battery_capacity_ah,
     {.key = "battery.capacity_ah",
      .name = "Battery capacity",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .least = 0.5,
      .most = 200,
      .step = 0.5,
      .scale = Scale::log,
      .usual = kit_battery,
      .source = "printed on the battery; usual value: the first battery of the kit list that says"}},
    {L::battery_max_current_a,
     {.key = "battery.max_current_a",
      .name = "Battery's current limit",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 1,
      .least = 0.1,
      .most = 500,
      .step = 1,
      .scale = Scale::log,
      .usual = usual_max_a,
      .source = "usual value: the chemistry's usual current for its size, catalogue of chemistries"}},
    {L::battery_cut_off_v,
     {.key = "battery.cut_off_v",
      .name = "Battery's cut-off",
      .link = Link::battery,
      .unit = Unit::volt,
      .digits = 1,
      .least = 4,
      .most = 14,
      .step = 0.1,
      .usual = usual_cut_off_v,
      .source =
          "usual value: the chemistry's empty voltage, where a pack's protection opens or its cells are harmed"}},
    {L::battery_temperature_c,
     {.key = "battery.temperature_c",
      .name = "Battery temperature",
      .link = Link::battery,
      .unit = Unit::celsius,
      .least = -30,
      .most = 50,
      .step = 1,
      .usual = twenty,
      .source = "usual value: 20 C; a battery in a bag follows the air slowly"}},
    {L::battery_health_pct,
     {.key = "battery.health_pct",
      .name = "Battery health",
      .link = Link::battery,
      .unit = Unit::percent,
      .least = 10,
      .most = 100,
      .step = 1,
      .usual = hundred,
      .source = "usual value: as new; measure it by a discharge at home"}},
    {L::battery_reserve_pct,
     {.key = "battery.reserve_pct",
      .name = "Reserve",
      .link = Link::battery,
      .unit = Unit::percent,
      .least = 0,
      .most = 90,
      .step = 5,
      .usual = usual_reserve,
      .source = "usual value: the chemistry's, common practice"}},
    {L::battery_used_ah,
     {.key = "battery.used_ah",
      .name = "Used so far",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .least = 0,
      .most = 200,
      .step = 0.1,
      .usual = none,
      .source = "usual value: full when one arrives"}},
    {L::spare_capacity_ah,
     {.key = "spare.capacity_ah",
      .name = "Spare battery",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .least = 0,
      .most = 200,
      .step = 0.5,
      .usual = usual_spare,
      .source =
          "usual value: the further batteries of the kit list that say, else none carried; the same kind, full"}},
    {L::lead_wire,
     {.key = "lead.wire",
      .name = "DC lead wire",
      .link = Link::radio,
      .kind = Kind::choice,
      .options = wire_options,
      .usual = usual_wire,
      .source = "usual value: 12 AWG, as supplied with 100 W sets; common practice"}},
    {L::lead_length_m,
     {.key = "lead.length_m",
      .name = "DC lead length",
      .link = Link::radio,
      .unit = Unit::metre,
      .digits = 1,
      .least = 0,
      .most = 20,
      .step = 0.1,
      .usual = usual_lead_m,
      .source = "usual value: one way, battery beside the set; common practice"}},
    {L::lead_contacts_ohm,
     {.key = "lead.contacts_ohm",
      .name = "Fuse and plugs",
      .link = Link::radio,
      .unit = Unit::ohm,
      .digits = 4,
      .least = 0,
      .most = 0.2,
      .step = 0.001,
      .usual = usual_contacts_ohm,
      .source = "usual value: 5 milliohm, two pairs of sound plugs, a fuse and its holder; common practice, from "
                "memory"}},
    {L::lead_temperature_c,
     {.key = "lead.temperature_c",
      .name = "DC lead temperature",
      .link = Link::radio,
      .unit = Unit::celsius,
      .least = -40,
      .most = 105,
      .step = 1,
      .usual = twenty,
      .source =
          "usual value: 20 C, that of the wire tables; a lead in the sun or hot from its current resists more"}},
};

}  // namespace

std::span<const LeverRow> power_levers() { return kRows; }

}  // namespace gs
