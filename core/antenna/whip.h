// Short loaded whips: radiation, coil and ground, referred to the current at the foot.
#pragma once

namespace gs::antenna {

// Impossible input gets NaN: sizes and frequency not above 0, a coil outside [0, 1) of the height, a whip higher
// than a quarter wave in space (it is no short whip). Tested up to an eighth of a wave: radiation within 3 % of a
// handbook, 5 to 12 % above theories that know the rod's thickness; from there to a quarter wave up to 15 % off
// either way.

/// Ground loss under a vehicle: 10 ohm is what stands behind a handbook table of an 8 ft whip on 7 MHz (5 on 14);
/// an owner's analyser says 29, common practice 2 to 12. Second hand.
inline constexpr double kVehicleGroundOhm = 10, kVehicleGroundLowestOhm = 5, kVehicleGroundHighestOhm = 30;

struct Whip {
  double height_m, diameter_m, frequency_mhz;
  double coil_at = 0;   // where the coil sits, as a share of the height: 0 at the foot, 0.5 half way
  double coil_q = 200;  // a good air coil has 200 to 300, a small close-wound one 50 to 100 (common practice)
  double ground_ohm = kVehicleGroundOhm;
};

/// Radiation resistance of a short monopole with a straight current, 40 pi^2 (h/lambda)^2: textbook form.
double short_monopole_ohm(double height_m, double frequency_mhz);

/// Radiation resistance 160 pi^2 (A/lambda)^2 with A the area under the current over the current at the foot:
/// cosine up to the coil, sine from the coil to the tip (the standing wave of a resonant wire; both straight when
/// short). Source: dipole moment of the current over a perfect ground, textbooks.
double whip_radiation_ohm(double height_m, double frequency_mhz, double coil_at = 0);

/// Coil that brings the whip to resonance, microhenries; 0 from 234/f feet up. Off by 10 % at most against a wire
/// model, by 4 % with the coil at the foot: trim. Source: QST, September 1974, pp. 28-34, Eq. 1 (its worked example
/// was read), for a dipole of two such whips. NaN also where the part above the coil is not longer than about three
/// of its own radii.
double loading_coil_uh(double height_m, double diameter_m, double frequency_mhz, double coil_at = 0);

struct WhipFeed {
  double radiation_ohm, coil_uh, coil_ohm, feed_ohm, efficiency;  // coil_ohm at the foot; efficiency 0..1
};
/// Everything in series at the foot: efficiency = radiation / (radiation + coil + ground); coil loss 2 pi f L / Q.
WhipFeed whip_feed(const Whip& whip);

/// Reactance at the foot of a whip tuned to its frequency_mhz, on another frequency: its coil's less the one that
/// would tune it there, seen through the rod below. NaN as above.
double whip_reactance_ohm(const Whip& tuned, double frequency_mhz);
/// Slope of that at resonance, ohm for a MHz; > 0.
double whip_slope_ohm_per_mhz(const Whip& tuned);
/// How far a centimetre more of rod moves the resonance, kHz, with the same coil: below 0. The rule of proportion
/// (f / height) is wrong for whips, two or three times too much.
double whip_khz_per_cm(const Whip& tuned);

/// Gain of a short upright against one a quarter wave high, same power radiated, over perfect ground, dB:
/// directivity 3 against 3.282 (sine current), textbooks.
inline constexpr double kShortAgainstQuarterDb = -0.39;
/// A whip against a full-size quarter wave without loss, dB, from its efficiency 0..1: what people call the price
/// of being short. From there to S-units: 6 dB each (IARU Region 1 recommendation R.1, 1981; memory).
double against_full_size_db(double efficiency);
inline constexpr double kDbPerSUnit = 6;

/// Gain straight up of an untuned 5 m whip on a jeep's rear corner, dBi: -70 + 55 log10 f, measured from 4 to 8
/// MHz, +-6 dB; NaN outside. Tied forward over the hood 3 dB more, leant 30 degrees away 10 dB more (+-4). Source:
/// IEEE Trans. Vehicular Technology VT-19 (1970) 230-236, abstract.
double whip_zenith_dbi(double frequency_mhz);
inline constexpr double kWhipLeantDb = 10;

/// Single-layer coil, microhenries, from turns > 0, mean diameter and winding length (m, > 0): r^2 n^2 / (9 r + 10
/// l) in inches. Source: Wheeler, Proc. IRE, October 1928 (memory); 1 % for l > 0.8 r.
double coil_uh(double turns, double diameter_m, double length_m);

}  // namespace gs::antenna
