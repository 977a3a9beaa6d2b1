// What hangs above and what falls down: power lines, masts, thunder; and what a hand on the wire would meet.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::safety {

/// How near anything may come to a power line of this voltage.
struct LineClearance {
  std::string_view key, name;
  double clearance_m;
  Evidence evidence;
  std::string_view source;
};
std::span<const LineClearance> line_clearances();

/// How far from the point under the nearest wire a mast's foot must stand. m.
struct StayOff {
  double falls_clear_m;   // the fallen mast still keeps the clearance: height + clearance (US question pool T0B06)
  double times_height_m;  // twice the height: safety pages of makers and utilities ask for 1.5 to 2 times
  double throw_clear_m;   // longest line that is thrown or raised + clearance (common practice); 0 without one
  double stay_off_m;      // the largest of them
};
/// height_m >= 0 to the antenna's top, line_m >= 0 of loose line or wire, clearance_m > 0; NaN otherwise.
StayOff stay_off_power_lines(double height_m, double line_m, double clearance_m);

/// Distance of a flash in km from the seconds to its thunder: sound at 343 m/s (20 C). NaN below 0.
double thunder_distance_km(double delay_s);
/// As far as thunder carries and lightning strikes from its storm: US National Weather Service, 10 miles.
inline constexpr double kThunderReachKm = 16.09344;
/// Stay inside until this long after the last thunder: US National Weather Service.
inline constexpr double kAfterThunderMin = 30;

/// Voltage between a point of this resistance and ground, rms: sqrt(P R). Its peak is sqrt(2) of it. NaN unless
/// power_w >= 0, ohm > 0.
double touch_voltage_v(double power_w, double resistance_ohm);

}  // namespace gs::safety
