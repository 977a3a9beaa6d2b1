// What stands along the line over every phase: against the closed forms at both ends, and against single loads.
#include "core/feedline/place_range.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <random>

#include "core/units.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::feedline;

namespace {

constexpr double kMeter = 50;

class Draws {
 public:
  explicit Draws(std::uint64_t seed) : random_(seed) {}
  double between(double least, double most) { return least + (most - least) * (double(random_() >> 11) * 0x1p-53); }
  Run run() {
    Run run;
    run.add(pad(0.1, kMeter));
    // one statement each: the order in which arguments are drawn is the compiler's
    const double z0_ohm = between(0, 1) < 0.5 ? 50 : 75, per_root_mhz = between(0.5, 6), per_mhz = between(0, 1);
    const double mhz = between(2, 50), length_m = between(1, 60);
    run.add(line_from_nominal(z0_ohm, 0.66, per_root_mhz, per_mhz, mhz, length_m));
    return run;
  }

 private:
  std::mt19937_64 random_;
};

}  // namespace

TEST_CASE("along the line, phase unknown: the ends are the closed forms of the SWR's range") {
  Draws draw(0x9a2e);
  test::Closeness radio("SWR range at the radio against the closed form", "of it"),
      antenna("SWR range at the antenna against the closed form", "of it");
  for (int i = 0; i < 300; ++i) {
    const Run run = draw.run();
    const double swr = draw.between(1.05, 8);
    const auto from_load = place_ranges(run, kMeter, swr, ReadAt::antenna, 100, 4);
    REQUIRE_FALSE(from_load.empty());
    const SwrRange at_radio = swr_range_at_radio(run, kMeter, swr);
    // the first place lies behind the plugs: 0.1 dB nearer to the load
    CHECK(from_load.front().swr_most >= at_radio.most * (1 - 1e-3));
    CHECK(from_load.back().swr_least == doctest::Approx(swr));
    CHECK(from_load.back().swr_most == doctest::Approx(swr));
    const auto bare = [&] {
      Run alone;
      alone.add(run.pieces[1]);
      return alone;
    }();
    const SwrRange exact = swr_range_at_radio(bare, kMeter, swr);
    const auto found = place_ranges(bare, kMeter, swr, ReadAt::antenna, 100, 4);
    CHECK(radio.within(found.front().swr_most / exact.most, 1, 1e-3));
    CHECK(radio.within(found.front().swr_least / exact.least, 1, 1e-3));
    const SwrRange behind = swr_range_at_load(bare, kMeter, swr);
    const auto back = place_ranges(bare, kMeter, swr, ReadAt::radio, 100, 4);
    if (std::isnan(behind.least)) {
      CHECK(back.empty());
    } else if (behind.most < 100) {
      REQUIRE_FALSE(back.empty());
      CHECK(antenna.within(back.back().swr_most / behind.most, 1, 5e-3));
      CHECK(antenna.within(back.back().swr_least / behind.least, 1, 2e-3));
      CHECK(back.front().swr_least == doctest::Approx(swr));
    }
  }
}

TEST_CASE("along the line, phase unknown: every single load lies within the band") {
  Draws draw(0x77b1);
  int loads = 0;
  for (int i = 0; i < 200; ++i) {
    const Run run = draw.run();
    const double swr = draw.between(1, 20), phase = draw.between(0, 2 * kPi);
    const auto band = place_ranges(run, kMeter, swr, ReadAt::antenna, 100, 12);
    const Complex gamma = std::polar(reflection_from_swr(swr), phase);
    const auto one = places(run, kMeter * (1.0 + gamma) / (1.0 - gamma), 100, kMeter, 12);
    REQUIRE(one.size() == band.size());
    for (std::size_t k = 0; k < one.size(); ++k) {
      const double swing_v = band[k].volt_most - band[k].volt_least;
      CHECK(one[k].volt_rms <= band[k].volt_most + 2e-3 * swing_v + 1e-9);
      CHECK(one[k].volt_rms >= band[k].volt_least - 2e-3 * swing_v - 1e-9);
      CHECK(one[k].swr <= band[k].swr_most * 1.01);
      CHECK(one[k].swr >= band[k].swr_least * 0.99);
    }
    ++loads;
  }
  CHECK(loads == 200);
}

// A matched load has one phase only, a flat line one voltage: the root of watts times ohms (Ohm's law).
TEST_CASE("along the line, phase unknown: SWR 1 is one line, and what cannot be is empty") {
  Run run;
  run.add(line_from_nominal(50, 0.66, 0, 0, 14, 20));
  for (const PlaceRange& place : place_ranges(run, kMeter, 1, ReadAt::antenna, 100, 6)) {
    CHECK(place.volt_least == doctest::Approx(std::sqrt(100 * 50.0)));
    CHECK(place.volt_most == doctest::Approx(place.volt_least));
    CHECK(place.swr_most == doctest::Approx(1));
  }
  CHECK(place_ranges(run, kMeter, 0.9, ReadAt::antenna, 100, 6).empty());
  CHECK(place_ranges(run, kMeter, INFINITY, ReadAt::antenna, 100, 6).empty());
  CHECK(place_ranges(run, kMeter, 2, ReadAt::antenna, 0, 6).empty());
  // a lossy roll cannot show this SWR to the radio, whatever hangs on it
  Run lossy;
  lossy.add(line_from_nominal(50, 0.66, 20, 0, 14, 50));
  CHECK(place_ranges(lossy, kMeter, 5, ReadAt::radio, 100, 6).empty());
}
