// Stints and breaks: contacts and drain summed over them, and what stands for the whole outing.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/outing/stretches.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

/// 10:00 to 14:00, on the air from 10:20 until 13:40.
Outing four_hours() {
  return test::also(test::whole_outing(), {{L::clock_set_up_min, 20.0},
                                           {L::clock_pack_down_min, 20.0},
                                           {L::pace_per_hour, 12.0},
                                           {L::radio_mode, "ssb"},
                                           {L::battery_capacity_ah, 60.0}});
}
Outing with_stints(Outing outing, std::vector<Stint> stints) {
  for (Stint& stint : stints) {
    REQUIRE(refusal(stint).empty());
    outing.stints = with_stint(std::move(outing.stints), std::move(stint));
  }
  return outing;
}
Outlook of(const Outing& outing) { return evaluate(resolve(outing)); }
bool near(double value, double wanted) {
  return (std::isnan(value) && std::isnan(wanted)) || std::abs(value - wanted) < 1e-9 * (1 + std::abs(wanted));
}

}  // namespace

TEST_CASE("stints: a stint that changes nothing changes nothing") {
  const Outlook plain = of(four_hours()),
                same = of(with_stints(four_hours(), {{.from_min = 700}, {.from_min = 760}}));
  for (std::size_t i = 0; i < kReadingCount; ++i)
    CHECK_MESSAGE(near(same.at[i].value, plain.at[i].value), std::string(reading(R(i)).key));
}

TEST_CASE("stints: a break takes its minutes, and the battery rests in it") {
  const Outing plain = four_hours();
  const Outing pause = with_stints(plain, {{.from_min = 700, .on_air = false}, {.from_min = 730}});
  CHECK(of(plain)[R::clock_on_air_min].value == 200);
  CHECK(of(pause)[R::clock_on_air_min].value == 170);
  CHECK(near(of(pause)[R::pace_expected_contacts].value, 34));
  CHECK(near(of(pause)[R::power_runtime_h].value, of(plain)[R::power_runtime_h].value));
  CHECK(near(of(pause)[R::power_lasts_until_min].value, of(plain)[R::power_lasts_until_min].value + 30));
  CHECK(of(pause)[R::power_left_at_leave_by_pct].value > of(plain)[R::power_left_at_leave_by_pct].value);
  // outside the time on the air it takes nothing; nothing but a break leaves nothing
  CHECK(of(with_stints(plain, {{.from_min = 830, .on_air = false}}))[R::clock_on_air_min].value == 200);
  const Outlook none = of(with_stints(plain, {{.from_min = 0, .on_air = false}}));
  CHECK(none[R::clock_on_air_min].value == 0);
  CHECK(none[R::pace_expected_contacts].value == 0);
  CHECK(std::isfinite(none[R::power_lasts_until_min].value));
}

TEST_CASE("stints: another pace counts while it lasts") {
  const Outing slower = with_stints(four_hours(), {{.from_min = 720, .set = {{L::pace_per_hour, 6.0}}}});
  CHECK(near(of(slower)[R::pace_expected_contacts].value, 12 * 100 / 60.0 + 6 * 100 / 60.0));
}

TEST_CASE("stints: drain is summed over mode, share and power") {
  const Outing plain = four_hours();
  const Outing quiet = test::also(plain, {{L::radio_mode, "cw"}, {L::radio_transmit_power_w, 20.0}});
  const Outing both =
      with_stints(plain, {{.from_min = 780, .set = {{L::radio_mode, "cw"}, {L::radio_transmit_power_w, 20.0}}}});
  const double high = of(plain)[R::power_average_current_a].value,
               low = of(quiet)[R::power_average_current_a].value;
  CHECK(low < high);
  CHECK(near(of(both)[R::power_average_current_a].value, (160 * high + 40 * low) / 200));
  const double left = of(both)[R::power_left_at_leave_by_pct].value;
  CHECK(left > of(plain)[R::power_left_at_leave_by_pct].value);
  CHECK(left < of(quiet)[R::power_left_at_leave_by_pct].value);
  // the lead carries the hardest of them
  CHECK(of(both)[R::radio_key_down_current_a].value == of(plain)[R::radio_key_down_current_a].value);
}

