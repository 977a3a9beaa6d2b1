// Two drawings of the feed line: its loss by frequency with what was published, and what stands along it.
#include <algorithm>
#include <cmath>

#include "app/parts/plot.h"
#include "app/parts/ui.h"

namespace gs::parts {
namespace {

/// The bands that the loss is asked for, ITU Radio Regulations, article 5, the widest of the three Regions.
struct Band {
  double low_mhz, high_mhz;
};
constexpr Band kBands[] = {{1.8, 2},         {3.5, 4},    {7, 7.3},       {10.1, 10.15}, {14, 14.35},
                           {18.068, 18.168}, {21, 21.45}, {24.89, 24.99}, {28, 29.7},    {50, 54}};
constexpr double kLowestMhz = 1.8, kHighestMhz = 54, kHighestSwr = 1000;
constexpr float kPlotHeight = 230;

}  // namespace

void Ui::loss_plot() {
  const Plan& plan = session.plan();
  if (!plan.has_all(L::feedline_cable, L::feedline_length_m) || !(plan[L::feedline_length_m] > 0)) return;
  const feedline::Cable& cable = feedline::cables()[std::size_t(plan[L::feedline_cable])];
  const double length_m = plan[L::feedline_length_m];
  const Style style = session.style();
  Plot plot{.id = "loss-plot", .name = "Matched loss by frequency"};
  plot.x = {.title = "frequency",
            .unit = Unit::megahertz,
            .digits = 1,
            .least = kLowestMhz,
            .most = kHighestMhz,
            .log = true};
  double most_db = 0;
  PlotCurve curve{.label = "matched loss"};
  for (int i = 0; i <= 40; ++i) {
    const double mhz = kLowestMhz * std::pow(kHighestMhz / kLowestMhz, i / 40.0);
    curve.points.push_back({mhz, matched_loss_at_db(plan, mhz)});
    most_db = std::max(most_db, curve.points.back().y);
  }
  plot.curves.push_back(std::move(curve));
  for (const feedline::CablePoint& point : cable.points)
    if (point.frequency_mhz >= kLowestMhz && point.frequency_mhz <= kHighestMhz) {
      plot.dots.push_back({point.frequency_mhz, point.attenuation_db_per_100m * length_m / 100, {}});
      most_db = std::max(most_db, plot.dots.back().y);
    }
  plot.y = {.title = "loss", .unit = Unit::decibel, .digits = 2, .least = 0, .most = 1.1 * most_db};
  // one name for all: most are too narrow for their own
  for (const Band& band : kBands)
    plot.bands.push_back(
        {true, band.low_mhz, band.high_mhz, Tint::sand, &band == kBands ? "bands from 160 m to 6 m" : ""});
  // where the law was not tested it is only stretched
  if (cable.lowest_mhz > kLowestMhz)
    plot.bands.push_back({true, kLowestMhz, std::min(cable.lowest_mhz, kHighestMhz), Tint::hatched, ""});
  if (cable.highest_mhz < kHighestMhz)
    plot.bands.push_back({true, std::max(cable.highest_mhz, kLowestMhz), kHighestMhz, Tint::hatched, ""});
  plot.sentence = "Matched loss of this line";
  if (const double now = plan[L::antenna_frequency_mhz]; now >= kLowestMhz && now <= kHighestMhz) {
    const double db = matched_loss_at_db(plan, now);
    plot.marks.push_back({now, db, State::none, say_quantity(db, Unit::decibel, 2, style)});
    plot.sentence += ", " + say_quantity(db, Unit::decibel, 2, style) + " at " +
                     say_lever(lever(L::antenna_frequency_mhz), now, style);
  }
  plot.sentence += "; " + std::to_string(plot.dots.size()) +
                   (plot.dots.size() == 1 ? " published point" : " published points") + " of " +
                   std::string(cable.name) + " as dots, for a new roll at 20 °C.";
  section("Loss by frequency", "loss-plot:title");
  this->plot(plot, kPlotHeight);
}

void Ui::along_plot() {
  const Plan& plan = session.plan();
  const FeedlineJoin join = join_feedline(plan);
  const Outlook& out = session.outlook();
  if (!join.cable || !join.impedance_known() || join.load_doubt != Doubt::none || !(join.load_ohm.real() > 0))
    return;
  const double leaves_w = out[R::feedline_power_to_antenna_w].value + out[R::feedline_cable_matched_w].value +
                          out[R::feedline_cable_swr_w].value;
  if (!(leaves_w > 0)) return;
  const std::vector<feedline::Place> way = feedline::places(join.run, join.load_ohm, leaves_w, kMeterOhm, 60);
  if (way.size() < 2 || !(way.back().from_radio_m > 0)) return;
  const Style style = session.style();
  const auto swr_text = [&](double swr) { return print_quantity(swr, Unit::none, 1, style).number; };
  Plot swr{.id = "along-swr", .name = "SWR along the line"};
  Plot volt{.id = "along-volt", .name = "Voltage along the line"};
  swr.x = {
      .title = "from the radio", .unit = Unit::metre, .digits = 1, .least = 0, .most = way.back().from_radio_m};
  volt.x = swr.x;
  double most_swr = 1, most_v = 0;
  PlotCurve swr_curve{.label = "SWR"}, volt_curve{.label = "V rms"};
  for (const feedline::Place& place : way) {
    swr_curve.points.push_back({place.from_radio_m, std::min(place.swr, kHighestSwr)});
    volt_curve.points.push_back({place.from_radio_m, place.volt_rms});
    most_swr = std::max(most_swr, swr_curve.points.back().y);
    most_v = std::max(most_v, place.volt_rms);
  }
  swr.curves.push_back(std::move(swr_curve));
  volt.curves.push_back(std::move(volt_curve));
  swr.y = {.title = "SWR", .digits = 1, .least = 1, .most = 1 + 1.2 * std::max(0.2, most_swr - 1)};
  volt.y = {.title = "rms", .unit = Unit::volt, .digits = 0, .least = 0, .most = 1.2 * most_v};
  swr.sentence =
      "SWR " + swr_text(way.front().swr) + " at the radio, " + swr_text(way.back().swr) + " at the antenna.";
  volt.sentence = "At most " + say_quantity(most_v, Unit::volt, 0, style) + " rms on the line.";
  section("Along the line", "along:title");
  plot(swr, kPlotHeight);
  plot(volt, kPlotHeight);
}

}  // namespace gs::parts
