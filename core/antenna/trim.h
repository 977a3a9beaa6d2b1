// Trimming from several readings, and which of them contradict each other.
#pragma once

#include <span>

namespace gs::antenna {

/// Whole length of the wire and where it was found to resonate.
struct TrimReading {
  double length_m, dip_mhz;
};

/// length_m: what resonates where wanted. fixed_m: the part of the antenna that is not wire (ends, surroundings).
/// worst_khz: how far the readings stand off one law. doubt: index of the reading to doubt, -1 for none; the length
/// then rests on the others. All NaN where there is no law: no reading, or impossible ones.
struct TrimFit {
  double length_m, fixed_m, worst_khz;
  int doubt;
};
/// (length + fixed) x frequency stays. One reading: fixed is 0. More: straight line of length over 1/f, least
/// squares. A reading is doubted where a longer wire is said to resonate higher, where the line misses one by more
/// than half a per cent of its frequency, or where fixed comes out beyond a quarter of the wire: then the one
/// without which the rest agree best, and, for two, the later. Own derivation; bounds are common practice.
TrimFit fit_trim(std::span<const TrimReading> readings, double wanted_mhz);

inline constexpr double kTrimMissShare = 0.005, kMostFixedShare = 0.25;

}  // namespace gs::antenna
