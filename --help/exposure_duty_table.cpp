// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/safety/average_power.h"

namespace gs::safety {
namespace {


constexpr ExposureDuty kExposure_duties[] = {
    {"ssb", "SSB, conversation", 0.2,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 2"},
    {"ssb_processed", "SSB, heavy speech processing", 0.5,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 2"},
    {"cw", "CW, conversation", 0.4,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 2"},
    {"data", "Data, FSK, AFSK", 1.0,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 2 (FSK, RTTY, AFSK)"},
    {"fm", "FM", 1.0,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 2"},
    {"carrier", "Carrier, tuning up", 1.0,
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, Table 2"},
};

}  // namespace

std::span<const ExposureDuty> exposure_duties() { return kExposure_duties; }

}  // namespace gs::safety
