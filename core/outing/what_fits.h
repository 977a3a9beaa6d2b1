// Turned round by kind: what can be hung between this tree and this stake, and what each is worth there.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/outing/outlook.h"

namespace gs {

/// One kind of the catalogue in the place of the plan's, as cut for the plan's frequency: what was cut, read or
/// measured on another antenna does not count for it.
struct KindFit {
  std::string_view key, name;
  bool fits, chosen;                                 // chosen: the plan's own
  double room_m;                                     // to spare; below 0 so much too little
  double efficiency_pct, set_up_min, pack_down_min;  // efficiency NaN where no closed form has it
  std::string why;                                   // "1.2 m to spare" or what is too little, in words
  Outlook outlook;                                   // of the plan with it
  std::vector<std::pair<L, Value>> take;             // what putting it into the plan sets, all in one step of undo
};

/// Every offered kind, those that fit first, of these the ones that lose least first; the others by what they lack.
/// Empty while frequency, apex or span is missing.
std::vector<KindFit> what_fits(const Outing& outing, const Style& style = {});

}  // namespace gs
