#include "core/antenna/rigging.h"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <random>

#include "core/antenna/feed.h"

using namespace gs::antenna;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr Shape kShapes[] = {Shape::dipole,       Shape::inverted_v, Shape::sloper, Shape::vertical,
                             Shape::ground_plane, Shape::loop,       Shape::whip};

double between(std::mt19937_64& bits, double low, double high) {
  return low + (high - low) * (double(bits() >> 11) / 9007199254740992.0);
}

}  // namespace

TEST_CASE("fit: a dipole between two trees") {
  // 20.09 m of wire and half a metre at each end in 25 m: 3.91 m along, 8 - 2.5 m up
  const Fit roomy = fit({Shape::dipole, 20.09}, {8, 25});
  CHECK(std::abs(roomy.span_room_m - 3.91) < 1e-12);
  CHECK(std::abs(roomy.height_room_m - 5.5) < 1e-12);
  CHECK(roomy.room_m == roomy.span_room_m);
  CHECK_FALSE(roomy.height_binds());
  CHECK(std::abs(fit({Shape::dipole, 20.09}, {8, 20}).room_m + 1.09) < 1e-12);
  CHECK(fit({Shape::dipole, 20.09}, {2, 30}).height_binds());
}

// A 40 m V: legs 10.046 m. Apex 10 m, ends 2.5 m: drop 7.5 leaves 6.684 m out, but 90 degrees between the legs
// want 7.104.
TEST_CASE("fit: an inverted V is held open to a right angle") {
  CHECK(std::abs(fit({Shape::inverted_v, 20.092}, {10, 20}).span_room_m - (20 - 2 * (7.1036 + 0.5))) < 1e-3);
  // apex 6 m: drop 3.5 m, out sqrt(10.046^2 - 3.5^2) = 9.4166 m
  CHECK(std::abs(fit({Shape::inverted_v, 20.092}, {6, 20}).span_room_m - (20 - 2 * (9.4166 + 0.5))) < 1e-3);
  // 15.2 m is what the right angle wants; below that no height helps
  CHECK(fit({Shape::inverted_v, 20.092}, {40, 15.1}).room_m < 0);
  CHECK(fit({Shape::inverted_v, 20.092}, {40, 15.3}).room_m > 0);
}

TEST_CASE("fit: the other shapes, worked out apart") {
  // sloper 20.09 m from 9 m down to 1 m: sqrt(20.09^2 - 8^2) = 18.428 m
  CHECK(std::abs(fit({Shape::sloper, 20.09}, {9, 20}).span_room_m - (20 - 0.5 - 18.428)) < 1e-3);
  // a wire that hangs straight down needs no span but its tie
  CHECK(std::abs(fit({Shape::sloper, 5}, {9, 2}).span_room_m - 1.5) < 1e-12);
  // vertical 10.05 m under a branch at 12 m with radials of 4.22 m
  CHECK(std::abs(fit({Shape::vertical, 10.05, 4.22}, {12, 15}).height_room_m - 1.45) < 1e-12);
  CHECK(std::abs(fit({Shape::vertical, 10.05, 4.22}, {12, 15}).span_room_m - 6.56) < 1e-12);
  // 20 m ground plane: 5.02 m up, radials 5.02 m at 45 degrees: 3.55 m down and out
  CHECK(std::abs(fit({Shape::ground_plane, 5.02, 5.02}, {12, 10}).height_room_m -
                 (12 - 2.5 - 3.5497 - 5.02 - 0.5)) < 1e-3);
  // loop of 43 m equal-sided: 12.413 m high, base 14.333 m; at 10 m apex it is 7.5 m high and (43 - 4 x 7.5^2 / 43)
  // / 2 wide
  CHECK(std::abs(fit({Shape::loop, 43}, {20, 30}).span_room_m - (30 - 1 - 14.3333)) < 1e-3);
  CHECK(std::abs(fit({Shape::loop, 43}, {10, 30}).span_room_m - (30 - 1 - 18.8837)) < 1e-3);
  CHECK(fit({Shape::loop, 43}, {8, 60}).room_m < 0);  // half of 12.4 m and the ends out of reach: 8.7 m
  CHECK(std::abs(fit({Shape::whip, 2.4}, {9, 20}).height_room_m - 5.1) < 1e-12);
}

