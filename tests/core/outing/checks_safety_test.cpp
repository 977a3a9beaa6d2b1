// The small questions about safety and rules: what they answer, what they need, what they warn of.
#include "core/outing/checks_safety.h"

#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

using namespace gs;

namespace {

struct Asked {
  const Check& check;
  CheckOutcome outcome;
  const Figure& operator[](std::string_view key) const {
    std::size_t at = 0;
    while (at < check.results.size() && check.results[at].row.key != key) ++at;
    REQUIRE(at < check.results.size());
    return outcome.results[at];
  }
  bool says(std::string_view words) const { return outcome.reason.find(words) != std::string::npos; }
};

Asked ask(std::string_view key, std::initializer_list<std::pair<const char*, const char*>> given) {
  const Check* check = nullptr;
  for (const Check& row : safety_checks())
    if (row.key == key) check = &row;
  REQUIRE(check != nullptr);
  std::vector<Value> values(check->inputs.size());
  for (const auto& [name, text] : given) {
    std::size_t at = 0;
    while (at < check->inputs.size() && check->inputs[at].row.key != name) ++at;
    REQUIRE(at < check->inputs.size());
    ReadValue read = read_value(check->inputs[at].row, text);
    REQUIRE_MESSAGE(read.trouble.empty(), read.trouble);
    values[at] = std::move(read.value);
  }
  return {*check, work_out(*check, resolve_check(*check, values, resolve(Values(lever_count()))))};
}

}  // namespace

TEST_CASE("safety checks: with nothing given each says what it needs and claims nothing") {
  for (const Check& check : safety_checks()) {
    CAPTURE(std::string(check.key));
    const Asked asked = ask(check.key, {});
    CHECK(asked.outcome.reason.find("needs ") == 0);
    for (const Figure& figure : asked.outcome.results) CHECK(figure.state == State::unknown);
  }
}

// 47 CFR 1.1310 and OET Bulletin 65: 100 W without pause on 28.5 MHz into a dipole, 3.9 m for the public, 1.74 m
// for the operator.
TEST_CASE("exposure distance: audience, share and floors") {
  const Asked dipole = ask("safety.exposure_distance", {{"power_w", "100"}, {"frequency_mhz", "28.5"}});
  CHECK(std::abs(dipole["public_formula_m"].value - 3.88) < 0.005);
  CHECK(dipole["public_m"].value == 3.9);
  CHECK(dipole.outcome.reason.empty());
  // a fifth of half an hour is six minutes: all of the operator's time
  const Asked fifth =
      ask("safety.exposure_distance", {{"power_w", "100"}, {"frequency_mhz", "28.5"}, {"busiest_share_pct", "20"}});
  CHECK(fifth["operator_formula_m"].value == dipole["operator_formula_m"].value);
  CHECK(fifth["public_formula_m"].value < dipole["public_formula_m"].value);
  const Asked small = ask("safety.exposure_distance", {{"power_w", "5"}, {"frequency_mhz", "7.2"}});
  CHECK(small["public_m"].value == 1.5);
  CHECK(small.says("evaluation is owed within 6.7 m"));
  CHECK(ask("safety.exposure_distance", {{"power_w", "5"}, {"frequency_mhz", "7.2"}, {"limits", "icnirp"}})
            .says("from memory"));
  const Asked whip =
      ask("safety.exposure_distance", {{"power_w", "5"}, {"frequency_mhz", "7.2"}, {"antenna", "short_whip"}});
  CHECK(whip["public_m"].value >= 2);
  CHECK(whip.says("an estimate"));
}

TEST_CASE("power at a distance: fails where it is too much, not known where the formula may not stand alone") {
  const auto at = [](const char* distance, const char* power) {
    return ask("safety.power_at_distance",
               {{"distance_m", distance}, {"frequency_mhz", "7.2"}, {"power_w", power}});
  };
  CHECK(at("20", "100")["of_most_pct"].state == State::holds);
  CHECK(at("3", "100")["of_most_pct"].state == State::unknown);
  CHECK(at("3", "100").says("tight at best"));
  CHECK(at("1", "1")["of_most_pct"].state == State::unknown);
  CHECK(at("1", "1").says("arm's reach"));
  CHECK(at("3", "2000")["of_most_pct"].state == State::fails);
  const Asked none = ask("safety.power_at_distance", {{"distance_m", "20"}, {"frequency_mhz", "7.2"}});
  CHECK(std::isfinite(none["most_power_w"].value));
  CHECK(none.outcome.reason == "needs Power to the antenna to compare with");
}

TEST_CASE("power lines: judged where the distance is known") {
  CHECK(ask("safety.power_lines", {{"height_m", "7"}})["room_m"].state == State::unknown);
  CHECK(ask("safety.power_lines", {{"height_m", "7"}, {"distance_m", "13"}})["room_m"].state == State::fails);
  CHECK(ask("safety.power_lines", {{"height_m", "7"}, {"distance_m", "15"}})["room_m"].state == State::tight);
  CHECK(ask("safety.power_lines", {{"height_m", "7"}, {"distance_m", "20"}})["room_m"].state == State::holds);
  CHECK(std::abs(ask("safety.power_lines", {{"height_m", "1"}, {"voltage", "500kv"}})["stay_off_m"].value - 8.62) <
        1e-12);
}

TEST_CASE("thunder: never a state, and the wait runs out") {
  for (const Figure& figure : ask("safety.thunder", {{"delay_s", "100"}}).outcome.results)
    CHECK(figure.state == State::none);
  CHECK(ask("safety.thunder", {{"delay_s", "100"}}).says("go in now"));
  CHECK(ask("safety.thunder", {{"delay_s", "10"}, {"since_min", "45"}})["wait_min"].value == 0);
}

TEST_CASE("may I transmit: states and words") {
  const auto at = [](const char* licence, const char* mhz, const char* mode) {
    return ask("rules.may_transmit", {{"region", "2"}, {"class", licence}, {"frequency_mhz", mhz}, {"mode", mode}});
  };
  CHECK(at("extra", "14.348", "usb")["room_khz"].state == State::fails);
  CHECK(at("extra", "14.347", "usb")["room_khz"].state == State::tight);
  CHECK(at("extra", "14.300", "usb")["room_khz"].state == State::holds);
  CHECK(at("extra", "14.348", "usb").says("over the edge"));
  CHECK(at("general", "14.2", "usb").says("not a part of the band for General"));
  CHECK(at("general", "10.12", "usb").says("not with this mode"));
  CHECK(at("general", "13.9", "cw").says("no amateur band"));
  CHECK(at("general", "5.357", "cw").says("radiated power"));
  CHECK(at("general", "14.06", "cw").outcome.reason.empty());
  CHECK(at("novice", "28.4", "fm")["room_khz"].state == State::unknown);
  CHECK(at("novice", "28.4", "fm").says("no place"));
}
