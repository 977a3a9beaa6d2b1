#include "core/outing/stint.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "core/outing/plan.h"

namespace gs {
namespace {

constexpr L kStintLevers[] = {L::radio_transmit_power_w,   L::radio_mode,
                              L::radio_transmit_share_pct, L::antenna_kind,
                              L::antenna_frequency_mhz,    L::pace_per_hour};

}  // namespace

std::span<const L> stint_levers() { return kStintLevers; }

bool is_stint_lever(L id) {
  return std::find(std::begin(kStintLevers), std::end(kStintLevers), id) != std::end(kStintLevers);
}

std::string refusal(const Stint& stint) {
  if (!(stint.from_min >= 0 && stint.from_min <= kMostStintMin))
    return "A stint begins at 0:00 to 48:00 of the outing's date";
  if (!stint.on_air && !stint.set.empty()) return "A break sets nothing";
  for (auto at = stint.set.begin(); at != stint.set.end(); ++at) {
    const L id = at->first;
    if (!is_stint_lever(id)) return std::string(lever(id).name) + ": a stint cannot change it";
    if (std::holds_alternative<std::monostate>(at->second)) return std::string(lever(id).name) + ": needs a value";
    if (std::any_of(stint.set.begin(), at, [id](const auto& other) { return other.first == id; }))
      return std::string(lever(id).name) + ": stands there twice";
    if (std::string why = refusal(id, at->second); !why.empty()) return why;
  }
  return {};
}

std::vector<Stint> with_stint(std::vector<Stint> stints, Stint stint) {
  const auto at = std::upper_bound(stints.begin(), stints.end(), stint.from_min,
                                   [](double from_min, const Stint& other) { return from_min < other.from_min; });
  stints.insert(at, std::move(stint));
  return stints;
}

}  // namespace gs
