// The shared plan as a person sets it, before anything is computed.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/kit/kit.h"
#include "core/outing/happened.h"
#include "core/outing/levers.h"
#include "core/outing/settings.h"
#include "core/outing/stint.h"
#include "core/outing/value.h"
#include "core/pace/zone.h"

namespace gs {

/// What earlier outings say of the pace: those with one kind of antenna, or all of them.
struct OwnPace {
  std::string antenna;  // an option's key of antenna.kind, "" for all
  double per_hour = 0, spread_pct = 0;
  int outings = 0;
};

/// What of the settings and of earlier outings an outing's usual values rest on. No part of an outing: it is filled
/// in by whoever has the settings, and two outings are the same whatever it says.
struct Habits {
  std::string licence;  // an option's key of rules.class, "" for none
  std::vector<OwnUsual> usual;
  std::vector<OwnPace> paces;  // past.h's own_paces
  pace::ZoneDay zone;          // this machine's local clock on the outing's date
  bool operator==(const Habits&) const { return true; }
};

/// Every lever's value, by lever. Plain levers first, then the limit and ease of each reading (see levers.h).
using Values = std::vector<Value>;  // always lever_count() long

struct Outing {
  std::string name;
  std::string date;   // ISO 8601 "2026-06-13", or empty
  std::string notes;  // free words on several lines; nothing reads them
  Values set = Values(lever_count());
  std::optional<Values> pinned;  // the plan as it was pinned
  std::string pinned_name;       // "100 W": what was last changed when it was pinned
  std::vector<kit::Item> kit;    // what is carried; the pinned plan carries the same
  std::vector<Stint> stints;     // by from_min; the pinned plan has the same
  Happened happened;             // outside undo: what happened is not undone by undoing a plan
  std::string kept;              // what a file held beyond this, written back as it was (archive.h has the shape)
  Habits habits;
  bool operator==(const Outing&) const = default;
};

}  // namespace gs
