#include "core/outing/trial.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gs {
namespace {

Trial tried(const Outing& outing, std::string key, std::string title, L id, Value value) {
  const Plan plan = resolve(with(outing, id, value).set);
  return {std::move(key), std::move(title), {{id, std::move(value)}}, evaluate(plan)};
}

double arriving_w(const Trial& trial) {
  const double w = trial.outlook[R::feedline_power_to_antenna_w].value;
  return std::isfinite(w) ? w : -1;
}

}  // namespace

std::vector<Trial> other_rolls(const Outing& outing, const Style& style) {
  const Plan plan = resolve(outing.set);
  if (!plan.has_all(L::feedline_cable, L::feedline_length_m)) return {};
  std::vector<Trial> trials;
  const double length_m = plan[L::feedline_length_m];
  const auto length_text = [&](double m) { return say_quantity(m, Unit::metre, m < 10 ? 1 : 0, style); };
  const std::span<const Option> cables = lever(L::feedline_cable).options();
  for (std::size_t i = 0; i < cables.size(); ++i) {
    if (cables[i].retired || std::size_t(plan[L::feedline_cable]) == i) continue;
    trials.push_back(tried(outing, std::string(cables[i].key), std::string(cables[i].name) + ", " + length_text(length_m),
                           L::feedline_cable, std::string(cables[i].key)));
  }
  const double shorter_m = std::max(1.0, std::round(length_m * 2 / 3));
  if (shorter_m < length_m) {
    const std::string name(cables[std::size_t(plan[L::feedline_cable])].name);
    trials.push_back(tried(outing, "shorter", name + ", " + length_text(shorter_m), L::feedline_length_m, shorter_m));
  }
  std::stable_sort(trials.begin(), trials.end(),
                   [](const Trial& a, const Trial& b) { return arriving_w(a) > arriving_w(b); });
  return trials;
}

}  // namespace gs
