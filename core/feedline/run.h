// Everything between the radio and the antenna in one row: cables, plugs and choke, joined by exact theory.
#pragma once

#include <array>
#include <vector>

#include "core/feedline/line.h"
#include "core/feedline/swr.h"

namespace gs::feedline {

/// Pieces from the radio's end to the antenna's. Source of everything below: voltages and currents of each piece by
/// line.h, carried from piece to piece; own derivation of the phase circles in docs/methods/feedline.md.
struct Run {
  static constexpr int kMostPieces = 4;  // plugs, first cable, second cable, choke
  std::array<Line, kMostPieces> pieces{};
  int count = 0;
  void add(const Line& piece) {  // one too many is left out
    if (count < kMostPieces) pieces[std::size_t(count++)] = piece;
  }
};

/// Plugs or a choke: loss_db >= 0 without length, matched to z0_ohm > 0.
Line pad(double loss_db, double z0_ohm);

double matched_loss_db(const Run& run);  // the pieces' sum, each in its own Z0
Complex input_impedance_ohm(const Run& run, Complex load_ohm);
/// Power into the run over power into the load, dB >= 0; infinite where the load takes none.
double total_loss_db(const Run& run, Complex load_ohm);

/// What may be when only an SWR is known, its phase not: every phase is looked at, in closed form. SWR is against
/// reference_ohm > 0 at both ends, which is what a meter there reads; the lines' own Z0 may be another.
struct SwrRange {
  double least, typical, most;  // typical: root of the mean square of |Gamma|; most may be infinite
};
/// All NaN for an SWR below 1.
SwrRange swr_range_at_radio(const Run& run, double reference_ohm, double swr_at_load);
/// All NaN too where no passive load can show that SWR through this run.
SwrRange swr_range_at_load(const Run& run, double reference_ohm, double swr_at_radio);
/// Total loss over every phase of the load that shows this SWR; typical: the mean of the power lost over the
/// phases. All infinite at infinite SWR.
LossRange loss_range_db(const Run& run, double reference_ohm, double swr_at_load);
/// The same over every load that makes the radio's end show this SWR. Most is infinite where one of them takes no
/// power. All NaN where none is passive.
LossRange loss_range_from_radio_db(const Run& run, double reference_ohm, double swr_at_radio);

/// Voltage and current, complex, anywhere.
struct VoltAmpere {
  Complex volt, ampere;
};
/// At distance_m >= 0 towards the source from where `at_load` stands, on this line.
VoltAmpere along(const Line& line, VoltAmpere at_load, double distance_m);

/// One place of the way for a drawing.
struct Place {
  double from_radio_m, volt_rms, ampere_rms, swr;
};
/// `per_piece` + 1 >= 2 places on each piece that has length, radio first, with power_w > 0 into the run.
/// load_ohm with a real part > 0; empty otherwise. SWR is against reference_ohm.
std::vector<Place> places(const Run& run, Complex load_ohm, double power_w, double reference_ohm, int per_piece);

/// Highest voltage that a power of power_w can set up on a line of real z0_ohm at this SWR, V rms: sqrt(P Z0 SWR).
/// Source: definition of SWR; 100 W, 50 ohm and SWR 10 give 223.6 V.
double highest_voltage_v(double power_w, double z0_ohm, double swr);

}  // namespace gs::feedline
