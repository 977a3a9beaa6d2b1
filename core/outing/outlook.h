// Every result of a plan, computed in one pass.
#pragma once

#include <array>
#include <string>

#include "core/outing/feedline_join.h"
#include "core/outing/now.h"
#include "core/outing/plan.h"

namespace gs {

/// none: not judged. unknown: an input is missing or the figure is withheld.
enum class State : unsigned char { holds, tight, fails, none, unknown };
std::string_view state_word(State state);  // "holds", "tight", "fails", "", "not known"

/// One reading's result. NaN value exactly where the state is unknown. slack: (value - limit) / (ease - limit), NaN
/// where not judged.
struct Figure {
  double value, low, high,
      slack;  // low..high: what the value may be with what is not known (a measured SWR has no phase)
  State state = State::unknown;
  Doubt doubt = Doubt::later;
  L culprit = L::count;
  short stint = -1;  // row of Plan::stints that it stands for, where a stint is worse than the plan itself
};

struct Outlook {
  std::array<Figure, kReadingCount> at;
  const Figure& operator[](R id) const { return at[std::size_t(id)]; }
};

/// The only place that knows two links. Pure; same plan and same now, same bits. Without `now` nothing is "now".
Outlook evaluate(const Plan& plan, const Now& now = {});

/// The only place where a state is made: value, its slack and state against the plan's own limit and ease.
Figure judge(const Plan& plan, R id, double value);
Figure unknown(Doubt doubt, L culprit);

/// A link's standing: its figure is the judged reading with the least slack.
struct Standing {
  State state = State::unknown;
  double slack;        // NaN where unknown
  R binds = R::count;  // the reading that binds, or one that is not known, or count where the link has none yet
};
Standing standing(const Outlook& outlook, Link link);

/// A name as it stands inside a sentence: "line loss", but "SWR at radio".
std::string lower_first(std::string text);

/// A reading's value with its unit, or the words that its row has instead: "3.2 m", "as cut". For the eye, and as
/// it is spoken.
std::string say_reading(R id, double value, const Style& style = {});
std::string speak_reading(R id, double value, const Style& style = {});

/// What it may be, "2 h 25 to 5 h 40"; "" where nothing is known or both ends print alike.
std::string say_range(R id, const Figure& figure, const Style& style = {});

/// What stands between a person and this figure, one short phrase: "needs Feed line length", "" where nothing does.
std::string reason(const Plan& plan, R id, const Figure& figure, const Style& style = {});

/// The verdict in two sentences: what holds, and what limits or is not known.
struct Verdict {
  std::string headline, cause;
  State state = State::unknown;
  R binds = R::count;
};
Verdict verdict(const Plan& plan, const Outlook& outlook, const Style& style = {});

/// Change of a reading against the pin.
struct Change {
  enum class Kind : unsigned char {
    none,
    same,
    better,
    worse,
    other
  } kind = Kind::none;  // none: one of the two is not known
  double delta = 0;     // in the reading's unit
};
/// Same where the printed figures are the same.
Change compare(R id, const Figure& now, const Figure& pinned);
std::string say_change(R id, const Change& change, const Style& style);  // "+2.5 W", "same", "−4 points"

}  // namespace gs
