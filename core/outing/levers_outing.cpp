// Place, clock and pace: what the outing itself brings.
#include <algorithm>

#include "core/antenna/kind.h"
#include "core/outing/lever_rows.h"
#include "core/outing/plan.h"
#include "core/pace/prior.h"
#include "core/sky/locator.h"

namespace gs {
namespace {

std::string wrong_locator(std::string_view text) { return sky::read_locator(text).trouble; }

constexpr Option kDayRules[] = {{"utc_day", "the UTC day"}, {"outing", "this outing"}};
std::span<const Option> day_rules() { return kDayRules; }

const antenna::Kind* kind_of(const Plan& plan) {
  return plan.has(L::antenna_kind) ? &antenna::kinds()[std::size_t(plan[L::antenna_kind])] : nullptr;
}
/// What the kit's pieces take, else what the antenna's kind does.
double usual_set_up(const Plan& plan) {
  if (plan.kit.set_up_min > 0) return std::min(plan.kit.set_up_min, 240.0);
  return kind_of(plan) ? kind_of(plan)->set_up_min : 20;
}
double usual_pack_down(const Plan& plan) { return kind_of(plan) ? kind_of(plan)->pack_down_min : 15; }
/// That of the machine's own zone, where the outing keeps its clock and comes upon the change.
const pace::ClockChange* usual_clock_change(const Plan& plan) {
  const pace::ClockChange& change = plan.habits.zone.change;
  return pace::touches(plan[L::clock_arrive_min], plan[L::clock_leave_by_min], change) &&
                 plan[L::clock_utc_offset_min] == plan.habits.zone.offset_min
             ? &change
             : nullptr;
}
double usual_change(const Plan& plan) { return usual_clock_change(plan) ? usual_clock_change(plan)->by_min : 0; }
double usual_changes_at(const Plan& plan) {
  if (const pace::ClockChange* change = usual_clock_change(plan)) return change->at_min;
  constexpr double kTwoAtNight = 120, kDay = 1440;
  return plan[L::clock_arrive_min] < kTwoAtNight ? kTwoAtNight : kTwoAtNight + kDay;
}
bool clock_is_changed(const Plan& plan) { return plan[L::clock_change_min] != 0; }
double first_option(const Plan&) { return 0; }
double usual_pace(const Plan& plan) { return own_pace(plan) ? own_pace(plan)->per_hour : pace::kGuess.per_hour; }
double usual_spread(const Plan& plan) {
  return own_pace(plan) ? own_pace(plan)->spread_pct : pace::kGuess.spread_pct;
}
double usual_target(const Plan&) { return 10; }

const LeverRow kRows[] = {
    {L::site_locator,
     {.key = "site.locator",
      .name = "Locator",
      .link = Link::sky,
      .kind = Kind::text,
      .unit = Unit::text,
      .optional = true,
      .wrong = wrong_locator,
      .read = sky::locator_number,
      .write = sky::locator_from_number,
      .source = "Maidenhead locator, 4 to 8 characters"}},
    {L::sky_toward_locator,
     {.key = "sky.toward_locator",
      .name = "Toward locator",
      .link = Link::sky,
      .kind = Kind::text,
      .unit = Unit::text,
      .optional = true,
      .wrong = wrong_locator,
      .read = sky::locator_number,
      .write = sky::locator_from_number,
      .source = "Maidenhead locator of the place to reach, 4 to 8 characters"}},
    {L::clock_utc_offset_min,
     {.key = "clock.utc_offset_min",
      .name = "UTC offset",
      .link = Link::clock,
      .unit = Unit::minute,
      .least = -720,
      .most = 840,
      .step = 15,
      .optional = true,
      .source = "how far the local clock stands before UTC"}},
    {L::clock_arrive_min,
     {.key = "clock.arrive_min",
      .name = "Arrive",
      .link = Link::clock,
      .unit = Unit::clock_minute,
      .least = 0,
      .most = 2880,
      .step = 5,
      .source = "local time of the outing's date; past midnight it counts on"}},
    {L::clock_leave_by_min,
     {.key = "clock.leave_by_min",
      .name = "Leave by",
      .link = Link::clock,
      .unit = Unit::clock_minute,
      .least = 0,
      .most = 2880,
      .step = 5,
      .source = "local time of the outing's date; past midnight it counts on"}},
    {L::clock_set_up_min,
     {.key = "clock.set_up_min",
      .name = "Set-up",
      .link = Link::clock,
      .unit = Unit::minute,
      .least = 0,
      .most = 240,
      .step = 1,
      .usual = usual_set_up,
      .source = "usual value: the antenna kind's, common practice"}},
    {L::clock_pack_down_min,
     {.key = "clock.pack_down_min",
      .name = "Pack-down",
      .link = Link::clock,
      .unit = Unit::minute,
      .least = 0,
      .most = 240,
      .step = 1,
      .usual = usual_pack_down,
      .source = "usual value: the antenna kind's, common practice"}},
    {L::clock_change_min,
     {.key = "clock.change_min",
      .name = "Clock set forward by",
      .link = Link::clock,
      .unit = Unit::minute,
      .least = -120,
      .most = 120,
      .step = 30,
      .usual = usual_change,
      .source =
          "summer time that begins (60) or ends (-60) during the stay; usual value: that of this machine's zone"}},
    {L::clock_changes_at_min,
     {.key = "clock.changes_at_min",
      .name = "Clock is set at",
      .link = Link::clock,
      .unit = Unit::clock_minute,
      .least = 0,
      .most = 2880,
      .step = 60,
      .usual = usual_changes_at,
      .applies = clock_is_changed,
      .source =
          "what the clock shows just before; usual value: that of this machine's zone, else two at night, common "
          "practice"}},
    {L::pace_per_hour,
     {.key = "pace.per_hour",
      .name = "Usual pace",
      .link = Link::contacts,
      .digits = 1,
      .least = 0.1,
      .most = 200,
      .step = 0.5,
      .scale = Scale::log,
      .usual = usual_pace,
      .source = "usual value: from your own earlier outings, else a guess of contacts an hour; common practice"}},
    {L::pace_spread_pct,
     {.key = "pace.spread_pct",
      .name = "Pace spread",
      .link = Link::contacts,
      .unit = Unit::percent,
      .least = 0,
      .most = 300,
      .step = 5,
      .usual = usual_spread,
      .source = "usual value: how your own earlier outings differ, else half, since the pace is a guess; common "
                "practice"}},
    {L::pace_target,
     {.key = "pace.target",
      .name = "Target",
      .link = Link::contacts,
      .least = 1,
      .most = 1000,
      .step = 1,
      .usual = usual_target,
      .source = "usual value: ten contacts make an outing count; common practice"}},
    {L::pace_day_rule,
     {.key = "pace.day_rule",
      .name = "Counting rule",
      .link = Link::contacts,
      .kind = Kind::choice,
      .options = day_rules,
      .usual = first_option,
      .source = "usual value: contacts count by the UTC day; common practice"}},
};

}  // namespace

std::span<const LeverRow> outing_levers() { return kRows; }

}  // namespace gs
