// Clock and contacts: the time on the air, and what it brings until something ends it.
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/outing/evaluate_parts.h"
#include "core/pace/better_day.h"
#include "core/pace/pace.h"

namespace gs {
namespace {

constexpr double kEightInTen = 0.8, kNineInTen = 0.9;

/// The count at the end under the outing's counting rule.
struct Forecast {
  double chance, expected;
  std::optional<pace::CountRange> range;
  double counted;  // of those so far, on the day that stands best
};

Forecast forecast(const std::vector<DayCount>& days, pace::Pace pace, int target) {
  if (days.size() < 2) {
    const double counted = days.empty() ? 0 : days[0].contacts,
                 minutes = days.empty() ? 0 : days[0].to_come_worth_min;
    Forecast one{pace::chance_of_target(pace, minutes, target - int(counted)),
                 counted + pace::expected_contacts(pace, minutes), pace::contacts_range(pace, minutes, kEightInTen),
                 counted};
    if (one.range) one.range = pace::CountRange{one.range->least + int(counted), one.range->most + int(counted)};
    return one;
  }
  // Of three days or more, which only a stay over a night and a day has, the two that stand best count.
  const auto stands = [&](const DayCount& day) {
    return day.contacts + pace::expected_contacts(pace, day.to_come_worth_min);
  };
  std::size_t best = 0, next = 1;
  for (std::size_t i = 1; i < days.size(); ++i) {
    if (stands(days[i]) > stands(days[best])) {
      next = best;
      best = i;
    } else if (i > 1 && stands(days[i]) > stands(days[next])) {
      next = i;
    }
  }
  const pace::BetterDay better = pace::better_day(
      pace, {days[best].contacts, days[next].contacts, days[best].to_come_worth_min, days[next].to_come_worth_min},
      target);
  return {better.chance, better.expected, better.range, std::max(days[best].contacts, days[next].contacts)};
}

}  // namespace

void put_clock(const Plan& plan, Joined& joined, Outlook& out) {
  joined.starts_min = joined.pack_by_min = joined.on_air_min = std::numeric_limits<double>::quiet_NaN();
  joined.day = day_of(plan, joined.now);
  const OutingDay& day = joined.day;
  if (day.no_clock != NoClock::none) {
    joined.no_clock = {day.no_clock == NoClock::missing ? Doubt::missing : Doubt::impossible, day.missing};
    withhold(out, {R::clock_starts_min, R::clock_late_min, R::clock_on_air_min, R::clock_pack_by_min},
             joined.no_clock);
    return;
  }
  joined.starts_min = day.starts_min;
  // over, it is measured against when it ended, not against a packing time that was not waited for
  joined.pack_by_min = day.phase == Phase::after && !day.past.empty()
                           ? std::min(day.pack_by_min, day.past.back().until_min)
                           : day.pack_by_min;
  joined.on_air_min = day.past_min + day.to_come_min;
  joined.stretches = day.past;
  joined.stretches.insert(joined.stretches.end(), day.to_come.begin(), day.to_come.end());
  put(out, R::clock_starts_min, judge(plan, R::clock_starts_min, shown_min(plan, day.starts_min)));
  put(out, R::clock_late_min,
      judge(plan, R::clock_late_min, std::max(0.0, day.starts_min - day.planned_start_min)));
  put(out, R::clock_pack_by_min, judge(plan, R::clock_pack_by_min, shown_min(plan, day.pack_by_min)));
}

void put_pace(const Plan& plan, Joined& joined, Outlook& out) {
  const OutingDay& day = joined.day;
  const pace::Pace pace = pace_now(plan, day);
  if (std::isfinite(joined.average_a)) {
    put(out, R::pace_mah_per_contact,
        judge(plan, R::pace_mah_per_contact, pace::charge_per_contact_mah(joined.average_a, pace.per_hour)));
  } else {
    withhold(out, {R::pace_mah_per_contact}, joined.no_power);
  }
  if (joined.no_clock.doubt != Doubt::none) {
    withhold(out,
             {R::pace_so_far, R::pace_now_per_hour, R::pace_chance_of_target_pct, R::pace_expected_contacts,
              R::pace_sure_min},
             joined.no_clock);
    return;
  }
  const pace::PaceRange range = pace::pace_range(pace, kEightInTen);
  put(out, R::pace_now_per_hour,
      ranged(plan, R::pace_now_per_hour, pace.per_hour, range.low_per_hour, range.high_per_hour));
  // The time on the air ends when packing starts or the battery ends, whichever is first, and contacts count until
  // then. A battery that is not known ends nothing.
  const bool cut = joined.runtime_min < joined.on_air_min;
  const std::vector<Stretch> to_come =
      cut ? first_minutes(day.to_come, joined.runtime_min - day.past_min) : day.to_come;
  const auto put_cut = [&](R id, Figure figure) {
    if (cut && figure.state != State::unknown) figure.culprit = joined.ends_by;
    put(out, id, figure);
  };
  put_cut(R::clock_on_air_min, judge(plan, R::clock_on_air_min, day.past_min + minutes_of(to_come)));
  const int target = int(std::lround(plan[L::pace_target]));
  const Forecast count = forecast(count_by_day(plan, joined.now, to_come), pace, target);
  put_cut(R::pace_chance_of_target_pct, judge(plan, R::pace_chance_of_target_pct, 100 * count.chance));
  Figure expected = judge(plan, R::pace_expected_contacts, count.expected);
  if (count.range) {
    // few contacts: the average may stand outside the eight in ten
    expected.low = std::min<double>(count.range->least, expected.value);
    expected.high = std::max<double>(count.range->most, expected.value);
  }
  put_cut(R::pace_expected_contacts, expected);
  put(out, R::pace_so_far, judge(plan, R::pace_so_far, count.counted));
  put(out, R::pace_sure_min,
      judge(plan, R::pace_sure_min, pace::minutes_for(pace, target - int(count.counted), kNineInTen)));
}

}  // namespace gs
