#include <cmath>
#include <limits>

#include "core/outing/outlook.h"

namespace gs {
namespace {
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
}

std::string_view state_word(State state) {
  switch (state) {
    case State::holds:
      return "holds";
    case State::tight:
      return "tight";
    case State::fails:
      return "fails";
    case State::none:
      return "";
    case State::unknown:
      return "not known";
  }
  return "";
}

Figure unknown(Doubt doubt, L culprit) {
  return {.value = kNaN,
          .low = kNaN,
          .high = kNaN,
          .slack = kNaN,
          .state = State::unknown,
          .doubt = doubt,
          .culprit = culprit};
}

Figure judge(const Plan& plan, R id, double value) {
  Figure figure{
      .value = value, .low = value, .high = value, .slack = kNaN, .state = State::none, .doubt = Doubt::none};
  if (!is_judged(id)) return figure;
  const double limit = plan[limit_lever(id)], ease = plan[ease_lever(id)];
  if (limit == ease || (ease > limit) != (reading(id).better == Better::more))
    return unknown(Doubt::impossible, ease_lever(id));
  figure.slack = (value - limit) / (ease - limit);
  figure.state = figure.slack >= 1 ? State::holds : figure.slack >= 0 ? State::tight : State::fails;
  return figure;
}

Standing standing(const Outlook& outlook, Link link) {
  Standing result{.slack = kNaN};
  bool withheld = false;
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    const R id = R(i);
    const Figure& figure = outlook[id];
    if (reading(id).link != link || !is_judged(id)) continue;
    if (figure.state == State::unknown) {
      if (!withheld) result = {State::unknown, kNaN, id};
      withheld = true;
    } else if (!withheld && (result.binds == R::count || figure.slack < result.slack)) {
      result = {figure.state, figure.slack, id};
    }
  }
  return result;
}

}  // namespace gs
