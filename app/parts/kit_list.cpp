// What is carried: a row an item with its spares; a tap on its words opens it for editing.
#include <algorithm>
#include <utility>

#include "app/parts/kit_parts.h"
#include "core/outing/archive.h"
#include "core/outing/kit_start.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

namespace {

/// What stands in for an item, in words; `alone`: a vital function hangs on this one piece.
std::string spare_words(const kit::Item& item, bool alone, bool function_vital) {
  if (item.backups > 0) return item.backups == 1 ? "1 spare" : std::to_string(item.backups) + " spares";
  if (alone) return "no spare";
  return !function_vital ? "not vital" : item.vital ? "has a stand-in" : "stands in";
}

bool is_vital(const KitSummary& kit, std::string_view function) {
  return std::any_of(kit.functions.begin(), kit.functions.end(),
                     [function](const KitFunction& one) { return one.vital && one.name == function; });
}

/// Name over weight on the left, what stands in beside it, and three targets on the right.
void item_row(Ui& ui, const std::vector<kit::Item>& items, std::size_t i, bool alone) {
  const kit::Item& item = items[i];
  const std::string id = "kit:" + std::to_string(i);
  const bool vital = is_vital(ui.session.plan().kit, item.function);
  const std::string spare = spare_words(item, alone, vital);
  const std::string weight = weight_words(item.weight_g * (item.backups + 1), ui.session.style());
  constexpr float kHands = 3 * space::kTarget, kDot = 20;
  const bool wide = ui.w >= 520;
  // a narrow row gives the place of a target that is not there to the words
  const float hands_w = wide || item.backups > 0 ? kHands : kHands - space::kTarget;
  const bool below = ui.w < 280;  // the hands under the words
  const float room = ui.w - (below ? 0 : hands_w + 12) - kDot;
  const float name_room = wide ? room - 200 : room;
  const std::vector<std::string_view> lines = ui.pen.lines(item.name, name_room, Face::bold, type::kBody);
  const std::string second = wide ? weight : spare + ", " + weight;
  const std::vector<std::string_view> second_lines = ui.pen.lines(second, name_room, Face::regular, type::kLabel);
  const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  const float text_h = float(lines.size()) * step + float(second_lines.size()) * small;
  const float words_h = std::max(61.0F, text_h + 14);
  const Box box = ui.take(below ? words_h + space::kTarget : words_h);
  ui.open_group(Role::listitem, id, item.name, box);
  const std::string edit_id = id + ":text";
  const Box words{box.x, box.y, box.w - (below ? 0 : hands_w), words_h};
  const bool open = ui.session.view.unfolded == edit_id;
  const ImU32 fill = ui.hand.down(edit_id) ? ui.theme.fold : ui.theme.paper;
  if (ui.hand.down(edit_id)) ui.pen.fill(words, fill);
  mirror::Node record;
  record.role = Role::button;
  record.id = edit_id;
  record.name = item.name + ", for " + item.function + ", " + spare + ", " + weight;
  record.expanded = open ? 1 : 0;
  if (ui.target(std::move(record), words, 0)) {
    ui.session.view.unfolded = open ? std::string{} : edit_id;
    ui.wake_at(ui.now_s);
  }
  const look::Ground ground(ui.pen, fill);
  const float text_x = box.x + kDot;
  float base = words.mid_y() - text_h / 2 + type::kBody;
  ui.pen.disc({box.x + 7, base - 6}, 5, vital ? ui.theme.ink : ui.theme.ink2);
  float name_w = 0;
  const float name_base = base;
  for (const std::string_view line : lines) {
    name_w = std::max(name_w, ui.pen.text(text_x, base, line, Face::bold, type::kBody, ui.theme.ink));
    base += step;
  }
  base -= step - small;
  for (const std::string_view line : second_lines) {
    ui.pen.text(text_x, base, line, Face::regular, type::kLabel, alone && !wide ? ui.theme.ink : ui.theme.ink2);
    base += small;
  }
  if (wide) {  // a line from the item to what stands in for it; broken where nothing does
    const float spare_x = box.right() - kHands - 12 - 136;
    const float from = text_x + name_w + 10, to = spare_x - 16, y = name_base - 6;
    if (to - from > 12) {
      const look::Point ends[] = {{from, y}, {to, y}};
      if (item.backups > 0 || (vital && !alone))
        ui.pen.line(ends[0], ends[1], ui.theme.ink, look::stroke::kLine);
      else if (alone)
        ui.pen.dashed(ends, look::stroke::kDash, ui.theme.ink, look::stroke::kLine);
    }
    if (item.backups > 0) ui.pen.ring({spare_x - 8, y}, 5, ui.theme.ink, look::stroke::kRule);
    ui.pen.text(spare_x + 4, name_base, spare, Face::regular, type::kLabel,
                alone || item.backups > 0 ? ui.theme.ink : ui.theme.ink2);
  }
  const auto hand = [&](int place) {
    return Box{box.right() - kHands + space::kTarget * float(place),
               below ? words.bottom() : box.mid_y() - space::kTarget / 2, space::kTarget, space::kTarget};
  };
  const bool less = item.backups > 0 && ui.icon_button(hand(0), id + ":less", "One spare less, " + item.name,
                                                       Icon::minus, ui.theme.ink);
  const bool more = item.backups < kMostBackups &&
                    ui.icon_button(hand(1), id + ":more", "Add a spare, " + item.name, Icon::plus, ui.theme.ink);
  const bool remove =
      ui.icon_button(hand(2), id + ":remove", "Leave at home, " + item.name, Icon::close, ui.theme.ink2);
  std::vector<kit::Item> next = items;
  if (remove) {
    next.erase(next.begin() + std::ptrdiff_t(i));
    set_kit(ui, std::move(next), "left at home, " + item.name);
  } else if (less || more) {
    next[i].backups += more ? 1 : -1;
    set_kit(ui, std::move(next), (more ? "a spare, " : "a spare less, ") + item.name);
  }
  ui.close_group();
  ui.rule();
  if (open && i < ui.session.outing().kit.size()) kit_item_editor(ui, i);
}

}  // namespace

