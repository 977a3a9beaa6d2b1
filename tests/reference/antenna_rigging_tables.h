// Outside check values of rigging and of what is bought: sag, lines, wires, transformers. Every row says where it
// comes from and how well it is known.
#pragma once

#include "core/evidence.h"

namespace gs::test {

/// A wire between two points of equal height.
struct SagRow {
  double mass_g_per_m, span_m, pull_kg, sag_m, extra_wire_m, half_step_m;
  Evidence evidence;
  const char* source;
};
inline constexpr double kNewtonPerKg = 9.80665;  // standard gravity, ISO 80000-3
inline constexpr double kKgPerLb = 0.45359237, kFt = 0.3048;
inline constexpr SagRow kSags[] = {
    // 0.011 lb/ft, 420 ft, 50 lbf: 4.852 ft printed
    {11 * kKgPerLb / kFt, 420 * kFt, 50 * kKgPerLb, 4.852 * kFt, 0.1495 * kFt, 0.0006 * kFt, Evidence::seen,
     "QST, March 2014, p. 50, worked example; the extra wire 8 d^2 / 3 S worked out apart"},
    {29.4, 10.3, 20 / kNewtonPerKg, 0.191, 0.0095, 0.0006, Evidence::practice, "catenary, worked out apart"},
    {29.4, 20.3, 50 / kNewtonPerKg, 0.297, 0.0116, 0.0006, Evidence::practice, "catenary, worked out apart"},
    {29.4, 20.3, 100 / kNewtonPerKg, 0.149, 0.0029, 0.0006, Evidence::practice, "catenary, worked out apart"},
    {29.4, 40.6, 100 / kNewtonPerKg, 0.594, 0.0232, 0.0006, Evidence::practice, "catenary, worked out apart"},
};

/// Legs of a V, and straight lines down from a support: Pythagoras, worked out apart.
struct LegRow {
  double leg_m, apex_m, end_m, each_m, between_deg;
};
inline constexpr LegRow kLegs[] = {{10.1, 10, 1.5, 5.455, 65.4}, {10.1, 12, 3, 4.584, 54.0}};
struct LineRow {
  double top_m, end_m, out_m, length_m, slope_deg;
};
inline constexpr LineRow kLines[] = {
    {9, 1.5, 17, 18.581, 23.8}, {9, 1.5, 8, 10.966, 43.2}, {6, 0.5, 10, 11.413, 28.8}};

/// Makers' data sheets (seen): solid bare copper, ASTM B1, B2, B3; copper-clad steel, ASTM B227. Breaking loads of
/// hard-drawn and soft copper, of steel with 40 and 30 % conductivity; 0: not printed. Keys of antenna-wires.csv.
struct WirePrint {
  const char *first_key, *second_key;
  double mm, lb_1000ft, first_lbf, second_lbf;
};
inline constexpr WirePrint kWirePrints[] = {{"cu14_hard", "cu14_soft", 1.628, 12, 214, 124},
                                            {"cu12_hard", "cu12_soft", 2.052, 20, 337, 198},
                                            {"cu10_hard", "", 2.588, 31, 529, 0},
                                            {"ccs12", "ccs12_30", 2.05, 18.12, 575, 625},
                                            {"ccs10", "ccs10_30", 2.59, 28.81, 850, 925},
                                            {"ccs8", "ccs8_30", 3.26, 45.81, 1265, 1350}};

/// Transformers as owners and builders measured them (second hand): share lost. Keys of antenna-transformers.csv.
struct TransformerPrint {
  const char* key;
  double lost_pct, within;
};
inline constexpr TransformerPrint kTransformerPrints[] = {
    {"un64_43_3600", 9, 2},                       // 9 of 100 W, from open- and short-circuit impedances
    {"un49_resistive", 2.3, 2.3},                 // 17.0 dB through where 16.9 is the ratio, +-0.1 dB
    {"box_broadband", 100 * (1 - 3.7 / 8.4), 1},  // 8.4 mW in, 3.7 out
    {"bal4_61", 1.25, 0.25},                      // under 0.5 of 20 W in a pair
    {"un49_43_small", 36, 0.5},
    {"un49_43_large", 29, 0.5}};  // builders' conductances, not in the printed list

}  // namespace gs::test
