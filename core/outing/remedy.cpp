#include "core/outing/remedy.h"

#include <cmath>

#include "core/outing/solve.h"
#include "core/outing/trial.h"

namespace gs {
namespace {

/// A lever with the words for less and for more of it; nullptr: not that way.
struct Way {
  L id;
  const char *less, *more;
};
constexpr Way kByCost[] = {
    {L::radio_transmit_power_w, "Turn down to ", "Turn up to "},
    {L::clock_leave_by_min, "Leave by ", "Stay until "},
    {L::clock_arrive_min, "Arrive at ", nullptr},
    {L::antenna_apex_m, nullptr, "Apex up to "},
    {L::antenna_end_m, nullptr, "Ends up to "},
    {L::feedline_length_m, "Feed line down to ", nullptr},
    {L::battery_capacity_ah, nullptr, "Battery of "},
    {L::feedline_cable, "", ""},
    {L::lead_wire, "Lead of ", "Lead of "},
};

const char* words_for(const Way& way, const Plan& plan, const Answer& answer) {
  if (lever(way.id).kind == Kind::choice) return way.more;
  const double value = std::get<double>(answer.value), now = plan[way.id];
  return value < now ? way.less : value > now ? way.more : nullptr;
}

}  // namespace

std::optional<Remedy> cheapest_remedy(const Outing& outing, R binds, const Style& style) {
  if (!is_judged(binds)) return std::nullopt;
  const Plan plan = resolve(outing);
  const Outlook now = evaluate(plan);
  const State state = now[binds].state;
  if (state != State::tight && state != State::fails) return std::nullopt;
  for (const L wanted : {ease_lever(binds), limit_lever(binds)}) {
    if (wanted == limit_lever(binds) && state == State::tight) break;
    for (const Way& way : kByCost) {
      if (!plan.has(way.id)) continue;
      Answer answer = solve_for(outing, way.id, {binds, plan[wanted]}, style);
      if (!answer.trouble.empty() || broken_by(now, answer.outlook) != R::count) continue;
      const char* words = words_for(way, plan, answer);
      if (words == nullptr) continue;
      Remedy remedy{way.id, answer.value, words + answer.said, {}, {}, answer.outlook};
      remedy.gains = say_change(binds, compare(binds, answer.outlook[binds], now[binds]), style);
      if (answer.price != R::count)
        remedy.costs =
            lower_first(std::string(reading(answer.price).name)) + " " +
            say_change(answer.price, compare(answer.price, answer.outlook[answer.price], now[answer.price]), style);
      return remedy;
    }
  }
  return std::nullopt;
}

}  // namespace gs
