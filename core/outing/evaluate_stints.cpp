// Stints with a plan of their own: another band, power, mode or antenna for a while.
#include <algorithm>
#include <cmath>

#include "core/outing/evaluate_parts.h"

namespace gs {
namespace {

bool stands_for_all(R id) {
  const Link link = reading(id).link;
  return id == R::radio_turned_down_w || id == R::rules_room_khz || id == R::rules_power_pct ||
         link == Link::feedline || link == Link::antenna || link == Link::safety;
}

/// What is not known is worse than anything; then less slack, then the worse end of the reading.
bool is_worse(R id, const Figure& one, const Figure& other) {
  if (other.state == State::unknown) return false;
  if (one.state == State::unknown) return true;
  if (std::isfinite(one.slack) && std::isfinite(other.slack)) return one.slack < other.slack;
  const Better better = reading(id).better;
  return better == Better::more ? one.value < other.value : better == Better::less && one.value > other.value;
}

}  // namespace

std::vector<StintJoin> begin_stints(Joined& joined) {
  std::vector<StintJoin> stints;
  for (Stretch& stretch : joined.stretches) {
    stretch.leaves_w = joined.leaves_w;
    if (!stretch.own_plan) continue;
    auto at = std::find_if(stints.begin(), stints.end(),
                           [&](const StintJoin& join) { return join.stint == stretch.stint; });
    if (at == stints.end()) {
      at = stints.insert(stints.end(), {stretch.stint, stretch.plan, joined, {}});
      put_feedline(*at->plan, at->joined, at->out);
    }
    stretch.leaves_w = at->joined.leaves_w;
  }
  return stints;
}

void end_stints(std::vector<StintJoin>& stints, Outlook& out) {
  for (StintJoin& join : stints) {
    put_antenna(*join.plan, join.joined, join.out);
    put_safety(*join.plan, join.joined, join.out);
    put_rules(*join.plan, join.joined, join.out);
    carry_line_doubt(join.joined, join.out);
    for (std::size_t i = 0; i < kReadingCount; ++i) {
      if (!stands_for_all(R(i)) || !is_worse(R(i), join.out.at[i], out.at[i])) continue;
      out.at[i] = join.out.at[i];
      out.at[i].stint = short(join.stint);
    }
  }
}

}  // namespace gs
