// What the licence allows: room on the dial, and power against its limit.
#include <cmath>

#include "core/antenna/kind.h"
#include "core/outing/evaluate_parts.h"
#include "core/outing/exposure_join.h"
#include "core/outing/rules_join.h"
#include "core/outing/rules_rows.h"
#include "core/safety/far_field.h"

namespace gs {
namespace {

/// Power that counts against the limit, W: the set's peak envelope power, or what is radiated over a half-wave
/// dipole.
double counted_w(const Plan& plan, const Joined& joined, bool erp) {
  const double set_w = plan[L::radio_transmit_power_w];
  if (!erp) return set_w;
  const double arrives_w = std::isfinite(joined.to_antenna_w) ? joined.to_antenna_w : set_w;
  return arrives_w * safety::gain_factor(gain_towards_people_dbi(plan) - kDipoleDbi);
}

}  // namespace

void put_rules(const Plan& plan, const Joined& joined, Outlook& out) {
  const RulesJoin join = join_rules(plan);
  if (join.doubtful.doubt != Doubt::none)
    return withhold(out, {R::rules_room_khz, R::rules_power_pct}, join.doubtful);
  put(out, R::rules_room_khz, judge(plan, R::rules_room_khz, join.answer.room_khz));
  Figure& room = out.at[std::size_t(R::rules_room_khz)];
  if (room.state == State::fails) {
    room.doubt = Doubt::not_allowed;
    room.culprit = L::antenna_frequency_mhz;
  }
  const Doubtful no_power =
      first_missing(plan, {plan.has(L::radio_full_power_w) ? L::radio_transmit_power_w : L::radio_full_power_w});
  if (no_power.doubt != Doubt::none) return withhold(out, {R::rules_power_pct}, no_power);
  rules::PowerLimit limit{plan[L::rules_own_power_w], false, {}};
  if (join.by_table)
    limit = limit_near(join.answer, region_at(plan[L::rules_region]), licence_at(plan[L::rules_class]),
                       plan[L::antenna_frequency_mhz]);
  else if (!plan.has(L::rules_own_power_w))
    return withhold(out, {R::rules_power_pct}, {Doubt::missing, L::rules_own_power_w});
  if (!std::isfinite(limit.limit_w))
    return withhold(out, {R::rules_power_pct}, {Doubt::not_allowed_anywhere, L::antenna_frequency_mhz});
  put(out, R::rules_power_pct,
      judge(plan, R::rules_power_pct, 100 * counted_w(plan, joined, limit.erp) / limit.limit_w));
}

}  // namespace gs
