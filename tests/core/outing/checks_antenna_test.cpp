// The small questions about the antenna: whatever is typed within the ranges, an answer or a reason.
#include "core/outing/checks_antenna.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <vector>

using namespace gs;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

double unit_of(std::mt19937_64& bits) { return double(bits() >> 11) / 9007199254740992.0; }

const Check& check_of(std::string_view key) {
  for (const Check& row : antenna_checks())
    if (row.key == key) return row;
  FAIL("no such check");
  return antenna_checks()[0];
}

struct Answer {
  std::vector<double> out;
  std::string reason;
};
Answer answer(const Check& check, const std::vector<double>& in) {
  REQUIRE(in.size() == check.inputs.size());
  Answer got{std::vector<double>(check.results.size(), kNaN), {}};
  got.reason = check.work(in, got.out);
  return got;
}

double option_at(const Lever& row, std::string_view key) {
  for (std::size_t i = 0; i < row.options().size(); ++i)
    if (row.options()[i].key == key) return double(i);
  return kNaN;
}

}  // namespace

TEST_CASE("antenna checks: anything within the ranges gets an answer or a reason, never an infinity") {
  constexpr std::uint64_t kSeed = 1825;
  std::mt19937_64 bits(kSeed);
  MESSAGE("seed " << kSeed);
  for (const Check& check : antenna_checks()) {
    CAPTURE(std::string(check.key));
    int answered = 0;
    for (int i = 0; i < 4000; ++i) {
      std::vector<double> in;
      for (const CheckInput& input : check.inputs) {
        const Lever& row = input.row;
        const double share = unit_of(bits);
        // Small figures as often as large ones, now and then an end of the range or nothing at all.
        double x = row.least + (row.most - row.least) * share * share * share;
        if (row.digits == 0) x = std::round(x);
        if (row.kind == Kind::choice)
          x = double(bits() % row.options().size());
        else if (bits() % 16 == 0)
          x = bits() % 2 ? row.least : row.most;
        in.push_back(bits() % 24 == 0 ? kNaN : x);
      }
      const Answer got = answer(check, in);
      bool all = true;
      for (const double x : got.out) {
        REQUIRE_FALSE(std::isinf(x));
        all = all && std::isfinite(x);
      }
      REQUIRE((all || !got.reason.empty()));
      answered += all;
    }
    CHECK(answered > 400);  // the ranges are not mostly impossible
  }
}

TEST_CASE("antenna checks: what cannot be has a reason that says so") {
  const auto reason = [](std::string_view key, std::vector<double> in) { return answer(check_of(key), in).reason; };
  const Lever& kind = check_of("antenna.cut_length").inputs[0].row;
  CHECK(reason("antenna.cut_length", {option_at(kind, "loaded_whip"), 7.1, 0}).find("coil") != std::string::npos);
  CHECK(reason("antenna.trim_on", {0.15, 1.824, 1.818, 1.834}).find("doubted") != std::string::npos);
  CHECK(reason("antenna.higher_resonance", {7, 4, kNaN}).find("odd") != std::string::npos);
  CHECK(reason("antenna.trim", {20, 7.0, 8.5}).find("half of it") != std::string::npos);
  CHECK(reason("antenna.v_reach", {5, 10, 1}).find("shorter than the drop") != std::string::npos);
  CHECK(reason("antenna.arm_sag", {30, 109.25, 60}).find("doubted") != std::string::npos);
  CHECK(reason("antenna.whip", {15, 14, 0, 0.005, 200, 10}).find("quarter wave") != std::string::npos);
  CHECK(reason("antenna.loading_coil", {0.2, 1.8, 95, 0.2}).find("thickness") != std::string::npos);
  CHECK(reason("antenna.transformer_heat", {0.03, 0.02, 1}).find("core alone") != std::string::npos);
  CHECK(reason("antenna.swr_band", {7, 2, 7.1, 2, 7.2, 2, kNaN, kNaN, kNaN, kNaN}).find("no dip") !=
        std::string::npos);
  CHECK(reason("antenna.swr_band", {7, 5, 7.1, 3, 7.2, 5, kNaN, kNaN, kNaN, kNaN}).find("above 2") !=
        std::string::npos);
}

TEST_CASE("antenna checks: room to spare fails, is tight, holds; and says what binds") {
  const Check& fits = check_of("antenna.fits");
  const double v = option_at(fits.inputs[0].row, "inverted_v"), dipole = option_at(fits.inputs[0].row, "dipole");
  const auto outcome = [&](double kind, double apex_m, double span_m) {
    return work_out(fits, {{kind, 7.1, apex_m, span_m, 2.5, 0}, std::vector<From>(6, From::yours)});
  };
  // legs of 10.046 m from 6 m: 9.417 m out each way with half a metre of tie, 19.83 m in all
  CHECK(outcome(v, 6, 19).results[0].state == State::fails);
  CHECK(outcome(v, 6, 19).reason == "free span and support together are too little for it");
  CHECK(outcome(v, 6, 20.5).results[0].state == State::tight);
  CHECK(outcome(v, 6, 22).results[0].state == State::holds);
  CHECK(outcome(dipole, 8, 18).reason == "the free span is too short for it");
  CHECK(outcome(dipole, 2, 30).reason == "the support is too low for it");
}
