// A kind of antenna on a frequency: what it is made of, what it shows at its feed point, what it radiates.
#pragma once

#include "core/antenna/kind.h"
#include "core/antenna/length.h"
#include "core/antenna/rigging.h"
#include "core/antenna/whip.h"

namespace gs::antenna {

/// What the chosen kind leaves open, with what people usually carry.
struct Setup {
  Wire wire = Wire::bare;
  double wire_diameter_m = 0.001;                // thin flexible wire, about 18 AWG (common practice)
  double radial_count = 16, radial_waves = 0.1;  // of a vertical on the ground: the first row of a handbook's table
  double whip_m = 2.4, whip_diameter_m = 0.005, coil_at = 0.5,
         coil_q = 200;  // 8 ft centre-loaded (common practice)
  double vehicle_ground_ohm = kVehicleGroundOhm;
};

/// Lengths to rig. A whip's rod is whip_m, or a full quarter wave (234/f feet) where that is shorter.
Rig rig_of(const Kind& kind, double frequency_mhz, const Setup& setup = {});
/// All wire to carry: the cut length, radials, and the counterpoise of an end-fed wire. A whip: 0.
double total_wire_m(const Kind& kind, double frequency_mhz, const Setup& setup = {});

/// Loss resistance of round copper wire with a sine of current along it, at its maximum: R per metre of a skin one
/// skin depth thick, times length / 2. Real current is a little fuller than a sine: up to 8 % more loss. Source:
/// textbooks.
double copper_loss_ohm(double length_m, double diameter_m, double frequency_mhz);

/// At resonance. resistance_ohm: what the line sees, behind the kind's transformer; SWR against 50 ohm, never
/// better than Kind::usual_swr. lowest_ohm..highest_ohm: what height and ground make of the resistance. efficiency
/// 0..1: power that leaves over power into the feed point; what the ground takes out of the far field is not
/// counted. frequency_mhz > 0, setup > 0; else NaN.
struct FeedPoint {
  double resistance_ohm, lowest_ohm, highest_ohm, swr, efficiency;
};
FeedPoint feed_point(const Kind& kind, double frequency_mhz, const Setup& setup = {});

}  // namespace gs::antenna
