// Exact theory of a uniform lossy transmission line.
#pragma once

#include <complex>

namespace gs::feedline {

using Complex = std::complex<double>;

/// A uniform line at one frequency: propagation constant (Np/m + j rad/m), complex characteristic impedance,
/// length.
struct Line {
  Complex gamma_per_m;
  Complex z0_ohm;
  double length_m;
};

/// Line of distributed constants R ohm/m, L H/m, G S/m, C F/m at frequency_hz > 0; all >= 0, L and C > 0.
/// Source: Hayt and Buck, Engineering Electromagnetics, 8th ed., ch. 10 (gamma and Z0 of the lossy line).
Line line_from_constants(double r_ohm_per_m, double l_h_per_m, double g_s_per_m, double c_f_per_m,
                         double frequency_hz, double length_m);

/// Line of nominal data: real z0_ohm > 0, velocity_factor in (0, 1], conductor and dielectric loss in dB/100 m >=
/// 0. Conductor loss becomes series resistance, dielectric loss shunt conductance, so Z0 gets its loss angle Z0 (1
/// - j alpha_c/beta + j alpha_d/beta). frequency_mhz > 0. Source: low-loss form of the same chapter.
Line line_from_nominal(double z0_ohm, double velocity_factor, double conductor_db_per_100m,
                       double dielectric_db_per_100m, double frequency_mhz, double length_m);

/// Loss of the line into its own Z0, dB >= 0.
double matched_loss_db(const Line& line);

/// Stands for an open end, and for an impedance too high to say.
inline constexpr double kOpenEndOhm = 1e12;

/// Impedance seen at the input with `load_ohm` at the far end (finite, real part >= 0; an open end: kOpenEndOhm, a
/// shorted one: 0). Where it grows without bound (loss-free line in resonance): kOpenEndOhm. Past 174 dB of loss:
/// Z0. Written with cosh and sinh: tanh of a complex number overflows to NaN on a loss-free quarter wave with one
/// of our compilers' libraries. Source: Pozar, Microwave Engineering, 4th ed., sec. 2.7 (from memory).
Complex input_impedance_ohm(const Line& line, Complex load_ohm);

/// Power into the line over power into the load, dB >= 0. Infinite where the load takes no power (real part <= 0).
/// Source: exact for complex Z0: (Rin / RL) |cosh gl + (ZL/Z0) sinh gl|^2, as documented by an open
/// RF-network library (function for total loss). Computed from the same expression written out in
/// forward and backward waves, which loses no digits on short or almost loss-free lines.
double total_loss_db(const Line& line, Complex load_ohm);

/// Electrical length in wavelengths on the line.
double electrical_length_wavelengths(const Line& line);

}  // namespace gs::feedline
