// Where values stand on a plot's axis and which numbers are printed at it.
#include <algorithm>
#include <cmath>
#include <limits>

#include "app/parts/plot.h"

namespace gs::parts {
namespace {

constexpr double kNever = std::numeric_limits<double>::quiet_NaN();

/// Minutes between numbers that a clock reader expects.
constexpr double kClockSteps_min[] = {1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440};

std::vector<double> multiples(double least, double most, double step) {
  std::vector<double> marks;
  const double slack = step * 1e-9;
  for (double n = std::ceil((least - slack) / step); n * step <= most + slack; ++n) marks.push_back(n * step);
  return marks;
}

/// Numbers that begin with one of these digits, decade by decade.
std::vector<double> decades(double least, double most, std::initializer_list<double> first_digits) {
  std::vector<double> marks;
  for (int decade = int(std::floor(std::log10(least))); std::pow(10, decade) <= most; ++decade)
    for (const double digit : first_digits) {
      const double at = digit * std::pow(10, decade);
      if (at >= least * (1 - 1e-9) && at <= most * (1 + 1e-9)) marks.push_back(at);
    }
  return marks;
}

/// Every n-th, so that no more than `most` are left.
std::vector<double> thinned(const std::vector<double>& marks, std::size_t most) {
  const std::size_t every = (marks.size() + most - 1) / std::max<std::size_t>(most, 1);
  std::vector<double> left;
  for (std::size_t i = 0; i < marks.size(); i += std::max<std::size_t>(every, 1)) left.push_back(marks[i]);
  return left;
}

}  // namespace

std::vector<double> round_numbers(double least, double most) {
  return least > 0 && most > least ? decades(least, most, {1, 2, 5}) : std::vector<double>{};
}

double axis_place(const PlotAxis& axis, double value) {
  if (!std::isfinite(value) || !(axis.most > axis.least)) return kNever;
  if (!axis.log) return (value - axis.least) / (axis.most - axis.least);
  return value > 0 && axis.least > 0 ? std::log(value / axis.least) / std::log(axis.most / axis.least) : kNever;
}

double axis_value(const PlotAxis& axis, double place) {
  return axis.log ? axis.least * std::pow(axis.most / axis.least, place)
                  : axis.least + (axis.most - axis.least) * place;
}

std::vector<double> axis_marks(const PlotAxis& axis, std::size_t most_marks) {
  if (!(axis.most > axis.least) || (axis.log && !(axis.least > 0)) || most_marks == 0) return {};
  if (!axis.marks.empty()) return thinned(axis.marks, most_marks);
  if (axis.log && axis.most / axis.least > 3) {
    const std::vector<double> fine = decades(axis.least, axis.most, {1, 2, 5});
    if (fine.size() <= most_marks) return fine;
    const std::vector<double> tens = decades(axis.least, axis.most, {1});
    if (tens.size() >= 2) return thinned(tens, most_marks);
    return thinned(fine, most_marks);
  }
  if (axis.unit == Unit::clock_minute || axis.unit == Unit::minute || axis.unit == Unit::hour) {
    const double per_minute = axis.unit == Unit::hour ? 1.0 / 60 : 1;
    for (const double minutes : kClockSteps_min)
      if (const auto marks = multiples(axis.least, axis.most, minutes * per_minute);
          marks.size() <= most_marks && marks.size() >= 2)
        return marks;
  }
  for (double decade = std::pow(10, std::floor(std::log10((axis.most - axis.least) / double(most_marks))));;
       decade *= 10)
    for (const double times : {1.0, 2.0, 5.0})
      if (const auto marks = multiples(axis.least, axis.most, decade * times); marks.size() <= most_marks)
        return marks;
}

std::optional<double> curve_at(const PlotCurve& curve, double x, bool log_x, bool log_y) {
  const auto along = [](double value, bool log) { return log ? std::log(value) : value; };
  for (std::size_t i = 0; i + 1 < curve.points.size(); ++i) {
    const PlotPoint a = curve.points[i], b = curve.points[i + 1];
    if (x < a.x || x > b.x || !std::isfinite(a.y) || !std::isfinite(b.y)) continue;
    if (!(b.x > a.x)) return a.y;
    const double share = (along(x, log_x) - along(a.x, log_x)) / (along(b.x, log_x) - along(a.x, log_x));
    const double y = along(a.y, log_y) + (along(b.y, log_y) - along(a.y, log_y)) * share;
    return log_y ? std::exp(y) : y;
  }
  return std::nullopt;
}

std::optional<double> crossing(std::span<const PlotPoint> points, double y) {
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const PlotPoint a = points[i], b = points[i + 1];
    if (!std::isfinite(a.y) || !std::isfinite(b.y)) continue;
    if (a.y == y) return a.x;
    if (b.y == y) return b.x;
    if ((a.y - y) * (b.y - y) < 0) return a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y);
  }
  return std::nullopt;
}

}  // namespace gs::parts
