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

/// Straight in the logarithm of the number between three points, held beyond them.
double by_log_number(double count, const double (&value)[3]) {
  constexpr double kNumbers[] = {2, 15, 60};
  if (count <= kNumbers[0]) return value[0];
  for (std::size_t i = 1; i < 3; ++i)
    if (count < kNumbers[i]) {
      const double share = std::log(count / kNumbers[i - 1]) / std::log(kNumbers[i] / kNumbers[i - 1]);
      return value[i - 1] + share * (value[i] - value[i - 1]);
    }
  return value[2];
}

/// Share of the quarter-wave radials' loss that longer ones keep: 52, 18.5 and 4.4 of 59, 22.4 and 7.3 ohm.
double share_of_long(double count, double length_waves) {
  if (!(length_waves > kQuarterRadialWaves) || !(count >= 2)) return 1;
  constexpr double kShares[] = {52.4 / 58.7, 18.5 / 22.4, 4.4 / 7.3};
  const double longer = std::log(std::min(length_waves, kLongRadialWaves) / kQuarterRadialWaves) /
                        std::log(kLongRadialWaves / kQuarterRadialWaves);
  return std::pow(by_log_number(count, kShares), longer);
}

}  // namespace

GroundLoss radial_loss(double count, double length_waves) {
  constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
  if (!(count >= 0) || !(length_waves > 0)) return {kNone, kNone, kNone};
  GroundLoss loss = by_number(count);
  if (length_waves < kShortRadialWaves) {
    // A handbook table, read second hand, has 17 ohm for 16 radials of 0.1 wavelengths: the low side stays the
    // row's own.
    constexpr double kFloor[] = {kFifteenShortRadialsOhm, kFifteenShortRadialsOhm, kShortRadialsOhm};
    loss.usual_ohm = std::max(loss.usual_ohm, by_log_number(count, kFloor));
    loss.highest_ohm = std::max(loss.highest_ohm, loss.usual_ohm);
  }
  loss.usual_ohm *= share_of_long(count, length_waves);
  loss.lowest_ohm = std::min(loss.lowest_ohm, loss.usual_ohm);
  return loss;
}

RadialField radial_field(double count) {
  constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
  const std::span<const RadialFieldRow> rows = radial_fields();
  if (!(count >= rows.front().radials)) return {kNone, kNone};
  if (count >= rows.back().radials) return {rows.back().ground_db, rows.back().raised_db};
  std::size_t upper = 1;
  while (rows[upper].radials < count) ++upper;
  const RadialFieldRow &low = rows[upper - 1], &high = rows[upper];
  const double share = std::log(count / low.radials) / std::log(high.radials / low.radials);
  return {low.ground_db + share * (high.ground_db - low.ground_db),
          low.raised_db + share * (high.raised_db - low.raised_db)};
}

}  // namespace gs::antenna
