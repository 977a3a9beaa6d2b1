#include "core/outing/findings_battery.h"

#include <cmath>

#include "core/outing/power_join.h"
#include "core/outing/quantity.h"

namespace gs {
namespace {

// 13.8 V and 15 % more: a 100 W set's specification as a broadcast script of March 2019 quotes it (second hand)
constexpr double kSetsTakeV = 13.8 * 1.15;
constexpr double kStrandedPct = 10;  // charge left behind that is worth a sentence
// Blocks of 81 to 89 Ah made for slow loads, under a changing load of 20 to 25 A: open workbook of a
// charge-estimation project, September 2019 to January 2020
constexpr double kTubularLeastA_per_Ah = 0.15, kTubularFloorV = 11.5;

using battery::Law;

void full_pack(const Law& law, const battery::Load& load, const Style& style, std::vector<Finding>& found) {
  const double rests_v = battery::rested_v(law, battery::at_start(law, load));
  if (rests_v <= kSetsTakeV) return;
  found.push_back({State::tight, "Full, this pack rests at " + say_quantity(rests_v, Unit::volt, 1, style) +
                                     " and stands higher fresh from its charger; sets made for 13.8 V commonly "
                                     "take no more than " +
                                     say_quantity(kSetsTakeV, Unit::volt, 1, style) +
                                     ". Read your set's own limit before you connect it."});
}

void cold(const Plan& plan, const battery::Chemistry& chemistry, const Style& style, std::vector<Finding>& found) {
  if (!plan.has(L::battery_temperature_c) || plan[L::battery_temperature_c] > chemistry.charge_from_c) return;
  found.push_back({State::tight, "As cold as this it must not be charged: warm it above " +
                                     say_quantity(chemistry.charge_from_c, Unit::celsius, 0, style) + " first."});
}

/// The set gives up while there is charge left: what is in the way is the voltage.
void stranded(const Plan& plan, const Law& law, const battery::Floors& floors, const battery::Load& load,
              const Style& style, std::vector<Finding>& found) {
  const battery::WellState start = battery::at_start(law, load);
  const battery::End end = battery::end_of(law, start, load, floors);
  if (end.by != battery::EndBy::minimum_supply || !std::isfinite(end.hours)) return;
  const double left_pct = battery::left_pct(law, battery::after(law, start, load, end.hours), load);
  if (left_pct < law.pack.reserve_pct + kStrandedPct) return;
  found.push_back({State::tight, "The set gives up at " +
                                     say_quantity(plan[L::radio_minimum_supply_v], Unit::volt, 1, style) +
                                     " with " + say_quantity(left_pct, Unit::percent, 0, style) +
                                     " still in the pack. Less power, a shorter or thicker lead, or a pack that "
                                     "holds its voltage better gets it out."});
}

void reserve_worth(const Law& law, const battery::Floors& floors, const battery::Load& load, const Style& style,
                   std::vector<Finding>& found) {
  if (!(law.pack.reserve_pct > 0)) return;
  const battery::WellState start = battery::at_start(law, load);
  const battery::End end = battery::end_of(law, start, load, floors);
  if (end.by != battery::EndBy::reserve) return;
  Law without = law;
  without.pack.reserve_pct = 0;
  const double more_h = battery::end_of(without, start, load, floors).hours - end.hours;
  if (!(more_h * 60 >= 1) || !std::isfinite(more_h)) return;
  found.push_back({State::none, "The reserve kept back is worth " +
                                    say_quantity(more_h * 60, Unit::minute, 0, style) + " more" +
                                    (law.chemistry->kinetic ? ", at the price of the battery's life." : ".")});
}

void tubular(const Plan& plan, const Law& law, const battery::Load& load, std::vector<Finding>& found) {
  if (!law.chemistry->kinetic || plan[L::radio_minimum_supply_v] < kTubularFloorV ||
      load.key_down_a < kTubularLeastA_per_Ah * law.pack.capacity_ah)
    return;
  found.push_back({State::none,
                   "A block built for slow loads, with tubular plates, does worse than this range: "
                   "measured ones stood under 11.7 V after 29 to 47 % of their charge."});
}

}  // namespace

std::vector<Finding> battery_findings(const Plan& plan, const Outlook& outlook, const Style& style) {
  std::vector<Finding> found;
  if (outlook[R::power_runtime_h].state == State::unknown || no_radio_because(plan).doubt != Doubt::none ||
      !plan.has_all(L::battery_chemistry, L::battery_capacity_ah, L::radio_transmit_power_w))
    return found;
  const battery::Carry pack = packs_of(plan).front();
  const double turned_down_w = outlook[R::radio_turned_down_w].value;  // unknown without a line
  const battery::Load load =
      load_of(plan, plan[L::radio_transmit_power_w] - (std::isfinite(turned_down_w) ? turned_down_w : 0));
  full_pack(pack.law, load, style, found);
  cold(plan, *pack.law.chemistry, style, found);
  stranded(plan, pack.law, pack.floors, load, style, found);
  reserve_worth(pack.law, pack.floors, load, style, found);
  tubular(plan, pack.law, load, found);
  order_findings(found);
  return found;
}

}  // namespace gs
