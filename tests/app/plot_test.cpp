// Plots and drawings to scale: numbers at the axes, places of words, one scale for both axes, handles.
#include "app/parts/plot.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "app/parts/labels.h"
#include "app/parts/to_scale.h"
#include "app/parts/ui.h"
#include "tests/app/look_stage.h"

using namespace gs;
using namespace gs::parts;
using look::Box;
using look::Point;

TEST_CASE("an axis has at most four numbers, round ones, all within it") {
  for (double least : {0.0, -3.7, 11.0, 1.8, 0.02}) {
    for (double span : {0.013, 0.9, 2.6, 41.0, 999.0}) {
      for (const Unit unit : {Unit::none, Unit::volt, Unit::minute, Unit::hour}) {
        const PlotAxis axis{"", unit, 1, least, least + span};
        const auto marks = axis_marks(axis);
        INFO(least << " to " << least + span << ", unit " << int(unit));
        CHECK(marks.size() <= 4);
        CHECK(marks.size() >= 1);
        for (const double mark : marks) {
          CHECK(mark >= axis.least - span * 1e-6);
          CHECK(mark <= axis.most + span * 1e-6);
        }
      }
    }
  }
  const PlotAxis clock{"", Unit::clock_minute, 0, 14 * 60 + 40, 17 * 60 + 10};
  CHECK(axis_marks(clock) == std::vector<double>{900, 960, 1020});
  const PlotAxis bands{"", Unit::megahertz, 1, 1.8, 54, true};
  CHECK(axis_marks(bands).size() <= 4);
  const PlotAxis own{"", Unit::none, 0, 1, 3, false, {1, 1.5, 2, 3}};
  CHECK(axis_marks(own) == std::vector<double>{1, 1.5, 2, 3});
  CHECK(axis_marks({"", Unit::none, 0, 2, 2}).empty());
  CHECK(axis_marks({"", Unit::none, 0, 0, 10, true}).empty());
}

TEST_CASE("a log axis puts equal ratios at equal distances, and there and back is the same") {
  const PlotAxis axis{"", Unit::megahertz, 1, 1.8, 54, true};
  CHECK(axis_place(axis, 18) - axis_place(axis, 6) == doctest::Approx(axis_place(axis, 54) - axis_place(axis, 18)));
  for (double place : {0.0, 0.2, 0.77, 1.0})
    CHECK(axis_place(axis, axis_value(axis, place)) == doctest::Approx(place));
  CHECK(std::isnan(axis_place(axis, 0)));
}

TEST_CASE("a curve is read between its points and nowhere else") {
  const PlotCurve curve{CurveKind::live, "", {{0, 12}, {1, 11}, {2, std::nan("")}, {3, 9}}};
  CHECK(*curve_at(curve, 0.25) == doctest::Approx(11.75));
  CHECK_FALSE(curve_at(curve, 1.5));
  CHECK_FALSE(curve_at(curve, -0.1));
  CHECK(*crossing(curve.points, 11.2) == doctest::Approx(0.8));
  CHECK(*crossing(curve.points, 11) == doctest::Approx(1));
  CHECK_FALSE(crossing(curve.points, 10));
  // on two log axes a power law is a straight line
  const PlotCurve law{CurveKind::live, "", {{1, 2}, {100, 20}}};
  CHECK(*curve_at(law, 10, true, true) == doctest::Approx(2 * std::sqrt(10.0)));
}

TEST_CASE("a label touches neither lines nor labels, or is not placed at all") {
  LabelRoom room({0, 0, 200, 100});
  const Point line[] = {{0, 50}, {200, 50}};
  room.block(line, 2);
  CHECK_FALSE(room.is_free({10, 45, 40, 10}));
  CHECK(room.is_free({10, 20, 40, 20}));
  CHECK_FALSE(room.is_free({180, 20, 40, 20}));
  const Box places[] = {{10, 40, 40, 20}, {10, 20, 40, 20}};
  const Box* first = room.place(places);
  REQUIRE(first != nullptr);
  CHECK(first->y == 20);
  CHECK(room.place(places) == nullptr);
  CHECK(crosses({0, 0}, {10, 10}, {4, 0, 10, 5}));
  CHECK_FALSE(crosses({0, 0}, {10, 10}, {6, 0, 10, 5}));
}

