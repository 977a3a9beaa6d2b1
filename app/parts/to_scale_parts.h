// What the files of the drawing to scale share.
#pragma once

#include <array>
#include <span>
#include <vector>

#include "app/parts/labels.h"
#include "app/parts/plot_parts.h"
#include "app/parts/to_scale.h"
#include "app/parts/ui.h"

namespace gs::parts {

/// The outline of all that lies within r of the line from a to b, logical px.
std::vector<look::Point> around_line(look::Point a, look::Point b, float r);
void hatch_capsule(Ui& ui, look::Point a, look::Point b, float r);
/// Draws one thing at its true size and blocks its place.
void draw_thing(Ui& ui, const Scene& scene, const SceneThing& thing, const Fit& fit, LabelRoom& room);
void draw_north(Ui& ui, look::Point at, LabelRoom& room);
/// All words; `lengths` are the dimension lines as drawn. Returns what found no room.
std::vector<PlotWords> scene_words(Ui& ui, const Scene& scene, const Fit& fit,
                                   std::span<const std::array<look::Point, 2>> lengths, look::Box whole,
                                   LabelRoom& room);

}  // namespace gs::parts
