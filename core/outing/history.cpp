#include "core/outing/history.h"

#include <utility>

namespace gs {
namespace {

/// What happened is no step of a plan: steps are kept without it.
Outing without_happened(const Outing& outing) {
  Outing plan = outing;
  plan.happened = {};
  return plan;
}

Outing move_step(std::deque<Step>& from, std::deque<Step>& to, const Outing& now) {
  Step step = std::move(from.back());
  from.pop_back();
  to.push_back({step.another ? now : without_happened(now), step.what, step.another});
  if (!step.another) step.before.happened = now.happened;
  return std::move(step.before);
}

}  // namespace

void History::record(const Outing& before, std::string what, bool same_gesture, bool another) {
  redo_.clear();
  if (same_gesture && !undo_.empty()) {
    undo_.back().what = std::move(what);
    return;
  }
  undo_.push_back({another ? before : without_happened(before), std::move(what), another});
  if (undo_.size() > kMostSteps) undo_.pop_front();
}

Outing History::undo(const Outing& now) { return move_step(undo_, redo_, now); }
Outing History::redo(const Outing& now) { return move_step(redo_, undo_, now); }

}  // namespace gs
