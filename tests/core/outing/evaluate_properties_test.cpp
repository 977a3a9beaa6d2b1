// What must hold for every plan: 10 000 seeded random outings, every lever anywhere in its range or not set.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <map>

#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

constexpr unsigned kSeed = 20261125;
constexpr int kOutings = 10'000;

bool same_bits(double a, double b) { return std::memcmp(&a, &b, sizeof a) == 0; }

/// The plan with one number changed; limits of the lever are the caller's affair.
Plan changed(Plan plan, L id, double x) {
  plan.x[std::size_t(id)] = x;
  return plan;
}

}  // namespace

TEST_CASE("every plan: a value or a reason, an order of low and high, parts that sum") {
  std::mt19937_64 bits(kSeed);
  int known = 0, unknown_count = 0, withheld = 0, clashing = 0;
  std::map<State, int> states;
  std::map<Doubt, int> doubts;
  double worst_sum = 0, worst_share = 0;
  for (int n = 0; n < kOutings; ++n) {
    const Plan plan = resolve(test::random_values(bits));
    const Outlook out = evaluate(plan), again = evaluate(plan);
    const std::vector<Clash> found = clashes(plan);
    clashing += found.empty() ? 0 : 1;
    for (std::size_t i = 0; i < kReadingCount; ++i) {
      const R id = R(i);
      const Figure& figure = out[id];
      ++states[figure.state];
      ++doubts[figure.doubt];
      const std::string words = reason(plan, id, figure);
      // counted by hand: ten thousand plans times a macro is slow
      bool sound = same_bits(figure.value, again[id].value) && same_bits(figure.low, again[id].low);
      if (figure.state == State::unknown) {
        ++unknown_count;
        sound = sound && std::isnan(figure.value) && std::isnan(figure.low) && std::isnan(figure.high) &&
                std::isnan(figure.slack) && figure.doubt != Doubt::none && is_lever(figure.culprit) &&
                !words.empty();
        if (figure.doubt == Doubt::missing) sound = sound && !plan.has(figure.culprit);
        if (figure.doubt == Doubt::impossible || figure.doubt == Doubt::contradiction)
          sound =
              sound && std::any_of(found.begin(), found.end(), [&](const Clash& clash) {
                return clash.sentence == words && (clash.first == figure.culprit || clash.second == figure.culprit);
              });
      } else {
        ++known;
        sound = sound && std::isfinite(figure.value) && std::isfinite(figure.low) && std::isfinite(figure.high) &&
                figure.low <= figure.value && figure.value <= figure.high &&
                words.empty() == (figure.doubt == Doubt::none);
        sound =
            sound && std::isfinite(figure.slack) == is_judged(id) && (figure.state != State::none) == is_judged(id);
      }
      if (!sound)
        FAIL_CHECK("outing " << n << ", " << std::string(reading(id).key) << ": " << figure.value << ", " << words);
    }
    const auto of = [&out](R id) { return out[id].value; };
    if (std::isfinite(of(R::feedline_swr_at_radio)) && of(R::feedline_swr_at_radio) < 1) FAIL_CHECK("SWR below 1");
    if (std::isfinite(of(R::antenna_swr)) && of(R::antenna_swr) < 1) FAIL_CHECK("SWR below 1");
    if (std::isfinite(of(R::feedline_total_loss_db)) && of(R::feedline_total_loss_db) < 0)
      FAIL_CHECK("a line that gains");
    if (!std::isfinite(of(R::feedline_power_to_antenna_w))) {
      ++withheld;
      continue;
    }
    const double asked = plan[L::radio_transmit_power_w], leaves = asked - of(R::radio_turned_down_w);
    worst_sum = std::max(worst_sum, std::abs(of(R::feedline_power_to_antenna_w) + of(R::feedline_cable_matched_w) +
                                             of(R::feedline_cable_swr_w) - leaves) /
                                        asked);
    if (of(R::radio_turned_down_w) < 0 || leaves < 0)
      FAIL_CHECK("outing " << n << " turns down " << of(R::radio_turned_down_w));
    if (of(R::feedline_power_to_antenna_w) > leaves * (1 + 1e-12)) FAIL_CHECK("more arrives than leaves");
    if (std::isfinite(of(R::feedline_arrives_pct)))
      worst_share = std::max(
          worst_share,
          std::abs(of(R::feedline_power_to_antenna_w) - leaves * of(R::feedline_arrives_pct) / 100) / asked);
  }
  MESSAGE(kOutings << " outings: " << known << " figures known, " << unknown_count << " not; " << withheld
                   << " without power to the antenna, " << clashing << " with a clash");
  MESSAGE("parts of the watts bar against their sum: worst " << worst_sum << " of the power, allowed 1e-14");
  MESSAGE("arrives times leaves against power to the antenna: worst " << worst_share
                                                                      << " of the power, allowed 1e-14");
  CHECK(worst_sum < 1e-14);
  CHECK(worst_share < 1e-14);
  // The draw reaches every state and every doubt but the one of links that do not answer yet.
  for (const State state : {State::holds, State::tight, State::fails, State::none, State::unknown})
    CHECK(states[state] > 0);
  for (const Doubt doubt : {Doubt::none, Doubt::missing, Doubt::contradiction, Doubt::impossible,
                            Doubt::not_in_catalogue, Doubt::outside_tested})
    CHECK(doubts[doubt] > 0);
  CHECK(doubts[Doubt::later] == 0);
}

