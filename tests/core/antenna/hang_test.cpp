#include "core/antenna/hang.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/antenna/feed.h"

using namespace gs::antenna;

namespace {

double between(std::mt19937_64& bits, double low, double high) {
  return low + (high - low) * (double(bits() >> 11) / 9007199254740992.0);
}

/// What the drawing itself says: lengths and extremes, measured off its lines.
struct Measured {
  double wire_m = 0, radial_m = 0, rope_m = 0, left_m = 0, right_m = 0, highest_m = 0, lowest_live_m = 1e9;
};
Measured measure(const Sketch& drawn) {
  Measured got;
  for (const Stroke& stroke : drawn.strokes) {
    const bool live = stroke.what == Drawn::wire || stroke.what == Drawn::radial;
    if (stroke.what == Drawn::wire) got.wire_m += length_m(stroke);
    if (stroke.what == Drawn::radial) got.radial_m += length_m(stroke) / 2;  // two of them are drawn
    if (stroke.what == Drawn::rope) got.rope_m += length_m(stroke);
    if (!live) continue;
    for (const Point& at : stroke.at) {
      got.left_m = std::min(got.left_m, at.x_m);
      got.right_m = std::max(got.right_m, at.x_m);
      got.highest_m = std::max(got.highest_m, at.z_m);
      got.lowest_live_m = std::min(got.lowest_live_m, at.z_m);
    }
  }
  return got;
}

}  // namespace

// Whatever "fits" says is measured again on the lines that are drawn.
TEST_CASE("hang: what is said to fit is drawn with all its wire inside the span, under the apex, over the ends") {
  constexpr std::uint64_t kSeed = 20260614;
  std::mt19937_64 bits(kSeed);
  int fitting = 0;
  constexpr int kCases = 20000;
  for (int i = 0; i < kCases; ++i) {
    const Kind& kind = kinds()[bits() % kinds().size()];
    const Rig rig = rig_of(kind, std::exp(between(bits, std::log(1.8), std::log(54))));
    const Space at{between(bits, 0, 25), between(bits, 0, 60), between(bits, 0, 4)};
    const Fit room = fit(rig, at);
    const Hang hung = hang(rig, at);
    const Measured got = measure(sketch(rig, at));
    CAPTURE(std::string(kind.key));
    CAPTURE(rig.wire_m);
    CAPTURE(at.apex_m);
    CAPTURE(at.span_m);
    CAPTURE(at.end_m);
    REQUIRE(std::abs(at.span_m - hung.needs_m - room.span_room_m) < 1e-9);
    if (room.room_m < 0) continue;
    ++fitting;
    REQUIRE(std::abs(got.wire_m - rig.wire_m) < 1e-9);
    REQUIRE(std::abs(got.radial_m - rig.radial_m) < 1e-9);
    REQUIRE(got.right_m - got.left_m <= at.span_m + 1e-9);
    REQUIRE(got.highest_m <= at.apex_m + 1e-9);
    REQUIRE(std::abs(got.lowest_live_m - hung.low_m) < 1e-9);
    if (hung.between_deg == hung.between_deg) REQUIRE(hung.between_deg >= kLeastLegAngleDeg - 1e-9);
    const bool low_by_nature = kind.over_radials() || kind.is_whip() || kind.shape == Shape::sloper;
    if (!low_by_nature) REQUIRE(got.lowest_live_m >= at.end_m - 1e-9);
  }
  MESSAGE("seed " << kSeed << ": " << fitting << " of " << kCases << " fit and were measured again");
  CHECK(fitting > 2000);
}

