#include "core/battery/charge.h"

#include <limits>

#include "core/battery/discharge.h"

namespace gs::battery {

ChargeTime charge_time(const Chemistry& chemistry, double missing_ah, double charger_a) {
  if (missing_ah <= 0) return {0, 0};
  if (charger_a <= 0) return {std::numeric_limits<double>::infinity(), chemistry.charge_tail_h};
  return {missing_ah * chemistry.charge_factor / charger_a, chemistry.charge_tail_h};
}

double panel_current_a(double panel_w, double gives_pct, double pack_v) {
  return panel_w * gives_pct / 100 / pack_v;
}

double most_charge_a_per_ah(const Chemistry& chemistry, double temperature_c) {
  if (temperature_c <= chemistry.charge_from_c) return 0;
  return temperature_c < chemistry.gentle_below_c ? chemistry.gentle_charge_a_per_ah
                                                  : chemistry.most_charge_a_per_ah;
}

double health_from_test_pct(const Chemistry& chemistry, double label_ah, double current_a, double hours,
                            double temperature_c) {
  constexpr double kMostPct = 400;
  if (hours <= 0) return 0;
  double low_pct = 0, high_pct = kMostPct;
  for (int i = 0; i < 60; ++i) {
    const double middle_pct = (low_pct + high_pct) / 2;
    const Pack tried{
        .chemistry = &chemistry, .capacity_ah = label_ah, .health_pct = middle_pct, .temperature_c = temperature_c};
    (hours_alone(tried, steady(current_a)) >= hours ? high_pct : low_pct) = middle_pct;
  }
  return high_pct;
}

}  // namespace gs::battery
