#include "core/outing/finding.h"

#include <algorithm>

namespace gs {

void order_findings(std::vector<Finding>& found) {
  const auto weight = [](State state) {
    return state == State::fails ? 0 : state == State::tight ? 1 : state == State::none ? 2 : 3;
  };
  std::stable_sort(found.begin(), found.end(),
                   [&](const Finding& a, const Finding& b) { return weight(a.state) < weight(b.state); });
}

}  // namespace gs
