// What the kit sheet's files share: kit_list.cpp the rows, kit_lists.cpp what they are ticked for, kit_item.cpp one
// item opened, kit_more.cpp what stands beside, weight_bar.cpp the weight.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "app/parts/ui.h"
#include "core/kit/kit.h"

namespace gs::parts {

/// One step of undo.
void set_kit(Ui& ui, std::vector<kit::Item> items, std::string what);
std::string weight_words(double weight_g, const Style& style);
/// A row that unfolds, one at a time on the sheet. True while it is open.
bool fold(Ui& ui, std::string_view id, std::string_view label, std::string_view value, std::string_view spoken);

/// One reading of the list: which items it asks for, and what a tick then says of them.
struct KitList {
  const char *id, *label, *verb, *none, *all;
  bool kit::Item::*of;
  bool charge_only;
  bool asks(const kit::Item& item) const { return !charge_only || item.charge; }
};
/// Chips to choose the list, and how far it is. Returns the one that is open.
const KitList& kit_lists(Ui& ui, const std::vector<kit::Item>& items);

/// Room for every target on the row; else leaving at home stands in the editor.
bool kit_row_is_wide(const Ui& ui);
void leave_at_home(Ui& ui, std::size_t i);  // precondition of both: the outing has item i
void kit_item_editor(Ui& ui, std::size_t i);

void kit_begin(Ui& ui);                                        // the usual list, or with all of a style
void weight_bar(Ui& ui, const std::vector<kit::Item>& items);  // carried weight against its limit, to scale
void kit_advice(Ui& ui, const std::vector<kit::Item>& items);  // what is missing, helps most, may stay
void kit_more(Ui& ui, const std::vector<kit::Item>& items);    // what else might come along

}  // namespace gs::parts
