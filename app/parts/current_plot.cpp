// Current against power: the set's law, what was read off a meter, the plan's power, and what the battery may give.
#include <algorithm>
#include <cmath>

#include "app/parts/plot.h"
#include "app/parts/ui.h"
#include "core/outing/power_join.h"
#include "core/outing/radio_readings.h"

namespace gs::parts {
namespace {

constexpr int kPoints = 48;

/// Key-down or average while sending, from nothing to full power; closer together where the root bends.
PlotCurve curve_of(const Plan& plan, double full_w, CurveKind kind, std::string label, bool key_down) {
  PlotCurve curve{kind, std::move(label), {}};
  for (int i = 0; i <= kPoints; ++i) {
    const double power_w = full_w * i * i / (kPoints * kPoints);
    const battery::Load load = load_of(plan, power_w);
    curve.points.push_back({power_w, key_down ? load.key_down_a : load.sending_a});
  }
  return curve;
}

std::string amperes(double a, const Style& style) { return say_quantity(a, Unit::ampere, a < 10 ? 2 : 1, style); }

}  // namespace

void Ui::current_plot(float height) {
  const Plan& plan = session.plan();
  if (no_radio_because(plan).doubt != Doubt::none) return;
  const Style& style = session.style();
  const double full_w = plan[L::radio_full_power_w], power_w = plan[L::radio_transmit_power_w];
  const battery::Load load = load_of(plan, power_w);
  const std::vector<radio::KeyedReading> readings = radio_readings(plan);
  Plot plot{.id = "current-plot", .name = "Current by power"};
  plot.curves.push_back(curve_of(plan, full_w, CurveKind::live, "key-down", true));
  if (load.sending_a < load.key_down_a)  // a carrier mode has no second curve
    plot.curves.push_back(curve_of(plan, full_w, CurveKind::second, "average while sending", false));
  double most_a = plot.curves.front().points.back().y;
  // the meter stood in the set's own lead: other loads come on top
  for (const radio::KeyedReading& reading : readings) {
    const double a = reading.current_a + plan[L::radio_accessories_a];
    plot.dots.push_back({reading.power_w, a, {}});
    most_a = std::max(most_a, a);
  }
  plot.x = {.title = "power", .unit = Unit::watt, .digits = full_w < 20 ? 1 : 0, .least = 0, .most = full_w};
  plot.y = {.title = "from the battery", .unit = Unit::ampere, .digits = 1, .least = 0, .most = 1.2 * most_a};
  if (const double limit_a = plan[L::battery_max_current_a]; limit_a < 1.2 * most_a)
    plot.lines.push_back({PlotLine::Kind::limit, false, limit_a, "battery gives " + amperes(limit_a, style)});
  if (const Plan* pinned = session.pinned_plan(); pinned && no_radio_because(*pinned).doubt == Doubt::none) {
    const double then_w = (*pinned)[L::radio_transmit_power_w];
    if (then_w != power_w && then_w <= full_w)
      plot.marks.push_back({then_w, load_of(*pinned, then_w).key_down_a, State::none,
                            "pinned " + amperes(load_of(*pinned, then_w).key_down_a, style), true});
  }
  plot.marks.push_back({power_w, load.key_down_a, State::none, amperes(load.key_down_a, style)});
  const Lever& row = lever(L::radio_transmit_power_w);
  plot.cursor = PlotCursor{.id = "current-plot:power",
                           .name = "Transmit power on the drawing",
                           .spoken = say_lever(row, power_w, style) + ", " + amperes(load.key_down_a, style),
                           .at = power_w,
                           .step = full_w <= 20 ? 0.1 : row.step};
  plot.sentence = "At " + say_lever(row, power_w, style) + " the battery gives " + amperes(load.key_down_a, style) +
                  " at key-down, " + amperes(load.sending_a, style) + " on average while sending and " +
                  amperes(load.pause_a, style) + " on receive";
  if (readings.size() >= 2) {
    const radio::FromReadings found = currents_from_readings(plan);
    plot.sentence += found.sound
                         ? "; by " + std::to_string(readings.size()) + " readings of this set, shown as dots"
                         : "; the readings shown as dots cannot all be true and are not used";
    if (found.sound && readings.size() > 2)
      plot.sentence +=
          ", which the law misses by " + say_quantity(100 * found.worst_miss, Unit::percent, 1, style) + " at most";
  } else if (plan.from[std::size_t(L::radio_full_power_current_a)] != From::yours) {
    plot.sentence += "; as sets of this power usually draw";
  }
  plot.sentence += ".";
  section("Current by power", "current-plot:title");
  if (const std::optional<double> moved = this->plot(plot, height)) {
    const Drag* drag = hand.drag(plot.cursor->id);
    session.set(L::radio_transmit_power_w, std::clamp(*moved, row.least, full_w),
                drag ? drag->gesture : hand.gesture());
    wake_at(now_s);
  }
}

}  // namespace gs::parts
