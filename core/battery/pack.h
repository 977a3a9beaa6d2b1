// A pack as it stands: its label, and what age, cold and use have left of it.
#pragma once

#include "core/battery/chemistry.h"

namespace gs::battery {

/// Valid: capacity_ah > 0, 0 < health_pct <= 100, 0 <= reserve_pct < 100, used_ah >= 0, any finite temperature.
/// Precondition: chemistry is not null. Two equal packs side by side are one of twice the capacity.
struct Pack {
  const Chemistry* chemistry;
  double capacity_ah;  // as printed on it: lithium at a gentle rate, lead-acid in 20 h
  double health_pct = 100;
  double temperature_c = 25;
  double reserve_pct = 0;  // of what it holds as it stands
  double used_ah = 0;
};

/// Label x health x temperature curve, whatever the load: what the state of charge, and so the voltage, goes by.
double capacity_ah(const Pack& pack);

/// Usual limit of the pack's current where none is given.
double usual_max_current_a(const Chemistry& chemistry, double capacity_ah);

}  // namespace gs::battery
