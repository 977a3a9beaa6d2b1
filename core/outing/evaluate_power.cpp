// Battery, lead and radio: how long it lasts, and what the radio still gets at key-down.
#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "core/battery/carried.h"
#include "core/outing/evaluate_parts.h"
#include "core/outing/power_join.h"
#include "core/radio/fuse.h"
#include "core/radio/lead.h"

namespace gs {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

using battery::Luck;

L lever_of(battery::EndBy by) {
  switch (by) {
    case battery::EndBy::minimum_supply:
      return L::radio_minimum_supply_v;
    case battery::EndBy::cut_off:
      return L::battery_cut_off_v;
    case battery::EndBy::current_limit:
      return L::battery_max_current_a;
    case battery::EndBy::reserve:
      break;
  }
  return L::battery_reserve_pct;
}

/// Every stretch on the air with what it draws; the plan alone where the clock is not known. A set that turns down
/// draws less, too. Where the line is not known the power asked for stands.
std::vector<battery::Stretch> loads_of(const Plan& plan, const Joined& joined, Luck luck) {
  const auto load = [luck](const Plan& during, double leaves_w) {
    return load_of(during, std::isfinite(leaves_w) ? leaves_w : during[L::radio_transmit_power_w], luck);
  };
  std::vector<battery::Stretch> loads;
  for (const Stretch& stretch : joined.stretches)
    loads.push_back({load(*stretch.plan, stretch.leaves_w), stretch.minutes() / 60});
  if (loads.empty()) loads.push_back({load(plan, joined.leaves_w), 0});
  return loads;
}

/// Over the time on the air; of one stretch its own, also where it has no length.
double average_a(const std::vector<battery::Stretch>& stretches) {
  if (stretches.size() == 1) return battery::average_a(stretches.front().load);
  double ah = 0, hours = 0;
  for (const battery::Stretch& stretch : stretches) {
    ah += battery::average_a(stretch.load) * stretch.hours;
    hours += stretch.hours;
  }
  return ah / hours;
}

void put_lead(const Plan& plan, const battery::Load& load, Outlook& out) {
  put(out, R::radio_key_down_current_a, judge(plan, R::radio_key_down_current_a, load.key_down_a));
  put(out, R::lead_drop_v, judge(plan, R::lead_drop_v, load.key_down_a * load.lead_ohm));
  const radio::Fuse fuse = fuse_of(plan, load);
  if (fuse.fit == radio::FuseFit::fits) {
    put(out, R::lead_fuse_a, judge(plan, R::lead_fuse_a, fuse.size_a));
  } else {
    withhold(out, {R::lead_fuse_a}, {Doubt::no_fuse, L::lead_wire});
  }
}

}  // namespace

void put_power(const Plan& plan, Joined& joined, Outlook& out) {
  joined.average_a = joined.runtime_min = kNaN;
  const std::initializer_list<R> kFromRadio = {R::power_average_current_a, R::radio_key_down_current_a,
                                               R::lead_drop_v, R::lead_fuse_a};
  const std::initializer_list<R> kFromBattery = {R::power_runtime_h, R::power_supply_at_key_down_v};
  const std::initializer_list<R> kFromClock = {R::power_spare_min, R::power_lasts_until_min,
                                               R::power_left_at_leave_by_pct};
  Doubtful no_radio = no_radio_because(plan);
  for (const Stretch& stretch : joined.stretches)
    if (no_radio.doubt == Doubt::none) no_radio = no_radio_because(*stretch.plan);
  if (no_radio.doubt != Doubt::none) {
    joined.no_power = no_radio;
    for (const auto& ids : {kFromRadio, kFromBattery, kFromClock}) withhold(out, ids, no_radio);
    return;
  }
  const std::vector<battery::Stretch> stretches = loads_of(plan, joined, Luck::usual),
                                      worse_stretches = loads_of(plan, joined, Luck::worse),
                                      better_stretches = loads_of(plan, joined, Luck::better);
  joined.average_a = average_a(stretches);
  put(out, R::power_average_current_a,
      ranged(plan, R::power_average_current_a, joined.average_a, average_a(worse_stretches),
             average_a(better_stretches)));
  // the lead and its fuse carry the hardest of them
  const battery::Load usual =
      std::max_element(stretches.begin(), stretches.end(), [](const auto& one, const auto& other) {
        return one.load.key_down_a < other.load.key_down_a;
      })->load;
  put_lead(plan, usual, out);

  joined.no_power = first_missing(plan, {L::battery_chemistry, L::battery_capacity_ah});
  if (joined.no_power.doubt != Doubt::none) {
    for (const auto& ids : {kFromBattery, kFromClock}) withhold(out, ids, joined.no_power);
    return;
  }
  const bool clock_known = joined.no_clock.doubt == Doubt::none;
  const double on_air_h = clock_known ? joined.on_air_min / 60 : std::numeric_limits<double>::infinity();
  const std::vector<battery::Carry> packs = packs_of(plan, Luck::usual);
  const battery::Course course = battery::course_of(packs, stretches, on_air_h),
                        worse = battery::course_of(packs_of(plan, Luck::worse), worse_stretches, on_air_h),
                        better = battery::course_of(packs_of(plan, Luck::better), better_stretches, on_air_h);
  joined.runtime_min = 60 * course.hours;
  joined.ends_by = lever_of(course.by);
  const bool outside = battery::outside_tested(packs.front().law, usual, packs.front().floors);
  const auto put_range = [&](R id, double value, double one_end, double other_end) {
    Figure figure = ranged(plan, id, value, one_end, other_end);
    if (figure.state != State::unknown) {
      if (id != R::power_supply_at_key_down_v && id != R::power_left_at_leave_by_pct)
        figure.culprit = joined.ends_by;
      if (outside) {
        figure.doubt = Doubt::outside_tested;
        if (figure.culprit == L::count) figure.culprit = L::battery_chemistry;
      }
    }
    put(out, id, figure);
  };
  put_range(R::power_runtime_h, course.hours, worse.hours, better.hours);
  put_range(R::power_supply_at_key_down_v, course.least_v, worse.least_v, better.least_v);

  if (!clock_known) {
    withhold(out, kFromClock, joined.no_clock);
    return;
  }
  // breaks alone are no time on the air: then the battery is taken up at the first call
  const auto until = [&](const battery::Course& one) {
    return joined.stretches.empty() ? joined.starts_min + 60 * one.hours
                                    : time_after(joined.stretches, 60 * one.hours);
  };
  const auto shown = [&](double running) { return shown_min(plan, running); };
  put_range(R::power_lasts_until_min, shown(until(course)), shown(until(worse)), shown(until(better)));
  put_range(R::power_spare_min, until(course) - joined.pack_by_min, until(worse) - joined.pack_by_min,
            until(better) - joined.pack_by_min);
  put_range(R::power_left_at_leave_by_pct, course.left_pct, worse.left_pct, better.left_pct);
}

}  // namespace gs
