// How long to cut, and how length and resonance move together.
#pragma once

#include "core/antenna/kind.h"
#include "core/antenna/long_wire.h"

namespace gs::antenna {

// Lengths in metres, frequencies in MHz, all > 0; anything else gets NaN: no answer.

enum class Wire : unsigned char { bare, insulated };

/// Insulated wire resonates 2.3 to 3.3 % shorter than bare wire (wire model of our own, PVC and polyethylene of
/// usual thickness); the trade's 453/f feet against 468/f says 3.2 %, reports from practice 3 to 5 %.
inline constexpr double kInsulatedShare = 0.97;
/// A wire lying on the ground is a quarter wave electrically at about this share of its length in space: published
/// tests as quoted on mailing lists (second hand). It differs with the soil; on the ground no length is sharply
/// resonant.
inline constexpr double kOnGroundShare = 0.6;
/// End effect of both ends together, as a share of half a wave (handbooks, memory).
inline constexpr double kEndEffect = 0.05;
/// Counterpoise of an end-fed half wave: common practice, and a wire model makes the feed nearly real with it.
inline constexpr double kCounterpoiseWaves = 0.05;

/// Wavelength in space, or on a line of this velocity factor (0, 1].
double wavelength_m(double frequency_mhz, double velocity_factor = 1);

/// Trade length: whole wire of dipole, V, end-fed wire and loop; upright wire of the verticals. NaN for a whip,
/// which is not cut to length. Surroundings move resonance by 2 to 4 %: cut 2 to 3 % long and trim. Source:
/// Kind::cut_source.
double cut_length_m(const Kind& kind, double frequency_mhz, Wire wire = Wire::bare);
/// The frequency for which the trade would cut this length; inverse of cut_length_m.
double cut_frequency_mhz(const Kind& kind, double length_m, Wire wire = Wire::bare);

/// A raised radial is the kind's upright over again (234/f feet, common practice); one on the ground a quarter wave
/// in space times kOnGroundShare.
double raised_radial_m(double frequency_mhz);
double ground_radial_m(double frequency_mhz);

/// Length that resonates at wanted_mhz when length_m resonates at resonant_mhz: length x frequency stays. Contains
/// the surroundings, so better than two trade lengths; good for a few per cent of change. Not for a loaded whip.
double trimmed_length_m(double length_m, double resonant_mhz, double wanted_mhz);

/// Further change of length (m, signed as change_m was) that moves resonance from after_mhz to wanted_mhz, when
/// change_m moved it from before_mhz to after_mhz. (Length + a fixed part) x frequency stays, whatever the fixed
/// part is. NaN when resonance did not move. Own derivation.
double further_change_m(double change_m, double before_mhz, double after_mhz, double wanted_mhz);

/// How far resonance moves for a centimetre of the whole length: f / L. Not for a loaded whip, whose tip acts less.
double khz_per_cm(double length_m, double frequency_mhz);

/// Resonance of order n of a half-wave wire from its first: n = 1, 3, 5, ... fed in the middle, any n >= 1 fed at
/// the end (NaN otherwise). End effect shortens the wire once, not once for each half wave, so f_n / f_1 = (n -
/// 0.05) / 0.95: never exact multiples. Source: 492 (n - 0.05) / f feet, handbooks (memory).
double higher_resonance_mhz(double first_mhz, int order, FedAt fed_at = FedAt::middle);

}  // namespace gs::antenna
