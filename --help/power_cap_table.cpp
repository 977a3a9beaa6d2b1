// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/rules/bands.h"

namespace gs::rules {
namespace {


constexpr PowerCap kPower_caps[] = {
    {"everywhere", 0.0, 1000.0, 1500.0, false, 7, 31,
     Evidence::seen, "47 CFR 97.313(b), text of 2026-09-23"},
    {"30m", 10.1, 10.15, 200.0, false, 7, 31,
     Evidence::seen, "47 CFR 97.313(c)(1), text of 2026-09-23"},
    {"80m_newcomers", 3.525, 3.6, 200.0, false, 7, 24,
     Evidence::seen, "47 CFR 97.313(c)(2), text of 2026-09-23"},
    {"40m_newcomers", 7.025, 7.125, 200.0, false, 7, 24,
     Evidence::seen, "47 CFR 97.313(c)(2), text of 2026-09-23"},
    {"15m_newcomers", 21.025, 21.2, 200.0, false, 7, 24,
     Evidence::seen, "47 CFR 97.313(c)(2), text of 2026-09-23"},
    {"10m_newcomers", 28.0, 28.5, 200.0, false, 7, 24,
     Evidence::seen, "47 CFR 97.313(c)(2), text of 2026-09-23"},
    {"40m_outside_region_2", 7.05, 7.075, 200.0, false, 5, 31,
     Evidence::seen, "47 CFR 97.313(c)(3), text of 2026-09-23"},
    {"60m_a", 5.3305, 5.3335, 100.0, true, 7, 31,
     Evidence::seen, "47 CFR 97.313(i), text of 2026-09-23"},
    {"60m_b", 5.3465, 5.3495, 100.0, true, 7, 31,
     Evidence::seen, "47 CFR 97.313(i), text of 2026-09-23"},
    {"60m_c", 5.3715, 5.3745, 100.0, true, 7, 31,
     Evidence::seen, "47 CFR 97.313(i), text of 2026-09-23"},
    {"60m_d", 5.4035, 5.4065, 100.0, true, 7, 31,
     Evidence::seen, "47 CFR 97.313(i), text of 2026-09-23"},
    {"60m", 5.3515, 5.3665, 9.15, true, 7, 31,
     Evidence::seen, "47 CFR 97.313(i), text of 2026-09-23"},
};

}  // namespace

std::span<const PowerCap> power_caps() { return kPower_caps; }

}  // namespace gs::rules
