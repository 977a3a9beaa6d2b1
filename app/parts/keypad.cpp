// Typing a value with our own keys: a row of units, digits, usual value, range and verdict before anything is set.
#include "app/parts/keypad.h"

#include <algorithm>
#include <cmath>
#include <tuple>

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

}  // namespace

KeypadAnswer keypad(Ui& ui, const KeypadAsk& ask) {
  View& view = ui.session.view;
  look::Pen& pen = ui.pen;
  const look::Theme& theme = ui.theme;
  const Lever& row = ask.row;
  const double most = ask.most;
  const Style& style = ui.session.style();
  const std::span<const UnitChoice> units = unit_choices(row.unit);
  const UnitChoice* unit = units.empty() ? nullptr : &units[std::min(view.unit, units.size() - 1)];
  const char sign = style.decimal_sign;
  const double number = typed_number(view.typed);
  const double value = unit && std::isfinite(number) ? to_base(*unit, number) : number;
  const bool in_range = value >= row.least && value <= most;
  const std::string range =
      print_quantity(row.least, row.unit, digits_needed(row.least, row.digits), style).number + " to " +
      say_lever(row, most, style);
  const std::string name(row.name);
  KeypadAnswer answer;

  const bool beside = ui.layout == look::Layout::on_side;  // little height: keys stand beside the display
  const float left = ui.x, full_w = ui.w;
  if (beside) ui.w = (full_w - 16) / 2;
  const Box whole{ui.x, ui.y, full_w, 0};
  const std::size_t group_at = ui.tree.nodes.size();
  ui.open_group(Role::dialog, "keypad", "Type " + name, whole);
  const std::vector<std::string_view> names = pen.lines(name, ui.w - 56, Face::bold, type::kLead);
  const float name_step = type::line_height(type::kLead);
  const Box head = ui.take(std::max(48.0F, float(names.size()) * name_step + 6));
  float name_base = look::Pen::centred(head.mid_y(), type::kLead) - float(names.size() - 1) * name_step / 2;
  for (const std::string_view line : names) {
    pen.text(head.x, name_base, line, Face::bold, type::kLead, theme.ink);
    name_base += name_step;
  }
  ui.node(Role::heading, "keypad:title", "Type " + name, head).level = 2;
  if (ui.icon_button({head.right() - 48, head.y, 48, 48}, "keypad:close", "Close", Icon::close, theme.ink)) {
    answer.closed = true;
    ui.wake_at(ui.now_s);
  }

  // display: range and old value left, what is typed right, or under them where one line is too short for both
  const std::string shown =
      view.typed.empty() ? std::string{} : view.typed + " " + std::string(unit ? unit->symbol : "");
  const bool wrong = std::isfinite(value) && !in_range;
  const Face range_face = wrong ? Face::bold : Face::regular;
  const float words_w = std::max(pen.width(range, range_face, type::kLabel) + (wrong ? 24 : 0),
                                 pen.width("was " + ask.was, Face::regular, type::kLabel));
  const float typed_w = std::max(40.0F, pen.figure_width(shown, type::kValue));
  const bool under = words_w + typed_w + 48 > ui.w;
  const float words_room = ui.w - 24 - (wrong ? 24 : 0);
  const std::vector<std::string_view> range_lines = pen.lines(range, words_room, range_face, type::kLabel);
  const std::string was = "was " + ask.was;
  const std::vector<std::string_view> was_lines = pen.lines(was, words_room, Face::regular, type::kLabel);
  const float small = type::line_height(type::kLabel);
  const float words_h = float(range_lines.size() + was_lines.size()) * small;
  const Box display = ui.take(under ? words_h + 60 : 72);
  pen.fill(display, theme.fold, look::radius::kKey);
  {
    const look::Ground ground(pen, theme.fold);
    const ImU32 colour = wrong ? theme.fails : theme.ink2;
    float text_x = display.x + 12, base = display.y + (under ? 24 : 30);
    if (wrong) {
      pen.sign(look::Sign::fails, {text_x + 8, base - 6}, 8, false);
      text_x += 24;
    }
    for (const std::string_view line : range_lines) {
      pen.text(text_x, base, line, range_face, type::kLabel, colour);
      base += small;
    }
    base += under ? 0 : 5;
    for (const std::string_view line : was_lines) {
      pen.text(display.x + 12, base, line, Face::regular, type::kLabel, theme.ink2);
      base += small;
    }
    const float size = pen.figure_width(shown, type::kFigure) < display.w * 0.5F ? type::kFigure : type::kValue;
    const float mid = under ? display.bottom() - 28 : display.mid_y();
    if (shown.empty()) {
      pen.line({display.right() - 20, mid - 18}, {display.right() - 20, mid + 18}, theme.blue, 2);
    } else {
      pen.figure(display.right() - 14, look::Pen::centred(mid, size), shown, size, theme.ink, look::Align::right);
    }
  }

  // what it would do, before it is set
  std::string verdict_text = "nothing typed yet";
  State verdict_state = State::none;
  if (std::isfinite(value) && !in_range) {
    verdict_text = range;
    verdict_state = State::fails;
  } else if (in_range) {
    std::tie(verdict_text, verdict_state) = ask.would(value);
  }
  const float verdict_x = ui.x + (verdict_state == State::none ? 0 : 28);
  const std::vector<std::string_view> verdict_lines =
      pen.lines(verdict_text, ui.right() - verdict_x, Face::regular, type::kLabel);
  const Box verdict_box = ui.take(8 + 22 * float(std::clamp<std::size_t>(verdict_lines.size(), 1, 2)));
  if (verdict_state != State::none)
    pen.sign(sign_of(verdict_state), {ui.x + 10, verdict_box.y + 16}, look::sign::kList);
  for (std::size_t i = 0; i < std::min<std::size_t>(2, verdict_lines.size()); ++i)
    pen.text(verdict_x, verdict_box.y + 21 + 22 * float(i), verdict_lines[i], Face::regular, type::kLabel,
             theme.ink);
  ui.node(Role::status, "keypad:typed", (shown.empty() ? "nothing typed" : shown) + ", " + verdict_text,
          verdict_box)
      .live = true;
  ui.gap(4);

  if (units.size() > 1) {
    std::vector<Ui::Chip> items;
    for (std::size_t i = 0; i < units.size(); ++i)
      items.push_back(
          {key_id("unit=" + std::string(units[i].symbol)), std::string(units[i].symbol), {}, i == view.unit});
    const int tapped = ui.chips("keypad:units", "Unit", items);
    if (tapped >= 0) {
      if (std::isfinite(value)) view.typed = retyped(from_base(units[std::size_t(tapped)], value), sign);
      view.unit = std::size_t(tapped);
      ui.wake_at(ui.now_s);
    }
    ui.gap();
  }

  const float display_bottom = ui.y;
  if (beside) ui.column(left + ui.w + 16, ui.w, whole.y);
  const bool negative = row.least < 0;
  const std::string sign_key(1, sign);
  const std::string_view keys[] = {"7", "8", "9", "4", "5", "6", "1", "2", "3", sign_key, "0", "erase"};
  const float foot_h = beside ? 0 : space::kTargetMain + space::kGap;
  const float room = ui.surface.bottom() - ui.y - foot_h - 12 - (negative ? 64 : 0);
  const float key_h = std::clamp((room - 3 * space::kGap) / 4, space::kTarget, 64.0F);
  const float key_w = (ui.w - 2 * space::kGap) / 3;
  const auto type_key = [&](std::string_view key) {
    if (key == "erase") {
      if (!view.typed.empty()) view.typed.pop_back();
    } else if (key == "minus") {
      if (!view.typed.empty() && view.typed.front() == '-') {
        view.typed.erase(0, 1);
      } else {
        view.typed.insert(0, "-");
      }
    } else if (view.typed.size() < kMostTyped && !(key == sign_key && view.typed.find(sign) != std::string::npos)) {
      view.typed += key;
    }
    ui.wake_at(ui.now_s);
  };
  for (std::size_t i = 0; i < std::size(keys); ++i) {
    const Box box{ui.x + float(i % 3) * (key_w + space::kGap), ui.y + float(i / 3) * (key_h + space::kGap), key_w,
                  key_h};
    if (keys[i] == "erase") {
      pen.fill(box, ui.hand.down(key_id("erase")) ? theme.solid : theme.fold, look::radius::kKey);
      pen.outline(box, theme.ink2, look::stroke::kOutline, look::radius::kKey);
      pen.icon(Icon::erase, box.mid_x() - 12, box.mid_y() - 12, 24,
               ui.hand.down(key_id("erase")) ? theme.on_solid : theme.ink);
      mirror::Node record;
      record.role = Role::button;
      record.id = key_id("erase");
      record.name = "Erase";
      if (ui.target(std::move(record), box, look::radius::kKey)) type_key("erase");
    } else {
      const std::string spoken =
          keys[i] == sign_key ? (sign == ',' ? "Decimal comma" : "Decimal point") : std::string(keys[i]);
      if (ui.button_in(box, key_id(keys[i]), keys[i], Weight::plain, Icon::count, type::kValue, true, spoken,
                       look::radius::kKey))
        type_key(keys[i]);
    }
  }
  ui.y += 4 * key_h + 4 * space::kGap;
  if (negative && ui.button_in(ui.take(space::kTarget), key_id("minus"), "+ / \u2212", Weight::plain, Icon::count,
                               type::kBody, true, "Change sign"))
    type_key("minus");
  if (negative) ui.gap();

  // foot: Clear, Usual, Set
  const bool has_usual = std::isfinite(ask.usual);
  const float keys_bottom = ui.y;
  if (beside) ui.column(left, ui.w, display_bottom);
  const std::string usual_label = has_usual ? "Usual, " + say_lever(row, ask.usual, style) : std::string{};
  const std::string set_label = in_range ? "Set " + shown : "Set";
  Box clear{}, usual{}, set{};
  if (ui.w < 300) {  // one below the other, the main one first
    set = ui.take(space::kTargetMain);
    ui.gap();
    if (has_usual) usual = ui.take(space::kTargetMain), ui.gap();
    clear = ui.take(space::kTarget);
  } else {
    const Box foot = ui.take(space::kTargetMain);
    const float part = (ui.w - (has_usual ? 2 : 1) * space::kGap) / (has_usual ? 10.0F : 7.0F);
    clear = {foot.x, foot.y, part * 2.6F, foot.h};
    usual = {clear.right() + space::kGap, foot.y, part * 3.6F, foot.h};
    const float set_x = has_usual ? usual.right() + space::kGap : usual.x;
    set = {set_x, foot.y, foot.right() - set_x, foot.h};
  }
  if (ui.button_in(clear, key_id("clear"), "Clear", Weight::plain, Icon::count, type::kLabel)) {
    view.typed.clear();
    ui.wake_at(ui.now_s);
  }
  if (has_usual && ui.button_in(usual, key_id("usual"), usual_label, Weight::plain, Icon::count, type::kLabel)) {
    answer.usual = answer.closed = true;
    ui.wake_at(ui.now_s);
  }
  if (ui.button_in(set, key_id("set"), set_label, Weight::main, Icon::count, type::kBody, in_range)) {
    answer.set = value;
    answer.closed = true;
    ui.wake_at(ui.now_s);
  }
  if (beside) ui.column(left, full_w, std::max(ui.y, keys_bottom));
  ui.tree.nodes[group_at].h = ui.y - whole.y;
  ui.close_group();
  return answer;
}

void Ui::keypad() {
  const L id = session.view.lever;
  const Lever& row = lever(id);
  const Plan& plan = session.plan();
  const double cap = row.cap ? row.cap(plan) : row.most;
  const KeypadAnswer answer =
      parts::keypad(*this, {.row = row,
                            .most = std::isfinite(cap) ? std::min(cap, row.most) : row.most,
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
