// Clock and contacts: the time on the air, and what it brings until something ends it.
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/outing/evaluate_parts.h"
#include "core/pace/clock.h"
#include "core/pace/pace.h"

namespace gs {

void put_clock(const Plan& plan, Joined& joined, Outlook& out) {
  joined.starts_min = joined.pack_by_min = joined.on_air_min = std::numeric_limits<double>::quiet_NaN();
  joined.no_clock = first_missing(plan, {L::clock_arrive_min, L::clock_leave_by_min});
  if (joined.no_clock.doubt == Doubt::none) {
    const pace::OnAir air = pace::on_air({plan[L::clock_arrive_min], plan[L::clock_leave_by_min],
                                          plan[L::clock_set_up_min], plan[L::clock_pack_down_min]});
    if (air.trouble == pace::NoTime::none) {
      joined.starts_min = air.starts_min;
      joined.pack_by_min = air.pack_by_min;
      joined.on_air_min = air.minutes;
      put(out, R::clock_pack_by_min, judge(plan, R::clock_pack_by_min, air.pack_by_min));
      return;
    }
    joined.no_clock = {Doubt::impossible, L::clock_leave_by_min};
  }
  withhold(out, {R::clock_on_air_min, R::clock_pack_by_min}, joined.no_clock);
}

void put_pace(const Plan& plan, Joined& joined, Outlook& out) {
  const pace::Pace pace{plan[L::pace_per_hour], plan[L::pace_spread_pct]};
  if (std::isfinite(joined.average_a)) {
    put(out, R::pace_mah_per_contact,
        judge(plan, R::pace_mah_per_contact, pace::charge_per_contact_mah(joined.average_a, pace.per_hour)));
  } else {
    withhold(out, {R::pace_mah_per_contact}, joined.no_power);
  }
  if (joined.no_clock.doubt != Doubt::none) {
    withhold(out, {R::pace_chance_of_target_pct, R::pace_expected_contacts}, joined.no_clock);
    return;
  }
  // The time on the air ends when packing starts or the battery ends, whichever is first, and contacts count until
  // then. A battery that is not known ends nothing.
  const bool cut = joined.runtime_min < joined.on_air_min;
  const double minutes = cut ? joined.runtime_min : joined.on_air_min;
  const auto put_cut = [&](R id, Figure figure) {
    if (cut && figure.state != State::unknown) figure.culprit = joined.ends_by;
    put(out, id, figure);
  };
  put_cut(R::clock_on_air_min, judge(plan, R::clock_on_air_min, minutes));
  const int target = int(std::lround(plan[L::pace_target]));
  put_cut(R::pace_chance_of_target_pct,
          judge(plan, R::pace_chance_of_target_pct, 100 * pace::chance_of_target(pace, minutes, target)));
  Figure expected = judge(plan, R::pace_expected_contacts, pace::expected_contacts(pace, minutes));
  if (const auto range = pace::contacts_range(pace, minutes, 0.8)) {
    // few contacts: the average may stand outside the eight in ten
    expected.low = std::min<double>(range->least, expected.value);
    expected.high = std::max<double>(range->most, expected.value);
  }
  put_cut(R::pace_expected_contacts, expected);
}

}  // namespace gs
