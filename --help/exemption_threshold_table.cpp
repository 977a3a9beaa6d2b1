// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/safety/exposure_limits.h"

namespace gs::safety {
namespace {


constexpr ExemptionThreshold kExemption_thresholds[] = {
    {"low", 0.3, 1.34, 1920.0, 0.0,
     Evidence::seen, "47 CFR 1.1307(b)(3)(i)(C) Table 1"},
    {"hf", 1.34, 30.0, 3450.0, -2.0,
     Evidence::seen, "47 CFR 1.1307(b)(3)(i)(C) Table 1"},
    {"vhf", 30.0, 300.0, 3.83, 0.0,
     Evidence::seen, "47 CFR 1.1307(b)(3)(i)(C) Table 1"},
};

}  // namespace

std::span<const ExemptionThreshold> exemption_thresholds() { return kExemption_thresholds; }

}  // namespace gs::safety
