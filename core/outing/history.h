// Undo: a ring of the last outings with what changed.
#pragma once

#include <cstddef>
#include <deque>
#include <optional>
#include <string>

#include "core/outing/outing.h"

namespace gs {

inline constexpr std::size_t kMostSteps = 100;

/// One step back: the outing as it was, and what was done to it.
struct Step {
  Outing before;
  std::string what;      // "Feed line length, 15 m"
  bool another = false;  // another outing was opened: only then does a step hold what happened on it
  std::string key = {};  // of the record that `before` is kept under, where another was opened
};

class History {
 public:
  /// Call before a change. `same_gesture`: the step continues the last one (a drag is one step); only its words are
  /// renewed. `another`: the change opens another outing. All other steps leave alone what happened meanwhile: a
  /// tally is no step of a plan.
  void record(const Outing& before, std::string what, bool same_gesture, bool another = false,
              std::string key = {});
  bool can_undo() const { return !undo_.empty(); }
  bool can_redo() const { return !redo_.empty(); }
  const std::string& undo_names() const { return undo_.back().what; }
  const std::string& redo_names() const { return redo_.back().what; }
  /// The outing to show instead of `now`; precondition can_undo() / can_redo().
  Outing undo(const Outing& now);
  Outing redo(const Outing& now);
  /// The same where outings are kept under keys: `key` is that of `now` and becomes that of what is shown instead.
  Outing undo(const Outing& now, std::string& key);
  Outing redo(const Outing& now, std::string& key);
  bool undo_opens_another() const { return undo_.back().another; }
  bool redo_opens_another() const { return redo_.back().another; }

 private:
  std::deque<Step> undo_, redo_;
};

}  // namespace gs
