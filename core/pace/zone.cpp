#include "core/pace/zone.h"

#include <algorithm>
#include <cmath>

namespace gs::pace {

bool changes(ClockChange change) { return std::isfinite(change.at_min) && change.by_min != 0; }

double shown_of(double running_min, ClockChange change) {
  return changes(change) && running_min >= change.at_min ? running_min + change.by_min : running_min;
}

double running_of(double shown_min, ClockChange change) {
  if (!changes(change) || !(shown_min >= change.at_min)) return shown_min;
  // behind a leap forward nothing is earlier than the leap; a clock set back shows the times before it once more,
  // and the first of them was taken above
  return std::max(change.at_min, shown_min - change.by_min);
}

bool is_leapt_over(double shown_min, ClockChange change) {
  return changes(change) && shown_min >= change.at_min && shown_min < change.at_min + change.by_min;
}

bool comes_twice(double shown_min, ClockChange change) {
  return changes(change) && shown_min >= change.at_min + change.by_min && shown_min < change.at_min;
}

bool touches(double arrive_min, double leave_by_min, ClockChange change) {
  return changes(change) && arrive_min < change.at_min + std::max(0.0, change.by_min) &&
         leave_by_min >= change.at_min + std::min(0.0, change.by_min);
}

}  // namespace gs::pace