// Of what does not fit: so much more span or height is said to be missing. With it, the drawing is inside; with a
// centimetre less it is said not to fit.
TEST_CASE("hang: what is said to be missing is enough, on the lines that are drawn, and no more than enough") {
  constexpr std::uint64_t kSeed = 20261125;
  std::mt19937_64 bits(kSeed);
  int refused = 0, either = 0, both = 0;
  for (int i = 0; i < 20000; ++i) {
    const Kind& kind = kinds()[bits() % kinds().size()];
    const Rig rig = rig_of(kind, std::exp(between(bits, std::log(1.8), std::log(54))));
    const Space at{between(bits, 0, 25), between(bits, 0, 60), between(bits, 0, 4)};
    const Lack missing = lack(rig, at);
    CAPTURE(std::string(kind.key));
    CAPTURE(rig.wire_m);
    CAPTURE(at.apex_m);
    CAPTURE(at.span_m);
    CAPTURE(at.end_m);
    REQUIRE((missing.span_m > 0 || missing.apex_m > 0) == (fit(rig, at).room_m < 0));
    if (!(fit(rig, at).room_m < 0)) continue;
    ++refused;
    either += missing.either;
    both += !missing.either && missing.span_m > 0 && missing.apex_m > 0;
    const auto with = [&](double span_m, double apex_m) {
      const Space then{at.apex_m + apex_m, at.span_m + span_m, at.end_m};
      const Measured got = measure(sketch(rig, then));
      REQUIRE(fit(rig, then).room_m >= -1e-9);
      REQUIRE(std::abs(got.wire_m - rig.wire_m) < 1e-9);
      REQUIRE(got.right_m - got.left_m <= then.span_m + 1e-9);
      REQUIRE(got.highest_m <= then.apex_m + 1e-9);
      constexpr double kLessM = 0.01;
      if (span_m > kLessM) REQUIRE(fit(rig, {then.apex_m, then.span_m - kLessM, then.end_m}).room_m < 0);
      if (apex_m > kLessM) REQUIRE(fit(rig, {then.apex_m - kLessM, then.span_m, then.end_m}).room_m < 0);
    };
    if (missing.either) {
      with(missing.span_m, 0);
      with(0, missing.apex_m);
    } else {
      with(missing.span_m, missing.apex_m);
    }
  }
  MESSAGE("seed " << kSeed << ": " << refused << " refused; either would do in " << either << ", both wanted in "
                  << both);
  CHECK(refused > 5000);
  CHECK(either > 500);
  CHECK(both > 500);
}

TEST_CASE("hang: an inverted V of 20 m from 7 m, worked out apart") {
  // legs of 5.05 m: 45 degrees bring the ends to 7 - 3.571 = 3.429 m, 3.571 m out; ropes run on 3.429 m
  const Hang v = hang({Shape::inverted_v, 10.1}, {7, 14});
  CHECK(std::abs(v.low_m - 3.4291) < 1e-4);
  CHECK(std::abs(v.out_m - 3.5709) < 1e-4);
  CHECK(std::abs(v.between_deg - 90) < 1e-9);
  CHECK(std::abs(v.rope_m - 2 * (3.4291 * std::sqrt(2) + 0.5)) < 1e-3);
  CHECK(v.throw_line_m == 18);
  CHECK(v.stakes == 2);
  const Sketch drawn = sketch({Shape::inverted_v, 10.1}, {7, 14});
  CHECK(std::abs(drawn.stakes[1].x_m - 7) < 1e-9);
  CHECK(drawn.feed.z_m == 7);
}

TEST_CASE("hang: an L goes up and along, an off-centre feed stands a third in") {
  // 40 m L of 10.046 m from 6 m: 4.046 m level, radials of 4.22 m
  const Hang l = hang({Shape::inverted_l, 10.046, 4.222}, {6, 20});
  CHECK(std::abs(l.needs_m - (4.222 + 4.546)) < 1e-9);
  CHECK(l.low_m == 0);
  const Sketch third = sketch({Shape::dipole, 30}, {8, 40}, 1.0 / 3);
  CHECK(std::abs(third.feed.x_m + 5) < 1e-9);
}

