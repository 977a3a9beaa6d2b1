// Axes, numbers and words of a plot, and what a screen reader gets of it.
#include <algorithm>
#include <cmath>

#include "app/parts/plot_parts.h"
#include "core/outing/plan.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
using mirror::Role;
namespace type = look::type;

namespace {

constexpr float kTickLong = 8, kTickShort = 4, kTitle = 22, kTitleTop = 32, kNumbers = 26;
constexpr float kPatch = 3;  // paper beyond a word that stands on a tint

/// Durations say their unit themselves: "2 h 30", "45 min".
bool says_unit(Unit unit) { return unit == Unit::hour || unit == Unit::minute || unit == Unit::clock_minute; }

std::string number_text(const PlotAxis& axis, double value, const Style& style) {
  if (says_unit(axis.unit))
    return value == 0 && axis.unit != Unit::clock_minute ? "0" : say_quantity(value, axis.unit, 0, style);
  return print_quantity(value, axis.unit, digits_needed(value, 3), style).number;
}

std::string axis_title(const PlotAxis& axis, const Style& style) {
  const std::string unit =
      says_unit(axis.unit) ? std::string{} : print_quantity(axis.least, axis.unit, 0, style).unit;
  if (axis.title.empty()) return unit;
  return unit.empty() ? axis.title : axis.title + ", " + unit;
}

void draw_sample(Ui& ui, const PlotWords& one, Point a, Point b) {
  const Point run[] = {a, b}, middle{(a.x + b.x) / 2, a.y};
  switch (one.sample) {
    case Sample::live:
      return ui.pen.line(a, b, one.colour, look::stroke::kLive);
    case Sample::second:
    case Sample::limit:
      return ui.pen.line(a, b, one.colour, look::stroke::kRule);
    case Sample::pinned:
      return ui.pen.dashed(run, look::stroke::kPin, one.colour, look::stroke::kRule);
    case Sample::other:
      return ui.pen.dashed(run, look::stroke::kDash, one.colour, look::stroke::kLine);
    case Sample::need:
      return ui.pen.dashed(run, look::stroke::kNeed, one.colour, look::stroke::kRule);
    case Sample::dot:
      return ui.pen.disc(middle, 5, one.colour);
    case Sample::length:
      ui.pen.line(a, b, one.colour, look::stroke::kLine);
      for (const Point end : run)
        ui.pen.line({end.x, end.y - 5}, {end.x, end.y + 5}, one.colour, look::stroke::kLine);
      return;
    case Sample::tint:
      ui.pen.fill({a.x, a.y - 8, b.x - a.x, 16}, one.tint);
      return ui.pen.outline({a.x, a.y - 8, b.x - a.x, 16}, ui.theme.ink2, look::stroke::kHair);
    case Sample::state:
      return ui.pen.sign(sign_of(one.state), middle, look::sign::kList);
  }
}

float half_width(const Ui& ui, const std::string& text) {
  return ui.pen.width(text, Face::regular, type::kTick) / 2;
}

}  // namespace

PlotFrame draw_axes_under(Ui& ui, const Plot& plot, Box whole) {
  const Style& style = ui.session.style();
  const auto fits_x = std::max<std::size_t>(2, std::min<std::size_t>(4, std::size_t(whole.w / 72)));
  PlotFrame frame{{}, axis_marks(plot.x, fits_x), axis_marks(plot.y, whole.h < 150 ? 3 : 4)};
  float gutter = 0;
  for (const double y : frame.y_marks) gutter = std::max(gutter, 2 * half_width(ui, number_text(plot.y, y, style)));
  const bool y_title = !axis_title(plot.y, style).empty();
  const bool x_title = !axis_title(plot.x, style).empty();
  const float top = whole.y + (y_title ? kTitleTop : 8), foot = kNumbers + (x_title ? kTitle : 0);
  frame.inner = {whole.x + gutter + 8, top, whole.w - gutter - 8 - 6, std::max(24.0F, whole.bottom() - foot - top)};
  if (y_title) {
    const std::string text = axis_title(plot.y, style);
    ui.pen.text(whole.x, whole.y + type::kTick, ui.pen.elided(text, whole.w, Face::italic, type::kTick),
                Face::italic, type::kTick, ui.theme.contour);
  }
  if (x_title) {
    const std::string text = axis_title(plot.x, style);
    ui.pen.text(whole.right() - 6, frame.inner.bottom() + kNumbers + type::kTick,
                ui.pen.elided(text, whole.w, Face::italic, type::kTick), Face::italic, type::kTick,
                ui.theme.contour, look::Align::right);
  }
  return frame;
}

