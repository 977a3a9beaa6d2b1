#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/look/arc.h"
#include "app/look/pen.h"

namespace gs::look {
namespace {

// Where a line turns by more than this it gets a round join; gentler turns are one smooth run.
constexpr float kSharpCos = 0.94F;  // cos 20 degrees

bool sharp(ImVec2 a, ImVec2 b, ImVec2 c) {
  const float ux = b.x - a.x, uy = b.y - a.y, vx = c.x - b.x, vy = c.y - b.y;
  return ux * vx + uy * vy < kSharpCos * std::hypot(ux, uy) * std::hypot(vx, vy);
}

}  // namespace

Pen::Pen(ImDrawList& list, const Fonts& fonts, const Theme& theme)
    : list_(list), fonts_(fonts), theme_(theme), scale_(fonts.scale), grounds_{theme.paper} {}

float Pen::edge(float logical) const { return std::round(logical * scale_); }
float Pen::snap(float logical) const { return edge(logical) / scale_; }
float Pen::stroke_px(float logical) const { return std::max(1.0F, std::round(logical * scale_)); }
float Pen::thick_px(float logical) const { return std::max(1.0F, logical * scale_); }

void Pen::push_clip(Box box) {
  list_.PushClipRect({edge(box.x), edge(box.y)}, {edge(box.right()), edge(box.bottom())}, true);
}
void Pen::pop_clip() { list_.PopClipRect(); }

Box Pen::clip() const {
  const ImVec2 from = list_.GetClipRectMin(), to = list_.GetClipRectMax();
  return {from.x / scale_, from.y / scale_, (to.x - from.x) / scale_, (to.y - from.y) / scale_};
}

void Pen::box_px(float x0, float y0, float x1, float y1, ImU32 colour) {
  if (x1 > x0 && y1 > y0) list_.AddRectFilled({x0, y0}, {x1, y1}, colour);
}

void Pen::polygon_px(std::vector<ImVec2>& points, ImU32 colour) {
  float area = 0;  // the fringe of a fill grows outwards only where the points run clockwise
  for (std::size_t i = 0; i < points.size(); ++i) {
    const ImVec2 a = points[i], b = points[(i + 1) % points.size()];
    area += a.x * b.y - b.x * a.y;
  }
  if (area < 0) std::reverse(points.begin(), points.end());
  list_.AddConvexPolyFilled(points.data(), int(points.size()), colour);
}

void Pen::disc_px(ImVec2 centre, float r, ImU32 colour) {
  std::vector<ImVec2> points;
  add_circle(points, centre, r);
  polygon_px(points, colour);
}

void Pen::stroke_run(const std::vector<ImVec2>& points, ImU32 colour, float width, bool closed, bool round_ends) {
  std::vector<ImVec2> line;
  for (const ImVec2 p : points)  // a segment without length has no direction to be thick across
    if (line.empty() || std::hypot(p.x - line.back().x, p.y - line.back().y) > 0.01F) line.push_back(p);
  if (closed && line.size() > 2 &&
      std::hypot(line.back().x - line.front().x, line.back().y - line.front().y) <= 0.01F)
    line.pop_back();
  if (closed && line.size() > 2) {
    const std::size_t n = line.size();
    bool smooth = true;
    for (std::size_t i = 0; i < n && smooth; ++i) smooth = !sharp(line[i], line[(i + 1) % n], line[(i + 2) % n]);
    if (smooth) {
      list_.AddPolyline(line.data(), int(n), colour, ImDrawFlags_Closed, width);
      return;
    }
    line.push_back(line.front());
    round_ends = true;
  }
  if (line.size() < 2) {
    if (round_ends && !line.empty()) disc_px(line[0], width / 2, colour);
    return;
  }
  if (round_ends && width >= 1.5F) {
    disc_px(line.front(), width / 2, colour);
    if (!closed) disc_px(line.back(), width / 2, colour);
  }
  std::size_t from = 0;
  for (std::size_t i = 1; i < line.size(); ++i) {
    const bool last = i + 1 == line.size();
    if (!last && !sharp(line[i - 1], line[i], line[i + 1])) continue;
    list_.AddPolyline(&line[from], int(i - from + 1), colour, ImDrawFlags_None, width);
    if (!last && width >= 1.5F) disc_px(line[i], width / 2, colour);
    from = i;
  }
}

void Pen::fill(Box box, ImU32 colour, float radius) {
  const float x0 = edge(box.x), y0 = edge(box.y), x1 = edge(box.right()), y1 = edge(box.bottom());
  if (x1 <= x0 || y1 <= y0) return;
  if (radius * scale_ < 0.5F) return box_px(x0, y0, x1, y1, colour);
  std::vector<ImVec2> points;
  add_round_box(points, {x0, y0}, {x1, y1}, radius * scale_);
  polygon_px(points, colour);
}

void Pen::outline(Box box, ImU32 colour, float stroke_width, float radius) {
  const float x0 = edge(box.x), y0 = edge(box.y), x1 = edge(box.right()), y1 = edge(box.bottom());
  const float w = stroke_px(stroke_width);
  if (x1 - x0 <= 2 * w || y1 - y0 <= 2 * w) return box_px(x0, y0, x1, y1, colour);
  if (radius * scale_ < 0.5F) {
    box_px(x0, y0, x1, y0 + w, colour);
    box_px(x0, y1 - w, x1, y1, colour);
    box_px(x0, y0 + w, x0 + w, y1 - w, colour);
    box_px(x1 - w, y0 + w, x1, y1 - w, colour);
    return;
  }
  const float half = thick_px(stroke_width) / 2;  // the outer edge is whole, the inner may be soft
  std::vector<ImVec2> points;
  add_round_box(points, {x0 + half, y0 + half}, {x1 - half, y1 - half}, std::max(radius * scale_ - half, 0.5F));
  stroke_run(points, colour, 2 * half, true, false);
}

void Pen::line(Point a, Point b, ImU32 colour, float stroke_width) {
  const ImVec2 p = at(a), q = at(b);
  const float w = stroke_px(stroke_width);
  if (std::fabs(p.x - q.x) < 0.01F) {
    const float x = std::round(p.x - w / 2);
    box_px(x, std::round(std::min(p.y, q.y)), x + w, std::round(std::max(p.y, q.y)), colour);
  } else if (std::fabs(p.y - q.y) < 0.01F) {
    const float y = std::round(p.y - w / 2);
    box_px(std::round(std::min(p.x, q.x)), y, std::round(std::max(p.x, q.x)), y + w, colour);
  } else {
    stroke_run({p, q}, colour, thick_px(stroke_width), false, false);
  }
}

void Pen::polyline(std::span<const Point> points, ImU32 colour, float stroke_width, bool closed) {
  std::vector<ImVec2> run;
  run.reserve(points.size());
  for (const Point p : points) run.push_back(at(p));
  stroke_run(run, colour, thick_px(stroke_width), closed, true);
}

void Pen::polygon(std::span<const Point> points, ImU32 colour, bool smooth) {
  std::vector<ImVec2> shape;
  shape.reserve(points.size());
  for (const Point p : points) shape.push_back(at(p));
  const ImDrawListFlags flags = list_.Flags;
  if (!smooth) list_.Flags &= ~ImDrawListFlags_AntiAliasedFill;
  polygon_px(shape, colour);
  list_.Flags = flags;
}

void Pen::disc(Point centre, float r, ImU32 colour) { disc_px(at(centre), r * scale_, colour); }

void Pen::ring(Point centre, float r, ImU32 colour, float stroke_width) {
  std::vector<ImVec2> points;
  add_circle(points, at(centre), r * scale_);
  stroke_run(points, colour, thick_px(stroke_width), true, false);
}

void Pen::arc(Point centre, float r, float from, float to, ImU32 colour, float stroke_width) {
  std::vector<ImVec2> points;
  add_arc(points, at(centre), r * scale_, from, to);
  stroke_run(points, colour, thick_px(stroke_width), false, true);
}

void Pen::focus(Box box, float radius) {
  outline(box.grown(6), theme_.ink, stroke::kStrong, radius > 0 ? radius + 6 : 0);
}

}  // namespace gs::look
