// What the plan says about its feed line in sentences, and the plan's own additions: temperature, second cable,
// plugs, choke, my own cable, the cable's law outside its range.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "core/outing/findings_feedline.h"
#include "core/outing/why.h"
#include "core/units.h"
#include "tests/core/outing/outings.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using test::Closeness;

namespace {

Outing base(test::Sets more) {
  return test::also(test::outing_of({{L::radio_full_power_w, 100.0},
                                     {L::radio_tuner, "outside"},
                                     {L::antenna_frequency_mhz, 28.4},
                                     {L::feedline_cable, "rg58c"},
                                     {L::feedline_length_m, 30.0}}),
                    more);
}

std::vector<std::string> sentences(test::Sets more) {
  const Plan plan = resolve(base(more).set);
  std::vector<std::string> found;
  for (const Finding& finding : feedline_findings(plan, evaluate(plan))) found.push_back(finding.sentence);
  return found;
}

bool says(const std::vector<std::string>& found, std::string_view part) {
  return std::any_of(found.begin(), found.end(),
                     [&](const std::string& one) { return one.find(part) != std::string::npos; });
}

double value(test::Sets more, R id) { return evaluate(resolve(base(more).set))[id].value; }

}  // namespace

// 30 m of stranded RG-58 on 28.4 MHz: an SWR of 4 reads 2.07, an open end 3.79 (worked out apart from 2.346 dB).
TEST_CASE("findings: the line hides a bad antenna, and an open end would pass for one") {
  const auto hidden = sentences({{L::feedline_measured_swr, 4.0}, {L::feedline_measured_at, "antenna"}});
  CHECK(says(hidden, "hides a bad antenna: 2.1 at the radio, 4.0 at the antenna"));
  CHECK(says(hidden, "With nothing on its end this line would read 3.8"));
  CHECK(says(hidden, "SWR costs"));
  CHECK_FALSE(says(sentences({{L::feedline_measured_swr, 1.2}, {L::feedline_measured_at, "antenna"}}), "hides"));
  CHECK(feedline_findings(resolve(Values(lever_count())), evaluate(resolve(Values(lever_count())))).empty());
  const auto short_line = sentences({{L::feedline_length_m, 2.0}, {L::feedline_measured_swr, 1.2}});
  CHECK(says(short_line, "nobody hears that"));
}

TEST_CASE("findings: what was measured beside what the antenna's figures say") {
  const auto both = [](double swr, const char* at) {
    return sentences({{L::antenna_feed_r_ohm, 100.0},
                      {L::antenna_feed_x_ohm, 0.0},
                      {L::feedline_measured_swr, swr},
                      {L::feedline_measured_at, at}});
  };
  CHECK(says(both(2.0, "antenna"), "They agree"));
  CHECK(says(both(3.0, "antenna"), "measured 3.0, by the antenna's figures 2.0. The antenna is not where"));
  CHECK(says(both(1.2, "antenna"), "flatters it"));
  CHECK(says(both(1.05, "radio"), "takes more than its figures say"));
  // the antenna's kind is a model too: 73 ohm for a dipole would read 1.5
  const auto kind = sentences(
      {{L::antenna_kind, "dipole"}, {L::feedline_measured_swr, 3.0}, {L::feedline_measured_at, "antenna"}});
  CHECK(says(kind, "measured 3.0"));
}

TEST_CASE("plan: a warm line, a second cable, plugs and a choke each take their part") {
  Closeness db("plan's additions", "dB");
  const double plain = value({{L::feedline_measured_swr, 1.0}}, R::feedline_matched_loss_db);
  const feedline::Cable& rg58c = *feedline::find_cable("rg58c");
  const double conductor = rg58c.k1_db_per_100m * std::sqrt(28.4) * 0.3;
  // 50 C: copper has 0.393 % per C more resistance, the loss goes with its root (IEC 60028)
  CHECK(db.within(value({{L::feedline_temperature_c, 50.0}}, R::feedline_matched_loss_db),
                  plain + conductor * (std::sqrt(1 + 0.00393 * 30) - 1), 1e-9));
  CHECK(db.within(value({{L::feedline_plug_pairs, 4.0}}, R::feedline_matched_loss_db), plain + 0.08, 1e-9));
  CHECK(db.within(value({{L::feedline_choke_db, 0.2}}, R::feedline_matched_loss_db), plain + 0.2, 1e-9));
  const feedline::Cable& rg213 = *feedline::find_cable("rg213");
  const double second = feedline::attenuation_db_per_100m(rg213, 28.4) / 10;
  const test::Sets two = {
      {L::feedline_second_length_m, 10.0}, {L::feedline_second_cable, "rg213"}, {L::feedline_measured_swr, 1.0}};
  CHECK(db.within(value(two, R::feedline_matched_loss_db), plain + second, 1e-9));
  CHECK(value(two, R::feedline_weight_g) == doctest::Approx(30 * 38 + 10 * 159));
  // Hayt and Buck, Engineering Electromagnetics, 8th ed., drill D10.2 (seen): 3 dB, a joint of 3 dB, 6.75 dB: 5.3 %
  // arrive
  const test::Sets cascade = {
      {L::feedline_own_loss_db, 10.0},
      {L::feedline_own_at_mhz, 28.4},
      {L::feedline_length_m, 30.0},
      {L::feedline_choke_db, 3.0},
      {L::feedline_second_cable, "rg58c"},
      {L::feedline_second_length_m, 100 * 6.75 / feedline::attenuation_db_per_100m(rg58c, 28.4)},
      {L::feedline_measured_swr, 1.0}};
  CHECK(db.within(value(cascade, R::feedline_matched_loss_db), 12.75, 1e-9));
  CHECK(says(sentences({{L::feedline_second_cable, "rg59"},
                        {L::feedline_second_length_m, 5.0},
                        {L::feedline_measured_swr, 1.2}}),
             "Two impedances in a row, 50 Ω and 75 Ω"));
}

