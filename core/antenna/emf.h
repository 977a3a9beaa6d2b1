// Thin straight wires by the induced-EMF method: closed forms that know no solver.
#pragma once

#include <complex>

namespace gs::antenna {

/// Impedance of free space, ohm. Source: CODATA (memory).
inline constexpr double kFreeSpaceOhm = 376.730313668;

// Lengths in wavelengths. Impossible input (not finite, not above 0) gets NaN.

/// Sine and cosine integral, x > 0: series below 2, continued fraction above; to 1e-12. Source: Abramowitz and
/// Stegun, ch. 5 (memory).
double sine_integral(double x);
double cosine_integral(double x);

/// Feed impedance in ohm of a straight wire fed in the middle, sine current, in free space. length_waves below
/// about 0.9, radius_waves from 1e-6 to 0.005. X to 5 ohm near resonance; R 7 to 15 % under real wires at half a
/// wave. Source: Balanis, Antenna Theory, sec. 8.5 (equations from memory).
std::complex<double> dipole_ohm(double length_waves, double radius_waves);
/// The shortest length at which that has no reactance, in wavelengths. Published theories agree within 0.6 %.
double resonant_waves(double radius_waves);
/// Mutual impedance of two half-wave wires side by side, sine current. Source: Balanis, sec. 8.6 (memory).
std::complex<double> mutual_ohm(double apart_waves);
/// Resistance of a half-wave wire lying level over perfect ground: 73.13 ohm less the mutual one of its image.
double over_perfect_ground_ohm(double height_waves);

/// End-effect length of a bare wire of half a wave in free space, m: resonant_waves at its own radius, frequency in
/// MHz.
double half_wave_m(double frequency_mhz, double diameter_m);
/// Velocity factor of an insulated wire over a ground: root of ((eps ln(4H/D) + ln(D/d)) / (eps ln(4H/d))), wire d,
/// insulation D, height H. Leaves 0.6 % of the shortening out against a wire model. Source: capacitance ratio, an
/// antenna news group with a worked figure (second hand).
double insulated_velocity_factor(double wire_m, double over_insulation_m, double permittivity, double height_m);

/// Field in mV/m rms that power_w, radiated with this directivity over perfect ground, makes distance_m away:
/// root(30 P D) / r, plane wave.
double field_mv_per_m(double power_w, double directivity, double distance_m);
/// Directivity of a quarter-wave vertical over perfect ground, sine current.
inline constexpr double kQuarterWaveDirectivity = 3.283;

}  // namespace gs::antenna
