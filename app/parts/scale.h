// Where a value stands on a slider, and which values a slider can take.
#pragma once

#include <algorithm>
#include <cmath>

#include "core/outing/table.h"

namespace gs::parts {

/// How a bar shares out its length: evenly; by ratios; or nearly evenly at its low end and by ratios beyond.
enum class Track : unsigned char { even, ratios, near };

/// Of Track::near: what is within a twentieth of the range lies nearly even. A metre of cable near 10 m is then 7
/// px of a phone's track, in place of 3.
inline constexpr double kNearShare = 20;

/// Wide ranges that begin at or near 0 are used most at their low end: lengths, watts, amperes, spares. Shares of a
/// whole and times of day are used all along.
inline Track track_of(const Lever& row) {
  if (row.scale == Scale::log) return Track::ratios;
  constexpr double kManySteps = 60;
  const double range = row.most - row.least;
  const bool all_along = row.unit == Unit::percent || row.unit == Unit::clock_minute;
  return !all_along && row.least >= 0 && row.least * kNearShare <= range && range >= kManySteps * row.step
             ? Track::near
             : Track::even;
}

/// 0..1 along the track.
inline double place_of(Track track, double least, double most, double value) {
  value = std::clamp(value, least, most);
  if (!(most > least)) return 0;
  if (track == Track::ratios) return std::log(value / least) / std::log(most / least);
  const double place = (value - least) / (most - least);
  return track == Track::near ? std::log1p(kNearShare * place) / std::log1p(kNearShare) : place;
}

inline double value_at(Track track, double least, double most, double place) {
  place = std::clamp(place, 0.0, 1.0);
  if (track == Track::ratios) return least * std::pow(most / least, place);
  if (track == Track::near) place = std::expm1(place * std::log1p(kNearShare)) / kNearShare;
  return least + (most - least) * place;
}

/// Nearest value a step away from zero, within the range; a tenth of the step when fine.
inline double snapped(const Lever& row, double most, double value, bool fine) {
  const double step = step_at(row, value) / (fine ? 10 : 1);
  return std::clamp(std::round(value / step) * step, row.least, std::max(row.least, most));
}

}  // namespace gs::parts