TEST_CASE("hang: what cannot be has no lines") {
  CHECK(sketch({Shape::dipole, 0}, {8, 25}).strokes.empty());
  CHECK(std::isnan(hang({Shape::dipole, -1}, {8, 25}).needs_m));
  CHECK(sketch({Shape::dipole, 10}, {8, 25}, 2).strokes.empty());
  CHECK(std::isnan(height_at_m({0, 5}, {10, 1}, 11)));
  CHECK(height_at_m({10, 1}, {0, 5}, 5) == 3);
}

// From 9 m down to 1.5 m over 17 m of ground the wire stands 5.25 m high half way (similar triangles).
TEST_CASE("hang: room over an obstacle by hand") {
  Sketch drawn{};
  drawn.strokes.push_back({Drawn::wire, {{0, 9}, {17, 1.5}}});
  drawn.strokes.push_back({Drawn::rope, {{0, 0}, {30, 0}}});  // no wire: does not count
  CHECK(std::abs(clear_over_m(drawn, 8.5, 3) - 2.25) < 1e-12);
  CHECK(std::abs(clear_over_m(drawn, 17, 2) + 0.5) < 1e-12);
  CHECK(std::isnan(clear_over_m(drawn, 17.1, 2)));
  CHECK(std::isnan(clear_over_m(drawn, -0.1, 2)));
  CHECK(std::isnan(clear_over_m({}, 0, 2)));
  drawn.strokes.push_back({Drawn::wire, {{8, 4}, {9, 4}}});  // a second wire under the first: the lower one counts
  CHECK(std::abs(clear_over_m(drawn, 8.5, 3) - 1) < 1e-12);
}

// What is said to be free over an obstacle is measured again on the lines as drawn, by walking along them.
TEST_CASE("hang: room over an obstacle, measured on the drawn wires") {
  std::mt19937_64 bits(20260615);
  int over = 0, beside = 0;
  double worst_m = 0;
  for (int i = 0; i < 4000; ++i) {
    const Kind& kind = kinds()[bits() % kinds().size()];
    if (kind.is_whip()) continue;
    const Rig rig = rig_of(kind, std::exp(between(bits, std::log(1.8), std::log(54))));
    const Space at{between(bits, 2, 25), between(bits, 5, 60), between(bits, 0, 4)};
    const double at_m = between(bits, 0, 25), high_m = between(bits, 0, 6);
    const Sketch drawn = sketch(rig, at);
    const double said_m = clear_over_m(drawn, at_m, high_m);
    // the lowest of the wire's points within a step of the place, walked in steps of a thousandth of each piece
    double lowest_m = 1e9, step_m = 0;
    for (const Stroke& stroke : drawn.strokes) {
      if (stroke.what != Drawn::wire) continue;
      for (std::size_t k = 1; k < stroke.at.size(); ++k) {
        const Point from = stroke.at[k - 1], to = stroke.at[k];
        const double dx = (to.x_m - from.x_m) / 1000, dz = (to.z_m - from.z_m) / 1000;
        if (dx == 0) continue;
        for (int s = 0; s <= 1000; ++s)
          if (std::abs(from.x_m + s * dx - at_m) <= std::abs(dx) / 2 * 1.000001) {
            lowest_m = std::min(lowest_m, from.z_m + s * dz);
            step_m = std::max(step_m, std::abs(dz));
          }
      }
    }
    if (std::isnan(said_m)) {
      ++beside;
      CHECK(lowest_m > 1e8 - 1);
      continue;
    }
    ++over;
    worst_m = std::max(worst_m, std::abs(said_m - (lowest_m - high_m)) - step_m);
    CHECK(std::abs(said_m - (lowest_m - high_m)) <= step_m + 1e-9);
  }
  MESSAGE(over << " over a wire, " << beside << " beside it, worst beyond the step walked " << worst_m << " m");
  CHECK(over > 1000);
  CHECK(beside > 100);
}
