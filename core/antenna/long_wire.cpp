#include "core/antenna/long_wire.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::antenna {
namespace {

constexpr double kMostWaves = 200;
// Steps over half a turn of the direction: lobes of a wire stand half a wavelength's worth apart, each wants many.
constexpr int kFewest = 64, kAWave = 32;

/// Squared far field against the sine of the angle to the wire, times that sine; `along` is the angle's cosine.
double field_squared(double waves, FedAt fed_at, double along) {
  const double phase = 2 * kPi * waves;
  if (fed_at == FedAt::middle) {
    const double field = std::cos(phase / 2 * along) - std::cos(phase / 2);
    return field * field;
  }
  const double real = std::cos(phase * along) - std::cos(phase),
               imaginary = std::sin(phase * along) - along * std::sin(phase);
  return real * real + imaginary * imaginary;
}

}  // namespace

double straight_wire_gain_dbi(double waves, FedAt fed_at) {
  if (!(waves > 0 && waves <= kMostWaves)) return std::numeric_limits<double>::quiet_NaN();
  const int steps = kFewest + int(kAWave * waves);
  double greatest = 0, sum = 0;
  for (int i = 0; i < steps; ++i) {
    const double angle = kPi * (i + 0.5) / steps, sine = std::sin(angle);
    const double power = field_squared(waves, fed_at, std::cos(angle)) / (sine * sine);
    greatest = std::max(greatest, power);
    sum += power * sine;
  }
  return 10 * std::log10(2 * greatest / (sum * kPi / steps));
}

}  // namespace gs::antenna
