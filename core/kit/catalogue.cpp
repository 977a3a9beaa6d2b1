#include "core/kit/catalogue.h"

#include <algorithm>

namespace gs::kit {

const UsualItem* find_usual_item(std::string_view key) {
  const std::span<const UsualItem> all = usual_items();
  const auto at = std::find_if(all.begin(), all.end(), [key](const UsualItem& row) { return row.key == key; });
  return at == all.end() ? nullptr : &*at;
}

}  // namespace gs::kit
