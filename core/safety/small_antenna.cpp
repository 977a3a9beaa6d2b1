// loop_distances() itself is written by assets/catalogues/make_tables.py.
#include "core/safety/small_antenna.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/safety/far_field.h"
#include "core/units.h"

namespace gs::safety {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kTablePowerW = 150;  // FCC OET Bulletin 65 Supplement B, Table 17

/// Whether E and H at this distance keep within the limits. Falls with distance, as both factors do.
bool keeps(const Emission& emission, const ExposureLimit& row, double ground_factor, double distance_m) {
  const double f = emission.frequency_mhz;
  const double eirp_w = ground_factor * emission.peak_power_w * gain_factor(emission.gain_dbi);
  const double peak_e = std::sqrt(kFreeSpaceOhm / (4 * kPi) * eirp_w) / distance_m * near_e_factor(f, distance_m);
  const double peak_h = std::sqrt(eirp_w / (4 * kPi * kFreeSpaceOhm)) / distance_m * near_h_factor(f, distance_m);
  const double averaged = std::sqrt(emission.duty * emission.busiest_share);  // fields go with the root of power
  if (row.peak_e_v_per_m > 0 && (peak_e > row.peak_e_v_per_m || peak_h > row.peak_h_a_per_m)) return false;
  return peak_e * averaged <= row.e_v_per_m * std::pow(f, row.e_power) &&
         peak_h * averaged <= row.h_a_per_m * std::pow(f, row.h_power);
}

double table_distance_m(double frequency_mhz, Audience audience) {
  const std::span<const LoopDistance> rows = loop_distances();
  const auto distance_m = [audience](const LoopDistance& row) {
    return audience == Audience::passer_by ? row.public_m : row.operator_m;
  };
  if (frequency_mhz <= rows.front().frequency_mhz) return distance_m(rows.front());
  for (std::size_t i = 1; i < rows.size(); ++i) {
    if (frequency_mhz > rows[i].frequency_mhz) continue;
    const double along =
        (frequency_mhz - rows[i - 1].frequency_mhz) / (rows[i].frequency_mhz - rows[i - 1].frequency_mhz);
    return std::lerp(distance_m(rows[i - 1]), distance_m(rows[i]), along);
  }
  return distance_m(rows.back());
}

}  // namespace

double near_e_factor(double frequency_mhz, double distance_m) {
  const double x = distance_m / reactive_zone_m(frequency_mhz), u = 1 / (x * x);
  return std::sqrt(1 - u + u * u);
}

double near_h_factor(double frequency_mhz, double distance_m) {
  const double x = distance_m / reactive_zone_m(frequency_mhz);
  return std::sqrt(1 + 1 / (x * x));
}

double short_whip_distance_m(const Emission& emission, Audience audience, Rule rule, double ground_factor) {
  const ExposureLimit* row = find_exposure_limit(emission.frequency_mhz, audience, rule);
  if (!row || !is_possible(emission) || !(ground_factor > 0)) return kNone;
  double near_m = 1e-6, far_m = 1e6;  // at the near end no power in use keeps, at the far end every one does
  if (keeps(emission, *row, ground_factor, near_m)) return near_m;
  if (!keeps(emission, *row, ground_factor, far_m)) return kNone;
  for (int i = 0; i < 100 && far_m > near_m * (1 + 1e-13); ++i) {
    const double middle_m = std::sqrt(near_m * far_m);
    (keeps(emission, *row, ground_factor, middle_m) ? far_m : near_m) = middle_m;
  }
  return far_m;
}

double small_loop_distance_m(const Emission& emission, Audience audience, Rule rule) {
  const double f = emission.frequency_mhz;
  const double own = limit_w_per_m2(f, audience, rule), table = limit_w_per_m2(f, audience, Rule::us);
  const double peak = peak_limit_w_per_m2(f, audience, rule);
  if (!is_possible(emission) || !(own > 0 && table > 0)) return kNone;
  const double power_w = std::max(average_power_w(emission) * table / own, emission.peak_power_w * table / peak);
  const double ratio = power_w / kTablePowerW;
  return table_distance_m(f, audience) * std::max(std::pow(ratio, 1.0 / 6), std::sqrt(ratio));
}

}  // namespace gs::safety
