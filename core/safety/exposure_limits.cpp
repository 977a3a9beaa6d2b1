// The tables themselves are written by assets/catalogues/make_tables.py.
#include "core/safety/exposure_limits.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::safety {
namespace {
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kNever = std::numeric_limits<double>::infinity();
}  // namespace

const ExposureLimit* find_exposure_limit(double frequency_mhz, Audience audience, Rule rule) {
  for (const ExposureLimit& row : exposure_limits())
    if (row.rule == rule && row.audience == audience && frequency_mhz >= row.from_mhz &&
        frequency_mhz <= row.to_mhz)
      return &row;
  return nullptr;
}

double e_limit_v_per_m(double frequency_mhz, Audience audience, Rule rule) {
  const ExposureLimit* row = find_exposure_limit(frequency_mhz, audience, rule);
  return row ? row->e_v_per_m * std::pow(frequency_mhz, row->e_power) : kNone;
}

double h_limit_a_per_m(double frequency_mhz, Audience audience, Rule rule) {
  const ExposureLimit* row = find_exposure_limit(frequency_mhz, audience, rule);
  return row ? row->h_a_per_m * std::pow(frequency_mhz, row->h_power) : kNone;
}

double limit_w_per_m2(double frequency_mhz, Audience audience, Rule rule) {
  const ExposureLimit* row = find_exposure_limit(frequency_mhz, audience, rule);
  if (!row) return kNone;
  if (row->s_w_per_m2 > 0) return row->s_w_per_m2 * std::pow(frequency_mhz, row->s_power);
  const double e = e_limit_v_per_m(frequency_mhz, audience, rule),
               h = h_limit_a_per_m(frequency_mhz, audience, rule);
  return std::min(e * e / kFreeSpaceOhm, h * h * kFreeSpaceOhm);
}

double peak_limit_w_per_m2(double frequency_mhz, Audience audience, Rule rule) {
  const ExposureLimit* row = find_exposure_limit(frequency_mhz, audience, rule);
  if (!row) return kNone;
  if (!(row->peak_e_v_per_m > 0)) return kNever;
  const double e = row->peak_e_v_per_m, h = row->peak_h_a_per_m;
  return std::min(e * e / kFreeSpaceOhm, h * h * kFreeSpaceOhm);
}

double averaging_min(Audience audience, Rule rule) {
  for (const ExposureLimit& row : exposure_limits())
    if (row.rule == rule && row.audience == audience) return row.averaging_min;
  return kNone;
}

}  // namespace gs::safety
