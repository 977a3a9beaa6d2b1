// Where two links meet: what battery, radio, line, antenna, clock, pace and safety ask of each other.
#include <doctest/doctest.h>

#include <cmath>

#include "core/antenna/feed.h"
#include "core/outing/kit_start.h"
#include "core/units.h"
#include "tests/core/outing/outings.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using test::Closeness;

namespace {

Plan whole_with(test::Sets sets) { return resolve(test::also(test::whole_outing(), sets).set); }
double value(const Plan& plan, R id) { return evaluate(plan)[id].value; }

/// A battery that can be counted by hand: as rated at 25 C, emptied gently, and nothing but its charge ends it. The
/// set draws 0.4 A, sending or not: 2 Ah last 5 h.
Outing by_charge() {
  return test::also(test::whole_outing(), {{L::battery_capacity_ah, 2.0},
                                           {L::battery_temperature_c, 25.0},
                                           {L::battery_reserve_pct, 0.0},
                                           {L::battery_max_current_a, 500.0},
                                           {L::battery_cut_off_v, 4.0},
                                           {L::radio_minimum_supply_v, 6.0},
                                           {L::radio_receive_current_a, 0.4},
                                           {L::radio_full_power_current_a, 0.4},
                                           {L::radio_keyed_idle_current_a, 0.4},
                                           {L::clock_set_up_min, 20.0},
                                           {L::clock_pack_down_min, 15.0}});
}
Plan by_charge_with(test::Sets sets) { return resolve(test::also(by_charge(), sets).set); }

/// A set whose draw follows from one root: 2 A keyed idle, 20 A at 100 W, a carrier all the time, no line between.
Plan carrier_with(test::Sets sets) {
  const Outing base = test::also(test::whole_outing(), {{L::radio_mode, "carrier"},
                                                        {L::radio_transmit_share_pct, 100.0},
                                                        {L::radio_full_power_current_a, 20.0},
                                                        {L::radio_keyed_idle_current_a, 2.0},
                                                        {L::feedline_length_m, 0.0},
                                                        {L::feedline_measured_swr, 1.0}});
  return resolve(test::also(base, sets).set);
}

}  // namespace

TEST_CASE("joins: an outing with every link set leaves nothing unknown") {
  Outing outing = test::also(test::whole_outing(), {{L::site_locator, "JN58td"},
                                                    {L::sky_toward_locator, "IO91"},
                                                    {L::clock_utc_offset_min, 120.0},
                                                    {L::antenna_obstacle_m, 3.0},
                                                    {L::antenna_obstacle_high_m, 2.0},
                                                    {L::safety_line_m, 60.0}});
  outing.date = "2026-06-13";
  outing.kit = usual_kit(resolve(outing));
  const Plan plan = resolve(outing);
  const Outlook out = evaluate(plan);
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    CAPTURE(std::string(reading(R(i)).key));
    CHECK(out.at[i].state != State::unknown);
    CHECK(std::isfinite(out.at[i].value));
  }
  CHECK(clashes(plan).empty());
}

