// What is carried: does it hold, what hangs on one piece, what does it weigh.
#include <algorithm>
#include <cmath>

#include "core/outing/evaluate_parts.h"

namespace gs {

namespace {

/// What an item answers of the chain, first come first served.
void answer(const kit::Item& item, KitSummary& sum) {
  if (item.lever.empty()) return;
  const L id = find_lever(item.lever);
  if (!is_lever(id) || item.amount < lever(id).least || item.amount > lever(id).most) return;
  const auto first = [&item](double& answered) {
    if (std::isnan(answered)) answered = item.amount;
  };
  if (id == L::feedline_length_m) return first(sum.feedline_m);
  if (id == L::radio_full_power_w) return first(sum.full_power_w);
  if (id != L::battery_capacity_ah) return;
  int spares = item.backups;
  if (std::isnan(sum.battery_ah)) {
    sum.battery_ah = item.amount;
    sum.spare_ah = 0;
  } else {
    ++spares;
  }
  sum.spare_ah = std::min(sum.spare_ah + spares * item.amount, lever(L::spare_capacity_ah).most);
}

}  // namespace

KitSummary sum_up(std::span<const kit::Item> items) {
  KitSummary sum;
  sum.chance_pct = 100;
  for (const kit::FunctionHolds& one : kit::by_function(items)) {
    sum.functions.push_back({std::string(one.name), 100 * one.chance, one.weight_g, one.pieces, one.vital});
    sum.weight_g += one.weight_g;
    if (!one.vital) continue;
    sum.chance_pct *= one.chance;
    sum.single_points += one.pieces == 1;
  }
  sum.known = !sum.functions.empty();
  for (const kit::Item& item : items) {
    if (!kit::item_trouble(item).empty()) continue;
    sum.volume_l += item.volume_l * (item.backups + 1);
    sum.set_up_min += item.set_up_min;
    sum.to_pack += !item.packed;
    sum.to_charge += item.charge && !item.charged;
    answer(item, sum);
  }
  return sum;
}

void put_kit(const Plan& plan, Outlook& out) {
  const KitSummary& kit = plan.kit;
  if (!kit.known)
    return withhold(out,
                    {R::kit_chance_pct, R::kit_single_points, R::kit_weight_kg, R::kit_volume_l, R::kit_set_up_min,
                     R::kit_to_pack},
                    {Doubt::no_kit, L::count});
  put(out, R::kit_chance_pct, judge(plan, R::kit_chance_pct, kit.chance_pct));
  put(out, R::kit_single_points, judge(plan, R::kit_single_points, kit.single_points));
  put(out, R::kit_weight_kg, judge(plan, R::kit_weight_kg, kit.weight_g / 1000));
  put(out, R::kit_volume_l, judge(plan, R::kit_volume_l, kit.volume_l));
  if (kit.set_up_min > 0) {
    put(out, R::kit_set_up_min, judge(plan, R::kit_set_up_min, kit.set_up_min));
  } else {
    withhold(out, {R::kit_set_up_min}, {Doubt::no_minutes, L::count});
  }
  put(out, R::kit_to_pack, judge(plan, R::kit_to_pack, kit.to_pack));
}

}  // namespace gs
