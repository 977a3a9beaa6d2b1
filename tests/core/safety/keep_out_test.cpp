// Laws of the keep-out distance on seeded emissions, and what impossible input gets.
#include "core/safety/keep_out.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <limits>
#include <random>

#include "core/safety/small_antenna.h"

using namespace gs::safety;

namespace {

constexpr std::uint64_t kSeed = 0x73616665;
constexpr int kTrials = 10000;

struct Draw {
  std::mt19937_64 bits{kSeed};
  double between(double least, double most) { return least + (most - least) * (double(bits() >> 11) * 0x1p-53); }
  double log_between(double least, double most) { return std::exp(between(std::log(least), std::log(most))); }
  Emission emission() {
    return {log_between(1.8, 54), log_between(0.01, 2000), between(-20, 15), between(0.05, 1), between(0.02, 1)};
  }
};

}  // namespace

TEST_CASE("keep-out: never falls when power, duty, gain or busiest share rise; power and distance are inverse") {
  Draw draw;
  std::printf("  seed %llu\n", static_cast<unsigned long long>(kSeed));
  double worst_inverse = 0;
  for (int trial = 0; trial < kTrials; ++trial) {
    const Emission sent = draw.emission();
    const Rule rule = Rule(trial % 3);
    const Audience audience = Audience(trial / 3 % 2);
    const Build build = Build(trial / 6 % 3);
    const double ground = trial % 5 ? kUsualGround : kFullReflection;
    const bool touchable = trial % 7 != 0;
    const KeepOut base = keep_out(sent, audience, rule, ground, build, touchable);
    CAPTURE(trial);
    CHECK(std::isfinite(base.shown_m));
    CHECK(base.shown_m >= base.formula_m - 1e-9);
    CHECK(base.shown_m >= base.near_field_m - 1e-9);
    if (touchable) CHECK(base.shown_m >= kArmsReachM);
    if (build != Build::as_a_wire) CHECK(base.shown_m >= kSmallAntennaM);
    CHECK(base.shown_m < std::max({base.formula_m, base.near_field_m, 2.0}) + 0.1 + 1e-9);
    CHECK(std::abs(base.shown_m * 10 - std::round(base.shown_m * 10)) < 1e-9);
    CHECK(base.within_reactive_zone == (base.shown_m < reactive_zone_m(sent.frequency_mhz)));
    for (int what = 0; what < 4; ++what) {
      Emission more = sent;
      if (what == 0) more.peak_power_w *= draw.between(1, 3);
      if (what == 1) more.duty = draw.between(sent.duty, 1);
      if (what == 2) more.gain_dbi += draw.between(0, 6);
      if (what == 3) more.busiest_share = draw.between(sent.busiest_share, 1);
      const KeepOut after = keep_out(more, audience, rule, ground, build, touchable);
      CHECK(after.formula_m >= base.formula_m * (1 - 1e-12));
      CHECK(after.near_field_m >= base.near_field_m * (1 - 1e-9));
      CHECK(after.shown_m >= base.shown_m);
      CHECK(evaluation_owed_within_m(more) >= evaluation_owed_within_m(sent));
    }
    const double back_w = peak_power_for_distance_w(sent, base.formula_m, audience, rule, ground);
    worst_inverse = std::max(worst_inverse, std::abs(back_w / sent.peak_power_w - 1));
    CHECK(std::abs(of_limit_pct(sent, base.formula_m, audience, rule, ground) - 100) < 1e-9);
    Emission most = sent;
    const double distance_m = draw.log_between(0.5, 50);
    most.peak_power_w = most_peak_power_w(sent, distance_m, audience, rule, ground, build);
    const KeepOut at_most = keep_out(most, audience, rule, ground, build, false);
    CHECK(std::max(at_most.formula_m, at_most.near_field_m) <= distance_m * (1 + 1e-9));
    CHECK(std::max(at_most.formula_m, at_most.near_field_m) >= distance_m * (1 - 1e-6));
  }
  std::printf("  power back from its distance: worst %.1e\n", worst_inverse);
  CHECK(worst_inverse < 1e-12);
}

