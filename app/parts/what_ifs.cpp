// What if: one step of a lever, what it does to the chance of the target, and which link it would break.
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

void Ui::what_ifs(int most) {
  const std::vector<Trial> trials = gs::what_ifs(session.outing(), session.style());
  const Figure& now = session.outlook()[R::pace_chance_of_target_pct];
  if (trials.empty() || now.state == State::unknown) return;
  section("What if", "what-if");
  if (w > 270)
    pen.text(right() - 30, y - 9, "chance of target", Face::regular, type::kTick, theme.ink2, look::Align::right);
  open_group(Role::list, "what-if:list", "What if", {x, y, w, 0});
  int shown = 0;
  for (const Trial& trial : trials) {
    if (shown++ == most) break;
    const Figure& then = trial.outlook[R::pace_chance_of_target_pct];
    const std::string id = "what-if:" + trial.key;
    const std::string chance = figure_text(R::pace_chance_of_target_pct, then, session.style());
    const bool bell = w > 340 && std::isfinite(then.value);
    const float chance_w = pen.figure_width(chance, type::kValue);
    const float title_room = bell ? w - 202 : w - chance_w - 42;
    std::vector<std::string_view> titles = pen.lines(trial.title, title_room, Face::bold, type::kBody);
    const bool under = look::Pen::breaks_word(titles) || title_room < 100;  // the chance below
    if (under) titles = pen.lines(trial.title, w - 24, Face::bold, type::kBody);
    const R broken = broken_by(session.outlook(), trial.outlook);
    std::string second;
    if (broken != R::count) {
      second = lower_first(std::string(reading(broken).name)) + " fails";
    } else if (then.state != State::unknown) {
      const Figure& spare = trial.outlook[R::power_spare_min];
      if (spare.state != State::unknown)
        second = "battery to spare " + say_quantity(spare.value, Unit::minute, 0, session.style());
    }
    const float indent = broken != R::count ? 26 : 0;
    std::vector<std::string_view> seconds = pen.lines(second, title_room - indent, Face::regular, type::kLabel);
    if (under) seconds = pen.lines(second, w - indent, Face::regular, type::kLabel);
    if (second.empty()) seconds.clear();
    const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
    const float words_h = step * float(titles.size()) + small * float(seconds.size());
    const Box box = take(std::max(66.0F, words_h + 18 + (under ? 34 : 0)));
    const ImU32 fill = hand.down(id) ? theme.fold : theme.paper;
    if (hand.down(id)) pen.fill(box, fill);
    const look::Ground ground(pen, fill);
    float base = box.y + 26;
    for (const std::string_view line : titles) {
      pen.text(box.x, base, line, Face::bold, type::kBody, theme.ink);
      base += step;
    }
    if (broken != R::count) pen.sign(look::Sign::fails, {box.x + 9, base - 5}, 8);
    for (const std::string_view line : seconds) {
      const ImU32 colour = broken != R::count ? theme.fails : theme.ink2;
      pen.text(box.x + indent, base + 1, line, broken != R::count ? Face::bold : Face::regular, type::kLabel,
               colour);
      base += small;
    }
    if (bell) {
      const float x1 = box.right() - 120, x0 = x1 - 70;
      const auto at = [&](double pct) { return x0 + 70 * float(pct / 100); };
      pen.dumbbell(x0, x1, box.y + 24, at(now.value), at(then.value),
                   then.value >= now.value ? theme.holds : theme.fails);
    }
    const float chance_base = under ? box.bottom() - 12 : box.y + 32;
    pen.figure(box.right() - 30, chance_base, chance, type::kValue, broken == R::count ? theme.ink : theme.fails,
               look::Align::right);
    pen.icon(Icon::chev, box.right() - 20, chance_base - 18, 20, theme.ink);
    mirror::Node item;
    item.role = Role::button;
    item.id = id;
    item.name = trial.title + ": chance of target " +
                figure_spoken(R::pace_chance_of_target_pct, then, session.plan(), session.style()) +
                (second.empty() ? "" : ", " + second) + ". Try it";
    if (target(std::move(item), box, 0)) {
      session.set_all(trial.sets, trial.title);
      wake_at(now_s);
    }
    rule();
  }
  close_group();
}

}  // namespace gs::parts
