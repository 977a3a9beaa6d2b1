// What levers and checks of safety and rules choose from: one list each, so that a check can take the plan's
// choice.
#pragma once

#include <span>

#include "core/outing/table.h"
#include "core/rules/bands.h"

namespace gs {

std::span<const Option> region_options();
/// The five classes of 47 CFR 97.301 and, last, a licence of another country.
std::span<const Option> licence_options();
inline constexpr std::size_t kLicencesOfTheTable = 5;
rules::Region region_at(double index);
/// Precondition: index < kLicencesOfTheTable.
rules::Class licence_at(double index);

std::span<const Option> exposure_rule_options();  // in the order of safety::Rule
std::span<const Option> ground_options();
double ground_factor_at(double index);

}  // namespace gs
