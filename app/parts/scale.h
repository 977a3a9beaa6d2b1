// Where a value stands on a slider, and which values a slider can take.
#pragma once

#include <algorithm>
#include <cmath>

#include "core/outing/table.h"

namespace gs::parts {

/// 0..1 along the track.
inline double place_of(Scale scale, double least, double most, double value) {
  value = std::clamp(value, least, most);
  if (!(most > least)) return 0;
  return scale == Scale::log ? std::log(value / least) / std::log(most / least) : (value - least) / (most - least);
}

inline double value_at(Scale scale, double least, double most, double place) {
  place = std::clamp(place, 0.0, 1.0);
  return scale == Scale::log ? least * std::pow(most / least, place) : least + (most - least) * place;
}

/// Nearest value a step away from zero, within the range; a tenth of the step when fine.
inline double snapped(const Lever& row, double most, double value, bool fine) {
  const double step = step_at(row, value) / (fine ? 10 : 1);
  return std::clamp(std::round(value / step) * step, row.least, std::max(row.least, most));
}

}  // namespace gs::parts
