#include "core/outing/discharge_curve.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs {
namespace {

constexpr int kPointsAPack = 48;

/// Hours until the pack is empty, whatever stops it before: charge counted to nothing, or the well in use empty.
double empty_after_h(const battery::Law& law, const battery::WellState& state, const battery::Load& load) {
  battery::Law whole = law;
  whole.pack.reserve_pct = 0;
  const battery::End end = battery::end_of(whole, state, load, {0, 0, std::numeric_limits<double>::infinity()});
  return std::min(end.hours, battery::kLongestH);
}

}  // namespace

DischargeCurve discharge_curve(const Plan& plan, const Outlook& outlook, battery::Luck luck) {
  DischargeCurve curve;
  if (no_radio_because(plan).doubt != Doubt::none || !plan.has_all(L::battery_chemistry, L::battery_capacity_ah))
    return curve;
  const double down_w = outlook[R::radio_turned_down_w].value;
  const battery::Load load =
      load_of(plan, plan[L::radio_transmit_power_w] - (std::isfinite(down_w) ? down_w : 0), luck);
  const std::vector<battery::Carry> packs = packs_of(plan, luck);
  curve.known = true;
  double from_h = 0;
  for (std::size_t i = 0; i < packs.size(); ++i) {
    const auto& law = packs[i].law;
    const auto& floors = packs[i].floors;
    const bool last = i + 1 == packs.size();
    const battery::WellState start = battery::at_start(law, load);
    const battery::End end = battery::end_of(law, start, load, floors);
    const double ends_h = std::min(end.hours, battery::kLongestH - from_h);
    const double empty_h = std::min(empty_after_h(law, start, load), battery::kLongestH - from_h);
    const double shown_h = last ? std::max(ends_h, empty_h) : ends_h;
    const auto supply_v = [&](double hours) {
      return battery::key_down_v(law, start, load, hours) - load.key_down_a * load.lead_ohm;
    };
    if (i == 0 || ends_h > 0) curve.by = end.by;
    if (last) {
      curve.until_h = from_h + ends_h;
      curve.key_down_at_end_v = supply_v(ends_h);
      curve.reserve_from_h = from_h + std::min(end.by_reserve_h, battery::kLongestH);
      curve.empty_h = from_h + empty_h;
    }
    for (int p = 0; p <= kPointsAPack; ++p) {
      // closer together at both ends, where the curve bends
      const double part = double(p) / kPointsAPack;
      const double hours = shown_h * (part * part * (3 - 2 * part) + part) / 2;
      const battery::WellState state = battery::after(law, start, load, hours);
      curve.points.push_back(
          {from_h + hours, battery::paused_v(law, state, load) - load.pause_a * load.lead_ohm, supply_v(hours)});
    }
    from_h += ends_h;
    constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
    if (!last) curve.points.push_back({from_h, kNaN, kNaN});
  }
  return curve;
}

}  // namespace gs
