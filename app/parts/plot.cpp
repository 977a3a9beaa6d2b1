// Draws a plot: tints, lines, curves and marks first, then the words, each where nothing lies under it.
#include "app/parts/plot.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/parts/labels.h"
#include "app/parts/plot_parts.h"
#include "app/parts/ui.h"
#include "core/outing/plan.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
namespace type = look::type;

namespace {

constexpr float kMarkR = 9, kDotR = 5, kReach = 24;  // of the reading cursor, to either side
constexpr float kDistance = 6;                       // from a line to its words

struct Inner {
  Box box;
  const Plot& plot;
  float x(double value) const { return box.x + box.w * float(axis_place(plot.x, value)); }
  float y(double value) const { return box.bottom() - box.h * float(axis_place(plot.y, value)); }
  Point at(PlotPoint p) const { return {x(p.x), y(p.y)}; }
  std::vector<Point> run(const PlotCurve& curve) const {
    std::vector<Point> points;
    for (const PlotPoint p : curve.points) points.push_back(at(p));
    return points;
  }
};

ImU32 tint_of(const look::Theme& theme, Tint tint) {
  return tint == Tint::wood ? theme.wood : tint == Tint::sand ? theme.band : theme.soil;
}

ImU32 colour_of_curve(const look::Theme& theme, CurveKind kind) {
  switch (kind) {
    case CurveKind::live:
    case CurveKind::second:
      return theme.blue;
    case CurveKind::pinned:
      return theme.pin;
    case CurveKind::other:
      return theme.ink2;
  }
  return theme.blue;
}

Sample sample_of(CurveKind kind) {
  switch (kind) {
    case CurveKind::live:
      return Sample::live;
    case CurveKind::second:
      return Sample::second;
    case CurveKind::pinned:
      return Sample::pinned;
    case CurveKind::other:
      return Sample::other;
  }
  return Sample::live;
}

Box band_box(const Inner& in, const PlotBand& band) {
  const auto within = [](float v, float low, float high) { return std::clamp(v, low, high); };
  if (band.upright) {
    const float left = within(in.x(band.from), in.box.x, in.box.right());
    const float right = within(in.x(band.to), in.box.x, in.box.right());
    return {left, in.box.y, std::max(0.0F, right - left), in.box.h};
  }
  const float top = within(in.y(band.to), in.box.y, in.box.bottom());
  const float foot = within(in.y(band.from), in.box.y, in.box.bottom());
  return {in.box.x, top, in.box.w, std::max(0.0F, foot - top)};
}

void draw_bands(Ui& ui, const Inner& in) {
  for (const PlotBand& band : in.plot.bands) {
    const Box box = band_box(in, band);
    ui.pen.fill(box, tint_of(ui.theme, band.tint));
    if (band.tint == Tint::hatched) ui.pen.hatch(box, ui.theme.contour, 9, look::stroke::kHair);
  }
}

/// Under the first curve, in upright strips between its points.
void draw_areas(Ui& ui, const Inner& in) {
  if (in.plot.curves.empty()) return;
  const PlotCurve& curve = in.plot.curves.front();
  for (const PlotArea& area : in.plot.areas) {
    for (std::size_t i = 0; i + 1 < curve.points.size(); ++i) {
      const double from = std::max(curve.points[i].x, area.from), to = std::min(curve.points[i + 1].x, area.to);
      if (!(to > from)) continue;
      const auto y0 = curve_at(curve, from), y1 = curve_at(curve, to);
      if (!y0 || !y1) continue;
      const float top0 = std::clamp(in.y(*y0), in.box.y, in.box.bottom());
      const float top1 = std::clamp(in.y(*y1), in.box.y, in.box.bottom());
      const Point strip[] = {
          {in.x(from), in.box.bottom()}, {in.x(from), top0}, {in.x(to), top1}, {in.x(to), in.box.bottom()}};
      ui.pen.polygon(strip, tint_of(ui.theme, area.tint), false);
    }
    if (area.tint != Tint::hatched) continue;
    // Hatching of one shape under a curve: upright strokes, so that neighbouring strips need no common outline.
    for (float at = std::ceil(in.x(area.from) / 7) * 7; at < in.x(area.to); at += 7)
      if (const auto y = curve_at(curve, axis_value(in.plot.x, double((at - in.box.x) / in.box.w))))
        ui.pen.line({at, in.box.bottom()}, {at, std::max(in.y(*y), in.box.y)}, ui.theme.contour,
                    look::stroke::kHair);
  }
}

void draw_between(Ui& ui, const Inner& in) {
  for (const PlotBetween& between : in.plot.between) {
    const std::vector<Point> low = in.run(in.plot.curves[between.low]), high = in.run(in.plot.curves[between.high]);
    const auto height = [&](float y) { return std::clamp(y, in.box.y, in.box.bottom()); };
    for (std::size_t i = 0; i + 1 < std::min(low.size(), high.size()); ++i) {
      if (!std::isfinite(low[i].y + low[i + 1].y + high[i].y + high[i + 1].y)) continue;
      const Point strip[] = {{low[i].x, height(low[i].y)},
                             {high[i].x, height(high[i].y)},
                             {high[i + 1].x, height(high[i + 1].y)},
                             {low[i + 1].x, height(low[i + 1].y)}};
      ui.pen.polygon(strip, tint_of(ui.theme, between.tint), false);
    }
  }
}

void draw_curve(Ui& ui, const PlotCurve& curve, std::span<const Point> whole) {
  const ImU32 colour = colour_of_curve(ui.theme, curve.kind);
  for (std::size_t start = 0; start < whole.size();) {
    std::size_t end = start;
    while (end < whole.size() && std::isfinite(whole[end].y)) ++end;
    if (end - start >= 2) {
      const auto run = whole.subspan(start, end - start);
      if (curve.kind == CurveKind::pinned) ui.pen.dashed(run, look::stroke::kPin, colour, look::stroke::kRule);
      if (curve.kind == CurveKind::other) ui.pen.dashed(run, look::stroke::kDash, colour, look::stroke::kLine);
      if (curve.kind == CurveKind::live) ui.pen.polyline(run, colour, look::stroke::kLive);
      if (curve.kind == CurveKind::second) ui.pen.polyline(run, colour, look::stroke::kRule);
    }
    start = end + 1;
  }
}

void draw_lines(Ui& ui, const Inner& in) {
  for (const PlotLine& line : in.plot.lines) {
    const Point a = line.upright ? Point{in.x(line.at), in.box.y} : Point{in.box.x, in.y(line.at)};
    const Point b = line.upright ? Point{in.x(line.at), in.box.bottom()} : Point{in.box.right(), in.y(line.at)};
    if (!std::isfinite(a.x) || !std::isfinite(a.y)) continue;
    const Point run[] = {a, b};
    if (line.kind == PlotLine::Kind::limit) {
      ui.pen.line(a, b, ui.theme.fails, look::stroke::kRule);
    } else {
      ui.pen.dashed(run, look::stroke::kNeed, ui.theme.ink, look::stroke::kRule);
    }
  }
}

void draw_marks(Ui& ui, const Inner& in) {
  for (const PlotMark& mark : in.plot.marks) {
    const Point at = in.at({mark.x, mark.y});
    if (mark.state != State::none) {
      ui.pen.sign(sign_of(mark.state), at, kMarkR);
    } else {
      ui.pen.disc(at, kMarkR, ui.theme.blue);
      ui.pen.disc(at, kMarkR - 4, ui.theme.paper);
    }
  }
  for (const PlotDot& dot : in.plot.dots) {
    ui.pen.disc(in.at({dot.x, dot.y}), kDotR + look::stroke::kRule, ui.theme.paper);
    ui.pen.disc(in.at({dot.x, dot.y}), kDotR, ui.theme.ink);
  }
}

/// Everything that has words, the most telling first; `words` takes what found no room.
void draw_words(Ui& ui, const Inner& in, std::vector<PlotWords>& left_over) {
  LabelRoom room(in.box.grown(-3));
  std::vector<std::vector<Point>> runs;
  for (const PlotCurve& curve : in.plot.curves) {
    runs.push_back(in.run(curve));
    room.block(runs.back(), curve.kind == CurveKind::live ? 4.0F : 3.0F);
  }
  for (const PlotLine& line : in.plot.lines) {
    const Point run[] = {
        line.upright ? Point{in.x(line.at), in.box.y} : Point{in.box.x, in.y(line.at)},
        line.upright ? Point{in.x(line.at), in.box.bottom()} : Point{in.box.right(), in.y(line.at)}};
    room.block(run, 3);
  }
  if (in.plot.cursor) {
    const float at = in.x(in.plot.cursor->at);
    room.block(Box{at, in.box.y, 0, in.box.h}.grown(4));
  }
  for (const PlotMark& mark : in.plot.marks) {
    const Point at = in.at({mark.x, mark.y});
    room.block(Box{at.x, at.y, 0, 0}.grown(kMarkR + 3));
  }
  for (const PlotDot& dot : in.plot.dots) {
    const Point at = in.at({dot.x, dot.y});
    room.block(Box{at.x, at.y, 0, 0}.grown(kDotR + 3));
  }
  const auto say = [&](PlotWords words, const auto& places) {
    const PlotText set = set_words(ui, words, in.box.w);
    const std::vector<Box> candidates = places(set.w, set.h);
    if (const Box* box = room.place(candidates)) {
      draw_set(ui, set, *box, words.colour);
    } else {
      left_over.push_back(std::move(words));
    }
  };
  const auto curve_words = [&](std::size_t i) {
    const PlotCurve& curve = in.plot.curves[i];
    if (curve.label.empty()) return;
    const bool named = curve.kind == CurveKind::live || curve.kind == CurveKind::pinned;
    say({.text = curve.label,
         .colour = colour_of_curve(ui.theme, curve.kind),
         .face = named ? Face::bold : Face::regular,
         .sample = sample_of(curve.kind)},
        [&](float w, float h) { return places_along(runs[i], w, h, kDistance); });
  };
  for (const PlotMark& mark : in.plot.marks) {
    if (mark.text.empty()) continue;
    const ImU32 colour = mark.pinned                 ? ui.theme.pin
                         : mark.state == State::none ? ui.theme.blue
                                                     : colour_of(ui.theme, mark.state);
    say({.text = mark.text,
         .colour = colour,
         .face = Face::bold,
         .sample = mark.state == State::none ? Sample::dot : Sample::state,
         .size = type::kBody,
         .state = mark.state},
        [&](float w, float h) {
          return places_round_about(in.at({mark.x, mark.y}), w, h);
        });
  }
  for (std::size_t i = 0; i < in.plot.curves.size(); ++i)
    if (in.plot.curves[i].kind == CurveKind::live) curve_words(i);
  for (const PlotLine& line : in.plot.lines) {
    if (line.label.empty()) continue;
    const bool limit = line.kind == PlotLine::Kind::limit;
    say({.text = line.label,
         .colour = limit ? ui.theme.fails : ui.theme.ink,
         .face = Face::bold,
         .sample = limit ? Sample::limit : Sample::need},
        [&](float w, float h) {
          return places_at_line(in.box, line.upright, line.upright ? in.x(line.at) : in.y(line.at), w, h,
                                kDistance);
        });
  }
  for (std::size_t i = 0; i < in.plot.curves.size(); ++i)
    if (in.plot.curves[i].kind != CurveKind::live) curve_words(i);
  for (const PlotDot& dot : in.plot.dots)
    if (!dot.label.empty())
      say({.text = dot.label, .colour = ui.theme.ink, .face = Face::regular, .sample = Sample::dot},
          [&](float w, float h) {
            return places_round_about(in.at({dot.x, dot.y}), w, h);
          });
  for (const PlotBand& band : in.plot.bands)
    if (!band.name.empty())
      say({.text = band.name,
           .colour = ui.theme.contour,
           .face = Face::italic,
           .sample = Sample::tint,
           .tint = tint_of(ui.theme, band.tint)},
          [&](float w, float h) { return places_in(band_box(in, band), w, h, false); });
  for (const PlotBetween& between : in.plot.between)
    if (!between.name.empty())
      say({.text = between.name,
           .colour = ui.theme.contour,
           .face = Face::italic,
           .sample = Sample::tint,
           .tint = tint_of(ui.theme, between.tint)},
          [&](float w, float h) { return places_along(runs[between.high], w, h, kDistance); });
  for (const PlotArea& area : in.plot.areas) {
    if (area.name.empty()) continue;
    const float left = std::max(in.x(area.from), in.box.x), right = std::min(in.x(area.to), in.box.right());
    say({.text = area.name,
         .colour = ui.theme.contour,
         .face = Face::italic,
         .sample = Sample::tint,
         .tint = tint_of(ui.theme, area.tint)},
        [&](float w, float h) {
          return places_in({left, in.box.y, right - left, in.box.h}, w, h, true);
        });
  }
}

/// The line that is read along; returns where a hand or a key wants it.
std::optional<double> draw_cursor(Ui& ui, const Inner& in) {
  const PlotCursor& cursor = *in.plot.cursor;
  const float at = std::clamp(in.x(cursor.at), in.box.x, in.box.right());
  ui.pen.line({at, in.box.y}, {at, in.box.bottom()}, ui.theme.ink, look::stroke::kRule);
  ui.pen.disc({at, in.box.bottom()}, 9, ui.theme.ink);
  ui.pen.disc({at, in.box.bottom()}, 3.5F, ui.theme.paper);
  mirror::Node record;
  record.role = mirror::Role::slider;
  record.id = cursor.id;
  record.name = cursor.name;
  record.value = cursor.spoken;
  record.now = cursor.at;
  record.least = in.plot.x.least;
  record.most = in.plot.x.most;
  record.step = cursor.step;
  ui.target(std::move(record), in.box, 4, Target::Kind::slide, {at - kReach, in.box.y, 2 * kReach, in.box.h + 12});
  std::optional<double> wanted;
  if (const Drag* drag = ui.hand.drag(cursor.id)) {
    if (!std::exchange(ui.hand.scratch.begun, true)) ui.hand.scratch.grip = drag->on_thumb ? at - drag->from_x : 0;
    wanted = axis_value(in.plot.x, double((drag->x + ui.hand.scratch.grip - in.box.x) / in.box.w));
  }
  if (const auto set = ui.asked.set.find(cursor.id); set != ui.asked.set.end()) wanted = set->second;
  if (const auto steps = ui.asked.steps.find(cursor.id); steps != ui.asked.steps.end())
    wanted = cursor.at + steps->second * cursor.step;
  if (wanted) wanted = std::clamp(std::round(*wanted / cursor.step) * cursor.step, in.plot.x.least, in.plot.x.most);
  return wanted && *wanted != cursor.at ? wanted : std::nullopt;
}

}  // namespace

std::optional<double> Ui::plot(const Plot& plot, float height) {
  const Box whole = take(height);
  const PlotFrame frame = draw_axes_under(*this, plot, whole);
  const Inner in{frame.inner, plot};
  node(mirror::Role::image, plot.id, plot.name, whole).value = plot.sentence;
  plot_table(*this, plot, whole);
  draw_bands(*this, in);
  pen.push_clip(in.box);
  draw_areas(*this, in);
  draw_between(*this, in);
  draw_grid(*this, plot, frame);
  draw_lines(*this, in);
  for (const CurveKind kind : {CurveKind::other, CurveKind::second, CurveKind::pinned, CurveKind::live})
    for (const PlotCurve& curve : plot.curves)
      if (curve.kind == kind) draw_curve(*this, curve, in.run(curve));
  pen.pop_clip();
  draw_axes_over(*this, plot, frame);
  draw_marks(*this, in);
  std::vector<PlotWords> left_over;
  draw_words(*this, in, left_over);
  draw_left_over(*this, left_over);
  if (!plot.cursor) return std::nullopt;
  const std::optional<double> moved = draw_cursor(*this, in);
  if (moved) wake_at(now_s);
  return moved;
}

}  // namespace gs::parts
