// Where the links join: power, line and load, seen through the plan's own levers.
#include <doctest/doctest.h>

#include <cmath>

#include "core/feedline/swr.h"
#include "core/radio/fold_back.h"
#include "tests/core/outing/outings.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using test::Closeness;
using test::plan_of;

namespace {

constexpr R kWatts[] = {R::feedline_power_to_antenna_w, R::feedline_cable_matched_w, R::feedline_cable_swr_w};

double value(const Plan& plan, R id) { return evaluate(plan)[id].value; }

Outing usual_outing() {
  return test::outing_of({{L::radio_full_power_w, 100.0},
                          {L::antenna_frequency_mhz, 14.2},
                          {L::feedline_cable, "rg58c"},
                          {L::feedline_length_m, 15.0}});
}
Plan usual_with(test::Sets sets) { return resolve(test::also(usual_outing(), sets).set); }

}  // namespace

TEST_CASE(
    "evaluate: the watts bar's parts sum to what leaves the radio, and that with what is turned down to what was "
    "asked") {
  Closeness parts("watts bar, parts against what leaves", "W"), arrives("arrives times what leaves", "W");
  for (const double swr : {1.0, 1.5, 2.0, 2.5, 3.0, 6.0}) {
    for (const char* at : {"antenna", "radio"}) {
      const Plan plan = usual_with({{L::feedline_measured_swr, swr}, {L::feedline_measured_at, at}});
      const Outlook out = evaluate(plan);
      if (out[R::radio_turned_down_w].state == State::unknown) continue;
      double sum = 0;
      for (const R id : kWatts) sum += out[id].value;
      const double leaves = 100 - out[R::radio_turned_down_w].value;
      CHECK(parts.within(sum, leaves, 1e-12 * 100));
      CHECK(arrives.within(leaves * out[R::feedline_arrives_pct].value / 100,
                           out[R::feedline_power_to_antenna_w].value, 1e-11));
    }
  }
}

TEST_CASE("evaluate: reflected power is never counted as lost") {
  // Next to no line: whatever the SWR, all that leaves the radio arrives. 10:1 reflects two thirds.
  for (const double swr : {1.5, 3.0, 10.0, 100.0}) {
    const Plan plan =
        usual_with({{L::feedline_length_m, 0.0}, {L::feedline_measured_swr, swr}, {L::radio_tuner, "outside"}});
    const Outlook out = evaluate(plan);
    CHECK(out[R::feedline_total_loss_db].value == 0);
    CHECK(out[R::feedline_arrives_pct].value == 100);
    const double leaves = 100 - out[R::radio_turned_down_w].value;
    CHECK(std::abs(out[R::feedline_power_to_antenna_w].value - leaves) < 1e-12);
    CHECK(std::abs(out[R::feedline_cable_swr_w].value) < 1e-12);
    if (swr <= 10) CHECK(leaves == 100);
  }
}

// The set holds its reflected power at the mark: share (rho_mark / rho)^2; matching units reach 3:1 built in and
// 10:1 outside: common practice. By hand: rho is 1/3 at 2:1, 1/2 at 3:1, 9/11 at 10:1, 5/6 at 11:1.
TEST_CASE("evaluate: the set turns down above its mark unless a matching unit reaches the SWR at the radio") {
  struct Row {
    double swr;
    const char* tuner;
    double leaves_w;
  };
  const Row rows[] = {{2, "none", 100},
                      {3, "none", 100 * 4.0 / 9},
                      {10, "none", 100 * 121.0 / 729},
                      {3, "in_set", 100},
                      {10, "in_set", 100 * 121.0 / 729},
                      {10, "outside", 100},
                      {11, "outside", 100 * 0.16},
                      {3.5, "in_set", 100 * 0.36}};
  Closeness off("what the set lets go", "W");
  for (const Row& row : rows) {
    CAPTURE(row.swr);
    CAPTURE(std::string(row.tuner));
    // no line between: the SWR at the radio is the one at the antenna
    const Plan plan =
        usual_with({{L::feedline_length_m, 0.0}, {L::feedline_measured_swr, row.swr}, {L::radio_tuner, row.tuner}});
    CHECK(off.within(100 - value(plan, R::radio_turned_down_w), row.leaves_w, 1e-10));
  }
  // The lever "full power up to SWR" moves the mark.
  const Plan hardy =
      usual_with({{L::feedline_length_m, 0.0}, {L::feedline_measured_swr, 3.0}, {L::radio_fold_back_swr, 3.0}});
  CHECK(value(hardy, R::radio_turned_down_w) == 0);
}

