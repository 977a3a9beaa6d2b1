// Two drawings of the feed line: its loss by frequency with what was published, and what stands along it.
#include <algorithm>
#include <array>
#include <cmath>

#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

/// The bands that the loss is asked for, ITU Radio Regulations, article 5, the widest of the three Regions.
struct Band {
  std::string_view name;
  double low_mhz, high_mhz;
};
constexpr Band kBands[] = {{"160", 1.8, 2},    {"80", 3.5, 4},       {"40", 7, 7.3},  {"", 10.1, 10.15},
                           {"20", 14, 14.35},  {"", 18.068, 18.168}, {"", 21, 21.45}, {"", 24.89, 24.99},
                           {"10 m", 28, 29.7}, {"6 m", 50, 54}};
constexpr double kLowestMhz = 1.8, kHighestMhz = 54;

constexpr float kLeft = 46, kTop = 26, kFoot = 28;

/// Both axes from the lowest to the highest, x by its logarithm where `log_x`.
struct Axes {
  Box area;
  double x0, x1, y0, y1;
  bool log_x;
  float x_of(double x) const {
    const double place = log_x ? std::log(x / x0) / std::log(x1 / x0) : (x - x0) / (x1 - x0);
    return area.x + area.w * float(std::clamp(place, 0.0, 1.0));
  }
  float y_of(double y) const { return area.bottom() - area.h * float(std::clamp((y - y0) / (y1 - y0), 0.0, 1.0)); }
};

/// The step from 1, 2, 5 that divides `span` into three to seven.
double round_step(double span) {
  const double decade = std::pow(10, std::floor(std::log10(span / 3)));
  for (const double times : {5.0, 2.0})
    if (span / (decade * times) >= 3) return decade * times;
  return decade;
}

void upright_scale(Ui& ui, const Axes& axes, double step, int digits) {
  for (int i = 0; axes.y0 + i * step <= axes.y1 * 1.0001; ++i) {
    const double value = axes.y0 + i * step;
    const float at = axes.y_of(value);
    ui.pen.line({axes.area.x, at}, {axes.area.right(), at}, ui.theme.rule, look::stroke::kHair);
    ui.pen.text(axes.area.x - 8, look::Pen::centred(at, type::kTick),
                print_quantity(value, Unit::none, digits, ui.session.style()).number, Face::regular, type::kTick,
                ui.theme.ink2, look::Align::right);
  }
  ui.pen.line({axes.area.x, axes.area.bottom()}, {axes.area.right(), axes.area.bottom()}, ui.theme.ink,
              look::stroke::kRule);
}

int digits_of(double step) { return step >= 1 ? 0 : step >= 0.1 ? 1 : 2; }

void plot_title(Ui& ui, Box box, std::string_view name, const std::string& figure, ImU32 colour) {
  ui.pen.text(box.x, box.y + 17, name, Face::bold, type::kLabel, ui.theme.ink);
  const float room = box.w - ui.pen.width(name, Face::bold, type::kLabel) - 16;
  if (ui.pen.width(figure, Face::bold, type::kLabel) <= room)
    ui.pen.text(box.right(), box.y + 17, figure, Face::bold, type::kLabel, colour, look::Align::right);
}

}  // namespace

