// What is carried, to scale: a part of the bar for each job.
#include <algorithm>
#include <cmath>
#include <string>

#include "app/parts/kit_parts.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

/// The step from 1, 2, 5 that gives three to seven ticks.
double tick_step(double most) {
  const double decade = std::pow(10, std::floor(std::log10(most / 3)));
  for (const double times : {5.0, 2.0})
    if (most / (decade * times) >= 3) return decade * times;
  return decade;
}

}  // namespace

void weight_bar(Ui& ui, const std::vector<kit::Item>& items) {
  const Figure& weight = ui.session.outlook()[R::kit_weight_kg];
  if (weight.state == State::unknown) return;
  const Style& style = ui.session.style();
  const double step_kg = tick_step(std::max(weight.value, 0.3));
  const double most_kg = step_kg * std::ceil(std::max(weight.value, 0.3) / step_kg);
  constexpr std::string_view kTitle = "Carried weight, a part for each job";
  const float title_h =
      type::line_height(type::kLabel) * float(ui.pen.lines(kTitle, ui.w, Face::regular, type::kLabel).size() - 1);
  const Box box = ui.take(92 + title_h);
  const Box bar{box.x, box.y + 34 + title_h, box.w, 14};
  const auto x_of = [&](double kg) { return bar.x + bar.w * float(kg / most_kg); };
  ui.pen.paragraph(bar.x, bar.y - 12 - title_h, ui.w, kTitle, Face::regular, type::kLabel, ui.theme.ink2);
  ui.pen.fill(bar, ui.theme.paper);
  double carried_kg = 0;
  bool other = false;
  for (const kit::FunctionHolds& job : kit::by_function(items)) {
    const float from = x_of(carried_kg);
    carried_kg += job.weight_g / 1000;
    ui.pen.fill({from, bar.y, x_of(carried_kg) - from, bar.h}, other ? ui.theme.ink2 : ui.theme.ink);
    other = !other;
  }
  ui.pen.outline(bar, ui.theme.ink, look::stroke::kRule);
  float free_from = bar.x - 1;
  for (int i = 0; step_kg * i <= most_kg * 1.0001; ++i) {
    const double at_kg = step_kg * i;
    const std::string text = i == 0 ? say_quantity(0, Unit::kilogram, 0, style)
                                    : print_quantity(at_kg, Unit::kilogram, step_kg < 1 ? 1 : 0, style).number;
    const float text_w = ui.pen.width(text, Face::regular, type::kLabel);
    const float left = std::clamp(x_of(at_kg) - text_w / 2, bar.x, bar.right() - text_w);
    if (left < free_from) continue;
    free_from = left + text_w + 10;
    ui.pen.line({x_of(at_kg), bar.bottom()}, {x_of(at_kg), bar.bottom() + 5}, ui.theme.ink, look::stroke::kLine);
    ui.pen.text(left, bar.bottom() + 24, text, Face::regular, type::kLabel, ui.theme.ink2);
  }
  std::string parts;
  for (const kit::FunctionHolds& job : kit::by_function(items))
    parts += (parts.empty() ? "" : ", ") + std::string(job.name) + " " + weight_words(job.weight_g, style);
  ui.node(Role::image, "kit:weight", "Carried weight, a part for each job", box).value = parts;
}

}  // namespace gs::parts
