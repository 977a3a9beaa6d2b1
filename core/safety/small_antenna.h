// Short whips and small loops, beside which the far-field formula is too short.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"
#include "core/safety/average_power.h"
#include "core/safety/exposure_limits.h"

namespace gs::safety {

/// One row of a published table: 150 W without pause into a loop of 1 m diameter, distance from the loop's centre.
struct LoopDistance {
  std::string_view key;
  double frequency_mhz, operator_m, public_m;
  Evidence evidence;
  std::string_view source;
};
std::span<const LoopDistance> loop_distances();

/// Field of a short dipole broadside over its far field at distance_m: E by sqrt(1 - 1/x^2 + 1/x^4), H by sqrt(1 +
/// 1/x^2), x = 2 pi distance / wavelength. Hertzian dipole, standard textbook form (Balanis, Antenna Theory, ch. 4,
/// from memory).
double near_e_factor(double frequency_mhz, double distance_m);
double near_h_factor(double frequency_mhz, double distance_m);

/// Distance in m from which both E and H of a short whip keep within their limits, averaged and peak. gain_dbi is
/// the whip's own, losses included. Holds from several whip lengths outwards; nearer it is the order of magnitude.
/// NaN as for the far field.
double short_whip_distance_m(const Emission& emission, Audience audience, Rule rule, double ground_factor);

/// Distance in m from the centre of a small loop of about 1 m diameter: the published table (47 CFR limits),
/// between its frequencies by straight lines and outside them by the nearer end, moved to this power and limit. The
/// reactive field falls with the cube of distance, so distance goes with the sixth root of power; far out with the
/// square root; the larger of the two is taken. NaN as for the far field.
double small_loop_distance_m(const Emission& emission, Audience audience, Rule rule);

}  // namespace gs::safety
