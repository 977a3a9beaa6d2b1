// Power density at a distance, distance for a limit, power for a distance: the far-field formula, and where it may
// not stand alone.
#pragma once

#include "core/safety/average_power.h"
#include "core/safety/exposure_limits.h"

namespace gs::safety {

/// How much the ground adds: S = factor x EIRP / (4 pi R^2). FCC OET Bulletin 65 Supplement B, equations 3, 7
/// and 6.
inline constexpr double kNoGround = 1.0;
inline constexpr double kUsualGround =
    2.56;  // field raised 1.6 times; what the bulletin's own tables were computed with
inline constexpr double kFullReflection = 4.0;

/// Power density in W/m2 of an average power at distance_m > 0. NaN for impossible input.
double power_density_w_per_m2(const Emission& emission, double distance_m, double ground_factor);

/// Distance from the antenna at which the averaged power density falls to the limit and, where the rule limits
/// peaks too, the peak one to its own. m, NaN where no limit holds or input is impossible. Beyond lambda / 2 pi it
/// is a fair figure; nearer it is the far-field formula stretched: too long beside half-wave dipoles (by 1.6
/// to 1.8), too short beside small loops and short whips.
double far_field_distance_m(const Emission& emission, Audience audience, Rule rule, double ground_factor);

/// Averaged (or peak, whichever is more) power density over its limit at a distance, percent.
double of_limit_pct(const Emission& emission, double distance_m, Audience audience, Rule rule,
                    double ground_factor);

/// Most peak envelope power at the antenna that keeps within the limit at a distance; emission.peak_power_w is not
/// read.
double peak_power_for_distance_w(Emission emission, double distance_m, Audience audience, Rule rule,
                                 double ground_factor);

/// lambda / 2 pi in m: nearer than this E and H are not tied together, and no exemption can be claimed.
double reactive_zone_m(double frequency_mhz);

/// Effective radiated power over a half-wave dipole, W, of the averaged power. 47 CFR 1.1307(b)(2): gain 1.64.
double average_erp_w(const Emission& emission);

/// Nearer than this to anybody an evaluation is owed (47 CFR 1.1307(b)(3)(i)): no part of the antenna may be nearer
/// to a person for the station to be exempt. Never under lambda / 2 pi; 0 up to 1 mW of averaged power. 0.3 to 300
/// MHz, else NaN. Exempt never means "within the limits": those bind anyway. Outside the US it is a sound mark for
/// where a formula alone is not enough.
double evaluation_owed_within_m(const Emission& emission);

}  // namespace gs::safety
