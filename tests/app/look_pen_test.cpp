// What the pen puts into the draw list.
#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "app/look/cuts.h"
#include "app/look/pen.h"
#include "doctest/doctest.h"
#include "tests/app/look_stage.h"

using namespace gs::look;
using look_stage::bounds;
using look_stage::Bounds;
using look_stage::kRatios;
using look_stage::Stage;

namespace {

bool whole(float v) { return v == std::round(v); }
bool all_whole(const std::vector<ImDrawVert>& vertices) {
  return !vertices.empty() && std::all_of(vertices.begin(), vertices.end(),
                                          [](const ImDrawVert& v) { return whole(v.pos.x) && whole(v.pos.y); });
}

}  // namespace

TEST_CASE("edges, rules and glyphs stand on whole device px at every ratio") {
  for (const float ratio : kRatios) {
    CAPTURE(ratio);
    Stage stage(ratio);
    Pen pen = stage.pen();
    const ImU32 ink = pen.theme().ink;
    const auto rule = Stage::drawn([&] { pen.line({10.3F, 20.7F}, {110.3F, 20.7F}, ink, 1); });
    CHECK(all_whole(rule));
    CHECK(bounds(rule).y1 - bounds(rule).y0 == std::fmax(1, std::round(ratio)));
    const auto upright = Stage::drawn([&] { pen.line({33.3F, 20}, {33.3F, 80}, ink, 1); });
    CHECK(all_whole(upright));
    CHECK(bounds(upright).x1 - bounds(upright).x0 == std::fmax(1, std::round(ratio)));
    CHECK(all_whole(Stage::drawn([&] { pen.fill({7.1F, 9.2F, 50.3F, 20.4F}, ink); })));
    CHECK(all_whole(Stage::drawn([&] { pen.outline({7.1F, 9.2F, 50.3F, 20.4F}, ink); })));
    CHECK(all_whole(Stage::drawn([&] { pen.text(12.37F, 40.81F, "Runtime 2 h 20", Face::regular, 18, ink); })));
    CHECK(all_whole(Stage::drawn([&] { pen.text(99.9F, 40.3F, "right", Face::bold, 15, ink, Align::right); })));
    CHECK(all_whole(Stage::drawn([&] { pen.leader(10.4F, 200.9F, 55.5F, ink); })));
    CHECK(whole(pen.snap(13.77F) * ratio));
  }
  Stage small(0.5F);
  Pen pen = small.pen();
  const auto rule = Stage::drawn([&] { pen.line({10, 20}, {110, 20}, pen.theme().ink, 1); });
  CHECK(bounds(rule).y1 - bounds(rule).y0 == 1);  // never less than one device px
}

TEST_CASE("two fills that share an edge leave no gap and do not overlap") {
  for (const float ratio : kRatios) {
    Stage stage(ratio);
    Pen pen = stage.pen();
    const Bounds left = bounds(Stage::drawn([&] { pen.fill({10.2F, 0, 33.3F, 10}, pen.theme().ink); }));
    const Bounds right = bounds(Stage::drawn([&] { pen.fill({10.2F + 33.3F, 0, 20, 10}, pen.theme().ink); }));
    CHECK(left.x1 == right.x0);
  }
}

TEST_CASE("dashes cover what their pattern says") {
  // By hand: 100 = 5 periods of 19 with 11 on each, and 5 of the next 9: 60 on.
  const std::array straight{Point{0, 0}, Point{100, 0}};
  float on = 0;
  for (const auto& piece : cut_dashes(straight, stroke::kPin)) on += length_of(piece);
  CHECK(on == doctest::Approx(60).epsilon(1e-5));
  // 3 on, 5 off along 10 + 10 round a corner: 0 to 3, 8 to 11 (over the corner), 16 to 19.
  const std::array bent{Point{0, 0}, Point{10, 0}, Point{10, 10}};
  const auto pieces = cut_dashes(bent, stroke::kNeed);
  REQUIRE(pieces.size() == 3);
  CHECK(pieces[1].size() == 3);
  CHECK(length_of(pieces[1]) == doctest::Approx(3).epsilon(1e-5));
  CHECK(pieces[2].front().y == doctest::Approx(6).epsilon(1e-5));
  CHECK(pieces[2].back().y == doctest::Approx(9).epsilon(1e-5));
  CHECK(cut_dashes(straight, std::array{0.0F, 0.0F}).empty());
  CHECK(cut_dashes(std::span(straight).first(1), stroke::kNeed).empty());

  Stage stage(1);
  Pen pen = stage.pen();
  const double area = Stage::area([&] { pen.dashed(straight, stroke::kPin, pen.theme().pin, 2); });
  CHECK(area == doctest::Approx(60 * 2).epsilon(1e-9));
}