void Ui::loss_plot() {
  const Plan& plan = session.plan();
  if (!plan.has_all(L::feedline_cable, L::feedline_length_m) || !(plan[L::feedline_length_m] > 0)) return;
  const feedline::Cable& cable = feedline::cables()[std::size_t(plan[L::feedline_cable])];
  const double length_m = plan[L::feedline_length_m], highest_db = matched_loss_at_db(plan, kHighestMhz);
  const Style style = session.style();
  const Box box = take(232);
  const double step = round_step(highest_db), top = std::ceil(highest_db / step * 1.0001) * step;
  const Axes axes{{box.x + kLeft, box.y + kTop + 22, box.w - kLeft - 8, box.h - kTop - 22 - kFoot},
                  kLowestMhz,
                  kHighestMhz,
                  0,
                  top,
                  true};
  const double now_mhz = plan.has(L::antenna_frequency_mhz) ? plan[L::antenna_frequency_mhz] : 0;
  const bool now_shown = now_mhz >= kLowestMhz && now_mhz <= kHighestMhz;
  const std::string now = now_shown ? say_quantity(matched_loss_at_db(plan, now_mhz), Unit::decibel, 2, style) +
                                          " at " + say_lever(lever(L::antenna_frequency_mhz), now_mhz, style)
                                    : std::string{};
  plot_title(*this, box, "Matched loss, dB by MHz", now, theme.blue);
  float free_from = axes.area.x;
  for (const Band& band : kBands) {
    const float from = axes.x_of(band.low_mhz), to = std::max(from + 3, axes.x_of(band.high_mhz));
    pen.fill({from, axes.area.y, to - from, axes.area.h}, theme.band);
    const float name_w = pen.width(band.name, Face::regular, type::kTick);
    const float name_x = std::clamp((from + to - name_w) / 2, axes.area.x, axes.area.right() - name_w);
    if (band.name.empty() || name_x < free_from) continue;
    pen.text(name_x, axes.area.y - 6, band.name, Face::regular, type::kTick, theme.ink2);
    free_from = name_x + name_w + 8;
  }
  upright_scale(*this, axes, step, digits_of(step));
  for (const double mhz : {2.0, 5.0, 10.0, 20.0, 50.0}) {
    const float at = axes.x_of(mhz);
    pen.line({at, axes.area.bottom()}, {at, axes.area.bottom() + 5}, theme.ink, look::stroke::kLine);
    pen.text(at, axes.area.bottom() + 22, print_quantity(mhz, Unit::none, 0, style).number, Face::regular,
             type::kTick, theme.ink2, look::Align::centre);
  }
  // where the law was not tested it is only stretched
  const float lowest_x = axes.x_of(std::max(kLowestMhz, cable.lowest_mhz)),
              highest_x = axes.x_of(std::min(kHighestMhz, cable.highest_mhz));
  if (lowest_x > axes.area.x)
    pen.hatch({axes.area.x, axes.area.y, lowest_x - axes.area.x, axes.area.h}, theme.rule);
  if (highest_x < axes.area.right())
    pen.hatch({highest_x, axes.area.y, axes.area.right() - highest_x, axes.area.h}, theme.rule);

  std::array<look::Point, 60> curve;
  for (std::size_t i = 0; i < curve.size(); ++i) {
    const double mhz = kLowestMhz * std::pow(kHighestMhz / kLowestMhz, double(i) / double(curve.size() - 1));
    curve[i] = {axes.x_of(mhz), axes.y_of(matched_loss_at_db(plan, mhz))};
  }
  pen.polyline(curve, theme.blue, look::stroke::kStrong);
  int dots = 0;
  for (const feedline::CablePoint& point : cable.points) {
    if (point.frequency_mhz < kLowestMhz || point.frequency_mhz > kHighestMhz) continue;
    pen.disc({axes.x_of(point.frequency_mhz), axes.y_of(point.attenuation_db_per_100m * length_m / 100)}, 5,
             theme.ink);
    ++dots;
  }
  if (now_shown) {
    const look::Point at{axes.x_of(now_mhz), axes.y_of(matched_loss_at_db(plan, now_mhz))};
    pen.dashed(std::array<look::Point, 2>{look::Point{at.x, axes.area.bottom()}, at}, look::stroke::kNeed,
               theme.ink2, look::stroke::kLine);
    pen.disc(at, 8, theme.paper);
    pen.ring(at, 7, theme.blue, look::stroke::kStrong);
  }
  std::string sentence;
  for (const double mhz : {1.8, 3.6, 7.1, 14.2, 21.2, 28.4, 50.1})
    sentence += (sentence.empty() ? "" : "; ") + say_quantity(mhz, Unit::megahertz, 1, style) + " " +
                say_quantity(matched_loss_at_db(plan, mhz), Unit::decibel, 2, style);
  sentence += ". " + std::to_string(dots) + (dots == 1 ? " published point" : " published points") + " of " +
              std::string(cable.name) + " as dots, for a new roll at 20 °C";
  node(Role::image, "loss-plot", "Matched loss by frequency", box).value = sentence;
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
  double most_v = 0, most_swr = 1;
  for (const feedline::Place& place : way) {
    most_v = std::max(most_v, place.volt_rms);
    most_swr = std::max(most_swr, std::min(place.swr, 1000.0));
  }
  const Style style = session.style();
  const double length_m = way.back().from_radio_m;
  const std::string ends = print_quantity(way.front().swr, Unit::none, 1, style).number + " at the radio, " +
                           print_quantity(way.back().swr, Unit::none, 1, style).number + " at the antenna";
  const auto draw = [&](std::string_view name, const std::string& figure, double from, double most, ImU32 colour,
                        auto value_of) {
    const Box box = take(168);
    const double step = round_step(std::max(most - from, 1e-3));
    const double top = from + std::ceil((most - from) / step * 1.0001) * step;
    const Axes axes{{box.x + kLeft, box.y + kTop + 8, box.w - kLeft - 8, box.h - kTop - 8 - kFoot},
                    0,
                    length_m,
                    from,
                    std::max(top, from + step),
                    false};
    plot_title(*this, box, name, figure, colour);
    upright_scale(*this, axes, step, digits_of(step));
    pen.text(axes.area.x, axes.area.bottom() + 22, "radio", Face::regular, type::kTick, theme.ink2);
    pen.text(axes.area.right(), axes.area.bottom() + 22,
             "antenna, " + say_quantity(length_m, Unit::metre, digits_needed(length_m, 1), style), Face::regular,
             type::kTick, theme.ink2, look::Align::right);
    std::vector<look::Point> curve;
    curve.reserve(way.size());
    for (const feedline::Place& place : way)
      curve.push_back({axes.x_of(place.from_radio_m), axes.y_of(value_of(place))});
    pen.polyline(curve, colour, look::stroke::kStrong);
    return box;
  };
  const Box swr_box = draw("SWR along the line", ends, 1, most_swr, theme.blue,
                           [](const feedline::Place& place) { return std::min(place.swr, 1000.0); });
  node(Role::image, "along-swr", "SWR along the line", swr_box).value = ends;
  const std::string highest = "highest " + say_quantity(most_v, Unit::volt, 0, style) + " rms";
  const Box volt_box = draw("Voltage along the line, V rms", highest, 0, most_v, theme.contour,
                            [](const feedline::Place& place) { return place.volt_rms; });
  node(Role::image, "along-volt", "Voltage along the line", volt_box).value = highest;
}

}  // namespace gs::parts
