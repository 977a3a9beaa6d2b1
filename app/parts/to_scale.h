// A drawing to scale as a sheet writes it: things in metres. `Ui::to_scale` fits them into its box by one scale for
// both axes, always with a scale bar, finds room for the words, and lets a handle drag a lever.
#pragma once

#include <string>
#include <vector>

#include "app/look/geometry.h"
#include "core/outing/levers.h"
#include "core/outing/outlook.h"

namespace gs::parts {

/// Metres. Side view: x to the right, y up from the ground. Plan view: x to the right, y towards the top of the
/// sheet.
struct Metres {
  double x = 0, y = 0;
};

enum class Ink : unsigned char {
  wire,     // radiates: blue, 5 px
  carried,  // wire that is carried along but insulated: blue, 2 px
  rope,     // dashed, in the notes' colour
  feed,     // feed line: ink, 2 px
  outline,  // ink, 1.5 px
  pinned,   // dash-dot in the pin's colour
  path,     // where people walk: long dashes, notes' colour
};

struct SceneLine {
  std::vector<Metres> points{};
  Ink ink = Ink::outline;
  std::string label{};  // set beside it, in its colour; may be empty
};

/// Things of known size stand on the place given: a person 1.75 m, a child 1.15 m (`kPerson_m`, `kChild_m`).
struct SceneThing {
  enum class Kind : unsigned char {
    person,
    child,
    tree,  // size_m: its height in a side view, the width of its crown in a plan
    mast,  // size_m: its height (side view only)
    stake,
    support,  // where the wire is held: a ring
    feed_point,
    table,  // with the set on it
    flag,
  } kind;
  Metres at{};
  double size_m = 0;
  std::string label{};
};

/// All places within `radius_m` of a straight line from a to b (a circle where they are one).
struct SceneZone {
  enum class Kind : unsigned char {
    reach,     // somebody can get there: hatched, strong outline in the colour of failing
    overhead,  // above heads: dashed
    pinned,    // the pinned plan's: dash-dot
    owed,      // an evaluation is owed within it: dotted, notes' colour
  } kind;
  Metres a{}, b{};
  double radius_m = 0;
  std::string label{};
};

/// A length between two points, its text set beside the line in the notes' italic. `away_px` moves the line off
/// what it measures, to the right of the way from a to b.
struct SceneDimension {
  Metres a{}, b{};
  std::string text{};
  float away_px = 0;
};

struct SceneNote {
  Metres at{};
  std::string text{};
  bool bold = false;          // a figure that counts, in ink; else a note
  State state = State::none;  // then in that state's colour
};

/// A ring that drags a lever along one axis: the lever's value is (coordinate − from_m) × per_m.
struct SceneHandle {
  L lever = L::count;
  Metres at{};
  bool upright = true;  // moves along y; else along x
  double from_m = 0, per_m = 1;
};

struct Scene {
  std::string id{}, name{};  // name of the image: "The antenna from the side"
  std::string sentence{};    // what it shows, with its lengths
  bool plan =
      false;  // seen from above: meadow, north up where `north`; else from the side with the ground at y = 0
  bool north = false;
  std::vector<SceneZone> zones{};
  std::vector<SceneLine> lines{};
  std::vector<SceneThing> things{};
  std::vector<SceneDimension> dimensions{};
  std::vector<SceneNote> notes{};
  std::vector<SceneHandle> handles{};
};

// --- pure (to_scale_fit.cpp)

// An adult of ordinary height, and a child of six: the median of the WHO growth reference for 5 to 19 years,
// rounded down to 5 cm (from memory). They are there to compare with, nothing is computed from them.
inline constexpr double kPerson_m = 1.75, kChild_m = 1.15;

struct Extent {
  double left = 0, right = 0, bottom = 0, top = 0;
};
/// What the scene covers, its things at their size included; empty scenes cover 1 m by 1 m.
Extent extent_of(const Scene& scene);

/// One scale for both axes.
struct Fit {
  double px_per_m = 1;
  look::Point origin;  // where (0, 0) stands
  look::Point at(Metres m) const { return {origin.x + float(m.x * px_per_m), origin.y - float(m.y * px_per_m)}; }
  Metres back(look::Point p) const {
    return {double(p.x - origin.x) / px_per_m, double(origin.y - p.y) / px_per_m};
  }
};
/// The largest scale at which the extent lies within the box, in the middle across; a side view stands on its foot.
Fit fit_into(const Extent& extent, look::Box box, bool on_foot);
/// Length of the scale bar: 1, 2 or 5 times a power of ten metres, the longest that takes no more than `most_px`.
double scale_bar_m(double px_per_m, float most_px);

}  // namespace gs::parts
