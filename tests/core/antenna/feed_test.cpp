#include "core/antenna/feed.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <set>
#include <string>

#include "core/antenna/match.h"
#include "core/antenna/radials.h"

using namespace gs;
using namespace gs::antenna;

namespace {
const double kFrequencies[] = {1.8, 3.65, 5.36, 7.1, 10.1, 14.15, 18.1, 21.2, 24.9, 28.4, 50.1, 54};
}

TEST_CASE("kinds: rows are complete, and a key finds its own") {
  std::set<std::string_view> keys;
  for (const Kind& kind : kinds()) {
    CAPTURE(std::string(kind.key));
    CHECK(keys.insert(kind.key).second);
    CHECK(find_kind(kind.key) == &kind);
    CHECK_FALSE(kind.rig_note.empty());
    CHECK_FALSE(kind.cut_source.empty());
    CHECK_FALSE(kind.feed_source.empty());
    CHECK((kind.is_whip() || kind.non_resonant()) == (kind.cut_constant_m_mhz == 0));
  }
  CHECK(find_kind("random") == nullptr);
  for (const char* key :
       {"dipole", "inverted_v", "end_fed_half_wave", "quarter_wave_vertical", "loop", "loaded_whip"})
    CHECK(find_kind(key) != nullptr);
}

TEST_CASE("kinds: everything is finite and sound from 160 to 6 m") {
  for (const Kind& kind : kinds()) {
    for (const double f : kFrequencies) {
      CAPTURE(std::string(kind.key));
      CAPTURE(f);
      for (const Wire wire : {Wire::bare, Wire::insulated}) {
        Setup setup;
        setup.wire = wire;
        const FeedPoint feed = feed_point(kind, f, setup);
        if (kind.non_resonant()) {  // it has losses and a place to hang, but no resistance of its own
          CHECK(std::isnan(feed.swr));
          CHECK(feed.efficiency > 0.5);
          CHECK(std::isfinite(fit(rig_of(kind, f, setup), {8, 25}).room_m));
          continue;
        }
        REQUIRE(std::isfinite(feed.swr));
        CHECK(feed.q > 1);
        CHECK(std::isfinite(feed.load_ohm.real() + feed.load_ohm.imag()));
        CHECK(feed.swr >= 1);
        CHECK(feed.swr >= swr_of_resistance(feed.resistance_ohm) - 1e-12);
        CHECK(feed.efficiency > 0);
        CHECK(feed.efficiency < 1);
        CHECK(feed.lowest_ohm <= feed.resistance_ohm);
        CHECK(feed.resistance_ohm <= feed.highest_ohm);
        const Fit room = fit(rig_of(kind, f, setup), {8, 25});
        CHECK(std::isfinite(room.room_m));
        CHECK(std::isfinite(total_wire_m(kind, f, setup)));
      }
    }
  }
}

// 0.4 and 2 dB of builders' transformers (second hand), 5 and 30 ohm under a vehicle, the radials' own range.
TEST_CASE(
    "kinds: efficiency as a range where nobody measured ground or transformer, one figure where somebody did") {
  for (const Kind& kind : kinds()) {
    CAPTURE(std::string(kind.key));
    const FeedPoint feed = feed_point(kind, 7.1);
    CHECK(feed.least_efficiency <= feed.efficiency);
    CHECK(feed.efficiency <= feed.most_efficiency);
    CHECK(feed.most_efficiency < 1);
    const bool open = kind.is_whip() || kind.over_radials() || kind.end_fed() || kind.non_resonant();
    CHECK((feed.least_efficiency < feed.most_efficiency) == open);
  }
  Setup setup;
  setup.ground_measured = setup.transformer_measured = true;
  const FeedPoint whip = feed_point(*find_kind("loaded_whip"), 7.1, setup);
  CHECK(whip.least_efficiency == whip.most_efficiency);
  setup.transformer_db = 1.2;
  const FeedPoint wire = feed_point(*find_kind("end_fed_half_wave"), 7.1, setup);
  CHECK(wire.least_efficiency == wire.most_efficiency);
  const FeedPoint any = feed_point(*find_kind("end_fed_half_wave"), 7.1);
  CHECK(std::abs(10 * std::log10(any.most_efficiency / any.least_efficiency) - 1.6) < 1e-9);
}