TEST_CASE("evaluate: what counts for the set is the SWR at its own end") {
  // 30 m of thin line hides a 4:1 antenna from the set: 2.07 at the radio, just above its mark.
  const double pct = test::roll_pct_for("rg58c", 28.4, 2.346 / 0.30);
  const Plan plan = usual_with({{L::antenna_frequency_mhz, 28.4},
                                {L::feedline_length_m, 30.0},
                                {L::feedline_roll_loss_pct, pct},
                                {L::feedline_measured_swr, 4.0},
                                {L::feedline_measured_at, "antenna"}});
  const double rho = (value(plan, R::feedline_swr_at_radio) - 1) / (value(plan, R::feedline_swr_at_radio) + 1);
  CHECK(std::abs(value(plan, R::radio_turned_down_w) - 100 * (1 - (1.0 / 9) / (rho * rho))) < 1e-9);
  CHECK(value(plan, R::radio_turned_down_w) < 10);
}

TEST_CASE(
    "evaluate: load from an impedance, from SWR at the antenna, from SWR at the radio: as the line's theory has "
    "it") {
  Closeness loss("line loss against core/feedline", "dB"), swr("SWR against core/feedline", "");
  int compared = 0;
  for (const feedline::Cable& cable : feedline::cables()) {
    for (const double f_mhz : {1.85, 14.2, 50.1}) {
      for (const double length_m : {0.0, 7.62, 40.0}) {
        const std::string key(cable.key);
        const double a = feedline::attenuation_db_per_100m(cable, f_mhz), matched = a * length_m / 100;
        const double dielectric = cable.k2_db_per_100m * f_mhz;
        const feedline::Line line = feedline::line_from_nominal(cable.z0_ohm, cable.velocity_factor, a - dielectric,
                                                                dielectric, f_mhz, length_m);
        const feedline::Complex load{30, -75};
        const Outing base = test::also(
            usual_outing(),
            {{L::feedline_cable, key}, {L::antenna_frequency_mhz, f_mhz}, {L::feedline_length_m, length_m}});
        const auto with_load = [&base](test::Sets sets) { return evaluate(resolve(test::also(base, sets).set)); };

        const Outlook z = with_load({{L::antenna_feed_r_ohm, 30.0}, {L::antenna_feed_x_ohm, -75.0}});
        CHECK(loss.within(z[R::feedline_total_loss_db].value, feedline::total_loss_db(line, load), 1e-9));
        CHECK(loss.within(z[R::feedline_matched_loss_db].value, matched, 1e-12));
        CHECK(swr.within(z[R::antenna_swr].value, feedline::swr(load, kMeterOhm), 1e-12));
        CHECK(swr.within(z[R::feedline_swr_at_radio].value,
                         feedline::swr(feedline::input_impedance_ohm(line, load), kMeterOhm), 1e-9));

        const Outlook far = with_load({{L::feedline_measured_swr, 3.0}, {L::feedline_measured_at, "antenna"}});
        CHECK(far[R::antenna_swr].value == 3);
        feedline::Run run;
        run.add(line);
        // a meter of 50 ohm on a line of another impedance: only the range is certain, both ways
        if (cable.z0_ohm != kMeterOhm) {
          const feedline::LossRange range = feedline::loss_range_db(run, kMeterOhm, 3);
          const feedline::SwrRange seen = feedline::swr_range_at_radio(run, kMeterOhm, 3);
          CHECK(loss.within(far[R::feedline_total_loss_db].low, range.least_db, 1e-9));
          CHECK(loss.within(far[R::feedline_total_loss_db].value, range.typical_db, 1e-9));
          CHECK(loss.within(far[R::feedline_total_loss_db].high, range.most_db, 1e-9));
          CHECK(swr.within(far[R::feedline_swr_at_radio].low, seen.least, 1e-9));
          CHECK(swr.within(far[R::feedline_swr_at_radio].high, seen.most, 1e-9));
          const Outlook back = with_load({{L::feedline_measured_swr, far[R::feedline_swr_at_radio].value},
                                          {L::feedline_measured_at, "radio"}});
          CHECK(back[R::antenna_swr].low <= 3 + 1e-9);
          CHECK(back[R::antenna_swr].high >= 3 - 1e-9);
          ++compared;
          continue;
        }
        const feedline::LossRange range = feedline::loss_range_db(line, cable.z0_ohm, 3);
        CHECK(loss.within(far[R::feedline_total_loss_db].value, range.typical_db, 1e-9));
        CHECK(loss.within(far[R::feedline_total_loss_db].low, range.least_db, 1e-9));
        CHECK(loss.within(far[R::feedline_total_loss_db].high, range.most_db, 1e-9));
        CHECK(swr.within(far[R::feedline_swr_at_radio].value, feedline::swr_at_radio(3, matched), 1e-9));

        // Read back from the radio's end it is the same line and the same antenna.
        const double near = far[R::feedline_swr_at_radio].value;
        const Outlook back = with_load({{L::feedline_measured_swr, near}, {L::feedline_measured_at, "radio"}});
        CHECK(back[R::feedline_swr_at_radio].value == near);
        CHECK(swr.within(back[R::antenna_swr].value, 3, 1e-9));
        CHECK(loss.within(back[R::feedline_total_loss_db].value, far[R::feedline_total_loss_db].value, 1e-9));
        ++compared;
      }
    }
  }
  MESSAGE(compared << " lines");
}

