// Draws a scene in metres: ground, zones, things, lines, then lengths and words where nothing lies under them, then
// the handles.
#include "app/parts/to_scale.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <tuple>
#include <utility>

#include "app/parts/labels.h"
#include "app/parts/scale.h"
#include "app/parts/to_scale_parts.h"
#include "app/parts/ui.h"
#include "core/outing/lever_range.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
namespace type = look::type;

namespace {

constexpr float kGround = 26;  // soil shown under a side view
constexpr float kBarTop = 34;  // scale bar with its numbers
constexpr std::array<float, 2> kDotted{2, 5}, kPathDash{12, 7};

ImU32 colour_of_ink(const look::Theme& theme, Ink ink) {
  switch (ink) {
    case Ink::wire:
    case Ink::carried:
      return theme.blue;
    case Ink::rope:
    case Ink::path:
      return theme.contour;
    case Ink::pinned:
      return theme.pin;
    case Ink::feed:
    case Ink::outline:
      return theme.ink;
  }
  return theme.ink;
}

std::vector<Point> run_of(const Fit& fit, const SceneLine& line) {
  std::vector<Point> run;
  for (const Metres m : line.points) run.push_back(fit.at(m));
  return run;
}

void draw_line(Ui& ui, const SceneLine& line, std::span<const Point> run) {
  const ImU32 colour = colour_of_ink(ui.theme, line.ink);
  switch (line.ink) {
    case Ink::wire:
      return ui.pen.polyline(run, colour, look::stroke::kChainOverview);
    case Ink::carried:
    case Ink::feed:
      return ui.pen.polyline(run, colour, look::stroke::kRule);
    case Ink::outline:
      return ui.pen.polyline(run, colour, look::stroke::kLine);
    case Ink::rope:
      return ui.pen.dashed(run, look::stroke::kDash, colour, look::stroke::kLine);
    case Ink::pinned:
      return ui.pen.dashed(run, look::stroke::kPin, colour, look::stroke::kRule);
    case Ink::path:
      return ui.pen.dashed(run, kPathDash, colour, look::stroke::kLine);
  }
}

void draw_ground(Ui& ui, const Scene& scene, Box whole, const Fit& fit) {
  if (!scene.plan) {
    const Box soil{whole.x, fit.origin.y, whole.w, kGround};
    ui.pen.fill(soil, ui.theme.soil);
    for (float at = whole.x + 8; at < whole.right(); at += 9)
      ui.pen.line({at, soil.y + 1}, {at - 5, soil.y + 7}, ui.theme.contour, look::stroke::kHair);
    ui.pen.line({whole.x, soil.y}, {whole.right(), soil.y}, ui.theme.ink, look::stroke::kRule);
    return;
  }
  ui.pen.fill(whole, ui.theme.relief[1], look::radius::kPanel);
  const double step_m = scale_bar_m(fit.px_per_m, 90);  // a cross every so many metres, as on a map
  const Metres first = fit.back({whole.x, whole.bottom()}), last = fit.back({whole.right(), whole.y});
  for (double x = std::ceil(first.x / step_m) * step_m; x < last.x; x += step_m)
    for (double y = std::ceil(first.y / step_m) * step_m; y < last.y; y += step_m) {
      const Point at = fit.at({x, y});
      ui.pen.line({at.x - 4, at.y}, {at.x + 4, at.y}, ui.theme.rule, look::stroke::kLine);
      ui.pen.line({at.x, at.y - 4}, {at.x, at.y + 4}, ui.theme.rule, look::stroke::kLine);
    }
}

/// Returns its outline, closed.
std::vector<Point> draw_zone(Ui& ui, const Fit& fit, const SceneZone& zone) {
  const std::vector<Point> around =
      around_line(fit.at(zone.a), fit.at(zone.b), float(zone.radius_m * fit.px_per_m));
  std::vector<Point> closed = around;
  closed.push_back(around.front());
  switch (zone.kind) {
    case SceneZone::Kind::reach:
      ui.pen.polygon(around, ui.theme.veil);
      hatch_capsule(ui, fit.at(zone.a), fit.at(zone.b), float(zone.radius_m * fit.px_per_m));
      ui.pen.polyline(around, ui.theme.fails, look::stroke::kStrong, true);
      break;
    case SceneZone::Kind::overhead:
      ui.pen.dashed(closed, look::stroke::kDash, ui.theme.fails, look::stroke::kLine);
      break;
    case SceneZone::Kind::pinned:
      ui.pen.dashed(closed, look::stroke::kPin, ui.theme.pin, look::stroke::kRule);
      break;
    case SceneZone::Kind::owed:
      ui.pen.dashed(closed, kDotted, ui.theme.contour, look::stroke::kLine);
      break;
  }
  return closed;
}

/// The length line with its ends; returns where it runs.
std::array<Point, 2> draw_dimension(Ui& ui, const Fit& fit, const SceneDimension& dimension) {
  Point a = fit.at(dimension.a), b = fit.at(dimension.b);
  const float length = std::max(std::hypot(b.x - a.x, b.y - a.y), 1e-3F);
  const Point side{-(b.y - a.y) / length, (b.x - a.x) / length};  // to the right of the way, as y is down
  a = {a.x + side.x * dimension.away_px, a.y + side.y * dimension.away_px};
  b = {b.x + side.x * dimension.away_px, b.y + side.y * dimension.away_px};
  ui.pen.line(a, b, ui.theme.contour, look::stroke::kLine);
  for (const Point end : {a, b})
    ui.pen.line({end.x - side.x * 5, end.y - side.y * 5}, {end.x + side.x * 5, end.y + side.y * 5},
                ui.theme.contour, look::stroke::kLine);
  return {a, b};
}

void draw_bar(Ui& ui, const Fit& fit, Point at, float most_px) {
  const double bar_m = scale_bar_m(fit.px_per_m, most_px);
  const bool twos = std::abs(bar_m / std::pow(10, std::floor(std::log10(bar_m) + 1e-9)) - 2) < 0.01;
  const int segments = twos ? 4 : 5;
  const float length = float(bar_m * fit.px_per_m);
  ui.pen.scale_bar(at.x, at.y, length / float(segments), segments, ui.theme.ink);
  const look::Ground ground(ui.pen, ui.theme.veil);
  const std::string text = say_quantity(bar_m, Unit::metre, bar_m < 1 ? 1 : 0, ui.session.style());
  for (const auto& [words, bar_x, align] : {std::tuple{std::string("0"), at.x, look::Align::left},
                                            std::tuple{text, at.x + length, look::Align::centre}}) {
    const float width = ui.pen.width(words, Face::regular, type::kTick);
    const float left = align == look::Align::left ? bar_x : bar_x - width / 2;
    if (align == look::Align::left && length - ui.pen.width(text, Face::regular, type::kTick) / 2 < width + 6)
      continue;  // a bar so short is told by its length
    ui.pen.fill({left - 2, at.y + 11, width + 4, 18}, ui.theme.veil, 2);
    ui.pen.text(left, at.y + 25, words, Face::regular, type::kTick, ui.theme.ink2);
  }
}

/// A handle that a hand drags and a key steps; the lever takes what it says.
void draw_handle(Ui& ui, const Scene& scene, const SceneHandle& handle, const Fit& fit) {
  const Lever& row = lever(handle.lever);
  const Plan& plan = ui.session.plan();
  if (!plan.has(handle.lever)) return;
  const std::string id = scene.id + ":" + std::string(row.key);
  const Point at = fit.at(handle.at);
  const Drag* drag = ui.hand.drag(id);
  ui.pen.thumb(at, drag && !drag->ended);
  const Box box{at.x - 28, at.y - 28, 56, 56};
  const double most = most_of(plan, handle.lever);
  mirror::Node record;
  record.role = mirror::Role::slider;
  record.id = id;
  record.name = std::string(row.name) + ", on the drawing";
  record.value = value_spoken(plan, handle.lever, ui.session.style());
  record.now = plan[handle.lever];
  record.least = row.least;
  record.most = most;
  record.step = row.step;
  ui.target(std::move(record), box, 28, Target::Kind::slide, box);
  std::optional<double> wanted;
  int gesture = 0;
  if (drag) {
    Scratch& press = ui.hand.scratch;
    const float along = handle.upright ? drag->y : drag->x;
    if (!std::exchange(press.begun, true)) press.grip = (handle.upright ? at.y : at.x) - along;
    const Metres to = fit.back({drag->x + press.grip, drag->y + press.grip});
    wanted = snapped(row, most, ((handle.upright ? to.y : to.x) - handle.from_m) * handle.per_m, false);
    gesture = drag->gesture;
  }
  if (const auto set = ui.asked.set.find(id); set != ui.asked.set.end())
    wanted = std::clamp(set->second, row.least, most);
  if (const auto steps = ui.asked.steps.find(id); steps != ui.asked.steps.end())
    wanted = snapped(row, most, plan[handle.lever] + steps->second * step_at(row, plan[handle.lever]), false);
  if (wanted && *wanted != plan[handle.lever]) {
    ui.session.set(handle.lever, *wanted, gesture);
    ui.wake_at(ui.now_s);
  }
}

bool dragged(Ui& ui, const Scene& scene) {
  return std::any_of(scene.handles.begin(), scene.handles.end(), [&](const SceneHandle& handle) {
    return ui.hand.drag(scene.id + ":" + std::string(lever(handle.lever).key)) != nullptr;
  });
}

}  // namespace

