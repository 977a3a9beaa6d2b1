// Laws of safety and rules over seeded outings: nobody is told that it holds where an evaluation is owed, more
// power or share never shortens a distance, and what may be sent is said in words that fit.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>

#include "core/outing/rules_join.h"
#include "core/outing/rules_rows.h"
#include "core/rules/region.h"
#include "core/sky/locator.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

constexpr unsigned kSeed = 20261125;
constexpr int kTrials = 10'000;

/// Anything anywhere, but looked at: so that distances alone decide.
Outing looked_at(std::mt19937_64& bits) {
  Outing outing;
  outing.set = test::random_values(bits);
  for (const L look : {L::safety_looked_at_lines, L::safety_looked_at_fuse, L::safety_looked_at_coax})
    outing.set[std::size_t(look)] = "yes";
  outing.set[std::size_t(limit_lever(R::safety_left_to_look_at))] = Value{};
  outing.set[std::size_t(ease_lever(R::safety_left_to_look_at))] = Value{};
  return outing;
}

bool has(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("every plan: safety never holds where an evaluation is owed or people stand nearer than the keep-out") {
  std::mt19937_64 bits(kSeed);
  int known = 0, held = 0, failed = 0;
  for (int trial = 0; trial < kTrials; ++trial) {
    const Plan plan = resolve(looked_at(bits));
    const Outlook out = evaluate(plan);
    const Figure &looked = out[R::safety_left_to_look_at], &owed = out[R::safety_owed_within_m];
    if (owed.state == State::unknown) continue;
    ++known;
    const double keep_out_m = std::max(out[R::safety_public_m].value, out[R::safety_operator_m].value);
    CAPTURE(trial);
    CHECK(keep_out_m >= 1.5);
    const double people_m = plan.has(L::safety_people_m) ? plan[L::safety_people_m] : keep_out_m;
    if (looked.state == State::holds) {
      ++held;
      CHECK(people_m >= keep_out_m);
      CHECK(people_m >= owed.value - 0.1 - 1e-9);  // shown rounded up to a tenth
    }
    if (people_m < keep_out_m) {
      ++failed;
      CHECK(looked.state == State::fails);
      CHECK(looked.culprit == L::safety_people_m);
    }
  }
  MESSAGE("seed " << kSeed << ": " << known << " of " << kTrials << " known, " << held << " hold, " << failed
                  << " fail");
  CHECK(held > 20);
  CHECK(failed > 20);
}

TEST_CASE("every plan: more power, a busier window, more reflection never bring people nearer") {
  std::mt19937_64 bits(kSeed + 1);
  int compared = 0;
  for (int trial = 0; trial < kTrials; ++trial) {
    Outing outing = looked_at(bits);
    outing.set[std::size_t(L::radio_full_power_w)] = 200.0;
    outing.set[std::size_t(L::safety_ground)] = "usual";
    const Plan plan = resolve(outing);
    const Outlook before = evaluate(plan);
    if (before[R::safety_public_m].state == State::unknown) continue;
    const double up = 1 + test::unit_of(bits);
    if (trial % 3 == 0)
      outing.set[std::size_t(L::radio_transmit_power_w)] = std::min(200.0, plan[L::radio_transmit_power_w] * up);
    else if (trial % 3 == 1)
      outing.set[std::size_t(L::safety_busiest_share_pct)] =
          std::min(100.0, plan[L::safety_busiest_share_pct] * up);
    else
      outing.set[std::size_t(L::safety_ground)] = "full";
    const Outlook after = evaluate(resolve(outing));
    CAPTURE(trial);
    for (const R id : {R::safety_public_m, R::safety_operator_m, R::safety_owed_within_m})
      CHECK(after[id].value >= before[id].value);
    ++compared;
  }
  MESSAGE("seed " << kSeed + 1 << ": " << compared << " compared");
  CHECK(compared > kTrials / 4);
}

TEST_CASE("every plan: what may not be sent fails, says why and by how much, and comes first in the verdict") {
  std::mt19937_64 bits(kSeed + 2);
  int allowed = 0, forbidden = 0;
  for (int trial = 0; trial < 3000; ++trial) {
    Outing outing = looked_at(bits);
    for (const R id : {R::rules_room_khz, R::rules_power_pct}) {
      outing.set[std::size_t(limit_lever(id))] = Value{};
      outing.set[std::size_t(ease_lever(id))] = Value{};
    }
    const Plan plan = resolve(outing);
    const RulesJoin join = join_rules(plan);
    if (join.doubtful.doubt != Doubt::none) continue;
    const Outlook out = evaluate(plan);
    const Figure& room = out[R::rules_room_khz];
    CHECK((room.state != State::fails) == join.answer.allowed);
    const std::string line = say_rules(plan);
    CAPTURE(line);
    if (join.answer.allowed) {
      ++allowed;
      CHECK(line.substr(0, 9) == "Allowed, ");
    } else {
      ++forbidden;
      CHECK(line.substr(0, 13) == "Not allowed, ");
      CHECK(has(line, "Nearest dial"));
      CHECK(reason(plan, R::rules_room_khz, room) == line);
      if (clashes(plan).empty()) CHECK(verdict(plan, out).binds == R::rules_room_khz);
    }
  }
  MESSAGE(allowed << " allowed, " << forbidden << " not");
  CHECK(allowed > 20);
  CHECK(forbidden > 200);
}

TEST_CASE("rules in the plan: class, edges of one's own, 60 m and its power") {
  const auto with_rules = [](test::Sets sets) { return resolve(test::also(test::whole_outing(), sets)); };
  // the exam's own: 14.348 MHz, upper sideband, 3 kHz: a kilohertz out
  const Plan edge = with_rules({{L::antenna_frequency_mhz, 14.348}});
  CHECK(std::abs(evaluate(edge)[R::rules_room_khz].value + 1) < 1e-3);
  CHECK(verdict(edge, evaluate(edge)).headline == "This may not be transmitted.");
  CHECK(has(say_rules(edge), "14.347 MHz"));
  CHECK(evaluate(with_rules({{L::antenna_frequency_mhz, 14.347}}))[R::rules_room_khz].state == State::tight);
  // General: 14.225 is the first dial of the phone segment
  CHECK(evaluate(with_rules({{L::antenna_frequency_mhz, 14.2}, {L::rules_class, "general"}}))[R::rules_room_khz]
            .state == State::fails);
  // no class, no answer
  const Plan none = with_rules({{L::rules_class, Value{}}});
  CHECK(reason(none, R::rules_room_khz, evaluate(none)[R::rules_room_khz]) == "needs licence class");
  Outing settled = test::also(test::whole_outing(), {{L::rules_class, Value{}}});
  settled.habits.licence = "general";
  CHECK(resolve(settled)[L::rules_class] == 2);
  CHECK(resolve(settled).from[std::size_t(L::rules_class)] == From::usual);
  // another country's: within its own edges, at its own power
  const Plan own = with_rules({{L::rules_class, "other"},
                               {L::rules_own_low_mhz, 14.1},
                               {L::rules_own_high_mhz, 14.25},
                               {L::rules_own_power_w, 50.0}});
  CHECK(std::abs(evaluate(own)[R::rules_room_khz].value - 47) < 1e-3);
  CHECK(evaluate(own)[R::rules_power_pct].value == 200);
  CHECK(evaluate(own)[R::rules_power_pct].state == State::fails);
  CHECK(option_key(L::safety_limits, own[L::safety_limits]) == "icnirp");
  const Plan other = with_rules({{L::rules_class, "other"}});
  CHECK(evaluate(other)[R::rules_power_pct].culprit == L::rules_own_power_w);
  // 60 m, 5.3515 to 5.3665 MHz: 9.15 W over a dipole (47 CFR 97.313(i), in force since 2026-02-13)
  const Plan sixty = with_rules({{L::antenna_frequency_mhz, 5.357}, {L::radio_mode, "cw"}});
  const double to_antenna_w = evaluate(sixty)[R::feedline_power_to_antenna_w].high;
  CHECK(evaluate(sixty)[R::rules_power_pct].value == doctest::Approx(100 * to_antenna_w / 9.15).epsilon(1e-9));
  CHECK(evaluate(sixty)[R::rules_power_pct].state == State::fails);
}

// Capitals and islands on the maps of the three Regions, common knowledge of the trade.
TEST_CASE("rules: the Region follows from the locator") {
  struct Row {
    const char* locator;
    rules::Region region;
  };
  constexpr Row kRows[] = {
      {"DM79", rules::Region::two},   {"FN31pr", rules::Region::two}, {"BL11bh", rules::Region::two},
      {"GG66", rules::Region::two},   {"HP94", rules::Region::one},   {"IO91xl", rules::Region::one},
      {"JF96fb", rules::Region::one}, {"JN58td", rules::Region::one}, {"KO85", rules::Region::one},
      {"ML88", rules::Region::three}, {"PM95", rules::Region::three}, {"QF56od", rules::Region::three},
      {"RF70", rules::Region::three}, {"QK23", rules::Region::three}};
  for (const Row& row : kRows) {
    CAPTURE(std::string(row.locator));
    const sky::Place here = sky::read_locator(row.locator).centre;
    CHECK(rules::region_of(here.latitude_deg, here.longitude_deg) == row.region);
    const Plan plan = test::plan_of({{L::site_locator, row.locator}});
    CHECK(region_at(plan[L::rules_region]) == row.region);
  }
  CHECK(rules::region_of(40, -105 + 360) == rules::Region::two);
  CHECK(rules::region_of(NAN, 0) == rules::Region::two);
}