// Arrive 10:00, 20 min to set up, leave by 20:00 with 15 min to pack: on the air from 10:20 to 19:45. 2 Ah at 0.4 A
// end at 15:20, 10 Ah outlast the stay.
TEST_CASE("joins: the time on the air ends at the earliest of pack-down and battery") {
  Closeness off("clock and battery, by hand", "min");
  const Plan short_lived = by_charge_with({{L::clock_leave_by_min, 1200.0}});
  const Outlook battery_ends = evaluate(short_lived);
  CHECK(off.within(60 * battery_ends[R::power_runtime_h].value, 300, 1e-9));
  CHECK(off.within(battery_ends[R::power_lasts_until_min].value, 920, 1e-9));
  CHECK(off.within(battery_ends[R::power_spare_min].value, 920 - 1185, 1e-9));
  CHECK(off.within(battery_ends[R::clock_on_air_min].value, 300, 1e-9));
  CHECK(battery_ends[R::clock_on_air_min].culprit == L::battery_reserve_pct);
  CHECK(battery_ends[R::clock_pack_by_min].value == 1185);
  CHECK(battery_ends[R::power_left_at_leave_by_pct].value == 0);

  const Outlook clock_ends =
      evaluate(by_charge_with({{L::clock_leave_by_min, 1200.0}, {L::battery_capacity_ah, 10.0}}));
  CHECK(off.within(clock_ends[R::power_lasts_until_min].value, 620 + 1500, 1e-9));
  CHECK(off.within(clock_ends[R::clock_on_air_min].value, 565, 1e-9));
  CHECK(clock_ends[R::clock_on_air_min].culprit == L::count);
  CHECK(std::abs(clock_ends[R::power_left_at_leave_by_pct].value - (100 - 100 * 0.4 * 565 / 60 / 10)) < 1e-9);

  // a battery that nobody knows ends nothing
  const Outlook no_battery =
      evaluate(by_charge_with({{L::clock_leave_by_min, 1200.0}, {L::battery_capacity_ah, {}}}));
  CHECK(no_battery[R::clock_on_air_min].value == 565);
  CHECK(std::isfinite(no_battery[R::pace_expected_contacts].value));
  CHECK(no_battery[R::power_runtime_h].culprit == L::battery_capacity_ah);
}

// 12 an hour: 113 in 565 min, 60 in the battery's 5 h.
TEST_CASE("joins: contacts count only until the battery ends") {
  const test::Sets stay = {{L::clock_leave_by_min, 1200.0}, {L::pace_per_hour, 12.0}, {L::pace_target, 80.0}};
  const Outlook cut = evaluate(resolve(test::also(by_charge(), stay).set));
  const Outlook whole =
      evaluate(resolve(test::also(test::also(by_charge(), stay), {{L::battery_capacity_ah, 10.0}}).set));
  CHECK(std::abs(cut[R::pace_expected_contacts].value - 60) < 1e-9);
  CHECK(std::abs(whole[R::pace_expected_contacts].value - 113) < 1e-9);
  CHECK(cut[R::pace_chance_of_target_pct].value < whole[R::pace_chance_of_target_pct].value);
  for (const R id : {R::pace_expected_contacts, R::pace_chance_of_target_pct}) {
    CHECK(cut[id].culprit == L::battery_reserve_pct);
    CHECK(whole[id].culprit == L::count);
  }
  // a spare of the same size goes on where the first one ends: 10 h are more than the stay
  const Outlook spare =
      evaluate(resolve(test::also(test::also(by_charge(), stay), {{L::spare_capacity_ah, 2.0}}).set));
  CHECK(std::abs(spare[R::power_runtime_h].value - 10) < 1e-9);
  CHECK(std::abs(spare[R::pace_expected_contacts].value - 113) < 1e-9);
  // half of both is left after 5 h, and 565 min take 3.767 of 4 Ah
  CHECK(std::abs(spare[R::power_left_at_leave_by_pct].value - 100 * (1 - 0.4 * 565 / 60 / 4)) < 1e-9);
  // charge per contact: 0.4 A at 12 an hour
  CHECK(std::abs(cut[R::pace_mah_per_contact].value - 400.0 / 12) < 1e-9);
}

