#include "core/safety/far_field.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::safety {
namespace {
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kDipoleGain = 1.64;      // 47 CFR 1.1307(b)(2): half-wave dipole over isotropic
constexpr double kExemptAlwaysW = 0.001;  // 47 CFR 1.1307(b)(3)(i)(A)

/// What the limit leaves room for: EIRP over distance squared, W/m2, of a power density in W/m2.
double eirp_per_m2(double density_w_per_m2, double ground_factor) {
  return 4 * kPi * density_w_per_m2 / ground_factor;
}

/// Averaged share of the peak power that meets the binding limit, over that limit: peak power x this = 1 at the
/// limit, per W/m2.
double worst_share_per_limit(const Emission& emission, Audience audience, Rule rule) {
  const double averaged =
      emission.duty * emission.busiest_share / limit_w_per_m2(emission.frequency_mhz, audience, rule);
  const double peak = 1 / peak_limit_w_per_m2(emission.frequency_mhz, audience, rule);
  return std::isfinite(averaged) ? std::max(averaged, peak) : kNone;
}
}  // namespace

double power_density_w_per_m2(const Emission& emission, double distance_m, double ground_factor) {
  if (!is_possible(emission) || !(distance_m > 0 && ground_factor > 0)) return kNone;
  return ground_factor * average_power_w(emission) * gain_factor(emission.gain_dbi) /
         (4 * kPi * distance_m * distance_m);
}

double far_field_distance_m(const Emission& emission, Audience audience, Rule rule, double ground_factor) {
  if (!is_possible(emission) || !(ground_factor > 0)) return kNone;
  const double times_limit = emission.peak_power_w * worst_share_per_limit(emission, audience, rule);
  return std::sqrt(times_limit * gain_factor(emission.gain_dbi) / eirp_per_m2(1, ground_factor));
}

double of_limit_pct(const Emission& emission, double distance_m, Audience audience, Rule rule,
                    double ground_factor) {
  if (!(distance_m > 0)) return kNone;
  const double of_distance = far_field_distance_m(emission, audience, rule, ground_factor) / distance_m;
  return 100 * of_distance * of_distance;
}

double peak_power_for_distance_w(Emission emission, double distance_m, Audience audience, Rule rule,
                                 double ground_factor) {
  emission.peak_power_w = 1;
  const double needed_m = far_field_distance_m(emission, audience, rule, ground_factor);
  if (!(distance_m > 0)) return kNone;
  return distance_m * distance_m / (needed_m * needed_m);
}

double reactive_zone_m(double frequency_mhz) {
  return frequency_mhz > 0 ? kSpeedOfLightMPerS / (frequency_mhz * 1e6) / (2 * kPi) : kNone;
}

double average_erp_w(const Emission& emission) {
  return average_power_w(emission) * gain_factor(emission.gain_dbi) / kDipoleGain;
}

double evaluation_owed_within_m(const Emission& emission) {
  if (!is_possible(emission)) return kNone;
  if (average_power_w(emission) <= kExemptAlwaysW) return 0;
  const double f = emission.frequency_mhz;
  for (const ExemptionThreshold& row : exemption_thresholds()) {
    if (f < row.from_mhz || f > row.to_mhz) continue;
    const double erp_w_per_m2 = row.erp_w_per_m2 * std::pow(f, row.frequency_power);
    return std::max(reactive_zone_m(f), std::sqrt(average_erp_w(emission) / erp_w_per_m2));
  }
  return kNone;
}

}  // namespace gs::safety
