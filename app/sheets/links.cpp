// What each link's sheet shows, in order.
#include <algorithm>
#include <cmath>

#include "app/parts/chain_line.h"
#include "app/parts/on_air.h"
#include "app/parts/stints.h"
#include "app/sheets/frame.h"
#include "core/outing/findings_antenna.h"
#include "core/outing/findings_battery.h"
#include "core/outing/findings_feedline.h"

namespace gs::sheets {

using parts::Ui;

namespace {

/// To the sheets of the day itself: counting, what happened, words for paper.
void ways_of_the_day(Ui& ui) {
  const Phase phase = ui.session.phase();
  const auto way = [&](std::string_view id, std::string_view label, parts::Weight weight, look::Icon icon,
                       Sheet to) {
    if (ui.button(id, label, weight, icon)) {
      ui.session.view.sheet = to;
      ui.session.view.panel = Panel::none;
      ui.wake_at(ui.now_s);
    }
    ui.gap();
  };
  way("day:on_air", phase == Phase::on_air ? "Back to counting" : "On the air", parts::Weight::main,
      look::Icon::contacts, Sheet::on_air);
  if (phase != Phase::planning)
    way("day:after", "Planned and happened", parts::Weight::plain, look::Icon::check, Sheet::after);
  if (!ui.session.past().empty())
    way("day:history", "Earlier outings", parts::Weight::plain, look::Icon::count, Sheet::history);
  way("day:card", "Field card", parts::Weight::plain, look::Icon::count, Sheet::card);
}

/// Hours that a person would ask for next: the stay, where the battery does not make it, else an hour more.
double hours_to_ask(const Session& session) {
  const double runtime_h = session.outlook()[R::power_runtime_h].value;
  const double stay_h = pace::on_air(stay_of(session.plan())).minutes / 60;
  if (!std::isfinite(runtime_h)) return runtime_h;
  if (std::isfinite(stay_h) && stay_h > runtime_h) return std::ceil(4 * stay_h - 1e-9) / 4;
  return std::min(99.0, std::floor(runtime_h) + 1);
}

/// A slider that a finger can hit quarters of an hour on, as far as the question may go.
double scale_end_h(double asked_h) { return std::clamp(6 * std::ceil(1.5 * asked_h / 6), 6.0, 100.0); }

/// Volts at ease at the set, as the supply is judged.
double supply_to_ask(const Session& session) {
  const Plan& plan = session.plan();
  return std::clamp(std::ceil(10 * plan[ease_lever(R::power_supply_at_key_down_v)] - 1e-9) / 10, 0.1, 15.0);
}

TurnOffer which_battery() {
  return {
      [](const Session& session) {
        const double hours = hours_to_ask(session);
        return std::isfinite(hours)
                   ? "Which battery for " + say_quantity(hours, Unit::hour, 0, session.style()) + "?"
                   : std::string{};
      },
      [](const Session& session) {
        Turn turn;
        turn.reading = R::power_runtime_h;
        turn.wanted = hours_to_ask(session);
        turn.step = 0.25;
        turn.most = scale_end_h(turn.wanted);
        turn.levers = {
            L::battery_capacity_ah, L::radio_transmit_power_w, L::radio_transmit_share_pct, L::spare_capacity_ah,
            L::lead_wire,           L::lead_length_m,          L::battery_reserve_pct};
        turn.may = {L::battery_capacity_ah, L::radio_transmit_power_w, L::radio_transmit_share_pct};
        turn.goals = {{turn.reading, turn.wanted, turn.step, turn.most},
                      {R::power_supply_at_key_down_v, supply_to_ask(session), 0.1, 15}};
        return turn;
      }};
}

/// The share that is at ease; asked for by whoever has it already, it says what is still to spare.
TurnOffer how_long_a_line() {
  return {[](const Session& session) {
            return std::isfinite(session.outlook()[R::feedline_arrives_pct].value)
                       ? std::string("How long may the feed line be?")
                       : std::string{};
          },
          [](const Session& session) {
            Turn turn;
            turn.reading = R::feedline_arrives_pct;
            turn.wanted = session.plan()[ease_lever(R::feedline_arrives_pct)];
            turn.step = 5;
            turn.most = 99;
            turn.levers = {L::feedline_length_m, L::feedline_cable, L::antenna_frequency_mhz};
            turn.may = {L::feedline_length_m, L::feedline_cable};
            // the same share as a loss, in tenths of a decibel
            const double loss_db = std::max(0.1, std::floor(-100 * std::log10(turn.wanted / 100) + 1e-9) / 10);
            turn.goals = {{turn.reading, turn.wanted, turn.step, turn.most},
                          {R::feedline_total_loss_db, loss_db, 0.1, 6}};
            return turn;
          }};
}

TurnOffer what_fits_here() {
  return {[](const Session& session) {
            const Plan& plan = session.plan();
            return plan.has_all(L::antenna_frequency_mhz, L::antenna_apex_m, L::antenna_span_m)
                       ? "Which antenna fits in " +
                             say_quantity(plan[L::antenna_span_m], Unit::metre,
                                          digits_needed(plan[L::antenna_span_m], 1), session.style()) +
                             "?"
                       : std::string{};
          },
          [](const Session&) {
            Turn turn;
            turn.by_kind = true;
            return turn;
          }};
}

LinkSheet battery() {
  return {
      Link::battery,
      R::power_runtime_h,
      discharge,
      {R::power_spare_min, R::power_lasts_until_min, R::power_left_at_leave_by_pct, R::power_average_current_a,
       R::power_supply_at_key_down_v, R::pace_mah_per_contact},
      [](Ui& ui) { ui.findings(battery_findings(ui.session.plan(), ui.session.outlook(), ui.session.style())); },
      L::battery_capacity_ah,
      {L::battery_chemistry, L::radio_transmit_power_w, L::radio_transmit_share_pct, L::radio_mode,
       L::battery_temperature_c, L::battery_reserve_pct, L::battery_health_pct, L::battery_used_ah,
       L::battery_max_current_a, L::battery_cut_off_v, L::spare_capacity_ah, L::radio_accessories_a,
       L::radio_over_s},
      which_battery()};
}

LinkSheet radio() {
  return {Link::radio,
          R::power_supply_at_key_down_v,
          [](Ui& ui) { ui.current_plot(ui.phone() ? 230.0F : 280.0F); },
          {R::power_average_current_a, R::radio_key_down_current_a, R::lead_drop_v, R::lead_fuse_a,
           R::radio_turned_down_w, R::power_runtime_h},
          {},
          L::radio_transmit_power_w,
          {L::radio_full_power_w,
           L::radio_mode,
           L::radio_transmit_share_pct,
           L::radio_receive_current_a,
           L::radio_full_power_current_a,
           L::radio_keyed_idle_current_a,
           L::radio_minimum_supply_v,
           L::radio_read_one_w,
           L::radio_read_one_a,
           L::radio_read_two_w,
           L::radio_read_two_a,
           L::radio_read_three_w,
           L::radio_read_three_a,
           L::lead_wire,
           L::lead_length_m,
           L::lead_contacts_ohm,
           L::lead_temperature_c,
           L::radio_accessories_a,
           L::radio_tuner,
           L::radio_fold_back_swr}};
}

LinkSheet feedline() {
  return {Link::feedline,
          R::feedline_power_to_antenna_w,
          [](Ui& ui) {
            ui.watts_bar();
            ui.gap();
            ui.rolls(4);
          },
          {R::feedline_arrives_pct, R::feedline_total_loss_db, R::feedline_swr_at_radio, R::antenna_swr,
           R::radio_turned_down_w, R::feedline_matched_loss_db, R::feedline_weight_g, R::feedline_highest_v,
           R::feedline_radio_r_ohm, R::feedline_radio_x_ohm},
          [](Ui& ui) {
            ui.findings(feedline_findings(ui.session.plan(), ui.session.outlook(), ui.session.style()));
            ui.gap();
            ui.loss_plot();
            ui.along_plot();
          },
          L::feedline_length_m,
          {L::feedline_cable,           L::antenna_frequency_mhz,     L::radio_transmit_power_w,
           L::radio_full_power_w,       L::feedline_measured_swr,     L::feedline_measured_at,
           L::antenna_feed_r_ohm,       L::antenna_feed_x_ohm,        L::radio_tuner,
           L::radio_fold_back_swr,      L::feedline_roll_loss_pct,    L::feedline_temperature_c,
           L::feedline_second_length_m, L::feedline_second_cable,     L::feedline_plug_pairs,
           L::feedline_choke_db,        L::feedline_own_loss_db,      L::feedline_own_at_mhz,
           L::feedline_own_second_db,   L::feedline_own_second_at_mhz},
          how_long_a_line()};
}

LinkSheet antenna() {
  return {Link::antenna,
          R::antenna_cut_length_m,
          [](Ui& ui) { ui.side_view(ui.phone() ? 260.0F : 360.0F); },
          {R::antenna_fits_m, R::antenna_efficiency_pct, R::antenna_swr, R::feedline_swr_at_radio,
           R::antenna_trim_m, R::antenna_low_m, R::safety_line_room_m, R::antenna_against_full_db,
           R::antenna_width_mhz, R::antenna_all_wire_m, R::antenna_rope_m},
          [](Ui& ui) {
            if (ui.session.plan().has(L::antenna_obstacle_m)) ui.reading_row(R::antenna_clears_m);
            ui.findings(antenna_findings(ui.session.plan(), ui.session.outlook(), ui.session.style()));
            ui.gap();
            ui.swr_plot(ui.phone() ? 200.0F : 240.0F);
          },
          L::antenna_apex_m,
          {L::antenna_kind,       L::antenna_frequency_mhz,  L::antenna_span_m,      L::antenna_end_m,
           L::safety_line_m,      L::safety_line_voltage,    L::antenna_obstacle_m,  L::antenna_obstacle_high_m,
           L::antenna_wire,       L::antenna_wire_m,         L::antenna_dip_mhz,     L::antenna_radials,
           L::antenna_radial_m,   L::antenna_whip_m,         L::antenna_coil_at_pct, L::antenna_coil_q,
           L::antenna_ground_ohm, L::antenna_transformer_db, L::antenna_feed_r_ohm,  L::antenna_feed_x_ohm},
          what_fits_here()};
}

LinkSheet sky() {
  return {Link::sky,
          R::count,
          {},
          {R::sky_sunrise_min, R::sky_sunset_min, R::sky_sun_at_start_deg, R::sky_sun_at_pack_by_deg,
           R::sky_distance_km, R::sky_bearing_deg},
          {},
          L::count,
          {L::site_locator, L::sky_toward_locator, L::clock_utc_offset_min, L::antenna_frequency_mhz}};
}

LinkSheet contacts() {
  return {Link::contacts,
          R::pace_chance_of_target_pct,
          [](Ui& ui) {
            ui.time_line();
            parts::pace_from(ui);
          },
          {R::pace_expected_contacts, R::pace_so_far, R::pace_now_per_hour, R::pace_sure_min, R::clock_on_air_min,
           R::power_lasts_until_min, R::pace_mah_per_contact},
          ways_of_the_day,
          L::pace_per_hour,
          {L::pace_target, L::pace_spread_pct, L::pace_day_rule, L::clock_arrive_min, L::clock_leave_by_min}};
}

LinkSheet clock() {
  return {Link::clock,
          R::clock_on_air_min,
          [](Ui& ui) {
            ui.time_line();
            parts::clock_words(ui);
          },
          {R::clock_starts_min, R::clock_late_min, R::clock_pack_by_min, R::power_lasts_until_min,
           R::power_spare_min, R::pace_chance_of_target_pct},
          [](Ui& ui) {
            parts::stints(ui);
            ui.gap();
            ways_of_the_day(ui);
          },
          L::clock_leave_by_min,
          {L::clock_arrive_min, L::clock_set_up_min, L::clock_pack_down_min, L::clock_utc_offset_min,
           L::clock_change_min, L::clock_changes_at_min}};
}

LinkSheet safety() {
  return {Link::safety,
          R::safety_public_m,
          [](Ui& ui) { ui.safety_plan(); },
          {R::safety_operator_m, R::safety_owed_within_m, R::safety_left_to_look_at, R::safety_stay_off_m,
           R::safety_line_room_m, R::rules_room_khz, R::rules_power_pct},
          {},
          L::count,
          {L::safety_line_m, L::safety_line_voltage, L::safety_busiest_share_pct, L::safety_people_m,
           L::radio_transmit_power_w, L::radio_mode, L::antenna_kind, L::antenna_frequency_mhz, L::rules_class,
           L::rules_region, L::rules_own_low_mhz, L::rules_own_high_mhz, L::rules_own_power_w, L::safety_limits,
           L::safety_ground},
          {},
          true,
          {},
          {[](const Ui& ui) { return ui.next_look_height(); }, [](Ui& ui) { ui.next_look_foot(); }}};
}

LinkSheet kit() {
  return {Link::kit,
          R::kit_chance_pct,
          [](Ui& ui) { ui.kit_list(); },
          {R::kit_single_points, R::kit_weight_kg, R::kit_volume_l, R::kit_set_up_min, R::kit_to_pack},
          {},
          L::count,
          {},
          {},
          false,
          [](Ui& ui) { ui.kit_at_hand(); },
          {[](const Ui& ui) { return ui.session.outing().kit.empty() ? 0 : look::space::kTargetMain; },
           [](Ui& ui) { ui.kit_foot(); }}};
}

LinkSheet sheet_of(Link link) {
  switch (link) {
    case Link::battery:
      return battery();
    case Link::radio:
      return radio();
    case Link::feedline:
      return feedline();
    case Link::antenna:
      return antenna();
    case Link::sky:
      return sky();
    case Link::contacts:
      return contacts();
    case Link::safety:
      return safety();
    case Link::clock:
      return clock();
    case Link::kit:
    case Link::count:
      break;
  }
  return kit();
}

}  // namespace

void link(Ui& ui) {
  if (ui.session.view.link != Link::count) link_sheet(ui, sheet_of(ui.session.view.link));
}

void open_control(Ui& ui, L id, Link rather) {
  const auto stands = [id](const LinkSheet& sheet) {
    return sheet.slider == id || std::find(sheet.levers.begin(), sheet.levers.end(), id) != sheet.levers.end();
  };
  // on the sheet of what it mends, if it stands there too
  LinkSheet found = sheet_of(rather);
  for (const Link link : {lever(id).link, rather})
    if (LinkSheet sheet = sheet_of(link); stands(sheet)) found = std::move(sheet);
  parts::open_link(ui, found.link);
  ui.session.view.sheet = Sheet::link;
  const std::string key(lever(id).key);
  const bool row = found.slider != id;
  if (row) ui.session.view.unfolded = key + ":row";
  if (stands(found)) ui.keyboard_to = row ? key + ":row" : key;
}

}  // namespace gs::sheets