// A LiFePO4 cell rests at 3.25 V with 30 % left (published curve of one maker, seen; the pack has four): a set that
// gives up at 13.0 V gives up after 70 % of the charge.
TEST_CASE("joins: current limit, minimum supply and reserve each can end the outing, and the runtime says which") {
  const auto runtime = [](test::Sets sets) { return evaluate(by_charge_with(sets))[R::power_runtime_h]; };
  Closeness off("hours until something ends the outing, by hand", "h");

  const Figure reserve = runtime({{L::battery_reserve_pct, 20.0}});
  CHECK(reserve.culprit == L::battery_reserve_pct);
  CHECK(off.within(reserve.value, 4, 1e-9));

  // the draw takes a few millivolts on the way to the set: 0.2 A over 5 mohm and a 2 Ah pack's 100 mohm at most,
  // 0.02 V, where the curve falls by 0.11 V in a tenth of the charge
  const Figure supply = runtime({{L::radio_minimum_supply_v, 13.0},
                                 {L::radio_receive_current_a, 0.2},
                                 {L::radio_full_power_current_a, 0.2},
                                 {L::radio_keyed_idle_current_a, 0.2},
                                 {L::lead_length_m, 0.0}});
  CHECK(supply.culprit == L::radio_minimum_supply_v);
  CHECK(supply.value < 7);
  MESSAGE("13.0 V at 0.2 A from 2 Ah: " << supply.value << " h, 7 h without any drop");
  CHECK(off.within(supply.value, 7, 10 * 0.02 / 0.11 * 0.1));

  const Figure limit = runtime({{L::battery_max_current_a, 0.39}});
  CHECK(limit.culprit == L::battery_max_current_a);
  CHECK(limit.value == 0);
  const Plan limited = by_charge_with({{L::battery_max_current_a, 0.39}});
  CHECK(value(limited, R::clock_on_air_min) == 0);
  CHECK(value(limited, R::pace_expected_contacts) == 0);
  CHECK(value(limited, R::pace_chance_of_target_pct) == 0);
  CHECK(evaluate(limited)[R::power_spare_min].state == State::fails);
  CHECK(evaluate(limited)[R::power_spare_min].culprit == L::battery_max_current_a);
  // turned down below the limit it runs
  CHECK(runtime({{L::battery_max_current_a, 0.4}}).value > 0);
}

TEST_CASE("joins: the supply at key-down is the least before leave-by, and changing packs at the floor holds it") {
  // 13.0 V are reached before packing: the supply then says how far below it would go
  const Outing early = test::also(
      by_charge(),
      {{L::radio_minimum_supply_v, 13.0}, {L::battery_reserve_pct, 10.0}, {L::clock_leave_by_min, 960.0}});
  const Figure falls = evaluate(resolve(early.set))[R::power_supply_at_key_down_v];
  CHECK(falls.state == State::fails);
  CHECK(falls.value < 13.0);
  CHECK(falls.value > 12);
  // with a second pack the first is changed at the floor
  const Figure changed_over =
      evaluate(resolve(with(early, L::spare_capacity_ah, 2.0).set))[R::power_supply_at_key_down_v];
  CHECK(changed_over.state == State::tight);
  CHECK(changed_over.value == 13.0);
  // a shorter stay leaves more of it
  const Plan short_stay = resolve(test::also(early, {{L::clock_leave_by_min, 700.0}}).set);
  CHECK(value(short_stay, R::power_supply_at_key_down_v) > 13.0);
  // not knowing the clock, a pack runs to its end and no further
  const Plan no_clock = resolve(test::also(early, {{L::clock_leave_by_min, {}}}).set);
  CHECK(value(no_clock, R::power_supply_at_key_down_v) == 13.0);
  CHECK(evaluate(no_clock)[R::power_spare_min].culprit == L::clock_leave_by_min);
}

TEST_CASE("joins: a usual current limit goes by the size of the pack in use, a given one holds for both") {
  // 10 A key-down: 20 Ah give that, 2 Ah of the same kind do not, and so a small spare adds nothing
  const test::Sets draws = {
      {L::radio_full_power_current_a, 10.0}, {L::radio_keyed_idle_current_a, 1.0}, {L::battery_reserve_pct, 0.0}};
  const Outing base = test::also(test::whole_outing(), draws);
  const auto runtime = [&base](test::Sets sets) {
    return value(resolve(test::also(base, sets).set), R::power_runtime_h);
  };
  const double alone = runtime({});
  REQUIRE(alone > 0);
  CHECK(runtime({{L::spare_capacity_ah, 2.0}}) == alone);
  CHECK(std::abs(runtime({{L::spare_capacity_ah, 20.0}}) - 2 * alone) < 1e-9);
  CHECK(runtime({{L::spare_capacity_ah, 2.0}, {L::battery_max_current_a, 40.0}}) > alone);
}

