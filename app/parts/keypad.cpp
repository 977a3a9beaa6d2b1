// Typing a value with our own keys: a row of units, digits, usual value, range and verdict before anything is set.
#include "app/parts/keypad.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/outing/lever_range.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

namespace {

constexpr std::size_t kMostTyped = 12;

/// The number in front of the person, in the chosen unit; NaN while there is none.
double typed_number(const std::string& typed) {
  std::string plain = typed;
  std::replace(plain.begin(), plain.end(), ',', '.');
  double number = 0;
  if (!plain.empty() && plain.back() == '.') plain.pop_back();
  if (!plain.empty() && plain.front() == '.') plain.insert(0, "0");
  return read_number(plain, number) ? number : std::nan("");
}

/// Shortest text of a converted number: what the person sees after changing the unit.
std::string retyped(double number, char sign) {
  std::string text = exact_text(std::round(number * 1e4) / 1e4);
  std::replace(text.begin(), text.end(), '.', sign);
  return text.size() > kMostTyped ? std::string{} : text;
}

std::string key_id(std::string_view key) { return "keypad:" + std::string(key); }

/// What stands typed, and whether it can be.
struct Typed {
  const UnitChoice* unit;  // null: the row has none to choose from
  double value;            // in the row's unit; NaN while there is none
  bool in_range;
  std::string range, shown;
  bool wrong() const { return std::isfinite(value) && !in_range; }
};

Typed typed_now(const Session& session, const KeypadAsk& ask) {
  const Lever& row = ask.row;
  const Style& style = session.style();
  const std::string& text = session.view.typed;
  const std::span<const UnitChoice> units = unit_choices(row.unit);
  const UnitChoice* unit = units.empty() ? nullptr : &units[std::min(session.view.unit, units.size() - 1)];
  const double number = typed_number(text);
  const double value = unit && std::isfinite(number) ? to_base(*unit, number) : number;
  return {.unit = unit,
          .value = value,
          .in_range = value >= row.least && value <= ask.most,
          .range = print_quantity(row.least, row.unit, digits_needed(row.least, row.digits), style).number +
                   " to " + say_lever(row, ask.most, style),
          .shown = text.empty() ? std::string{} : text + " " + std::string(unit ? unit->symbol : "")};
}

/// What it is that is typed; true when it is to be closed.
bool head(Ui& ui, const std::string& name) {
  const std::vector<std::string_view> lines = ui.pen.lines(name, ui.w - 56, Face::bold, type::kLead);
  const float step = type::line_height(type::kLead);
  const Box box = ui.take(std::max(48.0F, float(lines.size()) * step + 6));
  float base = look::Pen::centred(box.mid_y(), type::kLead) - float(lines.size() - 1) * step / 2;
  for (const std::string_view line : lines) {
    ui.pen.text(box.x, base, line, Face::bold, type::kLead, ui.theme.ink);
    base += step;
  }
  ui.node(Role::heading, "keypad:title", "Type " + name, box).level = 2;
  return ui.icon_button({box.right() - 48, box.y, 48, 48}, "keypad:close", "Close", Icon::close, ui.theme.ink);
}

/// Range and old value left, what is typed right, or under them where one line is too short for both.
void display(Ui& ui, const Typed& typed, const std::string& was) {
  look::Pen& pen = ui.pen;
  const look::Theme& theme = ui.theme;
  const bool wrong = typed.wrong();
  const Face range_face = wrong ? Face::bold : Face::regular;
  const float words_w = std::max(pen.width(typed.range, range_face, type::kLabel) + (wrong ? 24 : 0),
                                 pen.width(was, Face::regular, type::kLabel));
  const float typed_w = std::max(40.0F, pen.figure_width(typed.shown, type::kValue));
  const bool under = words_w + typed_w + 48 > ui.w;
  const float words_room = ui.w - 24 - (wrong ? 24 : 0);
  const std::vector<std::string_view> range_lines = pen.lines(typed.range, words_room, range_face, type::kLabel);
  const std::vector<std::string_view> was_lines = pen.lines(was, words_room, Face::regular, type::kLabel);
  const float small = type::line_height(type::kLabel);
  const float words_h = float(range_lines.size() + was_lines.size()) * small;
  const Box box = ui.take(under ? words_h + 60 : 72);
  pen.fill(box, theme.fold, look::radius::kKey);
  const look::Ground ground(pen, theme.fold);
  float text_x = box.x + 12, base = box.y + (under ? 24 : 30);
  if (wrong) {
    pen.sign(look::Sign::fails, {text_x + 8, base - 6}, 8, false);
    text_x += 24;
  }
  for (const std::string_view line : range_lines) {
    pen.text(text_x, base, line, range_face, type::kLabel, wrong ? theme.fails : theme.ink2);
    base += small;
  }
  base += under ? 0 : 5;
  for (const std::string_view line : was_lines) {
    pen.text(box.x + 12, base, line, Face::regular, type::kLabel, theme.ink2);
    base += small;
  }
  const float size = pen.figure_width(typed.shown, type::kFigure) < box.w * 0.5F ? type::kFigure : type::kValue;
  const float mid = under ? box.bottom() - 28 : box.mid_y();
  if (typed.shown.empty()) {
    pen.line({box.right() - 20, mid - 18}, {box.right() - 20, mid + 18}, theme.blue, 2);
  } else {
    pen.figure(box.right() - 14, look::Pen::centred(mid, size), typed.shown, size, theme.ink, look::Align::right);
  }
}

/// What it would do, before it is set.
void outcome(Ui& ui, const KeypadAsk& ask, const Typed& typed) {
  std::string words = "nothing typed yet";
  State state = State::none;
  if (typed.wrong()) {
    words = typed.range;
    state = State::fails;
  } else if (typed.in_range) {
    std::tie(words, state) = ask.would(typed.value);
  }
  const float left = ui.x + (state == State::none ? 0 : 28);
  const std::vector<std::string_view> lines = ui.pen.lines(words, ui.right() - left, Face::regular, type::kLabel);
  const std::size_t shown = std::clamp<std::size_t>(lines.size(), 1, 2);
  const Box box = ui.take(8 + 22 * float(shown));
  if (state != State::none) ui.pen.sign(sign_of(state), {ui.x + 10, box.y + 16}, look::sign::kList);
  for (std::size_t i = 0; i < std::min(shown, lines.size()); ++i)
    ui.pen.text(left, box.y + 21 + 22 * float(i), lines[i], Face::regular, type::kLabel, ui.theme.ink);
  ui.node(Role::status, "keypad:typed", (typed.shown.empty() ? "nothing typed" : typed.shown) + ", " + words, box)
      .live = true;
  ui.gap(4);
}

void unit_chips(Ui& ui, const Lever& row, double value) {
  View& view = ui.session.view;
  const std::span<const UnitChoice> units = unit_choices(row.unit);
  if (units.size() <= 1) return;
  std::vector<Ui::Chip> items;
  for (std::size_t i = 0; i < units.size(); ++i)
    items.push_back(
        {key_id("unit=" + std::string(units[i].symbol)), std::string(units[i].symbol), {}, i == view.unit});
  const int tapped = ui.chips("keypad:units", "Unit", items);
  if (tapped >= 0) {
    if (std::isfinite(value))
      view.typed = retyped(from_base(units[std::size_t(tapped)], value), ui.session.style().decimal_sign);
    view.unit = std::size_t(tapped);
    ui.wake_at(ui.now_s);
  }
  ui.gap();
}

void type_key(Ui& ui, std::string_view key) {
  std::string& typed = ui.session.view.typed;
  const char sign = ui.session.style().decimal_sign;
  const bool second_sign = key == std::string_view(&sign, 1) && typed.find(sign) != std::string::npos;
  if (key == "erase") {
    if (!typed.empty()) typed.pop_back();
  } else if (key == "minus") {
    if (!typed.empty() && typed.front() == '-') {
      typed.erase(0, 1);
    } else {
      typed.insert(0, "-");
    }
  } else if (typed.size() < kMostTyped && !second_sign) {
    typed += key;
  }
  ui.wake_at(ui.now_s);
}

bool erase_key(Ui& ui, Box box) {
  const std::string id = key_id("erase");
  const bool down = ui.hand.down(id);
  ui.pen.fill(box, down ? ui.theme.solid : ui.theme.fold, look::radius::kKey);
  ui.pen.outline(box, ui.theme.ink2, look::stroke::kOutline, look::radius::kKey);
  ui.pen.icon(Icon::erase, box.mid_x() - 12, box.mid_y() - 12, 24, down ? ui.theme.on_solid : ui.theme.ink);
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = "Erase";
  return ui.target(std::move(record), box, look::radius::kKey);
}

/// Digits, decimal sign, erase, and a sign's key where a value may be below 0; `foot_h`: what stands under them.
void digit_keys(Ui& ui, bool negative, float foot_h) {
  const char sign = ui.session.style().decimal_sign;
  const std::string_view sign_key(&sign, 1);
  const std::string_view keys[] = {"7", "8", "9", "4", "5", "6", "1", "2", "3", sign_key, "0", "erase"};
  const float room = ui.surface.bottom() - ui.y - foot_h - 12 - (negative ? 64 : 0);
  const float key_h = std::clamp((room - 3 * space::kGap) / 4, space::kTarget, 64.0F);
  const float key_w = (ui.w - 2 * space::kGap) / 3;
  for (std::size_t i = 0; i < std::size(keys); ++i) {
    const std::string_view key = keys[i];
    const Box box{ui.x + float(i % 3) * (key_w + space::kGap), ui.y + float(i / 3) * (key_h + space::kGap), key_w,
                  key_h};
    const std::string spoken =
        key == sign_key ? (sign == ',' ? "Decimal comma" : "Decimal point") : std::string(key);
    if (key == "erase" ? erase_key(ui, box)
                       : ui.button_in(box, key_id(key), key, Weight::plain, Icon::count, type::kValue, true, spoken,
                                      look::radius::kKey))
      type_key(ui, key);
  }
  ui.y += 4 * key_h + 4 * space::kGap;
  if (!negative) return;
  if (ui.button_in(ui.take(space::kTarget), key_id("minus"), "+ / \u2212", Weight::plain, Icon::count, type::kBody,
                   true, "Change sign"))
    type_key(ui, "minus");
  ui.gap();
}

/// Clear, Usual, Set.
void foot(Ui& ui, const KeypadAsk& ask, const Typed& typed, KeypadAnswer& answer) {
  const bool has_usual = std::isfinite(ask.usual);
  const std::string usual_label =
      has_usual ? "Usual, " + say_lever(ask.row, ask.usual, ui.session.style()) : std::string{};
  const std::string set_label = typed.in_range ? "Set " + typed.shown : "Set";
  Box clear{}, usual{}, set{};
  if (ui.w < 300) {  // one below the other, the main one first
    set = ui.take(space::kTargetMain);
    ui.gap();
    if (has_usual) usual = ui.take(space::kTargetMain), ui.gap();
    clear = ui.take(space::kTarget);
  } else {
    const Box row = ui.take(space::kTargetMain);
    const float part = (ui.w - (has_usual ? 2 : 1) * space::kGap) / (has_usual ? 10.0F : 7.0F);
    clear = {row.x, row.y, part * 2.6F, row.h};
    usual = {clear.right() + space::kGap, row.y, part * 3.6F, row.h};
    const float set_x = has_usual ? usual.right() + space::kGap : usual.x;
    set = {set_x, row.y, row.right() - set_x, row.h};
  }
  if (ui.button_in(clear, key_id("clear"), "Clear", Weight::plain, Icon::count, type::kLabel)) {
    ui.session.view.typed.clear();
    ui.wake_at(ui.now_s);
  }
  if (has_usual && ui.button_in(usual, key_id("usual"), usual_label, Weight::plain, Icon::count, type::kLabel)) {
    answer.usual = answer.closed = true;
    ui.wake_at(ui.now_s);
  }
  if (ui.button_in(set, key_id("set"), set_label, Weight::main, Icon::count, type::kBody, typed.in_range)) {
    answer.set = typed.value;
    answer.closed = true;
    ui.wake_at(ui.now_s);
  }
}

}  // namespace

