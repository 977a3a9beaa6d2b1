#include "core/antenna/kind.h"

#include <algorithm>

namespace gs::antenna {

const Kind* find_kind(std::string_view key) {
  const std::span<const Kind> rows = kinds();
  const auto at = std::find_if(rows.begin(), rows.end(), [key](const Kind& row) { return row.key == key; });
  return at == rows.end() ? nullptr : &*at;
}

}  // namespace gs::antenna
