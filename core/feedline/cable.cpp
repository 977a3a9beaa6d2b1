// cables() itself is written by assets/catalogues/make_tables.py.
#include "core/feedline/cable.h"

#include "core/feedline/loss_fit.h"

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

}  // namespace gs::feedline
