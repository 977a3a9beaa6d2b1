// cables() itself is written by assets/catalogues/make_tables.py.
#include "core/feedline/cable.h"

#include <limits>

#include "core/feedline/loss_fit.h"
#include "core/units.h"

namespace gs::feedline {

const Cable* find_cable(std::string_view key) {
  for (const Cable& cable : cables())
    if (cable.key == key) return &cable;
  return nullptr;
}

double attenuation_db_per_100m(const Cable& cable, double frequency_mhz) {
  const LossLaw law{cable.k0_db_per_100m, cable.k1_db_per_100m, cable.k2_db_per_100m};
  return attenuation_db_per_100m(law, frequency_mhz);
}

double rated_power_w(const Cable& cable, double frequency_mhz, double swr) {
  if (!(cable.rating_w_db_per_100m > 0) || !(swr >= 1)) return std::numeric_limits<double>::quiet_NaN();
  return cable.rating_w_db_per_100m / attenuation_db_per_100m(cable, frequency_mhz) / swr;
}

double capacitance_pf_per_m(const Cable& cable) {
  return 1e12 / (cable.z0_ohm * cable.velocity_factor * kSpeedOfLightMPerS);
}

}  // namespace gs::feedline
