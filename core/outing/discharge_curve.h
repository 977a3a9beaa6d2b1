// The supply at the set along the outing, for drawing: while listening and at key-down, pack after pack.
#pragma once

#include <vector>

#include "core/outing/power_join.h"

namespace gs {

/// One place on the way: hours from the first call, volts at the set. NaN volts break the line where a pack is
/// changed.
struct SupplyPoint {
  double hours, paused_v, key_down_v;
};

/// `until_h`: when something stops it; `key_down_at_end_v`: the supply at key-down then. `by`: what stops it. The
/// points go on beyond, until the last pack is empty or the supply at key-down is `below_v` under the set's
/// minimum. `known` is false where radio or battery are not known; nothing else counts then.
struct DischargeCurve {
  bool known = false;
  std::vector<SupplyPoint> points;
  double until_h = 0, key_down_at_end_v = 0, reserve_from_h = 0, empty_h = 0;
  battery::EndBy by = battery::EndBy::reserve;
};

/// At the power that leaves the radio (transmit power less what it turns down). At most kLongestH.
DischargeCurve discharge_curve(const Plan& plan, const Outlook& outlook, battery::Luck luck = battery::Luck::usual);

}  // namespace gs
