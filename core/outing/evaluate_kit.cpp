// What is carried: does it hold, what hangs on one piece, what does it weigh.
#include <algorithm>
#include <string_view>

#include "core/outing/evaluate_parts.h"

namespace gs {

KitSummary sum_up(std::span<const kit::Item> items) {
  KitSummary sum;
  std::vector<std::string_view> seen;
  for (const kit::Item& item : items) {
    if (!kit::item_trouble(item).empty()) continue;
    if (std::find(seen.begin(), seen.end(), item.function) != seen.end()) continue;
    seen.push_back(item.function);
    std::vector<kit::Item> of_function;
    bool vital = false;
    int pieces = 0;
    for (const kit::Item& other : items) {
      if (other.function != item.function || !kit::item_trouble(other).empty()) continue;
      of_function.push_back(other);
      pieces += other.backups + 1;
      vital = vital || other.vital;
    }
    // One function by itself, as if it were vital: its chance stands in the reasons either way.
    of_function.front().vital = true;
    const kit::Holds alone = kit::holds(of_function);
    sum.functions.push_back({item.function, 100 * alone.chance, alone.weight_g, pieces, vital});
  }
  sum.known = !sum.functions.empty();
  const kit::Holds whole = kit::holds(items);
  sum.chance_pct = 100 * whole.chance;
  sum.weight_g = whole.weight_g;
  sum.single_points = int(whole.single_points.size());
  return sum;
}

void put_kit(const Plan& plan, Outlook& out) {
  const KitSummary& kit = plan.kit;
  if (!kit.known)
    return withhold(out, {R::kit_chance_pct, R::kit_single_points, R::kit_weight_kg}, {Doubt::no_kit, L::count});
  put(out, R::kit_chance_pct, judge(plan, R::kit_chance_pct, kit.chance_pct));
  put(out, R::kit_single_points, judge(plan, R::kit_single_points, kit.single_points));
  put(out, R::kit_weight_kg, judge(plan, R::kit_weight_kg, kit.weight_g / 1000));
}

}  // namespace gs
