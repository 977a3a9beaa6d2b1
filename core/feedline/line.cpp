#include "core/feedline/line.h"

#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::feedline {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kDbPerPowerNeper = kDbPerNeper / 2;  // 10 / ln 10

// Past this much loss one way (174 dB) the wave that comes back is below the last bit of a double: the line is as
// good as endless, and cosh and sinh would only head for overflow.
constexpr double kEndlessNeper = 20.0;

/// Root with real part >= 0 of a number with imaginary part >= 0, both parts to full relative precision: the
/// smaller one comes from their product. One of our compilers' libraries takes it from an angle instead, and loses
/// the attenuation of an almost loss-free line.
Complex root(Complex square) {
  const double larger = std::sqrt((std::abs(square) + std::abs(square.real())) / 2);
  const double smaller = larger > 0 ? square.imag() / (2 * larger) : 0.0;
  return square.real() < 0 ? Complex{smaller, larger} : Complex{larger, smaller};
}

}  // namespace

Line line_from_constants(double r_ohm_per_m, double l_h_per_m, double g_s_per_m, double c_f_per_m,
                         double frequency_hz, double length_m) {
  const double w = 2 * kPi * frequency_hz;
  const Complex series{r_ohm_per_m, w * l_h_per_m}, shunt{g_s_per_m, w * c_f_per_m};
  // One root of the product keeps a small attenuation exact; a product of two roots would take it from a
  // difference.
  return {root(series * shunt), std::sqrt(series / shunt), length_m};
}

Line line_from_nominal(double z0_ohm, double velocity_factor, double conductor_db_per_100m,
                       double dielectric_db_per_100m, double frequency_mhz, double length_m) {
  const double conductor = conductor_db_per_100m / 100 / kDbPerNeper;
  const double dielectric = dielectric_db_per_100m / 100 / kDbPerNeper;
  const double beta = 2 * kPi * frequency_mhz * 1e6 / (velocity_factor * kSpeedOfLightMPerS);
  return {{conductor + dielectric, beta}, z0_ohm * Complex{1, (dielectric - conductor) / beta}, length_m};
}

double matched_loss_db(const Line& line) { return line.gamma_per_m.real() * line.length_m * kDbPerNeper; }

Complex input_impedance_ohm(const Line& line, Complex load_ohm) {
  const Complex z0 = line.z0_ohm;
  const Complex theta = line.gamma_per_m * line.length_m;
  if (theta.real() > kEndlessNeper) return z0;
  const Complex c = std::cosh(theta), s = std::sinh(theta);
  // Whichever of the load's impedance and admittance is the smaller one keeps every product in range.
  const bool high = std::abs(load_ohm) > std::abs(z0);
  const Complex small = high ? z0 / load_ohm : load_ohm / z0;
  const Complex near_end = high ? c + small * s : small * c + s;
  const Complex far_end = high ? small * c + s : c + small * s;
  const Complex input = z0 * (near_end / far_end);  // not finite where far_end is exactly 0
  return std::isfinite(input.real()) && std::isfinite(input.imag()) ? input : Complex{kOpenEndOhm, 0};
}

double total_loss_db(const Line& line, Complex load_ohm) {
  if (load_ohm.real() <= 0) return kInfinity;
  const Complex z0 = line.z0_ohm;
  const Complex gamma_load = (load_ohm - z0) / (load_ohm + z0);
  const double rho2 = std::norm(gamma_load);
  const double neper = line.gamma_per_m.real() * line.length_m;
  const double turn = line.gamma_per_m.imag() * line.length_m;
  // Power into the load for a forward wave of |V|^2 = |Z0|^2 at the load.
  const double load_power = load_ohm.real() * std::norm(2.0 * (z0 / (load_ohm + z0)));

  if (neper > kEndlessNeper) {
    if (!(load_power > 0)) return kInfinity;
    return 2 * neper * kDbPerPowerNeper + 10 * std::log10(z0.real() / load_power);
  }
  // |cosh gl + (ZL/Z0) sinh gl|^2 Rin / RL written out in waves, less 1. Nothing cancels on a short or almost
  // loss-free line: exp(-2 j beta l) - 1 = -2 j sin(beta l) exp(-j beta l).
  const Complex turned = gamma_load * Complex{0, -2 * std::sin(turn)} * std::polar(1.0, -turn);
  const double lost_power =
      z0.real() * (std::expm1(2 * neper) - rho2 * std::expm1(-2 * neper)) - 2 * z0.imag() * turned.imag();
  if (lost_power <= 0) return 0.0;  // below 0 by rounding only: the line is passive
  return load_power > 0 ? kDbPerPowerNeper * std::log1p(lost_power / load_power) : kInfinity;
}

double electrical_length_wavelengths(const Line& line) {
  return line.gamma_per_m.imag() * line.length_m / (2 * kPi);
}

}  // namespace gs::feedline
