// What the kit sheet's files share: kit_list.cpp the rows, kit_item.cpp one item opened, kit_more.cpp what stands
// below.
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

void kit_item_editor(Ui& ui, std::size_t i);                   // precondition: the outing has item i
void kit_advice(Ui& ui, const std::vector<kit::Item>& items);  // what is missing, helps most, may stay
void kit_ticks(Ui& ui, const std::vector<kit::Item>& items);   // charging, packing, packing down
void kit_more(Ui& ui, const std::vector<kit::Item>& items);    // what else might come along

}  // namespace gs::parts
