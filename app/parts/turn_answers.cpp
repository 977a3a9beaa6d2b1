// Turned round: for each lever that may change the value that just reaches the target, its price and the links that
// it touches.
#include <algorithm>
#include <iterator>

#include "app/parts/change.h"
#include "app/parts/ui.h"
#include "core/outing/solve.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

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

/// A lever that cannot do it, and why.
void no_way(Ui& ui, const Answer& answer) {
  const std::string name(lever(answer.lever).name);
  const float names = float(ui.pen.lines(name, ui.w, Face::bold, type::kBody).size()) - 1;
  const float words = float(ui.pen.lines(answer.trouble, ui.w - 30, Face::regular, type::kLabel).size()) - 1;
  const float rest = names * type::line_height(type::kBody);
  const Box box = ui.take(64 + rest + words * type::line_height(type::kLabel));
  ui.pen.paragraph(box.x, box.y + 26, ui.w, name, Face::bold, type::kBody, ui.theme.ink);
  ui.pen.sign(look::Sign::fails, {box.x + 9, box.y + 46 + rest}, 8);
  ui.pen.paragraph(box.x + 26, box.y + 52 + rest, box.w - 30, answer.trouble, Face::regular, type::kLabel,
                   ui.theme.ink2);
  ui.node(Role::text, "turn:take:" + std::string(lever(answer.lever).key), name + ": " + answer.trouble, box);
}

/// What an answer says, in words.
struct Said {
  std::string name, before, change, price, beyond, chance;
  State state;
};

Said said_of(const Session& session, const Turn& turn, const Answer& answer) {
  const Style& style = session.style();
  const State reached = answer.outlook[turn.reading].state;
  const bool judged = reached != State::none && reached != State::unknown;
  Said said{
      .name = std::string(lever(answer.lever).name),
      .before = value_text(session.plan(), answer.lever, style),
      .change = {},
      .price = price_of(session, answer),
      .beyond = beyond_of(session, turn, answer),
      .chance = figure_text(R::pace_chance_of_target_pct, answer.outlook[R::pace_chance_of_target_pct], style),
      .state = judged ? reached : standing(answer.outlook, reading(turn.reading).link).state};
  said.change = change_text(said.before, answer.said);
  return said;
}

/// From the top down: name with the change beside or under it, state with the price beside or under it, a step
/// beyond, links with the chance beside or under them.
struct Laid {
  std::vector<std::string_view> names, changes, prices, beyonds;  // lines; changes: where it fits on none
  bool change_beside, change_fits, price_below, chance_below, two_rows;
  float word_w, chance_w, height;
};

Laid laid_out(const Ui& ui, const Said& said) {
  const look::Pen& pen = ui.pen;
  const float w = ui.w, step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  constexpr float kLinks = 6 * 42;
  Laid laid{};
  const float change_w = pen.figure_width(said.change, type::kValue);
  laid.change_beside = pen.width(said.name, Face::bold, type::kBody) + change_w <= w - 20;
  laid.names = pen.lines(said.name, laid.change_beside ? w - change_w : w, Face::bold, type::kBody);
  laid.change_fits = change_w <= w;
  laid.changes = pen.lines(said.change, w, Face::bold, type::kBody);
  laid.word_w = pen.width(state_word(said.state), Face::bold, type::kBody);
  laid.price_below = 44 + laid.word_w + pen.width(said.price, Face::regular, type::kLabel) > w;
  laid.prices = pen.lines(said.price, laid.price_below ? w : w - 44 - laid.word_w, Face::regular, type::kLabel);
  if (!said.beyond.empty()) laid.beyonds = pen.lines(said.beyond, w, Face::regular, type::kLabel);
  laid.chance_w = said.chance.empty() ? 0 : pen.figure_width(said.chance, type::kLead) + 12;
  laid.chance_below = w - laid.chance_w < kLinks;
  laid.two_rows = w < kLinks;
  const float change_h = laid.change_beside ? 0 : laid.change_fits ? 32 : step * float(laid.changes.size());
  laid.height = 28 + step * float(laid.names.size() - 1) + change_h + 30 +
                (laid.price_below ? small * float(laid.prices.size()) : 0) + small * float(laid.beyonds.size()) +
                18 + (laid.two_rows ? 68 : 34) + (laid.chance_below && !said.chance.empty() ? 30 : 0);
  return laid;
}

void draw_foot(Ui& ui, const Answer& answer, const Said& said, const Laid& laid, Box box, float links_y) {
  const float words_w = ui.pen.width("chance", Face::regular, type::kLabel);
  const bool with_words = !said.chance.empty() && (laid.chance_below || box.w - laid.chance_w - words_w > 6 * 52);
  const float base = laid.chance_below ? box.bottom() - 10 : links_y + 20;
  if (!said.chance.empty())
    ui.pen.figure(box.right(), base, said.chance, type::kLead, ui.theme.ink, look::Align::right);
  if (with_words)
    ui.pen.text(box.right() - laid.chance_w, base - 1, "chance", Face::regular, type::kLabel, ui.theme.ink2,
                look::Align::right);
  const float links_w = laid.chance_below ? box.w : box.w - laid.chance_w - (with_words ? words_w + 10 : 0);
  links_row(ui, answer, box.x, links_y, std::min(64.0F, links_w / (laid.two_rows ? 3 : 6)), laid.two_rows);
}

