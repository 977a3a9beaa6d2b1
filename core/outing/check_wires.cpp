// Which inputs of which checks come from the plan, where the rows themselves do not say.
#include <algorithm>

#include "core/outing/check_rows.h"

namespace gs {
namespace {

struct Wire {
  std::string_view check;  // key, or the part before the point for all checks of it
  std::string_view input;
  L plan;
};

constexpr Wire kWires[] = {
    {"battery", "capacity_ah", L::battery_capacity_ah},
    {"battery", "chemistry", L::battery_chemistry},
    {"battery", "health_pct", L::battery_health_pct},
    {"battery", "temperature_c", L::battery_temperature_c},
    {"battery", "reserve_pct", L::battery_reserve_pct},
    {"battery", "receive_a", L::radio_receive_current_a},
    {"battery", "transmit_share_pct", L::radio_transmit_share_pct},
    {"battery.key_down", "wire", L::lead_wire},
    {"battery.key_down", "length_m", L::lead_length_m},
    {"battery.in_park", "full_power_w", L::radio_full_power_w},
    {"battery.in_park", "transmit_power_w", L::radio_transmit_power_w},
    {"battery.in_park", "mode", L::radio_mode},
    {"radio.draw", "mode", L::radio_mode},
    {"radio", "full_power_w", L::radio_full_power_w},
    {"radio.two_readings", "low_w", L::radio_read_one_w},
    {"radio.two_readings", "low_a", L::radio_read_one_a},
    {"radio.two_readings", "high_w", L::radio_read_two_w},
    {"radio.two_readings", "high_a", L::radio_read_two_a},
    {"radio.two_readings", "third_w", L::radio_read_three_w},
    {"radio.two_readings", "third_a", L::radio_read_three_a},
    {"radio.lead_drop", "wire", L::lead_wire},
    {"radio.lead_drop", "length_m", L::lead_length_m},
    {"radio.lead_wire", "length_m", L::lead_length_m},
    {"radio.fuse", "wire", L::lead_wire},
    {"antenna", "frequency_mhz", L::antenna_frequency_mhz},
    {"antenna", "kind", L::antenna_kind},
    {"antenna.fits", "apex_m", L::antenna_apex_m},
    {"antenna.fits", "span_m", L::antenna_span_m},
    {"antenna.v_reach", "apex_m", L::antenna_apex_m},
    {"antenna.height", "apex_m", L::antenna_apex_m},
    {"antenna.which_fits", "apex_m", L::antenna_apex_m},
    {"antenna.which_fits", "span_m", L::antenna_span_m},
    {"antenna.trim_many", "wanted_mhz", L::antenna_frequency_mhz},
    {"antenna.any_length", "first_mhz", L::antenna_frequency_mhz},
    {"antenna.bands", "first_mhz", L::antenna_frequency_mhz},
    {"antenna.end_fed_again", "first_mhz", L::antenna_dip_mhz},
    {"antenna.end_fed_again", "wanted_mhz", L::antenna_frequency_mhz},
    {"antenna.transformer_cost", "power_w", L::radio_transmit_power_w},
    {"antenna.wire_voltage", "power_w", L::radio_transmit_power_w},
    {"antenna.comes_back", "power_w", L::radio_transmit_power_w},
    {"safety.exposure_distance", "frequency_mhz", L::antenna_frequency_mhz},
    {"safety.exposure_distance", "power_w", L::radio_transmit_power_w},
    {"safety.power_at_distance", "frequency_mhz", L::antenna_frequency_mhz},
    {"safety.power_lines", "height_m", L::antenna_apex_m},
    {"safety.power_lines", "distance_m", L::safety_line_m},
    {"safety.power_lines", "voltage", L::safety_line_voltage},
    {"safety.touch_voltage", "power_w", L::radio_transmit_power_w},
    {"safety.exposure_distance", "limits", L::safety_limits},
    {"safety.exposure_distance", "ground", L::safety_ground},
    {"safety.power_at_distance", "limits", L::safety_limits},
    {"safety.power_at_distance", "ground", L::safety_ground},
    {"safety.power_at_distance", "distance_m", L::safety_people_m},
    {"rules.may_transmit", "frequency_mhz", L::antenna_frequency_mhz},
    {"rules.may_transmit", "region", L::rules_region},
    {"rules.may_transmit", "class", L::rules_class},
    {"pace", "per_hour", L::pace_per_hour},
    {"pace", "spread_pct", L::pace_spread_pct},
    {"pace", "target", L::pace_target},
    {"clock", "arrive_min", L::clock_arrive_min},
    {"clock", "leave_by_min", L::clock_leave_by_min},
    {"clock", "set_up_min", L::clock_set_up_min},
    {"clock", "pack_down_min", L::clock_pack_down_min},
    {"sky.lobe", "frequency_mhz", L::antenna_frequency_mhz},
};

bool fits(const Wire& wire, const Check& check, const Lever& input) {
  const bool check_fits = wire.check == check.key || (wire.check.size() < check.key.size() &&
                                                      check.key.substr(0, wire.check.size()) == wire.check &&
                                                      check.key[wire.check.size()] == '.');
  const Lever& row = lever(wire.plan);
  // the same kind of value only: a choice from the same list, a number in the same unit
  return check_fits && wire.input == input.key && row.kind == input.kind && row.unit == input.unit &&
         (row.kind != Kind::choice || row.options().data() == input.options().data());
}

}  // namespace

std::vector<CheckInput> wired(const Check& check) {
  std::vector<CheckInput> inputs(check.inputs.begin(), check.inputs.end());
  for (CheckInput& input : inputs) {
    if (input.plan != L::count || input.plan_reading != R::count) continue;
    const auto wire = std::find_if(std::begin(kWires), std::end(kWires),
                                   [&](const Wire& one) { return fits(one, check, input.row); });
    if (wire == std::end(kWires)) continue;
    input.plan = wire->plan;
    input.only_if_set = input.row.usual != nullptr;
  }
  return inputs;
}

}  // namespace gs
