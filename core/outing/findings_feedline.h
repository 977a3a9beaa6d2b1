// What the feed line's figures mean, in sentences: what the radio's meter hides, what a change would be worth.
#pragma once

#include <string>
#include <vector>

#include "core/outing/outlook.h"

namespace gs {

/// One sentence and how much it matters: fails and tight call for a hand, holds calms, none only tells.
struct Finding {
  State state = State::none;
  std::string sentence;
};

/// The feed line's findings, what matters most first; empty while cable or load is not known. `outlook` is
/// evaluate(plan).
std::vector<Finding> feedline_findings(const Plan& plan, const Outlook& outlook, const Style& style = {});

}  // namespace gs
