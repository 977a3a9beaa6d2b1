#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "app/look/pen.h"

namespace gs::look {
namespace {

constexpr float kRoot2 = std::numbers::sqrt2_v<float>;

std::array<Point, 4> lozenge(Point c, float half) {
  return {Point{c.x, c.y - half}, {c.x + half, c.y}, {c.x, c.y + half}, {c.x - half, c.y}};
}

/// A stroke with square ends as four corners.
std::array<Point, 4> bar(Point a, Point b, float thick) {
  const float length = std::hypot(b.x - a.x, b.y - a.y);
  const float nx = -(b.y - a.y) / length * thick / 2, ny = (b.x - a.x) / length * thick / 2;
  return {Point{a.x - nx, a.y - ny}, {b.x - nx, b.y - ny}, {b.x + nx, b.y + ny}, {a.x + nx, a.y + ny}};
}

}  // namespace

void Pen::sign(Sign sign, Point centre, float r, bool halo, ImU32 own) {
  const ImU32 colour = own != 0 ? own : theme_.of(sign), under = ground();
  const float grow = halo ? sign::kHalo : 0;
  const auto saltire = [&](float more, ImU32 in) {
    const float arm = 0.86F * r + more / kRoot2, thick = 0.56F * r + 2 * more;
    polygon(bar({centre.x - arm, centre.y - arm}, {centre.x + arm, centre.y + arm}, thick), in);
    polygon(bar({centre.x - arm, centre.y + arm}, {centre.x + arm, centre.y - arm}, thick), in);
  };
  switch (sign) {
    case Sign::holds:
      if (halo) disc(centre, r + grow, under);
      disc(centre, r, colour);
      disc(centre, 0.40F * r, under);
      return;
    case Sign::tight: {
      if (halo) polygon(lozenge(centre, 1.25F * r + grow * kRoot2), under);
      polygon(lozenge(centre, 1.25F * r), colour);
      const float wide = 1.2F * r, high = std::max(0.32F * r, 2.0F);
      fill({centre.x - wide / 2, centre.y - high / 2, wide, high}, under);
      return;
    }
    case Sign::fails:
      if (halo) saltire(grow, under);
      saltire(0, colour);
      return;
    case Sign::unknown:
      if (halo) disc(centre, r + grow, under);
      dashed_ring(centre, r - 1, colour, r < 12 ? stroke::kRule : 2.25F);
      return;
  }
}

void Pen::old_data(Point centre, float r) {
  dashed_ring(centre, r + sign::kHalo + 1.5F, theme_.ink2, stroke::kRule, 10);
}

void Pen::delta(Delta delta, float x, float baseline, ImU32 colour, float size) {
  const float base = snap(baseline), high = size * 0.9F;
  switch (delta) {
    case Delta::better:
      return polygon(std::array{Point{x, base}, Point{x + size / 2, base - high}, Point{x + size, base}}, colour);
    case Delta::worse: {
      constexpr float kIn = 1;  // half the stroke; the slanting sides need more at the sharp corners
      return polyline(
          std::array{Point{x + 1.7F * kIn, base - high + kIn}, Point{x + size - 1.7F * kIn, base - high + kIn},
                     Point{x + size / 2, base - 1.6F * kIn}},
          colour, stroke::kRule, true);
    }
    case Delta::same:
      return fill({x, base - high / 2 - 1, size, 2.4F}, colour);
  }
}

void Pen::diamond(Point centre, float r, ImU32 colour) {
  polygon(lozenge(centre, r), ground());
  polyline(lozenge(centre, r - 1), colour, stroke::kRule, true);
}

void Pen::origin(Origin origin, Point centre, ImU32 colour, float size) {
  const float half = size / 2;
  switch (origin) {
    case Origin::published:
      return fill({centre.x - half, centre.y - half, size, size}, colour);
    case Origin::practice:
      return polyline(std::array{Point{centre.x - half, centre.y + half}, Point{centre.x, centre.y - half},
                                 Point{centre.x + half, centre.y + half}},
                      colour, stroke::kRule, true);
    case Origin::memory:
      return ring(centre, half, colour, stroke::kRule);
    case Origin::yours:
      return fill({centre.x - half - 1, centre.y - 1.2F, size + 2, 2.4F}, colour);
  }
}

void Pen::icon(Icon icon, float x, float y, float size, ImU32 colour, float stroke_width) {
  const float left = snap(x), top = snap(y), k = size / 24;
  const auto place = [&](float gx, float gy) { return Point{left + gx * k, top + gy * k}; };
  for (const IconStroke& s : strokes(icon)) {
    const auto& v = s.at;
    switch (s.kind) {
      case IconStroke::Kind::line:
      case IconStroke::Kind::closed: {
        std::array<Point, IconStroke::kMost / 2> points;
        for (std::size_t i = 0; i + 1 < s.count; i += 2) points[i / 2] = place(v[i], v[i + 1]);
        polyline(std::span(points).first(s.count / 2U), colour, stroke_width, s.kind == IconStroke::Kind::closed);
        break;
      }
      case IconStroke::Kind::circle:
        ring(place(v[0], v[1]), v[2] * k, colour, stroke_width);
        break;
      case IconStroke::Kind::dashed:
        dashed_ring(place(v[0], v[1]), v[2] * k, colour, stroke_width, 10);
        break;
      case IconStroke::Kind::dot:
        disc(place(v[0], v[1]), std::max(v[2] * k, stroke_width / 2), colour);
        break;
      case IconStroke::Kind::arc:
        arc(place(v[0], v[1]), v[2] * k, v[3], v[4], colour, stroke_width);
        break;
    }
  }
}

void Pen::brand(float x, float y, float size, ImU32 colour) {
  // The drawing of assets/icon/groundsheet.svg without its ground, from 64 to 448 across and from 84 to 434 down.
  const float k = size / 384, left = snap(x), top = snap(y);
  const auto place = [&](float sx, float sy) { return Point{left + (sx - 64) * k, top + (sy - 84) * k}; };
  const std::array sheet{place(88, 380), place(256, 326), place(424, 380), place(256, 434)};
  polygon(sheet, theme_.soil);
  polyline(sheet, colour, 17 * k, true);
  polyline(std::array{place(256, 96), place(256, 376)}, colour, 19 * k);
  polyline(std::array{place(92, 376), place(256, 96), place(420, 376)}, colour, 28 * k);
  for (const float foot : {92.0F, 420.0F}) {
    disc(place(foot, 380), 36 * k, colour);
    disc(place(foot, 380), 15 * k, ground());
  }
}

}  // namespace gs::look
