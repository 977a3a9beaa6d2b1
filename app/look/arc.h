// Round paths in device px, fine enough that no corner shows.
#pragma once

#include <vector>

#include "imgui.h"

namespace gs::look {

/// Appends points from angle `from` to `to` (radians, clockwise from +x as y is down), both ends included.
void add_arc(std::vector<ImVec2>& points, ImVec2 centre, float r, float from, float to);

/// Appends a whole circle; the first point is not repeated.
void add_circle(std::vector<ImVec2>& points, ImVec2 centre, float r);

/// Appends a box with round corners, clockwise; the radius is cut to half the shorter side.
void add_round_box(std::vector<ImVec2>& points, ImVec2 low, ImVec2 high, float radius);

}  // namespace gs::look
