// What the files of the plot share: its frame, and its words before they have found their place.
#pragma once

#include "app/look/pen.h"
#include "app/parts/plot.h"
#include "app/parts/ui.h"

namespace gs::parts {

struct PlotFrame {
  look::Box inner;  // between the axes
  std::vector<double> x_marks, y_marks;
};

/// What is drawn before words that found no room on the drawing itself.
enum class Sample : unsigned char { live, second, pinned, other, limit, need, dot, length, tint, state };

/// Words that belong to something drawn.
struct PlotWords {
  std::string text;
  ImU32 colour;
  look::Face face;
  Sample sample;
  float size = look::type::kTick;
  State state = State::none;  // of Sample::state
  ImU32 tint = 0;             // of Sample::tint
};

/// The same, broken into lines.
struct PlotText {
  std::vector<std::string> lines;
  look::Face face;
  float size, w, h;
};

PlotFrame draw_axes_under(Ui& ui, const Plot& plot, look::Box whole);  // leaves room for numbers and titles
void draw_grid(Ui& ui, const Plot& plot, const PlotFrame& frame);
void draw_axes_over(Ui& ui, const Plot& plot, const PlotFrame& frame);
PlotText set_words(const Ui& ui, const PlotWords& words, float room);
void draw_set(Ui& ui, const PlotText& set, look::Box box, ImU32 colour);
/// In lines of their own under the plot, each with a piece of what it names.
void draw_left_over(Ui& ui, const std::vector<PlotWords>& words);
std::vector<look::Box> places_at_line(look::Box inner, bool upright, float at, float w, float h, float distance);
std::vector<look::Box> places_in(look::Box band, float w, float h, bool low);  // low: from its foot up
/// The points as a table in the mirror: a row a value of x, a column a curve.
void plot_table(Ui& ui, const Plot& plot, look::Box box);

}  // namespace gs::parts
