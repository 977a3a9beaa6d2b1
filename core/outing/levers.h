// Every input of the outing: one enumerator here and one row in levers_<link>.cpp.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/outing/readings.h"
#include "core/outing/table.h"

namespace gs {

enum class L : unsigned short {
  radio_full_power_w,
  radio_transmit_power_w,
  radio_mode,
  radio_transmit_share_pct,
  radio_over_s,
  radio_read_one_w,
  radio_read_one_a,
  radio_read_two_w,
  radio_read_two_a,
  radio_read_three_w,
  radio_read_three_a,
  radio_receive_current_a,
  radio_accessories_a,
  radio_full_power_current_a,
  radio_keyed_idle_current_a,
  radio_minimum_supply_v,
  radio_tuner,
  radio_fold_back_swr,
  battery_chemistry,
  battery_capacity_ah,
  battery_max_current_a,
  battery_cut_off_v,
  battery_temperature_c,
  battery_health_pct,
  battery_reserve_pct,
  battery_used_ah,
  spare_capacity_ah,
  lead_wire,
  lead_length_m,
  lead_temperature_c,
  lead_contacts_ohm,
  antenna_kind,
  antenna_frequency_mhz,
  antenna_apex_m,
  antenna_span_m,
  antenna_end_m,
  antenna_obstacle_m,
  antenna_obstacle_high_m,
  antenna_wire,
  antenna_wire_m,
  antenna_dip_mhz,
  antenna_radials,
  antenna_radial_m,
  antenna_whip_m,
  antenna_coil_at_pct,
  antenna_coil_q,
  antenna_ground_ohm,
  antenna_transformer_db,
  antenna_feed_r_ohm,
  antenna_feed_x_ohm,
  feedline_cable,
  feedline_length_m,
  feedline_roll_loss_pct,
  feedline_measured_swr,
  feedline_measured_at,
  feedline_temperature_c,
  feedline_second_length_m,
  feedline_second_cable,
  feedline_plug_pairs,
  feedline_choke_db,
  feedline_own_loss_db,
  feedline_own_at_mhz,
  feedline_own_second_db,
  feedline_own_second_at_mhz,
  site_locator,
  sky_toward_locator,
  clock_utc_offset_min,
  clock_arrive_min,
  clock_leave_by_min,
  clock_set_up_min,
  clock_pack_down_min,
  clock_change_min,
  clock_changes_at_min,
  pace_per_hour,
  pace_spread_pct,
  pace_target,
  pace_day_rule,
  rules_region,
  rules_class,
  rules_own_low_mhz,
  rules_own_high_mhz,
  rules_own_power_w,
  safety_limits,
  safety_ground,
  safety_people_m,
  safety_busiest_share_pct,
  safety_line_m,
  safety_line_voltage,
  safety_looked_at_lines,
  safety_looked_at_fuse,
  safety_looked_at_coax,
  safety_done_rf_touch,
  safety_done_wire_ends,
  safety_done_tripping,
  safety_done_mast_fall,
  safety_done_throw_line,
  safety_done_park_rules,
  safety_done_lithium,
  safety_done_vehicle,
  safety_done_hearing,
  safety_done_driving,
  count,
};

/// Plain levers plus two (limit, ease) for every judged reading. L::count counts the plain ones; as an id it is the
/// first limit, so it says "none" only where plain levers alone can stand.
std::size_t lever_count();
const Lever& lever(L id);
/// The lever with this key, or L(lever_count()).
L find_lever(std::string_view key);
inline bool is_lever(L id) { return std::size_t(id) < lever_count(); }

/// The levers that hold a judged reading's limit and ease. Only where is_judged(id).
L limit_lever(R id);
L ease_lever(R id);
bool is_judged(R id);
/// The table's own figure for a limit or ease lever, on top of the lever it stands over (NaN while that is
/// missing).
double usual_limit(const Plan& plan, L id);

}  // namespace gs
