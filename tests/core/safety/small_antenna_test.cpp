// Short whips and small loops: against physics that the code does not use, and the published loop.
#include "core/safety/small_antenna.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstdio>

#include "core/safety/keep_out.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::safety;
using gs::test::Closeness;

namespace {

constexpr double kLoopPowerW = 150;

/// Distance along the axis of a copper loop (1 m across, 22 mm tube) at which the static field of its current meets
/// an H limit. Radiation resistance 320 pi^4 (A/lambda^2)^2 and skin effect alone; standard loop theory, free
/// space.
double axial_distance_m(double mhz, double power_w, double h_limit_a_per_m) {
  const double radius = 0.5, area = kPi * radius * radius, lambda = kSpeedOfLightMPerS / (mhz * 1e6);
  const double radiation = 320 * std::pow(kPi, 4) * std::pow(area / (lambda * lambda), 2);
  const double skin_ohm = std::sqrt(kPi * mhz * 1e6 * 4e-7 * kPi / 5.8e7);
  const double current = std::sqrt(power_w / (radiation + skin_ohm * 2 * kPi * radius / (kPi * 0.022)));
  const double cube = std::pow(current * radius * radius / (2 * h_limit_a_per_m), 2.0 / 3);
  return std::sqrt(cube - radius * radius);
}

}  // namespace

// FCC OET Bulletin 65 Supplement B, Table 17 (seen).
TEST_CASE("small loop: the published table at its own power") {
  const double rows[][3] = {{7, 2.0, 2.8},  {10, 2.1, 2.8}, {14, 2.1, 3.2}, {18, 2.3, 3.5},
                            {21, 2.3, 3.7}, {24, 2.4, 3.9}, {28, 2.4, 4.2}};
  for (const auto& row : rows) {
    const Emission sent{row[0], kLoopPowerW, 1.76, 1, 1};
    CHECK(std::abs(small_loop_distance_m(sent, Audience::radio_operator, Rule::us) - row[1]) < 1e-12);
    CHECK(std::abs(small_loop_distance_m(sent, Audience::passer_by, Rule::us) - row[2]) < 1e-12);
  }
}

// The sixth root of power against the loop's own magnetic field: no more than a tenth short from 5 to
// 150 W on 7 to 14 MHz, where the axis decides. On 14 MHz the published figure itself stands 9 % over the axial
// field.
TEST_CASE("small loop: other powers follow the field of the loop's current") {
  double least = 1e9, most = 0;
  for (const double mhz : {7.1, 10.1, 14.2})
    for (const double power_w : {5.0, 10.0, 50.0, 100.0, 150.0}) {
      const Emission sent{mhz, power_w, 1.76, 1, 1};
      const double ratio = small_loop_distance_m(sent, Audience::passer_by, Rule::us) /
                           axial_distance_m(mhz, power_w, h_limit_a_per_m(mhz, Audience::passer_by, Rule::us));
      least = std::min(least, ratio);
      most = std::max(most, ratio);
    }
  std::printf("  scaled table over axial field: %.3f to %.3f\n", least, most);
  CHECK(least > 0.9);
  CHECK(most < 1.2);
}

// Full field of a short current element, worked out apart as complex sums: E_theta ~ 1 + 1/(jx) - 1/x^2, H_phi ~ 1
// + 1/(jx).
TEST_CASE("short whip: field factors are those of a short current element") {
  Closeness off("field factors", "relative");
  using Complex = std::complex<double>;
  for (const double mhz : {3.6, 7.1, 14.2, 28.4})
    for (const double m : {0.3, 1.0, 2.0, 5.0, 20.0}) {
      const double x = 2 * kPi * m * mhz * 1e6 / kSpeedOfLightMPerS;
      const Complex j{0, 1};
      CHECK(off.within(near_e_factor(mhz, m) / std::abs(1.0 + 1.0 / (j * x) - 1 / (x * x)), 1, 1e-13));
      CHECK(off.within(near_h_factor(mhz, m) / std::abs(1.0 + 1.0 / (j * x)), 1, 1e-13));
    }
}

TEST_CASE("short whip: at its distance one field stands at its limit, far out it is the formula") {
  Closeness off("whip far out against formula", "relative");
  for (const Rule rule : {Rule::us, Rule::icnirp, Rule::germany})
    for (const double mhz : {3.6, 7.1, 14.2, 28.4}) {
      const Emission sent{mhz, 20, -3, 0.5, 1};
      const double m = short_whip_distance_m(sent, Audience::passer_by, rule, kUsualGround);
      CHECK(m > far_field_distance_m(sent, Audience::passer_by, rule, kUsualGround) * 0.9);
      const double e =
          std::sqrt(kFreeSpaceOhm * power_density_w_per_m2(sent, m, kUsualGround)) * near_e_factor(mhz, m);
      const double h =
          std::sqrt(power_density_w_per_m2(sent, m, kUsualGround) / kFreeSpaceOhm) * near_h_factor(mhz, m);
      const double worst = std::max(e / e_limit_v_per_m(mhz, Audience::passer_by, rule),
                                    h / h_limit_a_per_m(mhz, Audience::passer_by, rule));
      CHECK(worst < 1 + 1e-9);
      if (mhz > 10 || rule == Rule::us)
        CHECK(worst > 1 - 1e-9);  // below 10 MHz the peak level may decide elsewhere
    }
  const Emission strong{28.4, 1e7, 0, 1, 1};
  CHECK(off.within(short_whip_distance_m(strong, Audience::passer_by, Rule::us, 1) /
                       far_field_distance_m(strong, Audience::passer_by, Rule::us, 1),
                   1, 0.005));
}
