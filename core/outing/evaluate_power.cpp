// Battery, lead and radio: how long it lasts, and what the radio still gets at key-down.
#include <algorithm>
#include <cmath>
#include <limits>
#include <span>
#include <vector>

#include "core/battery/pack.h"
#include "core/outing/evaluate_parts.h"
#include "core/radio/current.h"
#include "core/radio/lead.h"
#include "core/radio/mode.h"

namespace gs {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
// Two pairs of plugs, a fuse and its holder together: common practice, from memory.
constexpr double kContactsOhm = 0.005;
// A listening set on a large battery: no outing lasts longer, so no figure needs to.
constexpr double kLongestH = 1000;

struct Load {
  double key_down_a, sending_a, average_a;  // peak, average while sending, average over all
  double lead_ohm;
};

battery::Draw draw_of(const Load& load) { return {load.key_down_a, std::min(load.sending_a, load.key_down_a)}; }

/// Hours until a pack ends the outing, and which lever ends it. by_charge_h: until its reserve is reached, whatever
/// else fails before.
struct End {
  double hours, by_charge_h;
  L by;
};
End end_of(const Plan& plan, const battery::Pack& pack, const Load& load) {
  const double by_charge_h = std::min(battery::runtime_h(pack, load.average_a), kLongestH);
  // A limit that was given holds for either pack; the usual one goes by the size of the pack.
  double most_a = plan[L::battery_max_current_a];
  if (plan.from[std::size_t(L::battery_max_current_a)] != From::yours)
    most_a *= pack.capacity_ah / plan[L::battery_capacity_ah];
  if (load.key_down_a > most_a) return {0, by_charge_h, L::battery_max_current_a};
  const double least_resting_v =
      plan[L::radio_minimum_supply_v] + load.key_down_a * load.lead_ohm + battery::sag_v(pack, draw_of(load));
  const double by_supply_h = battery::hours_to_resting_v(pack, load.average_a, least_resting_v);
  if (by_supply_h < by_charge_h) return {by_supply_h, by_charge_h, L::radio_minimum_supply_v};
  return {by_charge_h, by_charge_h, L::battery_reserve_pct};
}

/// A pack on the way through the outing.
struct Carried {
  battery::Pack pack;
  End end;
};

/// Supply at key-down when it is least. A pack is changed when it ends; the last one goes on until its reserve, so
/// that a supply that fails before one packs says by how much. on_air_h is infinite where the clock is not known:
/// then every pack runs to its own end.
double least_supply_v(const Plan& plan, std::span<const Carried> packs, const Load& load, double on_air_h) {
  double least_v = std::numeric_limits<double>::infinity(), left_h = on_air_h;
  for (std::size_t i = 0; i < packs.size() && (i == 0 || left_h > 0); ++i) {
    const auto& [pack, end] = packs[i];
    const bool goes_on = i + 1 == packs.size() && std::isfinite(on_air_h);
    const double until_h = std::min(left_h, goes_on ? end.by_charge_h : end.hours);
    const double charge_pct = battery::charge_left_pct(pack, load.average_a * until_h);
    double v = radio::supply_v(battery::loaded_v(pack, charge_pct, draw_of(load)), load.key_down_a, load.lead_ohm);
    // Changed just at the floor: rounding must not put it below.
    if (end.by == L::radio_minimum_supply_v && end.hours > 0 && until_h <= end.hours)
      v = std::max(v, plan[L::radio_minimum_supply_v]);
    least_v = std::min(least_v, v);
    left_h -= until_h;
  }
  return least_v;
}

/// What all packs together still hold after the time on the air, of what they give.
double left_of_all_pct(std::span<const Carried> packs, const Load& load, double on_air_h) {
  double left_ah = 0, gives_ah = 0, left_h = on_air_h;
  for (std::size_t i = 0; i < packs.size(); ++i) {
    const auto& [pack, end] = packs[i];
    const double in_use_h = i + 1 == packs.size() ? left_h : std::min(left_h, end.hours);
    const double ah = battery::capacity_at_load_ah(pack, load.average_a);
    gives_ah += ah;
    left_ah += ah * battery::left_pct(pack, load.average_a, in_use_h) / 100;
    left_h -= in_use_h;
  }
  return 100 * left_ah / gives_ah;
}

battery::Pack pack_of(const Plan& plan) {
  return {.chemistry = &battery::chemistries()[std::size_t(plan[L::battery_chemistry])],
          .capacity_ah = plan[L::battery_capacity_ah],
          .health_pct = plan[L::battery_health_pct],
          .temperature_c = plan[L::battery_temperature_c],
          .reserve_pct = plan[L::battery_reserve_pct],
          .used_ah = plan[L::battery_used_ah]};
}

}  // namespace

