#include "core/antenna/emf.h"

#include <cmath>
#include <limits>

#include "core/antenna/resonance.h"
#include "core/units.h"

namespace gs::antenna {
namespace {

using Complex = std::complex<double>;
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kEuler = 0.57721566490153286;
constexpr double kSeriesBelow = 2;

bool above_0(double x) { return x > 0 && std::isfinite(x); }

/// E1(jx), x > 0, by its continued fraction (modified Lentz): Ci = -Re, Si = pi/2 + Im.
Complex exponential_integral(double x) {
  Complex b(1, x), c(1e300, 0), d = 1.0 / b, h = d;
  for (int i = 1; i < 400; ++i) {
    const double a = -double(i) * i;
    b += 2.0;
    d = 1.0 / (a * d + b);
    c = b + a / c;
    const Complex step = c * d;
    h *= step;
    if (std::abs(step - 1.0) < 1e-15) break;
  }
  return Complex(std::cos(x), -std::sin(x)) * h;
}

}  // namespace

double sine_integral(double x) {
  if (!above_0(x)) return x == 0 ? 0 : kNone;
  if (x > kSeriesBelow) return kPi / 2 + exponential_integral(x).imag();
  double term = x, sum = x;
  for (int n = 1; n < 30; ++n) {
    term *= -x * x / ((2.0 * n) * (2.0 * n + 1));
    sum += term / (2.0 * n + 1);
  }
  return sum;
}

double cosine_integral(double x) {
  if (!above_0(x)) return kNone;
  if (x > kSeriesBelow) return -exponential_integral(x).real();
  double term = 1, sum = 0;
  for (int n = 1; n < 30; ++n) {
    term *= -x * x / ((2.0 * n - 1) * (2.0 * n));
    sum += term / (2.0 * n);
  }
  return kEuler + std::log(x) + sum;
}

Complex dipole_ohm(double length_waves, double radius_waves) {
  if (!above_0(length_waves) || !above_0(radius_waves)) return {kNone, kNone};
  const double kl = 2 * kPi * length_waves, ka = 2 * kPi * radius_waves;
  const double si = sine_integral(kl), si2 = sine_integral(2 * kl);
  const double ci = cosine_integral(kl), ci2 = cosine_integral(2 * kl);
  const double r = kEuler + std::log(kl) - ci + std::sin(kl) / 2 * (si2 - 2 * si) +
                   std::cos(kl) / 2 * (kEuler + std::log(kl / 2) + ci2 - 2 * ci);
  const double x =
      2 * si + std::cos(kl) * (2 * si - si2) - std::sin(kl) * (2 * ci - ci2 - cosine_integral(2 * ka * ka / kl));
  const double at_feed = std::sin(kl / 2) * std::sin(kl / 2);
  return Complex(kFreeSpaceOhm / (2 * kPi) * r, kFreeSpaceOhm / (4 * kPi) * x) / at_feed;
}

double resonant_waves(double radius_waves) {
  if (!above_0(radius_waves)) return kNone;
  // below half a wave the reactance rises with length
  return resonance_between(0.3, 0.5, [&](double waves) { return dipole_ohm(waves, radius_waves).imag(); });
}

Complex mutual_ohm(double apart_waves) {
  if (!above_0(apart_waves)) return {kNone, kNone};
  constexpr double kLength = 0.5;
  const double k = 2 * kPi, slant = std::hypot(apart_waves, kLength);
  const double u0 = k * apart_waves, u1 = k * (slant + kLength);
  const double u2 = k * apart_waves * apart_waves / (slant + kLength);  // slant - length without losing its digits
  return kFreeSpaceOhm / (4 * kPi) *
         Complex(2 * cosine_integral(u0) - cosine_integral(u1) - cosine_integral(u2),
                 -(2 * sine_integral(u0) - sine_integral(u1) - sine_integral(u2)));
}

double over_perfect_ground_ohm(double height_waves) {
  constexpr double kHalfWaveOhm = 73.13;
  return kHalfWaveOhm - mutual_ohm(2 * height_waves).real();
}

double half_wave_m(double frequency_mhz, double diameter_m) {
  if (!above_0(frequency_mhz) || !above_0(diameter_m)) return kNone;
  const double wave_m = kSpeedOfLightMPerS / 1e6 / frequency_mhz;
  return resonant_waves(diameter_m / 2 / wave_m) * wave_m;
}

double insulated_velocity_factor(double wire_m, double over_insulation_m, double permittivity, double height_m) {
  if (!above_0(wire_m) || !(over_insulation_m >= wire_m) || !(permittivity >= 1) || !(height_m > over_insulation_m))
    return kNone;
  return std::sqrt(
      (permittivity * std::log(4 * height_m / over_insulation_m) + std::log(over_insulation_m / wire_m)) /
      (permittivity * std::log(4 * height_m / wire_m)));
}

double field_mv_per_m(double power_w, double directivity, double distance_m) {
  if (!above_0(power_w) || !above_0(directivity) || !above_0(distance_m)) return kNone;
  return 1000 * std::sqrt(30 * power_w * directivity) / distance_m;
}

}  // namespace gs::antenna
