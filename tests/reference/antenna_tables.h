// Outside check values of the antenna link. Every row says where it comes from and how well it is known.
#pragma once

#include "core/evidence.h"

namespace gs::test {

/// The trade's rules in metres.
struct TradeLength {
  double frequency_mhz, dipole_m, quarter_wave_m, loop_m;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kTradeSource =
    "468/f, 234/f and 1005/f feet (common practice), 1 ft = 0.3048 m, worked out apart";
inline constexpr TradeLength kTradeLengths[] = {
    {3.65, 39.081, 19.541, 83.924, Evidence::practice, kTradeSource},
    {7.1, 20.091, 10.046, 43.144, Evidence::practice, kTradeSource},
    {14.15, 10.081, 5.041, 21.648, Evidence::practice, kTradeSource},
    {21.2, 6.729, 3.364, 14.449, Evidence::practice, kTradeSource},
    {28.4, 5.023, 2.511, 10.786, Evidence::practice, kTradeSource},
    {52, 2.743, 1.372, 5.891, Evidence::practice, kTradeSource},
};

/// A bare dipole made 3 % too long, its resonance, and the length that resonates where wanted.
struct TrimRow {
  double length_m, resonant_mhz, wanted_mhz, right_m;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kTrimSource =
    "wire model of our own (not this code), 8 m above average ground, 1.6 mm wire";
inline constexpr TrimRow kTrims[] = {
    {20.2685 * 7.1 / 6.8922, 6.8922, 7.1, 20.271, Evidence::practice, kTrimSource},
    {10.333 * 14.15 / 13.7258, 13.7258, 14.15, 10.342, Evidence::practice, kTrimSource},
    {5.073 * 28.5 / 27.6593, 27.6593, 28.5, 5.075, Evidence::practice, kTrimSource},
};

/// An 8 ft (2.438 m) whip in a handbook's table: coil, its resistance at Q 50 and 300, radiation and feed
/// resistance.
struct WhipRow {
  double frequency_mhz, coil_at, coil_uh, coil_q50_ohm, coil_q300_ohm, radiation_ohm, feed_ohm;
  bool within_an_eighth_of_a_wave;  // where the method claims its 10 %
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kHandbookWhip =
    "ARRL handbook, table of approximate values for an 8 ft mobile whip (from memory)";
inline constexpr WhipRow kWhips[] = {
    {7.2, 0, 20, 18, 3, 1.35, 15, true, Evidence::memory, kHandbookWhip},
    {14.2, 0, 4.5, 7.7, 1.3, 5.7, 12, true, Evidence::memory, kHandbookWhip},
    {21.25, 0, 1.25, 3.4, 0.5, 14.8, 16, false, Evidence::memory, kHandbookWhip},
    {7.2, 0.5, 40, 36, 6, 3.0, 19, true, Evidence::memory, kHandbookWhip},
    {14.2, 0.5, 8.6, 15, 2.5, 11, 19, true, Evidence::memory, kHandbookWhip},
    {21.25, 0.5, 2.5, 6.6, 1.1, 27, 29, false, Evidence::memory, kHandbookWhip},
};

/// Short antennas: half of King's short-dipole resistance 18.3 (kh)^2 (1 + 0.086 (kh)^2), 2 ln(2h/a) = 10.
struct ShortRow {
  double kh, dipole_ohm;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kKing = "King, short-antenna formula (from memory)";
inline constexpr ShortRow kShorts[] = {
    {0.2, 0.735, Evidence::memory, kKing},
    {0.3, 1.660, Evidence::memory, kKing},
    {0.5, 4.673, Evidence::memory, kKing},
};

/// Field of a quarter-wave vertical against an ideal one, and the series loss it stands for at 36 ohm of radiation
/// (worked out apart).
struct RadialPoint {
  double count, length_waves, relative_db, loss_ohm;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kIre1937 = "Proc. IRE 25(6), June 1937, pp. 753-787, as tabulated on a public page";
inline constexpr RadialPoint kRadialPoints[] = {
    {2, 0.14, -4.2, 58.7, Evidence::second_hand, kIre1937},
    {15, 0.14, -2.3, 25.1, Evidence::second_hand, kIre1937},
    {60, 0.14, -2.1, 22.4, Evidence::second_hand, kIre1937},
    {2, 0.27, -4.2, 58.7, Evidence::second_hand, kIre1937},
    {15, 0.27, -2.1, 22.4, Evidence::second_hand, kIre1937},
    {60, 0.27, -0.8, 7.3, Evidence::second_hand, kIre1937},
    {2, 0.41, -3.9, 52.4, Evidence::second_hand, kIre1937},
    {15, 0.41, -1.8, 18.5, Evidence::second_hand, kIre1937},
    {60, 0.41, -0.5, 4.4, Evidence::second_hand, kIre1937},
};

/// Feed resistance of a quarter-wave vertical in a handbook: less 35 ohm it is ground loss.
struct RadialFeed {
  double count, length_waves, feed_ohm;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kBookRadials = "ARRL Antenna Book, 20th ed., ch. 3, Table 1, as quoted on a list";
inline constexpr RadialFeed kRadialFeeds[] = {
    {16, 0.10, 52, Evidence::second_hand, kBookRadials}, {24, 0.125, 46, Evidence::second_hand, kBookRadials},
    {36, 0.15, 43, Evidence::second_hand, kBookRadials}, {60, 0.20, 40, Evidence::second_hand, kBookRadials},
    {90, 0.25, 37, Evidence::second_hand, kBookRadials}, {120, 0.40, 35, Evidence::second_hand, kBookRadials},
};

/// Half-wave dipole of copper: share of the power that the wire does not keep.
struct CopperRow {
  double diameter_m, frequency_mhz, efficiency;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kCopperModel =
    "wire model of our own (not this code) with the exact impedance of a round wire";
inline constexpr CopperRow kCopper[] = {
    {0.0016, 3.65, 0.971, Evidence::practice, kCopperModel},
    {0.0016, 7.1, 0.979, Evidence::practice, kCopperModel},
    {0.0016, 14.1, 0.985, Evidence::practice, kCopperModel},
    {0.0016, 28.4, 0.989, Evidence::practice, kCopperModel},
    {0.0005, 3.65, 0.908, Evidence::practice, kCopperModel},
    {0.0005, 7.1, 0.934, Evidence::practice, kCopperModel},
    {0.0005, 14.1, 0.953, Evidence::practice, kCopperModel},
    {0.0005, 28.4, 0.966, Evidence::practice, kCopperModel},
};

/// The same vertical's field at a mile on 3 MHz with 1 kW, against 196 mV/m without loss.
struct RadialMile {
  double count, length_waves, mv_per_m;
};
inline constexpr double kLosslessMvPerM = 196;
inline constexpr RadialMile kRadialMiles[] = {{113, 0.41, 192}, {60, 0.41, 185}, {113, 0.27, 180}, {60, 0.27, 175}};

/// A list's field test of 2008 (second hand; site and soil not stated): signal against 60 quarter-wave radials on
/// the ground as printed, on the ground and raised 0.03 waves, and the raw readings behind it in mV (0: not
/// printed).
struct RadialField2008 {
  double count, ground_db, raised_db, ground_mv, raised_mv;
};
inline constexpr RadialField2008 kRadialFields2008[] = {{4, -5.5, -4.3, 17.5, 20.1},
                                                        {8, -2.7, -2.4, 24, 25},
                                                        {16, -1.3, -0.8, 28.4, 28.7},
                                                        {32, -0.8, -0.7, 0, 0},
                                                        {60, 0.0, -0.2, 33, 32.5}};

}  // namespace gs::test
