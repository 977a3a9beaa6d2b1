#include "core/outing/exposure_join.h"

#include <algorithm>
#include <cmath>

#include "core/antenna/kind.h"
#include "core/antenna/long_wire.h"
#include "core/outing/antenna_setup.h"
#include "core/outing/rules_rows.h"
#include "core/radio/mode.h"

namespace gs {
namespace {

constexpr double kLoopGainDbi = 3.3;
constexpr double kHalfWave = 0.5;
constexpr double kLeastW = 1e-6;

/// Average over peak power while sending, for people: never under what the exposure bulletin takes for the mode.
double exposure_duty(const radio::Mode& mode) {
  double duty = mode.average_power_share;
  for (const safety::ExposureDuty& row : safety::exposure_duties())
    if (row.key == mode.key) duty = std::max(duty, row.duty);
  return duty;
}

/// Of the wire drawn straight; NaN where it is so short that its kind's own gain stands. A vertical and its image,
/// or radials, are a wire of twice its length fed in the middle.
double longer_wire_dbi(const antenna::Kind& kind, double waves) {
  const bool upright = kind.shape == antenna::Shape::vertical || kind.shape == antenna::Shape::ground_plane ||
                       kind.shape == antenna::Shape::inverted_l;
  if (upright) waves *= 2;
  if (!(waves > kHalfWave)) return std::numeric_limits<double>::quiet_NaN();
  const double end_fed_dbi = antenna::straight_wire_gain_dbi(waves, antenna::FedAt::end);
  if (!upright && !kind.two_ends()) return end_fed_dbi;
  return std::fmax(end_fed_dbi, antenna::straight_wire_gain_dbi(waves, antenna::FedAt::middle));
}

}  // namespace

double gain_towards_people_dbi(const Plan& plan) {
  const antenna::Kind* kind = antenna_kind(plan);
  if (!kind) return kDipoleDbi;
  const double least_dbi = kind->shape == antenna::Shape::loop ? kLoopGainDbi : kDipoleDbi;
  if (kind->is_whip() || !plan.has(L::antenna_frequency_mhz)) return least_dbi;
  const double frequency_mhz = plan[L::antenna_frequency_mhz];
  const double waves =
      antenna::rig_of(*kind, frequency_mhz, antenna_setup(plan)).wire_m / antenna::wavelength_m(frequency_mhz);
  return std::fmax(least_dbi, longer_wire_dbi(*kind, waves));
}

ExposureJoin join_exposure(const Plan& plan, double to_antenna_w) {
  ExposureJoin join;
  join.doubtful = first_missing(
      plan, {L::radio_full_power_w, L::radio_transmit_power_w, L::antenna_frequency_mhz, L::antenna_kind});
  if (join.doubtful.doubt == Doubt::none && plan[L::radio_transmit_power_w] > plan[L::radio_full_power_w])
    join.doubtful = {Doubt::impossible, L::radio_transmit_power_w};
  if (join.doubtful.doubt != Doubt::none) return join;
  const antenna::Kind& kind = antenna::kinds()[std::size_t(plan[L::antenna_kind])];
  const double power_w = std::isfinite(to_antenna_w) ? to_antenna_w : plan[L::radio_transmit_power_w];
  join.emission = {.frequency_mhz = plan[L::antenna_frequency_mhz],
                   .peak_power_w = std::max(power_w, kLeastW),
                   .gain_dbi = gain_towards_people_dbi(plan),
                   .duty = exposure_duty(radio::modes()[std::size_t(plan[L::radio_mode])]),
                   .busiest_share = plan[L::safety_busiest_share_pct] / 100};
  join.build = kind.shape == antenna::Shape::whip ? safety::Build::short_whip : safety::Build::as_a_wire;
  join.rule = safety::Rule(int(plan[L::safety_limits]));
  join.ground_factor = ground_factor_at(plan[L::safety_ground]);
  const auto keep_out = [&](const safety::Emission& emission, safety::Audience audience) {
    return safety::keep_out(emission, audience, join.rule, join.ground_factor, join.build, true);
  };
  join.passer_by = keep_out(join.emission, safety::Audience::passer_by);
  join.owed_within_m = safety::evaluation_owed_within_m(join.emission);
  // The operator's averaging time is shorter: all sending of the public's window may fall into it.
  join.operator_share = safety::share_of_shorter_window(
      join.emission.busiest_share, safety::averaging_min(safety::Audience::passer_by, join.rule),
      safety::averaging_min(safety::Audience::radio_operator, join.rule));
  safety::Emission own = join.emission;
  own.busiest_share = join.operator_share;
  join.radio_operator = keep_out(own, safety::Audience::radio_operator);
  if (!std::isfinite(join.passer_by.shown_m) || !std::isfinite(join.radio_operator.shown_m) ||
      !std::isfinite(join.owed_within_m))
    join.doubtful = {Doubt::not_in_catalogue, L::antenna_frequency_mhz};
  return join;
}

}  // namespace gs