// The set holds its reflected power (common practice): at SWR 3 with its mark at 2 it lets go (1/3 over 1/2)^2 =
// 4/9 of 100 W. Class-B input current follows the root of the power (textbook): 2 A + 18 A x 2/3 = 14 A instead
// of 20.
TEST_CASE("joins: a set that folds back draws less") {
  Closeness off("current of a set that folds back, by hand", "A");
  const Outlook full = evaluate(carrier_with({})),
                folded = evaluate(carrier_with({{L::feedline_measured_swr, 3.0}}));
  CHECK(off.within(full[R::power_average_current_a].value, 20, 1e-9));
  CHECK(off.within(folded[R::power_average_current_a].value, 14, 1e-9));
  CHECK(folded[R::power_runtime_h].value > full[R::power_runtime_h].value);
  CHECK(folded[R::power_supply_at_key_down_v].value > full[R::power_supply_at_key_down_v].value);
  // a matching unit brings the current back with the power
  const Plan tuned = carrier_with({{L::feedline_measured_swr, 3.0}, {L::radio_tuner, "in_set"}});
  CHECK(off.within(value(tuned, R::power_average_current_a), 20, 1e-9));
  // and fewer watts reach people
  CHECK(folded[R::safety_public_m].value < full[R::safety_public_m].value);
}

// 47 CFR 1.1310: 180/f^2 mW/cm2 for people who were not told; FCC OET Bulletin 65 Supplement B, equation 6: S =
// 0.64 EIRP / (pi R^2), a half-wave dipole's 2.15 dBi. 100 W carrier at 28.4 MHz: R = 3.87 m, shown rounded up to
// 0.1 m.
TEST_CASE("joins: exposure uses its own busiest share, never the share of sending") {
  Closeness off("keep-out by hand, before rounding up", "m");
  const auto by_hand_m = [](double w) {
    const double limit_w_per_m2 = 10 * 180 / (28.4 * 28.4), eirp_w = w * std::pow(10, 0.215);
    return std::sqrt(0.64 * eirp_w / (kPi * limit_w_per_m2));
  };
  for (const double share_pct : {100.0, 70.0, 40.0}) {
    const Plan plan = carrier_with({{L::antenna_frequency_mhz, 28.4}, {L::safety_busiest_share_pct, share_pct}});
    const double hand_m = by_hand_m(share_pct), shown_m = value(plan, R::safety_public_m);
    CAPTURE(share_pct);
    CHECK(shown_m >= hand_m - 1e-9);
    CHECK(off.within(shown_m, hand_m, 0.1));
  }
  for (const double sending_pct : {0.0, 5.0, 100.0}) {
    const Plan plan = carrier_with({{L::antenna_frequency_mhz, 28.4}, {L::radio_transmit_share_pct, sending_pct}});
    for (const R id : {R::safety_public_m, R::safety_operator_m, R::safety_owed_within_m})
      CHECK(value(plan, id) == value(carrier_with({{L::antenna_frequency_mhz, 28.4}}), id));
  }
  // the mode's own duty counts: speech has a fifth of a carrier's average (same bulletin, table 2)
  const Plan speech = carrier_with({{L::antenna_frequency_mhz, 28.4}, {L::radio_mode, "ssb"}});
  CHECK(off.within(value(speech, R::safety_public_m), by_hand_m(20), 0.1));
}

TEST_CASE("joins: the keep-out is never under arm's reach, however little power is left") {
  for (const Option& kind : lever(L::antenna_kind).options()) {
    for (const double w : {0.1, 1.0, 5.0}) {
      const Plan plan = whole_with({{L::antenna_kind, std::string(kind.key)},
                                    {L::antenna_frequency_mhz, 1.8},
                                    {L::radio_full_power_w, w},
                                    {L::safety_busiest_share_pct, 1.0}});
      CAPTURE(std::string(kind.key));
      CHECK(value(plan, R::safety_public_m) >= 1.5);
      CHECK(value(plan, R::safety_operator_m) >= 1.5);
    }
  }
  CHECK(value(whole_with({{L::antenna_frequency_mhz, 1.8}, {L::radio_full_power_w, 0.1}}), R::safety_public_m) ==
        1.5);
}

