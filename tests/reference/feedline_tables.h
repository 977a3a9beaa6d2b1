// Outside check values of the feed-line link. Every row says where it comes from and how well it is known.
#pragma once

#include <complex>

#include "core/evidence.h"

namespace gs::test {

/// SWR, |Gamma|, return loss, mismatch loss, reflected share as handbooks tabulate them, to the digits printed.
struct ReflectionRow {
  double swr, rho, return_loss_db, mismatch_loss_db, reflected_pct;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kReflectionSource =
    "standard definitions: rho = (s-1)/(s+1), -20 log10 rho, -10 log10(1-rho^2), worked out apart from this code";
inline constexpr ReflectionRow kReflection[] = {
    {1.1, 0.04762, 26.444, 0.0099, 0.227, Evidence::practice, kReflectionSource},
    {1.2, 0.09091, 20.828, 0.0360, 0.826, Evidence::practice, kReflectionSource},
    {1.5, 0.20000, 13.979, 0.1773, 4.000, Evidence::practice, kReflectionSource},
    {2, 0.33333, 9.542, 0.5115, 11.111, Evidence::practice, kReflectionSource},
    {2.5, 0.42857, 7.360, 0.8814, 18.367, Evidence::practice, kReflectionSource},
    {3, 0.50000, 6.021, 1.2494, 25.000, Evidence::practice, kReflectionSource},
    {4, 0.60000, 4.437, 1.9382, 36.000, Evidence::practice, kReflectionSource},
    {5, 0.66667, 3.522, 2.5527, 44.444, Evidence::practice, kReflectionSource},
    {10, 0.81818, 1.743, 4.8073, 66.942, Evidence::practice, kReflectionSource},
    {20, 0.90476, 0.869, 7.4135, 81.859, Evidence::practice, kReflectionSource},
};

/// Total loss of a line with real Z0 from matched loss and SWR at the load.
struct TotalRow {
  double matched_db, swr_at_load, total_db, half_step_db;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kTotalSource =
    "10 log10((A^2-rho^2)/(A(1-rho^2))), ARRL Antenna Book, transmission lines (formula from memory), worked out "
    "apart";
inline constexpr TotalRow kTotals[] = {
    {1, 2, 1.1959, 5e-5, Evidence::memory, kTotalSource},
    {1, 3, 1.5039, 5e-5, Evidence::memory, kTotalSource},
    {3, 3, 3.9677, 5e-5, Evidence::memory, kTotalSource},
    {3, 10, 7.0077, 5e-5, Evidence::memory, kTotalSource},
    {0.5, 10, 2.0121, 5e-5, Evidence::memory, kTotalSource},
    {0.2, 20, 1.6521, 5e-5, Evidence::memory, kTotalSource},
    // 150 ft of RG-213 at 14.2 MHz with 0.795 dB/100 ft and SWR 4: the book prints 2.12 dB, 0.93 dB of it
    // additional.
    {1.193, 4, 2.12, 5e-3, Evidence::memory, "ARRL Antenna Book, worked example of the transmission-line chapter"},
};

/// A line of distributed constants with a load, as a circuit simulator sees it (general-purpose ngspice 39, AC
/// analysis at one frequency; loss = 10 log10 of Re(V I*) in over Re(V I*) in the load).
struct SimulatedLine {
  const char* name;
  double r_ohm_per_m, l_h_per_m, g_s_per_m, c_f_per_m, length_m, frequency_mhz;
  std::complex<double> load_ohm;
  double nominal_z0_ohm, matched_db, swr_at_load;
  std::complex<double> input_ohm;
  double swr_at_input, total_db, closed_form_db;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kLadderSource = "ngspice 39, ladder of 2000 pi sections";
inline constexpr SimulatedLine kLadder[] = {
    {"S1 RG-58 like, 25 ohm",
     0.633210901,
     2.52700072e-7,
     1.38155106e-5,
     1.01080029e-10,
     15,
     14.2,
     {25, 0},
     50,
     0.86992,
     2,
     {33.7916, 16.0034},
     1.72855,
     1.07309,
     1.04552,
     Evidence::seen,
     kLadderSource},
    {"S2 the same line, 100 ohm",
     0.633210901,
     2.52700072e-7,
     1.38155106e-5,
     1.01080029e-10,
     15,
     14.2,
     {100, 0},
     50,
     0.86992,
     2,
     {60.9332, -30.1091},
     1.77267,
     1.01710,
     1.04552,
     Evidence::seen,
     kLadderSource},
    {"S3 RG-174 like, short whip",
     0.978598665,
     2.52700072e-7,
     4.60517019e-6,
     1.01080029e-10,
     7.62,
     7.1,
     {10, -400},
     50,
     0.65472,
     325.197,
     {5.10162, 13.7187},
     10.5458,
     14.89705,
     14.08529,
     Evidence::seen,
     kLadderSource},
    {"S4 RG-213 like",
     0.283018530,
     2.52700072e-7,
     6.90775528e-6,
     1.01080029e-10,
     45.72,
     14.2,
     {200, 0},
     50,
     1.19248,
     4,
     {19.3564, 8.32317},
     2.66686,
     2.12961,
     2.11861,
     Evidence::seen,
     kLadderSource},
    {"S5 window line",
     0.552620422,
     1.46621580e-6,
     1.15129255e-7,
     9.16384877e-12,
     30.48,
     3.6,
     {35, -350},
     400,
     0.18897,
     20.2166,
     {490.333, -1513.32},
     13.6447,
     1.71929,
     1.58963,
     Evidence::seen,
     kLadderSource},
    {"S6 quarter wave, 1 ohm",
     0.898008186,
     2.52700072e-7,
     2.76310211e-5,
     1.01080029e-10,
     1.741752,
     28.4,
     {1, 0},
     50,
     0.14630,
     50,
     {1357.64, -21.690},
     27.1597,
     2.65546,
     2.65582,
     Evidence::seen,
     kLadderSource},
    {"S7 short line, low load",
     0.310848988,
     2.52700072e-7,
     0,
     1.01080029e-10,
     2,
     3.6,
     {5, 0},
     50,
     0.05398,
     10,
     {5.91147, 11.49689},
     8.91134,
     0.50077,
     0.26471,
     Evidence::seen,
     kLadderSource},
    {"S8 short line, high load",
     0.310848988,
     2.52700072e-7,
     0,
     1.01080029e-10,
     2,
     3.6,
     {500, 0},
     50,
     0.05398,
     10,
     {82.3786, -179.659},
     9.99082,
     0.01460,
     0.26471,
     Evidence::seen,
     kLadderSource},
};

/// The same lines with all loss in the conductors, by the simulator's own lossy line, to ten digits.
struct LossyLineRow {
  int ladder_row;  // line and load as in kLadder, but for R, and G = 0
  double r_ohm_per_m;
  std::complex<double> input_ohm;
  double total_db;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kLtraSource = "ngspice 39, built-in lossy line (LTRA), G = 0";
inline constexpr LossyLineRow kLossyLine[] = {
    {0, 0.667749677, {33.841837763, 15.990854654}, 1.076195917, Evidence::seen, kLtraSource},
    {2, 0.99011159, {5.1226782138, 13.717437722}, 14.914467207, Evidence::seen, kLtraSource},
    {3, 0.300287918, {19.362135516, 8.303769547}, 2.1309903978, Evidence::seen, kLtraSource},
    {4, 0.571041103, {490.94721319, -1512.460267}, 1.7280658422, Evidence::seen, kLtraSource},
    {6, 0.310848988, {5.9114691821, 11.496887181}, 0.50077354955, Evidence::seen, kLtraSource},
    {7, 0.310848988, {82.378556625, -179.6594864}, 0.014599768922, Evidence::seen, kLtraSource},
};

/// Capacitance of cables whose impedance and velocity factor stand in the catalogue.
struct CapacitanceRow {
  const char* key;
  double pf_per_m, half_step_pf_per_m;
  Evidence evidence;
  const char* source;
};
inline constexpr double kPfPerMetreOfPfPerFoot = 1 / 0.3048;
inline constexpr CapacitanceRow kCapacitance[] = {
    {"rg174", 101, 0.5, Evidence::second_hand, "parameter table on a German radio-hobby page"},
    {"rg316", 29.0 * kPfPerMetreOfPfPerFoot, 0.05 * kPfPerMetreOfPfPerFoot, Evidence::seen,
     "Nizing Electric product page, 29.0 pF/ft"},
    {"rg58", 29 * kPfPerMetreOfPfPerFoot, 0.5 * kPfPerMetreOfPfPerFoot, Evidence::second_hand,
     "one-page cable table by an amateur, 29 pF/ft"},
    {"rg58c", 101, 0.5, Evidence::second_hand, "parameter table on a German radio-hobby page"},
    {"rg59", 21 * kPfPerMetreOfPfPerFoot, 0.5 * kPfPerMetreOfPfPerFoot, Evidence::second_hand,
     "one-page cable table by an amateur, 21 pF/ft"},
    {"rg213", 101, 0.5, Evidence::second_hand, "parameter table on a German radio-hobby page"},
    {"rg8_foam", 26 * kPfPerMetreOfPfPerFoot, 0.5 * kPfPerMetreOfPfPerFoot, Evidence::second_hand,
     "one-page cable table by an amateur, 26 pF/ft"},
    {"rg8_low_loss", 24 * kPfPerMetreOfPfPerFoot, 0.5 * kPfPerMetreOfPfPerFoot, Evidence::second_hand,
     "one-page cable table by an amateur, 24 pF/ft"},
    {"foam_240", 79.4, 0.05, Evidence::memory, "maker's sheet of the 240 size"},
    {"foam_400", 78.4, 0.05, Evidence::memory, "maker's sheet of the 400 size"},
};

/// What others print for a cable of the same class: not what the catalogue's row was made from.
struct OtherMake {
  const char* key;
  double frequency_mhz, db_per_100m;
  double spread_pct;  // the departure between makes that the row stands for
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kArray = "cable table in an air-shower radio array's calibration code, RG-58 / RG-213";
inline constexpr const char* kTrade = "coax table in a trade article, quoting a maker, dB/100 ft";
inline constexpr const char* kEupen = "Eupen EC 400 data sheet, as quoted in checking code of an HF antenna array";
inline constexpr OtherMake kOthers[] = {
    {"rg58c", 10, 4.5, 5, Evidence::second_hand, kArray},
    {"rg58c", 20, 6.5, 5, Evidence::second_hand, kArray},
    {"rg58c", 50, 10.4, 5, Evidence::second_hand, kArray},
    {"rg58c", 30, 7.71, 5, Evidence::second_hand, kTrade},
    {"rg58", 10, 3.937, 10, Evidence::second_hand,
     "one-page cable table by an amateur, solid RG-58, 1.2 dB/100 ft"},
    {"rg213", 10, 1.8, 15, Evidence::second_hand, kArray},
    {"rg213", 20, 2.7, 15, Evidence::second_hand, kArray},
    {"rg213", 50, 4.4, 15, Evidence::second_hand, kArray},
    {"rg213", 30, 3.051, 15, Evidence::second_hand, kTrade},
    {"rg213", 14.2, 2.608, 15, Evidence::memory, "ARRL Antenna Book, worked example, 0.795 dB/100 ft"},
    {"rg8x", 10, 3.281, 15, Evidence::second_hand, "emergency-radio cable table of Santa Clara County"},
    {"rg8x", 30, 5.741, 15, Evidence::second_hand, kTrade},
    {"rg8x", 50, 7.546, 15, Evidence::second_hand, "emergency-radio cable table of Santa Clara County"},
    {"foam_400", 10, 1.3, 4, Evidence::second_hand, kEupen},
    {"foam_400", 20, 1.8, 4, Evidence::second_hand, kEupen},
    {"foam_400", 30, 2.2, 4, Evidence::second_hand, kEupen},
};

}  // namespace gs::test
