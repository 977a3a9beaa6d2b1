// What the feed line's figures mean, in sentences: what the radio's meter hides, what a change would be worth.
#pragma once

#include <vector>

#include "core/outing/finding.h"
#include "core/outing/outlook.h"

namespace gs {

/// The feed line's findings, what matters most first; empty while cable or load is not known. `outlook` is
/// evaluate(plan).
std::vector<Finding> feedline_findings(const Plan& plan, const Outlook& outlook, const Style& style = {});

}  // namespace gs