TEST_CASE("joins: more transmit power never shortens a distance and never lengthens runtime") {
  double public_m = 0, operator_m = 0, owed_m = 0, runtime_h = 1e9;
  for (double w = 0.1; w <= 100; w += 0.9) {
    const Outlook out = evaluate(whole_with({{L::radio_transmit_power_w, w}}));
    CAPTURE(w);
    CHECK(out[R::safety_public_m].value >= public_m);
    CHECK(out[R::safety_operator_m].value >= operator_m);
    CHECK(out[R::safety_owed_within_m].value >= owed_m);
    CHECK(out[R::power_runtime_h].value <= runtime_h);
    public_m = out[R::safety_public_m].value;
    operator_m = out[R::safety_operator_m].value;
    owed_m = out[R::safety_owed_within_m].value;
    runtime_h = out[R::power_runtime_h].value;
  }
}

// A wire of four waves fed at its end beams 6.28478 dBi: the textbook integral, worked out apart with mpmath. The
// same distance formula as above.
TEST_CASE("joins: a long wire beams, and the keep-out grows with it") {
  Closeness off("keep-out of a four-wave wire by hand, before rounding up", "m");
  const double f_mhz = 28.4, waves = 4;
  const auto wire = [&](double wire_m, const char* kind) {
    return carrier_with({{L::antenna_frequency_mhz, f_mhz}, {L::antenna_kind, kind}, {L::antenna_wire_m, wire_m}});
  };
  const double hand_m = std::sqrt(0.64 * 100 * std::pow(10, 0.628478) / (kPi * 10 * 180 / (f_mhz * f_mhz)));
  const double wire_m = waves * kSpeedOfLightMPerS / 1e6 / f_mhz;
  CHECK(off.within(value(wire(wire_m, "non_resonant_wire"), R::safety_public_m), hand_m, 0.1));
  // cut for 7 MHz and used on 28 MHz; fed in the middle a wire of one wave beams more than fed at its end
  const double half_wave_m = value(carrier_with({{L::antenna_frequency_mhz, f_mhz}}), R::safety_public_m);
  CHECK(value(wire(20, "dipole"), R::safety_public_m) > half_wave_m);
  CHECK(value(wire(10, "dipole"), R::safety_public_m) > value(wire(10, "end_fed_half_wave"), R::safety_public_m));
  CHECK(value(wire(2, "dipole"), R::safety_public_m) == half_wave_m);
}

TEST_CASE("joins: where the line is not known it takes nothing away from what people get") {
  const Plan known = whole_with({{L::antenna_frequency_mhz, 28.4}, {L::radio_mode, "carrier"}});
  const Plan no_line =
      whole_with({{L::antenna_frequency_mhz, 28.4}, {L::radio_mode, "carrier"}, {L::feedline_cable, Value{}}});
  CHECK(value(no_line, R::safety_public_m) > value(known, R::safety_public_m));
}

TEST_CASE("joins: through longer or thinner coax less arrives") {
  double before = 101;
  for (const double m : {0.0, 5.0, 15.0, 40.0, 100.0}) {
    const Outlook out = evaluate(whole_with({{L::feedline_length_m, m}}));
    CAPTURE(m);
    CHECK(out[R::feedline_arrives_pct].value < before);
    before = out[R::feedline_arrives_pct].value;
  }
  // 0.405 inch over 0.195 over 0.1 inch: RG-213, RG-58, RG-174 (MIL-C-17 outer diameters, from memory)
  const auto arrives = [](const char* cable) {
    return value(whole_with({{L::feedline_cable, cable}}), R::feedline_power_to_antenna_w);
  };
  CHECK(arrives("rg213") > arrives("rg58c"));
  CHECK(arrives("rg58c") > arrives("rg174"));
}

