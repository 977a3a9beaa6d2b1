// The same list read three times: charged the evening before, packed at home, back in the bag in the park.
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
  if (done > 0 && ui.button(std::string(list.id) + ":none", "Take all ticks off")) {
    std::vector<kit::Item> next = items;
    for (kit::Item& item : next) item.*list.of = false;
    set_kit(ui, std::move(next), std::string("all ticks off, ") + list.verb);
  }
  ui.gap();
  return list;
}

}  // namespace gs::parts
