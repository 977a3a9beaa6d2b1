#include "core/battery/discharge.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::battery {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();

// Lead-acid tables of makers run from half an hour (1.2 A per Ah) up, to end voltages of 11.1 V at most; the one
// block that was measured higher up had 0.18 A per Ah at most.
constexpr double kHardestTabledAPerAh = 1.25;
constexpr double kHighestTabledV = 11.1;
constexpr double kHardestMeasuredAPerAh = 0.18;
constexpr double kRounding = 1e-12;  // of a filling: empty by charge is no fall of the voltage
constexpr double kHottestC = 45;     // above it no table was found, and most packs must not be charged

Overs overs_of(const Law& law, const Load& load) {
  // Where charge is counted an over more or less makes no difference that anybody could see.
  return {load.sending_a, load.pause_a, load.share, law.chemistry->kinetic && load.share < 1 ? load.over_h : 0};
}

/// Volts of the open terminals at a filling. 0 or less where the well in use is empty.
double open_v(const Law& law, double filling) {
  const KineticLaw* kinetic = law.chemistry->kinetic;
  if (!kinetic) return at(law.chemistry->resting_v, 100 * filling) + law.resting_offset_v;
  if (filling <= 0) return 0;
  return kinetic->full_v + law.resting_offset_v - kinetic->slope_v * (1 - filling) -
         kinetic->bend_v * (1 / filling - 1);
}

/// The filling at which the open terminals stand at `v`; above 1 where they never do, 0 where always.
double filling_at(const Law& law, double v) {
  const KineticLaw* kinetic = law.chemistry->kinetic;
  if (!kinetic) {
    const double resting = v - law.resting_offset_v;
    return resting > law.chemistry->resting_v.back().y ? 2 : where(law.chemistry->resting_v, resting) / 100;
  }
  // slope (1 - s) + bend (1/s - 1) = drop, times s: a quadratic with one root above 0
  const double drop = kinetic->full_v + law.resting_offset_v - v;
  const double b = kinetic->slope_v - kinetic->bend_v - drop;
  const double root = std::sqrt(b * b + 4 * kinetic->slope_v * kinetic->bend_v);
  // the form that does not take near figures from each other
  return b >= 0 ? (b + root) / (2 * kinetic->slope_v) : 2 * kinetic->bend_v / (root - b);
}

double sag_at_key_down_v(const Law& law, const Load& load) {
  return load.key_down_a * (law.quick_ohm + law.fixed_ohm) + load.sending_a * law.slow_ohm;
}

double taken_ah(const Law& law, const WellState& state) { return law.wells.capacity_ah - state.charge_ah; }

/// What may be taken in all at this load, full to reserve.
double allowed_ah(const Law& law, const Load& load) {
  return counts_as_ah(law, load) * (1 - law.pack.reserve_pct / 100);
}

/// A rested pack's end by its reserve or by being empty.
End end_alone(const Pack& pack, const Load& load) {
  const Law law = law_of(pack);
  // cells that are counted are empty when their charge is; the wells' end is a voltage
  const double cut_off_v = pack.chemistry->kinetic ? pack.chemistry->empty_v : 0;
  return end_of(law, at_start(law, load), load, {0, cut_off_v, kNever});
}

}  // namespace

Load steady(double current_a) { return {current_a, current_a, current_a, 1, 0, 0}; }

double counts_as_ah(const Law& law, const Load& load) {
  if (law.chemistry->kinetic) return capacity_ah(law.pack);
  return capacity_ah(law.pack) * at(law.chemistry->capacity_at_rate, average_a(load) / law.pack.capacity_ah);
}

Law law_of(const Pack& pack, Luck luck) {
  const Chemistry& kind = *pack.chemistry;
  const Spread& spread = kind.spread;
  const auto pick = [luck](double usual, double worse, double better) {
    return luck == Luck::usual ? usual : luck == Luck::worse ? worse : better;
  };
  Law law{};
  law.chemistry = &kind;
  law.pack = pack;
  law.pack.health_pct *= pick(1, spread.capacity_low, spread.capacity_high);
  law.resting_offset_v = pick(0, spread.resting_low_v, spread.resting_high_v);
  const double sound_ah = pack.capacity_ah * pack.health_pct / 100;
  const double cold =
      at(kind.resistance_at_c, pack.temperature_c) * pick(1, spread.resistance_high, spread.resistance_low);
  law.quick_ohm = kind.quick_mohm_ah * cold / sound_ah / 1000;
  law.fixed_ohm = kind.fixed_mohm / 1000;
  if (kind.kinetic) {
    law.wells = {capacity_ah(law.pack) * kind.kinetic->capacity_per_label, kind.kinetic->rate_per_h,
                 kind.kinetic->share};
  } else {
    law.slow_ohm = kind.slow_mohm_ah * cold / sound_ah / 1000;
    law.wells = {capacity_ah(law.pack), 1, 1};
  }
  return law;
}

