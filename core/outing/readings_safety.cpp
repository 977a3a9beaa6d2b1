// What safety and rules come to.
#include "core/outing/levers.h"
#include "core/outing/reading_rows.h"

namespace gs {
namespace {

constexpr L kSafetyRests[] = {L::radio_transmit_power_w, L::radio_mode,    L::safety_busiest_share_pct,
                              L::antenna_frequency_mhz,  L::antenna_kind,  L::antenna_wire_m,
                              L::antenna_wire,           L::safety_limits, L::safety_ground};
constexpr L kRulesRests[] = {L::antenna_frequency_mhz, L::radio_mode,        L::rules_class,
                             L::rules_region,          L::rules_own_low_mhz, L::rules_own_high_mhz};
constexpr L kRulesPowerRests[] = {L::radio_transmit_power_w, L::antenna_frequency_mhz, L::rules_class,
                                  L::rules_region,           L::rules_own_power_w,     L::antenna_kind,
                                  L::antenna_wire_m,         L::antenna_wire};
constexpr L kLineRests[] = {L::safety_line_m,  L::antenna_apex_m,        L::safety_line_voltage,
                            L::antenna_kind,   L::antenna_frequency_mhz, L::antenna_wire_m,
                            L::antenna_whip_m, L::safety_looked_at_lines};
constexpr std::string_view kLinesSource =
    "US question pool 2022-2026, T0B06; 29 CFR 1926.1408 Table A; common practice; docs/methods/safety";
constexpr L kLookedAt[] = {L::safety_looked_at_lines, L::safety_looked_at_fuse, L::safety_looked_at_coax};
constexpr std::string_view kExposureSource =
    "FCC OET Bulletin 65 far field with ground reflection, 47 CFR 1.1310; docs/methods/safety";

constexpr ReadingRow kRows[] = {
    {R::safety_public_m,
     {.key = "safety.public_m",
      .name = "Keep-out, public",
      .link = Link::safety,
      .unit = Unit::metre,
      .digits = 1,
      .better = Better::less,
      .source = kExposureSource,
      .assumes = "the antenna's greatest gain towards people, a dipole's or a longer wire's; reflection and limits "
                 "as chosen; local rules come first",
      .formula = "where the averaged field meets the limit for people who were not told, rounded up, never under "
                 "arm's reach",
      .rests_on = kSafetyRests}},
    {R::safety_operator_m,
     {.key = "safety.operator_m",
      .name = "Keep-out, operator",
      .link = Link::safety,
      .unit = Unit::metre,
      .digits = 1,
      .better = Better::less,
      .source = kExposureSource,
      .assumes = "the antenna's greatest gain towards people, a dipole's or a longer wire's; reflection and limits "
                 "as chosen; local rules come first",
      .formula =
          "where the averaged field meets the limit for those who were told, rounded up, never under arm's reach",
      .rests_on = kSafetyRests}},
    {R::safety_owed_within_m,
     {.key = "safety.owed_within_m",
      .name = "Evaluation owed within",
      .link = Link::safety,
      .unit = Unit::metre,
      .digits = 1,
      .better = Better::less,
      .source = "47 CFR 1.1307(b)(3); docs/methods/safety",
      .assumes = "United States rule; elsewhere a mark for where a formula alone is not enough",
      .formula = "nearer than this to anybody the station is not exempt from an evaluation",
      .rests_on = kSafetyRests}},
    {R::safety_stay_off_m,
     {.key = "safety.stay_off_m",
      .name = "Stay off power lines by",
      .link = Link::safety,
      .unit = Unit::metre,
      .digits = 1,
      .better = Better::less,
      .source = kLinesSource,
      .assumes = "every line is bare and live; the utility and local rules may ask for more, and come first",
      .formula =
          "the largest of: height + clearance, so that what falls keeps it; twice the height; the longest wire or "
          "throw line + clearance",
      .rests_on = kLineRests}},
    {R::safety_line_room_m,
     {.key = "safety.line_room_m",
      .name = "Room to the power line",
      .link = Link::safety,
      .unit = Unit::metre,
      .digits = 1,
      .better = Better::more,
      .source = kLinesSource,
      .assumes = "paced on the ground from what stands nearest; not given is not known, whatever else holds",
      .formula = "distance to the nearest line \u2212 what to stay off by",
      .rests_on = kLineRests}},
    {R::safety_left_to_look_at,
     {.key = "safety.left_to_look_at",
      .name = "Left to look at",
      .link = Link::safety,
      .better = Better::less,
      .source = "power lines, fuse and coax come first; docs/methods/safety",
      .assumes =
          "somebody really looked; people come no nearer than was paced, or up to the keep-out where nothing was",
      .formula = "what nobody has looked at yet",
      .rests_on = kLookedAt}},
    {R::rules_room_khz,
     {.key = "rules.room_khz",
      .name = "Room to the band edge",
      .link = Link::safety,
      .unit = Unit::kilohertz,
      .digits = 1,
      .better = Better::more,
      .source = "47 CFR 97.301, 97.303, 97.305, 97.307(b), text of 2026-09-23; docs/methods/rules",
      .assumes = "the frequency is what the dial shows; the mode's usual width and sideband; another country's "
                 "licence: its own edges, or the Region's",
      .formula = "how far the dial may still move before a part of the signal leaves what the licence allows",
      .rests_on = kRulesRests}},
    {R::rules_power_pct,
     {.key = "rules.power_pct",
      .name = "Power, of what is allowed",
      .link = Link::safety,
      .unit = Unit::percent,
      .better = Better::less,
      .source = "47 CFR 97.313, text of 2026-09-23; docs/methods/rules",
      .assumes =
          "the least power that will do is asked for everywhere (97.313(a)); a wire counts with its greatest gain",
      .formula =
          "peak envelope power \u00F7 its limit; on 60 m radiated power over a half-wave dipole \u00F7 its limit",
      .rests_on = kRulesPowerRests}},
};

}  // namespace

std::span<const ReadingRow> safety_readings() { return kRows; }

}  // namespace gs
