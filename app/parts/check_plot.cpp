#include "app/parts/check_plot.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "app/parts/plot.h"
#include "app/parts/scale.h"

namespace gs::parts {

namespace {

constexpr int kPoints = 48;
constexpr double kAround = 4;  // the stretch that is shown: a quarter of the value to four times it

bool is_number(const Check& check, const CheckValues& values, std::size_t at) {
  return check.inputs[at].row.kind == Kind::number && std::isfinite(values.x[at]);
}

std::optional<std::size_t> input_along(const Check& check, const CheckValues& values,
                                       std::optional<std::size_t> moved) {
  if (moved && *moved < values.x.size() && is_number(check, values, *moved)) return moved;
  for (const bool given_first : {true, false})
    for (std::size_t i = 0; i < values.x.size(); ++i)
      if (is_number(check, values, i) && (!given_first || values.from[i] == From::yours)) return i;
  return std::nullopt;
}

/// The zones of a judged result on its own axis, from what fails to what is at ease.
std::vector<PlotBand> zones(const CheckResult& result, const PlotAxis& axis) {
  if (result.limit == result.ease) return {};
  const bool more = result.ease > result.limit;
  const auto within = [&](double value) { return std::clamp(value, axis.least, axis.most); };
  const double limit = within(result.limit), ease = within(result.ease);
  std::vector<PlotBand> bands;
  const auto add = [&](double from, double to, Tint tint, const char* name) {
    if (to > from) bands.push_back({false, from, to, tint, name});
  };
  add(more ? ease : axis.least, more ? axis.most : ease, Tint::wood, "at ease");
  add(std::min(limit, ease), std::max(limit, ease), Tint::sand, "tight");
  add(more ? axis.least : limit, more ? limit : axis.most, Tint::hatched, "fails");
  return bands;
}

}  // namespace

void check_plot(Ui& ui, const Check& check, const CheckValues& values) {
  const std::optional<std::size_t> along = input_along(check, values, ui.session.view.along);
  if (!along) return;
  const Lever& row = check.inputs[*along].row;
  const CheckResult& first = check.results[0];
  const Style& style = ui.session.style();
  const double here = values.x[*along];
  const CheckOutcome now = work_out(check, values);
  if (now.results[0].state == State::unknown) return;

  Plot plot;
  const bool wide = here > 0 && row.least >= 0;
  plot.x = {.title = lower_first(std::string(row.name)),
            .unit = row.unit,
            .digits = row.digits,
            .least = wide ? std::max(row.least, here / kAround) : row.least,
            .most = wide ? std::min(row.most, here * kAround) : row.most,
            .log = row.scale == Scale::log};
  if (!(plot.x.most > plot.x.least)) return;
  // the first result, and at most two more that can stand on the same axis
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < check.results.size() && shown.size() < 3; ++i)
    if (check.results[i].row.unit == first.row.unit && now.results[i].state != State::unknown) shown.push_back(i);
  for (const std::size_t at : shown)
    plot.curves.push_back(
        {at == 0 ? CurveKind::live : CurveKind::second, std::string(check.results[at].row.name), {}});
  double low = now.results[0].value, high = low, first_low = low, first_high = low;
  CheckValues tried = values;
  for (int i = 0; i <= kPoints; ++i) {
    const double x = value_at(row.scale == Scale::log ? Track::ratios : Track::even, plot.x.least, plot.x.most,
                              double(i) / kPoints);
    tried.x[*along] = x;
    const CheckOutcome outcome = work_out(check, tried);
    for (std::size_t k = 0; k < shown.size(); ++k) {
      const Figure& figure = outcome.results[shown[k]];
      const double y = figure.state == State::unknown ? std::nan("") : figure.value;
      plot.curves[k].points.push_back({x, y});
      if (!std::isfinite(y)) continue;
      low = std::min(low, y);
      high = std::max(high, y);
      if (k == 0) first_low = std::min(first_low, y), first_high = std::max(first_high, y);
    }
  }
  if (!(first_high - first_low > 1e-6 * (1 + std::abs(first_high)))) return;
  // a result that does not move with this input is a line that says nothing here
  const double air = 0.08 * (high - low);
  plot.y = {.title = lower_first(std::string(first.row.name)),
            .unit = first.row.unit,
            .digits = first.row.digits,
            .least = low >= 0 ? std::max(0.0, low - air) : low - air,
            .most = high + air};
  plot.bands = zones(first, plot.y);
  const std::string said = say_quantity(now.results[0].value, first.row.unit, first.row.digits, style);
  plot.marks.push_back({here, now.results[0].value, now.results[0].state, "now " + said});
  plot.id = "check:plot";
  plot.name = std::string(first.row.name) + " by " + lower_first(std::string(row.name));
  plot.sentence = std::string(first.row.name) + " is " + said + " at " + say_lever(row, here, style) + ", " +
                  say_quantity(plot.curves[0].points.front().y, first.row.unit, first.row.digits, style) + " at " +
                  say_lever(row, plot.x.least, style) + " and " +
                  say_quantity(plot.curves[0].points.back().y, first.row.unit, first.row.digits, style) + " at " +
                  say_lever(row, plot.x.most, style) + ".";
  ui.plot(plot, ui.phone() ? 220.0F : 260.0F);
  ui.gap();
}

}  // namespace gs::parts
