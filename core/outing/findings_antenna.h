// What the antenna's figures mean, in sentences: power lines first, then what is missing for it to
// fit and what stands in the wire's way, then what a
// good SWR hides.
#pragma once

#include "core/outing/finding.h"

namespace gs {

/// The antenna's findings, what matters most first; the power lines' is always there. `outlook` is evaluate(plan).
std::vector<Finding> antenna_findings(const Plan& plan, const Outlook& outlook, const Style& style = {});

/// The power lines' alone: what was answered, what to stay off by, and whose word comes first. It holds only where
/// somebody gave a distance.
Finding power_line_finding(const Plan& plan, const Style& style = {});

}  // namespace gs