TEST_CASE("stints: what is worst of them stands for the outing") {
  const Outing plain = test::also(four_hours(), {{L::radio_transmit_power_w, 20.0}});
  const Outing loud = with_stints(
      plain, {{.from_min = 700, .set = {{L::radio_transmit_power_w, 100.0}, {L::antenna_frequency_mhz, 28.4}}}});
  const Outing all_loud = test::also(plain, {{L::radio_transmit_power_w, 100.0}, {L::antenna_frequency_mhz, 28.4}});
  for (const R id : {R::safety_public_m, R::safety_operator_m, R::feedline_total_loss_db}) {
    CHECK(of(loud)[id].value == of(all_loud)[id].value);
    if (of(loud)[id].value != of(plain)[id].value) CHECK(of(loud)[id].stint == 0);
    CHECK(of(plain)[id].stint == -1);
  }
  CHECK(of(loud)[R::safety_public_m].stint == 0);
  // an antenna that does not fit says so, whichever stint it is for
  const Outing low = with_stints(plain, {{.from_min = 700, .set = {{L::antenna_frequency_mhz, 3.6}}}});
  CHECK(of(plain)[R::antenna_fits_m].state != State::fails);
  CHECK(of(low)[R::antenna_fits_m].state == State::fails);
}

TEST_CASE("stints property: nothing NaN, a break never brings contacts, 2,000 outings") {
  constexpr unsigned kSeed = 20261126;
  std::mt19937_64 bits(kSeed);
  int compared = 0;
  for (int n = 0; n < 2000; ++n) {
    Outing outing;
    outing.set = test::random_values(bits);
    for (int i = int(3 * test::unit_of(bits)); i > 0; --i) {
      Stint stint{.from_min = std::floor(2880 * test::unit_of(bits))};
      if (test::unit_of(bits) < 0.5)
        stint.set.emplace_back(L::radio_transmit_power_w, 1 + 99 * test::unit_of(bits));
      if (test::unit_of(bits) < 0.5)
        stint.set.emplace_back(L::antenna_frequency_mhz, 3.5 + 25 * test::unit_of(bits));
      if (test::unit_of(bits) < 0.3) stint.set.emplace_back(L::pace_per_hour, 1 + 50 * test::unit_of(bits));
      outing.stints = with_stint(std::move(outing.stints), std::move(stint));
    }
    const Outlook out = evaluate(resolve(outing));
    for (std::size_t i = 0; i < kReadingCount; ++i)
      if (std::isfinite(out.at[i].value) == (out.at[i].state == State::unknown))
        FAIL_CHECK("seed " << kSeed << ", outing " << n << ": " << reading(R(i)).key);
    Outing pause = outing;
    const double from_min = std::floor(2880 * test::unit_of(bits));
    pause.stints = with_stint(std::move(pause.stints), {.from_min = from_min, .on_air = false});
    const Outlook less = evaluate(resolve(pause));
    const double before = out[R::pace_expected_contacts].value, after = less[R::pace_expected_contacts].value;
    if (!std::isfinite(before) || !std::isfinite(after)) continue;
    ++compared;
    // a battery that a break saves may bring more later, at a better pace: only where it is not what ends the
    // outing
    if (out[R::pace_expected_contacts].culprit == L::count && after > before * (1 + 1e-9))
      FAIL_CHECK("seed " << kSeed << ", outing " << n << ": a break from " << from_min << " brings contacts");
  }
  MESSAGE("seed " << kSeed << ": " << compared << " outings compared with one more break");
  CHECK(compared > 300);
}

TEST_CASE("stretches: cut, joined and placed") {
  const Plan plan = resolve(with_stints(four_hours(), {{.from_min = 650, .on_air = false}, {.from_min = 660}}));
  const auto all = stretches_of(plan, 620, 820);
  REQUIRE(all.size() == 2);
  CHECK(minutes_of(all) == 190);
  CHECK(time_after(all, 30) == 650);
  CHECK(time_after(all, 31) == 661);
  CHECK(time_after(all, 200) == 830);
  CHECK(minutes_of(before(all, 655)) == 30);
  CHECK(minutes_of(before(all, 500)) == 0);
  CHECK(std::isnan(time_after({}, 10)));
  CHECK(stretches_of(plan, 700, 600).empty());
}
