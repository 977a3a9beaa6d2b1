#include "core/battery/carried.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::battery {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();
// Stretches are added up to the hours on the air: what rounding leaves between the two is no time at all.
constexpr double kRoundingH = 1e-9;

/// Where one stands in the stretches.
struct Place {
  std::span<const Stretch> stretches;
  std::size_t at = 0;
  double into_h = 0;
  const Load& load() const { return stretches[at].load; }
  double room_h() const { return at + 1 < stretches.size() ? stretches[at].hours - into_h : kNever; }
  void forward(double hours) {
    into_h += hours;
    while (at + 1 < stretches.size() && into_h >= stretches[at].hours) into_h -= stretches[at++].hours;
  }
};

/// Lowest supply at key-down in `hours` of a stretch, or infinite where nothing is keyed.
double least_supply_v(const Law& law, const WellState& state, const Load& load, double hours) {
  if (load.key_down_a <= 0) return kNever;
  double v = key_down_v(law, state, load, hours);
  // after a harder stretch the beginning may be the worst of it
  if (state.lag_ah > 0) v = std::min(v, key_down_v(law, state, load, 0));
  return v - load.key_down_a * load.lead_ohm;
}

}  // namespace

Course course_of(std::span<const Carry> packs, std::span<const Stretch> stretches, double on_air_h) {
  Course course{kLongestH, EndBy::reserve, kNever, 100};
  Place place{stretches};
  double now_h = 0, left_ah = 0, gives_ah = 0;
  for (std::size_t i = 0; i < packs.size(); ++i) {
    const auto& [law, floors] = packs[i];
    const bool last = i + 1 == packs.size();
    WellState state = at_start(law, place.load()), on_air_state = state;
    const double taken_up_h = now_h;
    bool ended = false, reserve_reached = false;
    const Load* counted = &place.load();
    while (now_h < kLongestH && (!ended || (last && std::isfinite(on_air_h) && now_h < on_air_h))) {
      const Load& load = place.load();
      const End end = end_of(law, state, load, floors);
      const double ends_h = ended ? kNever : end.hours;
      const double run_h = std::min({ends_h, place.room_h(), ended ? on_air_h - now_h : kLongestH - now_h});
      const double on_air_part_h = std::clamp(on_air_h - now_h, 0.0, run_h);
      if (now_h < on_air_h - kRoundingH || (i == 0 && now_h == 0)) {
        // beyond its end a pack is only looked at until its reserve
        const double looked_h = ended ? std::min(on_air_part_h, end.by_reserve_h) : on_air_part_h;
        double v = kNever;
        if (!reserve_reached) v = least_supply_v(law, state, load, looked_h);
        // Until it ends, whatever ends it, the set was kept on: neither rounding nor an over that its end cuts
        // short may put the supply below what would have ended it.
        if (!ended && end.hours > 0) v = std::max(v, floors.minimum_supply_v);
        course.least_v = std::min(course.least_v, v);
        reserve_reached = reserve_reached || end.by_reserve_h <= on_air_part_h;
        on_air_state = after(law, state, load, on_air_part_h);
        counted = &load;
      }
      state = after(law, state, load, run_h);
      if (!ended && ends_h <= run_h) {
        ended = true;
        // a spare that gives nothing at all is not what ended it
        if (i == 0 || now_h + run_h > taken_up_h) course.by = end.by;
        if (last) course.hours = std::min(now_h + run_h, kLongestH);
      }
      now_h += run_h;
      place.forward(run_h);
    }
    const double ah = counts_as_ah(law, *counted);
    gives_ah += ah;
    left_ah += ah * left_pct(law, on_air_state, *counted) / 100;
  }
  course.left_pct = gives_ah > 0 ? 100 * left_ah / gives_ah : 0;
  return course;
}

}  // namespace gs::battery
