#include "core/antenna/ground.h"

#include <cmath>
#include <limits>

#include "core/antenna/emf.h"
#include "core/units.h"

namespace gs::antenna {
namespace {

using Complex = std::complex<double>;
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kEpsilon0 = 8.8541878128e-12;
constexpr double kHalfWaveOhm = 73.13, kHalfWaveDirectivity = 1.643;

bool sound(const Ground& ground, double frequency_mhz) {
  return ground.permittivity >= 1 && ground.conductivity_s_per_m >= 0 && frequency_mhz > 0 &&
         std::isfinite(ground.permittivity + ground.conductivity_s_per_m + frequency_mhz);
}

/// Root with the imaginary part that lets a wave die away downwards.
Complex down(Complex square) {
  const Complex root = std::sqrt(square);
  return root.imag() > 0 ? -root : root;
}

/// Everything of the spectrum at one radial wavenumber (in units of k): both polarisations' impedance times
/// reflection.
struct Slab {
  Complex magnetic, electric;
};
Slab slab(Complex eps, double kr, Complex kz, bool perfect) {
  const Complex te = kFreeSpaceOhm / kz, tm = kFreeSpaceOhm * kz;
  if (perfect) return {-tm, -te};
  const Complex k2 = down(eps - kr * kr), te2 = kFreeSpaceOhm / k2, tm2 = kFreeSpaceOhm * k2 / eps;
  return {tm * ((tm2 - tm) / (tm2 + tm)), te * ((te2 - te) / (te2 + te))};
}

/// Spectrum of a sine current of half-length l (in radians), squared, over k^2.
double current_squared(double kx, double l) {
  const double square = 1 - kx * kx;
  const double part = std::abs(square) < 1e-6 ? l * std::sin(l) / 2 : (std::cos(kx * l) - std::cos(l)) / square;
  const double spectrum = 2 * part / std::sin(l);
  return spectrum * spectrum;
}

/// Integral over the direction of the wavenumber, a quarter of the circle four times (midpoints: it is periodic).
Complex around(const Slab& at, double kr, double l) {
  constexpr int kSteps = 48;
  double along = 0, across = 0;
  for (int i = 0; i < kSteps; ++i) {
    const double phi = (i + 0.5) * kPi / 2 / kSteps, c = std::cos(phi);
    const double weight = current_squared(kr * c, l);
    along += weight * c * c;
    across += weight * (1 - c * c);
  }
  return (along * at.magnetic + across * at.electric) * (4 * kPi / 2 / kSteps);
}

template <class F>
Complex simpson(F&& f, double from, double to, int intervals) {
  const double step = (to - from) / intervals;
  Complex sum = f(from) + f(to);
  for (int i = 1; i < intervals; ++i) sum += f(from + i * step) * (i % 2 ? 4.0 : 2.0);
  return sum * (step / 3);
}

}  // namespace

Complex permittivity_of(const Ground& ground, double frequency_mhz) {
  if (!sound(ground, frequency_mhz)) return {kNone, kNone};
  return {ground.permittivity, -ground.conductivity_s_per_m / (2 * kPi * frequency_mhz * 1e6 * kEpsilon0)};
}

Reflection reflection(const Ground& ground, double frequency_mhz, double elevation_deg) {
  if (!(elevation_deg >= 0 && elevation_deg <= 90)) return {{kNone, kNone}, {kNone, kNone}};
  const Complex eps = permittivity_of(ground, frequency_mhz);
  const double e = elevation_deg * kPi / 180, sine = std::sin(e), cosine = std::cos(e);
  const Complex q = down(eps - cosine * cosine);
  return {(sine - q) / (sine + q), (eps * sine - q) / (eps * sine + q)};
}

double brewster_deg(const Ground& ground, double frequency_mhz) {
  if (!sound(ground, frequency_mhz)) return kNone;
  const auto size = [&](double deg) { return std::norm(reflection(ground, frequency_mhz, deg).upright); };
  double low = 0, high = 90;
  const double golden = (std::sqrt(5.0) - 1) / 2;
  for (int i = 0; i < 80; ++i) {
    const double a = high - golden * (high - low), b = low + golden * (high - low);
    if (size(a) < size(b))
      high = b;
    else
      low = a;
  }
  return (low + high) / 2;
}

Complex ground_change_ohm(const Ground& ground, double frequency_mhz, double height_waves, double length_waves,
                          bool perfect) {
  if (!sound(ground, frequency_mhz) || !(height_waves > 0) || !(length_waves > 0 && length_waves < 1))
    return {kNone, kNone};
  const Complex eps = permittivity_of(ground, frequency_mhz), j(0, 1);
  const double l = kPi * length_waves, twice_height = 4 * kPi * height_waves;
  // Waves that travel: kr = sin(theta); waves that cling to the wire: kr = cosh(t).
  const Complex travelling = simpson(
      [&](double theta) {
        const double kr = std::sin(theta), kz = std::max(std::cos(theta), 1e-9);
        return around(slab(eps, kr, kz, perfect), kr, l) * std::exp(-j * kz * twice_height) * kr * kz;
      },
      0, kPi / 2, 240);
  const double farthest = std::asinh(40 / twice_height);
  const Complex clinging = simpson(
      [&](double t) {
        const double kr = std::cosh(t), size = std::max(std::sinh(t), 1e-9);
        const Complex kz = -j * size;
        return around(slab(eps, kr, kz, perfect), kr, l) * std::exp(-size * twice_height) * kr * size;
      },
      0, farthest, 600);
  return (travelling + clinging) / (8 * kPi * kPi);
}

double zenith_gain_dbi(const Ground& ground, double frequency_mhz, double height_waves) {
  const Complex change = ground_change_ohm(ground, frequency_mhz, height_waves);
  const Complex image = reflection(ground, frequency_mhz, 90).level * std::exp(Complex(0, -4 * kPi * height_waves));
  return 10 *
         std::log10(kHalfWaveDirectivity * std::norm(1.0 + image) * kHalfWaveOhm / (kHalfWaveOhm + change.real()));
}

}  // namespace gs::antenna
