// What must hold between the links for every plan: seeded random outings over all levers. One lever moves, the rest
// stays.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <map>

#include "core/outing/now.h"
#include "core/pace/clock.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

constexpr unsigned kSeed = 20261126;
constexpr int kOutings = 10'000;

/// A random outing with the ends of things mostly in order, so that every link answers in most of them.
Values sound_values(std::mt19937_64& bits) {
  Values set = test::random_values(bits);
  const auto put = [&set](L id, Value value) { set[std::size_t(id)] = std::move(value); };
  const double arrive = 1200 * test::unit_of(bits), stay = 60 + 600 * test::unit_of(bits);
  put(L::clock_arrive_min, arrive);
  put(L::clock_leave_by_min, arrive + stay);
  put(L::clock_set_up_min, 0.4 * stay * test::unit_of(bits));
  put(L::clock_pack_down_min, 0.4 * stay * test::unit_of(bits));
  if (test::unit_of(bits) < 0.5) {
    const double full_w = 20 + 180 * test::unit_of(bits);
    put(L::radio_full_power_w, full_w);
    put(L::radio_transmit_power_w, 0.1 + 0.9 * full_w * test::unit_of(bits));
  }
  if (test::unit_of(bits) < 0.7) put(L::radio_keyed_idle_current_a, {});
  if (test::unit_of(bits) < 0.5) put(L::battery_max_current_a, {});
  if (test::unit_of(bits) < 0.5) put(L::battery_used_ah, {});
  return set;
}

/// How a reading moves when a lever goes up and all else stays.
struct Rule {
  L lever;
  R reading;
  double direction;  // 1: never falls, -1: never rises, 0: stays as it is
};
constexpr Rule kRules[] = {
    {L::radio_transmit_power_w, R::power_runtime_h, -1},
    {L::radio_transmit_power_w, R::power_average_current_a, 1},
    {L::radio_transmit_power_w, R::safety_public_m, 1},
    {L::radio_transmit_power_w, R::safety_operator_m, 1},
    {L::radio_transmit_power_w, R::safety_owed_within_m, 1},
    {L::radio_transmit_power_w, R::pace_expected_contacts, -1},  // by the battery alone, until sky answers
    {L::radio_full_power_current_a, R::power_runtime_h, -1},
    {L::radio_receive_current_a, R::power_runtime_h, -1},
    {L::radio_minimum_supply_v, R::power_runtime_h, -1},
    {L::battery_capacity_ah, R::power_runtime_h, 1},
    {L::battery_health_pct, R::power_runtime_h, 1},
    {L::battery_max_current_a, R::power_runtime_h, 1},
    {L::battery_reserve_pct, R::power_runtime_h, -1},
    {L::battery_used_ah, R::power_runtime_h, -1},
    {L::battery_used_ah, R::power_supply_at_key_down_v, -1},
    {L::spare_capacity_ah, R::power_runtime_h, 1},
    {L::lead_length_m, R::power_runtime_h, -1},
    {L::lead_length_m, R::power_supply_at_key_down_v, -1},
    {L::clock_leave_by_min, R::clock_on_air_min, 1},
    {L::clock_leave_by_min, R::pace_expected_contacts, 1},
    {L::clock_leave_by_min, R::pace_chance_of_target_pct, 1},
    {L::clock_leave_by_min, R::power_supply_at_key_down_v, -1},
    {L::clock_leave_by_min, R::power_left_at_leave_by_pct, -1},
    {L::clock_leave_by_min, R::power_runtime_h, 0},
    {L::clock_pack_down_min, R::clock_on_air_min, -1},
    {L::pace_per_hour, R::pace_chance_of_target_pct, 1},
    {L::pace_per_hour, R::pace_expected_contacts, 1},
    {L::pace_per_hour, R::pace_mah_per_contact, -1},
    {L::pace_target, R::pace_chance_of_target_pct, -1},
    {L::pace_target, R::pace_expected_contacts, 0},
    {L::radio_transmit_share_pct, R::safety_public_m, 0},
    {L::radio_transmit_share_pct, R::safety_operator_m, 0},
    {L::safety_busiest_share_pct, R::safety_public_m, 1},
    {L::safety_busiest_share_pct, R::safety_operator_m, 1},
    {L::safety_busiest_share_pct, R::safety_owed_within_m, 1},
    {L::safety_busiest_share_pct, R::power_average_current_a, 0},
    {L::antenna_span_m, R::antenna_fits_m, 1},
};
// What rounding may move a figure the wrong way, of its size: chances are summed to 1e-9 (core/pace), the rest is a
// handful of operations.
double slack_of(R id, double value) {
  return id == R::pace_chance_of_target_pct ? 1e-7 : 1e-12 * (1 + std::abs(value));
}

}  // namespace

