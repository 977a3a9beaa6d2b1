#include "core/radio/fold_back.h"

#include <cmath>

namespace gs::radio {
namespace {

// An SWR that was worked out may stand a rounding above the mark that it means to meet.
constexpr double kRounding = 1e-9;

bool within(double swr, double mark_swr) { return swr <= mark_swr * (1 + kRounding); }

double reflection(double swr) { return std::isinf(swr) ? 1.0 : (swr - 1) / (swr + 1); }

}  // namespace

double power_share(double swr, double full_power_swr, Tuner tuner) {
  if (tuner == Tuner::in_set && within(swr, kInSetReachSwr)) return 1.0;
  if (tuner == Tuner::outside && within(swr, kOutsideReachSwr)) return 1.0;
  const double limit_swr = full_power_swr >= 1 ? full_power_swr : 1.0;
  if (within(swr, limit_swr)) return 1.0;
  const double ratio = reflection(limit_swr) / reflection(swr);
  return ratio * ratio;
}

}  // namespace gs::radio
