#include "core/feedline/loss_fit.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace gs::feedline {
namespace {

// Relative errors below this are rounding of the fit itself: a further term must earn more than that.
constexpr double kRoundingOfSum = 1e-20;

double term(int which, double frequency_mhz) {
  if (which == 0) return 1.0;
  return which == 1 ? std::sqrt(frequency_mhz) : frequency_mhz;
}

std::vector<LossPoint> usable_points(std::span<const LossPoint> points) {
  std::vector<LossPoint> usable;
  for (const LossPoint& p : points)
    if (std::isfinite(p.frequency_mhz) && p.frequency_mhz > 0 && std::isfinite(p.attenuation_db_per_100m) &&
        p.attenuation_db_per_100m > 0)
      usable.push_back(p);
  return usable;
}

int distinct_frequencies(const std::vector<LossPoint>& points) {
  std::vector<double> frequencies_mhz;
  for (const LossPoint& p : points) frequencies_mhz.push_back(p.frequency_mhz);
  std::sort(frequencies_mhz.begin(), frequencies_mhz.end());
  return int(std::unique(frequencies_mhz.begin(), frequencies_mhz.end()) - frequencies_mhz.begin());
}

/// Plain least squares with the terms whose bits are set in `active`; false where a constant comes out negative or
/// the points cannot tell the terms apart.
bool solve(const std::vector<LossPoint>& points, unsigned active, std::array<double, 3>& k, double& sum) {
  std::array<int, 3> columns{};
  int count = 0;
  for (int which = 0; which < 3; ++which)
    if (active & (1u << which)) columns[std::size_t(count++)] = which;

  Eigen::MatrixXd a(Eigen::Index(points.size()), count);
  for (Eigen::Index row = 0; row < a.rows(); ++row) {
    const LossPoint& p = points[std::size_t(row)];
    for (int c = 0; c < count; ++c)
      a(row, c) = term(columns[std::size_t(c)], p.frequency_mhz) / p.attenuation_db_per_100m;
  }
  const Eigen::VectorXd wanted = Eigen::VectorXd::Ones(a.rows());
  const Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(a);
  if (qr.rank() < count) return false;
  const Eigen::VectorXd x = qr.solve(wanted);
  if (!x.allFinite() || x.minCoeff() < 0) return false;

  k = {};
  for (int c = 0; c < count; ++c) k[std::size_t(columns[std::size_t(c)])] = x(c);
  sum = (a * x - wanted).squaredNorm();
  return true;
}

}  // namespace

double attenuation_db_per_100m(const LossLaw& law, double frequency_mhz) {
  return law.k0_db_per_100m + law.k1_db_per_100m * std::sqrt(frequency_mhz) + law.k2_db_per_100m * frequency_mhz;
}

LossLaw fit_loss(std::span<const LossPoint> points, bool with_constant) {
  const std::vector<LossPoint> usable = usable_points(points);
  if (usable.empty()) return {};

  const int first = with_constant ? 0 : 1;
  const int last = std::min(2, first + distinct_frequencies(usable) - 1);
  std::array<double, 3> best{};
  double best_sum = -1;
  // The optimum under "each >= 0" is the plain optimum of some subset of the terms; seven subsets are few enough to
  // try all. Small subsets come first, so that a term which brings nothing stays out.
  for (int size = 1; size <= last - first + 1; ++size)
    for (unsigned active = 1; active < 8; ++active) {
      int count = 0;
      bool allowed = true;
      for (int which = 0; which < 3; ++which)
        if (active & (1u << which)) {
          ++count;
          allowed = allowed && which >= first && which <= last;
        }
      if (!allowed || count != size) continue;
      std::array<double, 3> k{};
      double sum = 0;
      if (!solve(usable, active, k, sum)) continue;
      if (best_sum < 0 || sum < best_sum - kRoundingOfSum) {
        best = k;
        best_sum = sum;
      }
    }
  return {best[0], best[1], best[2]};
}

}  // namespace gs::feedline
