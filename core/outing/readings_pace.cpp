// What the clock and the pace of contacts come to.
#include "core/outing/levers.h"
#include "core/outing/reading_rows.h"

namespace gs {
namespace {

constexpr L kClockRests[] = {L::clock_leave_by_min,  L::clock_arrive_min, L::clock_set_up_min,
                             L::clock_pack_down_min, L::clock_change_min, L::clock_changes_at_min};
constexpr L kStartRests[] = {L::clock_arrive_min, L::clock_set_up_min};
constexpr L kCountRests[] = {L::pace_day_rule};
constexpr L kUsualRests[] = {L::pace_per_hour, L::pace_spread_pct};
constexpr L kPaceRests[] = {L::pace_per_hour,    L::pace_spread_pct,     L::pace_target,
                            L::pace_day_rule,    L::clock_arrive_min,    L::clock_leave_by_min,
                            L::clock_set_up_min, L::clock_pack_down_min, L::clock_utc_offset_min,
                            L::clock_change_min, L::clock_changes_at_min};
constexpr std::string_view kPaceSource = "Poisson contacts at a gamma distributed pace; docs/methods/pace";

constexpr ReadingRow kRows[] = {
    {R::clock_starts_min,
     {.key = "clock.starts_min",
      .name = "On the air from",
      .link = Link::clock,
      .unit = Unit::clock_minute,
      .source = "by definition, or as it was said on the outing",
      .assumes = "set-up goes as planned, until being on the air is started; where that is late, it starts now",
      .formula = "arrive + set-up, or when being on the air was started",
      .rests_on = kStartRests}},
    {R::clock_late_min,
     {.key = "clock.late_min",
      .name = "Late",
      .link = Link::clock,
      .unit = Unit::minute,
      .better = Better::less,
      .source = "by definition",
      .assumes = "set-up goes as planned",
      .formula = "on the air from \u2212 arrive \u2212 set-up, where that is more than nothing",
      .rests_on = kStartRests}},
    {R::clock_on_air_min,
     {.key = "clock.on_air_min",
      .name = "Time on the air",
      .link = Link::clock,
      .unit = Unit::minute,
      .better = Better::more,
      .source = "by definition",
      .assumes = "set-up and pack-down go as planned",
      .formula = "from the first call until one starts packing, or until the battery ends; breaks left out",
      .rests_on = kClockRests}},
    {R::clock_pack_by_min,
     {.key = "clock.pack_by_min",
      .name = "Start packing at",
      .link = Link::clock,
      .unit = Unit::clock_minute,
      .source = "by definition",
      .assumes = "pack-down goes as planned",
      .formula = "leave by \u2212 pack-down",
      .rests_on = kClockRests}},
    {R::pace_chance_of_target_pct,
     {.key = "pace.chance_of_target_pct",
      .name = "Chance of target",
      .link = Link::contacts,
      .unit = Unit::percent,
      .better = Better::more,
      .source = kPaceSource,
      .assumes = "contacts come at random at a pace that is itself only roughly known; a battery that is not known "
                 "ends nothing",
      .formula =
          "chance of the target or more with those so far, by the time one starts packing or the battery ends; "
          "where the UTC day counts, on one of its days",
      .rests_on = kPaceRests}},
    {R::pace_expected_contacts,
     {.key = "pace.expected_contacts",
      .name = "Expected contacts",
      .link = Link::contacts,
      .digits = 0,
      .better = Better::more,
      .source = kPaceSource,
      .assumes = "contacts come at random at a pace that is itself only roughly known; a battery that is not known "
                 "ends nothing",
      .formula =
          "contacts so far + pace \u00D7 time to come, until one starts packing or the battery ends; where the "
          "UTC day counts and turns, the better day of two",
      .rests_on = kPaceRests}},
    {R::pace_so_far,
     {.key = "pace.so_far",
      .name = "Counted so far",
      .link = Link::contacts,
      .digits = 0,
      .better = Better::more,
      .source = "the tally",
      .assumes = "each press is a contact; duplicates are not known here",
      .formula =
          "presses of the contact button, and what was forgotten and entered later; where the UTC day counts, "
          "those of the better day",
      .rests_on = kCountRests}},
    {R::pace_now_per_hour,
     {.key = "pace.now_per_hour",
      .name = "Pace",
      .link = Link::contacts,
      .digits = 1,
      .better = Better::more,
      .source = kPaceSource,
      .assumes = "a steady pace; the usual one weighs as much as its spread says",
      .formula =
          "usual pace and contacts so far, each weighed by the time on the air it stands for; eight in ten lie "
          "in the range",
      .rests_on = kUsualRests}},
    {R::pace_sure_min,
     {.key = "pace.sure_min",
      .name = "Time for nine in ten",
      .link = Link::contacts,
      .unit = Unit::minute,
      .better = Better::less,
      .source = kPaceSource,
      .assumes = "time on the air; the UTC day does not turn meanwhile",
      .formula = "time on the air after which nine of ten outings at this pace have what is still wanted",
      .rests_on = kPaceRests}},
    {R::pace_mah_per_contact,
     {.key = "pace.mah_per_contact",
      .name = "Charge per contact",
      .link = Link::contacts,
      .unit = Unit::milliampere_hour,
      .digits = 0,
      .better = Better::less,
      .source = "by definition",
      .assumes = "the pace as it stands: the usual one, or what the tally makes of it",
      .formula = "average current \u00F7 pace",
      .rests_on = kPaceRests}},
};

}  // namespace

std::span<const ReadingRow> pace_readings() { return kRows; }

}  // namespace gs
