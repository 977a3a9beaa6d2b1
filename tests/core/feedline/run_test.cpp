// Cables, plugs and choke in a row: against the single line, against a walk round the phases.
#include "core/feedline/run.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/units.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::feedline;
using gs::test::Closeness;

namespace {

struct Random {
  std::mt19937_64 engine{41};
  double between(double low, double high) {
    return low + (high - low) * std::uniform_real_distribution<double>(0, 1)(engine);
  }
};

Run random_run(Random& random) {
  Run run;
  run.add(pad(random.between(0, 0.2), 50));
  const double second_z0 = std::floor(random.between(0, 3)) * 25 + 50;
  run.add(line_from_nominal(50, 0.66, random.between(0.2, 12), random.between(0, 1), 14.2, random.between(0, 40)));
  run.add(
      line_from_nominal(second_z0, 0.8, random.between(0.2, 8), random.between(0, 1), 14.2, random.between(0, 30)));
  if (random.between(0, 1) < 0.5) run.add(pad(random.between(0, 0.5), second_z0));
  return run;
}

Complex load_of(double rho, double phase) {
  const Complex gamma = std::polar(rho, phase);
  return 50.0 * (1.0 + gamma) / (1.0 - gamma);
}

}  // namespace

TEST_CASE("run of one line: the same as the line") {
  Random random;
  Closeness off("run of one line, its loss range against the line's", "dB");
  for (int i = 0; i < 500; ++i) {
    const Line line =
        line_from_nominal(50, 0.66, random.between(0.1, 20), random.between(0, 2), 14.2, random.between(0, 60));
    Run run;
    run.add(line);
    const double at_load = random.between(1, 30);
    const LossRange by_run = loss_range_db(run, 50, at_load), by_line = loss_range_db(line, 50, at_load);
    CHECK(off.within(by_run.least_db, by_line.least_db, 1e-11));
    CHECK(off.within(by_run.most_db, by_line.most_db, 1e-11));
    CHECK(total_loss_db(run, {30, 40}) == total_loss_db(line, {30, 40}));
    CHECK(input_impedance_ohm(run, {30, 40}) == input_impedance_ohm(line, {30, 40}));
  }
}

TEST_CASE("run: a cable cut in two is the cable") {
  Random random;
  for (int i = 0; i < 300; ++i) {
    const double whole_m = random.between(1, 60), cut_m = random.between(0, whole_m);
    const auto piece = [&](double m) { return line_from_nominal(50, 0.66, 4, 0.5, 14.2, m); };
    Run two;
    two.add(piece(cut_m));
    two.add(piece(whole_m - cut_m));
    const Complex load{random.between(1, 500), random.between(-500, 500)};
    CHECK(total_loss_db(two, load) == doctest::Approx(total_loss_db(piece(whole_m), load)).epsilon(1e-9));
    const Complex zin = input_impedance_ohm(piece(whole_m), load);
    CHECK(std::abs(input_impedance_ohm(two, load) - zin) < 1e-9 * std::abs(zin));
  }
}

// The extremes stand in closed form; a walk round the phases must lie within them and reach them.
TEST_CASE("run: ranges over the phase hold every phase and nothing more") {
  Random random;
  Closeness loss_off("run, loss over 720 phases", "dB"), swr_off("run, SWR over 720 phases, relative", "");
  for (int i = 0; i < 200; ++i) {
    const Run run = random_run(random);
    const double at_load = 1 + 15 * std::pow(random.between(0, 1), 2), rho = reflection_from_swr(at_load);
    const LossRange loss = loss_range_db(run, 50, at_load);
    const SwrRange at_radio = swr_range_at_radio(run, 50, at_load);
    double least_db = 1e9, most_db = 0, least = 1e9, most = 0;
    for (int k = 0; k < 720; ++k) {
      const Complex load = load_of(rho, 2 * kPi * k / 720);
      const double db = total_loss_db(run, load), seen = swr(input_impedance_ohm(run, load), 50);
      least_db = std::min(least_db, db);
      most_db = std::max(most_db, db);
      least = std::min(least, seen);
      most = std::max(most, seen);
    }
    CAPTURE(i);
    CHECK(loss.least_db <= least_db + 1e-9);
    CHECK(loss.most_db >= most_db - 1e-9);
    CHECK(loss_off.within(loss.least_db, least_db, 2e-4));
    CHECK(loss_off.within(loss.most_db, most_db, 2e-4));
    CHECK(at_radio.least <= least * (1 + 1e-9));
    CHECK(at_radio.most >= most * (1 - 1e-9));
    CHECK(swr_off.within(at_radio.least / least, 1, 2e-3));
    CHECK(swr_off.within(at_radio.most / most, 1, 2e-3));
    CHECK(at_radio.typical >= at_radio.least);
    CHECK(at_radio.typical <= at_radio.most);
  }
}

