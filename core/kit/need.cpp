// needs() itself is written by assets/catalogues/make_tables.py.
#include "core/kit/need.h"

#include <algorithm>

namespace gs::kit {

const Need* find_need(std::string_view key) {
  const std::span<const Need> all = needs();
  const auto at = std::find_if(all.begin(), all.end(), [key](const Need& row) { return row.key == key; });
  return at == all.end() ? nullptr : &*at;
}

std::vector<const Need*> unserved(std::span<const Item> items) {
  std::vector<const Need*> missing;
  for (const Need& need : needs())
    if (std::none_of(items.begin(), items.end(),
                     [&need](const Item& item) { return item.function == need.key && item_trouble(item).empty(); }))
      missing.push_back(&need);
  return missing;
}

std::vector<std::string_view> never_left() {
  std::vector<std::string_view> keys;
  for (const Need& need : needs())
    if (need.grade == Need::Grade::safety) keys.push_back(need.key);
  return keys;
}

}  // namespace gs::kit
