// A sentence that says what figures mean.
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

/// What matters most first; equals stay in the order in which they were found.
void order_findings(std::vector<Finding>& found);

}  // namespace gs