TEST_CASE("evaluate: an impedance rules over a measured SWR, and a resonant one needs no reactance") {
  const Plan plan = usual_with(
      {{L::antenna_feed_r_ohm, 100.0}, {L::feedline_measured_swr, 2.0}, {L::feedline_measured_at, "antenna"}});
  const Outlook out = evaluate(plan);
  CHECK(std::abs(out[R::antenna_swr].value - 2) < 1e-12);
  // known in phase: no spread
  CHECK(out[R::feedline_total_loss_db].low == out[R::feedline_total_loss_db].high);
}

TEST_CASE("evaluate: weight from the catalogue, or not in it") {
  const Plan known = usual_with({});
  CHECK(std::abs(value(known, R::feedline_weight_g) - 15 * feedline::find_cable("rg58c")->mass_g_per_m) < 1e-9);
  CHECK(value(known, R::feedline_weight_g) > 0);
  int without = 0;
  for (const feedline::Cable& cable : feedline::cables()) {
    if (cable.mass_g_per_m > 0) continue;
    ++without;
    const Plan plan = usual_with({{L::feedline_cable, std::string(cable.key)}});
    const Figure figure = evaluate(plan)[R::feedline_weight_g];
    CHECK(figure.state == State::unknown);
    CHECK(figure.doubt == Doubt::not_in_catalogue);
    CHECK(reason(plan, R::feedline_weight_g, figure) == "the catalogue does not have it for this cable");
  }
  CHECK(without > 0);
  // weight needs neither frequency nor antenna
  CHECK(value(plan_of({{L::feedline_cable, "rg58c"}, {L::feedline_length_m, 10.0}}), R::feedline_weight_g) == 380);
}

