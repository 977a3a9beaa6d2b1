#include "core/outing/checks_antenna.h"

#include <vector>

#include "core/antenna/kind.h"

namespace gs {
namespace antenna_rows {

std::span<const Option> kind_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const antenna::Kind& kind : antenna::kinds()) rows.push_back({kind.key, kind.name, kind.retired});
    return rows;
  }();
  return options;
}

std::span<const Option> wire_options() {
  static constexpr Option kOptions[] = {{"bare", "bare"}, {"insulated", "insulated"}};
  return kOptions;
}

}  // namespace antenna_rows

std::span<const Check> antenna_checks() {
  using namespace antenna_rows;
  static const std::vector<Check> all = [] {
    std::vector<Check> rows;
    for (const std::span<const Check> part :
         {length_checks(), band_checks(), trim_checks(), theory_checks(), space_checks(), pull_checks(),
          rope_checks(), whip_checks(), swr_checks()})
      rows.insert(rows.end(), part.begin(), part.end());
    return rows;
  }();
  return all;
}

}  // namespace gs
