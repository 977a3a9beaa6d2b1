#include "core/outing/trial.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gs {
namespace {

using Sets = std::vector<std::pair<L, Value>>;

Trial tried(Outing outing, std::string key, std::string title, Sets sets) {
  for (const auto& [id, value] : sets) outing = with(std::move(outing), id, value);
  return {std::move(key), std::move(title), std::move(sets), evaluate(resolve(outing.set))};
}

/// Another line leaves the antenna as it is, not what a meter at the radio showed through the old line: that
/// reading moves to the antenna's end. Empty where the antenna is known at its own end, or not at all.
Sets antenna_as_it_is(const Plan& plan) {
  const FeedlineJoin join = join_feedline(plan);
  if (join.load_from != LoadFrom::swr_at_radio || join.load_doubt != Doubt::none) return {};
  const Lever& row = lever(L::feedline_measured_swr);
  const std::string at_antenna(lever(L::feedline_measured_at).options()[1].key);
  return {{L::feedline_measured_swr, std::clamp(join.swr_at_antenna, row.least, row.most)},
          {L::feedline_measured_at, at_antenna}};
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
  const auto length_text = [&](double m) { return say_lever(lever(L::feedline_length_m), m, style); };
  const Sets kept = antenna_as_it_is(plan);
  const auto with_kept = [&kept](L id, Value value) {
    Sets sets{{id, std::move(value)}};
    sets.insert(sets.end(), kept.begin(), kept.end());
    return sets;
  };
  const std::span<const Option> cables = lever(L::feedline_cable).options();
  for (std::size_t i = 0; i < cables.size(); ++i) {
    if (cables[i].retired || std::size_t(plan[L::feedline_cable]) == i) continue;
    trials.push_back(tried(outing, std::string(cables[i].key),
                           std::string(cables[i].name) + ", " + length_text(length_m),
                           with_kept(L::feedline_cable, std::string(cables[i].key))));
  }
  const double shorter_m = std::max(1.0, std::round(length_m * 2 / 3));
  if (shorter_m < length_m) {
    const std::string name(cables[std::size_t(plan[L::feedline_cable])].name);
    trials.push_back(
        tried(outing, "shorter", name + ", " + length_text(shorter_m), with_kept(L::feedline_length_m, shorter_m)));
  }
  std::stable_sort(trials.begin(), trials.end(),
                   [](const Trial& a, const Trial& b) { return arriving_w(a) > arriving_w(b); });
  return trials;
}

}  // namespace gs