TEST_CASE("joins: less time or pace, less chance") {
  const auto chance = [](test::Sets sets) { return value(whole_with(sets), R::pace_chance_of_target_pct); };
  const double as_planned = chance({{L::pace_target, 20.0}});
  CHECK(chance({{L::pace_target, 20.0}, {L::clock_leave_by_min, 780.0}}) < as_planned);
  CHECK(chance({{L::pace_target, 20.0}, {L::clock_arrive_min, 660.0}}) < as_planned);
  CHECK(chance({{L::pace_target, 20.0}, {L::clock_set_up_min, 80.0}}) < as_planned);
  CHECK(chance({{L::pace_target, 20.0}, {L::pace_per_hour, 6.0}}) < as_planned);
  CHECK(chance({{L::pace_target, 21.0}}) < as_planned);
}

// A dipole shows about 72 ohm: against 50 ohm SWR 1.44 (standard definition), before the wire's own loss.
TEST_CASE("joins: the antenna's kind gives the load when nothing was measured, and a measured SWR wins") {
  const Plan by_kind = whole_with({});
  const double wire_ohm = antenna::feed_point(*antenna::find_kind("dipole"), 14.2).resistance_ohm;
  // 10.05 m of 1 mm copper carry a sine of current in a skin of 17.5 um: 0.31 ohm/m, half of it counts (textbook)
  CHECK(std::abs(wire_ohm - (72 + 0.31 * 10.05 / 2)) < 0.1);
  CHECK(std::abs(value(by_kind, R::antenna_swr) - wire_ohm / 50) < 1e-9);
  CHECK(join_feedline(by_kind).load_from == LoadFrom::antenna_kind);
  const Plan measured = whole_with({{L::feedline_measured_swr, 3.0}, {L::feedline_measured_at, "antenna"}});
  CHECK(value(measured, R::antenna_swr) == 3);
  CHECK(join_feedline(measured).load_from == LoadFrom::swr_at_antenna);
  const Plan typed = whole_with({{L::antenna_feed_r_ohm, 100.0}});
  CHECK(std::abs(value(typed, R::antenna_swr) - 2) < 1e-9);
  CHECK(join_feedline(typed).load_from == LoadFrom::impedance);
  // what was measured does not change what the kind radiates
  CHECK(value(measured, R::antenna_efficiency_pct) == value(by_kind, R::antenna_efficiency_pct));
  const Plan neither = whole_with({{L::antenna_kind, Value{}}});
  CHECK(evaluate(neither)[R::antenna_swr].doubt == Doubt::missing);
  CHECK(evaluate(neither)[R::antenna_swr].culprit == L::feedline_measured_swr);
}

TEST_CASE("joins: safety is not known until lines, fuse and coax were looked at") {
  const L looks[] = {L::safety_looked_at_lines, L::safety_looked_at_fuse, L::safety_looked_at_coax};
  // keep-out 3.9 m, but people may come up to it, and within 5.1 m an evaluation is owed (3450 R^2 / f^2 of ERP)
  const Outlook unpaced = evaluate(carrier_with({{L::antenna_frequency_mhz, 28.4}}));
  CHECK(unpaced[R::safety_left_to_look_at].state == State::tight);
  CHECK(unpaced[R::safety_left_to_look_at].doubt == Doubt::evaluation_owed);
  const Outlook far = evaluate(carrier_with({{L::antenna_frequency_mhz, 28.4}, {L::safety_people_m, 10.0}}));
  CHECK(far[R::safety_left_to_look_at].state == State::holds);
  CHECK(standing(far, Link::safety).state == State::holds);
  // nearer than a wavelength over 2 pi (26 m at 1.8 MHz) the formula alone may not stand
  const Plan low = carrier_with({{L::antenna_frequency_mhz, 1.85}, {L::safety_people_m, 10.0}});
  const Outlook near = evaluate(low);
  CHECK(near[R::safety_public_m].value < 26);
  CHECK(standing(near, Link::safety).state == State::tight);
  CHECK(reason(low, R::safety_left_to_look_at, near[R::safety_left_to_look_at]) != "");
  for (const L look : looks) {
    for (const Value& left : {Value{}, Value{"no"}}) {
      const Plan plan = whole_with({{look, left}});
      const Outlook out = evaluate(plan);
      const Figure& figure = out[R::safety_left_to_look_at];
      CAPTURE(std::string(lever(look).key));
      CHECK(figure.state == State::unknown);
      CHECK(figure.doubt == Doubt::not_looked_at);
      CHECK(figure.culprit == look);
      CHECK(reason(plan, R::safety_left_to_look_at, figure).ends_with("not looked at yet"));
      CHECK(standing(out, Link::safety).state == State::unknown);
      CHECK(std::isfinite(out[R::safety_public_m].value));  // distances are known all the same
    }
  }
}

