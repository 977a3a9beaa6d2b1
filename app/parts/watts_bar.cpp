// Where the radio's watts go, to scale.
#include <algorithm>
#include <cmath>

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
    const Box box = take(92);
    pen.dashed_box({box.x, box.y + 24, box.w, 44}, look::stroke::kDash, theme.ink2, look::stroke::kLine);
    const std::string why_not =
        "Not known: " + reason(session.plan(), R::feedline_power_to_antenna_w, arrives, session.style());
    pen.text(box.x + 14, box.y + 52, pen.elided(why_not, box.w - 28, Face::regular, type::kLabel), Face::regular,
             type::kLabel, theme.ink2);
    node(Role::image, "watts", "Where the watts go", box).value = why_not;
    return;
  }
  const double matched = out[R::feedline_cable_matched_w].value;
  // With a measured SWR the typical extra can be slightly negative on short lines; it is drawn as nothing then.
  const double swr_w = out[R::feedline_cable_swr_w].value;
  const double leaves = arrives.value + matched + swr_w;
  const Box box = take(124);
  const Box bar{box.x, box.y + 28, box.w, 58};
  const auto x_of = [&](double power_w) {
    return bar.x + bar.w * float(leaves > 0 ? std::clamp(power_w / leaves, 0.0, 1.0) : 0);
  };
  const float antenna_x = x_of(arrives.value),
              matched_x = x_of(arrives.value + std::max(0.0, std::min(matched, leaves - arrives.value)));
  pen.text(bar.x, bar.y - 10,
           say_quantity(leaves, Unit::watt, digits_needed(std::round(leaves * 10) / 10, 1), session.style()) +
               (w > 420 ? " leaves the radio" : ""),
           Face::regular, type::kLabel, theme.ink2);
  const std::string matched_text = "cable, matched part " + watts(matched);
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
  const std::string swr_text = "cable, because of SWR " + watts(swr_w);
  const float swr_left = bar.right() - pen.width(swr_text, Face::bold, type::kLabel);
  for (int i = 0; step * i <= leaves * 1.0001; ++i) {
    const float at_x = x_of(step * i);
    pen.line({at_x, bar.bottom()}, {at_x, bar.bottom() + (i % 2 ? 5.0F : 9.0F)}, theme.ink, look::stroke::kLine);
    if (i % 2) continue;
    const std::string text =
        i == 0 ? "0 W" : print_quantity(step * i, Unit::watt, step < 1 ? 1 : 0, session.style()).number;
    const float text_w = pen.width(text, Face::regular, type::kLabel);
    if (at_x + text_w / 2 > swr_left - 8) continue;
    pen.text(i == 0 ? at_x : at_x - text_w / 2, bar.bottom() + 26, text, Face::regular, type::kLabel, theme.ink2);
  }
  pen.text(bar.right(), bar.bottom() + 26, swr_text, Face::bold, type::kLabel, theme.fails, look::Align::right);
  const std::string sentence = "Of " + watts(leaves) + ", " + figure + " reach the antenna, " + watts(matched) +
                               " warm the cable, matched part, " + watts(swr_w) + " because of SWR";
  node(Role::image, "watts", "Where the watts go", box).value = sentence;
}

}  // namespace gs::parts
