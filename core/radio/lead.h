// The DC lead between battery and set: resistance, voltage drop, and which wire will do.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::radio {

/// One catalogue row, from the thinnest to the thickest.
struct Wire {
  std::string_view key;  // kept for ever: outing files hold it
  std::string_view name;
  bool retired;
  int gauge;         // AWG
  double carries_a;  // the largest fuse that protects it
  Evidence evidence;
  std::string_view source;
};
std::span<const Wire> wires();
const Wire* find_wire(std::string_view key);

/// Diameter of solid wire of this AWG number, 0..40: 0.127 mm x 92^((36 - n)/39). ASTM B258.
double wire_diameter_mm(int gauge);

/// Resistance of one conductor per metre: annealed copper, 1/58 ohm mm2/m at 20 C and 0.00393 per C (IEC 60028).
/// Solid round wire; a stranded one may be 3 % lower, tinned or copper-clad aluminium is higher. temperature_c
/// -60..200.
double wire_ohm_per_m(int gauge, double temperature_c);

/// A lead of two equal conductors, each `length_m` >= 0 long. contacts_ohm: plugs, fuse and holder, >= 0.
struct Lead {
  int gauge;
  double length_m;
  double temperature_c = 20;
  double contacts_ohm = 0;
};

/// Both conductors and the contacts, there and back.
double lead_ohm(const Lead& lead);

/// Supply at the set while it draws `current_a`: battery_v at the terminals under that load, less the lead. May be
/// negative where the current cannot flow: the caller says so.
double supply_v(double battery_v, double current_a, double lead_ohm);

/// Current of a load that takes constant power (a charger, a regulated supply) behind `ohm` >= 0:
/// (V - sqrt(V^2 - 4 R P)) / 2R, more than P / V. Nothing when the source cannot deliver it (P > V^2 / 4R).
std::optional<double> constant_power_a(double source_v, double ohm, double power_w);

/// The thinnest offered wire that drops at most `most_v` at `current_a` and carries that current; null when none
/// does. `lead.gauge` does not matter.
const Wire* thinnest_wire(const Lead& lead, double current_a, double most_v);

/// Resistance that may stand between the resting battery and the set (battery's own, lead, fuse, plugs) so that it
/// still has `least_v` at `current_a` > 0; negative when the battery stands lower already.
double allowed_ohm(double resting_v, double least_v, double current_a);

}  // namespace gs::radio
