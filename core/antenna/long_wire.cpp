#include "core/antenna/long_wire.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::antenna {
namespace {

constexpr double kMostWaves = 200;
// Steps over a quarter turn of the direction: lobes of a wire stand half a wavelength's worth apart, each wants
// many.
constexpr int kFewest = 32, kAWave = 16;

/// Squared far field times the squared sine of the angle to the wire, by the angle's cosine.
class FieldSquared {
 public:
  FieldSquared(double waves, FedAt fed_at)
      : end_(fed_at == FedAt::end),
        phase_(2 * kPi * (end_ ? waves : waves / 2)),
        cosine_(std::cos(phase_)),
        sine_(std::sin(phase_)) {}
  double operator()(double along) const {
    const double real = std::cos(phase_ * along) - cosine_;
    const double imaginary = end_ ? std::sin(phase_ * along) - along * sine_ : 0;
    return real * real + imaginary * imaginary;
  }

 private:
  bool end_;
  double phase_, cosine_, sine_;
};

}  // namespace

double straight_wire_gain_dbi(double waves, FedAt fed_at) {
  if (!(waves > 0 && waves <= kMostWaves)) return std::numeric_limits<double>::quiet_NaN();
  const int steps = kFewest + int(kAWave * waves);
  const FieldSquared field_squared(waves, fed_at);
  // a standing wave sends as much to one side of broadside as to the other; broadside itself is no step
  double greatest = field_squared(0), sum = 0;
  for (int i = 0; i < steps; ++i) {
    const double angle = kPi / 2 * (i + 0.5) / steps, sine = std::sin(angle);
    const double power = field_squared(std::cos(angle)) / (sine * sine);
    greatest = std::max(greatest, power);
    sum += power * sine;
  }
  return 10 * std::log10(2 * greatest / (sum * kPi / steps));
}

}  // namespace gs::antenna