void Ui::to_scale(const Scene& scene, float height) {
  float below = 0;  // room for lengths that lie under the ground
  for (const SceneDimension& dimension : scene.dimensions)
    if (!scene.plan && dimension.a.y <= 0 && dimension.b.y <= 0)
      below = std::max(below, std::abs(dimension.away_px) - kGround + 24);
  const auto inner_of = [&](Box box) {
    return scene.plan ? box.grown(-18)
                      : Box{box.x + 14, box.y + kBarTop, box.w - 28, box.h - kBarTop - kGround - below};
  };
  // Where the width decides the scale, the drawing takes no more height than it needs. While a handle is dragged,
  // scale and height stay as they are, so that the drawing does not swim under the finger.
  const bool drag = dragged(*this, scene), held = drag && hand.scratch.px_per_m > 0;
  const Extent extent = extent_of(scene);
  const Box most = inner_of({x, y, w, height});
  const float needed =
      float((extent.top - extent.bottom) * fit_into(extent, most, !scene.plan).px_per_m) + (height - most.h) + 8;
  const Box whole = take(held ? hand.scratch.height : std::clamp(needed, std::min(150.0F, height), height));
  const Fit fit =
      held ? Fit{hand.scratch.px_per_m, hand.scratch.origin} : fit_into(extent, inner_of(whole), !scene.plan);
  if (drag && !held) {
    hand.scratch.px_per_m = fit.px_per_m;
    hand.scratch.origin = fit.origin;
    hand.scratch.height = whole.h;
  }
  node(mirror::Role::image, scene.id, scene.name, whole).value = scene.sentence;
  pen.push_clip(whole);
  draw_ground(*this, scene, whole, fit);
  LabelRoom room(whole.grown(-2));
  const Box bar_box{whole.x + 8, scene.plan ? whole.bottom() - 36 : whole.y + 2, std::min(190.0F, whole.w * 0.45F),
                    30};
  room.block(bar_box.grown(4));
  for (const SceneThing& thing : scene.things)
    if (thing.kind == SceneThing::Kind::tree) draw_thing(*this, scene, thing, fit, room);
  for (const SceneZone& zone : scene.zones) {
    const std::vector<Point> around = draw_zone(*this, fit, zone);
    room.block(around, 3);
  }
  for (const SceneLine& line : scene.lines) {
    const std::vector<Point> run = run_of(fit, line);
    draw_line(*this, line, run);
    room.block(run, line.ink == Ink::wire ? 4.0F : 3.0F);
  }
  for (const SceneThing& thing : scene.things)
    if (thing.kind != SceneThing::Kind::tree) draw_thing(*this, scene, thing, fit, room);
  std::vector<std::array<Point, 2>> lengths;
  for (const SceneDimension& dimension : scene.dimensions) {
    lengths.push_back(draw_dimension(*this, fit, dimension));
    room.block(lengths.back(), 2);
  }
  for (const SceneHandle& handle : scene.handles) {
    const Point at = fit.at(handle.at);
    room.block(Box{at.x - 24, at.y - 24, 48, 48});
  }
  draw_bar(*this, fit, {bar_box.x, bar_box.y + 2}, bar_box.w - 30);
  if (scene.plan && scene.north) draw_north(*this, {whole.right() - 26, whole.y + 40}, room);
  const std::vector<PlotWords> left_over = scene_words(*this, scene, fit, lengths, whole, room);
  pen.pop_clip();
  draw_left_over(*this, left_over);
  for (const SceneHandle& handle : scene.handles) draw_handle(*this, scene, handle, fit);
}

}  // namespace gs::parts
