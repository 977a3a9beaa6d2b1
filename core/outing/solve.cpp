#include "core/outing/solve.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/outing/lever_range.h"
#include "core/outing/trial.h"

namespace gs {
namespace {

/// Rounding may put a value that just reaches it a hair short.
double hair(double wanted) { return 1e-9 * (1 + std::abs(wanted)); }

/// A lever moved about in one outing, everything else as it is.
class Tried {
 public:
  Tried(const Outing& outing, L id, const Goal& goal) : outing_(outing), id_(id), goal_(goal) {
    if (id != L::feedline_length_m && id != L::feedline_cable) return;
    also_ = antenna_as_it_is(resolve(outing));
    for (const auto& [other, value] : also_) outing_.set[std::size_t(other)] = value;
  }
  Outlook at(Value value) {
    outing_.set[std::size_t(id_)] = std::move(value);
    return evaluate(resolve(outing_));
  }
  bool reaches(double value) { return gs::reaches(at(value), goal_); }
  std::vector<std::pair<L, Value>> sets(const Value& value) const {
    std::vector<std::pair<L, Value>> sets{{id_, value}};
    sets.insert(sets.end(), also_.begin(), also_.end());
    return sets;
  }

 private:
  Outing outing_;
  std::vector<std::pair<L, Value>> also_;
  L id_;
  Goal goal_;
};

/// Between a value that reaches the goal and one that does not, the printed value nearest the second that does.
double just(Tried& tried, const Lever& row, double good, double bad) {
  for (int i = 0; i < 60 && std::abs(good - bad) > 1e-3 * std::pow(10.0, -row.digits); ++i) {
    // halved by ratio where the range spans decades
    const double middle = row.scale == Scale::log && good > 0 && bad > 0 ? std::sqrt(good * bad) : (good + bad) / 2;
    (tried.reaches(middle) ? good : bad) = middle;
  }
  // the printed value on the near side first: bisection may have stopped a hair past it
  const double grid = std::pow(10.0, -row.digits),
               near = good > bad ? std::floor(good / grid) : std::ceil(good / grid);
  for (const double step : {near, near + (good > bad ? 1 : -1)})
    if (step * grid >= row.least && step * grid <= row.most && tried.reaches(step * grid)) return step * grid;
  return good;
}

Answer none(Answer answer, std::string why) {
  answer.trouble = std::move(why);
  return answer;
}

/// By which the options that do are put in order: cables by what there is to carry, others as they stand.
double rank_of(L id, const Outlook& then) {
  if (id != L::feedline_cable) return 0;
  const double weight_g = then[R::feedline_weight_g].value;
  return std::isfinite(weight_g) ? weight_g : std::numeric_limits<double>::infinity();
}

Answer by_options(const Outing& outing, const Goal& goal, Answer answer) {
  struct Does {
    const Option* option;
    double rank;
    Outlook then;
  };
  Tried tried(outing, answer.lever, goal);
  std::vector<Does> does;
  for (const Option& option : lever(answer.lever).options()) {
    if (option.retired) continue;
    const Outlook then = tried.at(std::string(option.key));
    if (reaches(then, goal)) does.push_back({&option, rank_of(answer.lever, then), then});
  }
  if (does.empty()) return none(std::move(answer), "none of the list does");
  std::stable_sort(does.begin(), does.end(),
                   [](const Does& one, const Does& other) { return one.rank < other.rank; });
  answer.value = std::string(does.front().option->key);
  answer.said = std::string(does.front().option->name);
  answer.outlook = does.front().then;
  answer.sets = tried.sets(answer.value);
  if (does.size() > 1) answer.beyond = {std::string(does[1].option->name), does[1].then};
  return answer;
}

/// The next plain value past `value` on the side where the goal gets more.
Beyond beyond(Tried& tried, const Lever& row, double most, const Goal& goal, double value, const Outlook& there,
              const Style& style) {
  constexpr double kOnTheGrid = 1e-9;
  Beyond found;
  double best = there[goal.reading].value;
  const bool more = reading(goal.reading).better != Better::less;
  const double step = step_at(row, value), places = value / step;
  for (const double next :
       {(std::floor(places + kOnTheGrid) + 1) * step, (std::ceil(places - kOnTheGrid) - 1) * step}) {
    if (next < row.least || next > most) continue;
    const Outlook then = tried.at(next);
    const double reached = then[goal.reading].value;
    if (!std::isfinite(reached) || (more ? reached <= best + hair(best) : reached >= best - hair(best))) continue;
    best = reached;
    found = {say_lever(row, next, style), then};
  }
  return found;
}

Answer by_number(const Outing& outing, const Plan& plan, const Goal& goal, const Style& style, Answer answer) {
  const Lever& row = lever(answer.lever);
  const double least = row.least, most = most_of(plan, answer.lever), now = plan[answer.lever];
  Tried tried(outing, answer.lever, goal);
  const bool at_least = tried.reaches(least), at_most = tried.reaches(most), at_now = tried.reaches(now);
  double value = now;
  if (at_least && at_most && at_now) {
    value = now;  // nothing to be found: the whole range does
  } else if (at_least != at_most) {
    value = at_least ? just(tried, row, least, most) : just(tried, row, most, least);
  } else if (at_now) {
    value = just(tried, row, now, at_least ? most : least);
  } else if (at_least) {
    value = just(tried, row, least, now);
  } else {
    const Figure low = tried.at(least)[goal.reading], high = tried.at(most)[goal.reading];
    const bool more = reading(goal.reading).better != Better::less;
    const bool high_is_best =
        !std::isfinite(low.value) || (more ? high.value >= low.value : high.value <= low.value);
    const double best = high_is_best ? high.value : low.value;
    if (!std::isfinite(best)) return none(std::move(answer), reason(plan, goal.reading, high, style));
    return none(std::move(answer), "not even " + say_lever(row, high_is_best ? most : least, style) +
                                       " does: " + say_reading(goal.reading, best, style));
  }
  answer.value = value;
  answer.said = say_lever(row, value, style);
  answer.outlook = tried.at(value);
  answer.sets = tried.sets(answer.value);
  answer.beyond = beyond(tried, row, most, goal, value, answer.outlook, style);
  return answer;
}

/// The judged reading whose slack falls most, beside the goal's own.
R payer(const Outlook& now, const Outlook& then, R goal) {
  R worst = R::count;
  double most = 0.01;
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    const double fall = now.at[i].slack - then.at[i].slack;
    if (R(i) == goal || !std::isfinite(fall) || fall <= most) continue;
    most = fall;
    worst = R(i);
  }
  if (worst != R::count || goal == R::feedline_power_to_antenna_w) return worst;
  // nobody's slack falls, but fewer watts are a price all the same
  const Change watts = compare(R::feedline_power_to_antenna_w, then[R::feedline_power_to_antenna_w],
                               now[R::feedline_power_to_antenna_w]);
  return watts.kind == Change::Kind::worse ? R::feedline_power_to_antenna_w : worst;
}

}  // namespace

