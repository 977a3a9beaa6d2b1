// One item of the kit, opened: every figure of it typed with its unit, its place in the list, what it answers.
#include <algorithm>
#include <cmath>
#include <functional>
#include <utility>

#include "app/parts/kit_parts.h"
#include "core/kit/catalogue.h"
#include "core/outing/archive.h"
#include "core/outing/utf8.h"

namespace gs::parts {

namespace {

bool is_own(const kit::Item& item) {
  const auto all = kit::usual_items();
  return std::none_of(all.begin(), all.end(), [&item](const kit::UsualItem& row) { return row.name == item.name; });
}

/// Changes item i, one step of undo; what is of the person's own making is remembered. Says why it cannot be.
std::string change(Session& session, std::size_t i, std::string_view what,
                   const std::function<std::string(kit::Item&)>& how) {
  std::vector<kit::Item> items = session.outing().kit;
  if (i >= items.size()) return {};
  const std::string old_name = items[i].name;
  if (std::string why = how(items[i]); !why.empty()) return why;
  if (std::string why = kit::item_trouble(items[i]); !why.empty()) return why;
  if (items[i] == session.outing().kit[i]) return {};
  if (is_own(items[i])) session.remember_item(old_name, items[i]);
  session.set_kit(items, std::string(what) + " of " + items[i].name);
  return {};
}

struct TextOf {
  const char *suffix, *label, *hint;
  std::string kit::Item::*of;
  bool may_be_empty;
};
constexpr TextOf kTexts[] = {
    {":name", "Name", "", &kit::Item::name, false},
    {":function", "What it is for",
     "power, radio, lead, antenna, water ... or a word of your own; what is for the same stands in for each other",
     &kit::Item::function, false},
    {":cause", "Fails together with",
     "what it shares with others of its kind: one charger, one wet bag; empty: nothing", &kit::Item::cause, true},
};

struct NumberOf {
  const char *suffix, *label;
  Unit unit;
  int digits;
  double most;
  double kit::Item::*of;
  double factor;  // what is shown over what is kept
};
constexpr NumberOf kNumbers[] = {
    {":weight", "Weight of one", Unit::gram, 0, kMostItemGrams, &kit::Item::weight_g, 1},
    {":volume", "Room it takes", Unit::litre, 1, kMostItemLitres, &kit::Item::volume_l, 1},
    {":minutes", "Minutes to set up", Unit::minute, 0, kMostItemMinutes, &kit::Item::set_up_min, 1},
    {":works", "Works, and was not forgotten", Unit::percent, 1, 100, &kit::Item::works, 100},
};

void text_of(Ui& ui, std::size_t i, const std::string& id, const TextOf& row) {
  Session* const keeper = &ui.session;
  ui.text_field({.id = id + row.suffix,
                 .label = row.label,
                 .value = ui.session.outing().kit[i].*row.of,
                 .hint = row.hint,
                 .most_chars = kMostNameChars,
                 .commit = [keeper, i, row](const std::string& typed) -> std::string {
                   const std::string text = clean_text(typed, kMostNameChars);
                   if (text.empty() && !row.may_be_empty) return "a few letters are wanted";
                   return change(*keeper, i, lower_first(row.label), [&](kit::Item& item) {
                     item.*row.of = text;
                     return std::string{};
                   });
                 }});
  ui.gap();
}

void number_of(Ui& ui, std::size_t i, const std::string& id, const NumberOf& row, const std::string& label) {
  Session* const keeper = &ui.session;
  const double shown = ui.session.outing().kit[i].*row.of * row.factor;
  ui.text_field(
      {.id = id + row.suffix,
       .label = label,
       .value = say_quantity(shown, row.unit, digits_needed(std::round(shown * 1e4) / 1e4, row.digits + 2),
                             ui.session.style()),
       .hint = {},
       .most_chars = 24,
       .commit = [keeper, i, row](const std::string& typed) -> std::string {
         const Parsed parsed = read_quantity(typed, row.unit);
         if (!parsed.ok()) return parsed.trouble;
         if (!(parsed.value >= 0 && parsed.value <= row.most))
           return "0 to " + say_quantity(row.most, row.unit, 0) + " is wanted";
         return change(*keeper, i, lower_first(row.label), [&](kit::Item& item) {
           item.*row.of =
               row.unit == Unit::percent ? std::round(parsed.value * 1e4) / 1e6 : parsed.value / row.factor;
           return std::string{};
         });
       }});
  ui.gap();
}

/// The lever that an item of this function answers, or null.
const Lever* answered(std::string_view function) {
  if (function == "power") return &lever(L::battery_capacity_ah);
  if (function == "feedline") return &lever(L::feedline_length_m);
  if (function == "radio") return &lever(L::radio_full_power_w);
  return nullptr;
}

void answer_field(Ui& ui, std::size_t i, const std::string& id) {
  const kit::Item& item = ui.session.outing().kit[i];
  const Lever* row = answered(item.function);
  if (!row) return;
  Session* const keeper = &ui.session;
  const bool said = item.lever == row->key && item.amount > 0;
  ui.text_field({.id = id + ":amount",
                 .label = std::string(row->name) + " that it brings",
                 .value = said ? say_lever(*row, item.amount, ui.session.style()) : std::string{},
                 .hint = "the plan goes by it where nothing else is set; empty: it does not say",
                 .most_chars = 24,
                 .commit = [keeper, i, row](const std::string& typed) -> std::string {
                   double amount = 0;
                   if (!typed.empty()) {
                     const Parsed parsed = read_quantity(typed, row->unit);
                     if (!parsed.ok()) return parsed.trouble;
                     if (!(parsed.value >= row->least && parsed.value <= row->most))
                       return say_lever(*row, row->least, {}) + " to " + say_lever(*row, row->most, {}) +
                              " is wanted";
                     amount = parsed.value;
                   }
                   return change(*keeper, i, lower_first(std::string(row->name)), [&](kit::Item& changed) {
                     changed.lever = amount > 0 ? std::string(row->key) : std::string{};
                     changed.amount = amount;
                     return std::string{};
                   });
                 }});
  ui.gap();
}

void flag_of(Ui& ui, std::size_t i, std::string id, std::string name, std::string words, bool kit::Item::*of) {
  const bool now = ui.session.outing().kit[i].*of;
  if (!ui.tick_row({.id = std::move(id), .name = name, .words = std::move(words), .note = {}, .ticked = now}))
    return;
  change(ui.session, i, lower_first(name), [&](kit::Item& item) {
    item.*of = !now;
    return std::string{};
  });
  ui.wake_at(ui.now_s);
}

void moved(Ui& ui, std::size_t from, std::size_t to) {
  std::vector<kit::Item> items = ui.session.outing().kit;
  std::swap(items[from], items[to]);
  ui.session.view.unfolded = "kit:" + std::to_string(to) + ":text";  // it stays open where it went
  set_kit(ui, items, "the place of " + items[to].name);
}

}  // namespace

void kit_item_editor(Ui& ui, std::size_t i) {
  const std::string id = "kit:" + std::to_string(i);
  const float left = ui.x, width = ui.w;
  const bool narrow = !kit_row_is_wide(ui);
  ui.column(left + 16, width - 16, ui.y + 10);
  ui.open_group(mirror::Role::group, id + ":editor", "Change " + ui.session.outing().kit[i].name,
                {ui.x, ui.y, ui.w, 0});
  text_of(ui, i, id, kTexts[0]);
  text_of(ui, i, id, kTexts[1]);
  for (const NumberOf& row : kNumbers) number_of(ui, i, id, row, row.label);
  answer_field(ui, i, id);
  text_of(ui, i, id, kTexts[2]);
  flag_of(ui, i, id + ":vital", "Vital", "without anything for this job there is no outing", &kit::Item::vital);
  flag_of(ui, i, id + ":charge", "Wants charging", "stands on the charge list of the evening before",
          &kit::Item::charge);
  ui.gap();
  const std::size_t last = ui.session.outing().kit.size() - 1;
  const float half = (ui.w - look::space::kGap) / 2;
  const look::Box row = ui.take(look::space::kTarget);
  if (ui.button_in({row.x, row.y, half, row.h}, id + ":up", "Move up", Weight::plain, look::Icon::count,
                   look::type::kBody, i > 0))
    moved(ui, i, i - 1);
  if (ui.button_in({row.right() - half, row.y, half, row.h}, id + ":down", "Move down", Weight::plain,
                   look::Icon::count, look::type::kBody, i < last))
    moved(ui, i, i + 1);
  ui.gap();
  const std::string name = ui.session.outing().kit[i].name;
  if (narrow && ui.button(id + ":remove", "Leave at home, " + name, Weight::plain, look::Icon::close))
    leave_at_home(ui, i);
  ui.gap(16);
  ui.close_group();
  ui.column(left, width, ui.y);
  ui.rule();
}

}  // namespace gs::parts
