// The side view of hang.h: its lines.
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/antenna/hang.h"

namespace gs::antenna {
namespace {

constexpr double kHalfRightAngle = std::numbers::sqrt2 / 2;

Point along(Point from, Point to, double share) {
  return {from.x_m + share * (to.x_m - from.x_m), from.z_m + share * (to.z_m - from.z_m)};
}

/// Rope from a wire's end to its stake, the way hang() counts it: on in the wire's direction, 45 degrees at the
/// flattest.
void stake_out(Point inner, Point end, Sketch& out) {
  if (!(end.z_m > 0)) return;
  const double run = std::abs(end.x_m - inner.x_m), drop = inner.z_m - end.z_m;
  const double beyond = drop > 0 ? std::min(end.z_m, end.z_m * run / drop) : end.z_m;
  const Point stake{end.x_m + (end.x_m >= inner.x_m ? beyond : -beyond), 0};
  out.strokes.push_back({Drawn::rope, {end, stake}});
  out.stakes.push_back(stake);
}

void feed_down(Point feed, Sketch& out) {
  out.feed = feed;
  if (feed.z_m > 0) out.strokes.push_back({Drawn::feed_line, {feed, {feed.x_m, 0}}});
}

void level_wire(double wire, double z, double fed_at, Sketch& out) {
  const Point left{-wire / 2, z}, right{wire / 2, z};
  out.strokes.push_back({Drawn::wire, {left, right}});
  for (const double side : {-1.0, 1.0}) {
    const Point end{side * wire / 2, z}, tied{side * (wire / 2 + kTieM), z};
    out.strokes.push_back({Drawn::rope, {end, tied}});
    out.strokes.push_back({Drawn::support, {{tied.x_m, 0}, tied}});
  }
  feed_down(along(left, right, fed_at), out);
}

void slope(double wire, double low_m, double fed_at, const Space& at, Sketch& out) {
  const double drop = std::clamp(at.apex_m - low_m, 0.0, wire);
  const Point top{0, at.apex_m}, low{std::sqrt(std::max(0.0, (wire - drop) * (wire + drop))), at.apex_m - drop};
  out.strokes.push_back({Drawn::wire, {top, low}});
  stake_out(top, low, out);
  feed_down(along(top, low, fed_at), out);
}

void v(double fed_at, const Space& at, const Hang& h, Sketch& out) {
  const Point top{0, at.apex_m};
  const Point left{-h.out_m, h.low_m}, right{h.out_m, h.low_m};
  out.strokes.push_back({Drawn::wire, {left, top, right}});
  stake_out(top, left, out);
  stake_out(top, right, out);
  const double on_leg = 2 * fed_at;  // the first leg is the first half
  feed_down(on_leg < 1 ? along(left, top, on_leg) : along(top, right, on_leg - 1), out);
}

void upright(const Rig& rig, const Space& at, Sketch& out) {
  const double up = rig.shape == Shape::inverted_l ? std::min(at.apex_m, rig.wire_m) : rig.wire_m;
  std::vector<Point> wire{{0, 0}, {0, up}};
  if (rig.wire_m > up) {
    const Point end{rig.wire_m - up, up}, tied{end.x_m + kTieM, up};
    wire.push_back(end);
    out.strokes.push_back({Drawn::rope, {end, tied}});
    out.strokes.push_back({Drawn::support, {{tied.x_m, 0}, tied}});
  }
  out.strokes.push_back({Drawn::wire, std::move(wire)});
  for (const double side : {-1.0, 1.0}) out.strokes.push_back({Drawn::radial, {{0, 0}, {side * rig.radial_m, 0}}});
  out.feed = {0, 0};
  if (rig.wire_m <= up && at.apex_m > up) out.strokes.push_back({Drawn::rope, {{0, up}, {0, at.apex_m}}});
}

void ground_plane(const Rig& rig, const Space& at, Sketch& out) {
  const Point top{0, at.apex_m - kTieM}, foot{0, at.apex_m - kTieM - rig.wire_m};
  out.strokes.push_back({Drawn::wire, {foot, top}});
  out.strokes.push_back({Drawn::rope, {top, {0, at.apex_m}}});
  const double arm = rig.radial_m * kHalfRightAngle;
  for (const double side : {-1.0, 1.0}) {
    const Point end{side * arm, foot.z_m - arm};
    out.strokes.push_back({Drawn::radial, {foot, end}});
    stake_out(foot, end, out);
  }
  feed_down(foot, out);
}

void loop(const Hang& h, const Space& at, Sketch& out) {
  const Point top{0, at.apex_m}, left{-h.out_m, h.low_m}, right{h.out_m, h.low_m};
  out.strokes.push_back({Drawn::wire, {left, top, right, left}});
  stake_out(top, left, out);
  stake_out(top, right, out);
  feed_down({0, h.low_m}, out);
}

}  // namespace

Sketch sketch(const Rig& rig, const Space& at, double fed_at) {
  Sketch out{};
  const Hang h = hang(rig, at);
  if (!std::isfinite(h.needs_m) || !(fed_at >= 0 && fed_at <= 1)) return out;
  out.top = {0, at.apex_m};
  switch (rig.shape) {
    case Shape::dipole:
      level_wire(rig.wire_m, at.apex_m, fed_at, out);
      break;
    case Shape::inverted_v:
      v(fed_at, at, h, out);
      break;
    case Shape::sloping_dipole:
      slope(rig.wire_m, at.end_m, fed_at, at, out);
      break;
    case Shape::sloper:
      slope(rig.wire_m, kFeedBoxM, 1, at, out);
      break;
    case Shape::inverted_l:
    case Shape::vertical:
      upright(rig, at, out);
      break;
    case Shape::ground_plane:
      ground_plane(rig, at, out);
      break;
    case Shape::loop:
      loop(h, at, out);
      break;
    case Shape::whip:
      out.top = {0, kVehicleM};
      out.strokes.push_back({Drawn::wire, {{0, kVehicleM}, {0, kVehicleM + rig.wire_m}}});
      out.feed = {0, kVehicleM};
      break;
  }
  return out;
}

double clear_over_m(const Sketch& drawn, double at_m, double high_m) {
  double lowest_m = std::numeric_limits<double>::quiet_NaN();
  const auto lower = [&lowest_m](double z_m) { lowest_m = lowest_m <= z_m ? lowest_m : z_m; };
  for (const Stroke& stroke : drawn.strokes) {
    if (stroke.what != Drawn::wire) continue;
    for (std::size_t i = 1; i < stroke.at.size(); ++i) {
      const Point &from = stroke.at[i - 1], &to = stroke.at[i];
      const double z_m = height_at_m(from, to, at_m);
      if (std::isfinite(z_m)) lower(z_m);
      if (from.x_m == to.x_m && from.x_m == at_m) lower(std::min(from.z_m, to.z_m));
    }
  }
  return lowest_m - high_m;
}

double length_m(const Stroke& stroke) {
  double sum = 0;
  for (std::size_t i = 1; i < stroke.at.size(); ++i)
    sum += std::hypot(stroke.at[i].x_m - stroke.at[i - 1].x_m, stroke.at[i].z_m - stroke.at[i - 1].z_m);
  return sum;
}

}  // namespace gs::antenna
