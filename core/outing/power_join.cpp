#include "core/outing/power_join.h"

#include <algorithm>
#include <cmath>

#include "core/outing/radio_readings.h"
#include "core/radio/current.h"
#include "core/radio/lead.h"
#include "core/radio/mode.h"

namespace gs {
namespace {

// Where the currents are a class's usual ones: of three 100 W sets on one bench (an independent owner's, 13.8 V)
// the usual one draws 19.5 A at full power and 7.0 A at 5 W, the thirstiest up to 15 % more, the thriftiest 31 to
// 46 % less; on receive 1.1 A, 1.6 A and 0.6 A. Sets of other classes: no better is known.
constexpr double kThirsty = 1.15, kThrifty = 0.6, kThirstyReceive = 1.5, kThriftyReceive = 0.55;
// Where both currents are the set's own: the root law's worst miss on those three sets.
constexpr double kLawMiss = 0.035;

double pick(battery::Luck luck, double worse, double better) {
  return luck == battery::Luck::usual ? 1 : luck == battery::Luck::worse ? worse : better;
}

bool is_own(const Plan& plan, L id) { return plan.from[std::size_t(id)] == From::yours; }
bool sends_as_read(const Plan& plan) {
  return is_own(plan, L::radio_full_power_current_a) || currents_from_readings(plan).sound;
}

}  // namespace

Doubtful no_radio_because(const Plan& plan) {
  const Doubtful why = first_missing(plan, {L::radio_full_power_w, L::radio_transmit_power_w});
  if (why.doubt != Doubt::none) return why;
  if (plan[L::radio_transmit_power_w] > plan[L::radio_full_power_w])
    return {Doubt::impossible, L::radio_transmit_power_w};
  if (plan[L::radio_keyed_idle_current_a] > plan[L::radio_full_power_current_a])
    return {Doubt::impossible, L::radio_keyed_idle_current_a};
  return {};
}

battery::Load load_of(const Plan& plan, double power_w, battery::Luck luck) {
  const radio::SetCurrents set{plan[L::radio_full_power_w], plan[L::radio_full_power_current_a],
                               plan[L::radio_keyed_idle_current_a], plan[L::radio_receive_current_a]};
  const radio::Mode& mode = radio::modes()[std::size_t(plan[L::radio_mode])];
  const radio::Wire& wire = radio::wires()[std::size_t(plan[L::lead_wire])];
  const double sends =
      sends_as_read(plan) ? pick(luck, 1 + kLawMiss, 1 - kLawMiss) : pick(luck, kThirsty, kThrifty);
  const double hears = is_own(plan, L::radio_receive_current_a) ? 1 : pick(luck, kThirstyReceive, kThriftyReceive);
  const double others_a = plan[L::radio_accessories_a];
  battery::Load load{};
  load.pause_a = set.receive_a * hears + others_a;
  load.key_down_a = radio::key_down_a(set, power_w) * sends + others_a;
  load.sending_a = std::min(radio::transmit_a(set, power_w, mode) * sends + others_a, load.key_down_a);
  load.share = plan[L::radio_transmit_share_pct] / 100;
  // not asked for where the battery does not mind
  load.over_h = plan.has(L::radio_over_s) ? plan[L::radio_over_s] / 3600 : 0;
  load.lead_ohm = radio::lead_ohm({.gauge = wire.gauge,
                                   .length_m = plan[L::lead_length_m],
                                   .temperature_c = plan[L::lead_temperature_c],
                                   .contacts_ohm = plan[L::lead_contacts_ohm]});
  return load;
}

std::vector<battery::Carry> packs_of(const Plan& plan, battery::Luck luck) {
  battery::Pack pack{.chemistry = &battery::chemistries()[std::size_t(plan[L::battery_chemistry])],
                     .capacity_ah = plan[L::battery_capacity_ah],
                     .health_pct = plan[L::battery_health_pct],
                     .temperature_c = plan[L::battery_temperature_c],
                     .reserve_pct = plan[L::battery_reserve_pct],
                     .used_ah = plan[L::battery_used_ah]};
  battery::Floors floors{plan[L::radio_minimum_supply_v], plan[L::battery_cut_off_v],
                         plan[L::battery_max_current_a]};
  std::vector<battery::Carry> packs{{battery::law_of(pack, luck), floors}};
  if (plan[L::spare_capacity_ah] > 0) {
    // A limit that was given holds for either pack; the usual one goes by the size of the pack.
    if (!is_own(plan, L::battery_max_current_a)) floors.most_a *= plan[L::spare_capacity_ah] / pack.capacity_ah;
    pack.capacity_ah = plan[L::spare_capacity_ah];
    pack.used_ah = 0;
    packs.push_back({battery::law_of(pack, luck), floors});
  }
  return packs;
}

radio::Fuse fuse_of(const Plan& plan, const battery::Load& load) {
  const radio::Wire& wire = radio::wires()[std::size_t(plan[L::lead_wire])];
  return radio::fuse_for(std::max(load.sending_a, radio::kFuseLoad * load.key_down_a), wire.carries_a);
}

}  // namespace gs
