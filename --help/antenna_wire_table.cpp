// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/antenna/wires.h"

namespace gs::antenna {
namespace {


constexpr WireRow kWires[] = {
    {"cu14_soft", "Copper 1.63 mm, soft (AWG 14)", false,
     1.628, 17.857967322834646, 551.5794802923019, Evidence::seen,
     "maker's data sheet for bare copper conductor, ASTM B3"},
    {"cu14_hard", "Copper 1.63 mm, hard-drawn (AWG 14)", false,
     1.628, 17.857967322834646, 951.9194256657469, Evidence::seen,
     "maker's data sheet for bare copper conductor, ASTM B1"},
    {"cu12_soft", "Copper 2.05 mm, soft (AWG 12)", false,
     2.052, 29.763278871391073, 880.747879821579, Evidence::seen,
     "maker's data sheet for bare copper conductor, ASTM B3"},
    {"cu12_hard", "Copper 2.05 mm, hard-drawn (AWG 12)", false,
     2.052, 29.763278871391073, 1499.0506843427884, Evidence::seen,
     "maker's data sheet for bare copper conductor, ASTM B1"},
    {"cu10_hard", "Copper 2.59 mm, hard-drawn (AWG 10)", false,
     2.588, 46.133082250656166, 2353.1092344728045, Evidence::seen,
     "maker's data sheet for bare copper conductor, ASTM B1"},
    {"ccs12", "Copper-clad steel 2.05 mm, 40 % (AWG 12)", false,
     2.05, 26.965530657480315, 2557.7274287747873, Evidence::seen,
     "maker's data sheet, ASTM B227"},
    {"ccs12_30", "Copper-clad steel 2.05 mm, 30 % (AWG 12)", false,
     2.05, 26.965530657480315, 2780.1385095378123, Evidence::seen,
     "maker's data sheet, ASTM B227"},
    {"ccs10", "Copper-clad steel 2.59 mm, 40 % (AWG 10)", false,
     2.59, 42.87400321423884, 3780.9883729714247, Evidence::seen,
     "maker's data sheet, ASTM B227"},
    {"ccs10_30", "Copper-clad steel 2.59 mm, 30 % (AWG 10)", false,
     2.59, 42.87400321423884, 4114.604994115962, Evidence::seen,
     "maker's data sheet, ASTM B227"},
    {"ccs8", "Copper-clad steel 3.26 mm, 40 % (AWG 8)", false,
     3.26, 68.17279025492125, 5627.000343304532, Evidence::seen,
     "maker's data sheet, ASTM B227"},
    {"ccs8_30", "Copper-clad steel 3.26 mm, 30 % (AWG 8)", false,
     3.26, 68.17279025492125, 6005.099180601675, Evidence::seen,
     "maker's data sheet, ASTM B227"},
};

}  // namespace

std::span<const WireRow> wires() { return kWires; }

}  // namespace gs::antenna
