// The small questions beside the plan.
#include "core/outing/checks.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "tests/core/outing/outings.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/feedline_tables.h"

using namespace gs;
using test::Closeness;
using test::plan_of;

namespace {

struct Given {
  const char* key;
  const char* text;  // as a person types it
};

std::size_t input_at(const Check& check, std::string_view key) {
  std::size_t at = 0;
  while (at < check.inputs.size() && check.inputs[at].row.key != key) ++at;
  REQUIRE(at < check.inputs.size());
  return at;
}

struct Asked {
  const Check& check;
  CheckValues values;
  CheckOutcome outcome;

  const Figure& figure(std::string_view key) const {
    std::size_t at = 0;
    while (at < check.results.size() && check.results[at].row.key != key) ++at;
    REQUIRE(at < check.results.size());
    return outcome.results[at];
  }
  double operator[](std::string_view key) const { return figure(key).value; }
};

Asked ask(const char* key, std::initializer_list<Given> given, const Plan& plan = resolve(Outing{}.set)) {
  const Check* check = find_check(key);
  REQUIRE(check != nullptr);
  std::vector<Value> values(check->inputs.size());
  for (const Given& one : given) {
    const std::size_t at = input_at(*check, one.key);
    ReadValue read = read_value(check->inputs[at].row, one.text);
    REQUIRE_MESSAGE(read.trouble.empty(), read.trouble);
    values[at] = std::move(read.value);
  }
  CheckValues resolved = resolve_check(*check, values, plan);
  CheckOutcome outcome = work_out(*check, resolved);
  return {*check, std::move(resolved), std::move(outcome)};
}

From from(const Asked& asked, std::string_view key) { return asked.values.from[input_at(asked.check, key)]; }

std::string trouble(const char* check_key, const char* input, std::string_view text) {
  const Check& check = *find_check(check_key);
  return read_value(check.inputs[input_at(check, input)].row, text).trouble;
}

bool has(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

}  // namespace

// A mailing-list post of 2010 (seen): 200 ft of RG-213 measured with 4.5 dB/100 ft at 432 MHz, 9 dB one way, so the
// open end comes back 18 dB down; that is SWR 1.288 (20 log10 of rho, worked out apart), with no antenna at all.
TEST_CASE("roll: an SWR of 1.288 with nothing on the end is 9 dB of line") {
  Closeness off("200 ft of RG-213, one way", "dB");
  // three decimals of SWR are 0.0005 x dL/ds = 0.0005 x 8.686 / (s^2 - 1)
  const double digits_db = 0.0005 * 8.6859 / (1.288 * 1.288 - 1);
  for (const char* end : {"open", "shorted"}) {
    const Asked asked = ask("feedline.roll_loss", {{"swr", "1.288"}, {"far_end", end}});
    CHECK(off.within(asked["loss_db"], 9, digits_db));
    CHECK(asked.outcome.reason == "needs Frequency to compare with the catalogue");
    CHECK(asked.figure("of_catalogue_pct").state == State::unknown);
  }
}

// The handbooks' table of reflection: half the return loss of the SWR that the open end shows, to the digits of the
// table.
TEST_CASE("roll: half the return loss that the handbooks tabulate") {
  Closeness off("half of tabulated return loss", "dB");
  for (const test::ReflectionRow& row : test::kReflection) {
    const Asked asked = ask("feedline.roll_loss", {{"swr", exact_text(row.swr).c_str()}});
    CHECK(off.within(asked["loss_db"], row.return_loss_db / 2, 0.00026));
  }
}

// Line theory worked out apart: 30 m of stranded RG-58 at 28.4 MHz with 2.346 dB show 3.79 with the far end open.
TEST_CASE("roll: 30 m that read 3.79 are sound; the same reading on 10 m is not") {
  Closeness off("30 m of stranded RG-58", "dB");
  const Plan plan =
      plan_of({{L::antenna_frequency_mhz, 28.4}, {L::feedline_cable, "rg58c"}, {L::feedline_length_m, 30.0}});
  const Asked sound = ask("feedline.roll_loss", {{"swr", "3.79"}}, plan);
  CHECK(off.within(sound["loss_db"], 2.346, 0.005 * 8.6859 / (3.79 * 3.79 - 1)));
  // the catalogue's own law stands at 2.35 for this roll: sound
  CHECK(std::abs(sound["of_catalogue_pct"] -
                 100 * sound["loss_db"] / evaluate(plan)[R::feedline_matched_loss_db].value) < 1e-9);
  CHECK(sound.figure("of_catalogue_pct").state == State::holds);
  CHECK(sound.outcome.reason == "");
  CHECK(ask("feedline.roll_loss", {{"swr", "3.79"}, {"length_m", "10"}}, plan).figure("of_catalogue_pct").state ==
        State::fails);
  CHECK(ask("feedline.roll_loss", {{"swr", "3.79"}, {"length_m", "20"}}, plan).figure("of_catalogue_pct").state ==
        State::tight);
}

TEST_CASE("roll: the figure to put into the plan makes the plan lose what the roll loses") {
  const Outing outing = test::outing_of(
      {{L::antenna_frequency_mhz, 14.2}, {L::feedline_cable, "rg213"}, {L::feedline_length_m, 25.0}});
  const Asked asked = ask("feedline.roll_loss", {{"swr", "8"}}, resolve(outing.set));
  const CheckResult& row = asked.check.results[2];
  REQUIRE(row.put_into == L::feedline_roll_loss_pct);
  REQUIRE(refusal(row.put_into, asked["of_catalogue_pct"]) == "");
  const Plan then = resolve(with(outing, row.put_into, asked["of_catalogue_pct"]).set);
  CHECK(std::abs(evaluate(then)[R::feedline_matched_loss_db].value - asked["loss_db"]) < 1e-12);
}

TEST_CASE("roll: outside what the cable's law was tested in, the comparison says so") {
  const Asked asked =
      ask("feedline.roll_loss", {{"swr", "8"}, {"frequency_mhz", "14"}, {"cable", "flex_240"}, {"length_m", "30"}});
  CHECK(std::isfinite(asked["of_catalogue_pct"]));
  CHECK(has(asked.outcome.reason, "tested from 30 MHz to 220 MHz"));
}

TEST_CASE("roll: no length, no comparison") {
  const Asked asked =
      ask("feedline.roll_loss", {{"swr", "8"}, {"frequency_mhz", "14"}, {"cable", "rg213"}, {"length_m", "0"}});
  CHECK(std::isfinite(asked["loss_db"]));
  CHECK(asked.figure("of_catalogue_pct").state == State::unknown);
  CHECK(has(asked.outcome.reason, "no length"));
}

// Hayt and Buck, Engineering Electromagnetics, 8th ed.: Example 10.4 (2.0 dB leave 0.63) and drill D10.2 (12.75 dB
// leave 5.3 %). IARU Region 1 Technical Recommendation R.1: one S-unit is 6 dB. ISO 80000-3: 3 dB leave 50.1 %.
TEST_CASE("decibels: print and textbook") {
  struct Row {
    const char* db;
    double pct, step_pct, s_units;
  };
  const Row rows[] = {{"2", 63, 0.5, 1.0 / 3},
                      {"12.75", 5.3, 0.05, 2.125},
                      {"3", 50.1, 0.05, 0.5},
                      {"6", 25.1, 0.05, 1},
                      {"0", 100, 1e-9, 0},
                      {"10", 10, 1e-9, 10.0 / 6},
                      {"1.9382", 64, 0.005, 1.9382 / 6}};  // two lengths that lose a fifth each lose 36 %, not 40
  Closeness share("decibels, share that arrives", "%"), units("decibels, S-units", "");
  for (const Row& row : rows) {
    CAPTURE(std::string(row.db));
    const Asked asked = ask("feedline.decibels", {{"loss_db", row.db}, {"power_w", "100"}});
    CHECK(share.within(asked["arrives_pct"], row.pct, row.step_pct));
    CHECK(share.within(asked["arrives_w"], row.pct, row.step_pct));  // of 100 W
    CHECK(share.within(asked["arrives_w"] + asked["lost_w"], 100, 1e-12));
    CHECK(units.within(asked["s_units"], row.s_units, 1e-12));
  }
}

TEST_CASE("decibels: the plan's own loss and power, until others are given") {
  const Plan plan = plan_of({{L::radio_full_power_w, 40.0},
                             {L::antenna_frequency_mhz, 14.2},
                             {L::feedline_cable, "rg58c"},
                             {L::feedline_length_m, 15.0},
                             {L::feedline_measured_swr, 1.5}});
  const Outlook out = evaluate(plan);
  const Asked asked = ask("feedline.decibels", {}, plan);
  CHECK(std::abs(asked["arrives_w"] - out[R::feedline_power_to_antenna_w].value) < 1e-12);
  CHECK(std::abs(asked["arrives_pct"] - out[R::feedline_arrives_pct].value) < 1e-12);
  CHECK(from(asked, "power_w") == From::usual);  // transmit power follows full power
  const Asked others = ask("feedline.decibels", {{"loss_db", "3"}, {"power_w", "5000mW"}}, plan);
  CHECK(std::abs(others["arrives_w"] - 5 * std::pow(10, -0.3)) < 1e-12);
  CHECK(from(others, "power_w") == From::yours);
  const Asked nothing = ask("feedline.decibels", {});
  CHECK(nothing.outcome.reason == "needs Loss");
  CHECK(from(nothing, "loss_db") == From::missing);
  CHECK(from(nothing, "power_w") == From::usual);
  for (const Figure& figure : nothing.outcome.results) CHECK(figure.state == State::unknown);
}

// Quarter wave in a line: c VF / 4 f. 7.1 MHz and 0.66 give 6.967 m (10.556 m in air), worked out apart.
TEST_CASE("electrical length: a quarter wave at 7.1 MHz in solid polyethylene is 6.967 m") {
  Closeness off("quarter wave", "m"), turns("electrical length", "wavelengths");
  const Asked asked =
      ask("feedline.electrical_length", {{"frequency_mhz", "7100kHz"}, {"length_m", "6.967"}, {"cable", "rg213"}});
  CHECK(off.within(asked["quarter_wave_m"], 6.967, 0.0005));
  CHECK(off.within(asked["half_wave_m"], 2 * 6.967, 0.001));
  CHECK(turns.within(asked["wavelengths"], 0.25, 2e-5));
  // 1.54 ns a foot: a time-receiver maker's guide, as quoted in a test (seen second hand); its digits are 0.3 %
  const Asked foot =
      ask("feedline.electrical_length", {{"frequency_mhz", "10"}, {"length_m", "1ft"}, {"cable", "rg213"}});
  MESSAGE("one foot of RG-213: " << foot["wavelengths"] * 100 << " ns, guide 1.54");
  CHECK(std::abs(foot["wavelengths"] * 100 - 1.54) < 0.005);
}

TEST_CASE("electrical length: frequency and cable alone give the quarter wave, the length is asked for") {
  const Asked asked = ask("feedline.electrical_length", {{"frequency_mhz", "7.1"}, {"cable", "rg213"}});
  CHECK(std::isfinite(asked["quarter_wave_m"]));
  CHECK(asked.figure("wavelengths").state == State::unknown);
  CHECK(asked.outcome.reason == "needs Length");
  CHECK(ask("feedline.electrical_length", {{"frequency_mhz", "7.1"}}).outcome.reason == "needs Cable");
}

TEST_CASE("checks: plan values are taken where none are given, and marked as the plan has them") {
  const Plan plan =
      plan_of({{L::antenna_frequency_mhz, 7.1}, {L::feedline_cable, "foam_240"}, {L::feedline_length_m, 12.0}});
  const Plan nothing = resolve(Outing{}.set);
  for (const Check& check : checks()) {
    CAPTURE(std::string(check.key));
    const CheckValues values = resolve_check(check, std::vector<Value>(check.inputs.size()), plan);
    for (std::size_t i = 0; i < check.inputs.size(); ++i) {
      const CheckInput& input = check.inputs[i];
      CAPTURE(std::string(input.row.key));
      CHECK(std::isfinite(values.x[i]) == (values.from[i] != From::missing));
      // A usual value that rests on nothing that was set gives way to the check's own usual value.
      const bool rests_on_nothing = input.plan != L::count && plan.has(input.plan) &&
                                    plan.from[std::size_t(input.plan)] == From::usual &&
                                    plan[input.plan] == nothing[input.plan];
      if (input.plan != L::count && plan.has(input.plan) && !(rests_on_nothing && input.row.usual)) {
        CHECK(values.x[i] == plan[input.plan]);
        CHECK(values.from[i] == plan.from[std::size_t(input.plan)]);
      } else if (input.row.usual) {
        CHECK(values.from[i] == From::usual);
      }
    }
  }
}

TEST_CASE("checks: a value of the wrong kind counts as not given") {
  const Check& check = *find_check("feedline.electrical_length");
  std::vector<Value> given(check.inputs.size());
  given[input_at(check, "cable")] = 1e9;         // no key
  given[input_at(check, "length_m")] = "rg58c";  // no number
  given[input_at(check, "frequency_mhz")] = 7.1;
  const CheckValues values = resolve_check(check, given, resolve(Outing{}.set));
  CHECK(values.from[input_at(check, "cable")] == From::missing);
  CHECK(values.from[input_at(check, "length_m")] == From::missing);
  CHECK(work_out(check, values).reason == "needs Cable");
}

namespace {

/// Where the middles of all ranges together are impossible: values that can be true side by side.
struct Possible {
  const char *check, *key;
  double value;  // of a choice its option's index
};
constexpr Possible kPossible[] = {
    {"feedline.roll_loss", "swr", 10},
    {"feedline.swr_at_antenna", "swr", 1.5},
    {"feedline.swr_at_antenna", "matched_db", 1},
    {"feedline.length_by_dip", "frequency_mhz", 7.1},
    {"feedline.length_by_dip", "quarter_waves", 1},
    {"feedline.length_by_dip", "length_m", 6.9},
    {"feedline.my_cable", "first_swr", 8},
    {"feedline.my_cable", "first_mhz", 7},
    {"feedline.my_cable", "second_swr", 5},
    {"feedline.my_cable", "second_mhz", 14},
    {"feedline.lightest", "loss_db", 2},
    {"feedline.cable_data", "cable", 13},  // the one with every figure: 240 size foam
    {"feedline.power_handling", "cable", 13},
    {"battery.size", "keyed_min", 3},
    {"battery.size", "out_of_min", 10},
    {"battery.lasts", "keyed_min", 3},
    {"battery.lasts", "out_of_min", 10},
    {"battery.in_park", "meter_ah", 4},
    {"battery.in_park", "so_far_min", 60},
    {"battery.in_park", "rest_v", 13.1},
    {"battery.sheet", "first_a", 2},
    {"battery.sheet", "first_h", 20},
    {"battery.sheet", "second_a", 6.8},
    {"battery.sheet", "second_h", 5},
    {"battery.sheet", "third_a", 24},
    {"battery.sheet", "third_h", 1},
    {"radio.two_readings", "third_w", 40},
    {"radio.two_readings", "third_a", 13},
    {"radio.two_readings", "low_w", 10},
    {"radio.two_readings", "low_a", 7},
    {"radio.two_readings", "high_w", 100},
    {"radio.two_readings", "high_a", 20},
    {"radio.two_readings", "full_power_w", 100},
    {"radio.two_readings", "wanted_w", 50},
    {"radio.lead_resistance", "resting_v", 13.2},
    {"radio.lead_resistance", "minimum_v", 11.7},
    {"radio.lead_resistance", "current_a", 20},
    {"antenna.trim_on", "taken_off_m", 0.1},
    {"antenna.trim_on", "before_mhz", 6.9},
    {"antenna.trim_on", "after_mhz", 7.0},
    {"antenna.trim_on", "wanted_mhz", 7.1},
    {"antenna.whip", "height_m", 2.4},
    {"antenna.loading_coil", "height_m", 2.4},
    {"antenna.whip_sharpness", "height_m", 2.4},
    {"antenna.swr_band", "first_mhz", 7.0},
    {"antenna.swr_band", "first_swr", 2.0},
    {"antenna.swr_band", "second_mhz", 7.1},
    {"antenna.swr_band", "second_swr", 1.2},
    {"antenna.swr_band", "third_mhz", 7.2},
    {"antenna.swr_band", "third_swr", 2.2},
    {"antenna.swr_band", "fourth_mhz", 7.05},
    {"antenna.swr_band", "fourth_swr", 1.5},
    {"antenna.swr_band", "fifth_mhz", 7.15},
    {"antenna.swr_band", "fifth_swr", 1.6},
    {"antenna.transformer_heat", "core_siemens", 1e-4},
    {"antenna.transformer_heat", "loaded_siemens", 0.02},
};

/// Every input that the plan does not fill, optional ones too: the middle of its range, or the first choice, or
/// what is possible.
std::vector<Value> everything(const Check& check, const Plan& plan) {
  std::vector<Value> given(check.inputs.size());
  const CheckValues filled = resolve_check(check, given, plan);
  for (std::size_t i = 0; i < given.size(); ++i) {
    const Lever& row = check.inputs[i].row;
    if (filled.from[i] == From::missing && row.kind == Kind::choice)
      given[i] = std::string(row.options().front().key);
    if (filled.from[i] == From::missing && row.kind == Kind::number)
      given[i] = row.scale == Scale::log ? std::sqrt(row.least * row.most) : (row.least + row.most) / 2;
    for (const Possible& one : kPossible)
      if (check.key == one.check && row.key == one.key) {
        given[i] = one.value;
        if (row.kind == Kind::choice) given[i] = std::string(row.options()[std::size_t(one.value)].key);
      }
    if (row.kind == Kind::number && !std::holds_alternative<std::monostate>(given[i])) {
      CHECK(std::get<double>(given[i]) >= row.least);
      CHECK(std::get<double>(given[i]) <= row.most);
    }
  }
  return given;
}

}  // namespace

TEST_CASE(
    "checks: every check with everything given answers with finite figures, and with nothing given says what it "
    "needs") {
  const Plan plan = resolve(
      test::also(test::whole_outing(), {{L::antenna_frequency_mhz, 7.1}, {L::feedline_measured_swr, 1.5}}).set);
  for (const Possible& one : kPossible) {
    CAPTURE(std::string(one.check));
    const Check* check = find_check(one.check);
    REQUIRE(check != nullptr);
    (void)input_at(*check, one.key);
  }
  int asked = 0, lacking = 0, with_care = 0;
  for (const Check& check : checks()) {
    CAPTURE(std::string(check.key));
    ++asked;
    const CheckOutcome whole = work_out(check, resolve_check(check, everything(check, plan), plan));
    CAPTURE(whole.reason);
    with_care += whole.reason.empty() ? 0 : 1;
    CHECK(whole.reason.find("needs ") != 0);
    REQUIRE(whole.results.size() == check.results.size());
    for (std::size_t i = 0; i < whole.results.size(); ++i) {
      CAPTURE(std::string(check.results[i].row.key));
      CHECK(std::isfinite(whole.results[i].value));
      CHECK(whole.results[i].state != State::unknown);
      CHECK((whole.results[i].state != State::none) == (check.results[i].limit != check.results[i].ease));
    }
    // of the line's own checks no answer wants care here, but three give part of their answer in words
    const bool in_words = check.key == "feedline.cable_data" || check.key == "feedline.power_handling" ||
                          check.key == "feedline.lightest";
    if (check.link == Link::feedline) CHECK(whole.reason.empty() != in_words);

    const CheckValues empty = resolve_check(check, std::vector<Value>(check.inputs.size()), resolve(Outing{}.set));
    const CheckOutcome none = work_out(check, empty);
    bool lacks = false;
    for (std::size_t i = 0; i < check.inputs.size(); ++i)
      lacks = lacks || (empty.from[i] == From::missing && !check.inputs[i].row.optional);
    lacking += lacks ? 1 : 0;
    if (!lacks) continue;  // its usual values are enough
    CHECK(none.reason.find("needs ") == 0);
    for (const Figure& figure : none.results) CHECK(figure.state == State::unknown);
  }
  MESSAGE(asked << " checks, " << with_care << " answer with a word of care, " << lacking
                << " need something that has no usual value");
  CHECK(lacking > asked / 2);
}

TEST_CASE("read value: units as people write them") {
  const auto read = [](L id, const char* text) {
    const ReadValue got = read_value(lever(id), text);
    CHECK_MESSAGE(got.trouble.empty(), got.trouble);
    const double* x = std::get_if<double>(&got.value);
    return x ? *x : std::nan("");
  };
  CHECK(std::abs(read(L::feedline_length_m, "50ft") - 15.24) < 1e-12);
  CHECK(read(L::feedline_length_m, "7,5") == 7.5);
  CHECK(std::abs(read(L::antenna_frequency_mhz, "14060kHz") - 14.06) < 1e-12);
  CHECK(read(L::feedline_measured_swr, "3:1") == 3);
  CHECK(std::get<std::string>(read_value(lever(L::feedline_cable), "rg58c").value) == "rg58c");
}

TEST_CASE("read value: refusals name the key and what would do") {
  CHECK(trouble("feedline.electrical_length", "length_m", "600") == "length_m: 600 is outside 0 to 500 m");
  CHECK(has(trouble("feedline.electrical_length", "frequency_mhz", "144 MHz"),
            "frequency_mhz: 144 MHz is outside 1.8 to 54 MHz"));
  CHECK(has(trouble("feedline.electrical_length", "cable", "rg999"), "cable: \"rg999\" is not one of rg174, "));
  CHECK(has(trouble("feedline.roll_loss", "far_end", ""), "open, shorted"));
  CHECK(has(trouble("feedline.roll_loss", "swr", "1"), "swr: 1 is outside 1.01 to 1000"));
  for (const char* text : {"", "many", "5 W", "1e999", "nan", "inf", "--5", "5 m m"}) {
    CAPTURE(std::string(text));
    CHECK(has(trouble("feedline.electrical_length", "length_m", text), "length_m: "));
  }
  // whatever is typed, the answer stays a line
  CHECK(trouble("feedline.electrical_length", "cable", std::string(100'000, 'x')).size() < 1000);
  CHECK(trouble("feedline.electrical_length", "length_m", std::string(100'000, '9')).size() < 1000);
}
