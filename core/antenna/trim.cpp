#include "core/antenna/trim.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace gs::antenna {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

struct Law {
  double constant, fixed_m, worst_share;  // length = constant / f - fixed
};

double dip_mhz(const Law& law, double length_m) { return law.constant / (length_m + law.fixed_m); }

Law law_of(std::span<const TrimReading> readings) {
  const double count = double(readings.size());
  double mean_x = 0, mean_y = 0, xx = 0, xy = 0;
  for (const TrimReading& r : readings) {
    mean_x += 1 / r.dip_mhz / count;
    mean_y += r.length_m / count;
  }
  for (const TrimReading& r : readings) {
    xx += (1 / r.dip_mhz - mean_x) * (1 / r.dip_mhz - mean_x);
    xy += (1 / r.dip_mhz - mean_x) * (r.length_m - mean_y);
  }
  Law law{mean_y / mean_x, 0, 0};  // one reading, or all at one frequency: length x frequency stays
  if (xx > 1e-12 * mean_x * mean_x) law = {xy / xx, xy / xx * mean_x - mean_y, 0};
  for (const TrimReading& r : readings)
    law.worst_share = std::max(law.worst_share, std::abs(dip_mhz(law, r.length_m) / r.dip_mhz - 1));
  return law;
}

bool believable(const Law& law, std::span<const TrimReading> readings) {
  return law.constant > 0 && law.worst_share <= kTrimMissShare &&
         std::abs(law.fixed_m) <= kMostFixedShare * readings.front().length_m;
}

std::vector<TrimReading> without(std::span<const TrimReading> readings, std::size_t index) {
  std::vector<TrimReading> rest(readings.begin(), readings.end());
  rest.erase(rest.begin() + std::ptrdiff_t(index));
  return rest;
}

/// How ill the readings agree: their misses, and a fixed part that no wire has.
double discord(const Law& law, std::span<const TrimReading> readings) {
  if (!(law.constant > 0)) return std::numeric_limits<double>::infinity();
  return law.worst_share / kTrimMissShare + std::abs(law.fixed_m) / readings.front().length_m / kMostFixedShare;
}

}  // namespace

TrimFit fit_trim(std::span<const TrimReading> readings, double wanted_mhz) {
  const auto sound = [](double x) { return x > 0 && std::isfinite(x); };
  if (readings.empty() || !sound(wanted_mhz)) return {kNone, kNone, kNone, -1};
  for (const TrimReading& r : readings)
    if (!sound(r.length_m) || !sound(r.dip_mhz)) return {kNone, kNone, kNone, -1};
  Law law = law_of(readings);
  int doubt = -1;
  double worst_share = law.worst_share;
  if (readings.size() > 1 && !believable(law, readings)) {
    double least = std::numeric_limits<double>::infinity();
    doubt = int(readings.size()) - 1;
    Law best = law_of(without(readings, std::size_t(doubt)));
    if (readings.size() > 2) {
      for (std::size_t i = 0; i < readings.size(); ++i) {
        const std::vector<TrimReading> rest = without(readings, i);
        const Law other = law_of(rest);
        if (discord(other, rest) >= least) continue;
        least = discord(other, rest);
        best = other;
        doubt = int(i);
      }
    }
    law = best;
    const TrimReading& odd = readings[std::size_t(doubt)];
    worst_share = std::abs(dip_mhz(law, odd.length_m) / odd.dip_mhz - 1);
  }
  return {law.constant / wanted_mhz - law.fixed_m, law.fixed_m, 1000 * worst_share * wanted_mhz, doubt};
}

}  // namespace gs::antenna
