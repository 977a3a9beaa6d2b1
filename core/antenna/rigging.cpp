#include "core/antenna/rigging.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace gs::antenna {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

double side(double slant, double other) { return std::sqrt(std::max(0.0, (slant - other) * (slant + other))); }

Fit made(double span_room_m, double height_room_m) {
  return {std::min(span_room_m, height_room_m), span_room_m, height_room_m};
}

Fit fit_v(double wire_m, const Space& at) {
  const double leg = wire_m / 2, least_out = leg * std::numbers::sqrt2 / 2;  // 45 degrees each: 90 between the legs
  const double drop = std::clamp(at.apex_m - at.end_m, 0.0, leg);
  const double out_needed = std::max(side(leg, drop), least_out);
  const double out_free = std::clamp(at.span_m / 2 - kTieM, least_out, leg);
  return made(at.span_m - 2 * (out_needed + kTieM), at.apex_m - at.end_m - side(leg, out_free));
}

/// Straight from the apex down to low_m.
Fit fit_slope(double wire_m, double low_m, const Space& at) {
  const double drop = std::clamp(at.apex_m - low_m, 0.0, wire_m);
  const double out_free = std::clamp(at.span_m - kTieM, 0.0, wire_m);
  return made(at.span_m - kTieM - side(wire_m, drop),
              at.apex_m - std::max(at.end_m, low_m + side(wire_m, out_free)));
}

/// Up to the apex, the rest level, radials to both sides.
Fit fit_l(const Rig& rig, const Space& at) {
  const double level = rig.wire_m - std::clamp(at.apex_m, 0.0, rig.wire_m);
  const double level_free = std::max(0.0, at.span_m - rig.radial_m - kTieM);
  return made(at.span_m - rig.radial_m - std::max(rig.radial_m, level + kTieM),
              at.apex_m - std::max(at.end_m, rig.wire_m - level_free));
}

// A triangle of base b and height h with b + 2 sqrt(h^2 + b^2/4) round it: h^2 = L (L - 2b) / 4.
Fit fit_loop(double wire_m, const Space& at) {
  const double full = wire_m * std::numbers::sqrt3 / 6, least = full / 2;
  const double widest = (wire_m - 4 * least * least / wire_m) / 2;
  const double height = std::clamp(at.apex_m - at.end_m, least, full);
  const double base_needed = (wire_m - 4 * height * height / wire_m) / 2;
  const double base_free = std::clamp(at.span_m - 2 * kTieM, wire_m / 3, widest);
  const double height_needed = std::sqrt(std::max(0.0, wire_m * (wire_m - 2 * base_free))) / 2;
  return made(at.span_m - 2 * kTieM - base_needed, at.apex_m - at.end_m - height_needed);
}

}  // namespace

Fit fit(const Rig& rig, const Space& at) {
  const bool sound = rig.wire_m > 0 && std::isfinite(rig.wire_m) && rig.radial_m >= 0 &&
                     std::isfinite(rig.radial_m) && std::isfinite(at.apex_m) && std::isfinite(at.span_m) &&
                     at.end_m >= 0 && std::isfinite(at.end_m);
  if (!sound) return {kNone, kNone, kNone};
  const double wire = rig.wire_m;
  switch (rig.shape) {
    case Shape::dipole:
      return made(at.span_m - wire - 2 * kTieM, at.apex_m - at.end_m);
    case Shape::inverted_v:
      return fit_v(wire, at);
    case Shape::sloping_dipole:
      return fit_slope(wire, at.end_m, at);
    case Shape::sloper:
      return fit_slope(wire, kFeedBoxM, at);
    case Shape::inverted_l:
      return fit_l(rig, at);
    case Shape::vertical:
      return made(at.span_m - 2 * rig.radial_m, at.apex_m - wire - kTieM);
    case Shape::ground_plane: {
      const double arm = rig.radial_m * std::numbers::sqrt2 / 2;
      return made(at.span_m - 2 * (arm + kTieM), at.apex_m - at.end_m - arm - wire - kTieM);
    }
    case Shape::loop:
      return fit_loop(wire, at);
    case Shape::whip:
      return made(at.span_m - 2 * kWhipClearM, at.apex_m - kVehicleM - wire);
  }
  return {kNone, kNone, kNone};
}

Lack lack(const Rig& rig, const Space& at) {
  const Fit now = fit(rig, at);
  if (!(now.room_m < 0)) return {0, 0, false};
  const double span_m = std::max(0.0, -now.span_room_m), apex_m = std::max(0.0, -now.height_room_m);
  constexpr double kEdgeM = 1e-9;  // room 0 fits; sums of lengths round
  const bool by_span = fit(rig, {at.apex_m, at.span_m + span_m, at.end_m}).room_m >= -kEdgeM;
  const bool by_apex = fit(rig, {at.apex_m + apex_m, at.span_m, at.end_m}).room_m >= -kEdgeM;
  if (by_span && by_apex) return {span_m, apex_m, true};
  if (by_span) return {span_m, 0, false};
  if (by_apex) return {0, apex_m, false};
  // with the higher apex a V or loop wants less span, with the longer span an L less apex
  const double then_span_m = std::max(0.0, -fit(rig, {at.apex_m + apex_m, at.span_m, at.end_m}).span_room_m);
  return {then_span_m, std::max(0.0, -fit(rig, {at.apex_m, at.span_m + then_span_m, at.end_m}).height_room_m),
          false};
}

}  // namespace gs::antenna
