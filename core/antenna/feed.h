// A kind of antenna on a frequency: what it is made of, what it shows at its feed point, what it radiates.
#pragma once

#include <complex>
#include <limits>

#include "core/antenna/kind.h"
#include "core/antenna/length.h"
#include "core/antenna/rigging.h"
#include "core/antenna/whip.h"

namespace gs::antenna {

/// What the chosen kind leaves open, with what people usually carry. NaN where the kind or the frequency decides.
struct Setup {
  Wire wire = Wire::bare;
  double wire_diameter_m = 0.001;                             // thin flexible wire, about 18 AWG (common practice)
  double wire_m = std::numeric_limits<double>::quiet_NaN();   // as it is cut now; NaN: by the trade's rule
  double dip_mhz = std::numeric_limits<double>::quiet_NaN();  // where it was read to resonate; NaN: as cut
  double radial_count = 16, radial_waves = 0.1;  // of a vertical on the ground: the first row of a handbook's table
  double whip_m = 2.4, whip_diameter_m = 0.005, coil_at = 0.5,
         coil_q = 200;  // 8 ft centre-loaded (common practice)
  double vehicle_ground_ohm = kVehicleGroundOhm;
  bool ground_measured = false;  // false: the vehicle's ground may be anything of its range
  double transformer_db = std::numeric_limits<double>::quiet_NaN();  // NaN: the kind's usual loss
  bool transformer_measured = false;  // false: it may lose anything from good to poor
};

/// Transformers of end-fed wires as their builders measured them, good and poor, dB (second hand).
inline constexpr double kGoodTransformerDb = 0.4, kPoorTransformerDb = 2;

/// Length of a wire that suits nothing when none was given: three eighths of a wave, midway between a quarter (low
/// feed resistance) and a half (thousands of ohms); common practice.
inline constexpr double kAnyLengthWaves = 0.375;

/// Lengths to rig. A whip's rod is whip_m, or a full quarter wave (234/f feet) where that is shorter.
Rig rig_of(const Kind& kind, double frequency_mhz, const Setup& setup = {});
/// All wire to carry: the cut length, radials, and the counterpoise of an end-fed wire. A whip: 0.
double total_wire_m(const Kind& kind, double frequency_mhz, const Setup& setup = {});

/// Loss resistance of round copper wire with a sine of current along it, at its maximum: R per metre of a skin one
/// skin depth thick, times length / 2. Real current is a little fuller than a sine: up to 8 % more loss. Source:
/// textbooks.
double copper_loss_ohm(double length_m, double diameter_m, double frequency_mhz);

/// Where the antenna resonates first: as read, as cut, or on the frequency itself (a whip is tuned there). NaN for
/// a wire that suits nothing.
double first_resonance_mhz(const Kind& kind, double frequency_mhz, const Setup& setup = {});
/// The order of the resonance that frequency_mhz is nearest to: 1, 3, 5 for a wire fed in the middle or a vertical,
/// 1, 2, 3 for an end-fed wire or a loop. >= 1.
int nearest_order(const Kind& kind, double frequency_mhz, double first_mhz);
/// Reactance over resistance of a wire antenna off its resonance: Za tan(n pi/2 (f/f_n - 1)) / resistance with Za =
/// 120 (ln(h/a) - 1), the average characteristic impedance of a dipole of half-length h, half of it for a vertical,
/// twice for a loop. Within 6 % of a wire model's slope of a dipole (length over diameter 50 to 100 000), always
/// under it: the dip is drawn a little wide. Source: textbooks (memory).
double detuning(const Kind& kind, double frequency_mhz, double first_mhz, double wire_m, double diameter_m,
                double resistance_ohm);

/// At resonance. resistance_ohm: what the line sees, behind the kind's transformer; SWR against 50 ohm, never
/// better than Kind::usual_swr. lowest_ohm..highest_ohm: what height and ground make of the resistance. efficiency
/// 0..1: power that leaves over power into the feed point; what the ground takes out of the far field is not
/// counted. q: of the whole antenna as the line meets it, losses included; an SWR of 2 against its own resistance
/// stands 0.707 / q of the frequency apart. load_ohm: what the line sees on the frequency itself, lowest_load_ohm
/// and highest_load_ohm with the resistance of the range. least and most efficiency: with what ground and
/// transformer may lose where nobody measured them. frequency_mhz > 0, setup > 0; else NaN. A wire that suits
/// nothing has an efficiency and nothing else.
struct FeedPoint {
  double resistance_ohm, lowest_ohm, highest_ohm, swr, efficiency;
  double q, resonance_mhz;
  std::complex<double> load_ohm, lowest_load_ohm, highest_load_ohm;
  double least_efficiency = std::numeric_limits<double>::quiet_NaN();
  double most_efficiency = std::numeric_limits<double>::quiet_NaN();
};
FeedPoint feed_point(const Kind& kind, double frequency_mhz, const Setup& setup = {});

/// Width in MHz within which a resonant circuit matched at its centre stays under `swr` (> 1): f (s - 1)/(q sqrt
/// s). Source: series circuit, textbooks.
double width_mhz(double frequency_mhz, double q, double swr = 2);

}  // namespace gs::antenna
