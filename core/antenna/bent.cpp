#include "core/antenna/bent.h"

#include <cmath>
#include <limits>

#include "core/antenna/emf.h"
#include "core/antenna/resonance.h"
#include "core/units.h"

namespace gs::antenna {
namespace {

using Complex = std::complex<double>;
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

// Gauss and Legendre, ten points on -1 to 1: Abramowitz and Stegun, table 25.4.
constexpr double kAt[] = {0.148874338981631, 0.433395394129247, 0.679409568299024, 0.865063366688985,
                          0.973906528517172};
constexpr double kWeight[] = {0.295524224714753, 0.269266719309996, 0.219086362515982, 0.149451349150581,
                              0.066671344308688};

template <class F>
Complex gauss(F&& f, double from, double to) {
  const double middle = (from + to) / 2, half = (to - from) / 2;
  Complex sum = 0;
  for (int i = 0; i < 5; ++i) {
    const Complex low = f(middle - half * kAt[i]), high = f(middle + half * kAt[i]);
    sum += kWeight[i] * (low + high);
  }
  return sum * half;
}

/// Impedance between the two halves, each `half` long (in radians), current sin(half - s) / sin(half) at s from the
/// bend. They meet there: with s = p, t = p q the 1/distance cancels, and the other triangle is the mirror image.
Complex between_halves_ohm(double half, double cosine) {
  const Complex sum = gauss(
      [&](double p) {
        return gauss(
            [&](double q) {
              const double apart = std::sqrt(1 + q * q - 2 * q * cosine), s = p, t = p * q;
              const double currents = std::sin(half - s) * std::sin(half - t);
              const double charges = std::cos(half - s) * std::cos(half - t);
              const double distance = p * apart;
              return Complex(std::cos(distance), -std::sin(distance)) * ((charges - cosine * currents) / apart);
            },
            0, 1);
      },
      0, half);
  const double at_feed = std::sin(half);
  return Complex(0, kFreeSpaceOhm / (4 * kPi)) * (2.0 * sum) / (at_feed * at_feed);
}

/// The resonance next to half a wave, in wavelengths.
double resonant_waves_bent(double radius_waves, double between_deg) {
  return resonance_between(0.3, 0.6,
                           [&](double waves) { return bent_dipole_ohm(waves, radius_waves, between_deg).imag(); });
}

}  // namespace

Complex bent_dipole_ohm(double length_waves, double radius_waves, double between_deg) {
  if (!(between_deg >= 30 && between_deg <= 180) || !(length_waves > 0 && length_waves <= 0.9))
    return {kNone, kNone};
  const double half = kPi * length_waves;
  const Complex bent = between_halves_ohm(half, std::cos(between_deg * kPi / 180));
  const Complex straight = between_halves_ohm(half, -1);
  return dipole_ohm(length_waves, radius_waves) + 2.0 * (bent - straight);
}

Bend bend_of(double radius_waves, double between_deg) {
  const double straight = resonant_waves(radius_waves), bent = resonant_waves_bent(radius_waves, between_deg);
  if (!std::isfinite(straight + bent)) return {kNone, kNone};
  const double r = bent_dipole_ohm(bent, radius_waves, between_deg).real();
  return {bent / straight, r / dipole_ohm(straight, radius_waves).real()};
}

}  // namespace gs::antenna