TEST_CASE("a hatching stripe is cut to its shape") {
  const std::array square{Point{0, 0}, Point{10, 0}, Point{10, 10}, Point{0, 10}};
  const auto area = [](const std::vector<Point>& p) {
    float sum = 0;
    for (std::size_t i = 0; i < p.size(); ++i) {
      const Point a = p[i], b = p[(i + 1) % p.size()];
      sum += (a.x * b.y - b.x * a.y) / 2;
    }
    return std::fabs(sum);
  };
  CHECK(area(cut_stripe(square, 0, 10)) == doctest::Approx(50));        // half the square
  CHECK(area(cut_stripe(square, 9, 11)) == doctest::Approx(100 - 81));  // less two triangles with legs of 9
  CHECK(cut_stripe(square, 21, 25).empty());
  Stage stage(2);
  Pen pen = stage.pen();
  const Bounds b = bounds(Stage::drawn([&] { pen.hatch({10, 10, 40, 20}, pen.theme().contour); }));
  CHECK(b.x0 >= 20 - 0.75F);  // half a px of soft edge, a little more at a corner
  CHECK(b.x1 <= 100 + 0.75F);
  CHECK(b.y0 >= 20 - 0.75F);
  CHECK(b.y1 <= 60 + 0.75F);
}

TEST_CASE("the four states are four shapes of their stated size") {
  // Half widths in radii: disc 1; lozenge 1.25; saltire 0.86 + 0.56 / (2 root 2); dashed ring within 1.
  constexpr float kR = 14, kScale = 4;
  Stage stage(kScale);
  Pen pen = stage.pen();
  const std::array<std::pair<Sign, float>, 4> expected{{{Sign::holds, 1.0F},
                                                        {Sign::tight, 1.25F},
                                                        {Sign::fails, 0.86F + 0.28F / std::sqrt(2.0F)},
                                                        {Sign::unknown, 1.0F}}};
  std::vector<std::set<std::pair<float, float>>> sets;
  for (const auto& [sign, half] : expected) {
    const Sign which = sign;
    const auto vertices = Stage::drawn([&] { pen.sign(which, {100, 100}, kR, false); });
    const Bounds b = bounds(vertices);
    const float reach = (b.x1 - b.x0) / 2 / kScale, miss = reach - half * kR;
    MESSAGE("state ", int(which), ": half width ", reach, " for ", half * kR);
    CHECK(std::fabs(miss) <=
          (which == Sign::unknown ? 1.0F : 1.0F / kScale));  // soft edge: half a device px, more at a tip
    std::set<std::pair<float, float>> points;
    for (const ImDrawVert& v : vertices) points.insert({v.pos.x, v.pos.y});
    sets.push_back(std::move(points));
    const Bounds halo = bounds(Stage::drawn([&] { pen.sign(which, {100, 100}, kR, true); }));
    CHECK(halo.x1 - halo.x0 >= b.x1 - b.x0 + 2 * (sign::kHalo - 1) * kScale);
  }
  for (std::size_t i = 0; i < sets.size(); ++i)
    for (std::size_t k = 0; k < i; ++k) CHECK(sets[i] != sets[k]);
}

TEST_CASE("a hole and a halo show the ground") {
  Stage stage(1);
  Pen pen = stage.pen();
  const ImU32 band = pen.theme().band;
  const auto uses = [](const std::vector<ImDrawVert>& v, ImU32 colour) {
    return std::any_of(v.begin(), v.end(), [&](const ImDrawVert& x) { return x.col == colour; });
  };
  CHECK(uses(Stage::drawn([&] { pen.sign(Sign::holds, {50, 50}, 10); }), pen.theme().paper));
  {
    const Ground on_band(pen, band);
    CHECK(uses(Stage::drawn([&] { pen.sign(Sign::holds, {50, 50}, 10); }), band));
  }
  CHECK(pen.ground() == pen.theme().paper);
}