KeypadAnswer keypad(Ui& ui, const KeypadAsk& ask) {
  const std::string name(ask.row.name);
  const Typed typed = typed_now(ui.session, ask);
  KeypadAnswer answer;
  const bool beside = ui.layout == look::Layout::on_side;  // little height: keys stand beside the display
  const float left = ui.x, full_w = ui.w;
  if (beside) ui.w = (full_w - 16) / 2;
  const Box whole{ui.x, ui.y, full_w, 0};
  const std::size_t group_at = ui.tree.nodes.size();
  ui.open_group(Role::dialog, "keypad", "Type " + name, whole);
  if (head(ui, name)) {
    answer.closed = true;
    ui.wake_at(ui.now_s);
  }
  display(ui, typed, "was " + ask.was);
  outcome(ui, ask, typed);
  unit_chips(ui, ask.row, typed.value);
  const float display_bottom = ui.y;
  if (beside) ui.column(left + ui.w + 16, ui.w, whole.y);
  digit_keys(ui, ask.row.least < 0, beside ? 0 : space::kTargetMain + space::kGap);
  const float keys_bottom = ui.y;
  if (beside) ui.column(left, ui.w, display_bottom);
  foot(ui, ask, typed, answer);
  if (beside) ui.column(left, full_w, std::max(ui.y, keys_bottom));
  ui.tree.nodes[group_at].h = ui.y - whole.y;
  ui.close_group();
  return answer;
}

void Ui::keypad() {
  const L id = session.view.lever;
  const Lever& row = lever(id);
  const Plan& plan = session.plan();
  const KeypadAnswer answer =
      parts::keypad(*this, {.row = row,
                            .most = most_of(plan, id),
                            .usual = usual_of(plan, id),
                            .was = value_text(plan, id, session.style()),
                            .would = [&](double value) {
                              const Plan tried = resolve(with(session.outing(), id, value));
                              const Verdict would = verdict(tried, evaluate(tried), session.style());
                              return std::pair{would.cause.empty() ? would.headline : would.cause, would.state};
                            }});
  if (answer.set) session.set(id, *answer.set);
  if (answer.usual) session.set(id, Value{});
  if (answer.closed) session.view.panel = Panel::none;
}

}  // namespace gs::parts
