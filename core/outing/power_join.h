// Where plan, battery, lead and radio meet: the load and the packs of a plan, for the readings, the drawings and
// the small questions alike.
#pragma once

#include <vector>

#include "core/battery/carried.h"
#include "core/outing/evaluate_parts.h"
#include "core/radio/fuse.h"

namespace gs {

/// Why the radio's currents are not known; Doubt::none where they are.
Doubtful no_radio_because(const Plan& plan);

/// The plan's load at a power that leaves the radio. Only where no_radio_because() says none. Worse and better:
/// what other sets of the class draw where its usual currents are taken, else what the law of the root misses by.
battery::Load load_of(const Plan& plan, double power_w, battery::Luck luck = battery::Luck::usual);

/// The pack and, where one is carried, the spare. Only where chemistry and capacity are known.
std::vector<battery::Carry> packs_of(const Plan& plan, battery::Luck luck = battery::Luck::usual);

/// The fuse of the plan's lead: not below the peak, and loaded to no more than its share while sending.
radio::Fuse fuse_of(const Plan& plan, const battery::Load& load);

}  // namespace gs