TEST_CASE("each change has its own shape") {
  Stage stage(2);
  Pen pen = stage.pen();
  const ImU32 ink = pen.theme().ink;
  // In the middle of the triangle's mass the better one is filled, the worse one hollow; each points its own way.
  CHECK(Stage::covers(2 * 16, 2 * 46.5F, [&] { pen.delta(Delta::better, 10, 50, ink); }));
  CHECK_FALSE(Stage::covers(2 * 16, 2 * 43.5F, [&] { pen.delta(Delta::worse, 10, 50, ink); }));
  CHECK_FALSE(Stage::covers(2 * 11, 2 * 41, [&] { pen.delta(Delta::better, 10, 50, ink); }));
  CHECK_FALSE(Stage::covers(2 * 11, 2 * 49, [&] { pen.delta(Delta::worse, 10, 50, ink); }));
  const Bounds level = bounds(Stage::drawn([&] { pen.delta(Delta::same, 10, 50, ink); }));
  CHECK(level.x1 - level.x0 == 24);
  CHECK(level.y1 - level.y0 < 7);
}

TEST_CASE("icons keep to their box") {
  Stage stage(2);
  Pen pen = stage.pen();
  for (int i = 0; i < int(Icon::count); ++i) {
    CAPTURE(i);
    const auto vertices = Stage::drawn([&] { pen.icon(Icon(i), 100, 100, 24, pen.theme().ink); });
    REQUIRE(vertices.size() >= 4);
    const Bounds b = bounds(vertices);
    CHECK(b.x0 >= 2 * (100 - 1.5F));
    CHECK(b.y0 >= 2 * (100 - 1.5F));
    CHECK(b.x1 <= 2 * (124 + 1.5F));
    CHECK(b.y1 <= 2 * (124 + 1.5F));
  }
  CHECK(strokes(Icon::count).empty());
}

TEST_CASE("a tally has the width it says and a stroke a contact") {
  Stage stage(2);
  Pen pen = stage.pen();
  for (const auto& [count, wanted] : {std::pair{7, 3}, {5, 0}, {4, 1}, {0, 10}, {13, 4}}) {
    const int have = count, want = wanted;
    float said = 0;
    const Bounds b =
        bounds(Stage::drawn([&] { said = pen.tally(10, 10, 60, have, want, 0xFF000000U, 0xFF000000U); }));
    CHECK(said == Pen::tally_width(60, have, want));
    CHECK(b.x0 >= 2 * 10.0F - 1);
    CHECK(b.x1 <= 2 * (10 + said) + 1);
    CHECK(b.y0 >= 2 * 10.0F - 1);
    CHECK(b.y1 <= 2 * 70.0F + 1);
  }
  CHECK(Pen::tally_width(60, 0, 0) == 0);
}

TEST_CASE("figures set their units small, on one baseline") {
  CHECK(Pen::unit_size(42) == 26);
  CHECK(Pen::unit_size(26) == 16);
  CHECK(Pen::unit_size(20) == 15);
  CHECK(Pen::unit_size(34, type::kChainUnitRatio) == 18);
  CHECK(Pen::unit_size(15) == 15);
  Stage stage(2);
  Pen pen = stage.pen();
  std::vector<TextRecord> seen;
  pen.record(&seen);
  const float drawn = pen.figure(100, 50, "2 h 20", 42, pen.theme().ink);
  REQUIRE(seen.size() == 3);
  CHECK(seen[0].size == 42);
  CHECK(seen[1].text == "h");
  CHECK(seen[1].size == 26);
  CHECK(seen[2].size == 42);
  CHECK(std::fabs(seen[1].rect.x - seen[0].rect.right() - 0.17F * 42) <= 0.25F);  // half a device px
  CHECK(std::fabs(seen[2].rect.right() - (100 + drawn)) <= 0.25F);
  seen.clear();
  pen.figure(500, 50, "> 99 %", 26, pen.theme().ink, Align::right);
  REQUIRE(seen.size() == 3);
  CHECK(seen[0].size == 26);
  CHECK(seen[2].size == 16);
  CHECK(std::fabs(seen[2].rect.right() - 500) <= 0.5F);
  seen.clear();
  pen.figure(0, 50, "none", 20, pen.theme().ink);
  REQUIRE(seen.size() == 1);
  CHECK(seen[0].size == 20);
}

