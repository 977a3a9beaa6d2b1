// Beside the kit's rows: what is missing, what helps most, what may stay; how a list begins; what else might come
// along.
#include <algorithm>
#include <utility>

#include "app/parts/kit_parts.h"
#include "core/kit/catalogue.h"
#include "core/kit/need.h"
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

std::string chance_words(Ui& ui, double chance) {
  const Reading& row = reading(R::kit_chance_pct);
  return say_quantity(100 * chance, row.unit, row.digits, ui.session.style());
}

/// One more piece of an item and what it brings, where the gain shows in the figure. True where it was offered.
bool spare(Ui& ui, const std::vector<kit::Item>& items, const kit::BestBackup& best, const std::string& id,
           std::string_view before, std::string_view label) {
  if (best.item >= items.size() || items[best.item].backups >= kMostBackups) return false;
  const std::string now = chance_words(ui, kit::holds(items).chance), then = chance_words(ui, best.chance);
  if (now == then) return false;
  const kit::Item& item = items[best.item];
  ui.gap(12);
  ui.paragraph(std::string(before) + item.name + ", " + weight_words(item.weight_g, ui.session.style()) + ": " +
                   now + " \u2192 " + then,
               id, ui.theme.ink);
  ui.gap();
  if (!ui.button(id + ":add", label, Weight::plain, Icon::plus)) return true;
  std::vector<kit::Item> next = items;
  ++next[best.item].backups;
  set_kit(ui, std::move(next), "a spare, " + item.name);
  return true;
}

/// "chair 900 g, tarp 400 g", the heaviest first.
void may_stay(Ui& ui, const std::vector<kit::Item>& items) {
  constexpr std::size_t kTold = 4;
  const std::vector<std::string_view> keep = kit::never_left();
  const double ease = ui.session.plan()[ease_lever(R::kit_chance_pct)] / 100;
  std::string words;
  std::size_t told = 0;
  for (const std::size_t i : kit::may_stay_home(items, ease, keep)) {
    if (told++ == kTold) break;
    words += (words.empty() ? "" : ", ") + items[i].name + " " +
             weight_words(items[i].weight_g * (items[i].backups + 1), ui.session.style());
  }
  if (words.empty()) return;
  ui.gap(12);
  ui.paragraph("May stay at home, any one of them: " + words + ".", "kit:stay", ui.theme.ink);
}

void missing(Ui& ui, const std::vector<kit::Item>& items) {
  std::string vital, wise;
  for (const kit::Need* need : kit::unserved(items)) {
    std::string& words = need->grade == kit::Need::Grade::vital ? vital : wise;
    words += (words.empty() ? "" : ", ") + lower_first(std::string(need->name));
  }
  if (!vital.empty()) {
    ui.gap(12);
    ui.paragraph("Nothing yet for what no outing goes without: " + vital + ".", "kit:missing", ui.theme.fails);
  }
  if (wise.empty()) return;
  ui.gap(12);
  ui.paragraph("Nothing for: " + wise + ".", "kit:wise", ui.theme.ink);
}

/// A row to take something along: plus, name, weight.
bool take_along(Ui& ui, const std::string& id, std::string_view name, double weight_g) {
  const std::string weight = weight_words(weight_g, ui.session.style());
  const float weight_w = ui.pen.width(weight, Face::regular, type::kBody);
  const std::vector<std::string_view> lines =
      ui.pen.lines(name, ui.w - 34 - weight_w - 12, Face::regular, type::kBody);
  const float step = type::line_height(type::kBody);
  const Box box = ui.take(std::max(space::kKitRow, float(lines.size()) * step + 14));
  const ImU32 fill = ui.hand.down(id) ? ui.theme.fold : ui.theme.paper;
  if (ui.hand.down(id)) ui.pen.fill(box, fill);
  const look::Ground ground(ui.pen, fill);
  ui.pen.icon(Icon::plus, box.x, box.mid_y() - 12, 24, ui.theme.ink);
  float base = look::Pen::centred(box.mid_y(), type::kBody) - step * float(lines.size() - 1) / 2;
  ui.pen.text(box.right(), base, weight, Face::regular, type::kBody, ui.theme.ink2, look::Align::right);
  for (const std::string_view line : lines) {
    ui.pen.text(box.x + 34, base, line, Face::regular, type::kBody, ui.theme.ink);
    base += step;
  }
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = "Take along " + std::string(name) + ", " + weight;
  const bool tapped = ui.target(std::move(record), box, 0);
  ui.rule();
  return tapped;
}

