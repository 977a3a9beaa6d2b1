// The same list read three times: charged the evening before, packed at home, back in the bag in the park.
#include <cmath>

#include "app/parts/kit_parts.h"

namespace gs::parts {

namespace {

constexpr KitList kLists[] = {
    {"kit:charge", "Charge", "charged", "nothing to charge", "all charged", &kit::Item::charged, true},
    {"kit:pack", "Pack", "packed", "", "all packed", &kit::Item::packed, false},
    {"kit:stow", "Pack down", "back in the bag", "", "all back in the bag", &kit::Item::stowed, false},
};

/// The one that was chosen; else the one that the hour asks for.
std::size_t open_list(const Ui& ui) {
  for (std::size_t i = 0; i < std::size(kLists); ++i)
    if (ui.session.view.kit_list == kLists[i].id) return i;
  return ui.session.phase() == Phase::planning ? 1 : 2;
}

}  // namespace

const KitList& kit_lists(Ui& ui, const std::vector<kit::Item>& items) {
  const std::size_t open = open_list(ui);
  std::vector<Ui::Chip> chips;
  for (std::size_t i = 0; i < std::size(kLists); ++i)
    chips.push_back({kLists[i].id, kLists[i].label, {}, i == open});
  const int tapped = ui.chips("kit:lists", "Which list", chips);
  if (tapped >= 0) {
    ui.session.view.kit_list = kLists[tapped].id;
    ui.wake_at(ui.now_s);
  }
  const KitList& list = kLists[open];
  int of = 0, done = 0;
  for (const kit::Item& item : items) {
    of += list.asks(item);
    done += list.asks(item) && item.*list.of;
  }
  ui.gap(12);
  ui.paragraph(of == 0      ? list.none
               : done == of ? list.all
                            : std::to_string(done) + " of " + std::to_string(of) + " " + list.verb,
               "kit:done", ui.theme.ink);
  ui.gap();
  if (done > 0 && ui.button(std::string(list.id) + ":none", "Take all ticks off")) {
    std::vector<kit::Item> next = items;
    for (kit::Item& item : next) item.*list.of = false;
    set_kit(ui, std::move(next), std::string("all ticks off, ") + list.verb);
  }
  ui.gap();
  return list;
}

void Ui::kit_foot() {
  const KitList& other = kLists[open_list(*this) == 2 ? 1 : 2];
  const look::Box row = take(look::space::kTargetMain);
  const float add_w = std::floor(row.w * 0.37F), left = row.x + add_w + look::space::kGap;
  if (button_in({row.x, row.y, add_w, row.h}, "kit:foot:add", "Add", Weight::plain, look::Icon::plus,
                look::type::kBody, true, "Add an item to the kit")) {
    session.view.unfolded = "kit:add";
    keyboard_to = "kit:add";
    wake_at(now_s);
  }
  const std::string label = std::string(other.label) + (other.of == &kit::Item::stowed ? " check" : "");
  if (button_in({left, row.y, row.right() - left, row.h}, "kit:foot:list", label, Weight::main, look::Icon::check,
                look::type::kBody)) {
    session.view.kit_list = other.id;
    hand.scroll_to("sheet", 0);
    wake_at(now_s);
  }
}

}  // namespace gs::parts
