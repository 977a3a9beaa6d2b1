// Turned round: not what comes of a plan, but what one lever would have to be for a reading to reach a value.
#pragma once

#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/outing/outlook.h"

namespace gs {

/// A reading and the value it is to reach, in the reading's unit: at least, where more is better, else at most.
struct Goal {
  R reading;
  double wanted;
  bool operator==(const Goal&) const = default;
};
bool reaches(const Outlook& outlook, const Goal& goal);

/// How a link fares with an answer, against the plan as it is.
enum class Touch : unsigned char { same, better, worse, unknown };

/// One step of the lever past the answer, on the goal's side: what it would give and cost.
struct Beyond {
  std::string said;  // "13 Ah"; empty: there is none, or the goal gets nothing from it
  Outlook outlook;
};

/// What one lever alone can do. `trouble` is empty exactly where `value` is one that reaches the goal: the one that
/// just does, on the printed grid, the rest of the plan as it is.
struct Answer {
  L lever = L::count;
  Value value;
  std::string said;     // "12.9 Ah"
  std::string trouble;  // why no value of this lever does
  Outlook outlook;      // with the value; of the plan itself where there is none
  R price = R::count;   // the judged reading that pays most for it, else the watts; count: nobody pays
  Beyond beyond = {};
  std::vector<std::pair<L, Value>> sets =
      {};  // what taking it sets: the lever, and what leaves the antenna as it is
};

/// Bisection on evaluate() over the lever's range; of a list the lightest cable that does, or the first option in
/// the catalogue's order (wires: the thinnest). A change of the line leaves the antenna as it is (trial.h). A
/// reading that does not go one way along the lever is met at one of the places where it reaches the goal. Within
/// the last digit that the lever prints. Unknown goals, missing levers and text levers get a trouble.
Answer solve_for(const Outing& outing, L id, const Goal& goal, const Style& style = {});

/// The same for several levers.
std::vector<Answer> turn_round(const Outing& outing, std::span<const L> levers, const Goal& goal,
                               const Style& style = {});

/// By the link's slack: within a hundredth is the same.
Touch touched(const Outlook& now, const Outlook& then, Link link);

}  // namespace gs
