// Turned round: a target to reach, and which levers may change for it.
#include <algorithm>
#include <cmath>
#include <limits>

#include "app/parts/change.h"
#include "app/parts/dial.h"
#include "app/parts/keypad.h"
#include "app/parts/ui.h"
#include "core/outing/solve.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

/// What a value to reach would take: the first lever that may change and can do it.
std::string takes(const Session& session, double wanted) {
  const Turn& turn = session.view.turn;
  for (const L id : turn.may) {
    const Answer answer = solve_for(session.outing(), id, {turn.reading, wanted}, session.style());
    if (answer.trouble.empty()) return "takes " + lower_first(std::string(lever(id).name)) + " " + answer.said;
  }
  return "none of the levers that may change does";
}

/// The value to reach as a row, for its slider and the keypad; `name` lives as long as the row.
Lever turn_row(const Turn& turn, std::string_view name) {
  const Reading& row = reading(turn.reading);
  return {.key = "turn:wanted",
          .name = name,
          .link = row.link,
          .unit = row.unit,
          .digits = row.digits,
          .least = turn.step,
          .most = turn.most,
          .step = turn.step,
          .source = "what is asked for"};
}

std::string turn_name(const Turn& turn) { return std::string(reading(turn.reading).name) + " to reach"; }

}  // namespace

void Ui::turn_goals() {
  Turn& turn = session.view.turn;
  if (turn.goals.size() < 2) return;
  std::vector<Chip> items;
  for (const Turn::Goal& goal : turn.goals)
    items.push_back({"turn:goal=" + std::string(reading(goal.reading).key),
                     std::string(reading(goal.reading).name),
                     {},
                     goal.reading == turn.reading});
  const int tapped = chips("turn:goals", "To reach", items);
  if (tapped >= 0) {
    for (Turn::Goal& goal : turn.goals)
      if (goal.reading == turn.reading) goal.wanted = turn.wanted;  // asked again, it stands where it was left
    const Turn::Goal& goal = turn.goals[std::size_t(tapped)];
    turn.reading = goal.reading;
    turn.wanted = goal.wanted;
    turn.step = goal.step;
    turn.most = goal.most;
    wake_at(now_s);
  }
  gap();
}

void Ui::turn_target() {
  if (session.view.turn.by_kind) return fits_target();
  turn_goals();
  Turn& turn = session.view.turn;
  const Style& style = session.style();
  const std::string name = turn_name(turn);
  const Lever row = turn_row(turn, name);
  Dial target{.key = std::string(row.key),
              .row = row,
              .most = turn.most,
              .value = turn.wanted,
              .known = true,
              .text = say_reading(turn.reading, turn.wanted, style),
              .spoken = speak_quantity(turn.wanted, row.unit, row.digits, style)};
  if (const Figure& now = session.outlook()[turn.reading]; std::isfinite(now.value))
    target.note = "plan " + figure_text(turn.reading, now, style);
  const Dialled done = dial(*this, target);
  if (done.typing) {
    session.view.panel = Panel::keypad;
    session.view.lever = L::count;
    session.view.typed = *done.typing;
    session.view.unit = 0;
    wake_at(now_s);
  }
  if (!done.wanted) return;
  turn.wanted = *done.wanted;
  wake_at(now_s);
}

void Ui::turn_keypad() {
  Turn& turn = session.view.turn;
  const std::string name = turn_name(turn);
  const Lever row = turn_row(turn, name);
  const KeypadAnswer answer = parts::keypad(*this, {.row = row,
                                                    .most = turn.most,
                                                    .usual = std::numeric_limits<double>::quiet_NaN(),
                                                    .was = say_reading(turn.reading, turn.wanted, session.style()),
                                                    .would = [&](double value) {
                                                      return std::pair{takes(session, value), State::none};
                                                    }});
  if (answer.set) turn.wanted = *answer.set;
  if (answer.closed) session.view.panel = Panel::turned;
}

void Ui::turn_choices() {
  Turn& turn = session.view.turn;
  if (!turn.by_kind) section("Which may change?", "turn:may");
  for (const L id : turn.levers) {
    const std::string name(lever(id).name), node_id = "turn:may:" + std::string(lever(id).key);
    const auto at = std::find(turn.may.begin(), turn.may.end(), id);
    const bool on = at != turn.may.end();
    const std::vector<std::string_view> lines = pen.lines(name, w - 52, Face::regular, type::kBody);
    const float step = type::line_height(type::kBody);
    const Box box = take(std::max(50.0F, float(lines.size()) * step + 14));
    const Box tick{box.x, box.mid_y() - 16, 32, 32};
    if (on) {
      pen.fill(tick, theme.holds, 6);
      const look::Point strokes[] = {
          {tick.x + 7, tick.y + 17}, {tick.x + 14, tick.y + 24}, {tick.x + 26, tick.y + 9}};
      pen.polyline(strokes, theme.paper, 3.5F);
    } else {
      pen.outline(tick, theme.ink, look::stroke::kRule, 6);
    }
    float name_base = look::Pen::centred(box.mid_y(), type::kBody) - step * float(lines.size() - 1) / 2;
    for (const std::string_view line : lines) {
      pen.text(box.x + 48, name_base, line, Face::regular, type::kBody, theme.ink);
      name_base += step;
    }
    mirror::Node record;
    record.role = Role::button;
    record.id = node_id;
    record.name = name + (on ? " may change" : " stays as it is");
    if (target(std::move(record), box)) {
      if (on) {
        turn.may.erase(at);
      } else {
        turn.may.push_back(id);
      }
      wake_at(now_s);
    }
  }
  gap();
  if (button("turn:leave", "Leave the plan as it is", Weight::plain)) {
    session.view.panel = Panel::none;
    wake_at(now_s);
  }
}

}  // namespace gs::parts
