// From what a person set to what everything is computed from: provenance, usual values, refusals, clashes.
#include "core/outing/plan.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "tests/core/outing/outings.h"

using namespace gs;
using test::plan_of;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

From from(const Plan& plan, L id) { return plan.from[std::size_t(id)]; }

std::string sentences(const Plan& plan) {
  std::string text;
  for (const Clash& clash : clashes(plan)) text += clash.sentence + "\n";
  return text;
}

bool has(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("plan: an empty outing has its usual values and misses the rest") {
  const Plan plan = resolve(Outing{}.set);
  REQUIRE(plan.x.size() == lever_count());
  for (std::size_t i = 0; i < lever_count(); ++i) {
    CAPTURE(std::string(lever(L(i)).key));
    CHECK(plan.from[i] != From::yours);
    CHECK(std::isfinite(plan.x[i]) == (plan.from[i] != From::missing));
  }
  CHECK(from(plan, L::radio_full_power_w) == From::missing);
  CHECK(from(plan, L::radio_transmit_power_w) == From::missing);  // rests on what is missing
  CHECK(from(plan, L::feedline_cable) == From::missing);
  CHECK(from(plan, L::feedline_roll_loss_pct) == From::usual);
  CHECK(plan[L::feedline_roll_loss_pct] == 100);
  CHECK(option_key(L::radio_tuner, plan[L::radio_tuner]) == "none");
  CHECK(clashes(plan).empty());
}

TEST_CASE("plan: a usual value follows the lever above it until it is set") {
  Outing outing = test::outing_of({{L::radio_full_power_w, 10.0}});
  Plan plan = resolve(outing.set);
  CHECK(plan[L::radio_transmit_power_w] == 10);
  CHECK(from(plan, L::radio_transmit_power_w) == From::usual);
  CHECK(from(plan, L::radio_full_power_w) == From::yours);
  outing = with(outing, L::radio_full_power_w, 100.0);
  CHECK(resolve(outing.set)[L::radio_transmit_power_w] == 100);
  outing = with(outing, L::radio_transmit_power_w, 40.0);
  outing = with(outing, L::radio_full_power_w, 50.0);
  plan = resolve(outing.set);
  CHECK(plan[L::radio_transmit_power_w] == 40);
  CHECK(from(plan, L::radio_transmit_power_w) == From::yours);
  outing = with(outing, L::radio_transmit_power_w, {});  // taken back
  CHECK(from(resolve(outing.set), L::radio_transmit_power_w) == From::usual);
}

TEST_CASE("plan: yours is yours even when it is what is usual") {
  const Plan plan = plan_of({{L::feedline_roll_loss_pct, 100.0}, {L::radio_tuner, "none"}});
  CHECK(from(plan, L::feedline_roll_loss_pct) == From::yours);
  CHECK(from(plan, L::radio_tuner) == From::yours);
}

TEST_CASE("plan: a lever applies only while what it qualifies is set") {
  const Plan without = plan_of({{L::antenna_feed_x_ohm, 30.0}, {L::feedline_measured_at, "antenna"}});
  CHECK_FALSE(without.has(L::antenna_feed_x_ohm));
  CHECK_FALSE(without.has(L::feedline_measured_at));
  const Plan with_both = plan_of({{L::antenna_feed_r_ohm, 50.0}, {L::feedline_measured_swr, 2.0}});
  CHECK(with_both[L::antenna_feed_x_ohm] == 0);
  CHECK(from(with_both, L::antenna_feed_x_ohm) == From::usual);
  CHECK(option_key(L::feedline_measured_at, with_both[L::feedline_measured_at]) == "radio");
}

TEST_CASE("plan: what is no value of a lever counts as not set") {
  Values set(lever_count());
  const auto put = [&set](L id, Value value) { set[std::size_t(id)] = std::move(value); };
  put(L::feedline_cable, "no_such_cable");
  put(L::radio_tuner, 2.0);  // a number is no choice, however well it would do as an index
  put(L::feedline_measured_at, 999.0);
  put(L::feedline_length_m, "15 m");
  put(L::feedline_measured_swr, kNaN);
  put(L::radio_full_power_w, std::numeric_limits<double>::infinity());
  const Plan plan = resolve(set);
  for (const L id : {L::feedline_cable, L::feedline_length_m, L::feedline_measured_swr, L::feedline_measured_at,
                     L::radio_full_power_w})
    CHECK_FALSE(plan.has(id));
  CHECK(from(plan, L::radio_tuner) == From::usual);
  CHECK(plan[L::radio_tuner] == 0);
  put(L::feedline_cable, 1e9);
  CHECK_FALSE(resolve(set).has(L::feedline_cable));
}

TEST_CASE("plan: every choice's keys survive the way into the plan and back") {
  int options = 0;
  for (std::size_t i = 0; i < lever_count(); ++i) {
    const Lever& row = lever(L(i));
    if (row.kind != Kind::choice) continue;
    for (const Option& option : row.options()) {
      // so that "measured at", "second cable" and a power line's voltage apply
      Outing outing = test::outing_of(
          {{L::feedline_measured_swr, 2.0}, {L::feedline_second_length_m, 5.0}, {L::safety_line_m, 40.0}});
      if (L(i) == L::antenna_wire) outing = with(std::move(outing), L::antenna_kind, std::string("dipole"));
      outing = with(std::move(outing), L(i), std::string(option.key));
      CHECK(refusal(L(i), std::string(option.key)) == "");
      CHECK(option_key(L(i), resolve(outing.set)[L(i)]) == option.key);
      ++options;
    }
    CHECK(option_key(L(i), -1).empty());
    CHECK(option_key(L(i), double(row.options().size())).empty());
    CHECK(option_key(L(i), kNaN).empty());
  }
  MESSAGE(options << " options");
}

TEST_CASE("plan: limits and eases are usual until they are set") {
  const L limit = limit_lever(R::feedline_arrives_pct), ease = ease_lever(R::feedline_arrives_pct);
  Outing outing;
  CHECK(from(resolve(outing.set), limit) == From::usual);
  CHECK(from(resolve(outing.set), ease) == From::usual);
  outing = with(outing, limit, 60.0);
  const Plan plan = resolve(outing.set);
  CHECK(plan[limit] == 60);
  CHECK(from(plan, limit) == From::yours);
  CHECK(from(plan, ease) == From::usual);
}

TEST_CASE("plan: refusals name the lever and its range with its unit") {
  CHECK(refusal(L::feedline_length_m, 101.0) == "Feed line length: 0 to 100 m");
  CHECK(refusal(L::feedline_length_m, -0.001) == "Feed line length: 0 to 100 m");
  CHECK(refusal(L::feedline_length_m, "15") == "Feed line length: 0 to 100 m");
  CHECK(refusal(L::antenna_frequency_mhz, 144.0) == "Frequency: 1.8 to 54 MHz");
  CHECK(refusal(L::radio_transmit_power_w, 0.0) == "Transmit power: 0.1 to 200 W");
  CHECK(refusal(L::feedline_measured_swr, 0.9) == "Measured SWR: 1 to 100");
  CHECK(refusal(L::antenna_feed_x_ohm, 1e9) == "Feed-point reactance: \u221210000 to 10000 \u03A9");
  CHECK(refusal(L::feedline_cable, "rg999") == "Cable: not one of its choices");
  CHECK(refusal(L::feedline_cable, 0.0) == "Cable: not one of its choices");
}

TEST_CASE("plan: the ends of the range are in it, beyond them and no number are not, nothing set is always fine") {
  for (std::size_t i = 0; i < lever_count(); ++i) {
    const Lever& row = lever(L(i));
    CAPTURE(std::string(row.key));
    CHECK(refusal(L(i), {}) == "");
    CHECK(refusal(L(i), kNaN) != "");
    if (row.kind != Kind::number) continue;
    CHECK(refusal(L(i), row.least) == "");
    CHECK(refusal(L(i), row.most) == "");
    CHECK(refusal(L(i), std::nextafter(row.least, -1e300)) != "");
    CHECK(refusal(L(i), std::nextafter(row.most, 1e300)) != "");
  }
}

TEST_CASE("plan: a lever prints no more decimals than it needs and may have") {
  CHECK(say_lever(lever(L::feedline_length_m), 15, {}) == "15 m");
  CHECK(say_lever(lever(L::feedline_length_m), 7.5, {}) == "7.5 m");
  CHECK(say_lever(lever(L::feedline_length_m), 7.62, {}) == "7.6 m");
  CHECK(say_lever(lever(L::antenna_frequency_mhz), 14.06, {}) == "14.06 MHz");
  CHECK(say_lever(lever(L::antenna_frequency_mhz), 14.06, {.decimal_sign = ','}) == "14,06 MHz");
  CHECK(digits_needed(2, 3) == 0);
  CHECK(digits_needed(0.1 + 0.2, 3) == 1);  // rounding is no digit
  CHECK(digits_needed(1.0 / 3, 3) == 3);
}

TEST_CASE("plan: the cap of transmit power is full power, and passing it is a clash of two levers") {
  const Plan plan = plan_of({{L::radio_full_power_w, 10.0}, {L::radio_transmit_power_w, 40.0}});
  const Lever& transmit = lever(L::radio_transmit_power_w);
  REQUIRE((transmit.cap != nullptr));
  CHECK(transmit.cap(plan) == 10);
  CHECK(std::isnan(transmit.cap(resolve(Outing{}.set))));
  const std::vector<Clash> found = clashes(plan);
  REQUIRE(found.size() == 1);
  CHECK(found[0].first == L::radio_transmit_power_w);
  CHECK(found[0].second == L::radio_full_power_w);
  CHECK(found[0].sentence == "Transmit power 40 W is more than the radio's full power 10 W.");
  CHECK(clashes(plan_of({{L::radio_full_power_w, 40.0}, {L::radio_transmit_power_w, 40.0}})).empty());
  CHECK(clashes(plan_of({{L::radio_transmit_power_w, 40.0}})).empty());  // nothing known of the other
}

TEST_CASE("plan: ease on the wrong side of its limit is named, for either direction of better") {
  for (const R id : {R::feedline_arrives_pct, R::feedline_swr_at_radio}) {
    const bool more = reading(id).better == Better::more;
    const double limit = resolve(Outing{}.set)[limit_lever(id)];
    for (const double ease : {limit, limit * (more ? 0.9 : 1.1)}) {
      const std::vector<Clash> found = clashes(plan_of({{ease_lever(id), ease}}));
      REQUIRE(found.size() == 1);
      CHECK(found[0].first == ease_lever(id));
      CHECK(found[0].second == limit_lever(id));
      CHECK(has(found[0].sentence, std::string(reading(id).name).c_str()));
    }
    CHECK(clashes(plan_of({{ease_lever(id), limit * (more ? 1.1 : 0.9)}})).empty());
  }
}

// 30 m of stranded RG-58 at 28.4 MHz with 2.346 dB: an open end reads 3.79 at the radio (line theory, worked out
// apart).
TEST_CASE("plan: an SWR that not even an open end would show cannot be true") {
  const double pct = test::roll_pct_for("rg58c", 28.4, 2.346 / 0.30);
  const auto measured = [pct](double swr, const char* at) {
    return plan_of({{L::antenna_frequency_mhz, 28.4},
                    {L::feedline_cable, "rg58c"},
                    {L::feedline_length_m, 30.0},
                    {L::feedline_roll_loss_pct, pct},
                    {L::feedline_measured_swr, swr},
                    {L::feedline_measured_at, at}});
  };
  CHECK(clashes(measured(3.78, "radio")).empty());
  const std::vector<Clash> found = clashes(measured(3.80, "radio"));
  REQUIRE(found.size() == 1);
  CHECK(found[0].first == L::feedline_measured_swr);
  CHECK(has(found[0].sentence, "SWR 3.8 cannot show at the radio"));
  CHECK(has(found[0].sentence, "open end shows 3.8"));
  CHECK(has(found[0].sentence, "Doubt"));
  CHECK(clashes(measured(50, "antenna")).empty());  // at the antenna everything may show
}

TEST_CASE("plan: a measured SWR that contradicts the impedance is named, one within a fifth is not") {
  // 100 ohm on a 50 ohm line is 2:1 at the antenna.
  const auto measured = [](double swr) {
    return plan_of({{L::antenna_frequency_mhz, 14.2},
                    {L::feedline_cable, "rg213"},
                    {L::feedline_length_m, 10.0},
                    {L::antenna_feed_r_ohm, 100.0},
                    {L::feedline_measured_swr, swr},
                    {L::feedline_measured_at, "antenna"}});
  };
  CHECK(clashes(measured(2)).empty());
  CHECK(clashes(measured(1.61)).empty());
  CHECK(clashes(measured(2.49)).empty());
  for (const double swr : {1.5, 2.6, 10.0}) {
    const std::vector<Clash> found = clashes(measured(swr));
    REQUIRE(found.size() == 1);
    CHECK(found[0].first == L::feedline_measured_swr);
    CHECK(found[0].second == L::antenna_feed_r_ohm);
    CHECK(has(found[0].sentence, "which gives 2.0 there"));
  }
  // The plan goes by the impedance meanwhile: the measured figure bends nothing.
  CHECK(std::abs(evaluate(measured(10))[R::antenna_swr].value - 2) < 1e-12);
}

TEST_CASE("plan: clashes stand side by side, and never for levers that are missing") {
  const Plan plan = plan_of({{L::radio_full_power_w, 10.0},
                             {L::radio_transmit_power_w, 40.0},
                             {ease_lever(R::feedline_arrives_pct), 10.0}});
  CHECK(clashes(plan).size() == 2);
  CHECK(sentences(plan_of({{L::feedline_measured_swr, 50.0}})) == "");
  CHECK(sentences(plan_of({{L::feedline_measured_swr, 50.0}, {L::feedline_cable, "rg58c"}})) == "");
}
