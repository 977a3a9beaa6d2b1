#include "core/antenna/hang.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/units.h"

namespace gs::antenna {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kDegrees = 180 / kPi;
constexpr double kHalfRightAngle = std::numbers::sqrt2 / 2;

double side(double slant, double other) { return std::sqrt(std::max(0.0, (slant - other) * (slant + other))); }

bool sound(const Rig& rig, const Space& at) { return std::isfinite(fit(rig, at).room_m); }

/// A stake for an end at height z that is pulled on in the direction it comes from, not flatter than 45 degrees:
/// how far beyond the end it stands.
double stake_beyond_m(double end_z, double out_m, double drop_m) {
  return drop_m > 0 ? std::min(end_z, end_z * out_m / drop_m) : end_z;
}
double rope_to_stake_m(double end_z, double out_m, double drop_m) {
  return std::hypot(end_z, stake_beyond_m(end_z, out_m, drop_m)) + kTieM;
}

double throw_line_m(double height_m) { return 2 * height_m + kRopeSpareM; }

struct Triangle {
  double height_m, base_m;
};
Triangle triangle(double wire_m, const Space& at) {
  const double full = wire_m * std::numbers::sqrt3 / 6;
  const double height = std::clamp(at.apex_m - at.end_m, full / 2, full);
  return {height, (wire_m - 4 * height * height / wire_m) / 2};
}

/// Down to the ends, but no steeper than 45 degrees: the legs keep a right angle between them.
double leg_drop_m(double leg, const Space& at) {
  return std::min(std::max(at.apex_m - at.end_m, 0.0), leg * kHalfRightAngle);
}

Hang hang_v(double leg, const Space& at) {
  Hang h{};
  const double drop = leg_drop_m(leg, at);
  h.out_m = side(leg, drop);
  h.low_m = at.apex_m - drop;
  h.needs_m = 2 * (h.out_m + kTieM);
  h.between_deg = 2 * std::atan2(h.out_m, drop) * kDegrees;
  h.slope_deg = std::atan2(drop, h.out_m) * kDegrees;
  h.rope_m = 2 * rope_to_stake_m(std::max(0.0, h.low_m), h.out_m, drop);
  h.throw_line_m = throw_line_m(at.apex_m);
  h.stakes = 2;
  return h;
}

/// One wire down from the apex to low_m.
Hang hang_slope(double wire, double low_m, const Space& at) {
  Hang h{};
  const double drop = std::clamp(at.apex_m - low_m, 0.0, wire);
  h.out_m = side(wire, drop);
  h.low_m = at.apex_m - drop;
  h.needs_m = h.out_m + kTieM;
  h.between_deg = kNone;
  h.slope_deg = std::atan2(drop, h.out_m) * kDegrees;
  h.rope_m = rope_to_stake_m(std::max(0.0, h.low_m), h.out_m, drop);
  h.throw_line_m = throw_line_m(at.apex_m);
  h.stakes = 1;
  return h;
}

}  // namespace

Hang hang(const Rig& rig, const Space& at) {
  if (!sound(rig, at)) return {kNone, kNone, kNone, kNone, kNone, kNone, kNone, 0};
  const double wire = rig.wire_m, radial = rig.radial_m;
  Hang h{};
  h.between_deg = kNone;
  switch (rig.shape) {
    case Shape::dipole:
      h.low_m = at.apex_m;
      h.out_m = wire / 2;
      h.needs_m = wire + 2 * kTieM;
      h.throw_line_m = 2 * throw_line_m(at.apex_m);
      h.rope_m = 2 * kTieM;
      return h;
    case Shape::inverted_v:
      return hang_v(wire / 2, at);
    case Shape::sloping_dipole:
      return hang_slope(wire, at.end_m, at);
    case Shape::sloper:
      return hang_slope(wire, kFeedBoxM, at);
    case Shape::inverted_l: {
      const double level = wire - std::min(at.apex_m, wire);
      h.out_m = std::max(radial, level);
      h.needs_m = radial + std::max(radial, level + kTieM);
      h.slope_deg = 90;
      h.throw_line_m = 2 * throw_line_m(at.apex_m);
      h.rope_m = kTieM;
      h.stakes = 1;
      return h;
    }
    case Shape::vertical:
      h.out_m = radial;
      h.needs_m = 2 * radial;
      h.slope_deg = 90;
      h.throw_line_m = throw_line_m(at.apex_m);
      h.rope_m = kTieM;
      h.stakes = 1;
      return h;
    case Shape::ground_plane: {
      const double arm = radial * kHalfRightAngle;
      h.low_m = at.apex_m - kTieM - wire - arm;
      h.out_m = arm;
      h.needs_m = 2 * (arm + kTieM);
      h.slope_deg = 90;
      h.throw_line_m = throw_line_m(at.apex_m);
      h.rope_m = 4 * rope_to_stake_m(std::max(0.0, h.low_m), arm, arm);
      h.stakes = 4;
      return h;
    }
    case Shape::loop: {
      const Triangle t = triangle(wire, at);
      h.low_m = at.apex_m - t.height_m;
      h.out_m = t.base_m / 2;
      h.needs_m = t.base_m + 2 * kTieM;
      h.slope_deg = std::atan2(t.height_m, t.base_m / 2) * kDegrees;
      h.throw_line_m = throw_line_m(at.apex_m);
      h.rope_m = 2 * rope_to_stake_m(std::max(0.0, h.low_m), t.base_m / 2, t.height_m);
      h.stakes = 2;
      return h;
    }
    case Shape::whip:
      h.low_m = kVehicleM;
      h.needs_m = 2 * kWhipClearM;
      h.slope_deg = 90;
      return h;
  }
  return h;
}

double height_at_m(Point from, Point to, double x_m) {
  if (from.x_m > to.x_m) std::swap(from, to);
  if (!(x_m >= from.x_m && x_m <= to.x_m) || !(to.x_m > from.x_m)) return kNone;
  return from.z_m + (to.z_m - from.z_m) * ((x_m - from.x_m) / (to.x_m - from.x_m));
}

}  // namespace gs::antenna