bool reaches(const Outlook& outlook, const Goal& goal) {
  const double value = outlook[goal.reading].value;
  if (!std::isfinite(value)) return false;
  return reading(goal.reading).better == Better::less ? value <= goal.wanted + hair(goal.wanted)
                                                      : value >= goal.wanted - hair(goal.wanted);
}

Answer solve_for(const Outing& outing, L id, const Goal& goal, const Style& style) {
  const Plan plan = resolve(outing);
  const Outlook now = evaluate(plan);
  Answer answer{.lever = id, .value = {}, .said = {}, .trouble = {}, .outlook = now};
  const Lever& row = lever(id);
  if (row.kind == Kind::text) return none(std::move(answer), "a text has no more and no less");
  if (row.applies && !row.applies(plan)) return none(std::move(answer), "does not count here");
  if (row.kind == Kind::choice) {
    answer = by_options(outing, goal, std::move(answer));
  } else if (!plan.has(id)) {
    return none(std::move(answer), "needs " + lower_first(std::string(row.name)));
  } else {
    answer = by_number(outing, plan, goal, style, std::move(answer));
  }
  if (answer.trouble.empty()) answer.price = payer(now, answer.outlook, goal.reading);
  return answer;
}

std::vector<Answer> turn_round(const Outing& outing, std::span<const L> levers, const Goal& goal,
                               const Style& style) {
  std::vector<Answer> answers;
  for (const L id : levers) answers.push_back(solve_for(outing, id, goal, style));
  return answers;
}

Touch touched(const Outlook& now, const Outlook& then, Link link) {
  const Standing before = standing(now, link), after = standing(then, link);
  if (before.state == State::unknown || after.state == State::unknown)
    return before.state == after.state ? Touch::same : Touch::unknown;
  const double by = after.slack - before.slack;
  return std::abs(by) < 0.01 ? Touch::same : by > 0 ? Touch::better : Touch::worse;
}

}  // namespace gs
