// What the battery's figures mean, in sentences: what a full pack does to the set, what the radio leaves in it,
// what the reserve is worth, what the cold forbids.
#pragma once

#include <vector>

#include "core/outing/finding.h"

namespace gs {

/// The battery's findings, what matters most first; empty while the pack is not known. `outlook` is evaluate(plan).
std::vector<Finding> battery_findings(const Plan& plan, const Outlook& outlook, const Style& style = {});

}  // namespace gs
