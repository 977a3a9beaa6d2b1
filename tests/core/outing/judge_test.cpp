// Slack and states, what a link stands on, the verdict's sentences, changes against the pin.
#include <doctest/doctest.h>

#include <cmath>
#include <limits>

#include "tests/core/outing/outings.h"

using namespace gs;
using test::plan_of;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

Figure known(double value, State state = State::none, double slack = kNaN) {
  return {.value = value, .low = value, .high = value, .slack = slack, .state = state, .doubt = Doubt::none};
}

/// Nothing known but what is put.
Outlook outlook_of(std::initializer_list<std::pair<R, Figure>> figures) {
  Outlook out;
  for (Figure& figure : out.at) figure = unknown(Doubt::missing, L::feedline_cable);
  for (const auto& [id, figure] : figures) out.at[std::size_t(id)] = figure;
  return out;
}

/// A short line with this SWR at the radio: arrives holds, and the SWR decides.
Plan swr_plan(double swr) {
  return plan_of({{L::radio_full_power_w, 100.0},
                  {L::antenna_frequency_mhz, 14.2},
                  {L::feedline_cable, "rg213"},
                  {L::feedline_length_m, 5.0},
                  {L::feedline_measured_swr, swr}});
}

std::string change_words(R id, double now, double pinned, const Style& style = {}) {
  return say_change(id, compare(id, known(now), known(pinned)), style);
}
Change::Kind change_kind(R id, double now, double pinned) { return compare(id, known(now), known(pinned)).kind; }

}  // namespace

TEST_CASE("judge: slack runs from 0 at the limit to 1 at ease, whichever way is better") {
  const Plan plan = resolve(Outing{}.set);
  struct Row {
    R id;
    double share;  // of the way from limit to ease
    State state;
  };
  const Row rows[] = {{R::feedline_arrives_pct, -0.5, State::fails}, {R::feedline_arrives_pct, 0, State::tight},
                      {R::feedline_arrives_pct, 0.5, State::tight},  {R::feedline_arrives_pct, 1, State::holds},
                      {R::feedline_arrives_pct, 1.5, State::holds},  {R::feedline_swr_at_radio, -4, State::fails},
                      {R::feedline_swr_at_radio, 0, State::tight},   {R::feedline_swr_at_radio, 0.5, State::tight},
                      {R::feedline_swr_at_radio, 1, State::holds},   {R::feedline_swr_at_radio, 2, State::holds}};
  double worst = 0;
  for (const Row& row : rows) {
    CAPTURE(std::string(reading(row.id).key));
    CAPTURE(row.share);
    const double limit = plan[limit_lever(row.id)], ease = plan[ease_lever(row.id)];
    const Figure figure = judge(plan, row.id, limit + row.share * (ease - limit));
    CHECK(figure.state == row.state);
    worst = std::max(worst, std::abs(figure.slack - row.share));
    CHECK(figure.low == figure.value);
    CHECK(figure.high == figure.value);
    CHECK(figure.doubt == Doubt::none);
  }
  MESSAGE("slack: worst " << worst << ", allowed 1e-12");
  CHECK(worst < 1e-12);
}

TEST_CASE("judge: at the border the better side counts, a hair beyond it does not") {
  const Plan plan = resolve(Outing{}.set);
  const double limit = plan[limit_lever(R::feedline_swr_at_radio)],
               ease = plan[ease_lever(R::feedline_swr_at_radio)];
  CHECK(judge(plan, R::feedline_swr_at_radio, ease).state == State::holds);
  CHECK(judge(plan, R::feedline_swr_at_radio, ease + 1e-6).state == State::tight);
  CHECK(judge(plan, R::feedline_swr_at_radio, limit).state == State::tight);
  CHECK(judge(plan, R::feedline_swr_at_radio, limit + 1e-6).state == State::fails);
}

TEST_CASE("judge: the plan's own limit and ease rule, and a pair that cannot be is withheld") {
  const Plan stricter =
      plan_of({{limit_lever(R::feedline_arrives_pct), 80.0}, {ease_lever(R::feedline_arrives_pct), 90.0}});
  CHECK(judge(stricter, R::feedline_arrives_pct, 75).state == State::fails);
  CHECK(judge(resolve(Outing{}.set), R::feedline_arrives_pct, 75).state == State::holds);
  const Figure none = judge(plan_of({{ease_lever(R::feedline_arrives_pct), 40.0}}), R::feedline_arrives_pct, 75);
  CHECK(none.state == State::unknown);
  CHECK(std::isnan(none.value));
  CHECK(none.culprit == ease_lever(R::feedline_arrives_pct));
}

