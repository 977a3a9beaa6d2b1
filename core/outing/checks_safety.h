// Small questions about safety and about the rules of the bands.
#pragma once

#include "core/outing/check_rows.h"

namespace gs {

std::span<const Check> exposure_checks();  // distances, power
std::span<const Check> share_checks();     // busiest share
std::span<const Check> hazard_checks();    // power lines, thunder, touch
std::span<const Check> rules_checks();     // may I transmit here?

/// All of them, for checks.cpp.
std::span<const Check> safety_checks();

}  // namespace gs
