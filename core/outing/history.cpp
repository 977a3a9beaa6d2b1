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

Outing move_step(std::deque<Step>& from, std::deque<Step>& to, const Outing& now, std::string& key) {
  Step step = std::move(from.back());
  from.pop_back();
  to.push_back({step.another ? now : without_happened(now), step.what, step.another, key});
  if (step.another) key = std::move(step.key);
  if (!step.another) step.before.happened = now.happened;
  return std::move(step.before);
}

}  // namespace

void History::record(const Outing& before, std::string what, bool same_gesture, bool another, std::string key) {
  redo_.clear();
  if (same_gesture && !undo_.empty()) {
    undo_.back().what = std::move(what);
    return;
  }
  undo_.push_back({another ? before : without_happened(before), std::move(what), another, std::move(key)});
  if (undo_.size() > kMostSteps) undo_.pop_front();
}

Outing History::undo(const Outing& now, std::string& key) { return move_step(undo_, redo_, now, key); }
Outing History::redo(const Outing& now, std::string& key) { return move_step(redo_, undo_, now, key); }

Outing History::undo(const Outing& now) {
  std::string nowhere;
  return undo(now, nowhere);
}

Outing History::redo(const Outing& now) {
  std::string nowhere;
  return redo(now, nowhere);
}

}  // namespace gs
