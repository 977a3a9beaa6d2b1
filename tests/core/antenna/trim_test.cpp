#include "core/antenna/trim.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <vector>

#include "core/antenna/any_length.h"
#include "core/antenna/length.h"

using namespace gs::antenna;

TEST_CASE("trim: readings of one law give its length, whatever the fixed part, and none is doubted") {
  for (const double fixed_m : {-1.5, 0.0, 2.0}) {
    const auto dip = [&](double length_m) { return 145.0 / (length_m + fixed_m); };
    const TrimReading readings[] = {{21, dip(21)}, {20.7, dip(20.7)}, {20.4, dip(20.4)}, {20.2, dip(20.2)}};
    for (std::size_t n = 2; n <= 4; ++n) {
      const TrimFit fit = fit_trim(std::span(readings).first(n), dip(20));
      CHECK(fit.doubt == -1);
      CHECK(std::abs(fit.length_m - 20) < 1e-6);
      CHECK(std::abs(fit.fixed_m - fixed_m) < 1e-5);
      CHECK(fit.worst_khz < 1e-6);
    }
  }
  const TrimReading one[] = {{20.88, 6.892}};
  CHECK(std::abs(fit_trim(one, 7.1).length_m - 20.88 * 6.892 / 7.1) < 1e-12);
}

TEST_CASE("trim: the reading that contradicts the others is named, and the length rests on the rest") {
  constexpr std::uint64_t kSeed = 710;
  std::mt19937_64 bits(kSeed);
  int named = 0, asked = 0;
  for (int i = 0; i < 2000; ++i) {
    std::vector<TrimReading> readings;
    for (const double length : {21.0, 20.8, 20.5, 20.3}) readings.push_back({length, 143.5 / (length + 0.2)});
    const std::size_t odd = bits() % 4;
    const double by = (bits() % 2 ? 1 : -1) * (0.012 + double(bits() % 100) / 1000);
    readings[odd].dip_mhz *= 1 + by;
    const TrimFit fit = fit_trim(readings, 7.1);
    ++asked;
    named += fit.doubt == int(odd);
    REQUIRE(fit.doubt >= 0);
  }
  MESSAGE("seed " << kSeed << ": the odd reading was named in " << named << " of " << asked);
  CHECK(named == asked);
  // two readings: a longer wire cannot resonate higher
  const TrimReading turned[] = {{20.5, 7.0}, {20.9, 7.05}};
  CHECK(fit_trim(turned, 7.1).doubt == 1);
  CHECK(std::abs(fit_trim(turned, 7.1).length_m - 20.5 * 7.0 / 7.1) < 1e-9);
}

TEST_CASE("trim: what cannot be has no answer") {
  CHECK(std::isnan(fit_trim({}, 7.1).length_m));
  const TrimReading bad[] = {{0, 7}};
  CHECK(std::isnan(fit_trim(bad, 7.1).length_m));
  const TrimReading good[] = {{20, 7}};
  CHECK(std::isnan(fit_trim(good, 0).length_m));
}

TEST_CASE(
    "any length: 0 on a half wave and its multiples, 1 midway, and the clearest is clearer than its neighbours") {
  const double seven[] = {7.1}, three[] = {7.1, 14.2, 21.2};
  const double half = wavelength_m(7.1) / 2;
  CHECK(clear_of_half_waves(half * 0.95, seven).quarter_waves < 1e-9);
  CHECK(clear_of_half_waves(half * 1.95, seven).quarter_waves < 1e-9);
  CHECK(std::abs(clear_of_half_waves(half * 1.45, seven).quarter_waves - 1) < 1e-9);
  CHECK(clear_of_half_waves(half * 0.45, seven).quarter_waves == 1);
  const double best = clearest_length_m(8, 30, three);
  const double clear = clear_of_half_waves(best, three).quarter_waves;
  for (double length = 8; length < 30; length += 0.013)
    CHECK(clear_of_half_waves(length, three).quarter_waves <= clear + 2e-3);
  CHECK(clear_of_half_waves(20.09, three).worst >= 0);
  CHECK(std::isnan(clear_of_half_waves(-1, three).quarter_waves));
  CHECK(std::isnan(clear_of_half_waves(10, {}).quarter_waves));
  CHECK(std::isnan(clearest_length_m(5, 4, three)));
}
