// The tables themselves are written by assets/catalogues/make_tables.py.
#include "core/rules/bands.h"

#include <limits>

namespace gs::rules {

const ModeWidth* find_mode(std::string_view key) {
  for (const ModeWidth& row : mode_widths())
    if (row.key == key) return &row;
  return nullptr;
}

std::string_view band_of(double frequency_mhz, Region region) {
  for (const BandSegment& row : band_segments())
    if ((row.regions & int(region)) && frequency_mhz >= row.low_mhz && frequency_mhz <= row.high_mhz)
      return row.band;
  for (const FixedChannel& row : fixed_channels())
    if (frequency_mhz >= row.upper_dial_mhz && frequency_mhz <= 2 * row.centre_mhz - row.upper_dial_mhz)
      return row.band;
  return "";
}

PowerLimit power_limit(double frequency_mhz, Region region, Class licence) {
  PowerLimit least{std::numeric_limits<double>::quiet_NaN(), false, ""};
  for (const PowerCap& row : power_caps()) {
    if (!(row.regions & int(region)) || !(row.classes & int(licence))) continue;
    if (!(frequency_mhz >= row.low_mhz && frequency_mhz <= row.high_mhz)) continue;
    if (!(least.limit_w <= row.limit_w)) least = {row.limit_w, row.erp, row.source};
  }
  return least;
}

}  // namespace gs::rules
