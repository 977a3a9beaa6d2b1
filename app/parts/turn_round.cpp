// Turned round: a target to reach, and for each lever that may change the value that just reaches it, its price and
// the links that it touches.
#include "app/parts/turn_round.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "app/parts/change.h"
#include "app/parts/scale_bar.h"
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

/// Six links in a row, each with what the answer does to it.
void links_row(Ui& ui, const Answer& answer, float x, float y, float step) {
  for (const Link link : kChain) {
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

}  // namespace

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
  turn_goals();
  Turn& turn = session.view.turn;
  const Style& style = session.style();
  const std::string name = turn_name(turn);
  const Lever row = turn_row(turn, name);
  ScaleBar bar{.row = row,
               .text = goal_text(turn, style),
               .spoken = speak_quantity(turn.wanted, row.unit, row.digits, style),
               .value = turn.wanted,
               .most = turn.most};
  if (const Figure& now = session.outlook()[turn.reading]; std::isfinite(now.value)) {
    bar.mark = now.value;
    bar.mark_text = "plan " + figure_text(turn.reading, now, style);
    bar.mark_spoken = ", the plan has " + speak_quantity(now.value, row.unit, row.digits, style);
    bar.mark_colour = theme.pin;
  }
  const ScaleMove move = scale_bar(*this, bar);
  if (move.type) {
    session.view.panel = Panel::keypad;
    session.view.lever = L::count;
    session.view.typed.clear();
    session.view.unit = 0;
    wake_at(now_s);
  }
  if (!move.wanted) return;
  turn.wanted = *move.wanted;
  wake_at(now_s);
}

void Ui::turn_choices() {
  Turn& turn = session.view.turn;
  section("Which may change?", "turn:may");
  for (const L id : turn.levers) {
    const std::string name(lever(id).name), node_id = "turn:may:" + std::string(lever(id).key);
    const auto at = std::find(turn.may.begin(), turn.may.end(), id);
    const bool on = at != turn.may.end();
    const Box box = take(50);
    const Box tick{box.x, box.y + 9, 32, 32};
    if (on) {
      pen.fill(tick, theme.holds, 6);
      const look::Point strokes[] = {
          {tick.x + 7, tick.y + 17}, {tick.x + 14, tick.y + 24}, {tick.x + 26, tick.y + 9}};
      pen.polyline(strokes, theme.paper, 3.5F);
    } else {
      pen.outline(tick, theme.ink, look::stroke::kRule, 6);
    }
    pen.text(box.x + 48, look::Pen::centred(box.mid_y(), type::kBody), name, Face::regular, type::kBody, theme.ink);
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
      const Box box = take(64);
      pen.text(box.x, box.y + 26, name, Face::bold, type::kBody, theme.ink);
      pen.sign(look::Sign::fails, {box.x + 9, box.y + 46}, 8);
      const std::string words = pen.elided(answer.trouble, box.w - 30, Face::regular, type::kLabel);
      pen.text(box.x + 26, box.y + 52, words, Face::regular, type::kLabel, theme.ink2);
      node(Role::text, id, name + ": " + answer.trouble, box);
      continue;
    }
    const bool narrow = w < 420;
    const std::string beyond = beyond_of(session, turn, answer);
    const float beyond_h = beyond.empty() ? 0.0F : 24.0F;
    const Box box = take((narrow ? 140 : 112) + beyond_h);
    const ImU32 fill = hand.down(id) ? theme.fold : theme.paper;
    if (hand.down(id)) pen.fill(box, fill);
    pen.push_ground(fill);
    const std::string before = value_text(session.plan(), answer.lever, style);
    const std::string change = change_text(before, answer.said);
    const bool own_line =
        pen.width(name, Face::bold, type::kBody) + pen.figure_width(change, type::kValue) > box.w - 20;
    pen.text(box.x, box.y + 28, name, Face::bold, type::kBody, theme.ink);
    pen.figure(box.right(), box.y + (own_line ? 58 : 30), change, type::kValue, theme.ink, look::Align::right);
    const State state =
        answer.outlook[turn.reading].state == State::none || answer.outlook[turn.reading].state == State::unknown
            ? standing(answer.outlook, row_of.link).state
            : answer.outlook[turn.reading].state;
    const float second = box.y + (own_line ? 60 : 58);
    pen.sign(sign_of(state), {box.x + 10, second - 6}, 9);
    const float word_w =
        pen.text(box.x + 28, second, state_word(state), Face::bold, type::kBody, colour_of(theme, state));
    const std::string price = price_of(session, answer);
    if (own_line) {
      pen.text(box.x, second + 24, pen.elided(price, box.w, Face::regular, type::kLabel), Face::regular,
               type::kLabel, theme.ink2);
    } else {
      pen.text(box.x + 38 + word_w, second, pen.elided(price, box.w - 44 - word_w, Face::regular, type::kLabel),
               Face::regular, type::kLabel, theme.ink2);
    }
    if (!beyond.empty())
      pen.text(box.x, second + (own_line ? 48.0F : 24.0F), pen.elided(beyond, box.w, Face::regular, type::kLabel),
               Face::regular, type::kLabel, theme.ink2);
    const Figure& chance = answer.outlook[R::pace_chance_of_target_pct];
    const std::string chance_text = figure_text(R::pace_chance_of_target_pct, chance, style);
    const float third = box.bottom() - 36;
    const float chance_w = chance_text.empty() ? 0 : pen.figure_width(chance_text, type::kLead) + 12;
    if (!chance_text.empty())
      pen.figure(box.right(), third + 20, chance_text, type::kLead, theme.ink, look::Align::right);
    const float words_w = pen.width("chance", Face::regular, type::kLabel);
    const bool with_words = !chance_text.empty() && box.w - chance_w - words_w > 6 * 52;
    if (with_words)
      pen.text(box.right() - chance_w, third + 19, "chance", Face::regular, type::kLabel, theme.ink2,
               look::Align::right);
    links_row(*this, answer, box.x, third,
              std::min(64.0F, (box.w - chance_w - (with_words ? words_w + 10 : 0)) / 6));
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
