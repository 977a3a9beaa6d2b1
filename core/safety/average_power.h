// How much of the peak power counts: mode duty and the busiest stretch of the averaging time.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::safety {

/// Average over peak power while the key is down or the microphone is open, for exposure (not for the battery).
struct ExposureDuty {
  std::string_view key, name;
  double duty;
  Evidence evidence;
  std::string_view source;
};
std::span<const ExposureDuty> exposure_duties();

/// What is sent, as the antenna gets it. Power > 0 W, duty and share above 0 and at most 1, gain any finite dBi.
struct Emission {
  double frequency_mhz;
  double peak_power_w;   // peak envelope power at the antenna
  double gain_dbi;       // towards the people, losses included; the greatest gain where the direction is not known
  double duty;           // of the mode
  double busiest_share;  // transmit time in the busiest stretch of the averaging time over that time
};

/// Finite, power > 0, duty and share in (0, 1]. Everything else gets NaN from the functions of this link.
bool is_possible(const Emission& emission);

/// Power averaged over the busiest averaging time, W. FCC OET Bulletin 65 Supplement B, pp. 13-14.
double average_power_w(const Emission& emission);

/// Isotropic radiated power over power: 10^(dBi/10).
double gain_factor(double gain_dbi);

/// Greatest share of any `window_min` that is transmitting, where on_min on and off_min off take turns without end.
/// 0 <= share <= 1; NaN unless on_min > 0, off_min >= 0, window_min > 0. Worked out for the window that begins with
/// a transmission.
double busiest_share(double on_min, double off_min, double window_min);

/// The most that a share of one window can be of a shorter window inside it, all transmissions being together.
double share_of_shorter_window(double share, double window_min, double shorter_min);

}  // namespace gs::safety
