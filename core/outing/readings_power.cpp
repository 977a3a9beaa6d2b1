// What battery, radio and lead come to.
#include "core/outing/levers.h"
#include "core/outing/reading_rows.h"
#include "core/outing/reading_words.h"

namespace gs {
namespace {

constexpr L kPowerRests[] = {L::battery_capacity_ah,
                             L::battery_chemistry,
                             L::battery_temperature_c,
                             L::battery_health_pct,
                             L::battery_reserve_pct,
                             L::battery_used_ah,
                             L::spare_capacity_ah,
                             L::radio_transmit_power_w,
                             L::radio_mode,
                             L::radio_transmit_share_pct,
                             L::radio_receive_current_a,
                             L::radio_full_power_current_a,
                             L::radio_keyed_idle_current_a,
                             L::radio_accessories_a,
                             L::radio_minimum_supply_v,
                             L::lead_length_m,
                             L::lead_wire,
                             L::battery_max_current_a,
                             L::battery_cut_off_v,
                             L::radio_over_s,
                             L::lead_temperature_c};
constexpr L kCurrentRests[] = {
    L::radio_receive_current_a,  L::radio_full_power_current_a, L::radio_keyed_idle_current_a,
    L::radio_transmit_power_w,   L::radio_full_power_w,         L::radio_mode,
    L::radio_transmit_share_pct, L::radio_accessories_a,        L::radio_read_one_a,
    L::radio_read_two_a,         L::radio_read_three_a};
constexpr L kSupplyRests[] = {L::lead_length_m,
                              L::lead_wire,
                              L::battery_capacity_ah,
                              L::battery_chemistry,
                              L::battery_temperature_c,
                              L::radio_transmit_power_w,
                              L::radio_full_power_current_a,
                              L::radio_minimum_supply_v,
                              L::radio_over_s,
                              L::lead_contacts_ohm,
                              L::lead_temperature_c};
constexpr L kPeakRests[] = {L::radio_transmit_power_w,     L::radio_full_power_w,  L::radio_full_power_current_a,
                            L::radio_keyed_idle_current_a, L::radio_accessories_a, L::radio_read_one_a,
                            L::radio_read_two_a,           L::radio_read_three_a};
constexpr L kLeadRests[] = {L::lead_length_m,          L::lead_wire,
                            L::radio_transmit_power_w, L::radio_full_power_current_a,
                            L::lead_contacts_ohm,      L::lead_temperature_c};
constexpr L kFuseRests[] = {L::lead_wire, L::radio_transmit_power_w, L::radio_full_power_current_a, L::radio_mode};
constexpr std::string_view kBatterySource =
    "lead-acid: kinetic law with the maker's voltages; others: charge counted with curve and resistance; "
    "docs/methods/power";
constexpr std::string_view kBatteryAssumes =
    "the average drains the charge, the peak tests the voltage; the range is the spread between packs and, for "
    "usual currents, between sets";

constexpr ReadingRow kRows[] = {
    {R::power_spare_min,
     {.key = "power.spare_min",
      .name = "Battery to spare",
      .link = Link::battery,
      .unit = Unit::minute,
      .better = Better::more,
      .source = kBatterySource,
      .assumes = kBatteryAssumes,
      .formula = "until when the battery lasts \u2212 when one starts packing",
      .rests_on = kPowerRests}},
    {R::power_runtime_h,
     {.key = "power.runtime_h",
      .name = "Runtime",
      .link = Link::battery,
      .unit = Unit::hour,
      .better = Better::more,
      .source = kBatterySource,
      .assumes = kBatteryAssumes,
      .formula = "until the first of: reserve, the set's minimum supply at key-down, the battery's cut-off, its "
                 "current limit",
      .rests_on = kPowerRests,
      .in_words = runtime_in_words}},
    {R::power_lasts_until_min,
     {.key = "power.lasts_until_min",
      .name = "Lasts until",
      .link = Link::battery,
      .unit = Unit::clock_minute,
      .better = Better::more,
      .source = kBatterySource,
      .assumes = kBatteryAssumes,
      .formula = "first call + runtime",
      .rests_on = kPowerRests}},
    {R::power_left_at_leave_by_pct,
     {.key = "power.left_at_leave_by_pct",
      .name = "Battery at leave-by",
      .link = Link::battery,
      .unit = Unit::percent,
      .better = Better::more,
      .source = kBatterySource,
      .assumes = kBatteryAssumes,
      .formula = "what is left after the time on the air, of what the battery gives",
      .rests_on = kPowerRests}},
    {R::power_average_current_a,
     {.key = "power.average_current_a",
      .name = "Average current",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 2,
      .better = Better::less,
      .source = "input current follows the root of the power; docs/methods/power",
      .assumes = "the mode's usual share of the key-down current",
      .formula =
          "receive current while listening, mode's share of the key-down current while sending, other loads always",
      .rests_on = kCurrentRests}},
    {R::power_supply_at_key_down_v,
     {.key = "power.supply_at_key_down_v",
      .name = "Supply at key-down",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 1,
      .better = Better::more,
      .source = "resting voltage less the battery's own resistance and the lead's; docs/methods/power",
      .assumes = "a set that keeps its current at a lower supply",
      .formula = "battery under load when it is least \u2212 current \u00D7 lead, there and back",
      .rests_on = kSupplyRests}},
    {R::radio_key_down_current_a,
     {.key = "radio.key_down_current_a",
      .name = "Key-down current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 1,
      .better = Better::less,
      .source = "input current follows the root of the power; docs/methods/power",
      .assumes = "13.8 V at the set; the antenna takes the power that the set lets go",
      .formula = "keyed idle + (full-power current \u2212 keyed idle) \u00D7 \u221A(power \u00F7 full power) + "
                 "other loads",
      .rests_on = kPeakRests}},
    {R::lead_drop_v,
     {.key = "lead.drop_v",
      .name = "Lost in the lead",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 2,
      .better = Better::less,
      .source = "ASTM B258 wire, IEC 60028 copper; docs/methods/power",
      .assumes = "stranded copper as solid wire of its gauge",
      .formula = "key-down current \u00D7 (both conductors + plugs and fuse)",
      .rests_on = kLeadRests}},
    {R::lead_fuse_a,
     {.key = "lead.fuse_a",
      .name = "Fuse at the battery",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 1,
      .source = "a fuse maker's application text; wires by boat wiring practice; docs/methods/power",
      .assumes =
          "blade fuses at 25 \u00B0C; the set maker's own fuse counts first, and never more than the wire carries",
      .formula = "next size above key-down current and above current while sending \u00F7 0.75",
      .rests_on = kFuseRests}},
    {R::radio_turned_down_w,
     {.key = "radio.turned_down_w",
      .name = "Set turns down",
      .link = Link::radio,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::less,
      .source = "the set holds its reflected power; common practice, docs/methods/feedline"}},
};

}  // namespace

std::span<const ReadingRow> power_readings() { return kRows; }

}  // namespace gs
