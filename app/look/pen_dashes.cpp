#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/look/arc.h"
#include "app/look/cuts.h"
#include "app/look/pen.h"

namespace gs::look {
namespace {

constexpr float kPi = std::numbers::pi_v<float>;

/// The corners and sides of a box with round corners, in logical px, as seen at this scale.
std::vector<Point> round_box(Box box, float radius, float scale) {
  std::vector<Point> out;
  if (radius <= 0)
    return {{box.x, box.y}, {box.right(), box.y}, {box.right(), box.bottom()}, {box.x, box.bottom()}};
  std::vector<ImVec2> px;
  add_round_box(px, {box.x * scale, box.y * scale}, {box.right() * scale, box.bottom() * scale}, radius * scale);
  for (const ImVec2 p : px) out.push_back({p.x / scale, p.y / scale});
  return out;
}

}  // namespace

void Pen::dashed(std::span<const Point> points, std::span<const float> pattern, ImU32 colour, float stroke_width) {
  for (const std::vector<Point>& piece : cut_dashes(points, pattern)) {
    if (piece.size() == 2) {
      line(piece[0], piece[1], colour, stroke_width);
      continue;
    }
    std::vector<ImVec2> run;
    for (const Point p : piece) run.push_back(at(p));
    stroke_run(run, colour, thick_px(stroke_width), false, false);
  }
}

void Pen::dashed_ring(Point centre, float r, ImU32 colour, float stroke_width, int dashes) {
  const float step = 2 * kPi / float(std::max(dashes, 1)), on = step * 0.6F;
  for (int i = 0; i < dashes; ++i) {
    const float middle = -kPi / 2 + step * (float(i) + 0.5F);
    std::vector<ImVec2> points;
    add_arc(points, at(centre), r * scale_, middle - on / 2, middle + on / 2);
    stroke_run(points, colour, thick_px(stroke_width), false, false);
  }
}

void Pen::dashed_box(Box box, std::span<const float> pattern, ImU32 colour, float stroke_width, float radius) {
  std::vector<Point> around = round_box(box, radius, scale_);
  around.push_back(around.front());
  dashed(around, pattern, colour, stroke_width);
}

void Pen::hatch_shape(std::span<const Point> convex, ImU32 colour, float gap, float stroke_width) {
  float low = convex[0].x + convex[0].y, high = low;
  for (const Point p : convex) {
    low = std::min(low, p.x + p.y);
    high = std::max(high, p.x + p.y);
  }
  // Along x a stroke at 45 degrees is wider by the root of two. Strokes stand on a grid of the whole sheet, so that
  // neighbouring shapes hatch in step.
  const float half = std::max(stroke_width, hair()) * std::numbers::sqrt2_v<float> / 2;
  for (float level = std::floor(low / gap) * gap; level - half < high; level += gap) {
    const std::vector<Point> stripe = cut_stripe(convex, level - half, level + half);
    if (!stripe.empty()) polygon(stripe, colour);
  }
}

void Pen::hatch(Box box, ImU32 colour, float gap, float stroke_width) {
  const Box snapped{snap(box.x), snap(box.y), snap(box.right()) - snap(box.x), snap(box.bottom()) - snap(box.y)};
  if (snapped.w > 0 && snapped.h > 0) hatch_shape(round_box(snapped, 0, scale_), colour, gap, stroke_width);
}

void Pen::hatch_round(Box box, float radius, ImU32 colour, float gap, float stroke_width) {
  if (box.w > 0 && box.h > 0) hatch_shape(round_box(box, radius, scale_), colour, gap, stroke_width);
}

void Pen::limit_line(float x0, float x1, float y, ImU32 colour) {
  constexpr float kEvery = 9, kLean = 4.5F, kDrop = 5.5F;
  line({x0, y}, {x1, y}, colour, stroke::kRule);
  const float top = snap(y) + 1;
  for (float x = x0 + kEvery; x <= x1; x += kEvery) line({x, top}, {x - kLean, top + kDrop}, theme_.ink2, 1.1F);
}

void Pen::limit_line_upright(float x, float y0, float y1, ImU32 colour) {
  constexpr float kEvery = 9, kLean = 4.5F, kDrop = 5.5F;
  line({x, y0}, {x, y1}, colour, stroke::kRule);
  const float left = snap(x) - 1;
  for (float y = y0; y + kLean <= y1; y += kEvery) line({left, y}, {left - kDrop, y + kLean}, theme_.ink2, 1.1F);
}

void Pen::leader(float x0, float x1, float baseline, ImU32 colour) {
  constexpr float kEvery = 7, kDot = 1.6F;
  const float size = stroke_px(kDot), foot = edge(baseline);
  for (float x = std::ceil(x0 / kEvery) * kEvery; x + kDot <= x1;
       x += kEvery) {  // rows below each other keep in step
    const float left = edge(x);
    box_px(left, foot - size, left + size, foot, colour);
  }
}

}  // namespace gs::look
