// Planned beside what happened, once the outing is over: rows for a screen, and the tally as a table for other
// programs.
#pragma once

#include <string>
#include <vector>

#include "core/outing/now.h"
#include "core/outing/outlook.h"
#include "core/outing/settings.h"

namespace gs {

/// One thing that was planned and that happened. Both in `unit`; `happened` NaN where nobody measured it.
struct Beside {
  std::string key, name;  // of the lever or reading
  Unit unit = Unit::none;
  int digits = 0;
  Better better = Better::neither;
  double planned = 0, happened = 0;
  bool can_adopt = false;    // a lever that the person may make usual
  std::string follows = {};  // for what cannot be adopted: what it came from, "set-up, pace"
  double change() const { return happened - planned; }
};

/// Set-up, pace and what was measured of levers first, then what followed from them. `plan` is that of the outing;
/// what was planned is the same plan with nothing happened. Empty before the outing was on the air.
std::vector<Beside> planned_beside_happened(const Plan& plan, const Now& now);

/// The same outing again, with these usual values in place of what was planned: its chance of the target in
/// percent; NaN where it is not known.
double chance_again_pct(const Outing& outing, const std::vector<OwnUsual>& adopted);

/// What a person may measure in the park and note: levers and readings, by key.
struct Measurable {
  std::string_view key, name;
  Unit unit;
  int digits;
  double least, most, step;
};
std::vector<Measurable> measurable(const Plan& plan);

/// The tally as comma-separated values: "utc,local,count,forgotten", a row an entry, times as RFC 3339 and hh:mm of
/// the outing's own offset. Column names first; ends with a line break.
std::string tally_csv(const Plan& plan, const Now& now);
/// "key,name,unit,planned,happened", a row each.
std::string beside_csv(const std::vector<Beside>& rows);

}  // namespace gs
