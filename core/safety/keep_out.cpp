#include "core/safety/keep_out.h"

#include <cmath>

#include "core/safety/small_antenna.h"

namespace gs::safety {

double round_up_m(double distance_m) {
  constexpr double kRounding = 1e-9;  // a distance that is a tenth already stays it
  return std::ceil(distance_m * 10 - kRounding) / 10;
}

KeepOut keep_out(const Emission& emission, Audience audience, Rule rule, double ground_factor, Build build,
                 bool touchable) {
  KeepOut result{.formula_m = far_field_distance_m(emission, audience, rule, ground_factor),
                 .near_field_m = 0,
                 .shown_m = 0,
                 .binds = Binds::formula,
                 .within_reactive_zone = true};
  if (build == Build::short_whip)
    result.near_field_m = short_whip_distance_m(emission, audience, rule, ground_factor);
  if (build == Build::small_loop) result.near_field_m = small_loop_distance_m(emission, audience, rule);
  double most_m = result.formula_m;
  const auto at_least = [&](double distance_m, Binds binds) {
    if (distance_m <= most_m) return;
    most_m = distance_m;
    result.binds = binds;
  };
  if (build != Build::as_a_wire) at_least(result.near_field_m, Binds::near_field);
  if (build != Build::as_a_wire) at_least(kSmallAntennaM, Binds::small_antenna);
  if (touchable) at_least(kArmsReachM, Binds::arms_reach);
  result.shown_m = std::isfinite(result.formula_m) ? round_up_m(most_m) : result.formula_m;
  result.within_reactive_zone = !(result.shown_m >= reactive_zone_m(emission.frequency_mhz));
  return result;
}

double most_peak_power_w(Emission emission, double distance_m, Audience audience, Rule rule, double ground_factor,
                         Build build) {
  const double by_formula_w = peak_power_for_distance_w(emission, distance_m, audience, rule, ground_factor);
  if (build == Build::as_a_wire || !std::isfinite(by_formula_w)) return by_formula_w;
  double low_w = by_formula_w * 1e-12, high_w = by_formula_w;  // the near field can only ask for less power
  const auto keeps = [&](double power_w) {
    emission.peak_power_w = power_w;
    return keep_out(emission, audience, rule, ground_factor, build, false).near_field_m <= distance_m;
  };
  if (keeps(high_w)) return high_w;
  for (int i = 0; i < 100; ++i) {
    const double middle_w = std::sqrt(low_w * high_w);
    (keeps(middle_w) ? low_w : high_w) = middle_w;
  }
  return low_w;
}

}  // namespace gs::safety
