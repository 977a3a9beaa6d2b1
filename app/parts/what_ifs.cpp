// What if: one step of a lever, what it does to the chance of the target, and which link it would break.
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
  pen.text(right() - 30, y - 9, "chance of target", Face::regular, type::kTick, theme.ink2, look::Align::right);
  open_group(Role::list, "what-if:list", "What if", {x, y, w, 0});
  int shown = 0;
  for (const Trial& trial : trials) {
    if (shown++ == most) break;
    const Figure& then = trial.outlook[R::pace_chance_of_target_pct];
    const std::string id = "what-if:" + trial.key;
    const Box box = take(66);
    const ImU32 fill = hand.down(id) ? theme.fold : theme.paper;
    if (hand.down(id)) pen.fill(box, fill);
    const look::Ground ground(pen, fill);
    pen.text(box.x, box.y + 26, trial.title, Face::bold, type::kBody, theme.ink);
    const R broken = broken_by(session.outlook(), trial.outlook);
    std::string second;
    if (broken != R::count) {
      second = lower_first(std::string(reading(broken).name)) + " fails";
      pen.sign(look::Sign::fails, {box.x + 9, box.y + 45}, 8);
      pen.text(box.x + 26, box.y + 51, second, Face::bold, type::kLabel, theme.fails);
    } else if (then.state != State::unknown) {
      const Figure& spare = trial.outlook[R::power_spare_min];
      if (spare.state != State::unknown) {
        second = "battery to spare " + say_quantity(spare.value, Unit::minute, 0, session.style());
        pen.text(box.x, box.y + 51, second, Face::regular, type::kLabel, theme.ink2);
      }
    }
    const std::string chance = figure_text(R::pace_chance_of_target_pct, then, session.style());
    if (w > 340 && std::isfinite(then.value)) {
      const float x1 = box.right() - 120, x0 = x1 - 70;
      const auto at = [&](double pct) { return x0 + 70 * float(pct / 100); };
      pen.dumbbell(x0, x1, box.y + 24, at(now.value), at(then.value),
                   then.value >= now.value ? theme.holds : theme.fails);
    }
    pen.figure(box.right() - 30, box.y + 32, chance, type::kValue, broken == R::count ? theme.ink : theme.fails,
               look::Align::right);
    pen.icon(Icon::chev, box.right() - 20, box.y + 14, 20, theme.ink);
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
