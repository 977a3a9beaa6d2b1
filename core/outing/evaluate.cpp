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

void carry_line_doubt(const Joined& joined, Outlook& out) {
  const FeedlineJoin& line = joined.line;
  if (line.cable_doubt != Doubt::outside_tested) return;
  const auto mark = [&](std::initializer_list<R> ids) {
    for (const R id : ids) {
      Figure& figure = out.at[std::size_t(id)];
      if (figure.state == State::unknown || figure.doubt != Doubt::none) continue;
      figure.doubt = line.cable_doubt;
      figure.culprit = line.cable_culprit;
    }
  };
  if (std::isfinite(joined.to_antenna_w)) mark({R::safety_public_m, R::safety_operator_m, R::safety_owed_within_m});
  const Figure& turned_down = out[R::radio_turned_down_w];
  if (turned_down.value > 0 && turned_down.doubt == Doubt::outside_tested)
    mark({R::power_average_current_a, R::power_supply_at_key_down_v});
}

Outlook evaluate(const Plan& plan, const Now& now) {
  Outlook out;
  Joined joined{};
  joined.now = now;
  put_clock(plan, joined, out);
  put_feedline(plan, joined, out);
  std::vector<StintJoin> stints = begin_stints(joined);
  put_power(plan, joined, out);
  put_antenna(plan, joined, out);
  put_sky(plan, joined, out);
  put_pace(plan, joined, out);
  put_safety(plan, joined, out);
  put_rules(plan, joined, out);
  put_kit(plan, out);
  carry_line_doubt(joined, out);
  end_stints(stints, out);
  return out;
}

}  // namespace gs
