// Resistances against 50 ohm, transformers, and the width of a resonance read off a few SWR readings.
#pragma once

#include <span>

namespace gs::antenna {

// Impossible input gets NaN. Sources: definitions of the trade; Pozar, Microwave Engineering, 4th ed., ch. 2
// (memory).

inline constexpr double kReferenceOhm = 50;

/// SWR of a pure resistance > 0 against a reference > 0: the larger over the smaller.
double swr_of_resistance(double resistance_ohm, double reference_ohm = kReferenceOhm);
/// Share of the power that comes back at an SWR >= 1: ((s - 1) / (s + 1))^2. It is not lost by itself: the line and
/// the set send most of it out again.
double reflected_share(double swr);

/// Impedance ratio and turns ratio (its root) of a transformer from reference to resistance, both >= 1.
struct TransformerRatio {
  double impedance, turns;
};
TransformerRatio transformer_ratio(double resistance_ohm, double reference_ohm = kReferenceOhm);

/// Voltage across a resistance that takes power_w, rms; the crest is sqrt(2) times that.
double voltage_rms_v(double power_w, double resistance_ohm);

/// Impedance of a quarter wave of line that turns one resistance into the other: the root of the product.
double quarter_wave_line_ohm(double one_ohm, double other_ohm);

/// Share of the power that heats a transformer's core, from the conductance that the unloaded primary shows and
/// that of the loaded one (core + load), in siemens: their quotient, held at 1. Both > 0.
double core_share(double core_s, double loaded_s);

/// Loss of a transformer from what comes through it, in dB, into a resistance of `ratio` (>= 1) times 50 ohm of
/// which 50 are the receiver's own and the rest a resistor in series: through_db less 10 log10 ratio, which is what
/// that divider alone takes. A figure below 0 is returned as it is: the reading was wrong. NaN unless through_db is
/// finite.
double transformer_loss_db(double through_db, double ratio);
/// The resistor for it, ohm.
double series_resistor_ohm(double ratio);

struct SwrReading {
  double frequency_mhz, swr;
};
/// Resonance of a series circuit fitted to readings. width 0 and edges NaN where the SWR stays above `edge_swr`. q:
/// of the circuit alone, losses included, as if its resistance were the line's; where the lowest SWR is above 1, by
/// the root of it more or less, which readings of SWR cannot tell.
struct SwrBand {
  double resonant_mhz, lowest_swr, low_mhz, high_mhz, width_mhz, q;
};
/// For R + jX with R constant and X straight in frequency, s + 1/s is a parabola in frequency whatever R is (own
/// derivation: docs/methods/antenna.md). Least squares through three or more readings (SWR >= 1, frequencies > 0,
/// three of them different; else all NaN); also NaN where the readings do not bend upwards: then none of them
/// brackets a resonance.
SwrBand swr_band(std::span<const SwrReading> readings, double edge_swr = 2);

}  // namespace gs::antenna
