// modes() itself is written by assets/catalogues/make_tables.py.
#include "core/radio/mode.h"

namespace gs::radio {

const Mode* find_mode(std::string_view key) {
  for (const Mode& mode : modes())
    if (mode.key == key) return &mode;
  return nullptr;
}

}  // namespace gs::radio