TEST_CASE("kinds: what is wrong gets no answer") {
  const Kind& dipole = *find_kind("dipole");
  for (const double wrong :
       {0.0, -7.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    CHECK(std::isnan(cut_length_m(dipole, wrong)));
    CHECK(std::isnan(feed_point(dipole, wrong).swr));
    CHECK(std::isnan(feed_point(dipole, wrong).efficiency));
    CHECK(std::isnan(fit(rig_of(dipole, wrong), {8, 25}).room_m));
  }
  CHECK(std::isnan(cut_length_m(*find_kind("loaded_whip"), 7.1)));
}

TEST_CASE("lengths: frequency and length undo each other, insulated wire is shorter") {
  for (const Kind& kind : kinds()) {
    if (kind.is_whip() || kind.non_resonant()) continue;
    for (const double f : kFrequencies) {
      const double length = cut_length_m(kind, f);
      CHECK(std::abs(cut_frequency_mhz(kind, length) / f - 1) < 1e-14);
      CHECK(std::abs(cut_length_m(kind, f, Wire::insulated) / length - 0.97) < 1e-14);
      CHECK(std::abs(trimmed_length_m(length, f, f * 1.01) - cut_length_m(kind, f * 1.01)) < 1e-12);
      // centimetres of the whole length: the slope of f = constant / L
      CHECK(std::abs((cut_frequency_mhz(kind, length - 0.0005) - cut_frequency_mhz(kind, length + 0.0005)) * 1e3 /
                         (khz_per_cm(length, f) * 0.1) -
                     1) < 1e-6);
    }
  }
}

TEST_CASE("lengths: a cut and its effect foretell the next, with a fixed part of any size") {
  for (const double fixed_m : {-3.0, 0.0, 12.0}) {
    const auto mhz_of = [&](double length_m) { return 71.3 / (length_m + fixed_m); };
    const double want = mhz_of(39.2);
    CHECK(std::abs(further_change_m(-0.15, mhz_of(40), mhz_of(39.85), want) + 0.65) < 1e-9);
  }
  CHECK(std::isnan(further_change_m(-0.15, 1.8, 1.8, 1.834)));
  CHECK(further_change_m(-0.15, 1.81, 1.82, 1.82) == 0);
  CHECK(std::isnan(higher_resonance_mhz(7, 2)));
  CHECK(higher_resonance_mhz(7, 1) == 7);
  CHECK(std::isnan(higher_resonance_mhz(7, 0, FedAt::end)));
  for (int n = 2; n <= 8; ++n) {  // never an exact multiple, always a little above
    const double times = higher_resonance_mhz(7, n, FedAt::end) / 7;
    CHECK(times > n);
    CHECK(times < 1.05 * n);
    if (n % 2 == 1) CHECK(times * 7 == higher_resonance_mhz(7, n));
  }
}

TEST_CASE("whips: higher, better coil, better ground all radiate more; the coil in the middle too") {
  const auto share = [](double h, double at, double q, double ground) {
    return whip_feed({h, 0.005, 7.1, at, q, ground}).efficiency;
  };
  CHECK(share(3, 0, 200, 10) > share(2.4, 0, 200, 10));
  CHECK(share(2.4, 0, 300, 10) > share(2.4, 0, 200, 10));
  CHECK(share(2.4, 0, 200, 5) > share(2.4, 0, 200, 10));
  CHECK(share(2.4, 0.5, 200, 10) > share(2.4, 0, 200, 10));
  double before = 1e9;
  for (double h = 0.5; h < 10.5; h += 0.1) {  // coil shrinks all the way to a quarter wave
    const double uh = loading_coil_uh(h, 0.005, 7.1);
    CHECK(uh <= before);
    before = uh;
  }
  CHECK(loading_coil_uh(10.2, 0.005, 7.1) == 0);
  CHECK(std::isnan(whip_radiation_ohm(11, 7.1)));
  CHECK(std::isnan(loading_coil_uh(2.4, 2.4, 7.1)));  // as thick as high
  CHECK(std::isnan(whip_feed({2.4, 0.005, 7.1, 1, 200, 10}).feed_ohm));
  CHECK(std::isnan(whip_feed({2.4, 0.005, 7.1, 0, 0, 10}).feed_ohm));
  CHECK(std::isnan(coil_uh(0, 0.02, 0.1)));
}

TEST_CASE("radials: never worse by one more, short ones hold back, none is a stake") {
  for (const double waves : {0.1, 0.25}) {
    double before = 1e9;
    for (int n = 0; n <= 200; ++n) {
      const GroundLoss loss = radial_loss(n, waves);
      CHECK(loss.usual_ohm <= before);
      CHECK(loss.lowest_ohm <= loss.usual_ohm);
      CHECK(loss.usual_ohm <= loss.highest_ohm);
      before = loss.usual_ohm;
    }
  }
  for (const RadialRow& row : radials()) CHECK(radial_loss(row.radials, 0.25).usual_ohm == row.loss_ohm);
  CHECK(radial_loss(120, 0.1).usual_ohm == kShortRadialsOhm);
  CHECK(radial_loss(0, 0.25).usual_ohm == kStakeOhm);
  CHECK(std::isnan(radial_loss(-1, 0.25).usual_ohm));
  CHECK(std::isnan(radial_loss(4, 0).usual_ohm));
}

TEST_CASE("match: edges") {
  CHECK(std::isnan(swr_of_resistance(0)));
  CHECK(swr_of_resistance(50) == 1);
  CHECK(swr_of_resistance(25) == swr_of_resistance(100));
  CHECK(reflected_share(1) == 0);
  CHECK(std::isnan(reflected_share(0.9)));
  CHECK(reflected_share(std::numeric_limits<double>::infinity()) == 1);
  CHECK(std::isnan(quarter_wave_line_ohm(50, 0)));
  CHECK(core_share(0.03, 0.02) == 1);
  CHECK(std::isnan(core_share(0, 0.02)));
  const SwrReading flat[] = {{7, 2}, {7.1, 2}, {7.2, 2}}, dome[] = {{7, 1.2}, {7.1, 2}, {7.2, 1.2}};
  const SwrReading twice[] = {{7, 2}, {7.1, 1.2}, {7, 2}}, high[] = {{7, 5}, {7.1, 3}, {7.2, 5}};
  CHECK(std::isnan(swr_band(flat).resonant_mhz));
  CHECK(std::isnan(swr_band(dome).resonant_mhz));
  CHECK(std::isnan(swr_band(twice).resonant_mhz));
  CHECK(std::isnan(swr_band(std::span(high).first(2)).resonant_mhz));
  CHECK(std::abs(swr_band(high).resonant_mhz - 7.1) < 1e-9);
  CHECK(std::abs(swr_band(high).lowest_swr - 3) < 1e-9);
  CHECK(swr_band(high).width_mhz == 0);
  CHECK(std::isnan(swr_band(high).low_mhz));
}
