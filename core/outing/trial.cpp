#include "core/outing/trial.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/outing/lever_range.h"

namespace gs {
namespace {

using Sets = std::vector<std::pair<L, Value>>;

Trial tried(Outing outing, std::string key, std::string title, Sets sets) {
  for (const auto& [id, value] : sets) outing = with(std::move(outing), id, value);
  return {std::move(key), std::move(title), std::move(sets), evaluate(resolve(outing))};
}

double arriving_w(const Trial& trial) {
  const double w = trial.outlook[R::feedline_power_to_antenna_w].value;
  return std::isfinite(w) ? w : -1;
}

}  // namespace

std::vector<std::pair<L, Value>> antenna_as_it_is(const Plan& plan) {
  const FeedlineJoin join = join_feedline(plan);
  if (join.load_from != LoadFrom::swr_at_radio || join.load_doubt != Doubt::none) return {};
  const Lever& row = lever(L::feedline_measured_swr);
  const std::string at_antenna(lever(L::feedline_measured_at).options()[1].key);
  return {{L::feedline_measured_swr, std::clamp(join.swr_at_antenna, row.least, row.most)},
          {L::feedline_measured_at, at_antenna}};
}

std::vector<Trial> other_rolls(const Outing& outing, const Style& style) {
  const Plan plan = resolve(outing);
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

namespace {

/// A lever, where it would go, and the words for it.
struct StepOf {
  L id;
  double factor, plus;     // value x factor + plus
  std::string_view words;  // before the new value
};
constexpr StepOf kSteps[] = {
    {L::radio_transmit_power_w, 0.5, 0, "Turn down to "},   {L::radio_transmit_power_w, 2, 0, "Turn up to "},
    {L::clock_leave_by_min, 1, 30, "Stay until "},          {L::clock_arrive_min, 1, -30, "Arrive at "},
    {L::feedline_length_m, 0.667, 0, "Feed line down to "}, {L::antenna_apex_m, 1, 2, "Apex up to "},
    {L::battery_capacity_ah, 1.5, 0, "Battery of "},        {L::pace_target, 0.5, 0, "Target down to "},
};

int failing(const Outlook& outlook) {
  int count = 0;
  for (const Figure& figure : outlook.at) count += figure.state == State::fails;
  return count;
}

}  // namespace

R broken_by(const Outlook& now, const Outlook& then) {
  for (std::size_t i = 0; i < kReadingCount; ++i)
    if (then.at[i].state == State::fails && (now.at[i].state == State::holds || now.at[i].state == State::tight))
      return R(i);
  return R::count;
}

std::vector<Trial> what_ifs(const Outing& outing, const Style& style) {
  const Plan plan = resolve(outing);
  const Outlook now = evaluate(plan);
  const double chance_now = now[R::pace_chance_of_target_pct].value;
  std::vector<Trial> trials;
  for (const StepOf& step : kSteps) {
    if (!plan.has(step.id)) continue;
    const Lever& row = lever(step.id);
    double value = plan[step.id] * step.factor + step.plus;
    const double grid =
        step.factor == 1 ? row.step : std::pow(10, std::floor(std::log10(std::max(value, 1e-9))) - 1);
    value = std::clamp(std::round(value / grid) * grid, row.least, most_of(plan, step.id));
    if (step.id == L::pace_target) value = std::max(1.0, std::round(value));
    if (value == plan[step.id]) continue;
    Trial trial = tried(outing, std::string(row.key) + (value < plan[step.id] ? ":less" : ":more"),
                        std::string(step.words) + say_lever(row, value, style), {{step.id, value}});
    const double chance_then = trial.outlook[R::pace_chance_of_target_pct].value;
    const bool moves =
        std::isfinite(chance_now) && std::isfinite(chance_then) && std::abs(chance_then - chance_now) >= 1;
    if (moves || failing(trial.outlook) < failing(now)) trials.push_back(std::move(trial));
  }
  std::stable_sort(trials.begin(), trials.end(), [](const Trial& a, const Trial& b) {
    const int fails_a = failing(a.outlook), fails_b = failing(b.outlook);
    if (fails_a != fails_b) return fails_a < fails_b;
    return a.outlook[R::pace_chance_of_target_pct].value > b.outlook[R::pace_chance_of_target_pct].value;
  });
  return trials;
}

}  // namespace gs
