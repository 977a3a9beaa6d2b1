// Common practice, from memory: protection holds the reflected power at what it is at the set's limit; built-in
// matching units reach 3:1, separate ones 10:1. Shares below were worked out by hand from rho = (s-1)/(s+1).
#include "core/radio/fold_back.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace gs::radio;

TEST_CASE("fold back: full power up to the mark, then the reflected power stands still") {
  CHECK(power_share(1, 2, Tuner::none) == 1);
  CHECK(power_share(2, 2, Tuner::none) == 1);
  CHECK(power_share(3, 2, Tuner::none) == doctest::Approx(4.0 / 9).epsilon(1e-14));   // (1/3 / 1/2)^2
  CHECK(power_share(9, 3, Tuner::none) == doctest::Approx(0.390625).epsilon(1e-14));  // (0.5 / 0.8)^2
  CHECK(power_share(std::numeric_limits<double>::infinity(), 3, Tuner::none) ==
        doctest::Approx(0.25).epsilon(1e-14));
  double before = 1;
  for (double swr = 1; swr < 100; swr *= 1.1) {
    const double share = power_share(swr, 1.5, Tuner::none);
    CHECK(share <= before);
    CHECK(share > 0);
    const double rho = (swr - 1) / (swr + 1);
    if (swr > 1.5) CHECK(share * rho * rho == doctest::Approx(0.04).epsilon(1e-12));  // rho at 1.5 is 0.2
    before = share;
  }
}

TEST_CASE("fold back: a matching unit restores what it reaches") {
  CHECK(power_share(3, 2, Tuner::in_set) == 1);
  CHECK(power_share(3.5, 2, Tuner::in_set) == doctest::Approx(power_share(3.5, 2, Tuner::none)));
  CHECK(power_share(3.5, 2, Tuner::in_set) < 1);
  CHECK(power_share(10, 2, Tuner::outside) == 1);
  CHECK(power_share(11, 2, Tuner::outside) == doctest::Approx(0.16).epsilon(1e-14));  // (1/3 / 10/12)^2
  CHECK(power_share(1, 2, Tuner::outside) == 1);
}

TEST_CASE("fold back: rounding decides nothing, impossible marks count as 1") {
  CHECK(power_share(2 + 1e-12, 2, Tuner::none) == 1);
  CHECK(power_share(3 + 1e-12, 2, Tuner::in_set) == 1);
  CHECK(power_share(1, 0.5, Tuner::none) == 1);
  CHECK(power_share(1.5, 1, Tuner::none) == 0);
  CHECK(power_share(5, std::numeric_limits<double>::infinity(), Tuner::none) == 1);
}
