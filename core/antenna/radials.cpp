#include "core/antenna/radials.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::antenna {
namespace {

// The lowest figure of a row may be 0, whose logarithm is none: a tenth of an ohm stands for it in between.
constexpr double kLeastOhm = 0.1;

double between(double from_ohm, double to_ohm, double share) {
  const double from = std::log(std::max(from_ohm, kLeastOhm)), to = std::log(std::max(to_ohm, kLeastOhm));
  return std::exp(from + share * (to - from));
}

GroundLoss by_number(double count) {
  const std::span<const RadialRow> rows = radials();
  if (count < rows.front().radials) return {kStakeOhm, rows.front().lowest_ohm, 2 * kStakeOhm};
  std::size_t upper = 1;
  while (upper + 1 < rows.size() && rows[upper].radials < count) ++upper;
  const RadialRow &low = rows[upper - 1], &high = rows[upper];
  if (count >= high.radials) return {high.loss_ohm, high.lowest_ohm, high.highest_ohm};
  if (count == low.radials) return {low.loss_ohm, low.lowest_ohm, low.highest_ohm};
  const double share = std::log(count / low.radials) / std::log(high.radials / low.radials);
  return {between(low.loss_ohm, high.loss_ohm, share), between(low.lowest_ohm, high.lowest_ohm, share),
          between(low.highest_ohm, high.highest_ohm, share)};
}

}  // namespace

GroundLoss radial_loss(double count, double length_waves) {
  constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
  if (!(count >= 0) || !(length_waves > 0)) return {kNone, kNone, kNone};
  GroundLoss loss = by_number(count);
  if (length_waves < kShortRadialWaves) {
    // A handbook table, read second hand, has 17 ohm for 16 radials of 0.1 wavelengths: the low side stays the
    // row's own.
    loss.usual_ohm = std::max(loss.usual_ohm, kShortRadialsOhm);
    loss.highest_ohm = std::max(loss.highest_ohm, loss.usual_ohm);
  }
  return loss;
}

}  // namespace gs::antenna
