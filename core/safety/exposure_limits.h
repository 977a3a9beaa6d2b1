// What field strength and power density people may stand in, by rule, audience and frequency.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::safety {

/// passer_by: everybody who was not told and trained ("general population / uncontrolled", "general public").
/// radio_operator: the operator and informed members of the household (47 CFR 97.13(c)(1)).
enum class Audience : unsigned char { passer_by, radio_operator };

/// Whose limits: 47 CFR 1.1310; ICNIRP 2020 with ICNIRP 2010; the German 26. BImSchV.
enum class Rule : unsigned char { us, icnirp, germany };

/// One row: a limit is value x f^power, f in MHz, rms. s_w_per_m2 0: none given. peak_*: for what is never averaged
/// over time; 0: none.
struct ExposureLimit {
  std::string_view key;
  Rule rule;
  Audience audience;
  double from_mhz, to_mhz;
  double e_v_per_m, e_power, h_a_per_m, h_power, s_w_per_m2, s_power;
  double averaging_min;
  double peak_e_v_per_m, peak_h_a_per_m;
  Evidence evidence;
  std::string_view source;
};
std::span<const ExposureLimit> exposure_limits();

/// The row that holds at this frequency, or null outside 0.1 to 400 MHz (as far as the rule's rows go). Where two
/// rows meet, the lower one.
const ExposureLimit* find_exposure_limit(double frequency_mhz, Audience audience, Rule rule);

/// Impedance of free space as the limits' own tables use it: 47 CFR 1.1307(b)(2), S = E^2 / 377.
inline constexpr double kFreeSpaceOhm = 377.0;

/// Limits at a frequency in MHz, from the rows' own sources. NaN where no row holds.
double e_limit_v_per_m(double frequency_mhz, Audience audience, Rule rule);
double h_limit_a_per_m(double frequency_mhz, Audience audience, Rule rule);
/// Plane-wave power density in W/m2: the row's own, else the smaller of E^2 / 377 and 377 H^2.
double limit_w_per_m2(double frequency_mhz, Audience audience, Rule rule);
/// The same for what is not averaged over time (nerve stimulation, up to 10 MHz); infinity where the rule has none.
double peak_limit_w_per_m2(double frequency_mhz, Audience audience, Rule rule);
/// Time over which exposure is averaged, min: 30 or 6; one figure for all frequencies of the tables.
double averaging_min(Audience audience, Rule rule);

/// 47 CFR 1.1307(b)(3)(i)(C): effective radiated power over 1 m2 of distance squared, erp_w_per_m2 x
/// f^frequency_power.
struct ExemptionThreshold {
  std::string_view key;
  double from_mhz, to_mhz, erp_w_per_m2, frequency_power;
  Evidence evidence;
  std::string_view source;
};
std::span<const ExemptionThreshold> exemption_thresholds();

}  // namespace gs::safety
