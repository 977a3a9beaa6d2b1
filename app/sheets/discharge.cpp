// The discharge on the Battery sheet: supply while listening and at key-down, the set's minimum, reserve, need,
// pin.
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/parts/plot.h"
#include "app/sheets/frame.h"
#include "core/outing/discharge_curve.h"

namespace gs::sheets {
namespace {

using parts::CurveKind;
using parts::Plot;
using parts::Ui;

std::string hours_text(double hours, const Style& style) { return say_reading(R::power_runtime_h, hours, style); }
std::string volts_text(double v, const Style& style) { return say_quantity(v, Unit::volt, 1, style); }

/// Hours from the first call until one starts packing; NaN without a clock.
double need_h(const Plan& plan, const Outlook& outlook) {
  if (outlook[R::clock_pack_by_min].state == State::unknown) return std::nan("");
  return pace::on_air(stay_of(plan)).minutes / 60;
}

enum class Of : unsigned char { listening, key_down };
parts::PlotCurve curve_of(const DischargeCurve& from, Of what, CurveKind kind, std::string label, double most_h,
                          double least_v) {
  parts::PlotCurve curve{kind, std::move(label), {}};
  for (const SupplyPoint& point : from.points) {
    const double v = what == Of::listening ? point.paused_v : point.key_down_v;
    if (point.hours > most_h) break;
    // under the paper's edge there is nothing to be read
    if (v < least_v - 0.3) {
      curve.points.push_back({point.hours, least_v - 0.3});
      break;
    }
    curve.points.push_back({point.hours, v});
  }
  return curve;
}

std::string ends_words(battery::EndBy by) {
  switch (by) {
    case battery::EndBy::minimum_supply:
      return "the set's minimum supply";
    case battery::EndBy::cut_off:
      return "the battery's cut-off";
    case battery::EndBy::current_limit:
      return "the battery's current limit";
    case battery::EndBy::reserve:
      break;
  }
  return "the reserve";
}

}  // namespace

void discharge(Ui& ui) {
  const Plan& plan = ui.session.plan();
  const Outlook& outlook = ui.session.outlook();
  const Style& style = ui.session.style();
  const DischargeCurve now = discharge_curve(plan, outlook);
  if (!now.known) return;
  const double need = need_h(plan, outlook);
  const double minimum_v = plan[L::radio_minimum_supply_v];
  const Figure& runtime = outlook[R::power_runtime_h];
  double most_h = std::max({now.until_h * 1.3, std::isfinite(need) ? need * 1.15 : 0, 0.5});
  most_h = std::min(most_h,
                    std::max({now.empty_h * 1.05, std::isfinite(need) ? need * 1.15 : 0, now.until_h * 1.05, 0.5}));
  double most_v = minimum_v + 0.5, least_v = minimum_v - 0.7;
  for (const SupplyPoint& point : now.points)
    if (std::isfinite(point.paused_v)) most_v = std::max(most_v, point.paused_v);
  most_v = std::ceil(2 * most_v + 0.1) / 2;
  least_v = std::floor(2 * std::max(0.0, least_v)) / 2;

  Plot plot;
  plot.id = "discharge";
  plot.name = "Supply on the air";
  plot.x = {"on the air", Unit::hour, 0, 0, most_h};
  plot.y = {"supply", Unit::volt, 1, least_v, most_v};
  if (runtime.doubt == Doubt::outside_tested && runtime.high > runtime.low)
    plot.bands.push_back({true, runtime.low, std::min(runtime.high, most_h), parts::Tint::sand, "may end here"});
  if (plan[L::battery_reserve_pct] > 0 && now.reserve_from_h < most_h)
    plot.bands.push_back({true, now.reserve_from_h, most_h, parts::Tint::hatched,
                          "reserve " + say_quantity(plan[L::battery_reserve_pct], Unit::percent, 0, style)});
  const std::string power = value_text(plan, L::radio_transmit_power_w, style);
  plot.curves.push_back(curve_of(now, Of::key_down, CurveKind::live, "on transmit, " + power, most_h, least_v));
  plot.curves.push_back(curve_of(now, Of::listening, CurveKind::second, "on receive", most_h, least_v));
  if (const Plan* pinned = ui.session.pinned_plan()) {
    const DischargeCurve then = discharge_curve(*pinned, *ui.session.pinned_outlook());
    const std::string pinned_power = value_text(*pinned, L::radio_transmit_power_w, style);
    if (then.known) {
      plot.curves.push_back(curve_of(then, Of::key_down, CurveKind::pinned,
                                     pinned_power == power ? "pinned" : "pinned, " + pinned_power, most_h,
                                     least_v));
      if (then.until_h > 0 && then.until_h < most_h && then.key_down_at_end_v > least_v &&
          std::abs(then.until_h - now.until_h) > 0.02 * most_h)
        plot.marks.push_back({then.until_h, then.key_down_at_end_v,
                              (*ui.session.pinned_outlook())[R::power_spare_min].state,
                              hours_text(then.until_h, style), true});
    }
  }
  plot.lines.push_back({parts::PlotLine::Kind::limit, false, minimum_v,
                        (ui.phone() ? "least " : "radio stops below ") + volts_text(minimum_v, style)});
  if (std::isfinite(need) && need > 0 && need < most_h)
    plot.lines.push_back(
        {parts::PlotLine::Kind::need, true, need, "need " + say_quantity(need, Unit::hour, 0, style)});
  const Figure& spare = outlook[R::power_spare_min];
  if (now.until_h <= most_h && now.key_down_at_end_v > least_v)
    plot.marks.push_back({now.until_h, now.key_down_at_end_v,
                          spare.state == State::unknown ? State::none : spare.state,
                          hours_text(now.until_h, style)});
  if (plan[L::battery_used_ah] > 0 && !now.points.empty())
    plot.marks.push_back({0, std::clamp(now.points.front().key_down_v, least_v, most_v), State::none, "now"});
  plot.sentence = now.until_h > 0
                      ? "At key-down the supply falls from " + volts_text(now.points.front().key_down_v, style) +
                            " to " + volts_text(now.key_down_at_end_v, style) + " in " +
                            hours_text(now.until_h, style) + ", where " + ends_words(now.by) + " ends it"
                      : "Nothing is left at the first over: " + ends_words(now.by) + " ends it at once, at " +
                            volts_text(now.key_down_at_end_v, style);
  if (runtime.high > runtime.low)
    plot.sentence +=
        "; it may be between " + hours_text(runtime.low, style) + " and " + hours_text(runtime.high, style);
  plot.sentence += ".";
  ui.plot(plot, ui.phone() ? 250 : 330);
}

}  // namespace gs::sheets
