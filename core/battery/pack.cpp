#include "core/battery/pack.h"

namespace gs::battery {

double capacity_ah(const Pack& pack) {
  return pack.capacity_ah * pack.health_pct / 100 * at(pack.chemistry->capacity_at_c, pack.temperature_c);
}

double usual_max_current_a(const Chemistry& chemistry, double capacity_ah) {
  return chemistry.most_discharge_a_per_ah * capacity_ah;
}

}  // namespace gs::battery
