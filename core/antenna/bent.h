// A half-wave wire bent in its middle: what the angle of an inverted V does to length and resistance.
#pragma once

#include <complex>

namespace gs::antenna {

/// Feed impedance in ohm of a thin wire fed in the middle whose halves stand between_deg apart, sine current, free
/// space: the straight wire's induced-EMF impedance (dipole_ohm) and what bending changes between its halves, an
/// integral over both (mixed potentials). length_waves above 0 to 0.9, radius as there, between_deg 30 to 180; else
/// NaN. 180 is dipole_ohm. Source: textbooks (mutual impedance of two filaments with sine currents).
std::complex<double> bent_dipole_ohm(double length_waves, double radius_waves, double between_deg);

/// A bent wire against the straight one of the same thickness, each at its own resonance in free space: length and
/// resistance. Against a wire model: length to 0.1 %, resistance to 2 % from 90 degrees up and 5 % at 60. NaN as
/// above.
struct Bend {
  double length_ratio, resistance_ratio;
};
Bend bend_of(double radius_waves, double between_deg);

}  // namespace gs::antenna
