// What must hold of every battery on every outing: seeded random outings, one lever moved, the rest as it was.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "core/outing/power_join.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

constexpr unsigned kSeed = 20261127;
constexpr int kOutings = 10'000;

Values powered(std::mt19937_64& bits) {
  Values set = test::random_values(bits);
  const auto put = [&set](L id, Value value) { set[std::size_t(id)] = std::move(value); };
  const double full_w = 5 + 195 * test::unit_of(bits);
  put(L::radio_full_power_w, full_w);
  put(L::radio_transmit_power_w, 0.1 + 0.9 * full_w * test::unit_of(bits));
  put(L::radio_keyed_idle_current_a, {});
  if (test::unit_of(bits) < 0.7) put(L::radio_full_power_current_a, {});
  if (test::unit_of(bits) < 0.7) put(L::radio_minimum_supply_v, {});
  if (test::unit_of(bits) < 0.7) put(L::battery_max_current_a, {});
  if (test::unit_of(bits) < 0.7) put(L::battery_cut_off_v, {});
  if (test::unit_of(bits) < 0.7) put(L::battery_used_ah, {});
  if (test::unit_of(bits) < 0.5) put(L::spare_capacity_ah, {});
  if (test::unit_of(bits) < 0.5) put(L::lead_wire, {});
  // often enough the battery that minds how long an over is, and large enough to get that far
  if (test::unit_of(bits) < 0.3) {
    put(L::battery_chemistry, std::string("sealed_lead"));
    put(L::battery_capacity_ah, 20 + 100 * test::unit_of(bits));
    put(L::battery_reserve_pct, 20 * test::unit_of(bits));
  }
  return set;
}

}  // namespace

TEST_CASE("every battery: runtime never rises with power, share, cold, age, lead, other loads or long overs") {
  struct Rule {
    L lever;
    double from, to;  // where the lever goes: between these, from where it stands (NaN: from there)
  };
  const double here = std::nan("");
  const Rule rules[] = {{L::radio_transmit_power_w, here, 1e9}, {L::radio_transmit_share_pct, here, 100},
                        {L::battery_temperature_c, here, -30},  {L::battery_health_pct, here, 10},
                        {L::lead_length_m, here, 20},           {L::lead_temperature_c, here, 105},
                        {L::radio_accessories_a, here, 20},     {L::radio_over_s, here, 600},
                        {L::battery_cut_off_v, here, 14}};
  std::mt19937_64 bits(kSeed);
  std::map<L, int> compared, moved, ends;
  for (int n = 0; n < kOutings; ++n) {
    const Values set = powered(bits);
    const Plan plan = resolve(set);
    const Outlook out = evaluate(plan);
    const Figure& before = out[R::power_runtime_h];
    if (!std::isfinite(before.value)) continue;
    ++ends[before.culprit];
    // The range is about the figure, and in order.
    if (!(before.low <= before.value && before.value <= before.high))
      FAIL_CHECK("seed " << kSeed << ", outing " << n << ": range " << before.low << " to " << before.high
                         << " about " << before.value);
    const double part = test::unit_of(bits);
    for (const Rule& rule : rules) {
      if (!plan.has(rule.lever)) continue;
      // cold helps nothing below 25 C; a warmer pack is another matter
      if (rule.lever == L::battery_temperature_c && plan[rule.lever] > 25) continue;
      if (rule.lever == L::radio_transmit_share_pct || rule.lever == L::radio_over_s) {
        // only where transmit draws more than listening, at the power that a mismatched line leaves
        const double down_w = out[R::radio_turned_down_w].value;
        const battery::Load load =
            load_of(plan, plan[L::radio_transmit_power_w] - (std::isfinite(down_w) ? down_w : 0));
        if (load.sending_a <= load.pause_a) continue;
      }
      const Lever& row = lever(rule.lever);
      const double cap = row.cap ? row.cap(plan) : row.most;
      const double goal = std::min(rule.to, std::isfinite(cap) ? std::min(cap, row.most) : row.most);
      Values changed = set;
      changed[std::size_t(rule.lever)] = plan[rule.lever] + part * (goal - plan[rule.lever]);
      const double after = evaluate(resolve(changed))[R::power_runtime_h].value;
      if (!std::isfinite(after)) continue;
      ++compared[rule.lever];
      moved[rule.lever] += after < before.value * (1 - 1e-9) ? 1 : 0;
      if (after > before.value * (1 + 1e-9) + 1e-12)
        FAIL_CHECK("seed " << kSeed << ", outing " << n << ": " << std::string(row.key) << " from "
                           << plan[rule.lever] << " to " << plan[rule.lever] + part * (goal - plan[rule.lever])
                           << " takes the runtime from " << before.value << " to " << after);
    }
  }
  for (const Rule& rule : rules) {
    MESSAGE(std::string(lever(rule.lever).key)
            << ": " << compared[rule.lever] << " compared, " << moved[rule.lever] << " shorter");
    CHECK(compared[rule.lever] > 500);
    CHECK(moved[rule.lever] > 50);
  }
  for (const L end :
       {L::battery_reserve_pct, L::radio_minimum_supply_v, L::battery_max_current_a, L::battery_cut_off_v})
    CHECK(ends[end] > 20);
  MESSAGE("ends: reserve " << ends[L::battery_reserve_pct] << ", minimum supply " << ends[L::radio_minimum_supply_v]
                           << ", current limit " << ends[L::battery_max_current_a] << ", cut-off "
                           << ends[L::battery_cut_off_v]);
}

TEST_CASE("every battery: one stretch cut in two is the same outing") {
  std::mt19937_64 bits(kSeed + 1);
  double worst = 0;
  int compared = 0;
  for (int n = 0; n < 2000; ++n) {
    const Plan plan = resolve(powered(bits));
    if (no_radio_because(plan).doubt != Doubt::none || !plan.has_all(L::battery_chemistry, L::battery_capacity_ah))
      continue;
    battery::Load load = load_of(plan, plan[L::radio_transmit_power_w]);
    load.over_h = 0;  // the train of overs begins anew in each stretch; that is up to one over
    const auto packs = packs_of(plan);
    const battery::Stretch whole[] = {{load, 0}};
    const double cut_h = 5 * test::unit_of(bits), on_air_h = 8 * test::unit_of(bits);
    const battery::Stretch parts[] = {{load, cut_h}, {load, 0.7}, {load, 0}};
    const battery::Course one = battery::course_of(packs, whole, on_air_h),
                          same = battery::course_of(packs, parts, on_air_h);
    ++compared;
    worst = std::max(worst, std::abs(same.hours - one.hours) / (1 + one.hours));
    worst = std::max(worst, std::abs(same.least_v - one.least_v));
    worst = std::max(worst, std::abs(same.left_pct - one.left_pct));
    if (same.by != one.by) FAIL_CHECK("seed " << kSeed + 1 << ", outing " << n << ": another end");
  }
  MESSAGE(compared << " outings, worst difference " << worst << ", allowed 1e-6");
  CHECK(compared > 1000);
  CHECK(worst < 1e-6);
}
