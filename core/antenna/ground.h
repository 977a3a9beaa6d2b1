// What real ground does to a wave and to a level dipole above it.
#pragma once

#include <complex>

namespace gs::antenna {

/// Relative permittivity (>= 1) and conductivity in S/m (>= 0). Average ground: 13 and 0.005 (list of common types,
/// second hand).
struct Ground {
  double permittivity = 13, conductivity_s_per_m = 0.005;
};
/// eps - j sigma / (omega eps0), time factor e^{j omega t}.
std::complex<double> permittivity_of(const Ground& ground, double frequency_mhz);

/// Fresnel's coefficients for a wave arriving at elevation_deg (0..90) over the horizon, electric field level or in
/// the plane of incidence; perfect ground gives -1 and +1. Impossible input gets NaN.
struct Reflection {
  std::complex<double> level, upright;
};
Reflection reflection(const Ground& ground, double frequency_mhz, double elevation_deg);
/// Elevation in degrees at which the upright coefficient is least (0 to 90).
double brewster_deg(const Ground& ground, double frequency_mhz);

/// Change of a level dipole's feed impedance by the ground height_waves below, ohm: plane-wave spectrum of its sine
/// current over a half-space. length_waves near a half; height_waves 0.01 to 2. Against image theory to 0.01 ohm
/// where the ground is made perfect (conductivity infinite is not needed: `perfect`). Takes milliseconds: not for a
/// drag. Source: transmission-line form of the half-space, textbooks; docs/methods/antenna.
std::complex<double> ground_change_ohm(const Ground& ground, double frequency_mhz, double height_waves,
                                       double length_waves = 0.5, bool perfect = false);
/// Gain straight up of a half-wave dipole at this height, dBi, ground absorption counted as input: the free-space
/// dipole's with the image, over the resistance that the ground leaves.
double zenith_gain_dbi(const Ground& ground, double frequency_mhz, double height_waves);

}  // namespace gs::antenna
