// What a set draws from its supply.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"
#include "core/radio/mode.h"

namespace gs::radio {

/// A set's three currents at its usual supply (13.8 V). Valid: full_power_w > 0, 0 <= keyed_idle_a <= full_power_a,
/// receive_a >= 0.
struct SetCurrents {
  double full_power_w;
  double full_power_a;  // key-down at full power
  double keyed_idle_a;  // keyed, no drive
  double receive_a;
};

/// Key-down current at `power_w` >= 0 (above full power: extended by the same law):
/// idle + (full - idle) sqrt(power / full power). Input current of a linear final follows the output's amplitude,
/// that is the root of its power: class-B theory, efficiency pi/4 at full swing and proportional to amplitude
/// (textbook). Within 3.5 % of three measured 100 W sets once their own two currents are known.
double key_down_a(const SetCurrents& set, double power_w);

/// Average current while sending in this mode: idle + current share x (key-down - idle).
double transmit_a(const SetCurrents& set, double power_w, const Mode& mode);

/// Average over receive and transmit; transmit_share 0..1.
double average_a(double receive_a, double transmit_a, double transmit_share);

/// One reading of a meter: key-down at this power, watts and amperes.
struct KeyedReading {
  double power_w, current_a;
};

/// Keyed idle and full-power current from two or more key-down readings, by the same law: least squares of the
/// current over the root of power. `sound` is false with fewer than two different powers, full_power_w <= 0, or
/// readings that the law cannot have (idle below 0, or current that falls with power). `worst_miss`: by how much
/// the law misses one of the readings, as a share of it; 0 for two.
struct FromReadings {
  double keyed_idle_a, full_power_a;
  bool sound;
  double worst_miss = 0;
};
FromReadings from_readings(std::span<const KeyedReading> readings, double full_power_w);
FromReadings from_two_readings(double low_w, double low_a, double high_w, double high_a, double full_power_w);

/// Share of the supply's power that leaves as radio power, in percent; supply_v > 0, current_a > 0, power_w >= 0.
/// May pass 100 where the readings cannot be true: the caller says so.
double efficiency_pct(double power_w, double supply_v, double current_a);

/// One class of sets in the catalogue: what a set of this full power usually draws.
struct RadioClass {
  std::string_view key;
  double full_power_w, receive_a, keyed_idle_a, full_power_a;
  Evidence evidence;
  std::string_view source;
};
std::span<const RadioClass> radio_classes();

/// Usual currents of a set of `full_power_w` > 0: straight between the classes; below the smallest and above the
/// largest in proportion to power (receive current: that of the class at the end).
SetCurrents usual_currents(double full_power_w);

}  // namespace gs::radio
