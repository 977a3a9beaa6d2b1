// A plot as a sheet writes it: what is on it, in the trade's units. `Ui::plot` draws it, names every line beside
// the line, finds room for the words, and writes sentence and table of points into the mirror.
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "app/look/geometry.h"
#include "core/outing/outlook.h"
#include "core/outing/quantity.h"

namespace gs::parts {

/// One axis. Numbers are printed with its unit, at most four of them.
struct PlotAxis {
  std::string title{};     // "on the air", "supply"; set as a note
  Unit unit = Unit::none;  // of every x (or y) of the plot
  int digits = 0;          // of the figures in the table; the axis numbers need no more than their step
  double least = 0, most = 1;
  bool log = false;             // then least must be above 0
  std::vector<double> marks{};  // where numbers stand; empty: chosen
};

struct PlotPoint {
  double x, y;  // a y that is not finite breaks the curve
};

enum class CurveKind : unsigned char {
  live,    // the plan as it is: blue, 4.5 px
  second,  // beside it: blue, 2 px
  pinned,  // dash-dot in the pin's colour
  other,   // what might be: dashes in the second voice
};

struct PlotCurve {
  CurveKind kind = CurveKind::live;
  std::string label{};              // "on transmit, 40 W"; in the curve's own colour beside it
  std::vector<PlotPoint> points{};  // x rises
};

/// A line right across. `limit` is solid in the colour of failing, `need` dotted in ink.
struct PlotLine {
  enum class Kind : unsigned char { limit, need } kind = Kind::limit;
  bool upright = false;  // at an x instead of a y
  double at = 0;
  std::string label{};  // a sentence of its own: "radio stops below 11.7 V"
};

enum class Tint : unsigned char { wood, sand, hatched };

/// A tinted stretch of one axis, right across the other; its name stands in it.
struct PlotBand {
  bool upright = true;  // from one x to another; else from one y to another
  double from = 0, to = 0;
  Tint tint = Tint::sand;
  std::string name{};
};

/// The area between the first curve and the lower edge, over a stretch of x.
struct PlotArea {
  double from = 0, to = 0;
  Tint tint = Tint::wood;
  std::string name{};
};

/// The area from one curve of the plot to another one with the same x: what may be.
struct PlotBetween {
  std::size_t low = 0, high = 1;  // indices into the plot's curves
  Tint tint = Tint::wood;
  std::string name{};
};

/// A point that counts: its state shape with the value beside it.
struct PlotMark {
  double x = 0, y = 0;
  State state = State::none;  // none: a plain ring, "here"
  std::string text{};
  bool pinned = false;  // words in the pin's colour
};

struct PlotDot {
  double x = 0, y = 0;
  std::string label{};  // may be empty
};

/// A line that is dragged along x to read the plot.
struct PlotCursor {
  std::string id{}, name{};  // of the slider in the mirror: "Time that is read"
  std::string spoken{};      // "2 hours 20 minutes, 11.9 volts"
  double at = 0, step = 1;
};

struct Plot {
  std::string id{}, name{};  // name of the image: "Supply on the air"
  std::string sentence{};    // what it says, with the crossing: "The supply falls to 11.7 V after 2 h 20."
  PlotAxis x{}, y{};
  std::vector<PlotBand> bands{};
  std::vector<PlotArea> areas{};
  std::vector<PlotCurve> curves{};
  std::vector<PlotLine> lines{};
  std::vector<PlotMark> marks{};
  std::vector<PlotDot> dots{};
  std::optional<PlotCursor> cursor{};
  std::vector<PlotBetween> between{};
};

// --- figures (plot_axis.cpp); pure

/// 0..1 along the axis, not cut off at its ends; NaN for an x that is not finite or, on a log axis, not above 0.
double axis_place(const PlotAxis& axis, double value);
/// The value at a place, the other way round.
double axis_value(const PlotAxis& axis, double place);
/// At most `most_marks` round numbers within the axis (steps of 1, 2, 5 times a power of ten, on a log axis numbers
/// that begin with them; hours and minutes in steps of the clock). The axis' own marks where it names some.
std::vector<double> axis_marks(const PlotAxis& axis, std::size_t most_marks = 4);
/// 1, 2, 5, 10, 20, 50, ... from `least` to `most`; none where `least` is not above 0.
std::vector<double> round_numbers(double least, double most);
/// y of a curve at x between two of its points, straight between them (by the logarithm on a log axis); nothing
/// outside its points or at a break.
std::optional<double> curve_at(const PlotCurve& curve, double x, bool log_x = false, bool log_y = false);
/// First x at which the curve comes through this y; nothing where it never does.
std::optional<double> crossing(std::span<const PlotPoint> points, double y);

}  // namespace gs::parts