TEST_CASE("plan: my own cable goes by what was measured on it") {
  CHECK(value({{L::feedline_own_loss_db, 9.0}, {L::feedline_own_at_mhz, 28.4}}, R::feedline_matched_loss_db) ==
        doctest::Approx(2.7));
  // the lever of the roll's age gives way to the measurement
  CHECK(value({{L::feedline_own_loss_db, 9.0}, {L::feedline_own_at_mhz, 28.4}, {L::feedline_roll_loss_pct, 300.0}},
              R::feedline_matched_loss_db) == doctest::Approx(2.7));
  const test::Sets two = {{L::feedline_own_loss_db, 4.0},
                          {L::feedline_own_at_mhz, 7.0},
                          {L::feedline_own_second_db, 9.0},
                          {L::feedline_own_second_at_mhz, 21.0}};
  const Plan outside = resolve(base(two).set);
  const Figure figure = evaluate(outside)[R::feedline_matched_loss_db];
  CHECK(figure.doubt == Doubt::outside_tested);
  CHECK(reason(outside, R::feedline_matched_loss_db, figure) ==
        "outside the two frequencies at which this cable was measured");
  const Plan inside = resolve(test::also(base(two), {{L::antenna_frequency_mhz, 14.2}}).set);
  CHECK(evaluate(inside)[R::feedline_matched_loss_db].doubt == Doubt::none);
}

// Simulated with ngspice 39 (ladder of 2000 sections): short whip of 10-j400 ohm behind 7.62 m of thin line, 14.897
// dB; the closed form with a real characteristic impedance gives 14.085.
TEST_CASE("why: the panel names what the shortcut of a real characteristic impedance would give") {
  const double f_mhz = 7.1;
  const Plan plan =
      resolve(test::outing_of({{L::radio_full_power_w, 100.0},
                               {L::radio_tuner, "outside"},
                               {L::antenna_frequency_mhz, f_mhz},
                               {L::feedline_cable, "rg174"},
                               {L::feedline_length_m, 7.62},
                               {L::feedline_roll_loss_pct, test::roll_pct_for("rg174", f_mhz, 0.65472 / 0.0762)},
                               {L::antenna_feed_r_ohm, 10.0},
                               {L::antenna_feed_x_ohm, -400.0}})
                  .set);
  const Why panel = why(R::feedline_total_loss_db, plan);
  CHECK(panel.assumes.find("loss angle") != std::string::npos);
  CHECK(panel.assumes.find("it would be 14.09 dB") != std::string::npos);
  CHECK(evaluate(plan)[R::feedline_total_loss_db].value > 14.7);
}

// A cable whose law was tested from 30 MHz up, on 7.1 MHz: what rests on the watts that arrive says so too.
TEST_CASE("plan: a law outside its range is said wherever its watts are used") {
  Outing outing =
      test::also(test::whole_outing(), {{L::feedline_cable, "flex_400"}, {L::antenna_frequency_mhz, 7.1}});
  const Plan outside = resolve(outing);
  for (const R id : {R::feedline_arrives_pct, R::safety_public_m, R::safety_operator_m}) {
    CAPTURE(std::string(reading(id).key));
    const Figure figure = evaluate(outside)[id];
    if (figure.doubt == Doubt::evaluation_owed) continue;
    CHECK(figure.doubt == Doubt::outside_tested);
    CHECK(reason(outside, id, figure) == "cable's law tested from 30 MHz to 220 MHz");
  }
  outing = with(outing, L::feedline_cable, std::string("rg213"));
  CHECK(evaluate(resolve(outing))[R::safety_operator_m].doubt != Doubt::outside_tested);
  // the set turns down because of an SWR that the law alone makes: its current rests on the law
  const Plan turned =
      resolve(test::also(outing, {{L::feedline_cable, std::string("flex_400")}, {L::antenna_feed_r_ohm, 400.0}}));
  CHECK(evaluate(turned)[R::radio_turned_down_w].value > 0);
  CHECK(evaluate(turned)[R::power_average_current_a].doubt == Doubt::outside_tested);
}