TEST_CASE("every plan: one lever up moves each reading the way physics has it") {
  std::mt19937_64 bits(kSeed);
  std::array<int, std::size(kRules)> compared{}, moved{};
  for (int n = 0; n < kOutings; ++n) {
    const Values set = sound_values(bits);
    const Plan plan = resolve(set);
    const Outlook now = evaluate(plan);
    const double up = test::unit_of(bits);
    std::map<L, Outlook> then;  // one evaluation a lever
    for (std::size_t i = 0; i < std::size(kRules); ++i) {
      const Rule& rule = kRules[i];
      // a current limit that was given holds for the spare too, a usual one does not: only like goes with like
      if (rule.lever == L::battery_max_current_a && plan.from[std::size_t(rule.lever)] != From::yours) continue;
      if (!plan.has(rule.lever) || !std::isfinite(now[rule.reading].value)) continue;
      auto at = then.find(rule.lever);
      if (at == then.end()) {
        const Lever& row = lever(rule.lever);
        const double cap = row.cap ? row.cap(plan) : row.most;
        const double most = std::isfinite(cap) ? std::min(cap, row.most) : row.most;
        Values more = set;
        const double x = plan[rule.lever];
        more[std::size_t(rule.lever)] = std::max(x, x + up * (most - x));
        at = then.emplace(rule.lever, evaluate(resolve(more))).first;
      }
      const double before = now[rule.reading].value, after = at->second[rule.reading].value;
      if (!std::isfinite(after)) continue;
      ++compared[i];
      const double by = after - before, slack = slack_of(rule.reading, before);
      moved[i] += std::abs(by) > slack ? 1 : 0;
      const bool sound = rule.direction == 0 ? std::abs(by) <= slack : by * rule.direction >= -slack;
      if (!sound)
        FAIL_CHECK("seed " << kSeed << ", outing " << n << ": more of " << std::string(lever(rule.lever).key)
                           << " (" << plan[rule.lever] << ", " << up << " of the way up) takes "
                           << std::string(reading(rule.reading).key) << " from " << before << " to " << after);
    }
  }
  int fewest = kOutings;
  for (std::size_t i = 0; i < std::size(kRules); ++i) {
    const Rule& rule = kRules[i];
    CAPTURE(std::string(lever(rule.lever).key));
    CAPTURE(std::string(reading(rule.reading).key));
    fewest = std::min(fewest, compared[i]);
    CHECK(compared[i] > 1000);
    if (rule.direction != 0) CHECK(moved[i] > 20);  // the rule is not kept by standing still
  }
  MESSAGE("seed " << kSeed << ": " << std::size(kRules) << " rules over " << kOutings
                  << " outings, each compared at least " << fewest << " times");
}

TEST_CASE("every plan: more line between a known antenna and the set, less of the power arrives") {
  std::mt19937_64 bits(kSeed + 1);
  int compared = 0;
  for (int n = 0; n < kOutings; ++n) {
    Values set = sound_values(bits);
    set[std::size_t(L::feedline_measured_at)] = std::string("antenna");
    set[std::size_t(L::feedline_plug_pairs)] =
        Value{};  // more line may bring plugs to a place where they lose less
    const Plan plan = resolve(set);
    Plan longer = plan;
    longer.x[std::size_t(L::feedline_length_m)] *= 1 + test::unit_of(bits);
    const double before = evaluate(plan)[R::feedline_arrives_pct].value,
                 after = evaluate(longer)[R::feedline_arrives_pct].value;
    if (!std::isfinite(before) || !std::isfinite(after)) continue;
    ++compared;
    if (after > before * (1 + 1e-9))
      FAIL_CHECK("seed " << kSeed + 1 << ", outing " << n << ": " << before << " % arrive, " << after
                         << " % through more line");
  }
  MESSAGE("seed " << kSeed + 1 << ": " << compared << " lines made longer");
  CHECK(compared > 5000);
}

