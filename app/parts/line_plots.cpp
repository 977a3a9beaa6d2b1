// Two drawings of the feed line: its loss by frequency with what was published, and what stands along it.
#include <algorithm>
#include <cmath>

#include "app/parts/plot.h"
#include "app/parts/ui.h"
#include "core/feedline/place_range.h"

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

std::string swr_text(double swr, const Style& style) { return print_quantity(swr, Unit::none, 1, style).number; }

/// With an SWR alone: total loss over all phases, least and most, and the area between.
void add_loss_range(const Plan& plan, const Style& style, Plot& plot, double& most_db) {
  const FeedlineJoin join = join_feedline(plan);
  if (!join.swr_alone() || join.load_doubt != Doubt::none) return;
  const bool at_radio = join.load_from == LoadFrom::swr_at_radio;
  const double swr = at_radio ? join.swr_at_radio : join.swr_at_antenna;
  PlotCurve least{CurveKind::second, "least", {}}, most{CurveKind::second, "most", {}};
  constexpr double kShownOverMatched = 4;  // an end that is almost open or shorted would flatten all the rest
  for (const PlotPoint& matched : plot.curves.front().points) {
    const feedline::LossRange range = loss_range_at_db(plan, matched.x);
    const double top = std::min(range.most_db, matched.y + kShownOverMatched);
    least.points.push_back({matched.x, range.least_db});
    most.points.push_back({matched.x, std::isnan(range.most_db) ? range.most_db : top});
    if (std::isfinite(range.most_db)) most_db = std::max(most_db, top);
  }
  plot.between.push_back({plot.curves.size(), plot.curves.size() + 1, Tint::wood,
                          "with SWR " + swr_text(swr, style) + (at_radio ? " at the radio" : " at the antenna")});
  plot.curves.push_back(std::move(least));
  plot.curves.push_back(std::move(most));
}

void along_axis(Plot& plot, double length_m) {
  plot.x = {.title = "from the radio", .unit = Unit::metre, .digits = 1, .least = 0, .most = length_m};
}

/// Least and most with the area between them.
void add_band(Plot& plot, PlotCurve least, PlotCurve most, std::string name) {
  plot.curves = {std::move(least), std::move(most)};
  plot.between.push_back({0, 1, Tint::wood, std::move(name)});
}

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
  add_loss_range(plan, style, plot, most_db);
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
  if (!plot.between.empty()) {
    const feedline::LossRange now = join_feedline(plan).loss;
    plot.sentence += ", and " + say_quantity(now.least_db, Unit::decibel, 2, style) + " to " +
                     (std::isfinite(now.most_db) ? say_quantity(now.most_db, Unit::decibel, 2, style)
                                                 : std::string("all of it")) +
                     " in all " + plot.between.front().name + ", whose phase nobody knows";
  }
  plot.sentence += "; " + std::to_string(plot.dots.size()) +
                   (plot.dots.size() == 1 ? " published point" : " published points") + " of " +
                   std::string(cable.name) + " as dots, for a new roll at 20 °C.";
  section("Loss by frequency", "loss-plot:title");
  this->plot(plot, kPlotHeight);
}

void Ui::along_plot() {
  const FeedlineJoin join = join_feedline(session.plan());
  const Outlook& out = session.outlook();
  if (!join.cable || join.load_doubt != Doubt::none) return;
  const double leaves_w = out[R::feedline_power_to_antenna_w].value + out[R::feedline_cable_matched_w].value +
                          out[R::feedline_cable_swr_w].value;
  if (!(leaves_w > 0)) return;
  const Style style = session.style();
  Plot swr{.id = "along-swr", .name = "SWR along the line"};
  Plot volt{.id = "along-volt", .name = "Voltage along the line"};
  double most_swr = 1, most_v = 0;
  if (join.impedance_known()) {
    if (!(join.load_ohm.real() > 0)) return;
    const std::vector<feedline::Place> way = feedline::places(join.run, join.load_ohm, leaves_w, kMeterOhm, 60);
    if (way.size() < 2 || !(way.back().from_radio_m > 0)) return;
    PlotCurve swr_curve{.label = "SWR"}, volt_curve{.label = "V rms"};
    for (const feedline::Place& place : way) {
      swr_curve.points.push_back({place.from_radio_m, std::min(place.swr, kHighestSwr)});
      volt_curve.points.push_back({place.from_radio_m, place.volt_rms});
      most_swr = std::max(most_swr, swr_curve.points.back().y);
      most_v = std::max(most_v, place.volt_rms);
    }
    swr.sentence = "SWR " + swr_text(way.front().swr, style) + " at the radio, " + swr_text(way.back().swr, style) +
                   " at the antenna.";
    volt.sentence = "At most " + say_quantity(most_v, Unit::volt, 0, style) + " rms on the line.";
    along_axis(swr, way.back().from_radio_m);
    along_axis(volt, way.back().from_radio_m);
    swr.curves.push_back(std::move(swr_curve));
    volt.curves.push_back(std::move(volt_curve));
  } else if (join.swr_alone()) {
    const bool at_radio = join.load_from == LoadFrom::swr_at_radio;
    const std::vector<feedline::PlaceRange> way =
        feedline::place_ranges(join.run, kMeterOhm, at_radio ? join.swr_at_radio : join.swr_at_antenna,
                               at_radio ? feedline::ReadAt::radio : feedline::ReadAt::antenna, leaves_w, 32);
    if (way.size() < 2 || !(way.back().from_radio_m > 0)) return;
    PlotCurve swr_least{CurveKind::second, "least SWR", {}}, swr_most{CurveKind::second, "most SWR", {}},
        volt_least{CurveKind::second, "least", {}}, volt_most{CurveKind::second, "most", {}};
    for (const feedline::PlaceRange& place : way) {
      swr_least.points.push_back({place.from_radio_m, std::min(place.swr_least, kHighestSwr)});
      swr_most.points.push_back({place.from_radio_m, std::min(place.swr_most, kHighestSwr)});
      volt_least.points.push_back({place.from_radio_m, place.volt_least});
      volt_most.points.push_back({place.from_radio_m, place.volt_most});
      most_swr = std::max(most_swr, swr_most.points.back().y);
      most_v = std::max(most_v, place.volt_most);
    }
    const auto range = [&](double least, double most) {
      const std::string low = swr_text(least, style), high = swr_text(most, style);
      return low == high ? low : low + " to " + high;
    };
    swr.sentence = "SWR " + range(way.front().swr_least, way.front().swr_most) + " at the radio, " +
                   range(way.back().swr_least, way.back().swr_most) +
                   " at the antenna: an SWR alone does not say more.";
    volt.sentence =
        "At most " + say_quantity(most_v, Unit::volt, 0, style) + " rms on the line, whatever the phase.";
    along_axis(swr, way.back().from_radio_m);
    along_axis(volt, way.back().from_radio_m);
    add_band(swr, std::move(swr_least), std::move(swr_most), "may be");
    add_band(volt, std::move(volt_least), std::move(volt_most), "may be");
  } else {
    return;
  }
  swr.y = {.title = "SWR", .digits = 1, .least = 1, .most = 1 + 1.2 * std::max(0.2, most_swr - 1)};
  volt.y = {.title = "rms", .unit = Unit::volt, .digits = 0, .least = 0, .most = 1.2 * most_v};
  section("Along the line", "along:title");
  plot(swr, kPlotHeight);
  plot(volt, kPlotHeight);
}

}  // namespace gs::parts
