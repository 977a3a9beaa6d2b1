// Outside check values of the battery and radio links. Every row or table says where it comes from and how well it
// is known.
#pragma once

#include "core/evidence.h"

namespace gs::test {

/// A lead-acid block discharged at a constant current at 25 C until its end voltage. The chemistry's law was fitted
/// to these, one vote a maker; but not to the 115 Ah block, whose sheet contradicts itself at 2 and 3 h.
struct RateRow {
  const char* block;
  double label_ah, current_a, hours;
  Evidence evidence;
  const char* source;
};
inline constexpr const char* kSixVolt = "CSB GP 645 data sheet, to 1.75 V a cell";
inline constexpr const char* kDeep = "CB12-115 data sheet (maker's name not in the excerpt), to 10.5 V";
inline constexpr const char* kStandby = "CSB GP 12400 data sheet, to 1.75 V a cell";
inline constexpr const char* kSmall = "NP4-12 data sheet (maker's name not in the excerpt), to 1.75 V a cell";
inline constexpr const char* kHandbook = "Panasonic LC-X1228, Sealed Lead-Acid Handbook, January 1999, p. 124";
inline constexpr const char* kFourPoints =
    "12V-40AH specification sheet (Vinachem), end voltage 10.8 to 9.6 V by rate";
inline constexpr RateRow kRates[] = {
    {"4.5 Ah", 4.5, 5.22, 0.5, Evidence::seen, kSixVolt},
    {"4.5 Ah", 4.5, 3.06, 1, Evidence::seen, kSixVolt},
    {"4.5 Ah", 4.5, 1.77, 2, Evidence::seen, kSixVolt},
    {"4.5 Ah", 4.5, 1.23, 3, Evidence::seen, kSixVolt},
    {"4.5 Ah", 4.5, 0.979, 4, Evidence::seen, kSixVolt},
    {"4.5 Ah", 4.5, 0.804, 5, Evidence::seen, kSixVolt},
    {"4.5 Ah", 4.5, 0.531, 8, Evidence::seen, kSixVolt},
    {"4.5 Ah", 4.5, 0.435, 10, Evidence::seen, kSixVolt},
    {"4.5 Ah", 4.5, 0.229, 20, Evidence::seen, kSixVolt},
    {"115 Ah deep cycle", 115, 119.7, 0.5, Evidence::seen, kDeep},
    {"115 Ah deep cycle", 115, 66.88, 1, Evidence::seen, kDeep},
    {"115 Ah deep cycle", 115, 42.63, 2, Evidence::seen, kDeep},
    {"115 Ah deep cycle", 115, 27.97, 3, Evidence::seen, kDeep},
    {"115 Ah deep cycle", 115, 24.01, 4, Evidence::seen, kDeep},
    {"115 Ah deep cycle", 115, 19.01, 5, Evidence::seen, kDeep},
    {"115 Ah deep cycle", 115, 13.72, 8, Evidence::seen, kDeep},
    {"115 Ah deep cycle", 115, 11.11, 10, Evidence::seen, kDeep},
    {"115 Ah deep cycle", 115, 5.75, 20, Evidence::seen, kDeep},
    {"40 Ah standby", 40, 49.0, 0.5, Evidence::seen, kStandby},
    {"40 Ah standby", 40, 30.0, 1, Evidence::seen, kStandby},
    {"40 Ah standby", 40, 17.4, 2, Evidence::seen, kStandby},
    {"40 Ah standby", 40, 12.3, 3, Evidence::seen, kStandby},
    {"40 Ah standby", 40, 9.71, 4, Evidence::seen, kStandby},
    {"4 Ah", 4, 2.25, 1, Evidence::seen, kSmall},
    {"4 Ah", 4, 1.0, 3, Evidence::seen, kSmall},
    {"4 Ah", 4, 0.7, 5, Evidence::seen, kSmall},
    {"4 Ah", 4, 0.38, 10, Evidence::seen, kSmall},
    {"4 Ah", 4, 0.2, 20, Evidence::seen, kSmall},
    {"28 Ah", 28, 21.0, 1, Evidence::seen, kHandbook},
    {"28 Ah", 28, 5.0, 5, Evidence::seen, kHandbook},
    {"28 Ah", 28, 2.65, 10, Evidence::seen, kHandbook},
    {"28 Ah", 28, 1.4, 20, Evidence::seen, kHandbook},
    {"40 Ah, four points", 40, 24.0, 1, Evidence::seen, kFourPoints},
    {"40 Ah, four points", 40, 6.8, 5, Evidence::seen, kFourPoints},
    {"40 Ah, four points", 40, 3.72, 10, Evidence::seen, kFourPoints},
    {"40 Ah, four points", 40, 2.0, 20, Evidence::seen, kFourPoints},
};

/// Hours until a 17 Ah sealed lead block under a constant current stands at 12.3, 12.0, 11.7, 11.4, 11.1 and 10.8
/// V. Telemetry of seven runs, 18 to 24 C, open data of J. Electrochem. Soc. 166 (2019) A2363 (seen). The law was
/// fitted to this block and to five makers' tables at once.
struct BlockRun {
  double current_a, hours[6];
};
inline constexpr double kBlockV[] = {12.3, 12.0, 11.7, 11.4, 11.1, 10.8};
inline constexpr BlockRun kBlock[] = {
    {3.04, {1.70, 3.11, 4.39, 5.39, 6.04, 6.37}},       {2.54, {2.35, 4.04, 5.48, 6.59, 7.29, 7.63}},
    {2.04, {3.04, 5.13, 6.94, 8.29, 9.09, 9.47}},       {1.54, {3.94, 6.79, 9.13, 10.85, 11.90, 12.33}},
    {1.03, {6.08, 10.11, 13.59, 16.04, 17.46, 18.08}},  {1.03, {5.59, 9.64, 13.01, 15.44, 16.85, 17.47}},
    {0.53, {11.65, 19.47, 26.19, 30.81, 33.33, 34.45}},
};

/// Open circuit at rest, 12 V block: Concorde (Lifeline) charging guidance (seen).
struct RestingRow {
  double left_pct, v;
};
inline constexpr RestingRow kResting[] = {{100, 12.8}, {75, 12.55}, {50, 12.2}, {25, 11.75}};

/// Hours to 11.7 V of a 40 or 30 Ah block: worked out apart with a kinetic model fitted to the 40 Ah standby
/// maker's six end voltages and to the measured block's slope (another program; evidence: memory, since it is
/// nobody's print).
struct KineticRow {
  double label_ah, key_down_a, lasting_a, average_a, lead_ohm, hours;
};
inline constexpr KineticRow kKinetic[] = {
    {40, 5, 5, 5, 0, 6.006},
    {40, 8, 8, 8, 0, 3.487},
    {40, 10, 10, 10, 0, 2.647},
    {40, 20, 20, 20, 0, 0.980},
    {40, 30, 30, 30, 0, 0.485},
    {30, 1.5, 1.5, 1.5, 0, 16.078},
    {30, 3, 3, 3, 0, 7.685},
    {30, 5, 5, 5, 0, 4.327},
    {30, 10, 10, 10, 0, 1.807},
    {30, 20, 20, 20, 0, 0.599},
    // bursts of speech: 40 % of the time on transmit, 1.2 A on receive
    {30, 21, 9.9, 4.68, 0.0171, 1.82},
    {30, 11.75, 6.2, 3.2, 0.0363, 3.26},
    {30, 8.35, 4.84, 2.656, 0.0363, 5.50},
};

/// Key-down current of three 100 W sets at 13.8 V, carrier on 7 MHz into 50 ohm: an independent owner's bench
/// (seen).
struct BenchSet {
  const char* name;
  double receive_a, idle_a, full_a;  // idle and full: least squares of the law, worked out apart
  double current_a[4], efficiency_pct[4];
};
inline constexpr double kBenchW[] = {5, 20, 50, 100};
inline constexpr BenchSet kBench[] = {
    {"set A", 0.6, 0.91, 13.43, {3.8, 6.3, 9.9, 13.4}, {9.5, 23.0, 36.6, 54.1}},
    {"set B", 1.1, 3.24, 19.45, {7.0, 10.3, 14.7, 19.5}, {5.2, 14.1, 24.6, 37.2}},
    {"set C", 1.6, 4.63, 19.47, {8.0, 11.2, 15.1, 19.5}, {4.5, 12.9, 24.0, 37.2}},
};

/// Copper wire: ohm per 1000 ft at 20 C as a textbook tabulates it (Electric Circuit Fundamentals, 2nd ed.,
/// reprinted on a university physics page; second hand), diameter by ASTM B258's table (from memory, met by the
/// same page).
struct WireRow {
  int gauge;
  double diameter_mm, ohm_per_1000_ft, half_step;
};
inline constexpr WireRow kWires[] = {
    {24, 0.5106, 25.67, 0.005},  {22, 0.6438, 16.14, 0.005},  {20, 0.8118, 10.15, 0.005},
    {18, 1.0237, 6.385, 0.0005}, {16, 1.2908, 4.016, 0.0005}, {14, 1.6277, 2.525, 0.0005},
    {12, 2.0525, 1.588, 0.0005}, {10, 2.5882, 0.9989, 5e-5},  {8, 3.2636, 0.6282, 5e-5},
};

}  // namespace gs::test
