// Does it fit between these trees, and how much rope does it take.
#pragma once

#include "core/antenna/kind.h"

namespace gs::antenna {

// Lengths and heights in metres, angles in degrees. Impossible input (not finite, a length not above 0) gets NaN.

/// Ends of a wire carry its highest voltage and stay out of a standing person's reach: 2.5 m (common practice).
inline constexpr double kOutOfReachM = 2.5;
/// Insulator and knot at each tied end of a wire (common practice).
inline constexpr double kTieM = 0.5;
/// The feed box of an end-fed wire hangs about here (common practice).
inline constexpr double kFeedBoxM = 1.0;
/// A roof or tail gate that a whip stands on, and the clear way around it (arm's reach): common practice.
inline constexpr double kVehicleM = 1.5, kWhipClearM = 1.5;
/// Legs of an inverted V with less than this between them cancel each other and feed below 47 ohm (common
/// practice; 47.2 ohm at 90 degrees, apex 10 m, 14.1 MHz, by a wire model of our own).
inline constexpr double kLeastLegAngleDeg = 90;

/// What hangs: wire_m as cut (round the loop, upright of a vertical, rod of a whip), radial_m of the verticals.
struct Rig {
  Shape shape;
  double wire_m, radial_m = 0;
};

/// Where it hangs: highest point that wire or halyard can reach, width free in its own direction, least height of
/// ends.
struct Space {
  double apex_m, span_m, end_m = kOutOfReachM;
};

/// Room to spare in the tighter direction: how far the span could shrink, and the apex sink, with the other as it
/// is. Below 0: does not fit, by so much in the worse direction.
struct Fit {
  double room_m, span_room_m, height_room_m;
  bool height_binds() const { return height_room_m < span_room_m; }
};

/// The rule of each shape, plain geometry with taut wires (the same as a table: docs/methods/antenna.md):
/// dipole: level, both ends at the apex height. inverted_v: middle at the apex, ends at end_m or higher, no less
/// than 90 degrees between the legs. sloping_dipole: one end at the apex, straight down to end_m. sloper: far end
/// at the apex, straight down to a feed box 1 m up. inverted_l: up to the apex, the rest level to a second support,
/// radials on the ground to both sides. vertical: wire below the apex height, radials on the ground to both sides.
/// ground_plane: radials slope 45 degrees from the foot of the wire, ends at end_m. loop: apex up, base line at
/// end_m; any triangle from equal-sided down to half that height. whip: on a vehicle, free height overhead, arm's
/// reach all round. Ropes run on beyond the span.
Fit fit(const Rig& rig, const Space& space);

/// What is missing where it does not fit: so much more span, so much more apex; 0 where that alone is not short.
/// either: one of the two, by that much, is enough by itself; else all that is above 0 is needed. All 0 where it
/// fits or where fit() has no answer.
struct Lack {
  double span_m, apex_m;
  bool either;
};
Lack lack(const Rig& rig, const Space& space);

/// Legs of an inverted V: how far each end stands out, and the angle between the legs. NaN where the leg is shorter
/// than the drop; a leg from apex_m down to end_m (either may be 0).
struct LegReach {
  double each_m, both_m, between_deg;
};
LegReach leg_reach(double leg_m, double apex_m, double end_m);

/// Line from height_m down to end_m, out_m away: length, angle from the vertical, and between two such lines.
struct SlopeLine {
  double length_m, from_vertical_deg, between_deg;
};
SlopeLine slope_line(double height_m, double out_m, double end_m);

/// Throw line over a branch, up and down again with something to hold: 2 H + 3 to 5 m (common practice).
inline constexpr double kRopeSpareM = 4, kRopeSpareLeastM = 3, kRopeSpareMostM = 5;
double rope_over_branch_m(double branch_m, double spare_m = kRopeSpareM);
/// Height of a branch from a cord over it whose two ends hang at ends_m: ends + half the cord.
double branch_height_m(double cord_m, double ends_m);

/// What the vertical part of the field loses when a vertical leans, dB: -20 log10 cos; 0 <= lean < 90.
double lean_loss_db(double lean_deg);

/// Catenary of constant a = pull over weight per metre (m). Sources: textbooks of mechanics; checks in
/// tests/reference. A wire that leaves its top angle_deg below level (0..90, exclusive) and ends level: drop,
/// length, pull at the top over pull at the end.
struct Arm {
  double drop_m, length_m, pull_ratio;
};
Arm catenary_arm(double constant_m, double angle_deg);
double constant_of_arm_m(double length_m, double angle_deg);
/// Between two points of equal height span_m apart: sag in the middle and wire beyond the span. The pull is the
/// level part. Infinite where so little pull lets it hang deeper than a double holds (span above 1400 constants).
struct Sag {
  double sag_m, extra_wire_m;
};
Sag catenary_sag(double constant_m, double span_m);
/// Pull as people feel it, in kilograms (or the wire's own mass unit): no gravity needed.
double catenary_constant_m(double pull_kg, double mass_g_per_m);

}  // namespace gs::antenna
