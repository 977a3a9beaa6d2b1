// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/safety/overhead.h"

namespace gs::safety {
namespace {


constexpr LineClearance kLine_clearances[] = {
    {"50kv", "to 50 kV, or not known", 3.048,
     Evidence::seen, "29 CFR 1926.1408 Table A: 10 ft; the same 10 ft in US question pool 2022-2026, T0B06"},
    {"200kv", "over 50 to 200 kV", 4.572,
     Evidence::seen, "29 CFR 1926.1408 Table A: 15 ft"},
    {"350kv", "over 200 to 350 kV", 6.096,
     Evidence::seen, "29 CFR 1926.1408 Table A: 20 ft"},
    {"500kv", "over 350 to 500 kV", 7.62,
     Evidence::seen, "29 CFR 1926.1408 Table A: 25 ft"},
    {"750kv", "over 500 to 750 kV", 10.668,
     Evidence::seen, "29 CFR 1926.1408 Table A: 35 ft"},
    {"1000kv", "over 750 to 1000 kV", 13.716,
     Evidence::seen, "29 CFR 1926.1408 Table A: 45 ft"},
};

}  // namespace

std::span<const LineClearance> line_clearances() { return kLine_clearances; }

}  // namespace gs::safety
