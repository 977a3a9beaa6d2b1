// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/safety/small_antenna.h"

namespace gs::safety {
namespace {


constexpr LoopDistance kLoop_distances[] = {
    {"7", 7.0, 2.0, 2.8,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 17: loop of 1 m diameter, 150 W continuous, from its centre"},
    {"10", 10.0, 2.1, 2.8,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 17"},
    {"14", 14.0, 2.1, 3.2,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 17"},
    {"18", 18.0, 2.3, 3.5,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 17"},
    {"21", 21.0, 2.3, 3.7,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 17"},
    {"24", 24.0, 2.4, 3.9,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 17"},
    {"28", 28.0, 2.4, 4.2,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 17"},
};

}  // namespace

std::span<const LoopDistance> loop_distances() { return kLoop_distances; }

}  // namespace gs::safety
