// The tables behind "may I transmit here?": who may be where, with what, how loud. US rules, in the three ITU
// Regions. The licence and the rules of the place decide, never this table.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::rules {

/// Bits, for rows that hold for several.
enum class Region : unsigned char { one = 1, two = 2, three = 4 };
enum class Class : unsigned char { extra = 1, advanced = 2, general = 4, technician = 8, novice = 16 };

enum class Kind : unsigned char { cw, phone, data };
/// Where the signal lies beside the dial. by_band: lower sideband below 10 MHz, but upper on 60 m; upper above.
enum class Place : unsigned char { upper, lower, centred, by_band };
/// What technicians and novices may send in a stretch.
enum class Newcomers : unsigned char { as_others, cw_only, ssb_only };

/// Where these classes may transmit in these Regions. MHz.
struct BandSegment {
  std::string_view key, band;
  int regions, classes;  // bits
  double low_mhz, high_mhz;
  Evidence evidence;
  std::string_view source;
};
std::span<const BandSegment> band_segments();

/// Where phone or data may be sent. CW may be sent everywhere, on 60 m as these rows say.
struct EmissionSegment {
  std::string_view key;
  double low_mhz, high_mhz;
  Kind kind;
  double widest_khz;  // 0: no figure
  int regions;
  Newcomers newcomers;
  bool fm;          // wide frequency modulation is allowed
  bool upper_only;  // SSB on the upper sideband only
  Evidence evidence;
  std::string_view source;
};
std::span<const EmissionSegment> emission_segments();

/// One frequency: CW on the centre, SSB and data with the dial at upper_dial_mhz.
struct FixedChannel {
  std::string_view key, band;
  double centre_mhz, upper_dial_mhz, widest_khz;
  Evidence evidence;
  std::string_view source;
};
std::span<const FixedChannel> fixed_channels();

/// The most power in a stretch; where several rows hold, the least. erp: over a half-wave dipole, else peak
/// envelope power of the set.
struct PowerCap {
  std::string_view key;
  double low_mhz, high_mhz, limit_w;
  bool erp;
  int regions, classes;
  Evidence evidence;
  std::string_view source;
};
std::span<const PowerCap> power_caps();

/// A way of sending: what it is in the rules, where it lies and how wide it is taken to be.
struct ModeWidth {
  std::string_view key, name;
  Kind kind;
  Place place;
  double width_khz;
  Evidence evidence;
  std::string_view source;
};
std::span<const ModeWidth> mode_widths();
const ModeWidth* find_mode(std::string_view key);

/// "20m": the band of this frequency in this Region (80m to its very end), or "" outside every band.
std::string_view band_of(double frequency_mhz, Region region);

struct PowerLimit {
  double limit_w;  // NaN where the class may not transmit
  bool erp;
  std::string_view source;
};
/// The power limit at a frequency. The least that will do is asked for everywhere (47 CFR 97.313(a)).
PowerLimit power_limit(double frequency_mhz, Region region, Class licence);

}  // namespace gs::rules
