#include "app/look/cuts.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace gs::look {
namespace {

float distance(Point a, Point b) { return std::hypot(b.x - a.x, b.y - a.y); }
Point between(Point a, Point b, float t) { return {a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t}; }

/// Keeps the side of the convex polygon where sign x (x + y - level) >= 0.
std::vector<Point> keep_side(std::span<const Point> shape, float level, float sign) {
  std::vector<Point> kept;
  for (std::size_t i = 0; i < shape.size(); ++i) {
    const Point a = shape[i], b = shape[(i + 1) % shape.size()];
    const float da = sign * (a.x + a.y - level), db = sign * (b.x + b.y - level);
    if (da >= 0) kept.push_back(a);
    if ((da > 0 && db < 0) || (da < 0 && db > 0)) kept.push_back(between(a, b, da / (da - db)));
  }
  return kept;
}

}  // namespace

float length_of(std::span<const Point> points) {
  float sum = 0;
  for (std::size_t i = 1; i < points.size(); ++i) sum += distance(points[i - 1], points[i]);
  return sum;
}

std::vector<std::vector<Point>> cut_dashes(std::span<const Point> points, std::span<const float> pattern) {
  std::vector<std::vector<Point>> pieces;
  float period = 0;
  for (const float part : pattern) period += std::max(part, 0.0F);
  if (points.size() < 2 || !(period > 0)) return pieces;

  std::size_t part = 0;
  float left = pattern[0];  // of the part that is running
  bool on = true;
  pieces.push_back({points[0]});
  for (std::size_t i = 1; i < points.size(); ++i) {
    Point from = points[i - 1];
    float rest = distance(from, points[i]);
    while (left <= rest && rest > 0) {
      from = between(from, points[i], left / rest);
      rest -= left;
      if (on) pieces.back().push_back(from);
      part = (part + 1) % pattern.size();
      left = std::max(pattern[part], 0.0F);
      on = !on;
      if (on) pieces.push_back({from});
    }
    left -= rest;
    if (on) pieces.back().push_back(points[i]);
  }
  std::erase_if(pieces, [](const std::vector<Point>& piece) { return length_of(piece) <= 0; });
  return pieces;
}

std::vector<Point> cut_stripe(std::span<const Point> convex, float low, float high) {
  const std::vector<Point> above = keep_side(convex, low, 1);
  std::vector<Point> stripe = keep_side(above, high, -1);
  if (stripe.size() < 3) stripe.clear();
  return stripe;
}

}  // namespace gs::look