TEST_CASE("judge: what has no limit is not judged") {
  const Figure figure = judge(resolve(Outing{}.set), R::feedline_weight_g, 570);
  CHECK(figure.state == State::none);
  CHECK(std::isnan(figure.slack));
  CHECK(figure.value == 570);
  CHECK(state_word(State::none) == "");
  CHECK(state_word(State::holds) == "holds");
  CHECK(state_word(State::tight) == "tight");
  CHECK(state_word(State::fails) == "fails");
  CHECK(state_word(State::unknown) == "not known");
}

TEST_CASE("standing: the least slack binds") {
  const Outlook by_swr = outlook_of({{R::feedline_arrives_pct, known(90, State::holds, 2)},
                                     {R::feedline_swr_at_radio, known(2.5, State::tight, 0.5)}});
  CHECK(standing(by_swr, Link::feedline).binds == R::feedline_swr_at_radio);
  CHECK(standing(by_swr, Link::feedline).state == State::tight);
  CHECK(standing(by_swr, Link::feedline).slack == 0.5);
  const Outlook by_arrives = outlook_of({{R::feedline_arrives_pct, known(40, State::fails, -0.5)},
                                         {R::feedline_swr_at_radio, known(2.5, State::tight, 0.5)}});
  CHECK(standing(by_arrives, Link::feedline).binds == R::feedline_arrives_pct);
  CHECK(standing(by_arrives, Link::feedline).state == State::fails);
}

TEST_CASE("standing: one judged reading that is not known leaves the link not known") {
  const Outlook half = outlook_of({{R::feedline_arrives_pct, known(90, State::holds, 2)}});
  CHECK(standing(half, Link::feedline).state == State::unknown);
  CHECK(standing(half, Link::feedline).binds == R::feedline_swr_at_radio);
  CHECK(std::isnan(standing(half, Link::feedline).slack));
  // a link without a judged reading has no standing yet
  CHECK(standing(half, Link::sky).state == State::unknown);
  CHECK(standing(half, Link::sky).binds == R::count);
}

TEST_CASE("verdict: nothing known names what is needed") {
  const Plan plan = resolve(Outing{}.set);
  const Verdict said = verdict(plan, evaluate(plan));
  CHECK(said.headline == "Nothing known yet.");
  CHECK(said.cause == "Battery needs radio's full power.");  // the first link of the chain speaks
  CHECK(said.state == State::unknown);
}

TEST_CASE("verdict: holds, tight and fails, with figure, limit and what is not known") {
  const auto said = [](double swr) {
    const Plan plan = swr_plan(swr);
    return verdict(plan, evaluate(plan));
  };
  Verdict now = said(1.0);
  CHECK(now.state == State::holds);
  CHECK(now.headline == "Feed line holds.");
  CHECK(now.cause == "SWR at radio 1.0, limit 3. 5 links are not known.");
  CHECK(now.binds == R::feedline_swr_at_radio);
  now = said(2.5);
  CHECK(now.state == State::tight);
  CHECK(now.headline == "The chain is tight.");
  CHECK(now.cause == "Feed line is tight: SWR at radio 2.5, limit 3. 5 links are not known.");
  now = said(5.0);
  CHECK(now.state == State::fails);
  CHECK(now.headline == "The chain fails.");
  CHECK(now.cause == "Feed line fails: SWR at radio 5.0, limit 3. 5 links are not known.");
}

TEST_CASE("verdict: the share that arrives is said in percent") {
  const Plan plan = plan_of({{L::radio_full_power_w, 100.0},
                             {L::antenna_frequency_mhz, 28.4},
                             {L::feedline_cable, "rg58c"},
                             {L::feedline_length_m, 60.0},
                             {L::feedline_measured_swr, 1.0}});
  const Verdict said = verdict(plan, evaluate(plan));
  CHECK(said.headline == "The chain fails.");
  CHECK(said.cause.find("Feed line fails: arrives ") == 0);
  CHECK(said.cause.find(" %, limit 50 %.") != std::string::npos);
}

TEST_CASE("verdict: a clash comes before everything") {
  Outing outing = test::outing_of({{L::radio_full_power_w, 10.0}, {L::radio_transmit_power_w, 40.0}});
  const Plan plan = resolve(outing.set);
  const Verdict said = verdict(plan, evaluate(plan));
  CHECK(said.headline == "Two figures do not go together.");
  CHECK(said.cause == clashes(plan).front().sentence);
  CHECK(said.state == State::fails);
}

TEST_CASE("reason: nothing to say where nothing is in doubt") {
  const Plan plan = swr_plan(1.5);
  const Outlook out = evaluate(plan);
  int known_count = 0;
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    const bool in_doubt = out[R(i)].doubt != Doubt::none;
    CHECK((reason(plan, R(i), out[R(i)]) == "") == !in_doubt);
    if (!test::of_feedline(R(i)) && R(i) != R::power_average_current_a) continue;
    CHECK_FALSE(in_doubt);
    ++known_count;
  }
  CHECK(known_count == 12);
  CHECK(reason(plan, R::feedline_arrives_pct, unknown(Doubt::later, L::count)) == "this link does not answer yet");
}

