// Every result of the plan: one enumerator here and one row in readings_<link>.cpp.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/outing/table.h"

namespace gs {

enum class R : unsigned char {
  power_spare_min,
  power_runtime_h,
  power_lasts_until_min,
  power_left_at_leave_by_pct,
  power_average_current_a,
  power_supply_at_key_down_v,
  radio_key_down_current_a,
  lead_drop_v,
  lead_fuse_a,
  radio_turned_down_w,
  feedline_matched_loss_db,
  feedline_total_loss_db,
  feedline_arrives_pct,
  feedline_power_to_antenna_w,
  feedline_cable_matched_w,
  feedline_cable_swr_w,
  feedline_swr_at_radio,
  feedline_weight_g,
  feedline_radio_r_ohm,
  feedline_radio_x_ohm,
  feedline_highest_v,
  antenna_fits_m,
  antenna_efficiency_pct,
  antenna_cut_length_m,
  antenna_swr,
  antenna_trim_m,
  antenna_low_m,
  antenna_clears_m,
  antenna_width_mhz,
  antenna_against_full_db,
  antenna_all_wire_m,
  antenna_rope_m,
  sky_sunrise_min,
  sky_sunset_min,
  sky_sun_at_start_deg,
  sky_sun_at_pack_by_deg,
  sky_distance_km,
  sky_bearing_deg,
  clock_starts_min,
  clock_late_min,
  clock_on_air_min,
  clock_pack_by_min,
  pace_chance_of_target_pct,
  pace_expected_contacts,
  pace_so_far,
  pace_now_per_hour,
  pace_sure_min,
  pace_mah_per_contact,
  safety_public_m,
  safety_operator_m,
  safety_owed_within_m,
  safety_stay_off_m,
  safety_line_room_m,
  safety_left_to_look_at,
  rules_room_khz,
  rules_power_pct,
  kit_chance_pct,
  kit_single_points,
  kit_weight_kg,
  kit_volume_l,
  kit_set_up_min,
  kit_to_pack,
  count,
};

inline constexpr std::size_t kReadingCount = std::size_t(R::count);
const Reading& reading(R id);
/// The reading with this key, or R::count.
R find_reading(std::string_view key);

}  // namespace gs