TEST_CASE("run: an SWR read at the radio leads back to every load that shows it") {
  Random random;
  for (int i = 0; i < 400; ++i) {
    const Run run = random_run(random);
    const double rho = std::sqrt(random.between(0, 0.98));
    const Complex load = load_of(rho, random.between(0, 2 * kPi));
    const double seen = swr(input_impedance_ohm(run, load), 50);
    const SwrRange back = swr_range_at_load(run, 50, seen);
    const LossRange loss = loss_range_from_radio_db(run, 50, seen);
    const double truly = swr(load, 50), truly_db = total_loss_db(run, load);
    CAPTURE(i);
    CHECK(back.least <= truly * (1 + 1e-6));
    CHECK(back.most >= truly * (1 - 1e-6));
    CHECK(loss.least_db <= truly_db + 1e-6);
    CHECK(loss.most_db >= truly_db - 1e-6);
  }
  // behind 5 dB an open end reads 1.92: nothing can read 4
  Run run;
  run.add(line_from_nominal(50, 0.66, 5, 5, 14.2, 50));
  CHECK(swr_range_at_radio(run, 50, INFINITY).most == doctest::Approx(swr_of_open_end(5)).epsilon(1e-9));
  CHECK(std::isnan(swr_range_at_load(run, 50, 4).least));
  CHECK(std::isinf(swr_range_at_load(run, 50, swr_of_open_end(5)).most));
  CHECK(std::isinf(loss_range_from_radio_db(run, 50, swr_of_open_end(5)).most_db));
}

TEST_CASE("run: places along the way begin and end with what is known there") {
  Run run;
  run.add(pad(0.1, 50));
  run.add(line_from_nominal(50, 0.66, 5, 0.4, 14.2, 12));
  run.add(line_from_nominal(75, 0.66, 4, 0.4, 14.2, 8));
  const Complex load{120, -60};
  const std::vector<Place> way = places(run, load, 100, 50, 40);
  REQUIRE(way.size() == 82);
  CHECK(way.front().from_radio_m == doctest::Approx(0));
  CHECK(way.back().from_radio_m == doctest::Approx(20));
  CHECK(way.back().swr == doctest::Approx(swr(load, 50)).epsilon(1e-9));
  const double arrives_w = 100 * std::pow(10, -total_loss_db(run, load) / 10);
  CHECK(way.back().ampere_rms == doctest::Approx(std::sqrt(arrives_w / 120)).epsilon(1e-9));
  CHECK(way.back().volt_rms == doctest::Approx(std::abs(load) * way.back().ampere_rms).epsilon(1e-9));
  double most_v = 0;
  for (const Place& place : way) most_v = std::max(most_v, place.volt_rms);
  CHECK(most_v <= highest_voltage_v(100, 75, 10));
  CHECK(places(run, Complex{0, 5}, 100, 50, 40).empty());
  // SWR 10 on 50 ohm, 100 W: 223.6 V rms (definition of SWR, figure worked out apart)
  CHECK(highest_voltage_v(100, 50, 10) == doctest::Approx(223.607).epsilon(1e-5));
}

TEST_CASE("run: hundreds of decibels hide the far end and stay in range") {
  Run run;
  run.add(line_from_nominal(50, 0.66, 150, 5, 14.2, 100));
  run.add(line_from_nominal(75, 0.66, 150, 5, 14.2, 100));
  CHECK(std::isfinite(swr_range_at_radio(run, 50, 5).most));
  CHECK(std::isinf(swr_range_at_load(run, 50, 1.1).most));
  CHECK(loss_range_db(run, 50, 3).least_db > 290);
  CHECK(loss_range_from_radio_db(run, 50, 1.1).typical_db > 290);
}
