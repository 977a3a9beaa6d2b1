// The plan's emission as people would stand in it, for the safety figures and for the power that is radiated.
#pragma once

#include "core/outing/evaluate_parts.h"
#include "core/safety/keep_out.h"

namespace gs {

/// Half-wave dipole over isotropic: 1.64, 47 CFR 1.1307(b)(2).
inline constexpr double kDipoleDbi = 2.15;

/// Gain towards people, dBi. Not known before the pattern is, so the greatest in any direction: a half-wave
/// dipole's (FCC OET Bulletin 65 Supplement B uses the same for dipoles), a full-wave loop's, or a straight wire's
/// of that length where it is longer (antenna::straight_wire_gain_dbi). A whip is given the dipole's too.
double gain_towards_people_dbi(const Plan& plan);

struct ExposureJoin {
  Doubtful doubtful;  // none: the rest is known
  safety::Emission emission{};
  double operator_share = 1;  // busiest share of the operator's shorter averaging time
  safety::Build build = safety::Build::as_a_wire;
  safety::Rule rule = safety::Rule::us;
  double ground_factor = safety::kUsualGround;
  safety::KeepOut passer_by{}, radio_operator{};
  double owed_within_m = 0;
};
/// to_antenna_w: the most that may arrive; not finite where the line is not known, which then takes nothing away.
ExposureJoin join_exposure(const Plan& plan, double to_antenna_w);

}  // namespace gs
