#include "core/battery/kinetic.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::battery {
namespace {

/// What is left of the lag after this time, and the lag that a steady ampere leads to.
double kept(const Wells& wells, double hours) { return std::exp(-wells.rate_per_h * hours); }
double lag_per_a(const Wells& wells) { return 1 / (wells.share * wells.rate_per_h); }

/// The saw-tooth around the mean of an endless train of overs: how far lag and charge stand off the mean.
struct Ripple {
  double lag_at_end_ah, lag_at_start_ah, charge_at_end_ah;
};
Ripple ripple_of(const Wells& wells, const Overs& overs) {
  if (overs.over_h <= 0 || overs.share >= 1) return {0, 0, 0};
  const double mean_a = average_a(overs);
  const double over = lag_per_a(wells) * (overs.sending_a - mean_a),
               pause = lag_per_a(wells) * (overs.pause_a - mean_a);
  const double a = kept(wells, overs.over_h);
  const double b = overs.share > 0 ? kept(wells, overs.over_h * (1 - overs.share) / overs.share) : 0;
  const double end = (over * (1 - a) + pause * (1 - b) * a) / (1 - a * b);
  return {end, end * b + pause * (1 - b), -(overs.sending_a - mean_a) * overs.over_h};
}

/// The lower edge of one train of overs, at many hours.
class Edge {
 public:
  Edge(const Wells& wells, const WellState& state, const Overs& overs)
      : wells_(wells),
        state_(state),
        sending_a_(overs.sending_a),
        mean_a_(average_a(overs)),
        first_h_(overs.share < 1 ? overs.over_h : 0),
        ripple_(ripple_of(wells, overs)) {}

  /// Within the first over: as it is then. From there on: at the end of an over that ends then.
  WellState at(double hours) const {
    if (hours < first_h_) return after(wells_, state_, sending_a_, hours);
    WellState mean = after(wells_, state_, mean_a_, hours);
    mean.charge_ah += ripple_.charge_at_end_ah;
    // the train begins rested, not on its mean: that difference dies away like any other
    mean.lag_ah += ripple_.lag_at_end_ah - ripple_.lag_at_start_ah * kept(wells_, hours);
    return mean;
  }

 private:
  Wells wells_;
  WellState state_;
  double sending_a_, mean_a_, first_h_;
  Ripple ripple_;
};

}  // namespace

WellState full(const Wells& wells) { return {wells.capacity_ah, 0}; }

WellState after(const Wells& wells, const WellState& state, double current_a, double hours) {
  const double keeps = kept(wells, hours);
  return {state.charge_ah - current_a * hours, state.lag_ah * keeps + current_a * lag_per_a(wells) * (1 - keeps)};
}

double available_ah(const Wells& wells, const WellState& state) {
  return wells.share * (state.charge_ah - (1 - wells.share) * state.lag_ah);
}

double bound_ah(const Wells& wells, const WellState& state) {
  return (1 - wells.share) * (state.charge_ah + wells.share * state.lag_ah);
}

double filling(const Wells& wells, const WellState& state) {
  return (state.charge_ah - (1 - wells.share) * state.lag_ah) / wells.capacity_ah;
}

double average_a(const Overs& overs) { return overs.pause_a + (overs.sending_a - overs.pause_a) * overs.share; }

WellState at_over_end(const Wells& wells, const WellState& state, const Overs& overs, double hours) {
  return Edge(wells, state, overs).at(std::max(hours, overs.over_h));
}

WellState at_over_start(const Wells& wells, const Overs& overs, double taken_ah) {
  const double mean_a = average_a(overs);
  if (mean_a <= 0 || taken_ah <= 0) return {wells.capacity_ah - taken_ah, 0};
  const double hours = taken_ah / mean_a;
  WellState mean = after(wells, full(wells), mean_a, hours);
  mean.lag_ah += ripple_of(wells, overs).lag_at_start_ah * (1 - kept(wells, hours));
  return mean;
}

double hours_to_filling(const Wells& wells, const WellState& state, const Overs& overs, double least_filling) {
  const Edge edge(wells, state, overs);
  const auto above = [&](double hours) { return filling(wells, edge.at(hours)) - least_filling; };
  if (above(0) < 0) return 0;
  const double mean_a = average_a(overs);
  if (mean_a <= 0) return std::numeric_limits<double>::infinity();
  // Charge alone bounds it: the lag only brings the end nearer, but for what an earlier, harder load left behind.
  const double over_h = overs.share < 1 ? overs.over_h : 0;
  double low = 0, high = over_h;
  if (above(over_h) >= 0) {
    low = over_h;
    high = over_h + std::max(0.0, state.charge_ah - least_filling * wells.capacity_ah) / mean_a;
    // rounding may leave the bracket open, even empty
    for (int i = 0; i < 60 && above(high) > 0; ++i) high = 2 * high + 1e-9;
  }
  double at_low = above(low), at_high = above(high);
  // False position that halves the value of an end that stays (Illinois): keeps the bracket, and is quick.
  for (int i = 0, stayed = 0; i < 60 && high - low > 1e-12 * high; ++i) {
    const double middle = std::clamp(low + (high - low) * at_low / (at_low - at_high), low, high);
    const double at_middle = above(middle);
    if (std::abs(at_middle) < 1e-13) return middle;
    if (at_middle > 0) {
      low = middle;
      at_low = at_middle;
      if (stayed == 1) at_high /= 2;
      stayed = 1;
    } else {
      high = middle;
      at_high = at_middle;
      if (stayed == -1) at_low /= 2;
      stayed = -1;
    }
  }
  return low;
}

double given_ah(const Wells& wells, double hours) {
  const double kt = wells.rate_per_h * hours, gone = -std::expm1(-kt), c = wells.share;
  return wells.capacity_ah * kt * c / (gone + c * (kt - gone));
}

double hours_to_empty(const Wells& wells, double current_a) {
  return hours_to_filling(wells, full(wells), {current_a, current_a, 1, 0}, 0);
}

}  // namespace gs::battery
