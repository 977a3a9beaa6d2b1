// cautions() itself is written by assets/catalogues/make_tables.py.
#include "core/safety/caution.h"

#include <algorithm>

namespace gs::safety {

const Caution* find_caution(std::string_view key) {
  for (const Caution& row : cautions())
    if (row.key == key) return &row;
  return nullptr;
}

bool is_raised_by(const Caution& caution, std::string_view link_key) {
  for (std::string_view rest = caution.sheets; !rest.empty();) {
    const std::size_t end = std::min(rest.find(' '), rest.size());
    if (rest.substr(0, end) == link_key) return true;
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return false;
}

std::size_t left_to_look_at(std::span<const std::string_view> looked_at) {
  std::size_t left = 0;
  for (const Caution& row : cautions())
    if (row.kind == Caution::Kind::look &&
        std::find(looked_at.begin(), looked_at.end(), row.key) == looked_at.end())
      ++left;
  return left;
}

}  // namespace gs::safety
