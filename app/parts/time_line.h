// The time line's scale and its edges: what of the outing's clock a hand can move.
#pragma once

#include <string>
#include <utility>
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
  int stint = -1;  // its row, where the edge is a stint's
};
/// Arrive, on the air, the stints, start packing, leave by, in the order of the clock. Empty where the clock is not
/// known.
std::vector<TimeEdge> time_edges(const Session& session);
/// Moves one edge; all steps of a drag carry its gesture.
void move_edge(Session& session, const TimeEdge& edge, double to_min, int gesture);

/// When one is off the air between two times, from and until.
std::vector<std::pair<double, double>> breaks_of(const Session& session, double from_min, double until_min);
/// "break", "14.06 MHz, CW", "as planned": what a stint changes.
std::string stint_words(const Stint& stint, const Style& style);

}  // namespace gs::parts
