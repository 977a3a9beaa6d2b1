// What a meter in the supply lead said of the person's own set, key-down at two or three powers.
#pragma once

#include <vector>

#include "core/outing/plan.h"
#include "core/radio/current.h"

namespace gs {

/// The readings that have both figures, in the order of the levers.
std::vector<radio::KeyedReading> radio_readings(const Plan& plan);

/// Both currents of the law from them. `sound` is false with fewer than two, or where they cannot all be true: then
/// they are named (`clashes`) and not used.
radio::FromReadings currents_from_readings(const Plan& plan);

}  // namespace gs
