// Reflection, standing wave ratio and what a measured SWR says about the other end of a line.
#pragma once

#include "core/feedline/line.h"

namespace gs::feedline {

// Impossible input (an SWR below 1, a reflection below 0, a loss below 0) gets NaN: no answer. Matched loss is one
// way. Sources: definitions of the trade (Pozar, Microwave Engineering, 4th ed., ch. 2, from memory); checked
// against a reflection table, circuit simulations and worked examples in tests/reference.

/// |Gamma| of an impedance against a real reference > 0; 0..1 for passive loads, 1 for one that is not finite.
double reflection(Complex z_ohm, double reference_ohm);
/// SWR from |Gamma| in [0, 1]; 1 gives infinity. Inverse: reflection_from_swr, swr >= 1.
double swr_from_reflection(double rho);
double reflection_from_swr(double swr);
/// SWR of an impedance against a real reference > 0; infinite where its real part is not above 0.
double swr(Complex z_ohm, double reference_ohm);
double return_loss_db(double rho);  // -20 log10 rho; infinite at 0
double mismatch_loss_db(
    double rho);  // -10 log10(1 - rho^2); infinite at 1. No heat: it is not to be added to line loss

/// SWR at the radio's end from the SWR at the load, and back, through matched_db >= 0 of line with real Z0.
/// swr_at_load returns NaN when no passive load can show that SWR through this loss (above swr_of_open_end).
double swr_at_radio(double swr_at_load, double matched_db);
double swr_at_load(double swr_at_radio, double matched_db);
/// The highest SWR that a line of matched_db can show at its input: what an open or shorted far end reads.
double swr_of_open_end(double matched_db);

/// Closed form of the total loss: 10 log10((A^2 - rho^2) / (A (1 - rho^2))), A = 10^(matched/10). Exact for every
/// load angle where Z0 is real; with a loss angle of Z0 an average, and on a short line far from either extreme.
/// Infinite at infinite SWR. Source: ARRL Antenna Book, transmission lines (from memory).
double closed_form_loss_db(double matched_db, double swr_at_load);

/// Total loss over every load phase that shows this SWR (against the nominal real Z0) at the load.
struct LossRange {
  double least_db, typical_db, most_db;  // typical: the closed form, held within the two
};
/// The power lost is a constant plus a sine of the load's phase, so both extremes stand in closed form: exact for
/// complex Z0, to rounding (1e-9 dB up to SWR 1000). nominal_z0_ohm > 0. All infinite at infinite SWR, NaN below 1.
/// Source: total_loss_db of line.h, written for waves of the nominal impedance (own derivation,
/// docs/methods/feedline.md).
LossRange loss_range_db(const Line& line, double nominal_z0_ohm, double swr_at_load);

/// One-way matched loss of a roll from the SWR that it shows with its far end open or shorted: 10
/// log10((s+1)/(s-1)). swr > 1; 1 gives infinity, infinity gives 0. Exact for real Z0.
double loss_from_open_end_db(double swr);

}  // namespace gs::feedline