TEST_CASE("joins: the supply's limit follows the set's own minimum until somebody sets one") {
  const L limit = limit_lever(R::power_supply_at_key_down_v), ease = ease_lever(R::power_supply_at_key_down_v);
  for (const double v : {9.0, 11.7, 12.6}) {
    const Plan plan = whole_with({{L::radio_minimum_supply_v, v}});
    CHECK(plan[limit] == v);
    CHECK(std::abs(plan[ease] - (v + 0.3)) < 1e-12);
    CHECK(clashes(plan).empty());
  }
  const auto state = [](double v) {
    return evaluate(whole_with({{L::radio_minimum_supply_v, v}}))[R::power_supply_at_key_down_v].state;
  };
  CHECK(state(9.0) == State::holds);
  CHECK(state(13.8) == State::fails);
  const Plan own = whole_with({{L::radio_minimum_supply_v, 9.0}, {limit, 12.0}, {ease, 12.5}});
  CHECK(own[limit] == 12.0);
  CHECK(refusal(limit, 12.0) == "");
}

TEST_CASE("joins: two ends of one thing the wrong way round are named, and nothing rests on them") {
  struct Row {
    Plan plan;
    L first, second;
    R withheld;
  };
  const Row rows[] = {{whole_with({{L::clock_leave_by_min, 590.0}}), L::clock_leave_by_min, L::clock_arrive_min,
                       R::clock_on_air_min},
                      {whole_with({{L::clock_set_up_min, 200.0}, {L::clock_pack_down_min, 60.0}}),
                       L::clock_leave_by_min, L::clock_set_up_min, R::pace_expected_contacts},
                      {whole_with({{L::radio_full_power_current_a, 2.0}, {L::radio_keyed_idle_current_a, 3.0}}),
                       L::radio_keyed_idle_current_a, L::radio_full_power_current_a, R::power_runtime_h}};
  for (const Row& row : rows) {
    const Plan& plan = row.plan;
    const std::vector<Clash> found = clashes(plan);
    REQUIRE(found.size() == 1);
    CAPTURE(found[0].sentence);
    CHECK(found[0].first == row.first);
    CHECK(found[0].second == row.second);
    CHECK(found[0].sentence.ends_with("."));
    const Figure figure = evaluate(plan)[row.withheld];
    CHECK(figure.doubt == Doubt::impossible);
    CHECK(reason(plan, row.withheld, figure) == found[0].sentence);
  }
}

// Field A to R, square 0 to 9, subsquare a to x: the locator's definition (IARU Region 1, second hand).
TEST_CASE("joins: a wrong locator is refused with a reason, a right one is kept as it was written") {
  for (const char* good : {"JO31", "JO31qx", "fn42ab17", " RR99 "}) CHECK(refusal(L::site_locator, good) == "");
  for (const char* bad : {"Z", "ZZ99", "JO3", "JO31zz", "31JO", "JO31qx1", "home"}) {
    const std::string said = refusal(L::site_locator, bad);
    CAPTURE(std::string(bad));
    CHECK(said.rfind("Locator: ", 0) == 0);
    CHECK(said.size() > std::string("Locator: ").size() + 5);
    CHECK_FALSE(resolve(test::outing_of({{L::site_locator, bad}}).set).has(L::site_locator));
  }
  CHECK(refusal(L::site_locator, 31.0) == "Locator: a text is wanted");
  const Plan plan = whole_with({{L::site_locator, "JO31"}});
  CHECK(plan.has(L::site_locator));
  CHECK(plan.from[std::size_t(L::site_locator)] == From::yours);
  CHECK(plan[L::site_locator] != whole_with({{L::site_locator, "JO32"}})[L::site_locator]);
}
