// The time line's scale and its edges: what of the outing's clock a hand can move.
#pragma once

#include <string>
#include <vector>

#include "app/session.h"

namespace gs::parts {

/// Minutes from local midnight at both ends of the drawing.
struct TimeScale {
  double from_min, to_min;
};

/// One edge: where it stands and how far it may go so that the outing stays possible.
struct TimeEdge {
  std::string id, name;
  std::string spoken;  // "14:10, set-up 10 minutes"
  double at_min, least_min, most_min;
};
/// Arrive, on the air, start packing, leave by, in the order of the clock. Empty where the clock is not known.
std::vector<TimeEdge> time_edges(const Session& session);
/// Moves one edge; all steps of a drag carry its gesture.
void move_edge(Session& session, const TimeEdge& edge, double to_min, int gesture);

}  // namespace gs::parts