TEST_CASE("evaluate: what is not known names the lever that is missing") {
  const L needed[] = {L::radio_full_power_w, L::antenna_frequency_mhz, L::feedline_cable, L::feedline_length_m,
                      L::feedline_measured_swr};
  const Outing whole = test::also(usual_outing(), {{L::feedline_measured_swr, 1.5}});
  const Outlook all = evaluate(resolve(whole.set));
  for (std::size_t i = 0; i < kReadingCount; ++i)
    if (test::of_feedline(R(i))) CHECK(all.at[i].state != State::unknown);
  for (const L missing : needed) {
    CAPTURE(std::string(lever(missing).key));
    const Plan plan = resolve(with(whole, missing, {}).set);
    const Outlook out = evaluate(plan);
    const Figure& power = out[R::feedline_power_to_antenna_w];
    CHECK(power.state == State::unknown);
    CHECK(power.doubt == Doubt::missing);
    CHECK(power.culprit == missing);
    int unknown_count = 0;
    for (std::size_t i = 0; i < kReadingCount; ++i) {
      if (out.at[i].state != State::unknown || !test::of_feedline(R(i))) continue;
      ++unknown_count;
      CHECK(out.at[i].culprit == missing);
    }
    CHECK(unknown_count >= (missing == L::radio_full_power_w ? 4 : 5));
  }
  const Plan nothing = resolve(Outing{}.set);
  CHECK(reason(nothing, R::feedline_arrives_pct, evaluate(nothing)[R::feedline_arrives_pct]) == "needs cable");
  const Plan no_swr = resolve(usual_outing().set);
  CHECK(reason(no_swr, R::antenna_swr, evaluate(no_swr)[R::antenna_swr]) == "needs measured SWR");
  CHECK(value(no_swr, R::feedline_matched_loss_db) > 0);  // needs no antenna
}

TEST_CASE("evaluate: two levers that cannot both be true withhold what rests on them, and nothing else") {
  const Plan over = usual_with(
      {{L::radio_full_power_w, 10.0}, {L::radio_transmit_power_w, 40.0}, {L::feedline_measured_swr, 1.5}});
  const Outlook out = evaluate(over);
  for (const R id : {R::radio_turned_down_w, R::feedline_power_to_antenna_w, R::feedline_cable_matched_w,
                     R::feedline_cable_swr_w}) {
    CHECK(out[id].doubt == Doubt::impossible);
    CHECK(out[id].culprit == L::radio_transmit_power_w);
    CHECK(reason(over, id, out[id]) == clashes(over).front().sentence);
  }
  CHECK(std::isfinite(out[R::feedline_arrives_pct].value));

  const Plan doubtful = usual_with({{L::feedline_length_m, 100.0}, {L::feedline_measured_swr, 50.0}});
  const Outlook none = evaluate(doubtful);
  for (const R id : {R::feedline_total_loss_db, R::feedline_arrives_pct, R::feedline_swr_at_radio, R::antenna_swr,
                     R::feedline_power_to_antenna_w}) {
    CHECK(none[id].doubt == Doubt::contradiction);
    CHECK(reason(doubtful, id, none[id]) == clashes(doubtful).front().sentence);
  }
  CHECK(std::isfinite(none[R::feedline_matched_loss_db].value));

  const Plan eased = usual_with({{ease_lever(R::feedline_arrives_pct), 30.0}, {L::feedline_measured_swr, 1.5}});
  const Figure arrives = evaluate(eased)[R::feedline_arrives_pct];
  CHECK(arrives.state == State::unknown);
  CHECK(arrives.doubt == Doubt::impossible);
  CHECK(std::isnan(arrives.low));
  CHECK(std::isnan(arrives.high));
  CHECK(std::isfinite(evaluate(eased)[R::feedline_power_to_antenna_w].value));
}

