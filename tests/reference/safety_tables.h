// Outside check values of the safety link. Every table says where it comes from and how well it is known.
#pragma once

#include "core/evidence.h"

namespace gs::test {

/// Distances as printed, in m to 0.1 m, for four powers sent without pause.
struct PrintedDistances {
  const char* table;
  double frequency_mhz, gain_dbi;
  double operator_m[4], public_m[4];
};
inline constexpr Evidence kSupplementEvidence = Evidence::seen;
inline constexpr const char* kSupplement =
    "FCC OET Bulletin 65, Supplement B (Edition 97-01): Table 4a p. 23, 5 p. 25, 6 and 7 p. 26, 16 p. 30";
inline constexpr double kPrintedPowersW[] = {100, 500, 1000, 1500};
/// Table 4a: gain alone, 47 CFR 1.1310 limits. One misprint: 2.0 MHz, 3 dBi, 1000 W reads 1.06 where 0.95 comes
/// out.
inline constexpr PrintedDistances kTable4a[] = {
    // clang-format off
    {"4a", 2.0, 0, {0.1, 0.3, 0.5, 0.6}, {0.2, 0.5, 0.7, 0.8}},
    {"4a", 2.0, 3, {0.2, 0.5, 0.6, 0.8}, {0.3, 0.7, 1.06, 1.2}},
    {"4a", 4.0, 0, {0.2, 0.4, 0.6, 0.7}, {0.4, 1.0, 1.3, 1.6}},
    {"4a", 4.0, 3, {0.3, 0.6, 0.9, 1.0}, {0.6, 1.3, 1.9, 2.3}},
    {"4a", 7.3, 0, {0.3, 0.8, 1.1, 1.3}, {0.8, 1.7, 2.5, 3.0}},
    {"4a", 7.3, 3, {0.5, 1.1, 1.6, 1.9}, {1.1, 2.5, 3.5, 4.2}},
    {"4a", 7.3, 6, {0.7, 1.5, 2.2, 2.7}, {1.5, 3.5, 4.9, 6.0}},
    {"4a", 10.15, 0, {0.5, 1.1, 1.5, 1.9}, {1.1, 2.4, 3.4, 4.2}},
    {"4a", 10.15, 3, {0.7, 1.5, 2.2, 2.6}, {1.5, 3.4, 4.8, 5.9}},
    {"4a", 10.15, 6, {1.0, 2.2, 3.0, 3.7}, {2.2, 4.8, 6.8, 8.3}},
    {"4a", 14.35, 0, {0.7, 1.5, 2.2, 2.6}, {1.5, 3.4, 4.8, 5.9}},
    {"4a", 14.35, 3, {1.0, 2.2, 3.0, 3.7}, {2.2, 4.8, 6.8, 8.4}},
    {"4a", 14.35, 6, {1.4, 3.0, 4.3, 5.3}, {3.0, 6.8, 9.6, 11.8}},
    {"4a", 14.35, 9, {1.9, 4.3, 6.1, 7.5}, {4.3, 9.6, 13.6, 16.7}},
    {"4a", 18.168, 0, {0.9, 1.9, 2.7, 3.3}, {1.9, 4.3, 6.1, 7.5}},
    {"4a", 18.168, 3, {1.2, 2.7, 3.9, 4.7}, {2.7, 6.1, 8.6, 10.6}},
    {"4a", 18.168, 6, {1.7, 3.9, 5.5, 6.7}, {3.9, 8.6, 12.2, 14.9}},
    {"4a", 21.45, 0, {1.0, 2.3, 3.2, 4.0}, {2.3, 5.1, 7.2, 8.8}},
    {"4a", 21.45, 3, {1.4, 3.2, 4.6, 5.6}, {3.2, 7.2, 10.2, 12.5}},
    {"4a", 21.45, 6, {2.0, 4.6, 6.4, 7.9}, {4.6, 10.2, 14.4, 17.6}},
    {"4a", 24.99, 0, {1.2, 2.7, 3.8, 4.6}, {2.7, 5.9, 8.4, 10.3}},
    {"4a", 24.99, 3, {1.7, 3.8, 5.3, 6.5}, {3.8, 8.4, 11.9, 14.5}},
    {"4a", 24.99, 6, {2.4, 5.3, 7.5, 9.2}, {5.3, 11.9, 16.8, 20.5}},
    {"4a", 29.7, 0, {1.4, 3.2, 4.5, 5.5}, {3.2, 7.1, 10.0, 12.2}},
    {"4a", 29.7, 3, {2.0, 4.5, 6.3, 7.7}, {4.5, 10.0, 14.1, 17.3}},
    {"4a", 29.7, 6, {2.8, 6.3, 8.9, 10.9}, {6.3, 14.1, 19.9, 24.4}},
    // clang-format on
};
inline constexpr double kMisprintM = 1.06;
/// By kind of antenna: quarter-wave vertical (6), dipole (7), half-sloper (16), three-element Yagi (5). Printed up
/// to 1 % or 0.1 m off.
inline constexpr PrintedDistances kByAntenna[] = {
    // clang-format off
    {"6", 3.5, 1, {0.2, 0.4, 0.6, 0.7}, {0.4, 0.9, 1.3, 1.6}},
    {"6", 7, 1, {0.4, 0.8, 1.2, 1.4}, {0.8, 1.9, 2.7, 3.2}},
    {"6", 14, 1, {0.8, 1.7, 2.4, 2.9}, {1.7, 3.7, 5.3, 6.5}},
    {"6", 21, 1, {1.1, 2.5, 3.5, 4.3}, {2.5, 5.6, 7.9, 9.7}},
    {"6", 28, 1, {1.5, 3.3, 4.7, 5.8}, {3.3, 7.5, 10.6, 12.9}},
    {"7", 3.5, 2, {0.2, 0.5, 0.7, 0.8}, {0.5, 1.0, 1.5, 1.8}},
    {"7", 7, 2, {0.4, 0.9, 1.3, 1.6}, {0.9, 2.1, 2.9, 3.6}},
    {"7", 14, 2, {0.9, 1.9, 2.6, 3.3}, {1.9, 4.2, 5.9, 7.2}},
    {"7", 21, 2, {1.3, 2.8, 4, 4.9}, {2.8, 6.3, 8.9, 10.9}},
    {"7", 28, 2, {1.7, 3.8, 5.3, 6.5}, {3.7, 8.4, 11.8, 14.5}},
    {"16", 7, 6.7, {0.7, 1.6, 2.3, 2.8}, {1.6, 3.6, 5, 6.2}},
    {"16", 14, 6.7, {1.4, 3.2, 4.5, 5.6}, {3.2, 7.2, 10.2, 12.5}},
    {"16", 21, 6.7, {2.2, 4.9, 6.9, 8.4}, {4.8, 10.7, 15.2, 18.6}},
    {"16", 28, 6.7, {2.9, 6.4, 9.1, 11.1}, {6.4, 14.3, 20.2, 24.8}},
    {"5", 14, 6.5, {1.4, 3.1, 4.5, 5.5}, {3.1, 7, 10, 12.2}},
    // clang-format on
};

/// Half-wave dipoles modelled over average ground by a method-of-moments program, distance at the antenna's own
/// height, m.
struct ModelledDipole {
  const char* table;
  double frequency_mhz;
  double operator_m[7], public_m[7];
};
inline constexpr const char* kModelledSource =
    "FCC OET Bulletin 65, Supplement B, Tables 18 to 31, pp. 32-39 (seen)";
inline constexpr double kModelledPowersW[] = {50, 100, 150, 250, 500, 1000, 1500};
inline constexpr ModelledDipole kModelled[] = {
    // clang-format off
    {"18", 29.7, {0.8, 1.1, 1.2, 1.7, 2.4, 3.4, 4.3}, {1.7, 2.4, 2.9, 3.8, 5.5, 7.3, 8.8}},
    {"21", 21.45, {0.6, 0.8, 0.9, 1.2, 1.8, 2.6, 3.2}, {1.2, 1.8, 2.3, 2.9, 4.1, 5.8, 7.2}},
    {"23", 14.35, {0.3, 0.5, 0.6, 0.8, 1.1, 1.5, 2.0}, {0.8, 1.1, 1.4, 1.8, 2.6, 3.8, 4.7}},
    {"26", 7.3, {0.2, 0.3, 0.4, 0.5, 0.6, 0.9, 1.2}, {0.5, 0.6, 0.8, 1.1, 1.5, 2.1, 2.7}},
    {"27", 7.3, {0.2, 0.2, 0.3, 0.3, 0.6, 0.8, 0.9}, {0.3, 0.6, 0.7, 0.9, 1.2, 1.8, 2.3}},
    {"28", 4, {0.1, 0.2, 0.2, 0.3, 0.3, 0.6, 0.6}, {0.3, 0.3, 0.5, 0.6, 0.9, 1.2, 1.5}},
    {"29", 4, {0.1, 0.2, 0.2, 0.2, 0.3, 0.5, 0.6}, {0.2, 0.3, 0.5, 0.6, 0.9, 1.2, 1.5}},
    {"30", 2, {0.1, 0.1, 0.2, 0.2, 0.3, 0.5, 0.5}, {0.2, 0.2, 0.2, 0.3, 0.5, 0.6, 0.8}},
    {"31", 2, {0.1, 0.2, 0.2, 0.2, 0.3, 0.5, 0.6}, {0.2, 0.2, 0.2, 0.3, 0.5, 0.6, 0.9}},
    // clang-format on
};

/// Averaging: FCC OET Bulletin 65, Supplement B, pp. 13-14 (seen). on and off take turns.
struct AveragingRow {
  double peak_w, duty, on_min, off_min, window_min, average_w, half_step_w;
  const char* note;
};
inline constexpr AveragingRow kAveraging[] = {
    {1500, 0.2, 2, 2, 6, 200, 0.5, "2 on, 2 off, 2 on"},
    {1500, 0.2, 4, 2, 30, 200, 0.5, "the print repeats its six minutes, of which 4 are on: 20 of 30"},
    {1500, 0.2, 7, 7, 6, 300, 0.5, "7 on, 7 off"},
    {1500, 0.2, 7, 7, 30, 159, 1.01, "16 of 30; the print rounds that to .53, so 159 for 160"},
    {500, 0.4, 0.25, 1.75, 6, 25, 0.5, "15 s in every 2 min"},
    {500, 0.4, 0.25, 1.75, 30, 25, 0.5, "15 s in every 2 min"},
    {250, 1, 5, 5, 6, 208.3, 0.05, "5 on, 5 off, 5 on"},
    {250, 1, 5, 5, 30, 125, 0.5, "5 on, 5 off"},
};

/// Single printed distances, m.
struct PrintedDistance {
  double frequency_mhz, gain_dbi, average_w, ground_factor;
  bool to_public;
  double distance_m, half_step_m;
  Evidence evidence;
  const char* source;
};
inline constexpr double kFootM = 0.3048;
inline constexpr PrintedDistance kPrinted[] = {
    {28, 1, 100, 2.56, false, 4.9 * kFootM, 0.05 * kFootM, Evidence::second_hand,
     "question column on ground planes, about 2000"},
    {28, 1, 67, 2.56, true, 9 * kFootM, 0.5 * kFootM, Evidence::second_hand,
     "question column on ground planes, about 2000"},
    {144, 24, 150, 2.56, false, 27.7, 0.05, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 12"},
    {144, 24, 150, 2.56, true, 62, 0.5, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 12"},
    {144, 24, 500, 2.56, false, 50.6, 0.05, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 12"},
    {144, 24, 500, 2.56, true, 113, 0.5, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 12"},
    {144, 24, 1500, 2.56, false, 87.6, 0.05, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 12"},
    {144, 24, 1500, 2.56, true, 196, 0.5, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 12"},
    {146, 1, 10, 2.56, true, 1.1, 0.07, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 8"},
    {146, 1, 50, 2.56, true, 2.5, 0.07, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 8"},
    {146, 1, 150, 2.56, true, 4.4, 0.07, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 8"},
    {144, 3, 100, 2.56, true, 4.5, 0.05, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 4b"},
    {50, 9, 500, 2.56, true, 20.1, 0.05, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 4b"},
    {50, 12, 1000, 2.56, true, 40.2, 0.07, Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 4b"},
};
/// Rounded up to 0.1 m by its maker: 145 W average at 118 MHz, 2 dBi, free space (product manual of an airband
/// transmitter, 2020, seen).
inline constexpr double kAirbandOperatorM = 1.4, kAirbandPublicM = 3.1;

}  // namespace gs::test
