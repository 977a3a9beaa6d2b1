// Typing a value with our own keys: a row of units, digits, usual value, range and verdict before anything is set.
#include <algorithm>
#include <cmath>

#include "app/parts/turn_round.h"
#include "app/parts/ui.h"
#include "core/outing/solve.h"

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

/// What a value to reach would take: the first lever that may change and can do it.
std::string takes(const Session& session, double wanted) {
  const Turn& turn = session.view.turn;
  for (const Answer& answer : turn_round(session.outing(), turn.may, {turn.reading, wanted}, session.style()))
    if (answer.trouble.empty())
      return "takes " + lower_first(std::string(lever(answer.lever).name)) + " " + answer.said;
  return "none of the levers that may change does";
}

std::string key_id(std::string_view key) { return "keypad:" + std::string(key); }

}  // namespace

void Ui::keypad() {
  View& view = session.view;
  const L id = view.lever;
  const bool target_typed = id == L::count;
  const std::string target_name = turn_name(view.turn);
  const Lever row = target_typed ? turn_row(view.turn, target_name) : lever(id);
  const Plan& plan = session.plan();
  const std::span<const UnitChoice> units = unit_choices(row.unit);
  const UnitChoice* unit = units.empty() ? nullptr : &units[std::min(view.unit, units.size() - 1)];
  const char sign = session.style().decimal_sign;
  const double cap = row.cap ? row.cap(plan) : row.most;
  const double most = std::isfinite(cap) ? std::min(cap, row.most) : row.most;
  const double number = typed_number(view.typed);
  const double value = unit && std::isfinite(number) ? to_base(*unit, number) : number;
  const bool in_range = value >= row.least && value <= most;
  const std::string range =
      print_quantity(row.least, row.unit, digits_needed(row.least, row.digits), session.style()).number + " to " +
      say_lever(row, most, session.style());
  const std::string name(row.name);
  const auto close = [&] {
    view.panel = target_typed ? Panel::turned : Panel::none;
    wake_at(now_s);
  };

  const bool beside = layout == look::Layout::on_side;  // little height: keys stand beside the display
  const float left = x, full_w = w;
  if (beside) w = (full_w - 16) / 2;
  const Box whole{x, y, full_w, 0};
  const std::size_t group_at = tree.nodes.size();
  open_group(Role::dialog, "keypad", "Type " + name, whole);
  const Box head = take(48);
  pen.text(head.x, look::Pen::centred(head.mid_y(), type::kLead), name, Face::bold, type::kLead, theme.ink);
  node(Role::heading, "keypad:title", "Type " + name, head).level = 2;
  if (icon_button({head.right() - 48, head.y, 48, 48}, "keypad:close", "Close", Icon::close, theme.ink)) close();

  // display: range and old value left, what is typed right
  const Box display = take(72);
  pen.fill(display, theme.fold, look::radius::kKey);
  const std::string shown =
      view.typed.empty() ? std::string{} : view.typed + " " + std::string(unit ? unit->symbol : "");
  {
    const look::Ground ground(pen, theme.fold);
    const bool wrong = std::isfinite(value) && !in_range;
    const ImU32 colour = wrong ? theme.fails : theme.ink2;
    float text_x = display.x + 12;
    if (wrong) {
      pen.sign(look::Sign::fails, {text_x + 8, display.y + 24}, 8, false);
      text_x += 24;
    }
    pen.text(text_x, display.y + 30, range, wrong ? Face::bold : Face::regular, type::kLabel, colour);
    pen.text(display.x + 12, display.y + 56,
             "was " + (target_typed ? say_lever(row, view.turn.wanted, session.style())
                                    : value_text(plan, id, session.style())),
             Face::regular, type::kLabel, theme.ink2);
    const float size = pen.figure_width(shown, type::kFigure) < display.w * 0.5F ? type::kFigure : type::kValue;
    const float base = look::Pen::centred(display.mid_y(), size);
    if (shown.empty()) {
      pen.line({display.right() - 20, display.y + 16}, {display.right() - 20, display.bottom() - 16}, theme.blue,
               2);
    } else {
      pen.figure(display.right() - 14, base, shown, size, theme.ink, look::Align::right);
    }
  }

  // what it would do, before it is set
  std::string verdict_text = "nothing typed yet";
  State verdict_state = State::none;
  if (std::isfinite(value) && !in_range) {
    verdict_text = range;
    verdict_state = State::fails;
  } else if (in_range && target_typed) {
    verdict_text = takes(session, value);
  } else if (in_range) {
    const Plan tried = resolve(with(session.outing(), id, value));
    const Outlook outlook = evaluate(tried);
    const Verdict would = verdict(tried, outlook, session.style());
    verdict_text = would.cause.empty() ? would.headline : would.cause;
    verdict_state = would.state;
  }
  const float verdict_x = x + (verdict_state == State::none ? 0 : 28);
  const std::vector<std::string_view> verdict_lines =
      pen.lines(verdict_text, right() - verdict_x, Face::regular, type::kLabel);
  const Box verdict_box = take(8 + 22 * float(std::clamp<std::size_t>(verdict_lines.size(), 1, 2)));
  if (verdict_state != State::none)
    pen.sign(sign_of(verdict_state), {x + 10, verdict_box.y + 16}, look::sign::kList);
  for (std::size_t i = 0; i < std::min<std::size_t>(2, verdict_lines.size()); ++i)
    pen.text(verdict_x, verdict_box.y + 21 + 22 * float(i), verdict_lines[i], Face::regular, type::kLabel,
             theme.ink);
  node(Role::status, "keypad:typed", (shown.empty() ? "nothing typed" : shown) + ", " + verdict_text, verdict_box)
      .live = true;
  gap(4);

  if (units.size() > 1) {
    std::vector<Chip> items;
    for (std::size_t i = 0; i < units.size(); ++i)
      items.push_back(
          {key_id("unit=" + std::string(units[i].symbol)), std::string(units[i].symbol), {}, i == view.unit});
    const int tapped = chips("keypad:units", "Unit", items);
    if (tapped >= 0) {
      if (std::isfinite(value)) view.typed = retyped(from_base(units[std::size_t(tapped)], value), sign);
      view.unit = std::size_t(tapped);
      wake_at(now_s);
    }
    gap();
  }

  const float display_bottom = y;
  if (beside) column(left + w + 16, w, whole.y);
  const bool negative = row.least < 0;
  const std::string sign_key(1, sign);
  const std::string_view keys[] = {"7", "8", "9", "4", "5", "6", "1", "2", "3", sign_key, "0", "erase"};
  const float foot_h = beside ? 0 : space::kTargetMain + space::kGap;
  const float room = surface.bottom() - y - foot_h - 12 - (negative ? 64 : 0);
  const float key_h = std::clamp((room - 3 * space::kGap) / 4, space::kTarget, 64.0F);
  const float key_w = (w - 2 * space::kGap) / 3;
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
    wake_at(now_s);
  };
  for (std::size_t i = 0; i < std::size(keys); ++i) {
    const Box box{x + float(i % 3) * (key_w + space::kGap), y + float(i / 3) * (key_h + space::kGap), key_w, key_h};
    if (keys[i] == "erase") {
      pen.fill(box, hand.down(key_id("erase")) ? theme.solid : theme.fold, look::radius::kKey);
      pen.outline(box, theme.ink2, look::stroke::kOutline, look::radius::kKey);
      pen.icon(Icon::erase, box.mid_x() - 12, box.mid_y() - 12, 24,
               hand.down(key_id("erase")) ? theme.on_solid : theme.ink);
      mirror::Node record;
      record.role = Role::button;
      record.id = key_id("erase");
      record.name = "Erase";
      if (target(std::move(record), box, look::radius::kKey)) type_key("erase");
    } else {
      const std::string spoken =
          keys[i] == sign_key ? (sign == ',' ? "Decimal comma" : "Decimal point") : std::string(keys[i]);
      if (button_in(box, key_id(keys[i]), keys[i], Weight::plain, Icon::count, type::kValue, true, spoken,
                    look::radius::kKey))
        type_key(keys[i]);
    }
  }
  y += 4 * key_h + 4 * space::kGap;
  if (negative && button_in(take(space::kTarget), key_id("minus"), "+ / \u2212", Weight::plain, Icon::count,
                            type::kBody, true, "Change sign"))
    type_key("minus");
  if (negative) gap();

  // foot: Clear, Usual, Set
  const double usual = target_typed ? std::nan("") : usual_of(plan, id);
  const bool has_usual = std::isfinite(usual);
  const float keys_bottom = y;
  if (beside) column(left, w, display_bottom);
  const Box foot = take(space::kTargetMain);
  const float part = (w - (has_usual ? 2 : 1) * space::kGap) / (has_usual ? 10.0F : 7.0F);
  if (button_in({foot.x, foot.y, part * 2.6F, foot.h}, key_id("clear"), "Clear", Weight::plain, Icon::count,
                type::kLabel)) {
    view.typed.clear();
    wake_at(now_s);
  }
  float next_x = foot.x + part * 2.6F + space::kGap;
  if (has_usual) {
    const std::string label = "Usual, " + say_lever(row, usual, session.style());
    if (button_in({next_x, foot.y, part * 3.6F, foot.h}, key_id("usual"), label, Weight::plain, Icon::count,
                  type::kLabel)) {
      session.set(id, Value{});
      close();
    }
    next_x += part * 3.6F + space::kGap;
  }
  const std::string set_label = in_range ? "Set " + shown : "Set";
  if (button_in({next_x, foot.y, foot.right() - next_x, foot.h}, key_id("set"), set_label, Weight::main,
                Icon::count, type::kBody, in_range)) {
    if (target_typed) {
      view.turn.wanted = value;
    } else {
      session.set(id, value);
    }
    close();
  }
  y = std::max(y, beside ? keys_bottom : y);
  tree.nodes[group_at].h = y - whole.y;
  close_group();
}

}  // namespace gs::parts