TEST_CASE("evaluate: outside the tested range everything that rests on the loss law says so in words") {
  const R on_law[] = {R::feedline_matched_loss_db,    R::feedline_total_loss_db,   R::feedline_arrives_pct,
                      R::feedline_power_to_antenna_w, R::feedline_cable_matched_w, R::feedline_cable_swr_w};
  const Outing base = test::also(usual_outing(), {{L::feedline_cable, "flex_240"}});  // tested from 30 to 220 MHz
  const auto evaluated = [&base](test::Sets sets, Plan& plan) {
    plan = resolve(test::also(base, sets).set);
    return evaluate(plan);
  };
  Plan plan;
  const auto flagged = [&plan](const Outlook& out, R id) {
    const bool is = out[id].doubt == Doubt::outside_tested;
    if (is) {
      CHECK(std::isfinite(out[id].value));
      CHECK(out[id].culprit == L::feedline_cable);
      CHECK(reason(plan, id, out[id]) == "cable's law tested from 30 MHz to 220 MHz");
    }
    return is;
  };

  Outlook out = evaluated({{L::feedline_measured_swr, 2.0}, {L::feedline_measured_at, "antenna"}}, plan);
  for (const R id : on_law) CHECK(flagged(out, id));
  CHECK_FALSE(flagged(out, R::antenna_swr));      // as measured
  CHECK(flagged(out, R::feedline_swr_at_radio));  // carried through the line
  CHECK(flagged(out, R::radio_turned_down_w));    // goes by that
  CHECK_FALSE(flagged(out, R::feedline_weight_g));

  out = evaluated({{L::feedline_measured_swr, 2.0}, {L::feedline_measured_at, "radio"}}, plan);
  for (const R id : on_law) CHECK(flagged(out, id));
  CHECK(flagged(out, R::antenna_swr));
  CHECK_FALSE(flagged(out, R::feedline_swr_at_radio));
  CHECK_FALSE(flagged(out, R::radio_turned_down_w));

  out = evaluated({{L::antenna_feed_r_ohm, 25.0}}, plan);
  for (const R id : on_law) CHECK(flagged(out, id));
  CHECK_FALSE(flagged(out, R::antenna_swr));
  CHECK(flagged(out, R::feedline_swr_at_radio));

  out = evaluated({{L::antenna_frequency_mhz, 50.0}, {L::feedline_measured_swr, 2.0}}, plan);
  for (std::size_t i = 0; i < kReadingCount; ++i) CHECK_FALSE(flagged(out, R(i)));
}

TEST_CASE("evaluate: the loss curve is the plan's own matched loss") {
  const Plan plan = usual_with({{L::feedline_roll_loss_pct, 140.0}});
  CHECK(std::abs(matched_loss_at_db(plan, 14.2) - value(plan, R::feedline_matched_loss_db)) < 1e-12);
  CHECK(matched_loss_at_db(plan, 28) > matched_loss_at_db(plan, 14));
  CHECK(std::isnan(matched_loss_at_db(resolve(Outing{}.set), 14)));
}

// No law of a battery knows its hours to the minute: five minutes from three hours up.
TEST_CASE("runtime: said to the minute below three hours, to five minutes from there") {
  CHECK(say_reading(R::power_runtime_h, 2 + 17.0 / 60) == "2 h 17");
  CHECK(say_reading(R::power_runtime_h, 3 + 12.0 / 60) == "3 h 10");
  CHECK(say_reading(R::power_runtime_h, 3 + 58.0 / 60) == "4 h 00");
  CHECK(speak_reading(R::power_runtime_h, 5 + 38.0 / 60) == "5 hours 40 minutes");
  Figure figure;
  figure.state = State::holds;
  figure.low = 2 + 25.0 / 60;
  figure.high = 5 + 38.0 / 60;
  CHECK(say_range(R::power_runtime_h, figure) == "2 h 25 to 5 h 40");
  figure.low = 3 + 58.0 / 60;
  figure.high = 4.01;
  CHECK(say_range(R::power_runtime_h, figure).empty());
}