TEST_CASE("keep-out: what binds is named") {
  const auto of = [](double mhz, double power_w, Build build, bool touchable) {
    return keep_out({mhz, power_w, 2.15, 1, 1}, Audience::passer_by, Rule::us, kUsualGround, build, touchable);
  };
  CHECK(of(7.1, 5, Build::as_a_wire, true).binds == Binds::arms_reach);
  CHECK(of(7.1, 5, Build::as_a_wire, true).shown_m == kArmsReachM);
  CHECK(of(28.5, 100, Build::as_a_wire, true).binds == Binds::formula);
  CHECK(of(28.5, 100, Build::as_a_wire, true).within_reactive_zone == false);
  CHECK(of(7.1, 100, Build::as_a_wire, false).within_reactive_zone);
  CHECK(of(7.1, 0.01, Build::short_whip, true).binds == Binds::small_antenna);
  CHECK(of(7.1, 100, Build::small_loop, true).binds == Binds::near_field);
}

TEST_CASE("exposure: up to a milliwatt nothing is owed, and outside the tables nothing is claimed") {
  CHECK(evaluation_owed_within_m({14, 0.001, 20, 1, 1}) == 0);
  CHECK(evaluation_owed_within_m({14, 0.0011, 0, 1, 1}) > 3);
  CHECK(std::isnan(evaluation_owed_within_m({0.1, 5, 0, 1, 1})));
  CHECK(std::isnan(limit_w_per_m2(1000, Audience::passer_by, Rule::us)));
  CHECK(find_exposure_limit(0.05, Audience::passer_by, Rule::germany) == nullptr);
}

TEST_CASE("exposure: impossible input has no distance") {
  const double nan = std::numeric_limits<double>::quiet_NaN(), endless = std::numeric_limits<double>::infinity();
  const Emission wrong[] = {{14, 0, 2, 1, 1},   {14, -5, 2, 1, 1}, {14, 5, nan, 1, 1}, {14, 5, 2, 0, 1},
                            {14, 5, 2, 1.1, 1}, {14, 5, 2, 1, 0},  {14, 5, 2, 1, 2},   {14, endless, 2, 1, 1},
                            {0, 5, 2, 1, 1},    {nan, 5, 2, 1, 1}, {-14, 5, 2, 1, 1},  {14, nan, 2, 1, 1}};
  for (const Emission& sent : wrong)
    for (const Build build : {Build::as_a_wire, Build::short_whip, Build::small_loop}) {
      CHECK(std::isnan(keep_out(sent, Audience::passer_by, Rule::us, kUsualGround, build, true).shown_m));
      CHECK(std::isnan(evaluation_owed_within_m(sent)));
    }
  CHECK(std::isnan(power_density_w_per_m2({14, 5, 2, 1, 1}, 0, 1)));
  CHECK(std::isnan(of_limit_pct({14, 5, 2, 1, 1}, -1, Audience::passer_by, Rule::us, 1)));
  CHECK(std::isnan(peak_power_for_distance_w({14, 5, 2, 1, 1}, 0, Audience::passer_by, Rule::us, 1)));
  CHECK(std::isnan(busiest_share(0, 5, 30)));
  CHECK(std::isnan(busiest_share(5, -1, 30)));
}

TEST_CASE("averages: the busiest share lies between the plain share and all of it") {
  Draw draw;
  for (int trial = 0; trial < kTrials; ++trial) {
    const double on = draw.log_between(0.05, 60), off = draw.log_between(0.05, 60), window = trial % 2 ? 6 : 30;
    const double share = busiest_share(on, off, window);
    CHECK(share >= on / (on + off) * (1 - 1e-12));
    CHECK(share <= 1);
    CHECK(busiest_share(on * 1.3, off, window) >= share * (1 - 1e-12));
    CHECK(busiest_share(on, off, 6) <= share_of_shorter_window(busiest_share(on, off, 30), 30, 6) * (1 + 1e-12));
  }
  CHECK(busiest_share(1, 0, 30) == 1);
  CHECK(share_of_shorter_window(0.1, 30, 6) == doctest::Approx(0.5).epsilon(1e-12));
  CHECK(share_of_shorter_window(0.4, 6, 30) == 0.4);
}

// 47 CFR 1.1310, ICNIRP 2020 and the German order: one averaging time a rule and audience.
TEST_CASE("averages: the averaging time does not depend on frequency") {
  for (const ExposureLimit& row : exposure_limits())
    CHECK(averaging_min(row.audience, row.rule) == row.averaging_min);
  CHECK(averaging_min(Audience::passer_by, Rule::us) == 30);
  CHECK(averaging_min(Audience::radio_operator, Rule::us) == 6);
}
