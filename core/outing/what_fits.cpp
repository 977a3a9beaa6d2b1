#include "core/outing/what_fits.h"

#include <algorithm>
#include <cmath>

#include "core/outing/antenna_setup.h"

namespace gs {
namespace {

/// What belongs to one antenna that was cut and measured.
constexpr L kOfOneAntenna[] = {L::antenna_wire_m,     L::antenna_dip_mhz,       L::antenna_feed_r_ohm,
                               L::antenna_feed_x_ohm, L::feedline_measured_swr, L::antenna_transformer_db};

std::string in_words(const Figure& room, const Style& style) {
  const std::string by = say_quantity(std::abs(room.value), Unit::metre, 1, style);
  if (room.value >= 0) return by + " to spare";
  if (room.culprit == L::antenna_obstacle_m) return "runs into the obstacle, " + by + " under its top";
  return room.culprit == L::antenna_apex_m ? "apex " + by + " too low" : "span " + by + " too short";
}

/// Better ones first: those that fit by what they lose, the others by what they lack.
bool before(const KindFit& a, const KindFit& b) {
  if (a.fits != b.fits) return a.fits;
  if (!a.fits) return a.room_m > b.room_m;
  const auto worth = [](const KindFit& one) { return std::isfinite(one.efficiency_pct) ? one.efficiency_pct : 0; };
  return worth(a) > worth(b);
}

}  // namespace

std::vector<KindFit> what_fits(const Outing& outing, const Style& style) {
  const Plan plan = resolve(outing);
  if (!plan.has_all(L::antenna_frequency_mhz, L::antenna_apex_m, L::antenna_span_m)) return {};
  std::vector<KindFit> fits;
  for (std::size_t i = 0; i < antenna::kinds().size(); ++i) {
    const antenna::Kind& kind = antenna::kinds()[i];
    if (kind.retired) continue;
    const bool chosen = plan.has(L::antenna_kind) && std::size_t(plan[L::antenna_kind]) == i;
    Outing other = outing;
    std::vector<std::pair<L, Value>> take{{L::antenna_kind, std::string(kind.key)}};
    if (!chosen)
      for (const L id : kOfOneAntenna)
        if (outing.set[std::size_t(id)].index() != 0) take.emplace_back().first = id;  // not set
    for (const auto& one : take) other.set[std::size_t(one.first)] = one.second;
    Outlook then = evaluate(resolve(other));
    const Figure room = then[R::antenna_fits_m];
    if (!std::isfinite(room.value)) continue;
    fits.push_back({kind.key, kind.name, room.value >= 0, chosen, room.value, then[R::antenna_efficiency_pct].value,
                    kind.set_up_min, kind.pack_down_min, in_words(room, style), std::move(then), std::move(take)});
  }
  std::stable_sort(fits.begin(), fits.end(), before);
  return fits;
}

}  // namespace gs
