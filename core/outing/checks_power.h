// Small questions about battery, radio and DC lead, and the choices that their rows share with the plan's levers.
#pragma once

#include "core/outing/checks.h"

namespace gs {

/// Battery's and radio's checks in one list.
std::span<const Check> power_checks();

std::span<const Check> battery_checks();  // size, runtime, key-down, test
std::span<const Check> park_checks();     // meter in the park, spare, data sheet
std::span<const Check> charge_checks();   // charger, sun, cold
std::span<const Check> radio_checks();    // draw, readings, efficiency
std::span<const Check> lead_checks();     // drop, wire, resistance, fuse

/// Catalogue rows as options, in catalogue order: a choice's number is the row's index.
std::span<const Option> chemistry_options();
std::span<const Option> mode_options();
std::span<const Option> wire_options();

}  // namespace gs
