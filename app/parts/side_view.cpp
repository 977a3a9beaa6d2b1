// The antenna's sheet: the side view to scale with handles, and its SWR over the band shaded by what the set gives.
#include <algorithm>
#include <cmath>

#include "app/parts/plot.h"
#include "app/parts/to_scale.h"
#include "app/parts/ui.h"
#include "core/antenna/hang.h"
#include "core/outing/antenna_setup.h"

namespace gs::parts {
namespace {

std::string metres(double m, int digits, const Style& style) { return say_quantity(m, Unit::metre, digits, style); }

Ink ink_of(antenna::Drawn what) {
  switch (what) {
    case antenna::Drawn::wire:
      return Ink::wire;
    case antenna::Drawn::radial:
      return Ink::carried;
    case antenna::Drawn::rope:
      return Ink::rope;
    case antenna::Drawn::feed_line:
      return Ink::feed;
    case antenna::Drawn::support:
      return Ink::outline;
  }
  return Ink::outline;
}

void add_lines(const antenna::Sketch& drawn, std::string label, Scene& scene) {
  for (const antenna::Stroke& stroke : drawn.strokes) {
    SceneLine line{.ink = ink_of(stroke.what)};
    for (const antenna::Point& at : stroke.at) line.points.push_back({at.x_m, at.z_m});
    if (stroke.what == antenna::Drawn::wire) line.label = std::move(label);
    scene.lines.push_back(std::move(line));
  }
  for (const antenna::Point& stake : drawn.stakes)
    scene.things.push_back({SceneThing::Kind::stake, {stake.x_m, stake.z_m}});
  scene.things.push_back({SceneThing::Kind::feed_point, {drawn.feed.x_m, drawn.feed.z_m}});
}

/// The angle that the shape turns on: between the legs of a V, under level for a slope.
void add_angle(const antenna::Hang& hung, const antenna::Space& space, antenna::Shape shape, const Style& style,
               Scene& scene) {
  const auto degrees = [&style](double deg) { return say_quantity(deg, Unit::degree, 0, style); };
  if (std::isfinite(hung.between_deg)) {
    scene.notes.push_back({{0, space.apex_m}, degrees(hung.between_deg) + " between the legs"});
    scene.sentence += " " + degrees(hung.between_deg) + " between the legs.";
  } else if (shape == antenna::Shape::sloper || shape == antenna::Shape::sloping_dipole) {
    scene.notes.push_back(
        {{hung.out_m / 2, (space.apex_m + hung.low_m) / 2}, degrees(hung.slope_deg) + " below level"});
    scene.sentence += " It slopes " + degrees(hung.slope_deg) + " below level.";
  }
}

/// What the wire must pass over: a box at its place, a metre wide, with the room over it.
void add_obstacle(const Plan& plan, const antenna::Sketch& drawn, const Style& style, Scene& scene) {
  if (!plan.has(L::antenna_obstacle_m)) return;
  const double at_m = plan[L::antenna_obstacle_m];
  const bool high = plan.has(L::antenna_obstacle_high_m);
  const double high_m = high ? plan[L::antenna_obstacle_high_m] : 0;
  constexpr double kHalfWidthM = 0.5;
  if (high) {
    scene.lines.push_back({{{at_m - kHalfWidthM, 0},
                            {at_m - kHalfWidthM, high_m},
                            {at_m + kHalfWidthM, high_m},
                            {at_m + kHalfWidthM, 0}},
                           Ink::outline,
                           "obstacle " + metres(high_m, 1, style)});
    const double over_m = antenna::clear_over_m(drawn, at_m, high_m);
    if (std::isfinite(over_m)) {
      scene.dimensions.push_back(
          {{at_m, high_m},
           {at_m, high_m + over_m},
           over_m < 0 ? "runs in by " + metres(-over_m, 1, style) : metres(over_m, 1, style) + " over it",
           0});
      scene.sentence += over_m < 0 ? " The wire runs into the obstacle."
                                   : " It passes " + metres(over_m, 1, style) + " over the obstacle.";
    }
    scene.handles.push_back({L::antenna_obstacle_high_m, {at_m, high_m}});
  }
  scene.handles.push_back({L::antenna_obstacle_m, {at_m, 0}, false});
}

/// Where the wire stands in the free span: symmetric shapes about the support, the others out to one side of it.
std::pair<double, double> span_of(const antenna::Rig& rig, double span_m) {
  switch (rig.shape) {
    case antenna::Shape::sloper:
    case antenna::Shape::sloping_dipole:
      return {0, span_m};
    case antenna::Shape::inverted_l:
      return {-rig.radial_m, span_m - rig.radial_m};
    default:
      return {-span_m / 2, span_m / 2};
  }
}

}  // namespace

void Ui::side_view(float height) {
  const Plan& plan = session.plan();
  const antenna::Kind* kind = antenna_kind(plan);
  const antenna::Space space = antenna_space(plan);
  if (!kind || !plan.has_all(L::antenna_frequency_mhz, L::antenna_apex_m, L::antenna_span_m)) {
    paragraph("The side view wants antenna, frequency, apex height and free span.", "side.wants", theme.ink2);
    return;
  }
  const Style& style = session.style();
  const antenna::Rig rig = antenna::rig_of(*kind, plan[L::antenna_frequency_mhz], antenna_setup(plan));
  const antenna::Hang hung = antenna::hang(rig, space);
  const bool third = kind->key == "off_centre_fed";
  const antenna::Sketch drawn = antenna::sketch(rig, space, third ? 1.0 / 3 : 0.5);
  if (drawn.strokes.empty()) return;

  const bool two_legs = rig.shape == antenna::Shape::inverted_v;
  const double shown_m = two_legs ? rig.wire_m / 2 : rig.wire_m;
  const std::string wire = metres(shown_m, 2, style) + (two_legs ? " each leg" : "");
  const double room_m = antenna::fit(rig, space).room_m;

  Scene scene;
  scene.id = "side_view";
  scene.name = "The antenna from the side";
  scene.sentence = std::string(kind->name) + ": " + wire + ", apex " + metres(space.apex_m, 1, style) +
                   ", lowest live wire " + metres(std::max(0.0, hung.low_m), 1, style) + ", needs " +
                   metres(hung.needs_m, 1, style) + " of " + metres(space.span_m, 1, style) + " free. " +
                   (room_m >= 0 ? "It fits, a person and a child stand beside it." : "It does not fit.");
  add_lines(drawn, wire, scene);
  const double tree_m = std::max(space.apex_m * 1.25, space.apex_m + 1);
  if (kind->is_whip()) {
    scene.lines.push_back({{{-2, 0.4},
                            {-2, 0.9},
                            {-1.2, antenna::kVehicleM},
                            {1.2, antenna::kVehicleM},
                            {2, 0.9},
                            {2, 0.4},
                            {-2, 0.4}},
                           Ink::outline,
                           "vehicle"});
  } else if (rig.shape != antenna::Shape::dipole) {
    scene.things.push_back({SceneThing::Kind::tree, {0, 0}, tree_m});
    scene.things.push_back({SceneThing::Kind::support, {0, space.apex_m}});
  }
  const auto [left, right] = span_of(rig, space.span_m);
  double farthest = right;
  for (const antenna::Point& stake : drawn.stakes) farthest = std::max(farthest, stake.x_m);
  scene.things.push_back({SceneThing::Kind::person, {farthest + 1.5, 0}});
  scene.things.push_back({SceneThing::Kind::child, {farthest + 2.6, 0}});

  if (!kind->is_whip()) {
    // beside the crown, where the span begins under it
    const double beside_m = rig.shape == antenna::Shape::dipole ? left : std::min(left, -0.34 * tree_m);
    scene.dimensions.push_back(
        {{beside_m, 0}, {beside_m, space.apex_m}, metres(space.apex_m, 1, style) + " apex", -8});
  }
  if (hung.low_m > 0.3 && two_legs)
    scene.dimensions.push_back({{hung.out_m, 0}, {hung.out_m, hung.low_m}, metres(hung.low_m, 1, style), 0});
  // stakes stand out beyond the span: their own length, where there is room for two
  const bool staked = !phone() && drawn.stakes.size() > 1;
  if (staked) {
    const auto [nearest, farthest_stake] = std::minmax_element(
        drawn.stakes.begin(), drawn.stakes.end(), [](const auto& a, const auto& b) { return a.x_m < b.x_m; });
    const double apart_m = farthest_stake->x_m - nearest->x_m;
    scene.dimensions.push_back(
        {{nearest->x_m, 0}, {farthest_stake->x_m, 0}, metres(apart_m, 1, style) + " stake to stake", 28});
  }
  scene.dimensions.push_back({{left, 0},
                              {right, 0},
                              metres(space.span_m, 1, style) + " free, needs " + metres(hung.needs_m, 1, style),
                              staked ? 58.0F : 28.0F});
  add_angle(hung, space, rig.shape, style, scene);
  add_obstacle(plan, drawn, style, scene);
  if (!kind->is_whip()) {
    scene.handles.push_back({L::antenna_apex_m, {drawn.top.x_m, drawn.top.z_m}});
    // the free span grows to both sides of a symmetric antenna, to one side of the others
    const bool both = left == -right;
    scene.handles.push_back({L::antenna_span_m, {right, 0}, false, both ? 0 : left, both ? 2.0 : 1.0});
    if (plan.has(L::antenna_end_m) && two_legs && std::abs(hung.low_m - space.end_m) < 1e-6)
      scene.handles.push_back({L::antenna_end_m, {hung.out_m, hung.low_m}});
  }
  to_scale(scene, height);
}

void Ui::swr_plot(float height) {
  const Plan& plan = session.plan();
  const antenna::Kind* kind = antenna_kind(plan);
  if (!kind || !plan.has(L::antenna_frequency_mhz)) return;
  const double f_mhz = plan[L::antenna_frequency_mhz];
  const Figure now = session.outlook()[R::feedline_swr_at_radio];
  if (!std::isfinite(now.value) || plan.has(L::feedline_measured_swr) || plan.has(L::antenna_feed_r_ohm)) return;
  // The same plan on neighbouring frequencies; the wire stays as it is cut, the whip as it is tuned.
  Plan other = plan;
  const auto stays = [&other](L id, double value) {
    other.x[std::size_t(id)] = value;
    other.from[std::size_t(id)] = From::yours;
  };
  const antenna::Setup setup = antenna_setup(plan);
  const double dip_mhz = antenna::first_resonance_mhz(*kind, f_mhz, setup);
  if (!std::isfinite(dip_mhz)) return;
  if (kind->is_whip())
    stays(L::antenna_dip_mhz, dip_mhz);
  else if (!std::isfinite(setup.dip_mhz))
    stays(L::antenna_wire_m, antenna::rig_of(*kind, f_mhz, setup).wire_m);

  Plot plot;
  plot.id = "swr_band";
  plot.name = "SWR at the radio, and what the set gives";
  const double side = std::max(kind->is_whip() ? 0.012 * f_mhz : 0.035 * f_mhz, std::abs(f_mhz - dip_mhz) * 1.2);
  const double least = f_mhz - std::min(side, 0.2 * f_mhz), most = f_mhz + std::min(side, 0.2 * f_mhz);
  constexpr int kPoints = 48;
  constexpr double kTop = 5;
  PlotCurve curve{CurveKind::live, "SWR", {}};
  const double limit = plan[L::radio_fold_back_swr];
  double gives_from = std::numeric_limits<double>::quiet_NaN(), gives_to = gives_from;
  for (int i = 0; i <= kPoints; ++i) {
    const double f = least + (most - least) * i / kPoints;
    other.x[std::size_t(L::antenna_frequency_mhz)] = f;
    const double swr = evaluate(other)[R::feedline_swr_at_radio].value;
    curve.points.push_back({f, std::min(swr, kTop)});
    if (swr <= limit) {
      if (!std::isfinite(gives_from)) gives_from = f;
      gives_to = f;
    }
  }
  const Style& style = session.style();
  plot.x = {"frequency", Unit::megahertz, 3, least, most};
  plot.y = {"SWR at radio", Unit::none, 1, 1, kTop};
  if (std::isfinite(gives_from)) {
    plot.areas.push_back({gives_from, gives_to, Tint::wood, "gives all"});
    if (gives_from > least) plot.areas.push_back({least, gives_from, Tint::hatched, "turns down"});
    if (gives_to < most) plot.areas.push_back({gives_to, most, Tint::hatched, "turns down"});
  } else {
    plot.areas.push_back({least, most, Tint::hatched, "turns down"});
  }
  plot.curves.push_back(std::move(curve));
  plot.lines.push_back({PlotLine::Kind::need, false, limit, "set's limit"});
  plot.marks.push_back({f_mhz, std::min(now.value, kTop), now.state,
                        print_quantity(now.value, Unit::none, 1, style).number + " now"});
  const std::string from = std::isfinite(gives_from) ? say_quantity(gives_from, Unit::megahertz, 3, style) : "";
  plot.sentence = "SWR at the radio is " + print_quantity(now.value, Unit::none, 1, style).number + " on " +
                  say_quantity(f_mhz, Unit::megahertz, 3, style) + ", dip at " +
                  say_quantity(dip_mhz, Unit::megahertz, 3, style) + ". " +
                  (from.empty() ? "Nowhere here does the set give all its power."
                                : "The set gives all from " + from + " to " +
                                      say_quantity(gives_to, Unit::megahertz, 3, style) + ".");
  this->plot(plot, height);
}

}  // namespace gs::parts
