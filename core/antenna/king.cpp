#include "core/antenna/king.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/antenna/emf.h"
#include "core/antenna/resonance.h"
#include "core/units.h"

namespace gs::antenna {
namespace {

using Complex = std::complex<double>;
using Three = std::array<Complex, 3>;
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kWave = 2 * kPi;  // lengths are in wavelengths

/// Gauss-Legendre, eight points, right half (Abramowitz and Stegun, table 25.4; memory).
constexpr std::array<double, 4> kNodes = {0.1834346424956498, 0.5255324099163290, 0.7966664774136267,
                                          0.9602898564975363};
constexpr std::array<double, 4> kWeights = {0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                            0.1012285362903763};

/// The three currents at z, all 0 at the ends.
std::array<double, 3> currents(double z, double half) {
  return {std::sin(kWave * std::abs(z)) - std::sin(kWave * half), std::cos(kWave * z) - std::cos(kWave * half),
          std::cos(kWave * z / 2) - std::cos(kWave * half / 2)};
}

/// Integral of the kernel exp(-jkR)/R times each current over from..to, seen from z on the wire's surface. With z'
/// = z + a sinh t the distance goes out of the denominator, so that a thin wire is no harder than a thick one.
void add_stretch(double from, double to, double z, double half, double radius, Three& sum) {
  const double first = std::asinh((from - z) / radius), last = std::asinh((to - z) / radius);
  const int panels = std::max(2, int(std::ceil(last - first)));
  const double width = (last - first) / panels;
  for (int p = 0; p < panels; ++p) {
    const double middle = first + (p + 0.5) * width;
    for (std::size_t i = 0; i < kNodes.size(); ++i) {
      for (const double side : {-1.0, 1.0}) {
        const double t = middle + side * kNodes[i] * width / 2;
        const double apart = radius * std::cosh(t);
        const std::array<double, 3> at = currents(z + radius * std::sinh(t), half);
        const Complex kernel = std::polar(kWeights[i] * width / 2, -kWave * apart);
        for (std::size_t n = 0; n < sum.size(); ++n) sum[n] += kernel * at[n];
      }
    }
  }
}

Three potentials(double z, double half, double radius) {
  Three sum{};
  add_stretch(-half, 0, z, half, radius, sum);  // the first current has a corner in the middle
  add_stretch(0, half, z, half, radius, sum);
  return sum;
}

}  // namespace

Complex three_term_ohm(double length_waves, double radius_waves) {
  if (!(length_waves >= 0.05 && length_waves <= 1.25) || !(radius_waves >= 1e-6 && radius_waves <= 0.01) ||
      !(radius_waves < length_waves / 10))
    return {kNone, kNone};
  const double half = length_waves / 2;
  const Three end = potentials(half, half, radius_waves);
  const auto above_end = [&](double z) {
    Three v = potentials(z, half, radius_waves);
    for (std::size_t n = 0; n < v.size(); ++n) v[n] -= end[n];
    return v;
  };
  // Where the first term's proportion is taken: the middle, or a quarter wave from the end of a longer wire, where
  // its sine is largest.
  const double largest = std::max(0.0, half - 0.25);
  const Three at_middle = above_end(0), at_largest = largest > 0 ? above_end(largest) : at_middle;
  const std::array<double, 3> here = currents(0, half);
  // Real part of the kernel: each current makes a potential like itself. Imaginary part: whatever the current, one
  // like the third.
  const double own_1 = at_largest[0].real() / currents(largest, half)[0], own_2 = at_middle[1].real() / here[1];
  const Complex to_third_1(0, at_middle[0].imag() / here[2]), to_third_2(0, at_middle[1].imag() / here[2]);
  const Complex own_3 = at_middle[2] / here[2];
  // a1 own_1 = e/2,  a2 own_2 = C,  a1 to_third_1 + a2 to_third_2 + a3 own_3 = 0, and at the end
  // a1 V1 + a2 V2 + a3 V3 = e/2 sin kh + C cos kh, with e = -j 4 pi over the impedance of free space for a volt.
  const Complex half_source(0, -2 * kPi / kFreeSpaceOhm);
  const Complex a1 = half_source / own_1;
  const double sine = std::sin(kWave * half), cosine = std::cos(kWave * half);
  const Complex a2 = (half_source * sine - a1 * (end[0] - end[2] * to_third_1 / own_3)) /
                     (end[1] - end[2] * to_third_2 / own_3 - own_2 * cosine);
  const Complex a3 = -(a1 * to_third_1 + a2 * to_third_2) / own_3;
  return 1.0 / (a1 * here[0] + a2 * here[1] + a3 * here[2]);
}

double three_term_resonant_waves(double radius_waves) {
  return resonance_between(0.4, 0.5, [&](double waves) { return three_term_ohm(waves, radius_waves).imag(); });
}

}  // namespace gs::antenna