TEST_CASE("every plan: the links agree with each other") {
  std::mt19937_64 bits(kSeed + 2);
  int chains = 0, cut = 0, turned = 0;
  std::map<L, int> ends;
  double worst_contacts = 0, worst_until = 0;
  for (int n = 0; n < kOutings; ++n) {
    const Plan plan = resolve(sound_values(bits));
    const Outlook out = evaluate(plan);
    const auto at = [&out](R id) { return out[id].value; };
    for (const R id : {R::safety_public_m, R::safety_operator_m})
      if (at(id) < 1.5) FAIL_CHECK("seed " << kSeed + 2 << ", outing " << n << ": nearer than arm's reach");
    // Sending all the time, the shorter averaging time of those who were told makes no difference, and their limit
    // is never the lower one.
    if (plan[L::safety_busiest_share_pct] == 100 && at(R::safety_operator_m) > at(R::safety_public_m))
      FAIL_CHECK("seed " << kSeed + 2 << ", outing " << n << ": operator " << at(R::safety_operator_m)
                         << " m, public " << at(R::safety_public_m) << " m");
    if (at(R::antenna_efficiency_pct) <= 0 || at(R::antenna_efficiency_pct) > 100) FAIL_CHECK("efficiency");
    if (at(R::pace_chance_of_target_pct) < 0 || at(R::pace_chance_of_target_pct) > 100) FAIL_CHECK("chance");
    if (at(R::power_left_at_leave_by_pct) < 0 || at(R::power_left_at_leave_by_pct) > 100) FAIL_CHECK("left");
    if (!std::isfinite(at(R::power_runtime_h)) || !std::isfinite(at(R::clock_on_air_min))) continue;
    ++chains;
    // as time runs, over a change of the clock
    const pace::Stay stay = stay_of(plan);
    const double by_clock = stay.leave_by_min - stay.pack_down_min - stay.arrive_min - stay.set_up_min;
    const double first_call = stay.arrive_min + stay.set_up_min;
    const double by_battery = 60 * at(R::power_runtime_h), on_air = std::min(by_clock, by_battery);
    const bool is_cut = by_battery < by_clock;
    cut += is_cut ? 1 : 0;
    if (is_cut) ++ends[out[R::power_runtime_h].culprit];
    if (is_cut && out[R::clock_on_air_min].culprit != out[R::power_runtime_h].culprit)
      FAIL_CHECK("outing " << n << ": clock and battery name different ends");
    worst_contacts = std::max(worst_contacts, std::abs(at(R::clock_on_air_min) - on_air) / by_clock);
    const double worth_min = at(R::pace_expected_contacts) * 60 / plan[L::pace_per_hour];
    const bool by_utc_day = plan[L::pace_day_rule] == 0 && plan.has(L::clock_utc_offset_min);
    const double pack_by = first_call + by_clock;
    if (by_utc_day && gs::pace::utc_midnight_between(first_call - 1, pack_by + 1, plan[L::clock_utc_offset_min])) {
      // Only the better UTC day counts: no more than all of them, no less than an even share of two or three days.
      ++turned;
      if (worth_min > on_air * (1 + 1e-9) || worth_min < on_air / 3 * (1 - 1e-9))
        FAIL_CHECK("outing " << n << ": the better day is worth " << worth_min << " of " << on_air << " min");
    } else {
      worst_contacts = std::max(worst_contacts, std::abs(worth_min - on_air) / by_clock);
    }
    if (std::isfinite(at(R::power_lasts_until_min)))
      worst_until =
          std::max(worst_until, std::abs(at(R::power_lasts_until_min) - shown_min(plan, first_call + by_battery)) /
                                    (1 + by_battery));
    const State spare = out[R::power_spare_min].state;
    // judged against the plan's own limit: only the usual one stands at 0
    if (spare != State::unknown && plan.from[std::size_t(limit_lever(R::power_spare_min))] == From::usual &&
        (spare == State::fails) != (at(R::power_spare_min) < 0))
      FAIL_CHECK("outing " << n << ": battery to spare " << at(R::power_spare_min));
  }
  MESSAGE("seed " << kSeed + 2 << ": " << chains << " whole chains, the battery ends " << cut
                  << " of them: reserve " << ends[L::battery_reserve_pct] << ", minimum supply "
                  << ends[L::radio_minimum_supply_v] << ", current limit " << ends[L::battery_max_current_a]);
  MESSAGE("time on the air against its definition: worst " << worst_contacts << " of the stay, allowed 1e-12");
  MESSAGE("lasts until against first call and runtime: worst " << worst_until << ", allowed 1e-12");
  CHECK(chains > 3000);
  MESSAGE("the UTC day turns in " << turned << " of them");
  CHECK(turned > 100);
  for (const L end : {L::battery_reserve_pct, L::radio_minimum_supply_v, L::battery_max_current_a})
    CHECK(ends[end] > 50);
  CHECK(worst_contacts < 1e-12);
  CHECK(worst_until < 1e-12);
}
