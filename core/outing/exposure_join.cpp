#include "core/outing/exposure_join.h"

#include <algorithm>
#include <cmath>

#include "core/antenna/kind.h"
#include "core/outing/rules_rows.h"
#include "core/radio/mode.h"

namespace gs {
namespace {

constexpr double kLoopGainDbi = 3.3;
constexpr double kLeastW = 1e-6;

/// Average over peak power while sending, for people: never under what the exposure bulletin takes for the mode.
double exposure_duty(const radio::Mode& mode) {
  double duty = mode.average_power_share;
  for (const safety::ExposureDuty& row : safety::exposure_duties())
    if (row.key == mode.key) duty = std::max(duty, row.duty);
  return duty;
}

}  // namespace

double gain_towards_people_dbi(const Plan& plan) {
  const bool loop = plan.has(L::antenna_kind) &&
                    antenna::kinds()[std::size_t(plan[L::antenna_kind])].shape == antenna::Shape::loop;
  return loop ? kLoopGainDbi : kDipoleDbi;
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
