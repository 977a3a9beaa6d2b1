// People, trees, stakes and words of a drawing to scale.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "app/look/cuts.h"
#include "app/parts/plot_parts.h"
#include "app/parts/to_scale_parts.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
namespace type = look::type;

namespace {

constexpr float kPi = std::numbers::pi_v<float>;
constexpr float kLeastFigure =
    22;  // px; a person smaller than this is drawn this large in a plan, never in a side view

/// Seen from the side: head, body, arms, legs, at this height in px. Children hold their arms up.
void draw_person(Ui& ui, Point feet, float h, bool child) {
  const auto at = [&](float x, float y) { return Point{feet.x + x * h, feet.y - y * h}; };
  const ImU32 ink = ui.theme.ink;
  const float thick = std::clamp(h * 0.05F, 1.5F, 3.0F);
  const float head = h * (child ? 0.15F : 0.11F);
  const float neck = child ? 0.68F : 0.78F, hip = child ? 0.34F : 0.42F;
  ui.pen.disc({feet.x, feet.y - h + head}, head, ui.pen.ground());
  ui.pen.ring({feet.x, feet.y - h + head}, head - thick / 2, ink, thick);
  const Point body[] = {at(0, neck), at(0, hip)}, legs[] = {at(-0.17F, 0), at(0, hip), at(0.17F, 0)};
  ui.pen.polyline(body, ink, thick);
  ui.pen.polyline(legs, ink, thick);
  const float hands = child ? neck + 0.04F : neck - 0.12F;
  const Point arms[] = {at(-0.26F, hands), at(0, neck - 0.1F), at(0.26F, hands)};
  ui.pen.polyline(arms, ink, thick);
}

/// A hair line from words that stand off to the nearest point of what they name.
void lead(Ui& ui, Box words, std::span<const Point> outline, ImU32 colour) {
  constexpr float kOff = 16;
  float nearest = 1e9F;
  Point from{}, to{};
  for (const Point p : outline) {
    const Point edge{std::clamp(p.x, words.x, words.right()), std::clamp(p.y, words.y, words.bottom())};
    const float distance = std::hypot(edge.x - p.x, edge.y - p.y);
    if (distance >= nearest) continue;
    nearest = distance;
    from = edge;
    to = p;
  }
  if (nearest > kOff && nearest < 1e9F) ui.pen.line(from, to, colour, look::stroke::kHair);
}

/// A crown of overlapping rounds over a trunk.
void draw_tree(Ui& ui, Point foot, float h) {
  const float r = h * 0.19F;
  const Point centre{foot.x, foot.y - h * 0.66F};
  ui.pen.line({foot.x - h * 0.012F - 2, foot.y}, {foot.x - h * 0.008F - 2, centre.y}, ui.theme.contour,
              look::stroke::kStrong);
  ui.pen.line({foot.x + h * 0.012F + 2, foot.y}, {foot.x + h * 0.008F + 2, centre.y}, ui.theme.contour,
              look::stroke::kStrong);
  const Point lobes[] = {{0, -0.8F}, {0.62F, -0.28F}, {0.5F, 0.42F}, {-0.5F, 0.42F}, {-0.62F, -0.28F}, {0, 0.1F}};
  for (const bool outline : {true, false})
    for (const Point lobe : lobes)
      ui.pen.disc({centre.x + lobe.x * r, centre.y + lobe.y * r}, outline ? r + 1.5F : r,
                  outline ? ui.theme.holds : ui.theme.wood);
}

void draw_crown(Ui& ui, Point centre, float r) {
  constexpr int kLobes = 9;
  for (const bool outline : {true, false}) {
    for (int i = 0; i < kLobes; ++i) {
      const float angle = 2 * kPi * float(i) / kLobes;
      const Point at{centre.x + std::cos(angle) * r * 0.7F, centre.y + std::sin(angle) * r * 0.7F};
      ui.pen.disc(at, r * 0.3F + (outline ? 1.2F : 0), outline ? ui.theme.holds : ui.theme.wood);
    }
    if (!outline) ui.pen.disc(centre, r * 0.75F, ui.theme.wood);
  }
  ui.pen.disc(centre, std::max(4.0F, r * 0.09F), ui.theme.contour);
}

void draw_table(Ui& ui, const Scene& scene, Point at, float px_per_m) {
  const float w = std::max(1.4F * px_per_m, 26.0F), h = std::max(0.75F * px_per_m, 14.0F);
  if (scene.plan) {
    const Box top{at.x - w / 2, at.y - w / 4, w, w / 2};
    ui.pen.fill(top, ui.theme.soil, 2);
    return ui.pen.outline(top, ui.theme.ink, look::stroke::kRule, 2);
  }
  ui.pen.line({at.x - w / 2, at.y - h}, {at.x + w / 2, at.y - h}, ui.theme.ink, look::stroke::kStrong);
  ui.pen.line({at.x - w * 0.32F, at.y - h}, {at.x - w * 0.42F, at.y}, ui.theme.ink, look::stroke::kRule);
  ui.pen.line({at.x + w * 0.32F, at.y - h}, {at.x + w * 0.42F, at.y}, ui.theme.ink, look::stroke::kRule);
  const float set_w = std::max(0.45F * px_per_m, 10.0F), set_h = std::max(0.18F * px_per_m, 5.0F);
  ui.pen.fill({at.x - set_w / 2, at.y - h - set_h, set_w, set_h}, ui.theme.ink, 1);
}

}  // namespace

