#include "core/outing/checks_safety.h"

namespace gs {

std::span<const Check> safety_checks() {
  static const std::vector<Check> all = [] {
    std::vector<Check> rows;
    for (const std::span<const Check> part : {exposure_checks(), share_checks(), hazard_checks(), rules_checks()})
      rows.insert(rows.end(), part.begin(), part.end());
    return rows;
  }();
  return all;
}

}  // namespace gs
