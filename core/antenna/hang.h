// How an antenna hangs between tree, stakes and ground: where every end is, and the lines of a side view to scale.
#pragma once

#include <vector>

#include "core/antenna/rigging.h"

namespace gs::antenna {

// Metres, x along the free span from the support (tree, mast or vehicle) at 0, z above the ground. Input as of
// fit(); impossible input gets NaN and no lines.

/// Where the ends come to lie by the rule of the shape (rigging.h), as low as end_m allows. It does not ask whether
/// the span is free: fit() does.
struct Hang {
  double low_m;         // lowest live wire: ends of a V, feed box of an end-fed wire, radials (0), foot of a whip
  double out_m;         // how far the wire stands out from the support; radials too
  double needs_m;       // of the span, ties included: fit()'s span_room_m is span - needs
  double between_deg;   // between the legs of a V; NaN for other shapes
  double slope_deg;     // of wire below level: 0 level, 90 upright
  double rope_m;        // stake and tie lines
  double throw_line_m;  // over the supports: twice the height and kRopeSpareM for each
  int stakes;
};
Hang hang(const Rig& rig, const Space& space);

struct Point {
  double x_m, z_m;
};
/// What a line of the side view is.
enum class Drawn : unsigned char { wire, radial, rope, feed_line, support };
struct Stroke {
  Drawn what;
  std::vector<Point> at;
};
/// The side view: every wire at its true length (a radial towards the eye is left out), ropes to their stakes, feed
/// line to the ground, and where it is fed.
struct Sketch {
  std::vector<Stroke> strokes;
  std::vector<Point> stakes;
  Point feed, top;  // top: the support's highest point that carries something
};
/// fed_at: share of the wire from its first end to the feed point; 0.5 the middle, 1/3 off centre.
Sketch sketch(const Rig& rig, const Space& space, double fed_at = 0.5);
double length_m(const Stroke& stroke);

/// Height of a taut straight wire between two points at x, and how far above a top of obstacle_m there; NaN beyond
/// its ends. Sag is for the caller to take off.
double height_at_m(Point from, Point to, double x_m);

/// Room between the top of a thing high_m high, at_m along the span, and the lowest drawn wire above that place;
/// below 0 where the wire runs into it. NaN where no wire passes there. Taut wires: sag is for the caller to take
/// off.
double clear_over_m(const Sketch& drawn, double at_m, double high_m);

}  // namespace gs::antenna
