#include "core/antenna/length.h"

#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::antenna {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
// 234/f feet: rule of the trade for a quarter wave of wire (common practice), 5 % under a quarter wave in space.
constexpr double kQuarterWaveMMhz = 234 * kMetresPerFoot;

bool above_0(double x) { return x > 0 && std::isfinite(x); }
double share_of(Wire wire) { return wire == Wire::insulated ? kInsulatedShare : 1.0; }

}  // namespace

double wavelength_m(double frequency_mhz, double velocity_factor) {
  if (!above_0(frequency_mhz) || !above_0(velocity_factor)) return kNone;
  return kSpeedOfLightMPerS / 1e6 * velocity_factor / frequency_mhz;
}

double cut_length_m(const Kind& kind, double frequency_mhz, Wire wire) {
  if (!above_0(kind.cut_constant_m_mhz) || !above_0(frequency_mhz)) return kNone;
  return kind.cut_constant_m_mhz * share_of(wire) / frequency_mhz;
}

// Constant over length is frequency as constant over frequency is length.
double cut_frequency_mhz(const Kind& kind, double length_m, Wire wire) {
  return cut_length_m(kind, length_m, wire);
}

double raised_radial_m(double frequency_mhz) {
  return above_0(frequency_mhz) ? kQuarterWaveMMhz / frequency_mhz : kNone;
}

double ground_radial_m(double frequency_mhz) { return kOnGroundShare * wavelength_m(frequency_mhz) / 4; }

double trimmed_length_m(double length_m, double resonant_mhz, double wanted_mhz) {
  if (!above_0(length_m) || !above_0(resonant_mhz) || !above_0(wanted_mhz)) return kNone;
  return length_m * (resonant_mhz / wanted_mhz);
}

double further_change_m(double change_m, double before_mhz, double after_mhz, double wanted_mhz) {
  if (!std::isfinite(change_m) || !above_0(before_mhz) || !above_0(after_mhz) || !above_0(wanted_mhz)) return kNone;
  if (before_mhz == after_mhz) return kNone;
  // Differences of 1/f, written so that neighbours keep their digits.
  return change_m * ((after_mhz - wanted_mhz) / (before_mhz - after_mhz)) * (before_mhz / wanted_mhz);
}

double khz_per_cm(double length_m, double frequency_mhz) {
  if (!above_0(length_m) || !above_0(frequency_mhz)) return kNone;
  return 10 * frequency_mhz / length_m;  // 1000 kHz a MHz over 100 cm a metre
}

double higher_resonance_mhz(double first_mhz, int order, FedAt fed_at) {
  if (!above_0(first_mhz) || order < 1 || (fed_at == FedAt::middle && order % 2 == 0)) return kNone;
  return first_mhz * ((order - kEndEffect) / (1 - kEndEffect));
}

}  // namespace gs::antenna
