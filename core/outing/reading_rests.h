// What several rows of the reading table share: the levers that they rest on, their sources, what they assume. Only
// readings.cpp uses it.
#pragma once

#include <string_view>

#include "core/outing/levers.h"

namespace gs::reading_rests {

inline constexpr std::string_view kLineTheory = "exact theory of the uniform lossy line; docs/methods/feedline";

inline constexpr L kPowerRests[] = {L::battery_capacity_ah,
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
inline constexpr L kCurrentRests[] = {L::radio_receive_current_a,    L::radio_full_power_current_a,
                                      L::radio_keyed_idle_current_a, L::radio_transmit_power_w,
                                      L::radio_full_power_w,         L::radio_mode,
                                      L::radio_transmit_share_pct,   L::radio_accessories_a};
inline constexpr L kSupplyRests[] = {L::lead_length_m,
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
inline constexpr L kPeakRests[] = {L::radio_transmit_power_w, L::radio_full_power_w, L::radio_full_power_current_a,
                                   L::radio_keyed_idle_current_a, L::radio_accessories_a};
inline constexpr L kLeadRests[] = {L::lead_length_m,          L::lead_wire,
                                   L::radio_transmit_power_w, L::radio_full_power_current_a,
                                   L::lead_contacts_ohm,      L::lead_temperature_c};
inline constexpr L kFuseRests[] = {L::lead_wire, L::radio_transmit_power_w, L::radio_full_power_current_a,
                                   L::radio_mode};
inline constexpr L kCutRests[] = {L::antenna_kind, L::antenna_frequency_mhz, L::antenna_wire};
inline constexpr L kFitRests[] = {L::antenna_span_m,        L::antenna_apex_m,   L::antenna_kind,
                                  L::antenna_frequency_mhz, L::antenna_wire_m,   L::antenna_wire,
                                  L::antenna_end_m,         L::antenna_radial_m, L::antenna_whip_m};
inline constexpr L kEfficiencyRests[] = {
    L::antenna_kind,        L::antenna_frequency_mhz, L::antenna_whip_m,
    L::antenna_coil_at_pct, L::antenna_coil_q,        L::antenna_ground_ohm,
    L::antenna_radials,     L::antenna_radial_m,      L::antenna_transformer_db};
inline constexpr L kTrimRests[] = {L::antenna_dip_mhz, L::antenna_wire_m, L::antenna_frequency_mhz, L::antenna_kind,
                                   L::antenna_whip_m};
inline constexpr L kHangRests[] = {L::antenna_kind, L::antenna_apex_m, L::antenna_end_m, L::antenna_frequency_mhz,
                                   L::antenna_wire_m};
inline constexpr L kAllWireRests[] = {L::antenna_kind,   L::antenna_frequency_mhz, L::antenna_wire,
                                      L::antenna_wire_m, L::antenna_radials,       L::antenna_radial_m};
inline constexpr std::string_view kAntennaClosedForm =
    "radiation over all resistance at the feed point, closed form; docs/methods/antenna";
inline constexpr L kImpedanceRests[] = {L::antenna_feed_r_ohm, L::antenna_feed_x_ohm, L::feedline_length_m,
                                        L::feedline_cable, L::antenna_frequency_mhz};
inline constexpr L kVoltageRests[] = {L::radio_transmit_power_w, L::feedline_measured_swr, L::antenna_feed_r_ohm};
inline constexpr L kClockRests[] = {L::clock_leave_by_min,  L::clock_arrive_min, L::clock_set_up_min,
                                    L::clock_pack_down_min, L::clock_change_min, L::clock_changes_at_min};
inline constexpr L kSunRests[] = {L::site_locator, L::clock_utc_offset_min};
inline constexpr L kSunHeightRests[] = {L::site_locator,       L::clock_utc_offset_min, L::clock_arrive_min,
                                        L::clock_leave_by_min, L::clock_set_up_min,     L::clock_pack_down_min};
inline constexpr L kWayRests[] = {L::site_locator, L::sky_toward_locator};
inline constexpr L kStartRests[] = {L::clock_arrive_min, L::clock_set_up_min};
inline constexpr L kCountRests[] = {L::pace_day_rule};
inline constexpr L kUsualRests[] = {L::pace_per_hour, L::pace_spread_pct};
inline constexpr L kPaceRests[] = {L::pace_per_hour,    L::pace_spread_pct,     L::pace_target,
                                   L::pace_day_rule,    L::clock_arrive_min,    L::clock_leave_by_min,
                                   L::clock_set_up_min, L::clock_pack_down_min, L::clock_utc_offset_min,
                                   L::clock_change_min, L::clock_changes_at_min};
inline constexpr L kSafetyRests[] = {L::radio_transmit_power_w, L::radio_mode,    L::safety_busiest_share_pct,
                                     L::antenna_frequency_mhz,  L::antenna_kind,  L::antenna_wire_m,
                                     L::antenna_wire,           L::safety_limits, L::safety_ground};
inline constexpr L kRulesRests[] = {L::antenna_frequency_mhz, L::radio_mode,        L::rules_class,
                                    L::rules_region,          L::rules_own_low_mhz, L::rules_own_high_mhz};
inline constexpr L kRulesPowerRests[] = {L::radio_transmit_power_w, L::antenna_frequency_mhz, L::rules_class,
                                         L::rules_region,           L::rules_own_power_w,     L::antenna_kind,
                                         L::antenna_wire_m,         L::antenna_wire};

inline constexpr L kLookedAt[] = {L::safety_looked_at_lines, L::safety_looked_at_fuse, L::safety_looked_at_coax};

inline constexpr std::string_view kBatterySource =
    "lead-acid: kinetic law with the maker's voltages; others: charge counted with curve and resistance; "
    "docs/methods/power";
inline constexpr std::string_view kBatteryAssumes =
    "the average drains the charge, the peak tests the voltage; the range is the spread between packs and, for "
    "usual currents, between sets";
inline constexpr std::string_view kPaceSource = "Poisson contacts at a gamma distributed pace; docs/methods/pace";
inline constexpr std::string_view kExposureSource =
    "FCC OET Bulletin 65 far field with ground reflection, 47 CFR 1.1310; docs/methods/safety";

inline constexpr std::string_view kSunSource = "Meeus, Astronomical Algorithms, 2nd ed., ch. 25; docs/methods/sky";
inline constexpr std::string_view kSunAssumes =
    "the middle of the locator's cell; a free horizon, refraction of 34' at rise and set";

inline constexpr std::string_view kKitSource = "reliability of series and parallel systems; docs/methods/kit";

}  // namespace gs::reading_rests