void draw_grid(Ui& ui, const Plot& plot, const PlotFrame& frame) {
  for (const double y : frame.y_marks) {
    const float at = frame.inner.bottom() - frame.inner.h * float(axis_place(plot.y, y));
    ui.pen.line({frame.inner.x, at}, {frame.inner.right(), at}, ui.theme.rule, look::stroke::kHair);
  }
}

void draw_axes_over(Ui& ui, const Plot& plot, const PlotFrame& frame) {
  const Style& style = ui.session.style();
  const Box& in = frame.inner;
  const ImU32 ink = ui.theme.ink, ink2 = ui.theme.ink2;
  ui.pen.line({in.x, in.bottom()}, {in.right(), in.bottom()}, ink, look::stroke::kRule);
  float taken = -1e9F;
  for (const double x : frame.x_marks) {
    const float at = in.x + in.w * float(axis_place(plot.x, x));
    ui.pen.line({at, in.bottom()}, {at, in.bottom() + kTickLong}, ink, look::stroke::kLine);
    const std::string text = number_text(plot.x, x, style);
    const float half = half_width(ui, text);
    const float left = std::clamp(at - half, in.x - 8, in.right() + 6 - 2 * half);
    if (left < taken + 8) continue;  // rather one number less than two that touch
    ui.pen.text(left, in.bottom() + kNumbers - 2, text, Face::regular, type::kTick, ink2);
    taken = left + 2 * half;
  }
  for (const double y : frame.y_marks) {
    const float at = in.bottom() - in.h * float(axis_place(plot.y, y));
    ui.pen.text(in.x - 8, look::Pen::centred(at, type::kTick), number_text(plot.y, y, style), Face::regular,
                type::kTick, ink2, look::Align::right);
  }
  if (frame.x_marks.size() < 2 || plot.x.log) return;
  // half way between two numbers a short stroke, as on a ruler
  const double step = frame.x_marks[1] - frame.x_marks[0];
  for (double x = frame.x_marks[0] - step / 2; x <= plot.x.most; x += step) {
    if (x < plot.x.least) continue;
    const float at = in.x + in.w * float(axis_place(plot.x, x));
    ui.pen.line({at, in.bottom()}, {at, in.bottom() + kTickShort}, ink, look::stroke::kHair);
  }
}

PlotText set_words(const Ui& ui, const PlotWords& words, float room) {
  PlotText set{{}, words.face, words.size, 0, 0};
  const float most = std::max(96.0F, room * 0.55F);
  for (const std::string_view line : ui.pen.lines(words.text, most, words.face, words.size)) {
    set.lines.emplace_back(line);
    set.w = std::max(set.w, ui.pen.width(line, words.face, words.size));
  }
  set.h = float(set.lines.size()) * type::line_height(words.size);
  return set;
}

void draw_set(Ui& ui, const PlotText& set, Box box, ImU32 colour) {
  ui.pen.fill({box.x - kPatch, box.y, box.w + 2 * kPatch, box.h}, ui.theme.veil, kPatch);
  const look::Ground ground(ui.pen, ui.theme.veil);
  float middle = box.y + type::line_height(set.size) / 2;
  for (const std::string& line : set.lines) {
    ui.pen.text(box.x, look::Pen::centred(middle, set.size), line, set.face, set.size, colour);
    middle += type::line_height(set.size);
  }
}

