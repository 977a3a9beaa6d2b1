// Greatest gain of straight wires against figures worked out apart and against printed ones.
#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>

#include "core/antenna/long_wire.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::antenna;
using gs::test::Closeness;

namespace {
struct Row {
  double waves, middle_dbi, end_dbi;
};
// Computed apart with mpmath 1.3.0 (20 digits): the same textbook integral over the sphere by Gauss quadrature, and
// the greatest lobe by golden section.
constexpr Row kWires[] = {
    {0.01, 1.76105547, 1.7611031}, {0.25, 1.85214799, 1.88238958}, {0.5, 2.15088037, 2.15088037},
    {0.75, 2.746368, 1.75038017},  {1, 3.82196785, 2.59322219},    {1.25, 5.16202457, 3.24653181},
    {1.5, 3.47591038, 3.47591038}, {2, 4.02873075, 4.22504772},    {2.5, 4.85519861, 4.85519861},
    {3, 4.8138327, 5.3952599},     {4, 5.51165088, 6.28477863},    {8, 7.48684375, 8.56637784},
    {20, 10.4700106, 11.777569}};
// n half waves in resonance by another way: 120 F^2 over the radiation resistance 30 Cin(2 pi n), textbooks;
// computed with mpmath.
constexpr double kResonantDbi[] = {2.1508803, 2.5932222, 3.4759104, 4.2250477,
                                   4.8551984, 5.3952599, 5.8667459, 6.2847786};
}  // namespace

TEST_CASE("theory: greatest gain of a straight wire") {
  Closeness off("gain of a straight wire", "dB");
  for (const Row& row : kWires) {
    CHECK(off.within(straight_wire_gain_dbi(row.waves, FedAt::middle), row.middle_dbi, 0.01));
    CHECK(off.within(straight_wire_gain_dbi(row.waves, FedAt::end), row.end_dbi, 0.01));
  }
  for (int n = 1; n <= 8; ++n)
    CHECK(off.within(straight_wire_gain_dbi(n / 2.0, FedAt::end), kResonantDbi[n - 1], 0.01));
  // textbooks (memory): half a wave 1.64 or 2.15 dBi, a whole wave fed in the middle 3.8 dBi, 1.25 waves 5.2 dBi
  CHECK(std::pow(10, straight_wire_gain_dbi(0.5, FedAt::middle) / 10) == doctest::Approx(1.64).epsilon(0.003));
  CHECK(std::abs(straight_wire_gain_dbi(1, FedAt::middle) - 3.8) < 0.05);
  CHECK(std::abs(straight_wire_gain_dbi(1.25, FedAt::middle) - 5.2) < 0.05);
  for (const double impossible : {0.0, -1.0, 201.0, double(NAN), double(INFINITY)})
    CHECK(std::isnan(straight_wire_gain_dbi(impossible, FedAt::end)));
}
