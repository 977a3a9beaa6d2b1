#include "app/look/arc.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gs::look {
namespace {

constexpr float kPi = std::numbers::pi_v<float>;
constexpr float kSagPx = 0.1F;  // how far a chord may lie inside the circle

/// Segments of a whole circle: sag = r (1 - cos(pi / n)).
int segments(float r) {
  if (r <= kSagPx) return 8;
  return std::clamp(int(std::ceil(kPi / std::acos(1 - kSagPx / r))), 12, 256);
}

}  // namespace

void add_arc(std::vector<ImVec2>& points, ImVec2 centre, float r, float from, float to) {
  const int n = std::max(2, int(std::ceil(float(segments(r)) * std::fabs(to - from) / (2 * kPi))));
  for (int i = 0; i <= n; ++i) {
    const float angle = from + (to - from) * float(i) / float(n);
    points.push_back({centre.x + r * std::cos(angle), centre.y + r * std::sin(angle)});
  }
}

void add_circle(std::vector<ImVec2>& points, ImVec2 centre, float r) {
  add_arc(points, centre, r, 0, 2 * kPi);
  points.pop_back();
}

void add_round_box(std::vector<ImVec2>& points, ImVec2 low, ImVec2 high, float radius) {
  const float r = std::min({radius, (high.x - low.x) / 2, (high.y - low.y) / 2});
  const ImVec2 corners[] = {
      {high.x - r, high.y - r}, {low.x + r, high.y - r}, {low.x + r, low.y + r}, {high.x - r, low.y + r}};
  for (int i = 0; i < 4; ++i) add_arc(points, corners[i], r, float(i) * kPi / 2, float(i + 1) * kPi / 2);
}

}  // namespace gs::look
