#include "app/parts/labels.h"

#include <algorithm>
#include <cmath>

namespace gs::parts {
namespace {

constexpr float kApart = 5;  // px between two labels

}  // namespace

using look::Box;
using look::Point;

bool overlap(Box a, Box b) { return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom(); }

bool crosses(Point a, Point b, Box box) {
  // The line's parameter is cut by the four sides in turn; what is left over lies inside.
  float from = 0, to = 1;
  const auto cut = [&](float start, float step, float low, float high) {
    if (step == 0) return start >= low && start <= high;
    const float t0 = (low - start) / step, t1 = (high - start) / step;
    from = std::max(from, std::min(t0, t1));
    to = std::min(to, std::max(t0, t1));
    return from <= to;
  };
  return cut(a.x, b.x - a.x, box.x, box.right()) && cut(a.y, b.y - a.y, box.y, box.bottom());
}

void LabelRoom::block(std::span<const Point> run, float half_width) {
  const auto finite = [](Point p) { return std::isfinite(p.x) && std::isfinite(p.y); };
  for (std::size_t i = 0; i + 1 < run.size(); ++i)
    if (finite(run[i]) && finite(run[i + 1])) pieces_.push_back({run[i], run[i + 1], half_width});
}

bool LabelRoom::is_free(Box box) const {
  if (box.x < bounds_.x || box.y < bounds_.y || box.right() > bounds_.right() || box.bottom() > bounds_.bottom())
    return false;
  for (const Box& other : boxes_)
    if (overlap(box, other)) return false;
  for (const Piece& piece : pieces_) {
    const Box wide = box.grown(piece.half_width);
    if (std::max(piece.a.x, piece.b.x) < wide.x || std::min(piece.a.x, piece.b.x) > wide.right()) continue;
    if (crosses(piece.a, piece.b, wide)) return false;
  }
  return true;
}

const Box* LabelRoom::place(std::span<const Box> candidates) {
  for (const Box& box : candidates) {
    if (!is_free(box)) continue;
    boxes_.push_back(box.grown(kApart));
    placed_ = box;
    return &placed_;
  }
  return nullptr;
}

std::vector<Box> places_along(std::span<const Point> run, float width, float height, float distance) {
  constexpr int kPlaces = 24;
  std::vector<Box> places;
  if (run.size() < 2) return places;
  const float left = run.front().x, right = run.back().x;
  for (int i = 0; i <= kPlaces; ++i) {
    const float middle = right - (right - left) * float(i) / kPlaces;
    // How high and how low the line runs over the width of the label.
    float top = 1e9F, bottom = -1e9F;
    for (std::size_t k = 0; k < run.size(); ++k) {
      if (!std::isfinite(run[k].y)) continue;
      const bool near = std::abs(run[k].x - middle) <= width / 2;
      const bool between = k > 0 && (run[k].x - middle) * (run[k - 1].x - middle) <= 0;
      if (!near && !between) continue;
      top = std::min({top, run[k].y, between && std::isfinite(run[k - 1].y) ? run[k - 1].y : run[k].y});
      bottom = std::max({bottom, run[k].y, between && std::isfinite(run[k - 1].y) ? run[k - 1].y : run[k].y});
    }
    if (top > bottom) continue;
    places.push_back({middle - width / 2, top - distance - height, width, height});
    places.push_back({middle - width / 2, bottom + distance, width, height});
  }
  return places;
}

std::vector<Box> places_around(Point at, float width, float height, float distance) {
  const float corner = distance * 0.7F;
  return {{at.x + distance, at.y - height / 2, width, height},
          {at.x - distance - width, at.y - height / 2, width, height},
          {at.x - width / 2, at.y - distance - height, width, height},
          {at.x - width / 2, at.y + distance, width, height},
          {at.x + corner, at.y - corner - height, width, height},
          {at.x - corner - width, at.y - corner - height, width, height},
          {at.x + corner, at.y + corner, width, height},
          {at.x - corner - width, at.y + corner, width, height}};
}

std::vector<Box> places_round_about(Point at, float width, float height) {
  std::vector<Box> places;
  for (const float distance : {14.0F, 26.0F, 40.0F, 60.0F, 90.0F})
    for (const Box& box : places_around(at, width, height, distance)) places.push_back(box);
  return places;
}

std::vector<Box> places_beside(Point a, Point b, float width, float height) {
  const float length = std::max(std::hypot(b.x - a.x, b.y - a.y), 1e-3F);
  const Point side{-(b.y - a.y) / length, (b.x - a.x) / length};
  // how far the box reaches along the line's own side: it then just clears the line
  const float reach = (std::abs(side.x) * width + std::abs(side.y) * height) / 2;
  std::vector<Box> places;
  for (const float distance : {6.0F, 14.0F, 26.0F})
    for (const float share : {0.5F, 0.35F, 0.65F, 0.2F, 0.8F})
      for (const float which : {1.0F, -1.0F}) {
        const float off = (reach + distance) * which;
        const Point middle{a.x + (b.x - a.x) * share + side.x * off, a.y + (b.y - a.y) * share + side.y * off};
        places.push_back({middle.x - width / 2, middle.y - height / 2, width, height});
      }
  return places;
}

}  // namespace gs::parts
