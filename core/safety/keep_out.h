// The distance that is shown: formula, near field and arm's reach together, rounded up.
#pragma once

#include "core/safety/far_field.h"

namespace gs::safety {

/// as_a_wire: half a wave or longer, or a quarter wave over radials; short_whip: under about a tenth of a wave,
/// loaded; small_loop: about 1 m across.
enum class Build : unsigned char { as_a_wire, short_whip, small_loop };

/// Arm's reach: nobody comes nearer to metal that carries RF (common practice).
inline constexpr double kArmsReachM = 1.5;
/// Nearest to a short whip or a small loop, whatever the figures say (common practice).
inline constexpr double kSmallAntennaM = 2.0;

enum class Binds : unsigned char { formula, near_field, arms_reach, small_antenna };

struct KeepOut {
  double formula_m;     // the far-field formula alone, as it comes out
  double near_field_m;  // the near-field figure of a short whip or small loop; 0 for wires
  double shown_m;       // the largest of them and of the floors, rounded up to 0.1 m
  Binds binds;          // which of them it is
  /// shown_m lies within lambda / 2 pi: the figure may be called tight at best, and an evaluation is owed.
  bool within_reactive_zone;
};

/// Keep-out of one audience. touchable: a person can reach a part that carries RF, so arm's reach is the least. All
/// distances NaN where input is impossible or no limit holds. Never falls when power, duty, gain or busiest share
/// rise.
KeepOut keep_out(const Emission& emission, Audience audience, Rule rule, double ground_factor, Build build,
                 bool touchable);

/// Most peak envelope power at the antenna with which formula and near field both stay within distance_m, floors
/// aside; emission.peak_power_w is not read. NaN for impossible input.
double most_peak_power_w(Emission emission, double distance_m, Audience audience, Rule rule, double ground_factor,
                         Build build);

/// Up to the next tenth of a metre.
double round_up_m(double distance_m);

}  // namespace gs::safety