TEST_CASE("fit: more apex or span never takes room, more wire never gives any; room 0 is the edge") {
  constexpr std::uint64_t kSeed = 20260613;
  std::mt19937_64 bits(kSeed);
  MESSAGE("seed " << kSeed);
  for (int i = 0; i < 20000; ++i) {
    const Shape shape = kShapes[bits() % std::size(kShapes)];
    const Rig rig{shape, between(bits, 0.5, 90), between(bits, 0, 20)};
    const Space at{between(bits, 0, 30), between(bits, 0, 100), between(bits, 0, 4)};
    const Fit now = fit(rig, at);
    REQUIRE(std::isfinite(now.room_m));
    REQUIRE(now.room_m == std::min(now.span_room_m, now.height_room_m));
    CAPTURE(int(shape));
    CAPTURE(rig.wire_m);
    CAPTURE(at.apex_m);
    CAPTURE(at.span_m);
    REQUIRE(fit(rig, {at.apex_m + 1, at.span_m, at.end_m}).room_m >= now.room_m - 1e-9);
    REQUIRE(fit(rig, {at.apex_m, at.span_m + 1, at.end_m}).room_m >= now.room_m - 1e-9);
    REQUIRE(fit({shape, rig.wire_m * 1.1, rig.radial_m}, at).room_m <= now.room_m + 1e-9);
    if (now.room_m <= 0) continue;
    // Where it fits, it still fits in a span or under an apex smaller by less than the room.
    REQUIRE(fit(rig, {at.apex_m, at.span_m - 0.999 * now.room_m, at.end_m}).room_m >= -1e-9);
    REQUIRE(fit(rig, {at.apex_m - 0.999 * now.room_m, at.span_m, at.end_m}).room_m >= -1e-9);
  }
}

TEST_CASE("fit: impossible input has no answer") {
  CHECK(std::isnan(fit({Shape::dipole, 0}, {8, 25}).room_m));
  CHECK(std::isnan(fit({Shape::dipole, kNaN}, {8, 25}).room_m));
  CHECK(std::isnan(fit({Shape::vertical, 5, -1}, {8, 25}).room_m));
  CHECK(std::isnan(fit({Shape::loop, 40}, {std::numeric_limits<double>::infinity(), 25}).room_m));
  CHECK(std::isnan(fit({Shape::loop, 40}, {8, 25, -1}).room_m));
}

TEST_CASE("lines: edges") {
  CHECK(std::isnan(leg_reach(5, 9, 1).each_m));  // no leg shorter than the drop reaches
  CHECK(leg_reach(8, 9, 1).each_m == 0);
  CHECK(leg_reach(8, 9, 1).between_deg == 0);
  CHECK(std::abs(leg_reach(8, 5, 5).between_deg - 180) < 1e-12);
  CHECK(std::isnan(slope_line(3, 0, 3).length_m));
  CHECK(slope_line(3, 0, 0).from_vertical_deg == 0);
  CHECK(std::isnan(rope_over_branch_m(0)));
  CHECK(rope_over_branch_m(8) == 20);
  CHECK(std::isnan(branch_height_m(15, -1)));
  CHECK(lean_loss_db(0) == 0);
  CHECK_FALSE(std::signbit(lean_loss_db(0)));
  CHECK(std::isnan(lean_loss_db(90)));
  CHECK(std::isnan(catenary_arm(10, 0).drop_m));
  CHECK(std::isnan(catenary_constant_m(0, 30)));
}

TEST_CASE("lines: there and back again") {
  constexpr std::uint64_t kSeed = 7100;
  std::mt19937_64 bits(kSeed);
  MESSAGE("seed " << kSeed);
  for (int i = 0; i < 5000; ++i) {
    const double apex = between(bits, 0, 20), end = between(bits, 0, 20);
    const double leg = std::abs(apex - end) + between(bits, 0.1, 30);
    const LegReach reach = leg_reach(leg, apex, end);
    const SlopeLine line = slope_line(apex, reach.each_m, end);
    REQUIRE(std::abs(line.length_m - leg) < 1e-9);
    REQUIRE(std::abs(line.between_deg - reach.between_deg) < 1e-9);
    const double branch = between(bits, 1, 40), spare = between(bits, 0, 6);
    REQUIRE(std::abs(branch_height_m(rope_over_branch_m(branch, spare), 0) - branch - spare / 2) < 1e-12);
    // half of a level span is an arm that ends level: drop = sag
    const double a = between(bits, 5, 5000), span = between(bits, 0.5, 100);
    const Sag sag = catenary_sag(a, span);
    const double angle = std::atan(std::sinh(span / 2 / a)) * 180 / 3.14159265358979323846;
    const Arm arm = catenary_arm(a, angle);
    REQUIRE(std::abs(arm.drop_m / sag.sag_m - 1) < 1e-7);
    REQUIRE(std::abs(2 * arm.length_m - span - sag.extra_wire_m) < 1e-9 * (a + span));
  }
}
