#include "core/outing/stretches.h"

#include <algorithm>

namespace gs {

std::vector<Stretch> stretches_of(const Plan& plan, double from_min, double until_min) {
  std::vector<Stretch> found;
  const auto add = [&](double from, double until, const Plan& holds, int stint) {
    from = std::max(from, from_min);
    until = std::min(until, until_min);
    if (until > from) found.push_back({from, until, &holds, stint, &holds != &plan});
  };
  const auto begins = [&](std::size_t i) { return i < plan.stints.size() ? plan.stints[i].from_min : until_min; };
  add(from_min, begins(0), plan, -1);
  for (std::size_t i = 0; i < plan.stints.size(); ++i) {
    const StintPlan& stint = plan.stints[i];
    if (stint.on_air) add(stint.from_min, begins(i + 1), stint.plan.empty() ? plan : stint.plan.front(), int(i));
  }
  return found;
}

double minutes_of(std::span<const Stretch> stretches) {
  double minutes = 0;
  for (const Stretch& stretch : stretches) minutes += stretch.minutes();
  return minutes;
}

double time_after(std::span<const Stretch> stretches, double on_air_min) {
  if (stretches.empty()) return std::numeric_limits<double>::quiet_NaN();
  for (const Stretch& stretch : stretches) {
    if (on_air_min <= stretch.minutes()) return stretch.from_min + on_air_min;
    on_air_min -= stretch.minutes();
  }
  return stretches.back().until_min + on_air_min;
}

std::vector<Stretch> before(std::span<const Stretch> stretches, double local_min) {
  std::vector<Stretch> found;
  for (Stretch stretch : stretches) {
    stretch.until_min = std::min(stretch.until_min, local_min);
    if (stretch.minutes() > 0) found.push_back(stretch);
  }
  return found;
}

std::vector<Stretch> behind(std::span<const Stretch> stretches, double local_min) {
  std::vector<Stretch> found;
  for (Stretch stretch : stretches) {
    stretch.from_min = std::max(stretch.from_min, local_min);
    if (stretch.minutes() > 0) found.push_back(stretch);
  }
  return found;
}

double worth_min(const Plan& plan, std::span<const Stretch> stretches) {
  double minutes = 0;
  for (const Stretch& stretch : stretches)
    minutes += stretch.minutes() * (*stretch.plan)[L::pace_per_hour] / plan[L::pace_per_hour];
  return minutes;
}

}  // namespace gs
