// What one roll loses at one frequency: by the catalogue, by what was measured on it, warm or cold.
#pragma once

#include <limits>

#include "core/feedline/cable.h"

namespace gs::feedline {

/// Attenuation, conductors and dielectric apart: the loss angle of Z0 and the temperature hang on the split.
struct RollLoss {
  double conductor_db_per_100m = 0, dielectric_db_per_100m = 0;
  double total_db_per_100m() const { return conductor_db_per_100m + dielectric_db_per_100m; }
};

/// By the catalogue at 20 C. The term that grows with f is the dielectric's, all else the conductors'. `share` >=
/// 0: this roll's loss over the catalogue's; what an old roll loses more, corrosion and broken strands, is put down
/// to the conductors. frequency_mhz > 0.
RollLoss catalogue_loss(const Cable& cable, double share, double frequency_mhz);

/// One attenuation that was measured on the roll: frequency_mhz > 0, db_per_100m > 0. NaN: none.
struct MeasuredLoss {
  double frequency_mhz = std::numeric_limits<double>::quiet_NaN();
  double db_per_100m = std::numeric_limits<double>::quiet_NaN();
  bool known() const { return frequency_mhz > 0 && db_per_100m > 0; }
};

/// By one measurement: the cable's own law, stretched until it meets it.
RollLoss measured_loss(const Cable& cable, MeasuredLoss one, double frequency_mhz);
/// By two at different frequencies: k1 sqrt(f) + k2 f through both; where that would need a negative constant, the
/// one term that meets both best (least relative error). Same frequency twice: as one, of their mean. Source: as
/// fit_loss, which gives the same constants.
RollLoss measured_loss(const Cable& cable, MeasuredLoss one, MeasuredLoss other, double frequency_mhz);

/// The loss at another temperature than 20 C. Conductor loss goes with the root of the resistance, and copper has
/// 0.00393 per C; dielectric loss is taken as it is. From -60 to 120 C. Sources: temperature coefficient of
/// annealed copper, IEC 60028 (from memory); a cable-television operator's rule of 1 % for each 10 F (seen) agrees.
RollLoss at_temperature(RollLoss loss, double temperature_c);

/// Least attenuation that a coaxial cable of these diameters can have: smooth copper, no dielectric loss. dB/100 m,
/// diameters in mm > 0, z0_ohm > 0. Source: skin resistance of copper at 20 C (1/58 ohm mm2/m, IEC 60028); a cable
/// maker's design rule (SSI Cable, seen) has the same law with a constant half a percent higher.
double copper_floor_db_per_100m(double z0_ohm, double inner_mm, double outer_mm, double frequency_mhz);

}  // namespace gs::feedline
