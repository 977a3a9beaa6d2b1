// What is carried: a row an item with its spares; a tap on its words opens it for editing.
#include <algorithm>
#include <utility>

#include "app/parts/kit_parts.h"
#include "core/outing/archive.h"

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

/// The box to tick at the left of a row; the place stays empty where the list asks nothing of this item.
void tick(Ui& ui, const std::vector<kit::Item>& items, std::size_t i, const KitList& list, Box row) {
  const kit::Item& item = items[i];
  if (!list.asks(item)) return;
  const bool ticked = item.*list.of;
  const std::string id = std::string(list.id) + ":" + std::to_string(i);
  const Box box{row.x, row.mid_y() - space::kTarget / 2, space::kTarget, space::kTarget};
  ui.tick_mark({box.x + 3, box.mid_y() - Ui::kTickMark / 2, Ui::kTickMark, Ui::kTickMark}, ticked, false);
  mirror::Node record;
  record.role = Role::checkbox;
  record.id = id;
  record.name = item.name + ", " + std::string(list.verb);
  record.checked = ticked ? 1 : 0;
  if (!ui.target(std::move(record), box)) return;
  std::vector<kit::Item> next = items;
  next[i].*list.of = !ticked;
  set_kit(ui, std::move(next), item.name + (ticked ? ", not " : ", ") + std::string(list.verb));
}

/// Box to tick, name over weight, what stands in beside it, and targets on the right.
void item_row(Ui& ui, const std::vector<kit::Item>& items, std::size_t i, bool alone, const KitList& list) {
  const kit::Item& item = items[i];
  const std::string id = "kit:" + std::to_string(i);
  const bool vital = is_vital(ui.session.plan().kit, item.function);
  const std::string spare = spare_words(item, alone, vital);
  const std::string weight = weight_words(item.weight_g * (item.backups + 1), ui.session.style());
  constexpr float kHand = space::kTarget + space::kGap, kHands = 3 * kHand - space::kGap, kDot = 18, kSpare = 136,
                  kTick = space::kTarget + space::kGap;
  const bool wide = kit_row_is_wide(ui);
  // a narrow row leaves out what stands in its editor, and gives the place of a target that is not there to the
  // words
  const float hands_w = wide ? kHands : item.backups > 0 ? kHands - kHand : space::kTarget;
  const bool below = ui.w < 280;  // the hands under the words
  const float room = ui.w - kTick - (below ? 0 : hands_w + 12) - kDot;
  const float name_room = wide ? room - kSpare : room;
  const std::vector<std::string_view> lines = ui.pen.lines(item.name, name_room, Face::bold, type::kBody);
  const std::string second = wide ? weight : spare + ", " + weight;
  const std::vector<std::string_view> second_lines = ui.pen.lines(second, name_room, Face::regular, type::kLabel);
  const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  const float text_h = float(lines.size()) * step + float(second_lines.size()) * small;
  const float words_h = std::max(61.0F, text_h + 14);
  const Box box = ui.take(below ? words_h + kHand : words_h);
  ui.open_group(Role::listitem, id, item.name, box);
  const std::string edit_id = id + ":text";
  tick(ui, items, i, list, {box.x, box.y, box.w, words_h});
  const Box words{box.x + kTick, box.y, box.w - kTick - (below ? 0 : hands_w + space::kGap), words_h};
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
  const float text_x = words.x + kDot;
  float base = words.mid_y() - text_h / 2 + type::kBody;
  ui.pen.disc({words.x + 5, base - 6}, 5, vital ? ui.theme.ink : ui.theme.ink2);
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
    const float spare_x = box.right() - kHands - 12 - kSpare + 16;
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
    return Box{box.right() - hands_w + kHand * float(place),
               below ? words.bottom() + space::kGap : box.mid_y() - space::kTarget / 2, space::kTarget,
               space::kTarget};
  };
  const int last = int((hands_w + space::kGap) / kHand) - 1, plus_at = wide ? last - 1 : last;
  const bool less = item.backups > 0 && ui.icon_button(hand(0), id + ":less", "One spare less, " + item.name,
                                                       Icon::minus, ui.theme.ink);
  const bool more =
      item.backups < kMostBackups &&
      ui.icon_button(hand(plus_at), id + ":more", "Add a spare, " + item.name, Icon::plus, ui.theme.ink);
  const bool remove =
      wide && ui.icon_button(hand(last), id + ":remove", "Leave at home, " + item.name, Icon::close, ui.theme.ink2);
  std::vector<kit::Item> next = items;
  if (remove) {
    leave_at_home(ui, i);
  } else if (less || more) {
    next[i].backups += more ? 1 : -1;
    set_kit(ui, std::move(next), (more ? "a spare, " : "a spare less, ") + item.name);
  }
  ui.close_group();
  ui.rule();
  if (open && i < ui.session.outing().kit.size()) kit_item_editor(ui, i);
}

}  // namespace

bool kit_row_is_wide(const Ui& ui) { return ui.w >= 520; }

void leave_at_home(Ui& ui, std::size_t i) {
  std::vector<kit::Item> items = ui.session.outing().kit;
  const std::string name = items[i].name;
  items.erase(items.begin() + std::ptrdiff_t(i));
  set_kit(ui, std::move(items), "left at home, " + name);
}

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
  if (items.empty()) return kit_begin(*this);
  const KitList& list = kit_lists(*this, items);
  const std::vector<std::size_t> alone = kit::holds(items).single_points;
  open_group(Role::list, "kit:list", "What is carried", {x, y, w, 0});
  for (std::size_t i = 0; i < items.size(); ++i)
    item_row(*this, items, i, std::binary_search(alone.begin(), alone.end(), i), list);
  close_group();
  gap();
}

void Ui::kit_at_hand() {
  const std::vector<kit::Item> items = session.outing().kit;
  if (items.empty()) return;
  weight_bar(*this, items);
  kit_advice(*this, items);
  gap(12);
  kit_more(*this, items);
  gap();
}

}  // namespace gs::parts