void set_kit(Ui& ui, std::vector<kit::Item> items, std::string what) {
  ui.session.set_kit(std::move(items), std::move(what));
  ui.wake_at(ui.now_s);
}

std::string weight_words(double weight_g, const Style& style) {
  return say_quantity(weight_g, Unit::gram, 0, style);
}

bool fold(Ui& ui, std::string_view id, std::string_view label, std::string_view value, std::string_view spoken) {
  const bool open = ui.session.view.unfolded == id;
  if (ui.row(id, label, value, spoken, open ? 1 : 0, false)) {
    ui.session.view.unfolded = open ? std::string{} : std::string(id);
    ui.wake_at(ui.now_s);
  }
  return open;
}

void Ui::kit_list() {
  // a copy: a tap changes the list while it is walked through
  const std::vector<kit::Item> items = session.outing().kit;
  section("What is carried", "kit");
  if (items.empty()) {
    paragraph(
        "Nothing is listed yet. The usual list goes by the plan's power, battery, mode and antenna; change it "
        "as you like.",
        "kit:empty", theme.ink2);
    gap();
    if (button("kit:start", "Start from the usual list", Weight::main, Icon::kit))
      set_kit(*this, usual_kit(session.plan()), "the usual kit");
    struct Start {
      kit::Style style;
      const char *id, *label;
    };
    constexpr Start kStarts[] = {{kit::Style::car, "kit:start:car", "With all for a table at the car"},
                                 {kit::Style::carry, "kit:start:carry", "With all for a short carry"},
                                 {kit::Style::backpack, "kit:start:backpack", "With all for a backpack"}};
    for (const Start& start : kStarts) {
      gap();
      if (button(start.id, start.label)) set_kit(*this, usual_kit(session.plan(), start.style), start.label);
    }
    gap();
    kit_more(*this, items);
    return;
  }
  const std::vector<std::size_t> alone = kit::holds(items).single_points;
  open_group(Role::list, "kit:list", "What is carried", {x, y, w, 0});
  for (std::size_t i = 0; i < items.size(); ++i)
    item_row(*this, items, i, std::binary_search(alone.begin(), alone.end(), i));
  close_group();
  kit_advice(*this, items);
  gap(12);
  kit_ticks(*this, items);
  kit_more(*this, items);
}

}  // namespace gs::parts