TEST_CASE("text is wrapped, and nothing of it is lost") {
  for (const float ratio : kRatios) {
    Stage stage(ratio);
    const Pen pen = stage.pen();
    const std::string text = "Supply at key-down stays above the least that the radio takes, before leave-by";
    for (const float room : {90.0F, 160.0F, 333.0F}) {
      std::string joined;
      for (const std::string_view line : pen.lines(text, room, Face::regular, 18)) {
        CHECK(pen.width(line, Face::regular, 18) <= room + 0.01F);
        joined += (joined.empty() ? "" : " ") + std::string(line);
      }
      CHECK(joined == text);
    }
    std::string letters;
    for (const std::string_view line : pen.lines("Wwwwwwwwwwwwwwwwwwwwé", 60, Face::bold, 18)) {
      CHECK(pen.width(line, Face::bold, 18) <= 60.01F);
      letters += line;
    }
    CHECK(letters == "Wwwwwwwwwwwwwwwwwwwwé");
    // a figure and its unit stay on one line where another place to break will do
    const std::string loss = "Arrives 58 %, line loss 2.4 dB";
    const auto broken =
        pen.lines(loss, pen.width("Arrives 58 %, line loss 2.4 d", Face::regular, 16), Face::regular, 16);
    REQUIRE(broken.size() == 2);
    CHECK(broken[1] == "2.4 dB");
    CHECK(pen.lines("2.4 dB", pen.width("2.4 d", Face::regular, 16), Face::regular, 16)[1] == "dB");
    CHECK(pen.lines("one\ntwo\n", 500, Face::regular, 16).size() == 3);
    CHECK(pen.lines("", 500, Face::regular, 16).size() == 1);
    const std::string cut = pen.elided("A very long name for a meadow by the river", 120, Face::bold, 20);
    CHECK(pen.width(cut, Face::bold, 20) <= 120.01F);
    CHECK(cut.ends_with("…"));
    CHECK(pen.elided("Short", 120, Face::bold, 20) == "Short");
  }
}

TEST_CASE("text is recorded with its ground, and drawn whatever it holds") {
  Stage stage(2);
  Pen pen = stage.pen();
  std::vector<TextRecord> seen;
  pen.record(&seen);
  {
    const Ground solid(pen, pen.theme().solid);
    pen.text(10, 30, "Set 65 W", Face::bold, 18, pen.theme().on_solid);
  }
  pen.text(10, 60, "שלום \xFF", Face::regular, 18, pen.theme().ink);
  pen.record(nullptr);
  pen.text(10, 90, "unseen", Face::regular, 18, pen.theme().ink);
  REQUIRE(seen.size() == 2);
  CHECK(seen[0].ground == pen.theme().solid);
  CHECK(seen[0].rect.h == doctest::Approx(18 * 1.32));
  CHECK(seen[0].rect.w == doctest::Approx(pen.width("Set 65 W", Face::bold, 18)));
  CHECK(contrast(seen[0].colour, seen[0].ground) >= 7);
  CHECK(seen[1].ground == pen.theme().paper);
}

TEST_CASE("a clip narrows and comes back, on whole device px") {
  Stage stage(2.625F);
  Pen pen = stage.pen();
  const ImVec2 before = Stage::list().GetClipRectMax();
  pen.push_clip({10.1F, 10.2F, 50.3F, 50.4F});
  CHECK(whole(Stage::list().GetClipRectMin().x));
  CHECK(whole(Stage::list().GetClipRectMax().y));
  pen.push_clip({0, 0, 1000, 30});
  CHECK(Stage::list().GetClipRectMax().x == std::round(60.4F * 2.625F));
  pen.pop_clip();
  pen.pop_clip();
  CHECK(Stage::list().GetClipRectMax().x == before.x);
}
