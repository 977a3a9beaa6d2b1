// Where the links join, in the order in which they need each other.
#include <algorithm>
#include <cmath>

#include "core/outing/evaluate_parts.h"

namespace gs {

Doubtful first_missing(const Plan& plan, std::initializer_list<L> needed) {
  for (const L id : needed)
    if (!plan.has(id)) return {Doubt::missing, id};
  return {};
}

Figure ranged(const Plan& plan, R id, double value, double one_end, double other_end) {
  Figure figure = judge(plan, id, value);
  if (figure.state == State::unknown) return figure;
  figure.low = std::min({one_end, other_end, value});
  figure.high = std::max({one_end, other_end, value});
  return figure;
}

Outlook evaluate(const Plan& plan, const Now& now) {
  Outlook out;
  Joined joined{};
  joined.now = now;
  put_clock(plan, joined, out);
  put_feedline(plan, joined, out);
  put_power(plan, joined, out);
  put_antenna(plan, joined, out);
  put_sky(plan, joined, out);
  put_pace(plan, joined, out);
  put_safety(plan, joined, out);
  put_rules(plan, joined, out);
  put_kit(plan, out);
  return out;
}

}  // namespace gs
