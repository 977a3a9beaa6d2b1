// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/rules/bands.h"

namespace gs::rules {
namespace {


constexpr FixedChannel kFixed_channels[] = {
    {"60m_a", "60m", 5.332, 5.3305, 2.8,
     Evidence::seen, "47 CFR 97.303(h), 97.305(c)(3)(iii), text of 2026-09-23"},
    {"60m_b", "60m", 5.348, 5.3465, 2.8,
     Evidence::seen, "47 CFR 97.303(h), 97.305(c)(3)(iii), text of 2026-09-23"},
    {"60m_c", "60m", 5.373, 5.3715, 2.8,
     Evidence::seen, "47 CFR 97.303(h), 97.305(c)(3)(iii), text of 2026-09-23"},
    {"60m_d", "60m", 5.405, 5.4035, 2.8,
     Evidence::seen, "47 CFR 97.303(h), 97.305(c)(3)(iii), text of 2026-09-23"},
};

}  // namespace

std::span<const FixedChannel> fixed_channels() { return kFixed_channels; }

}  // namespace gs::rules
