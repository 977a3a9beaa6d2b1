// The checks of sky, pace, clock and kit: everywhere within their ranges they answer, or say why not.
#include "core/outing/checks_sky.h"

#include <cmath>
#include <cstdio>
#include <limits>
#include <random>
#include <string>
#include <vector>

#include "tests/reference/feedline_closeness.h"

using namespace gs;

namespace {

constexpr unsigned kSeed = 20260616;
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

std::string worked(const Check& check, const std::vector<double>& in, std::vector<double>& out) {
  out.assign(check.results.size(), kNaN);
  return check.work(in, out);
}

}  // namespace

TEST_CASE("sky checks: keys are unique, rows are whole") {
  std::vector<std::string> keys;
  for (const Check& check : sky_checks()) {
    CAPTURE(std::string(check.key));
    for (const std::string& key : keys) CHECK(key != check.key);
    keys.emplace_back(check.key);
    CHECK(check.question.back() == '?');
    CHECK(check.measure.size() > 2);
    for (const CheckInput& input : check.inputs) {
      CHECK(input.row.least < input.row.most);
      CHECK_FALSE(input.row.source.empty());
    }
    for (const CheckResult& result : check.results) CHECK_FALSE(result.row.source.empty());
  }
}

TEST_CASE("sky checks: nothing given, something needed") {
  std::vector<double> out;
  for (const Check& check : sky_checks()) {
    CAPTURE(std::string(check.key));
    CHECK(worked(check, std::vector<double>(check.inputs.size(), kNaN), out).find("needs ") == 0);
    for (const double x : out) CHECK(std::isnan(x));
  }
}

TEST_CASE("sky checks property: from corner to corner every result is finite, or a reason is given") {
  std::printf("  seed %u\n", kSeed);
  std::mt19937_64 engine(kSeed);
  std::vector<double> out;
  for (const Check& check : sky_checks()) {
    CAPTURE(std::string(check.key));
    int known = 0, all = 0;
    for (int trial = 0; trial < 400; ++trial) {
      std::vector<double> in;
      for (const CheckInput& input : check.inputs) {
        const double share = double(engine() >> 11) * 0x1p-53;
        const unsigned kind = unsigned(engine() % 8);
        double x = input.row.least + share * (input.row.most - input.row.least);
        if (kind == 0) x = input.row.least;
        if (kind == 1) x = input.row.most;
        if (kind == 2 && input.row.optional) x = kNaN;
        in.push_back(x);
      }
      const std::string reason = worked(check, in, out);
      for (const double x : out) {
        ++all;
        known += std::isfinite(x);
        CHECK((std::isfinite(x) || !reason.empty()));
      }
    }
    std::printf("  %s: %d of %d results known\n", std::string(check.key).c_str(), known, all);
    CHECK(known > all / 4);
  }
}

TEST_CASE("sky checks: what is impossible is said") {
  const auto said = [](std::string_view key, const std::vector<double>& in) {
    for (const Check& check : sky_checks()) {
      if (check.key != key) continue;
      std::vector<double> out;
      return worked(check, in, out);
    }
    return std::string("no such check");
  };
  CHECK(said("sky.sun", {40, 0, 2026, 2, 30, 0, 720}) == "this month has no such day");
  CHECK(said("sky.sun", {80, 0, 2026, 6, 21, 0, 720}) == "the sun stays up all day");
  CHECK(said("sky.sun", {80, 0, 2026, 12, 21, 0, 720}) == "the sun stays down all day");
  CHECK(said("sky.hop", {9000, 300, 1}) == "so long a hop lies behind the horizon");
  CHECK(said("sky.skip", {50, 5.7, 18.17, 300}) == "at no angle does this layer send that frequency back");
  CHECK(said("clock.on_air", {600, 540, 10, 10}).find("leave by is not after arrival") == 0);
  CHECK(said("clock.on_air", {600, 615, 10, 10}).find("set-up and pack-down fill the stay: 5 min too little") == 0);
  CHECK(said("clock.utc_days", {0, 700, 3, 600, 3, 10}) == "the later contacts begin before the first ones end");
  CHECK(said("pace.counted", {0, 30, 0, 0, 10, 60}).find("no contact was counted") == 0);
  CHECK(said("kit.weight", {100, 0, 0, 0, 0, 200, kNaN}) == "more is left at home than there was");
  CHECK(said("kit.flight", {20, 12.8}) == "not allowed on board");
}
