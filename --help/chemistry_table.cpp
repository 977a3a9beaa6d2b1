// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/battery/chemistry.h"

namespace gs::battery {
namespace {

constexpr CurvePoint kRestingV0[] = {
    {0.0, 8.05, Evidence::seen, "IFR18650 E1600 data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C, times four"},
    {5.0, 12.05, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {10.0, 12.65, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {20.0, 12.89, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {30.0, 13.0, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {40.0, 13.13, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {50.0, 13.17, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {60.0, 13.19, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {70.0, 13.24, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {80.0, 13.33, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {90.0, 13.36, Evidence::seen, "open cell-test files of a university battery course, 26650 cell, C/27 discharge at 25 C, times four"},
    {100.0, 13.39, Evidence::seen, "IFR18650 E1600 data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C, times four"},
};
constexpr CurvePoint kCapacityAtC0[] = {
    {-20.0, 0.5, Evidence::seen, "Victron Lithium Battery Smart manual, section 7, up to 1 A per Ah; another maker promises 0.70 at -20 C"},
    {0.0, 0.8, Evidence::seen, "Victron Lithium Battery Smart manual, section 7, up to 1 A per Ah; another maker promises 0.70 at -20 C"},
    {25.0, 1.0, Evidence::seen, "Victron Lithium Battery Smart manual, section 7, up to 1 A per Ah; another maker promises 0.70 at -20 C"},
};
constexpr CurvePoint kCapacityAtRate0[] = {
    {0.2, 1.0, Evidence::seen, "Sunland IFR26650PE page: 3.30 Ah at 0.2, 3.20 Ah at 1 to 3 A per Ah"},
    {1.0, 0.97, Evidence::seen, "Sunland IFR26650PE page: 3.30 Ah at 0.2, 3.20 Ah at 1 to 3 A per Ah"},
    {3.0, 0.97, Evidence::seen, "Sunland IFR26650PE page: 3.30 Ah at 0.2, 3.20 Ah at 1 to 3 A per Ah"},
};
constexpr CurvePoint kResistanceAtC0[] = {
    {-25.0, 14.0, Evidence::seen, "open cell-test files of a university battery course, driving profile, worked out from its samples"},
    {-15.0, 6.1, Evidence::seen, "open cell-test files of a university battery course, driving profile, worked out from its samples"},
    {-5.0, 2.9, Evidence::seen, "open cell-test files of a university battery course, driving profile, worked out from its samples"},
    {5.0, 1.75, Evidence::seen, "open cell-test files of a university battery course, driving profile, worked out from its samples"},
    {15.0, 1.25, Evidence::seen, "open cell-test files of a university battery course, driving profile, worked out from its samples"},
    {25.0, 1.0, Evidence::seen, "open cell-test files of a university battery course, driving profile, worked out from its samples"},
    {35.0, 0.87, Evidence::seen, "open cell-test files of a university battery course, driving profile, worked out from its samples"},
    {45.0, 0.78, Evidence::seen, "open cell-test files of a university battery course, driving profile, worked out from its samples"},
};
constexpr CurvePoint kCapacityAtC1[] = {
    {-15.0, 0.65, Evidence::seen, "Panasonic LC-X1228, Sealed Lead-Acid Handbook, January 1999, p. 124, 20 h rate"},
    {0.0, 0.85, Evidence::seen, "Panasonic LC-X1228, Sealed Lead-Acid Handbook, January 1999, p. 124, 20 h rate"},
    {25.0, 1.0, Evidence::seen, "Panasonic LC-X1228, Sealed Lead-Acid Handbook, January 1999, p. 124, 20 h rate"},
    {40.0, 1.02, Evidence::seen, "Panasonic LC-X1228, Sealed Lead-Acid Handbook, January 1999, p. 124, 20 h rate"},
};
constexpr CurvePoint kResistanceAtC1[] = {
    {-20.0, 1.54, Evidence::practice, "no table found: 1.3 at 0 C assumed, straight between"},
    {0.0, 1.3, Evidence::practice, "no table found: 1.3 at 0 C assumed, straight between"},
    {25.0, 1.0, Evidence::practice, "no table found: 1.3 at 0 C assumed, straight between"},
};
constexpr KineticLaw kKineticLaw1 = {1.0286, 1.197, 0.52415, 12.78, 1.094, 0.00504, Evidence::seen, "least squares of the logarithm of time, one vote a maker: CSB GP 12400 and GP 645, NP4-12, 12V-40AH (Vinachem), Panasonic LC-X1228, from 30 min to 20 h, and seven runs of a 17 Ah block measured by a university (J. Electrochem. Soc. 166 (2019) A2363) to 12.3 to 11.1 V; full voltage as that block's, quick resistance of the catalogue; rms 9 % in time, worst 23 %"};
constexpr CurvePoint kRestingV2[] = {
    {0.0, 7.506, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {10.0, 9.438, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {20.0, 10.116, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {30.0, 10.347, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {40.0, 10.596, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {50.0, 10.806, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {60.0, 11.04, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {70.0, 11.292, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {80.0, 11.526, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {90.0, 11.808, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {100.0, 12.096, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
};
constexpr CurvePoint kCapacityAtC2[] = {
    {-20.0, 0.6, Evidence::seen, "Samsung INR18650-15L specification v3.21, section 7.5, at 10 A"},
    {-10.0, 0.75, Evidence::seen, "Samsung INR18650-15L specification v3.21, section 7.5, at 10 A"},
    {0.0, 0.8, Evidence::seen, "Samsung INR18650-15L specification v3.21, section 7.5, at 10 A"},
    {25.0, 1.0, Evidence::seen, "Samsung INR18650-15L specification v3.21, section 7.5, at 10 A"},
};
constexpr CurvePoint kCapacityAtRate2[] = {
    {0.2, 1.0, Evidence::seen, "Samsung INR18650-25R sheet: 2.50 Ah at 0.5 A, 2.45 Ah at 10 A"},
    {4.0, 0.98, Evidence::seen, "Samsung INR18650-25R sheet: 2.50 Ah at 0.5 A, 2.45 Ah at 10 A"},
};
constexpr CurvePoint kResistanceAtC2[] = {
    {-15.0, 3.5, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {-5.0, 2.2, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {5.0, 1.5, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {15.0, 1.2, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {25.0, 1.0, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {45.0, 0.85, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
};
constexpr CurvePoint kRestingV3[] = {
    {0.0, 10.008, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {10.0, 12.584, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {20.0, 13.488, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {30.0, 13.796, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {40.0, 14.128, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {50.0, 14.408, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {60.0, 14.72, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {70.0, 15.056, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {80.0, 15.368, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {90.0, 15.744, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {100.0, 16.128, Evidence::seen, "NCR18650BF data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
};
constexpr CurvePoint kCapacityAtC3[] = {
    {-20.0, 0.6, Evidence::seen, "Samsung INR18650-15L specification v3.21, section 7.5, at 10 A"},
    {-10.0, 0.75, Evidence::seen, "Samsung INR18650-15L specification v3.21, section 7.5, at 10 A"},
    {0.0, 0.8, Evidence::seen, "Samsung INR18650-15L specification v3.21, section 7.5, at 10 A"},
    {25.0, 1.0, Evidence::seen, "Samsung INR18650-15L specification v3.21, section 7.5, at 10 A"},
};
constexpr CurvePoint kCapacityAtRate3[] = {
    {0.2, 1.0, Evidence::seen, "Samsung INR18650-25R sheet: 2.50 Ah at 0.5 A, 2.45 Ah at 10 A"},
    {4.0, 0.98, Evidence::seen, "Samsung INR18650-25R sheet: 2.50 Ah at 0.5 A, 2.45 Ah at 10 A"},
};
constexpr CurvePoint kResistanceAtC3[] = {
    {-15.0, 3.5, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {-5.0, 2.2, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {5.0, 1.5, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {15.0, 1.2, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {25.0, 1.0, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
    {45.0, 0.85, Evidence::memory, "as a cold lithium cell behaves, milder than LiFePO4; no table found"},
};
constexpr CurvePoint kRestingV4[] = {
    {0.0, 10.04, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {10.0, 11.94, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {20.0, 12.31, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {30.0, 12.44, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {40.0, 12.54, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {50.0, 12.57, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {60.0, 12.63, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {70.0, 12.66, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {80.0, 12.74, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {90.0, 13.15, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
    {100.0, 14.2, Evidence::seen, "BK-1100FHU data-sheet curve as tabulated in a public real-time system's battery header, light load, 25 C"},
};
constexpr CurvePoint kCapacityAtC4[] = {
    {-20.0, 0.5, Evidence::memory, "no table found"},
    {0.0, 0.85, Evidence::memory, "no table found"},
    {25.0, 1.0, Evidence::memory, "no table found"},
};
constexpr CurvePoint kCapacityAtRate4[] = {
    {0.2, 1.0, Evidence::memory, "no table found"},
    {1.0, 0.95, Evidence::memory, "no table found"},
};
constexpr CurvePoint kResistanceAtC4[] = {
    {-20.0, 3.0, Evidence::memory, "no table found"},
    {0.0, 1.6, Evidence::memory, "no table found"},
    {25.0, 1.0, Evidence::memory, "no table found"},
};

constexpr Chemistry kChemistries[] = {
    {"lifepo4", "LiFePO4, 4 cells", false,
     4.0, 12.8, 11.2, 5.0, 92.4, 0.0, 10.0, 1.0,
     0.0, 10.0, 0.1, 0.5, 1.01, 0.5,
     Evidence::seen, "empty: Victron Lithium Battery Smart manual, section 7; nominal 3.2 V a cell",
     Evidence::practice, "gives nearly all of its rating, full-depth life 2000 cycles and more (Sunland, Master Battery, EVE sheets); the last twentieth is left to the protection board",
     Evidence::seen, "cell: 11.1 mohm at 2.08 Ah and 25 C from a driving profile of an open university cell-test set, worked out from its samples, four in series; fixed part for protection board and terminals: practice, 2 to 50 mohm on sheets",
     Evidence::practice, "the protection board of small packs; 1 A per Ah: Victron, Alpha APL48-50LFP manual for 0 to 60 C",
     Evidence::seen, "Alpha APL48-50LFP manual p. 10: none below 0 C, 0.1 A per Ah below 10 C, 0.5 warm; Sunland page forbids charging below 0 C; Victron starts at 5 C. Factor and tail: practice",
     kRestingV0, kCapacityAtC0, kCapacityAtRate0, kResistanceAtC0, nullptr,
     {0.95, 1.03, 0.8, 2.0, -0.25, 0.05, Evidence::practice, "capacity: 0.80 at 0 C by one maker, nearly all at a gentle rate by measurement; resting voltage: a light-load curve of another cell lies up to 0.28 V a pack lower from 10 to 90 % (IFR18650 E1600), equilibrium of a third up to 0.10 V higher at 10 %; resistance: sheets allow four times what cells measure, a protection board included"}},
    {"sealed_lead", "Sealed lead-acid, AGM or gel", false,
     6.0, 12.0, 10.5, 50.0, 392.0, 0.0, 0.0, 2.0,
     -15.0, 0.0, 0.1, 0.25, 1.1, 6.0,
     Evidence::seen, "empty: AlphaCell SMU-C manual, table 2-2, below 0.2 A per Ah; nominal 2 V a cell",
     Evidence::practice, "half is kept back for the battery's life: Concorde (not below half for the longest life); 600 cycles at half depth against 200 at full on a 40 Ah sheet",
     Evidence::seen, "9.8 mohm at 40 Ah, fitted to the CSB GP 12400 tables; what a load that lasts adds is in the wells",
     Evidence::practice, "maker's sheets allow more; from memory",
     Evidence::seen, "CSB sheets: charging from -15 C, at most 0.25 to 0.3 A per Ah; another sheet (CB12-115) starts at 0 C. Factor 1.05 (ODYSSEY technical manual) to 1.10 (Remco); tail: 100 Ah AGM at 25 A needs about 6 h after the bulk. Gentle rate in frost: practice",
     {}, kCapacityAtC1, {}, kResistanceAtC1, &kKineticLaw1,
     {0.82, 1.2, 0.7, 1.5, -0.15, 0.08, Evidence::practice, "makers of one label give 0.56 to 0.75 of it in an hour; a measured 17 Ah block gave 19.4 Ah in 6.4 h; six makers' tables and that block lie within; sheets' resistance scatters by half"}},
    {"li_ion_3s", "Lithium-ion (NMC), 3 cells", false,
     3.0, 11.1, 8.25, 5.0, 150.0, 0.0, 20.0, 1.0,
     0.0, 15.0, 0.1, 0.5, 1.01, 0.5,
     Evidence::seen, "empty 2.75 V a cell: YOK cell specification; nominal 3.7 V a cell from memory",
     Evidence::practice, "as LiFePO4",
     Evidence::memory, "about 50 mohm Ah a cell: at most 45 by the 1 kHz limits of Samsung 25R and 15L sheets, a little more for seconds; fixed part for board and terminals: practice",
     Evidence::practice, "the protection board of small packs",
     Evidence::seen, "14.8 V 2600 mAh pack sheet: 0.1 A per Ah at 0 to 5 C, 0.2 at 5 to 15 C, 0.5 above; the least is taken below 15 C. Factor and tail: practice",
     kRestingV2, kCapacityAtC2, kCapacityAtRate2, kResistanceAtC2, nullptr,
     {0.9, 1.03, 0.6, 2.0, -0.15, 0.15, Evidence::practice, "one maker's light-load curve for all cells; resistance from memory"}},
    {"li_ion_4s", "Lithium-ion (NMC), 4 cells", false,
     4.0, 14.8, 11.0, 5.0, 200.0, 0.0, 20.0, 1.0,
     0.0, 15.0, 0.1, 0.5, 1.01, 0.5,
     Evidence::seen, "empty 2.75 V a cell: YOK cell specification; nominal 3.7 V a cell from memory",
     Evidence::practice, "as LiFePO4",
     Evidence::memory, "about 50 mohm Ah a cell: at most 45 by the 1 kHz limits of Samsung 25R and 15L sheets, a little more for seconds; fixed part for board and terminals: practice",
     Evidence::practice, "the protection board of small packs",
     Evidence::seen, "14.8 V 2600 mAh pack sheet: 0.1 A per Ah at 0 to 5 C, 0.2 at 5 to 15 C, 0.5 above; the least is taken below 15 C. Factor and tail: practice",
     kRestingV3, kCapacityAtC3, kCapacityAtRate3, kResistanceAtC3, nullptr,
     {0.9, 1.03, 0.6, 2.0, -0.2, 0.2, Evidence::practice, "one maker's light-load curve for all cells; resistance from memory"}},
    {"nimh", "NiMH, 10 cells", false,
     10.0, 12.0, 10.0, 10.0, 300.0, 0.0, 20.0, 1.0,
     0.0, 10.0, 0.1, 0.5, 1.4, 0.0,
     Evidence::practice, "1.2 V nominal and 1.0 V empty a cell: practice",
     Evidence::practice, "the weakest cell turns over when the pack is run flat",
     Evidence::memory, "2 mohm at 6.5 Ah (HHR650D as used in a simulation block) is 13 mohm Ah a cell for a high-rate D cell; AA cells have about 25 to 40 and holders add to it: 30 taken, from memory",
     Evidence::practice, "from memory",
     Evidence::memory, "0 to 45 C and 1.4 times the charge at a slow rate: cell makers' usual advice, from memory",
     kRestingV4, kCapacityAtC4, kCapacityAtRate4, kResistanceAtC4, nullptr,
     {0.85, 1.03, 0.5, 2.0, -0.3, 0.2, Evidence::practice, "one maker's light-load curve; rate and cold from memory"}},
};

}  // namespace

std::span<const Chemistry> chemistries() { return kChemistries; }

}  // namespace gs::battery
