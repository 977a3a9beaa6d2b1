// What a vertical on the ground loses to its radials.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::antenna {

/// One row of assets/catalogues/radials.csv: series loss of a quarter-wave vertical, and how far the sources
/// differ.
struct RadialRow {
  double radials, loss_ohm, lowest_ohm, highest_ohm;
  Evidence evidence;
  std::string_view source;
};
std::span<const RadialRow> radials();

/// A stake and no radials: 60 ohm or more (common practice).
inline constexpr double kStakeOhm = 60;
/// Radials shorter than this never get below kShortRadialsOhm, however many: 60 of 0.14 wavelengths still lost 2.1
/// dB (Proc. IRE 25(6), June 1937, as tabulated on a public page, second hand; ohms for 36 ohm of radiation).
/// Fifteen lost 2.3 dB.
inline constexpr double kShortRadialWaves = 0.15;
inline constexpr double kShortRadialsOhm = 22, kFifteenShortRadialsOhm = 25;
/// From a quarter wave on the same paper's radials of 0.41 wavelengths lose less: by these factors with 2, 15
/// and 60.
inline constexpr double kQuarterRadialWaves = 0.27, kLongRadialWaves = 0.41;

struct GroundLoss {
  double usual_ohm, lowest_ohm, highest_ohm;
};

/// Series ground loss at the base of a quarter-wave vertical with so many radials (>= 0; NaN below) of this length
/// in wavelengths (> 0). Between rows straight in the logarithms of number and loss; below 2 radials a stake; from
/// 120 on the last row. A shorter vertical has about the same ohms and so loses more of its power. Sources differ
/// by two to one for few radials: lowest and highest say how far.
GroundLoss radial_loss(double count, double length_waves);

/// One row of assets/catalogues/radials-field.csv: signal of a quarter-wave vertical over so many quarter-wave
/// radials, on the ground and just above it, against 60 on the ground.
struct RadialFieldRow {
  double radials, ground_db, raised_db;
  Evidence evidence;
  std::string_view source;
};
std::span<const RadialFieldRow> radial_fields();

/// The same for any number from 4 up, straight in its logarithm between rows, as the last row from 60 on, dB; NaN
/// below 4. One field, one soil: a later series of measurements (summaries read) has four raised ones as good as
/// 60, if kept symmetrical.
struct RadialField {
  double ground_db, raised_db;
};
RadialField radial_field(double count);

}  // namespace gs::antenna
