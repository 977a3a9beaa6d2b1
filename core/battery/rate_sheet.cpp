#include "core/battery/rate_sheet.h"

#include <cmath>
#include <initializer_list>
#include <limits>
#include <utility>

namespace gs::battery {
namespace {

struct Fit {
  double log_capacity, squares;
};

/// With rate and share given, the best capacity follows in closed form.
Fit fit_of(std::span<const Rate> sheet, double log_rate, double logit_share) {
  const Wells unit{1, std::exp(log_rate), 1 / (1 + std::exp(-logit_share))};
  double sum = 0, squares = 0;
  for (const Rate& point : sheet) {
    const double off = std::log(point.current_a * point.hours / given_ah(unit, point.hours));
    sum += off;
    squares += off * off;
  }
  const double mean = sum / double(sheet.size());
  return {mean, squares - mean * sum};
}

}  // namespace

std::optional<Contradiction> contradiction(std::span<const Rate> sheet) {
  for (std::size_t i = 0; i < sheet.size(); ++i)
    for (std::size_t j = 0; j < sheet.size(); ++j)
      if (sheet[i].current_a < sheet[j].current_a &&
          (sheet[i].hours <= sheet[j].hours ||
           sheet[i].current_a * sheet[i].hours < sheet[j].current_a * sheet[j].hours))
        return Contradiction{i, j};
  return std::nullopt;
}

std::optional<Wells> fit_wells(std::span<const Rate> sheet) {
  if (sheet.size() < 3 || contradiction(sheet)) return std::nullopt;
  const double low_rate = std::log(0.02), high_rate = std::log(50.0), low_share = std::log(0.05 / 0.95),
               high_share = -low_share;
  // A coarse net over the two shape parameters, then ever finer steps around its best knot.
  constexpr int kKnots = 25;
  double rate = 0, share = 0, best = std::numeric_limits<double>::infinity();
  for (int i = 0; i < kKnots; ++i)
    for (int j = 0; j < kKnots; ++j) {
      const double r = low_rate + (high_rate - low_rate) * i / (kKnots - 1),
                   s = low_share + (high_share - low_share) * j / (kKnots - 1);
      const double squares = fit_of(sheet, r, s).squares;
      if (squares < best) {
        best = squares;
        rate = r;
        share = s;
      }
    }
  double step = (high_rate - low_rate) / (kKnots - 1);
  while (step > 1e-10) {
    bool better = false;
    for (const auto& [dr, ds] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}}) {
      const double r = std::fmin(std::fmax(rate + dr * step, low_rate), high_rate),
                   s = std::fmin(std::fmax(share + ds * step, low_share), high_share);
      const double squares = fit_of(sheet, r, s).squares;
      if (squares < best) {
        best = squares;
        rate = r;
        share = s;
        better = true;
      }
    }
    if (!better) step /= 2;
  }
  return Wells{std::exp(fit_of(sheet, rate, share).log_capacity), std::exp(rate), 1 / (1 + std::exp(-share))};
}

std::optional<Peukert> fit_peukert(std::span<const Rate> sheet) {
  if (sheet.size() < 2) return std::nullopt;
  double mean_x = 0, mean_y = 0;
  for (const Rate& point : sheet) {
    mean_x += std::log(point.current_a) / double(sheet.size());
    mean_y += std::log(point.hours) / double(sheet.size());
  }
  double xx = 0, xy = 0;
  for (const Rate& point : sheet) {
    const double x = std::log(point.current_a) - mean_x;
    xx += x * x;
    xy += x * (std::log(point.hours) - mean_y);
  }
  const double exponent = -xy / xx;
  if (!(exponent >= 1)) return std::nullopt;
  return Peukert{exponent, std::exp(mean_y + exponent * mean_x)};
}

double hours_at(const Peukert& law, double current_a) { return law.ah / std::pow(current_a, law.exponent); }

}  // namespace gs::battery
