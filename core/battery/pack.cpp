#include "core/battery/pack.h"

#include <algorithm>
#include <limits>

namespace gs::battery {
namespace {

double hours_for(double charge_ah, double load_a) {
  if (charge_ah <= 0) return 0;
  if (load_a <= 0) return std::numeric_limits<double>::infinity();
  return charge_ah / load_a;
}

}  // namespace

double capacity_ah(const Pack& pack) {
  return pack.capacity_ah * pack.health_pct / 100 * at(pack.chemistry->capacity_at_c, pack.temperature_c);
}

double capacity_at_load_ah(const Pack& pack, double load_a) {
  return capacity_ah(pack) * at(pack.chemistry->capacity_at_rate, load_a / pack.capacity_ah);
}

double usable_ah(const Pack& pack, double load_a) {
  return std::max(0.0, capacity_at_load_ah(pack, load_a) * (1 - pack.reserve_pct / 100) - pack.used_ah);
}

double runtime_h(const Pack& pack, double load_a) { return hours_for(usable_ah(pack, load_a), load_a); }

double runtime_with_spare_h(const Pack& pack, double spare_capacity_ah, double load_a) {
  const double first_h = runtime_h(pack, load_a);
  if (spare_capacity_ah <= 0) return first_h;
  Pack spare = pack;
  spare.capacity_ah = spare_capacity_ah;
  spare.used_ah = 0;
  return first_h + runtime_h(spare, load_a);
}

double left_pct(const Pack& pack, double load_a, double hours) {
  const double taken_ah = pack.used_ah + load_a * hours;
  return std::clamp(100 * (1 - taken_ah / capacity_at_load_ah(pack, load_a)), 0.0, 100.0);
}

double charge_left_pct(const Pack& pack, double taken_ah) {
  return std::clamp(100 * (1 - (pack.used_ah + taken_ah) / capacity_ah(pack)), 0.0, 100.0);
}

double needed_capacity_ah(const Pack& pack, double load_a, double hours) {
  const double wanted_ah = load_a * hours + pack.used_ah;
  if (wanted_ah <= 0) return 0;
  const auto enough = [&](double label_ah) {
    Pack tried = pack;
    tried.capacity_ah = label_ah;
    return capacity_at_load_ah(tried, load_a) * (1 - pack.reserve_pct / 100) >= wanted_ah;
  };
  // A larger label gives more, and has the gentler load of the two: usable charge rises all the way.
  double too_small_ah = 0, large_ah = wanted_ah;
  while (!enough(large_ah)) {
    too_small_ah = large_ah;
    large_ah *= 2;
  }
  while (large_ah - too_small_ah > 1e-13 * large_ah) {
    const double middle_ah = too_small_ah + (large_ah - too_small_ah) / 2;
    if (middle_ah <= too_small_ah || middle_ah >= large_ah) break;
    (enough(middle_ah) ? large_ah : too_small_ah) = middle_ah;
  }
  return large_ah;
}

double resting_v(const Chemistry& chemistry, double charge_left_pct) {
  return at(chemistry.resting_v, charge_left_pct);
}

double sag_v(const Pack& pack, const Draw& draw) {
  const Chemistry& kind = *pack.chemistry;
  const double cold = at(kind.resistance_at_c, pack.temperature_c);
  const double sound_ah = pack.capacity_ah * pack.health_pct / 100;
  const double cells_mv =
      (kind.quick_mohm_ah * draw.key_down_a + kind.slow_mohm_ah * draw.lasting_a) * cold / sound_ah;
  return (cells_mv + kind.fixed_mohm * draw.key_down_a) / 1000;
}

double loaded_v(const Pack& pack, double charge_left_pct, const Draw& draw) {
  return std::max(0.0, resting_v(*pack.chemistry, charge_left_pct) - sag_v(pack, draw));
}

double hours_to_resting_v(const Pack& pack, double load_a, double least_resting_v) {
  const Chemistry& kind = *pack.chemistry;
  if (least_resting_v > kind.resting_v.back().y) return 0;
  const double may_take = 1 - where(kind.resting_v, least_resting_v) / 100;
  return hours_for(capacity_ah(pack) * may_take - pack.used_ah, load_a);
}

double usual_max_current_a(const Chemistry& chemistry, double capacity_ah) {
  return chemistry.most_discharge_a_per_ah * capacity_ah;
}

}  // namespace gs::battery