void draw_left_over(Ui& ui, const std::vector<PlotWords>& words) {
  constexpr float kSample = 30;
  for (const PlotWords& one : words) {
    const std::vector<std::string_view> lines = ui.pen.lines(one.text, ui.w - kSample - 10, one.face, type::kTick);
    const Box box = ui.take(std::max(24.0F, float(lines.size()) * type::line_height(type::kTick)));
    draw_sample(ui, one, {box.x, box.y + 12}, {box.x + kSample, box.y + 12});
    float base = look::Pen::centred(box.y + 12, type::kTick);
    for (const std::string_view line : lines) {
      ui.pen.text(box.x + kSample + 10, base, line, one.face, type::kTick, one.colour);
      base += type::line_height(type::kTick);
    }
  }
}

std::vector<Box> places_at_line(Box inner, bool upright, float at, float w, float h, float distance) {
  std::vector<Box> places;
  constexpr int kPlaces = 8;
  for (int i = 0; i <= kPlaces; ++i) {
    const float share = float(i) / kPlaces;
    if (upright) {
      const float top = inner.y + 3 + (inner.h - h - 6) * share;
      places.push_back({at - distance - w, top, w, h});
      places.push_back({at + distance, top, w, h});
    } else {
      const float left = inner.x + 6 + (inner.w - w - 12) * share;
      places.push_back({left, at + distance, w, h});
      places.push_back({left, at - distance - h, w, h});
    }
  }
  return places;
}

std::vector<Box> places_in(Box band, float w, float h, bool low) {
  std::vector<Box> places;
  if (w + 8 > band.w || h + 4 > band.h) return places;
  constexpr int kPlaces = 8;
  const float lefts[] = {band.mid_x() - w / 2, band.x + 5, band.right() - w - 5};
  for (int i = 0; i <= kPlaces; ++i)
    for (const float left : lefts)
      places.push_back({left, band.y + 4 + (band.h - h - 8) * float(low ? kPlaces - i : i) / kPlaces, w, h});
  return places;
}

void plot_table(Ui& ui, const Plot& plot, Box box) {
  constexpr std::size_t kMostRows = 8;
  if (plot.curves.empty()) return;
  std::vector<double> at = axis_marks(plot.x, 5);
  for (const PlotMark& mark : plot.marks) at.push_back(mark.x);
  std::sort(at.begin(), at.end());
  at.erase(std::unique(at.begin(), at.end()), at.end());
  if (at.size() > kMostRows) at.resize(kMostRows);
  const std::string id = plot.id + ":table";
  const float row_h = box.h / float(at.size() + 1);
  const Style& style = ui.session.style();
  const auto spoken = [&](const PlotAxis& axis, double value) {
    return speak_quantity(value, axis.unit, axis.digits, style);
  };
  ui.open_group(Role::table, id, plot.name + ", points", box);
  const auto row = [&](const std::string& key, float top, const std::vector<std::string>& cells, Role role) {
    const Box line{box.x, top, box.w, row_h};
    ui.open_group(Role::row, id + ":" + key, {}, line);
    const float cell_w = box.w / float(cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i)
      ui.node(role, id + ":" + key + ":" + std::to_string(i), cells[i],
              {box.x + cell_w * float(i), top, cell_w, row_h});
    ui.close_group();
  };
  std::vector<std::string> names{plot.x.title.empty() ? "At" : plot.x.title};
  for (const PlotCurve& curve : plot.curves) names.push_back(curve.label.empty() ? plot.name : curve.label);
  row("head", box.y, names, Role::columnheader);
  for (std::size_t i = 0; i < at.size(); ++i) {
    std::vector<std::string> cells{spoken(plot.x, at[i])};
    for (const PlotCurve& curve : plot.curves) {
      const auto y = curve_at(curve, at[i], plot.x.log, plot.y.log);
      cells.push_back(y ? spoken(plot.y, *y) : "none");
    }
    row(std::to_string(i), box.y + row_h * float(i + 1), cells, Role::cell);
  }
  ui.close_group();
}

}  // namespace gs::parts