void put_power(const Plan& plan, Joined& joined, Outlook& out) {
  joined.average_a = joined.runtime_min = kNaN;
  const std::initializer_list<R> kFromBattery = {R::power_runtime_h, R::power_supply_at_key_down_v};
  const std::initializer_list<R> kFromClock = {R::power_spare_min, R::power_lasts_until_min,
                                               R::power_left_at_leave_by_pct};
  Doubtful why = first_missing(plan, {L::radio_full_power_w, L::radio_transmit_power_w});
  if (why.doubt == Doubt::none && plan[L::radio_transmit_power_w] > plan[L::radio_full_power_w])
    why = {Doubt::impossible, L::radio_transmit_power_w};
  if (why.doubt == Doubt::none && plan[L::radio_keyed_idle_current_a] > plan[L::radio_full_power_current_a])
    why = {Doubt::impossible, L::radio_keyed_idle_current_a};
  if (why.doubt != Doubt::none) {
    joined.no_power = why;
    withhold(out, {R::power_average_current_a}, why);
    withhold(out, kFromBattery, why);
    withhold(out, kFromClock, why);
    return;
  }
  const radio::SetCurrents set{plan[L::radio_full_power_w], plan[L::radio_full_power_current_a],
                               plan[L::radio_keyed_idle_current_a], plan[L::radio_receive_current_a]};
  // A set that turns down draws less, too. Where the line is not known the power asked for stands.
  const double power_w = std::isfinite(joined.leaves_w) ? joined.leaves_w : plan[L::radio_transmit_power_w];
  const radio::Mode& mode = radio::modes()[std::size_t(plan[L::radio_mode])];
  Load load{};
  load.key_down_a = radio::key_down_a(set, power_w);
  load.sending_a = radio::transmit_a(set, power_w, mode);
  load.average_a = radio::average_a(set.receive_a, load.sending_a, plan[L::radio_transmit_share_pct] / 100);
  joined.average_a = load.average_a;
  put(out, R::power_average_current_a, judge(plan, R::power_average_current_a, load.average_a));

  why = first_missing(plan, {L::battery_chemistry, L::battery_capacity_ah});
  joined.no_power = why;
  if (why.doubt != Doubt::none) {
    withhold(out, kFromBattery, why);
    withhold(out, kFromClock, why);
    return;
  }
  const radio::Wire& wire = radio::wires()[std::size_t(plan[L::lead_wire])];
  load.lead_ohm = radio::lead_ohm({.gauge = wire.gauge,
                                   .length_m = plan[L::lead_length_m],
                                   .temperature_c = plan[L::battery_temperature_c],
                                   .contacts_ohm = kContactsOhm});
  std::vector<Carried> packs;
  const auto carry = [&](const battery::Pack& pack) { packs.push_back({pack, end_of(plan, pack, load)}); };
  battery::Pack pack = pack_of(plan);
  carry(pack);
  if (plan[L::spare_capacity_ah] > 0) {
    pack.capacity_ah = plan[L::spare_capacity_ah];
    pack.used_ah = 0;
    carry(pack);
  }
  double hours = 0;
  joined.ends_by = packs.front().end.by;
  for (const auto& [carried, end] : packs) {
    hours += end.hours;
    if (end.hours > 0) joined.ends_by = end.by;
  }
  hours = std::min(hours, kLongestH);
  joined.runtime_min = 60 * hours;
  Figure runtime = judge(plan, R::power_runtime_h, hours);
  if (runtime.state != State::unknown) runtime.culprit = joined.ends_by;
  put(out, R::power_runtime_h, runtime);

  const bool clock_known = joined.no_clock.doubt == Doubt::none;
  const double on_air_h = clock_known ? joined.on_air_min / 60 : std::numeric_limits<double>::infinity();
  put(out, R::power_supply_at_key_down_v,
      judge(plan, R::power_supply_at_key_down_v, least_supply_v(plan, packs, load, on_air_h)));

  if (!clock_known) {
    withhold(out, kFromClock, joined.no_clock);
    return;
  }
  const double lasts_until = joined.starts_min + joined.runtime_min;
  put(out, R::power_lasts_until_min, judge(plan, R::power_lasts_until_min, lasts_until));
  Figure spare = judge(plan, R::power_spare_min, lasts_until - joined.pack_by_min);
  if (spare.state != State::unknown) spare.culprit = joined.ends_by;
  put(out, R::power_spare_min, spare);
  put(out, R::power_left_at_leave_by_pct,
      judge(plan, R::power_left_at_leave_by_pct, left_of_all_pct(packs, load, on_air_h)));
}

}  // namespace gs