namespace {

/// A page with one part on it, as wide as asked.
struct Page {
  look_stage::Stage stage{1};
  Session session;
  Hand hand;
  Asked asked;
  Typing typing;
  look::Pen pen = stage.pen();
  std::vector<look::TextRecord> texts;
  Ui ui{session, pen, hand, asked, typing, {0, 0, 1024, 768}, 1};
  explicit Page(float width) {
    pen.record(&texts);
    ui.column(10, width, 10);
  }
};

Plot discharge(double drop_v) {
  Plot plot;
  plot.id = "supply";
  plot.name = "Supply on the air";
  plot.sentence = "The supply falls to 11.7 V after 2 h 20.";
  plot.x = {"on the air", Unit::hour, 0, 0, 3};
  plot.y = {"supply", Unit::volt, 1, 11, 13.6};
  PlotCurve live{CurveKind::live, "on transmit, 40 W", {}}, pinned{CurveKind::pinned, "pinned 100 W", {}};
  for (int i = 0; i <= 40; ++i) {
    const double t = 2.8 * i / 40;
    live.points.push_back({t, 13.3 - drop_v - 0.2 * t - std::pow(t / 2.7, 12)});
    pinned.points.push_back({t, 13.2 - 1.6 * drop_v - 0.3 * t - std::pow(t / 2.0, 12)});
  }
  plot.curves = {live, pinned};
  plot.lines = {{PlotLine::Kind::limit, false, 11.7, "radio stops below 11.7 V"},
                {PlotLine::Kind::need, true, 2, "need 2 h 00"}};
  plot.bands = {{true, 2.4, 3, Tint::hatched, "reserve 15 %"}};
  if (const auto x = crossing(live.points, 11.7)) plot.marks = {{*x, 11.7, State::tight, "2 h 20"}};
  return plot;
}

}  // namespace

TEST_CASE("every word of a plot is said once, and no two words touch, at any width and any curve") {
  int plots = 0;
  for (const float width : {170.0F, 280.0F, 358.0F, 560.0F, 820.0F}) {
    for (double drop = 0.1; drop < 1.6; drop += 0.15) {
      Page page(width);
      page.ui.plot(discharge(drop), 300);
      INFO("width " << width << ", drop " << drop);
      ++plots;
      std::string all;
      for (const look::TextRecord& text : page.texts) all += text.text + " ";
      for (const char* word : {"transmit,", "pinned", "radio", "need", "reserve"})
        CHECK_MESSAGE(all.find(word) != std::string::npos, word << " is not said");
      for (std::size_t i = 0; i < page.texts.size(); ++i) {
        const Box a = page.texts[i].rect;
        CHECK_MESSAGE(a.x >= 9, page.texts[i].text << " leaves the plot on the left");
        CHECK_MESSAGE(a.right() <= 10 + width + 1, page.texts[i].text << " leaves the plot on the right");
        for (std::size_t k = 0; k < i; ++k) {
          const Box b = page.texts[k].rect;
          // line boxes may share the air above and below the letters
          const Box tight_a{a.x, a.y + 4, a.w, a.h - 8}, tight_b{b.x, b.y + 4, b.w, b.h - 8};
          CHECK_MESSAGE(!overlap(tight_a, tight_b), page.texts[i].text << " touches " << page.texts[k].text);
        }
      }
    }
  }
  MESSAGE(plots << " plots looked at");
}

TEST_CASE("a plot is an image with its sentence and a table of its points in the mirror") {
  Page page(500);
  page.ui.plot(discharge(0.5), 300);
  const auto& nodes = page.ui.tree.nodes;
  REQUIRE(nodes.front().role == mirror::Role::image);
  CHECK(nodes.front().value == "The supply falls to 11.7 V after 2 h 20.");
  const auto count = [&](mirror::Role role) {
    return std::count_if(nodes.begin(), nodes.end(), [&](const mirror::Node& node) { return node.role == role; });
  };
  CHECK(count(mirror::Role::table) == 1);
  CHECK(count(mirror::Role::columnheader) == 3);
  CHECK(count(mirror::Role::row) >= 4);
  CHECK(count(mirror::Role::cell) == (count(mirror::Role::row) - 1) * 3);
  bool volts = false;
  for (const mirror::Node& node : nodes) volts = volts || node.name == "12.8 volts";
  CHECK_MESSAGE(volts, "13.3 V − 0.5 V at the start is read as 12.8 volts");
}