bool carried(const std::vector<kit::Item>& items, std::string_view name) {
  return std::any_of(items.begin(), items.end(), [name](const kit::Item& item) { return item.name == name; });
}

void own_item(Ui& ui, std::vector<kit::Item> items) {
  if (!ui.button("kit:own", "An item of your own", Weight::plain, Icon::plus)) return;
  std::string name = "Own item";
  for (int n = 2; carried(items, name); ++n) name = "Own item " + std::to_string(n);
  kit::Item item{name, name, 100, 0, 0.99, false};
  ui.session.remember_item(name, item);
  items.push_back(std::move(item));
  ui.session.view.unfolded = "kit:" + std::to_string(items.size() - 1) + ":text";
  set_kit(ui, std::move(items), name);
}

}  // namespace

void kit_advice(Ui& ui, const std::vector<kit::Item>& items) {
  missing(ui, items);
  const kit::BestBackup most = kit::best_backup(items), gram = kit::best_backup_per_gram(items);
  if (spare(ui, items, most, "kit:best", "A spare of ", "Add a spare where it helps most") &&
      gram.item != most.item)
    spare(ui, items, gram, "kit:gram", "Most for its weight: a spare of ",
          "Add the spare that weighs least for its worth");
  may_stay(ui, items);
}

void kit_begin(Ui& ui) {
  ui.section("What is carried", "kit");
  ui.paragraph(
      "Nothing is listed yet. The usual list goes by the plan's power, battery, mode and antenna; change it "
      "as you like.",
      "kit:empty", ui.theme.ink2);
  ui.gap();
  if (ui.button("kit:start", "Start from the usual list", Weight::main, Icon::kit))
    set_kit(ui, usual_kit(ui.session.plan()), "the usual kit");
  struct Start {
    kit::Style style;
    const char *id, *label;
  };
  constexpr Start kStarts[] = {{kit::Style::car, "kit:start:car", "With all for a table at the car"},
                               {kit::Style::carry, "kit:start:carry", "With all for a short carry"},
                               {kit::Style::backpack, "kit:start:backpack", "With all for a backpack"}};
  for (const Start& start : kStarts) {
    ui.gap();
    if (ui.button(start.id, start.label)) set_kit(ui, usual_kit(ui.session.plan(), start.style), start.label);
  }
  ui.gap();
  kit_more(ui, {});
}

void kit_more(Ui& ui, const std::vector<kit::Item>& items) {
  if (items.size() >= kMostKitItems) return;
  if (fold(ui, "kit:add", "Add an item", "usual list", "from the usual list")) {
    const auto add = [&](kit::Item item) {
      std::vector<kit::Item> next = items;
      std::string what = item.name;
      next.push_back(std::move(item));
      set_kit(ui, std::move(next), std::move(what));
    };
    const std::vector<kit::Item> own = ui.session.settings.own_items;
    for (std::size_t i = 0; i < own.size(); ++i)
      if (!carried(items, own[i].name) &&
          take_along(ui, "kit:again:" + std::to_string(i), own[i].name, own[i].weight_g))
        add(own[i]);
    for (const kit::UsualItem& row : kit::usual_items())
      if (!row.retired && !carried(items, row.name) &&
          take_along(ui, "kit:add:" + std::string(row.key), row.name, row.weight_g))
        add(as_item(row));
  }
  ui.gap();
  own_item(ui, items);
}

}  // namespace gs::parts
