// Cutting of lines into dashes and of convex shapes into hatching: plain geometry, in any one unit.
#pragma once

#include <span>
#include <vector>

#include "app/look/geometry.h"

namespace gs::look {

/// The "on" pieces of a line through `points`, each a line of its own that keeps the corners it runs over.
/// `pattern` is on, off, on, off... and starts with on at the first point; the last piece ends with the line. Empty
/// for fewer than two points or a pattern whose sum is not above 0.
std::vector<std::vector<Point>> cut_dashes(std::span<const Point> points, std::span<const float> pattern);

/// The part of a convex polygon where low <= x + y <= high; empty when there is none.
std::vector<Point> cut_stripe(std::span<const Point> convex, float low, float high);

/// Length of the line through the points.
float length_of(std::span<const Point> points);

}  // namespace gs::look