TEST_CASE("the reading cursor goes where a key or an assistive technology wants it") {
  Page page(500);
  Plot plot = discharge(0.5);
  plot.cursor = PlotCursor{"supply:cursor", "Time that is read", "1 hour", 1, 0.25};
  CHECK_FALSE(page.ui.plot(plot, 300));
  page.asked.steps["supply:cursor"] = 2;
  CHECK(page.ui.plot(plot, 300).value_or(0) == doctest::Approx(1.5));
  page.asked.steps.clear();
  page.asked.set["supply:cursor"] = 99;
  CHECK(page.ui.plot(plot, 300).value_or(0) == doctest::Approx(3));
}

TEST_CASE("a drawing has one scale for both axes, and a scale bar that tells the truth") {
  Scene scene;
  scene.lines = {{{{-6, 0}, {0, 8}, {6, 0}}, Ink::wire, ""}};
  const Extent extent = extent_of(scene);
  CHECK(extent.left == -6);
  CHECK(extent.top == 8);
  const Fit fit = fit_into(extent, {10, 20, 600, 200}, true);
  const Point top = fit.at({0, 8}), left = fit.at({-6, 0});
  CHECK(fit.px_per_m == doctest::Approx(25));
  CHECK(top.y == doctest::Approx(20));
  CHECK(left.y == doctest::Approx(220));
  CHECK(top.x - left.x == doctest::Approx(150));
  CHECK(fit.back(top).y == doctest::Approx(8));
  CHECK(scale_bar_m(25, 190) == doctest::Approx(5));
  CHECK(scale_bar_m(25, 60) == doctest::Approx(2));
  CHECK(scale_bar_m(400, 190) == doctest::Approx(0.2));
}

TEST_CASE("a person and a child stand on the drawing at their true size") {
  Scene scene;
  scene.things = {{SceneThing::Kind::person, {0, 0}}, {SceneThing::Kind::child, {2, 0}}};
  const Extent extent = extent_of(scene);
  CHECK(extent.top - extent.bottom >= kPerson_m);
  CHECK(kChild_m < kPerson_m);
}

TEST_CASE("a handle on a drawing moves its lever by the metres it was dragged") {
  Page page(500);
  page.session.set(L::antenna_apex_m, 6.0);
  Scene scene;
  scene.id = "side";
  scene.name = "From the side";
  scene.lines = {{{{-6, 0}, {0, 6}, {6, 0}}, Ink::wire, ""}};
  scene.handles = {{L::antenna_apex_m, {0, 6}}};
  page.ui.to_scale(scene, 300);
  const auto& nodes = page.ui.tree.nodes;
  const auto slider = std::find_if(nodes.begin(), nodes.end(),
                                   [](const mirror::Node& node) { return node.role == mirror::Role::slider; });
  REQUIRE(slider != nodes.end());
  CHECK(slider->name.find("on the drawing") != std::string::npos);
  const Box box{slider->x, slider->y, slider->w, slider->h};
  page.hand.end_frame();
  page.hand.pointer({platform::PointerKind::down, platform::Device::touch, 1, box.mid_x(), box.mid_y()},
                    box.mid_x(), box.mid_y(), 1);
  page.hand.begin_frame(1);
  page.ui.column(10, 500, 10);
  page.ui.to_scale(scene, 300);
  CHECK(page.session.plan()[L::antenna_apex_m] == doctest::Approx(6));
  const double px_per_m = page.hand.scratch.px_per_m;
  REQUIRE(px_per_m > 0);
  page.hand.end_frame();
  const float up = float(1.5 * px_per_m);
  page.hand.pointer({platform::PointerKind::move, platform::Device::touch, 1, box.mid_x(), box.mid_y() - up},
                    box.mid_x(), box.mid_y() - up, 1.02);
  page.hand.begin_frame(1.02);
  page.ui.column(10, 500, 10);
  page.ui.to_scale(scene, 300);
  CHECK(page.session.plan()[L::antenna_apex_m] == doctest::Approx(7.5).epsilon(0.01));
}