TEST_CASE("every plan: matched loss grows with length, frequency and the roll's own loss; watts grow with watts") {
  std::mt19937_64 bits(kSeed + 1);
  int longer = 0, higher = 0, watts = 0;
  for (int n = 0; n < kOutings; ++n) {
    const Plan plan = resolve(test::random_values(bits));
    const double more = 1 + test::unit_of(bits);
    const auto of = [](const Plan& p, R id) { return evaluate(p)[id].value; };
    const double matched = of(plan, R::feedline_matched_loss_db);
    if (std::isfinite(matched)) {
      ++longer;
      for (const L id : {L::feedline_length_m, L::antenna_frequency_mhz, L::feedline_roll_loss_pct})
        if (!(of(changed(plan, id, plan[id] * more), R::feedline_matched_loss_db) >= matched))
          FAIL_CHECK("outing " << n << ": less matched loss with more of " << std::string(lever(id).key));
    }
    // A known SWR at the antenna and no phase: more line loses more, and hides more of the antenna from the radio.
    if (plan.has(L::feedline_measured_swr) && plan[L::feedline_measured_at] == 1 &&
        !plan.has(L::antenna_feed_r_ohm) && std::isfinite(of(plan, R::feedline_swr_at_radio))) {
      ++higher;
      const Plan stretched = changed(plan, L::feedline_length_m, plan[L::feedline_length_m] * more);
      // a cable of another impedance turns it about: its length then shows more or less of the antenna
      if (join_feedline(plan).meter_impedance &&
          of(stretched, R::feedline_swr_at_radio) > of(plan, R::feedline_swr_at_radio) * (1 + 1e-12))
        FAIL_CHECK("outing " << n << ": a longer line shows more of the antenna");
      if (of(stretched, R::antenna_swr) != of(plan, R::antenna_swr))
        FAIL_CHECK("a longer line changes the antenna");
    }
    const double power = of(plan, R::feedline_power_to_antenna_w);
    if (!std::isfinite(power)) continue;
    ++watts;
    Plan louder = changed(plan, L::radio_transmit_power_w, plan[L::radio_transmit_power_w] * more);
    if (louder.has(L::radio_full_power_w))
      louder = changed(louder, L::radio_full_power_w, plan[L::radio_full_power_w] * more);
    const double then = of(louder, R::feedline_power_to_antenna_w);
    if (!(then >= power)) FAIL_CHECK("outing " << n << ": more watts asked, fewer arrive");
    if (std::abs(then - power * more) > 1e-12 * then) FAIL_CHECK("outing " << n << ": watts are not in proportion");
  }
  MESSAGE(longer << " matched losses, " << higher << " SWRs at the antenna, " << watts << " powers");
  CHECK(longer > 1000);
  CHECK(higher > 500);
  CHECK(watts > 1000);
}

TEST_CASE("every plan: verdict, changes and standings have words, and never two answers") {
  std::mt19937_64 bits(kSeed + 2);
  for (int n = 0; n < 2000; ++n) {
    const Plan plan = resolve(test::random_values(bits)), other = resolve(test::random_values(bits));
    const Outlook out = evaluate(plan), then = evaluate(other);
    const Verdict said = verdict(plan, out);
    if (said.headline.empty() || said.cause.empty() || said.cause.back() != '.')
      FAIL_CHECK("outing " << n << ": " << said.headline << " " << said.cause);
    if (!clashes(plan).empty() && said.state != State::fails) FAIL_CHECK("a clash must not pass");
    for (std::size_t i = 0; i < kReadingCount; ++i) {
      const Change change = compare(R(i), out[R(i)], then[R(i)]), back = compare(R(i), then[R(i)], out[R(i)]);
      const std::string words = say_change(R(i), change, {});
      const bool both = std::isfinite(out[R(i)].value) && std::isfinite(then[R(i)].value);
      if (words.empty() == both) FAIL_CHECK("outing " << n << ": \"" << words << "\"");
      if ((change.kind == Change::Kind::better) != (back.kind == Change::Kind::worse))
        FAIL_CHECK("better is not the other's worse");
      if (words.find('<') != std::string::npos || words.find('>') != std::string::npos) FAIL_CHECK(words);
    }
  }
}
