// What another roll would change: a row a roll with what arrives, the watts and the grams; tapping tries it.
#include <algorithm>
#include <cmath>

#include "app/parts/change.h"
#include "app/parts/ui.h"
#include "core/outing/trial.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;

namespace {

/// "1.2 dB, 570 g": what a roll costs and weighs, as far as known.
std::string what_it_is(const Trial& trial, const Style& style) {
  std::string said;
  for (const R key : {R::feedline_total_loss_db, R::feedline_weight_g}) {
    const Figure& figure = trial.outlook[key];
    if (!std::isfinite(figure.value)) continue;
    if (!said.empty()) said += ", ";
    said += figure_text(key, figure, style);
  }
  return said;
}

}  // namespace

void Ui::rolls(int most) {
  const std::vector<Trial>& trials = session.rolls();
  const Outlook& out = session.outlook();
  const Figure& now = out[R::feedline_power_to_antenna_w];
  if (trials.empty() || now.state == State::unknown) return;
  constexpr std::string_view kTitle = "What another roll would change";
  section(kTitle, "rolls");
  constexpr float kBesideTitle = 110;  // the word, its gap and the chevron's column
  if (pen.width(kTitle, Face::bold, type::kLead) + kBesideTitle < w)
    pen.text(right() - 30, y - 9, "arrives", Face::regular, type::kTick, theme.ink2, look::Align::right);
  open_group(Role::list, "rolls:list", "Other rolls", {x, y, w, 0});
  double widest = 0.5;
  for (const Trial& trial : trials) {
    const double then = trial.outlook[R::feedline_power_to_antenna_w].value;
    if (std::isfinite(then)) widest = std::max(widest, std::abs(then - now.value));
  }
  int shown = 0;
  // Best and worst alternatives alike: every roll that is offered, best first, as many as asked for.
  const std::size_t step = std::max<std::size_t>(1, (trials.size() + std::size_t(most) - 1) / std::size_t(most));
  for (std::size_t i = 0; i < trials.size() && shown < most; i += step, ++shown) {
    const Trial& trial = trials[i];
    const Figure& then = trial.outlook[R::feedline_power_to_antenna_w];
    const std::string id = "rolls:" + trial.key;
    const Change by_power = compare(R::feedline_power_to_antenna_w, then, now);
    const Change by_weight =
        compare(R::feedline_weight_g, trial.outlook[R::feedline_weight_g], out[R::feedline_weight_g]);
    const std::string arrives = say_quantity(then.value, Unit::watt, 1, session.style());
    const float arrives_w = pen.figure_width(arrives, type::kValue) + 42;
    const bool narrow = w < 520;
    // narrow: name over changes, the watts at the right; where that is too little, changes and watts a line each
    const float change_w = 26 + pen.width(say_change(R::feedline_power_to_antenna_w, by_power, session.style()),
                                          Face::bold, type::kLabel);
    const float weight_w =
        26 + pen.width(say_change(R::feedline_weight_g, by_weight, session.style()), Face::bold, type::kLabel);
    const bool split = narrow && std::max(108.0F, change_w) + weight_w > w - arrives_w;
    const bool own_line = split && weight_w + arrives_w > w;
    const std::vector<std::string_view> titles =
        pen.lines(trial.title, narrow && !split ? w - arrives_w : w - 8, Face::bold, type::kBody);
    const float step_h = type::line_height(type::kBody), small = type::line_height(type::kLabel);
    const float rest_h = step_h * float(titles.size() - 1);
    const std::string itself = what_it_is(trial, session.style());
    const Box box = take(small + (!narrow ? 48
                                  : split ? 27 + rest_h + 2 * small + (own_line ? 46 : 16)
                                          : 64 + rest_h));
    if (hand.down(id)) pen.fill(box, theme.fold);
    const look::Ground ground(pen, hand.down(id) ? theme.fold : theme.paper);
    const float first_base = narrow ? box.y + 27 : box.mid_y() + 7;
    float base = narrow ? first_base : box.mid_y() - small * 0.5F + 7, title_w = 0;
    for (const std::string_view line : titles) {
      title_w = pen.text(box.x, base, line, Face::bold, type::kBody, theme.ink);
      base += step_h;
    }
    base += small - step_h;
    title_w = std::max(title_w, pen.text(box.x, base, itself, Face::regular, type::kLabel, theme.ink2));
    const float second_base = narrow ? base + step_h : first_base;
    const float mid = box.x + w * 0.34F, half = w * 0.08F;
    if (!narrow && box.x + title_w + 8 < mid - half)
      pen.dumbbell(mid - half, mid + half, box.mid_y(), mid, mid + half * float((then.value - now.value) / widest),
                   then.value >= now.value ? theme.holds : theme.fails);
    draw_change(pen, theme, narrow ? box.x : box.x + w * 0.45F, second_base, R::feedline_power_to_antenna_w,
                by_power, session.style());
    draw_change(pen, theme,
                !narrow ? box.x + w * 0.62F
                : split ? box.x
                        : box.x + std::max(108.0F, change_w),
                split ? second_base + small : second_base, R::feedline_weight_g, by_weight, session.style());
    const float figure_base = split    ? second_base + small + (own_line ? 32 : 0)
                              : narrow ? box.mid_y() + 8
                                       : first_base;
    pen.figure(box.right() - 30, figure_base, arrives, type::kValue, theme.ink, look::Align::right);
    pen.icon(Icon::chev, box.right() - 20, figure_base - 18, 20, theme.ink);
    mirror::Node item;
    item.role = Role::button;
    item.id = id;
    item.name = trial.title + ": " + speak_quantity(then.value, Unit::watt, 1, session.style()) + " arrive, " +
                itself + ", " + say_change(R::feedline_power_to_antenna_w, by_power, session.style()) +
                (by_weight.kind == Change::Kind::none
                     ? std::string{}
                     : ", weight " + say_change(R::feedline_weight_g, by_weight, session.style())) +
                ". Try it";
    if (target(std::move(item), box, 0)) {
      session.set_all(trial.sets, trial.title);
      wake_at(now_s);
    }
    rule();
  }
  close_group();
}

}  // namespace gs::parts
