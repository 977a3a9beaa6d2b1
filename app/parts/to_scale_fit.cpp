// Fits a drawing in metres into a box of the screen.
#include <algorithm>
#include <cmath>

#include "app/parts/to_scale.h"

namespace gs::parts {
namespace {

struct Grow {
  Extent extent{1e9, -1e9, 1e9, -1e9};
  void add(Metres at, double aside = 0, double up = 0, double down = 0) {
    if (!std::isfinite(at.x) || !std::isfinite(at.y)) return;
    extent.left = std::min(extent.left, at.x - aside);
    extent.right = std::max(extent.right, at.x + aside);
    extent.bottom = std::min(extent.bottom, at.y - down);
    extent.top = std::max(extent.top, at.y + up);
  }
};

}  // namespace

Extent extent_of(const Scene& scene) {
  using Kind = SceneThing::Kind;
  Grow grow;
  for (const SceneLine& line : scene.lines)
    for (const Metres point : line.points) grow.add(point);
  for (const SceneZone& zone : scene.zones)
    for (const Metres end : {zone.a, zone.b}) grow.add(end, zone.radius_m, zone.radius_m, zone.radius_m);
  for (const SceneDimension& dimension : scene.dimensions)
    for (const Metres end : {dimension.a, dimension.b}) grow.add(end);
  for (const SceneNote& note : scene.notes) grow.add(note.at);
  for (const SceneHandle& handle : scene.handles) grow.add(handle.at);
  for (const SceneThing& thing : scene.things) {
    const double across = scene.plan ? thing.size_m / 2 : thing.size_m * 0.3;
    if (thing.kind == Kind::tree) {
      grow.add(thing.at, across, scene.plan ? across : thing.size_m, scene.plan ? across : 0);
    } else if (thing.kind == Kind::mast) {
      grow.add(thing.at, 0.2, thing.size_m);
    } else {
      const bool figure = thing.kind == Kind::person || thing.kind == Kind::child;
      grow.add(thing.at, figure ? 0.5 : 0.3, figure && !scene.plan ? kPerson_m : 0.3, scene.plan ? 0.3 : 0);
    }
  }
  const Extent& e = grow.extent;
  return e.right < e.left ? Extent{0, 1, 0, 1} : e;
}

Fit fit_into(const Extent& extent, look::Box box, bool on_foot) {
  const double w = std::max(extent.right - extent.left, 0.5), h = std::max(extent.top - extent.bottom, 0.5);
  const double px_per_m = std::min(double(box.w) / w, double(box.h) / h);
  const double foot =
      on_foot ? double(box.bottom()) : double(box.mid_y()) + (extent.top - extent.bottom) * px_per_m / 2;
  return {px_per_m,
          {float(double(box.mid_x()) - (extent.left + extent.right) / 2 * px_per_m),
           float(foot + extent.bottom * px_per_m)}};
}

double scale_bar_m(double px_per_m, float most_px) {
  const double most_m = double(most_px) / std::max(px_per_m, 1e-9);
  const double decade = std::pow(10, std::floor(std::log10(most_m)));
  for (const double times : {5.0, 2.0})
    if (times * decade <= most_m) return times * decade;
  return decade;
}

}  // namespace gs::parts
