#include "core/radio/lead.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <limits>
#include <random>
#include <string>

#include "core/radio/fuse.h"

using namespace gs::radio;

namespace {

double unit_of(std::mt19937_64& bits) { return double(bits() >> 11) * 0x1p-53; }

}  // namespace

TEST_CASE("wire: rows run from thin to thick and say where they come from") {
  CHECK(wires().size() >= 8);
  double last_ohm = 1, last_a = 0;
  for (const Wire& wire : wires()) {
    CAPTURE(std::string(wire.key));
    CHECK(find_wire(wire.key) == &wire);
    CHECK_FALSE(wire.source.empty());
    CHECK(wire_ohm_per_m(wire.gauge, 20) < last_ohm);
    CHECK(wire.carries_a >= last_a);
    last_ohm = wire_ohm_per_m(wire.gauge, 20);
    last_a = wire.carries_a;
  }
  CHECK(find_wire("awg11") == nullptr);
  // three sizes thicker is half the resistance, nearly (92^(1/39) twice six times: 2.005)
  CHECK(wire_ohm_per_m(15, 20) / wire_ohm_per_m(12, 20) ==
        doctest::Approx(std::pow(92.0, 6.0 / 39)).epsilon(1e-12));
}

TEST_CASE("lead property: the thinnest wire meets the drop, the next thinner one breaks something") {
  constexpr unsigned long long kSeed = 0x77697265;
  std::printf("  seed %llu\n", kSeed);
  std::mt19937_64 bits(kSeed);
  int found = 0, none = 0;
  for (int i = 0; i < 2000; ++i) {
    Lead lead{0, 0.1 + 15 * unit_of(bits), -20 + 80 * unit_of(bits), 0.005 * unit_of(bits)};
    const double a = 0.1 + 40 * unit_of(bits), most_v = 0.05 + 1.5 * unit_of(bits);
    const Wire* wire = thinnest_wire(lead, a, most_v);
    for (const Wire& row : wires()) {
      lead.gauge = row.gauge;
      const bool does = row.carries_a >= a && a * lead_ohm(lead) <= most_v;
      if (wire && &row < wire) CHECK_FALSE(does);
      if (wire == &row) CHECK(does);
      if (!wire) CHECK_FALSE(does);
    }
    (wire ? found : none)++;
  }
  std::printf("  %d leads with a wire, %d with none\n", found, none);
  CHECK(found > 500);
  CHECK(none > 20);
}

TEST_CASE("lead property: constant power is met at the load") {
  std::mt19937_64 bits(0x706f77);
  for (int i = 0; i < 2000; ++i) {
    const double v = 5 + 25 * unit_of(bits), ohm = 0.2 * unit_of(bits), w = 300 * unit_of(bits);
    const auto a = constant_power_a(v, ohm, w);
    CHECK(a.has_value() == (v * v >= 4 * ohm * w));
    if (!a) continue;
    CHECK(*a >= w / v - 1e-9);
    CHECK(std::abs((v - *a * ohm) * *a - w) < 1e-9 * (1 + w));
  }
  CHECK(*constant_power_a(12, 0, 120) == 10);
  CHECK(*constant_power_a(12, 0.1, 0) == 0);
  CHECK_FALSE(constant_power_a(0, 0.1, 5).has_value());
}

TEST_CASE("lead: no length, contacts alone; supply is what is left") {
  CHECK(lead_ohm({12, 0}) == 0);
  CHECK(lead_ohm({12, 0, 20, 0.004}) == 0.004);
  CHECK(supply_v(12.6, 20, 0.08) == doctest::Approx(11.0));
  CHECK(allowed_ohm(12.6, 11, 20) == doctest::Approx(0.08));
  CHECK(allowed_ohm(10.5, 11, 20) < 0);
  CHECK(supply_v(12.6, 20, allowed_ohm(12.6, 11, 20)) == doctest::Approx(11.0));
}

TEST_CASE("fuse: never more than the wire carries, never less than the current needs") {
  double last = 0;
  for (const double size_a : fuse_sizes_a()) {
    CHECK(size_a > last);
    last = size_a;
    CHECK(fuse_for(size_a * kFuseLoad, 1e9).size_a == size_a);  // met exactly, rounding decides nothing
  }
  for (const Wire& wire : wires()) {
    for (double a = 0.1; a < 90; a *= 1.1) {
      const Fuse fuse = fuse_for(a, wire.carries_a);
      if (fuse.fit == FuseFit::none_so_large) {
        CHECK(a / kFuseLoad > 100);
        continue;
      }
      CHECK(fuse.size_a * kFuseLoad >= a * (1 - 1e-9));
      CHECK((fuse.fit == FuseFit::fits) == (fuse.size_a <= wire.carries_a));
    }
  }
  CHECK(fuse_for(20, std::numeric_limits<double>::infinity()).fit == FuseFit::fits);
  CHECK(fuse_for(20, 25).fit == FuseFit::too_thin);
  CHECK(fuse_for(200, 1000).fit == FuseFit::none_so_large);
}