WellState at_start(const Law& law, const Load& load) {
  return at_over_start(law.wells, overs_of(law, load), law.pack.used_ah);
}

double average_a(const Load& load) { return average_a(Overs{load.sending_a, load.pause_a, load.share, 0}); }

End end_of(const Law& law, const WellState& state, const Load& load, const Floors& floors) {
  const double mean_a = average_a(load), may_take_ah = allowed_ah(law, load) - taken_ah(law, state);
  End end{};
  end.by_reserve_h = may_take_ah <= 0 ? 0 : mean_a > 0 ? may_take_ah / mean_a : kNever;
  if (load.key_down_a > floors.most_a) return {0, EndBy::current_limit, end.by_reserve_h};
  const double at_set_v = floors.minimum_supply_v + load.key_down_a * load.lead_ohm;
  const double floor_v = std::max(at_set_v, floors.cut_off_v);
  const double least = std::max(0.0, filling_at(law, floor_v + sag_at_key_down_v(law, load)));
  // Nothing that happens after the reserve matters: spares the search where the voltage is still high then.
  const Overs overs = overs_of(law, load);
  double by_voltage_h = kNever;
  const auto under = [&](double hours) {
    return filling(law.wells, at_over_end(law.wells, state, overs, hours)) < least - kRounding;
  };
  if (!std::isfinite(end.by_reserve_h) || under(end.by_reserve_h) || under(0))
    by_voltage_h = hours_to_filling(law.wells, state, overs, least);
  if (by_voltage_h < end.by_reserve_h) {
    end.hours = by_voltage_h;
    end.by = at_set_v >= floors.cut_off_v ? EndBy::minimum_supply : EndBy::cut_off;
  } else {
    end.hours = end.by_reserve_h;
    end.by = EndBy::reserve;
  }
  return end;
}

double hours_alone(const Pack& pack, const Load& load) { return end_alone(pack, load).hours; }

double usable_ah(const Pack& pack, const Load& load) {
  const Law law = law_of(pack);
  const End end = end_alone(pack, load);
  // no product of hours and amperes where the charge itself is known
  if (end.by == EndBy::reserve) return std::max(0.0, allowed_ah(law, load) - pack.used_ah);
  return average_a(load) * end.hours;
}

double needed_label_ah(const Pack& pack, const Load& load, double hours) {
  double large_ah = average_a(load) * hours + pack.used_ah, small_ah = 0;
  if (large_ah <= 0) return 0;
  const auto enough = [&](double label_ah) {
    Pack tried = pack;
    tried.capacity_ah = label_ah;
    return hours_alone(tried, load) >= hours * (1 - 1e-12);
  };
  // a larger label gives more, and has the gentler load of the two
  for (int i = 0; i < 60 && !enough(large_ah); ++i) large_ah *= 2;
  while (large_ah - small_ah > 1e-12 * large_ah) {
    const double middle_ah = (small_ah + large_ah) / 2;
    (enough(middle_ah) ? large_ah : small_ah) = middle_ah;
  }
  return large_ah;
}

WellState after(const Law& law, const WellState& state, const Load& load, double hours) {
  return after(law.wells, state, average_a(load), hours);
}

double rested_v(const Law& law, const WellState& state) {
  return std::max(0.0, open_v(law, state.charge_ah / law.wells.capacity_ah));
}

double paused_v(const Law& law, const WellState& state, const Load& load) {
  return std::max(
      0.0, open_v(law, filling(law.wells, state)) - load.pause_a * (law.quick_ohm + law.fixed_ohm + law.slow_ohm));
}

double key_down_v(const Law& law, const WellState& state, const Load& load, double hours) {
  const Overs overs = overs_of(law, load);
  const WellState then = at_over_end(law.wells, state, overs, hours);
  return std::max(0.0, open_v(law, filling(law.wells, then)) - sag_at_key_down_v(law, load));
}

double left_at_rest_pct(const Law& law, double v) { return 100 * std::clamp(filling_at(law, v), 0.0, 1.0); }

double left_pct(const Law& law, const WellState& state, const Load& load) {
  return std::clamp(100 * (1 - taken_ah(law, state) / counts_as_ah(law, load)), 0.0, 100.0);
}

bool outside_tested(const Law& law, const Load& load, const Floors& floors) {
  const Chemistry& kind = *law.chemistry;
  const double c = law.pack.temperature_c, a_per_ah = load.sending_a / law.pack.capacity_ah;
  if (c < kind.capacity_at_c.front().x || c > kHottestC) return true;
  if (!kind.kinetic) return a_per_ah > kind.capacity_at_rate.back().x;
  const double floor_v = std::max(floors.minimum_supply_v + load.key_down_a * load.lead_ohm, floors.cut_off_v);
  return a_per_ah > kHardestTabledAPerAh || (floor_v > kHighestTabledV && a_per_ah > kHardestMeasuredAPerAh);
}

}  // namespace gs::battery
