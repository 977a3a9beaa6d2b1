#include <algorithm>
#include <array>

#include "app/look/pen.h"

namespace gs::look {
namespace {

// A tally mark's measures as shares of its height.
constexpr float kTallyStep = 0.3F, kTallyGroup = 0.55F, kTallyThick = 0.1F, kTallyDot = 0.045F, kTallyOver = 0.2F;

/// Where stroke i stands, in shares of the height; the fifth of a group lies across it.
float tally_x(int i) {
  return float(i / 5) * (3 * kTallyStep + kTallyGroup) + float(std::min(i % 5, 3)) * kTallyStep;
}

/// Where the j-th dot after `count` strokes stands.
float dot_x(int count, int j) {
  if (count == 0) return float(j) * kTallyStep;
  return tally_x(count - 1) + (count % 5 == 0 ? kTallyGroup : kTallyStep) + float(j) * kTallyStep;
}

}  // namespace

void Pen::scale_track(Box bar, std::span<const float> ends, ImU32 colour) {
  constexpr float kThinnest = 2;
  float from = bar.x;
  bool filled = true;
  const auto segment = [&](float to) {
    if (to - from < kThinnest) return;
    if (filled) fill({from, bar.y, to - from, bar.h}, colour);
    filled = !filled;
    from = to;
  };
  for (const float end : ends) segment(std::min(end, bar.right()));
  segment(bar.right());
  outline(bar, colour, stroke::kOutline);
}

void Pen::scale_bar(float x, float y, float segment_w, int segments, ImU32 colour) {
  constexpr float kHigh = 9;
  for (int i = 0; i < segments; i += 2) fill({x + float(i) * segment_w, y, segment_w, kHigh}, colour);
  outline({x, y, segment_w * float(segments), kHigh}, colour, stroke::kOutline);
}

void Pen::thumb(Point centre, bool dragged, bool pressed) {
  const float r = dragged ? slider::kThumbDragged : slider::kThumb;
  disc(centre, r + sign::kHalo, ground());
  disc(centre, r, theme_.ink);
  if (dragged) return disc(centre, 0.35F * r, ground());
  disc(centre, r - stroke::kThumbRing, pressed ? theme_.fold : ground());
  disc(centre, 4.2F, theme_.ink);
}

void Pen::pennant(float x, float foot, float height, ImU32 colour, bool to_left) {
  const float pole = snap(x), top = foot - height, fly = to_left ? -slider::kPennantW : slider::kPennantW;
  line({pole, foot}, {pole, top}, colour, stroke::kRule);
  polygon(std::array{Point{pole, top}, Point{pole + fly, top + slider::kPennantH / 2},
                     Point{pole, top + slider::kPennantH}},
          colour);
}

void Pen::now_mark(float x, float top, float foot, ImU32 colour) {
  constexpr float kHalf = 8, kHigh = 12;
  line({x, top}, {x, foot}, colour, stroke::kStrong);
  polygon(std::array{Point{x - kHalf, top}, Point{x + kHalf, top}, Point{x, top + kHigh}}, colour);
}

void Pen::dumbbell(float x0, float x1, float y, float now_x, float then_x, ImU32 colour) {
  constexpr float kNow = 6, kThen = 7;
  line({x0, y}, {x1, y}, theme_.rule, stroke::kRule);
  line({now_x, y}, {then_x, y}, colour, 4);
  disc({then_x, y}, kThen, colour);
  disc({now_x, y}, kNow, theme_.ink);
  disc({now_x, y}, kNow - stroke::kRule, ground());
}

float Pen::tally_width(float height, int count, int wanted) {
  if (count + wanted <= 0) return 0;
  const float last = wanted > 0 ? dot_x(count, wanted - 1) : tally_x(count - 1);
  return (last + kTallyThick + 2 * kTallyOver) * height;
}

float Pen::tally(float x, float y, float height, int count, int wanted, ImU32 colour, ImU32 dots) {
  const float thick = kTallyThick * height, left = x + thick / 2 + kTallyOver * height;
  const float top = y + thick / 2, foot = y + height - thick / 2;
  for (int i = 0; i < count; ++i) {
    const float at_x = left + tally_x(i) * height;
    if (i % 5 == 4) {
      const float first = left + tally_x(i - 4) * height, over = kTallyOver * height;
      polyline(std::array{Point{first - over, foot}, Point{at_x + over, top}}, colour, thick);
    } else {
      polyline(std::array{Point{at_x, top}, Point{at_x, foot}}, colour, thick);
    }
  }
  for (int j = 0; j < wanted; ++j)
    disc({left + dot_x(count, j) * height, foot}, std::max(kTallyDot * height, 2.0F), dots);
  return tally_width(height, count, wanted);
}

}  // namespace gs::look
