// Where the radio's watts go, to scale.
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

void Ui::watts_bar() {
  const Outlook& out = session.outlook();
  const Figure& arrives = out[R::feedline_power_to_antenna_w];
  const auto watts = [&](double power_w) { return say_quantity(power_w, Unit::watt, 1, session.style()); };
  if (arrives.state == State::unknown) {
    const std::string why_not =
        "Not known: " + reason(session.plan(), R::feedline_power_to_antenna_w, arrives, session.style());
    const float step = type::line_height(type::kLabel);
    const float lines = float(pen.lines(why_not, w - 28, Face::regular, type::kLabel).size());
    const Box box = take(48 + 23 + lines * step);
    pen.dashed_box({box.x, box.y + 24, box.w, 23 + lines * step}, look::stroke::kDash, theme.ink2,
                   look::stroke::kLine);
    pen.paragraph(box.x + 14, box.y + 52, box.w - 28, why_not, Face::regular, type::kLabel, theme.ink2);
    node(Role::image, "watts", "Where the watts go", box).value = why_not;
    return;
  }
  const double matched = out[R::feedline_cable_matched_w].value;
  // With a measured SWR the typical extra can be slightly negative on short lines; it is drawn as nothing then.
  const double swr_w = out[R::feedline_cable_swr_w].value;
  const double leaves = arrives.value + matched + swr_w;
  const std::string matched_text = "cable, matched part " + watts(matched);
  const std::string swr_text = "cable, because of SWR " + watts(swr_w);
  const std::string leaves_text =
      say_quantity(leaves, Unit::watt, digits_needed(std::round(leaves * 10) / 10, 1), session.style()) +
      (w > 420 ? " leaves the radio" : "");
  const auto width = [&](const std::string& text) { return pen.width(text, Face::bold, type::kLabel); };
  // where the words of the losses do not stand at the bar, they stand in lines under it
  const bool below = width(leaves_text) + 16 + width(matched_text) > w || width(swr_text) + 72 > w;
  const Box box = take(124);
  const Box bar{box.x, box.y + 28, box.w, 58};
  const auto x_of = [&](double power_w) {
    return bar.x + bar.w * float(leaves > 0 ? std::clamp(power_w / leaves, 0.0, 1.0) : 0);
  };
  const float antenna_x = x_of(arrives.value),
              matched_x = x_of(arrives.value + std::max(0.0, std::min(matched, leaves - arrives.value)));
  pen.text(bar.x, bar.y - 10, leaves_text, Face::regular, type::kLabel, theme.ink2);
  if (!below)
    pen.text(bar.right(), bar.y - 10, matched_text, Face::bold, type::kLabel, theme.contour, look::Align::right);
  pen.fill({bar.x, bar.y, antenna_x - bar.x, bar.h}, theme.holds);
  pen.fill({antenna_x, bar.y, matched_x - antenna_x, bar.h}, theme.soil);
  pen.hatch({antenna_x, bar.y, matched_x - antenna_x, bar.h}, theme.contour);
  pen.fill({matched_x, bar.y, bar.right() - matched_x, bar.h}, theme.fails);
  pen.outline(bar, theme.ink, look::stroke::kRule);
  const std::string figure = watts(arrives.value);
  const float figure_w = pen.figure_width(figure, type::kValue);
  if (antenna_x - bar.x > figure_w + 24) {
    const look::Ground ground(pen, theme.holds);
    const float base = look::Pen::centred(bar.mid_y(), type::kValue);
    pen.figure(antenna_x - 12, base, figure, type::kValue, theme.paper, look::Align::right);
    if (antenna_x - bar.x > figure_w + 40 + pen.width("to the antenna", Face::bold, type::kBody))
      pen.text(bar.x + 14, base, "to the antenna", Face::bold, type::kBody, theme.paper);
  }
  // ticks: the step from 1, 2, 5 that gives four to eight of them
  const double decade = std::pow(10, std::floor(std::log10(std::max(leaves, 1e-6) / 4)));
  double step = decade;
  for (const double times : {2.0, 5.0, 10.0})
    if (leaves / step > 8) step = decade * times;
  const float swr_left = below ? bar.right() + 40 : bar.right() - pen.width(swr_text, Face::bold, type::kLabel);
  const float zero_w = pen.width("0 W", Face::regular, type::kLabel);
  for (int i = 0; step * i <= leaves * 1.0001; ++i) {
    const float at_x = x_of(step * i);
    pen.line({at_x, bar.bottom()}, {at_x, bar.bottom() + (i % 2 ? 5.0F : 9.0F)}, theme.ink, look::stroke::kLine);
    if (i % 2) continue;
    const std::string text =
        i == 0 ? "0 W" : print_quantity(step * i, Unit::watt, step < 1 ? 1 : 0, session.style()).number;
    const float text_w = pen.width(text, Face::regular, type::kLabel);
    if (at_x + text_w / 2 > swr_left - 8 || at_x + text_w / 2 > bar.right() + 1) continue;
    if (i > 0 && at_x - text_w / 2 < bar.x + zero_w + 8) continue;
    pen.text(i == 0 ? at_x : at_x - text_w / 2, bar.bottom() + 26, text, Face::regular, type::kLabel, theme.ink2);
  }
  if (below) {
    for (const auto& [text, colour] : {std::pair{matched_text, theme.contour}, std::pair{swr_text, theme.fails}}) {
      const int lines = pen.paragraph(box.x, y + type::kLabel, w, text, Face::bold, type::kLabel, colour);
      gap(float(lines) * type::line_height(type::kLabel) + 2);
    }
  } else {
    pen.text(bar.right(), bar.bottom() + 26, swr_text, Face::bold, type::kLabel, theme.fails, look::Align::right);
  }
  const std::string sentence = "Of " + watts(leaves) + ", " + figure + " reach the antenna, " + watts(matched) +
                               " warm the cable, matched part, " + watts(swr_w) + " because of SWR";
  node(Role::image, "watts", "Where the watts go", box).value = sentence;
}

}  // namespace gs::parts
