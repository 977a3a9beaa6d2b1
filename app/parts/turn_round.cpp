// Turned round: a target to reach, and for each lever that may change the value that just reaches it, its price and
// the links that it touches.
#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

#include "app/parts/change.h"
#include "app/parts/dial.h"
#include "app/parts/keypad.h"
#include "app/parts/ui.h"
#include "core/outing/solve.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;

namespace {

constexpr Link kChain[] = {Link::battery, Link::radio, Link::feedline, Link::antenna, Link::sky, Link::contacts};

std::string goal_text(const Turn& turn, const Style& style) {
  return say_quantity(turn.wanted, reading(turn.reading).unit, reading(turn.reading).digits, style);
}

/// "12 to 14 Ah": the unit once where both have the same.
std::string change_text(const std::string& before, const std::string& after) {
  if (before == after) return after;
  const std::size_t one = before.rfind(' '), other = after.rfind(' ');
  const bool same_unit = one != std::string::npos && other != std::string::npos &&
                         before.substr(one) == after.substr(other) && before.find(' ') == one;
  return (same_unit ? before.substr(0, one) : before) + " to " + after;
}

/// What a value to reach would take: the first lever that may change and can do it.
std::string takes(const Session& session, double wanted) {
  const Turn& turn = session.view.turn;
  for (const Answer& answer : turn_round(session.outing(), turn.may, {turn.reading, wanted}, session.style()))
    if (answer.trouble.empty())
      return "takes " + lower_first(std::string(lever(answer.lever).name)) + " " + answer.said;
  return "none of the levers that may change does";
}

/// Another roll's weight against the plan's, where both are known.
std::string weight_change(const Session& session, const Answer& answer) {
  if (answer.lever != L::feedline_cable) return {};
  const Change change =
      compare(R::feedline_weight_g, answer.outlook[R::feedline_weight_g], session.outlook()[R::feedline_weight_g]);
  return change.kind == Change::Kind::none ? std::string{}
                                           : "weight " + say_change(R::feedline_weight_g, change, session.style());
}

std::string price_of(const Session& session, const Answer& answer) {
  const std::string weight = weight_change(session, answer);
  if (answer.price == R::count) return weight.empty() ? "nothing else gets worse" : weight;
  const Change change = compare(answer.price, answer.outlook[answer.price], session.outlook()[answer.price]);
  std::string text = lower_first(std::string(reading(answer.price).name)) + " " +
                     say_change(answer.price, change, session.style());
  const State state = answer.outlook[answer.price].state;
  if (state == State::tight || state == State::fails) text += ", " + std::string(state_word(state)) + " there";
  return weight.empty() ? text : text + ", " + weight;
}

/// "one step on, 13 Ah: 3 h 04, power to antenna −2 W"; empty where a step more gives nothing.
std::string beyond_of(const Session& session, const Turn& turn, const Answer& answer) {
  if (answer.beyond.said.empty()) return {};
  const Style& style = session.style();
  const bool listed = lever(answer.lever).kind == Kind::choice;
  std::string text = (listed ? "next, " : "one step on, ") + answer.beyond.said + ": " +
                     figure_text(turn.reading, answer.beyond.outlook[turn.reading], style);
  const R pays = answer.lever == L::feedline_cable ? R::feedline_weight_g : answer.price;
  if (pays == R::count) return text;
  const Change change = compare(pays, answer.beyond.outlook[pays], answer.outlook[pays]);
  if (change.kind == Change::Kind::none || change.kind == Change::Kind::same) return text;
  return text + ", " + lower_first(std::string(reading(pays).name)) + " " + say_change(pays, change, style);
}

/// Six links in a row, or three over three, each with what the answer does to it.
void links_row(Ui& ui, const Answer& answer, float x, float y, float step, bool two_rows) {
  const float left = x;
  for (const Link link : kChain) {
    if (two_rows && link == Link::antenna) x = left, y += 34;
    const Touch touch = touched(ui.session.outlook(), answer.outlook, link);
    ui.pen.icon(icon_of(link), x, y, 22, touch == Touch::same ? ui.theme.ink2 : ui.theme.ink);
    const look::Delta delta = touch == Touch::better  ? look::Delta::better
                              : touch == Touch::worse ? look::Delta::worse
                                                      : look::Delta::same;
    if (touch != Touch::unknown)
      ui.pen.delta(delta, x + 27, y + 17,
                   touch == Touch::better  ? ui.theme.holds
                   : touch == Touch::worse ? ui.theme.fails
                                           : ui.theme.ink2,
                   11);
    x += step;
  }
}

std::string links_spoken(const Session& session, const Answer& answer) {
  std::string text;
  for (const Link link : kChain) {
    const Touch touch = touched(session.outlook(), answer.outlook, link);
    if (touch == Touch::same || touch == Touch::unknown) continue;
    text += ", " + std::string(link_name(link)) + (touch == Touch::better ? " better" : " worse");
  }
  return text;
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
              .text = goal_text(turn, style),
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
                                                    .was = goal_text(turn, session.style()),
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

void Ui::turn_answers() {
  const Turn turn = session.view.turn;
  if (turn.by_kind) return fits_answers();
  const Style& style = session.style();
  const Reading& row_of = reading(turn.reading);
  std::vector<L> in_order;
  for (const L id : turn.levers)
    if (std::find(turn.may.begin(), turn.may.end(), id) != turn.may.end()) in_order.push_back(id);
  const std::vector<Answer> answers =
      gs::turn_round(session.outing(), in_order, {turn.reading, turn.wanted}, style);
  const auto ways =
      std::count_if(answers.begin(), answers.end(), [](const Answer& a) { return a.trouble.empty(); });
  title(std::string(link_name(row_of.link)) + ", turned round", "turn:title");
  constexpr const char* kCounted[] = {"No way",    "One way",   "Two ways", "Three ways",
                                      "Four ways", "Five ways", "Six ways", "Seven ways"};
  const std::string counted =
      std::size_t(ways) < std::size(kCounted) ? kCounted[ways] : std::to_string(ways) + " ways";
  section(counted + " to " + lower_first(std::string(row_of.name)) + " " + goal_text(turn, style) + ".",
          "turn:ways");
  paragraph("Each changes one thing only, and just reaches it.", "turn:each", theme.ink2);
  gap(4);
  open_group(Role::list, "turn:answers", "Answers", {x, y, w, 0});
  for (const Answer& answer : answers) {
    rule();
    const Lever& lever_row = lever(answer.lever);
    const std::string name(lever_row.name), id = "turn:take:" + std::string(lever_row.key);
    if (!answer.trouble.empty()) {
      const float names = float(pen.lines(name, w, Face::bold, type::kBody).size()) - 1;
      const float words = float(pen.lines(answer.trouble, w - 30, Face::regular, type::kLabel).size()) - 1;
      const float rest = names * type::line_height(type::kBody);
      const Box box = take(64 + rest + words * type::line_height(type::kLabel));
      pen.paragraph(box.x, box.y + 26, w, name, Face::bold, type::kBody, theme.ink);
      pen.sign(look::Sign::fails, {box.x + 9, box.y + 46 + rest}, 8);
      pen.paragraph(box.x + 26, box.y + 52 + rest, box.w - 30, answer.trouble, Face::regular, type::kLabel,
                    theme.ink2);
      node(Role::text, id, name + ": " + answer.trouble, box);
      continue;
    }
    const std::string before = value_text(session.plan(), answer.lever, style);
    const std::string change = change_text(before, answer.said);
    const std::string price = price_of(session, answer);
    const State state =
        answer.outlook[turn.reading].state == State::none || answer.outlook[turn.reading].state == State::unknown
            ? standing(answer.outlook, row_of.link).state
            : answer.outlook[turn.reading].state;
    // from the top down: name with the change beside or under it, state with the price beside or under it, links
    const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
    const bool own_line =
        pen.width(name, Face::bold, type::kBody) + pen.figure_width(change, type::kValue) > w - 20;
    const std::vector<std::string_view> names =
        pen.lines(name, own_line ? w : w - pen.figure_width(change, type::kValue), Face::bold, type::kBody);
    const bool fits = pen.figure_width(change, type::kValue) <= w;
    const std::vector<std::string_view> changes = pen.lines(change, w, Face::bold, type::kBody);
    const float change_h = !own_line ? 0 : fits ? 32 : step * float(changes.size());
    const float word_w = pen.width(state_word(state), Face::bold, type::kBody);
    const bool price_below = 44 + word_w + pen.width(price, Face::regular, type::kLabel) > w;
    const std::vector<std::string_view> prices =
        pen.lines(price, price_below ? w : w - 44 - word_w, Face::regular, type::kLabel);
    const Figure& chance = answer.outlook[R::pace_chance_of_target_pct];
    const std::string chance_text = figure_text(R::pace_chance_of_target_pct, chance, style);
    const float chance_w = chance_text.empty() ? 0 : pen.figure_width(chance_text, type::kLead) + 12;
    const bool chance_below = w - chance_w < 6 * 42;
    const bool two_rows = w < 6 * 42;
    const std::string beyond = beyond_of(session, turn, answer);
    const std::vector<std::string_view> beyonds = pen.lines(beyond, w, Face::regular, type::kLabel);
    const float beyond_h = beyond.empty() ? 0 : small * float(beyonds.size());
    const float names_h = step * float(names.size() - 1);
    const float height = 28 + names_h + change_h + 30 + (price_below ? small * float(prices.size()) : 0) +
                         beyond_h + 18 + (two_rows ? 68 : 34) + (chance_below && !chance_text.empty() ? 30 : 0);
    const Box box = take(height);
    const ImU32 fill = hand.down(id) ? theme.fold : theme.paper;
    if (hand.down(id)) pen.fill(box, fill);
    pen.push_ground(fill);
    float base = box.y + 28;
    for (const std::string_view line : names) {
      pen.text(box.x, base, line, Face::bold, type::kBody, theme.ink);
      base += step;
    }
    base -= step;
    if (!own_line) {
      pen.figure(box.right(), base + 2, change, type::kValue, theme.ink, look::Align::right);
    } else if (fits) {
      base += 32;
      pen.figure(box.right(), base, change, type::kValue, theme.ink, look::Align::right);
    } else {
      for (const std::string_view line : changes) {
        base += step;
        pen.text(box.right(), base, line, Face::bold, type::kBody, theme.ink, look::Align::right);
      }
    }
    base += 30;
    pen.sign(sign_of(state), {box.x + 10, base - 6}, 9);
    pen.text(box.x + 28, base, state_word(state), Face::bold, type::kBody, colour_of(theme, state));
    for (const std::string_view line : prices) {
      if (price_below) base += small;
      pen.text(price_below ? box.x : box.x + 38 + word_w, base, line, Face::regular, type::kLabel, theme.ink2);
    }
    if (!beyond.empty())
      for (const std::string_view line : beyonds) {
        base += small;
        pen.text(box.x, base, line, Face::regular, type::kLabel, theme.ink2);
      }
    const float links_y = base + 14;
    const float words_w = pen.width("chance", Face::regular, type::kLabel);
    const bool with_words = !chance_text.empty() && (chance_below || box.w - chance_w - words_w > 6 * 52);
    const float chance_base = chance_below ? box.bottom() - 10 : links_y + 20;
    if (!chance_text.empty())
      pen.figure(box.right(), chance_base, chance_text, type::kLead, theme.ink, look::Align::right);
    if (with_words)
      pen.text(box.right() - chance_w, chance_base - 1, "chance", Face::regular, type::kLabel, theme.ink2,
               look::Align::right);
    const float links_w = chance_below ? box.w : box.w - chance_w - (with_words ? words_w + 10 : 0);
    links_row(*this, answer, box.x, links_y, std::min(64.0F, links_w / (two_rows ? 3 : 6)), two_rows);
    pen.pop_ground();
    mirror::Node record;
    record.role = Role::button;
    record.id = id;
    record.name = name + " from " + before + " to " + answer.said + ", " + std::string(state_word(state)) + ", " +
                  price + (beyond.empty() ? std::string{} : ", " + beyond) + links_spoken(session, answer) +
                  (chance_text.empty() ? std::string{} : ", chance of target " + chance_text) + ". Take it";
    if (target(std::move(record), box, 0)) {
      session.set_all(answer.sets, name + " " + answer.said);
      session.view.panel = Panel::none;
      wake_at(now_s);
    }
  }
  if (answers.empty()) paragraph("Nothing may change, so nothing can.", "turn:nothing", theme.ink2);
  close_group();
}

}  // namespace gs::parts