std::vector<Point> around_line(Point a, Point b, float r) {
  const float along = a.x == b.x && a.y == b.y ? 0 : std::atan2(b.y - a.y, b.x - a.x);
  constexpr int kSteps = 24;
  std::vector<Point> around;
  for (const auto& [centre, start] : {std::pair{b, along - kPi / 2}, std::pair{a, along + kPi / 2}})
    for (int i = 0; i <= kSteps; ++i) {
      const float angle = start + kPi * float(i) / kSteps;
      around.push_back({centre.x + std::cos(angle) * r, centre.y + std::sin(angle) * r});
    }
  return around;
}

void hatch_capsule(Ui& ui, Point a, Point b, float r) {
  // Strokes on a grid of the whole sheet, so that neighbouring zones hatch in step.
  const std::vector<Point> around = around_line(a, b, r);
  float low = 1e9F, high = -1e9F;
  for (const Point p : around) {
    low = std::min(low, p.x + p.y);
    high = std::max(high, p.x + p.y);
  }
  constexpr float kGap = 10, kHalf = look::stroke::kLine * std::numbers::sqrt2_v<float> / 2;
  for (float level = std::floor(low / kGap) * kGap; level < high; level += kGap)
    if (const auto stripe = look::cut_stripe(around, level - kHalf, level + kHalf); !stripe.empty())
      ui.pen.polygon(stripe, ui.theme.fails);
}

void draw_thing(Ui& ui, const Scene& scene, const SceneThing& thing, const Fit& fit, LabelRoom& room) {
  using Kind = SceneThing::Kind;
  const Point at = fit.at(thing.at);
  const float scale = float(fit.px_per_m);
  const auto block = [&](float half_w, float up, float down) {
    room.block(Box{at.x - half_w, at.y - up, 2 * half_w, up + down});
  };
  switch (thing.kind) {
    case Kind::person:
    case Kind::child: {
      const bool child = thing.kind == Kind::child;
      float h = float(child ? kChild_m : kPerson_m) * scale;
      // In a plan a figure stands for a person seen from above, so it must only be large enough to be known as one.
      if (scene.plan) h = std::max(h, child ? kLeastFigure : kLeastFigure * 1.4F);
      draw_person(ui, at, h, child);
      return block(h * 0.3F, h, 0);
    }
    case Kind::tree: {
      const float size = float(thing.size_m) * scale;
      if (scene.plan) return draw_crown(ui, at, size / 2);
      draw_tree(ui, at, size);
      return block(size * 0.012F + 5, size * 0.47F, 0);  // the trunk; words may stand on the crown
    }
    case Kind::mast: {
      const float h = float(thing.size_m) * scale;
      ui.pen.line(at, {at.x, at.y - h}, ui.theme.contour, look::stroke::kLive);
      return block(4, h, 0);
    }
    case Kind::stake: {
      const Point peg[] = {{at.x - 4, at.y - 9}, {at.x + 4, at.y - 9}, {at.x, at.y + 5}};
      ui.pen.polygon(peg, ui.theme.ink);
      return block(6, 10, 6);
    }
    case Kind::support:
    case Kind::feed_point: {
      const float r = thing.kind == Kind::support ? 6.0F : 9.0F;
      ui.pen.disc(at, r, ui.theme.ink);
      ui.pen.disc(at, r - 3, ui.theme.paper);
      return block(r + 2, r + 2, r + 2);
    }
    case Kind::table:
      draw_table(ui, scene, at, scale);
      return block(std::max(0.7F * scale, 13.0F), scene.plan ? 0.35F * scale : std::max(0.95F * scale, 19.0F),
                   scene.plan ? 0.35F * scale : 0);
    case Kind::flag:
      ui.pen.pennant(at.x, at.y, 20, ui.theme.tight);
      return block(16, 20, 0);
  }
}

void draw_north(Ui& ui, Point at, LabelRoom& room) {
  const Point left[] = {{at.x, at.y - 18}, {at.x - 8, at.y + 14}, {at.x, at.y + 7}};
  const Point right[] = {{at.x, at.y - 18}, {at.x + 8, at.y + 14}, {at.x, at.y + 7}};
  ui.pen.polygon(left, ui.theme.ink);
  ui.pen.polyline(right, ui.theme.ink, look::stroke::kLine, true);
  const look::Ground ground(ui.pen, ui.theme.relief[1]);
  ui.pen.text(at.x, at.y - 22, "N", Face::bold, type::kTick, ui.theme.ink, look::Align::centre);
  room.block(Box{at.x - 14, at.y - 38, 28, 56});
}