TEST_CASE("compare: same where the printed figures are the same") {
  CHECK(change_kind(R::feedline_power_to_antenna_w, 32.94, 32.86) == Change::Kind::same);  // both 32.9
  CHECK(change_words(R::feedline_power_to_antenna_w, 32.94, 32.86) == "same");
  CHECK(change_words(R::feedline_arrives_pct, 82.4, 81.6) == "same");  // both 82 %
  CHECK(change_words(R::feedline_arrives_pct, 82.3, 82.1) == "same");
  CHECK(change_words(R::feedline_arrives_pct, 82, 82) == "same");
  CHECK(change_words(R::feedline_weight_g, 570.4, 569.6) == "same");
}

TEST_CASE(
    "compare: printed figures that differ are never called the same, and differ by at least their last digit") {
  CHECK(change_words(R::feedline_power_to_antenna_w, 32.96, 32.94) == "+0.1 W");  // 33.0 and 32.9
  CHECK(change_words(R::feedline_arrives_pct, 82.4, 82.6) == "\u22121 point");    // 82 % and 83 %
  CHECK(change_words(R::feedline_arrives_pct, 0.4, 0) == "+1 point");             // "< 1 %" and 0 %
  CHECK(change_words(R::feedline_swr_at_radio, 1.449, 1.451) == "\u22120.1");
}

TEST_CASE("compare: better and worse go by the reading's direction") {
  CHECK(change_kind(R::feedline_power_to_antenna_w, 40, 30) == Change::Kind::better);
  CHECK(change_kind(R::feedline_power_to_antenna_w, 30, 40) == Change::Kind::worse);
  CHECK(change_kind(R::feedline_swr_at_radio, 1.5, 2.5) == Change::Kind::better);
  CHECK(change_kind(R::feedline_swr_at_radio, 2.5, 1.5) == Change::Kind::worse);
  CHECK(std::abs(compare(R::feedline_power_to_antenna_w, known(40), known(30)).delta - 10) < 1e-12);
}

TEST_CASE("compare: signs, units and points") {
  CHECK(change_words(R::feedline_power_to_antenna_w, 35.4, 32.9) == "+2.5 W");
  CHECK(change_words(R::feedline_power_to_antenna_w, 32.9, 35.4) == "\u22122.5 W");  // U+2212
  CHECK(change_words(R::feedline_power_to_antenna_w, 32.9, 35.4, {.decimal_sign = ','}) == "\u22122,5 W");
  CHECK(change_words(R::feedline_arrives_pct, 78, 82) == "\u22124 points");  // not percent of percent
  CHECK(change_words(R::feedline_arrives_pct, 83, 82) == "+1 point");
  CHECK(change_words(R::feedline_arrives_pct, 100, 0) == "+100 points");
  CHECK(change_words(R::feedline_swr_at_radio, 2.5, 1.5) == "+1.0");
  CHECK(change_words(R::feedline_weight_g, 2385, 570) == "+1.8 kg");
  CHECK(change_words(R::feedline_weight_g, 570, 380) == "+190 g");
}

TEST_CASE("compare: nothing to compare while one of the two is not known") {
  const Figure none = unknown(Doubt::missing, L::feedline_cable);
  CHECK(compare(R::feedline_arrives_pct, known(80), none).kind == Change::Kind::none);
  CHECK(compare(R::feedline_arrives_pct, none, known(80)).kind == Change::Kind::none);
  CHECK(say_change(R::feedline_arrives_pct, {}, {}) == "");
}

TEST_CASE("sentences follow the person's decimal sign and units") {
  gs::Values set(gs::lever_count());
  const auto put = [&](gs::L id, gs::Value value) { set[std::size_t(id)] = std::move(value); };
  put(gs::L::radio_full_power_w, 100.0);
  put(gs::L::antenna_frequency_mhz, 14.25);
  put(gs::L::feedline_cable, std::string("rg58c"));
  put(gs::L::feedline_length_m, 15.0);
  put(gs::L::feedline_measured_swr, 90.0);
  gs::Style comma;
  comma.decimal_sign = ',';
  const gs::Plan plan = gs::resolve(set);
  const std::string pointed = gs::clashes(plan).front().sentence,
                    with_comma = gs::clashes(plan, comma).front().sentence;
  CHECK(pointed.find("90.0") != std::string::npos);
  CHECK(with_comma.find("90,0") != std::string::npos);
  CHECK(gs::verdict(plan, gs::evaluate(plan), comma).cause == with_comma);
}
