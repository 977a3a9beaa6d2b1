// Where a value stands on a slider, and which values a slider can take.
#pragma once

#include <algorithm>
#include <cmath>

#include "core/outing/table.h"

namespace gs::parts {

/// Scale::near: what a twentieth of the range takes of the track is what follows when lengths add and ratios
/// multiply; a metre of cable near 10 m is then 7 px of a phone's track, in place of 3.
inline constexpr double kNearShare = 20;

/// 0..1 along the track.
inline double place_of(Scale scale, double least, double most, double value) {
  value = std::clamp(value, least, most);
  if (!(most > least)) return 0;
  if (scale == Scale::log) return std::log(value / least) / std::log(most / least);
  const double place = (value - least) / (most - least);
  return scale == Scale::near ? std::log1p(kNearShare * place) / std::log1p(kNearShare) : place;
}

inline double value_at(Scale scale, double least, double most, double place) {
  place = std::clamp(place, 0.0, 1.0);
  if (scale == Scale::log) return least * std::pow(most / least, place);
  if (scale == Scale::near) place = std::expm1(place * std::log1p(kNearShare)) / kNearShare;
  return least + (most - least) * place;
}

/// Nearest value a step away from zero, within the range; a tenth of the step when fine.
inline double snapped(const Lever& row, double most, double value, bool fine) {
  const double step = step_at(row, value) / (fine ? 10 : 1);
  return std::clamp(std::round(value / step) * step, row.least, std::max(row.least, most));
}

}  // namespace gs::parts