std::vector<PlotWords> scene_words(Ui& ui, const Scene& scene, const Fit& fit,
                                   std::span<const std::array<Point, 2>> lengths, Box whole, LabelRoom& room) {
  std::vector<PlotWords> left_over;
  std::set<std::string> said;
  const auto say = [&](PlotWords words, const auto& places, std::span<const Point> names = {}) {
    const PlotText set = set_words(ui, words, whole.w);
    const std::vector<Box> candidates = places(set.w, set.h);
    if (const Box* box = room.place(candidates)) {
      lead(ui, *box, names, words.colour);
      draw_set(ui, set, *box, words.colour);
      said.insert(words.text);
    } else if (said.insert(words.text).second) {  // two ends alike need the words once
      left_over.push_back(std::move(words));
    }
  };
  for (const SceneNote& note : scene.notes)
    if (note.bold)
      say({.text = note.text,
           .colour = note.state == State::none ? ui.theme.ink : colour_of(ui.theme, note.state),
           .face = Face::bold,
           .sample = note.state == State::none ? Sample::dot : Sample::state,
           .size = type::kBody,
           .state = note.state},
          [&](float w, float h) { return places_round_about(fit.at(note.at), w, h); });
  for (std::size_t i = 0; i < scene.dimensions.size(); ++i)
    if (!scene.dimensions[i].text.empty())
      say({.text = scene.dimensions[i].text,
           .colour = ui.theme.contour,
           .face = Face::italic,
           .sample = Sample::length},
          [&](float w, float h) { return places_beside(lengths[i][0], lengths[i][1], w, h); });
  for (const SceneZone& zone : scene.zones) {
    if (zone.label.empty()) continue;
    const bool fails = zone.kind == SceneZone::Kind::reach;
    const Sample sample = fails                                    ? Sample::limit
                          : zone.kind == SceneZone::Kind::pinned   ? Sample::pinned
                          : zone.kind == SceneZone::Kind::overhead ? Sample::other
                                                                   : Sample::need;
    const ImU32 colour = fails                                  ? ui.theme.fails
                         : zone.kind == SceneZone::Kind::pinned ? ui.theme.pin
                                                                : ui.theme.contour;
    const float r = float(zone.radius_m * fit.px_per_m);
    const Point middle = fit.at({(zone.a.x + zone.b.x) / 2, (zone.a.y + zone.b.y) / 2});
    const float half_w = std::abs(fit.at(zone.b).x - fit.at(zone.a).x) / 2 + r;
    const float half_h = std::abs(fit.at(zone.b).y - fit.at(zone.a).y) / 2 + r;
    say(
        {.text = zone.label,
         .colour = colour,
         .face = fails || zone.kind == SceneZone::Kind::pinned ? Face::bold : Face::italic,
         .sample = sample,
         .size = fails ? type::kBody : type::kTick},
        [&](float w, float h) {
          std::vector<Box> places;
          for (const float off : {6.0F, 28.0F, 50.0F})
            for (const float shift : {0.0F, -0.5F, 0.5F, -1.0F, 1.0F}) {
              const float left = middle.x - w / 2 + shift * half_w;
              places.push_back({left, middle.y - half_h - h - off, w, h});
              places.push_back({left, middle.y + half_h + off, w, h});
            }
          return places;
        },
        around_line(fit.at(zone.a), fit.at(zone.b), r));
  }
  for (const SceneLine& line : scene.lines) {
    if (line.label.empty() || line.points.size() < 2) continue;
    const bool bold = line.ink == Ink::wire;
    const Point a = fit.at(line.points[line.points.size() - 2]), b = fit.at(line.points.back());
    say({.text = line.label,
         .colour = line.ink == Ink::rope || line.ink == Ink::path      ? ui.theme.contour
                   : line.ink == Ink::pinned                           ? ui.theme.pin
                   : line.ink == Ink::wire || line.ink == Ink::carried ? ui.theme.blue
                                                                       : ui.theme.ink,
         .face = bold ? Face::bold : Face::italic,
         .sample = line.ink == Ink::wire                            ? Sample::live
                   : line.ink == Ink::pinned                        ? Sample::pinned
                   : line.ink == Ink::rope || line.ink == Ink::path ? Sample::other
                                                                    : Sample::second,
         .size = bold ? type::kBody : type::kTick},
        [&](float w, float h) { return places_beside(a, b, w, h); });
  }
  for (const SceneThing& thing : scene.things)
    if (!thing.label.empty()) {
      // a tree is named at its crown
      const bool tall = thing.kind == SceneThing::Kind::tree && !scene.plan;
      const Point at =
          fit.at({thing.at.x + (tall ? thing.size_m * 0.2 : 0), thing.at.y + (tall ? thing.size_m * 0.95 : 0)});
      say({.text = thing.label, .colour = ui.theme.contour, .face = Face::italic, .sample = Sample::dot},
          [&](float w, float h) { return places_round_about(at, w, h); });
    }
  for (const SceneNote& note : scene.notes)
    if (!note.bold)
      say({.text = note.text, .colour = ui.theme.contour, .face = Face::italic, .sample = Sample::dot},
          [&](float w, float h) { return places_round_about(fit.at(note.at), w, h); });
  return left_over;
}

}  // namespace gs::parts
