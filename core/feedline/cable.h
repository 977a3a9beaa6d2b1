// The cable catalogue and its loss law.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::feedline {

/// One published point of attenuation. `half_step_db_per_100m` is half the last digit that the source prints:
/// no law can be tested more finely than that.
struct CablePoint {
  double frequency_mhz;
  double attenuation_db_per_100m;
  double half_step_db_per_100m;
  Evidence evidence;
  std::string_view source;
};

/// One catalogue row. The loss law is k0 + k1 sqrt(f) + k2 f in dB/100 m with f in MHz, all three >= 0.
struct Cable {
  std::string_view key;   // kept for ever: outing files hold it
  std::string_view name;  // what people call it; never a maker's name
  bool retired;           // no longer offered, still read from old files
  double z0_ohm;          // nominal characteristic impedance
  double velocity_factor;
  double k0_db_per_100m, k1_db_per_100m, k2_db_per_100m;
  double lowest_mhz, highest_mhz;  // range in which the law was tested
  double mass_g_per_m;             // 0: not known
  double diameter_mm;              // 0: not known
  double worst_fit_pct;            // largest departure of the law from its own points within 1.8 to 54 MHz
  std::string_view fit_note;  // where the law is further off than its points allow: how far, and why; else empty
  Evidence loss_evidence;     // weakest evidence among what the law rests on
  std::string_view loss_source;
  Evidence body_evidence;  // of z0, velocity factor, mass and diameter
  std::string_view body_source;
  double rating_w_db_per_100m;  // average power x attenuation that warms it to its limit; 0: not known
  double working_vrms;          // highest working voltage; 0: not known
  Evidence rating_evidence;     // of the two above; nothing where neither is known
  std::string_view rating_source;
  std::span<const CablePoint> points;
};

/// All rows, retired ones included, in catalogue order.
std::span<const Cable> cables();

/// The row with this key, or null.
const Cable* find_cable(std::string_view key);

/// Matched loss of the cable in dB/100 m at 20 C. frequency_mhz > 0 (NaN below 0); tested between lowest_mhz and
/// highest_mhz. Source: the row's own (loss_source).
double attenuation_db_per_100m(const Cable& cable, double frequency_mhz);

/// Average power in W that the cable takes for long at SWR `swr` >= 1; NaN where no rating is known. The heat of a
/// metre goes with power times attenuation, so one constant holds for every frequency; on a standing wave the
/// hottest place carries up to SWR times the average. frequency_mhz > 0. Source: the row's own; constant to 1.3 %
/// over its table.
double rated_power_w(const Cable& cable, double frequency_mhz, double swr);

/// Capacitance in pF/m that impedance and velocity factor stand for, 1 / (Z0 VF c). Published figures agree to 3 %.
double capacitance_pf_per_m(const Cable& cable);

}  // namespace gs::feedline