void draw_answer(Ui& ui, const Answer& answer, const Said& said, const Laid& laid, Box box) {
  look::Pen& pen = ui.pen;
  const look::Theme& theme = ui.theme;
  const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  float base = box.y + 28;
  for (const std::string_view line : laid.names) {
    pen.text(box.x, base, line, Face::bold, type::kBody, theme.ink);
    base += step;
  }
  base -= step;
  if (laid.change_beside) {
    pen.figure(box.right(), base + 2, said.change, type::kValue, theme.ink, look::Align::right);
  } else if (laid.change_fits) {
    base += 32;
    pen.figure(box.right(), base, said.change, type::kValue, theme.ink, look::Align::right);
  } else {
    for (const std::string_view line : laid.changes) {
      base += step;
      pen.text(box.right(), base, line, Face::bold, type::kBody, theme.ink, look::Align::right);
    }
  }
  base += 30;
  pen.sign(sign_of(said.state), {box.x + 10, base - 6}, 9);
  pen.text(box.x + 28, base, state_word(said.state), Face::bold, type::kBody, colour_of(theme, said.state));
  for (const std::string_view line : laid.prices) {
    if (laid.price_below) base += small;
    pen.text(laid.price_below ? box.x : box.x + 38 + laid.word_w, base, line, Face::regular, type::kLabel,
             theme.ink2);
  }
  for (const std::string_view line : laid.beyonds) {
    base += small;
    pen.text(box.x, base, line, Face::regular, type::kLabel, theme.ink2);
  }
  draw_foot(ui, answer, said, laid, box, base + 14);
}

/// A lever that does it; true when it was taken.
bool way(Ui& ui, const Turn& turn, const Answer& answer) {
  const std::string id = "turn:take:" + std::string(lever(answer.lever).key);
  const Said said = said_of(ui.session, turn, answer);
  const Laid laid = laid_out(ui, said);
  const Box box = ui.take(laid.height);
  const ImU32 fill = ui.hand.down(id) ? ui.theme.fold : ui.theme.paper;
  if (ui.hand.down(id)) ui.pen.fill(box, fill);
  {
    const look::Ground ground(ui.pen, fill);
    draw_answer(ui, answer, said, laid, box);
  }
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = said.name + " from " + said.before + " to " + answer.said + ", " +
                std::string(state_word(said.state)) + ", " + said.price +
                (said.beyond.empty() ? std::string{} : ", " + said.beyond) + links_spoken(ui.session, answer) +
                (said.chance.empty() ? std::string{} : ", chance of target " + said.chance) + ". Take it";
  return ui.target(std::move(record), box, 0);
}

std::string counted(const std::vector<Answer>& answers) {
  constexpr const char* kCounted[] = {"No way",    "One way",   "Two ways", "Three ways",
                                      "Four ways", "Five ways", "Six ways", "Seven ways"};
  const auto ways =
      std::size_t(std::count_if(answers.begin(), answers.end(), [](const Answer& a) { return a.trouble.empty(); }));
  return ways < std::size(kCounted) ? kCounted[ways] : std::to_string(ways) + " ways";
}

}  // namespace

void Ui::turn_answers() {
  const Turn turn = session.view.turn;
  if (turn.by_kind) return fits_answers();
  const Reading& row_of = reading(turn.reading);
  std::vector<L> in_order;
  for (const L id : turn.levers)
    if (std::find(turn.may.begin(), turn.may.end(), id) != turn.may.end()) in_order.push_back(id);
  // copied: one that is taken changes the plan
  const std::vector<Answer> answers = session.turned(in_order, {turn.reading, turn.wanted});
  title(std::string(link_name(row_of.link)) + ", turned round", "turn:title");
  section(counted(answers) + " to " + lower_first(std::string(row_of.name)) + " " +
              say_reading(turn.reading, turn.wanted, session.style()) + ".",
          "turn:ways");
  paragraph("Each changes one thing only, and just reaches it.", "turn:each", theme.ink2);
  gap(4);
  open_group(Role::list, "turn:answers", "Answers", {x, y, w, 0});
  for (const Answer& answer : answers) {
    rule();
    if (!answer.trouble.empty()) {
      no_way(*this, answer);
    } else if (way(*this, turn, answer)) {
      session.set_all(answer.sets, std::string(lever(answer.lever).name) + " " + answer.said);
      session.view.panel = Panel::none;
      wake_at(now_s);
    }
  }
  if (answers.empty()) paragraph("Nothing may change, so nothing can.", "turn:nothing", theme.ink2);
  close_group();
}

}  // namespace gs::parts
