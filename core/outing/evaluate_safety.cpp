// How far people stay away, from the power that may arrive at the antenna.
#include <algorithm>
#include <cmath>

#include "core/antenna/kind.h"
#include "core/outing/evaluate_parts.h"
#include "core/radio/mode.h"
#include "core/safety/keep_out.h"

namespace gs {
namespace {

// Gain towards people is not known before the pattern is: a half-wave dipole's, the most that a single wire of
// these kinds gives in free space but for the full-wave loop (1 dB more). FCC OET Bulletin 65 Supplement B uses the
// same for dipoles.
constexpr double kWireGainDbi = 2.15, kLoopGainDbi = 3.3;

constexpr double kAtBestTight = 0.5;  // of slack: between limit and ease

/// Average over peak power while sending, for people: never under what the exposure bulletin takes for the mode.
double exposure_duty(const radio::Mode& mode) {
  double duty = mode.average_power_share;
  for (const safety::ExposureDuty& row : safety::exposure_duties())
    if (row.key == mode.key) duty = std::max(duty, row.duty);
  return duty;
}

}  // namespace

void put_safety(const Plan& plan, Joined& joined, Outlook& out) {
  put(out, R::safety_left_to_look_at, judge(plan, R::safety_left_to_look_at, 0));
  for (const L looked : {L::safety_looked_at_coax, L::safety_looked_at_fuse, L::safety_looked_at_lines})
    if (plan[looked] == 0) withhold(out, {R::safety_left_to_look_at}, {Doubt::not_looked_at, looked});
  const std::initializer_list<R> kAll = {R::safety_public_m, R::safety_operator_m, R::safety_owed_within_m};
  Doubtful why = first_missing(
      plan, {L::radio_full_power_w, L::radio_transmit_power_w, L::antenna_frequency_mhz, L::antenna_kind});
  if (why.doubt == Doubt::none && plan[L::radio_transmit_power_w] > plan[L::radio_full_power_w])
    why = {Doubt::impossible, L::radio_transmit_power_w};
  if (why.doubt != Doubt::none) return withhold(out, kAll, why);
  const antenna::Kind& kind = antenna::kinds()[std::size_t(plan[L::antenna_kind])];
  const bool whip = kind.shape == antenna::Shape::whip;
  // Where the line is not known it takes nothing away: the careful side.
  const double power_w = std::isfinite(joined.to_antenna_w) ? joined.to_antenna_w : plan[L::radio_transmit_power_w];
  const double f_mhz = plan[L::antenna_frequency_mhz];
  safety::Emission emission{.frequency_mhz = f_mhz,
                            .peak_power_w = std::max(power_w, 1e-6),
                            .gain_dbi = kind.shape == antenna::Shape::loop ? kLoopGainDbi : kWireGainDbi,
                            .duty = exposure_duty(radio::modes()[std::size_t(plan[L::radio_mode])]),
                            .busiest_share = plan[L::safety_busiest_share_pct] / 100};
  const auto keep_out = [&](safety::Audience audience) {
    return safety::keep_out(emission, audience, safety::Rule::us, safety::kUsualGround,
                            whip ? safety::Build::short_whip : safety::Build::as_a_wire, true);
  };
  const double public_window_min = safety::averaging_min(safety::Audience::passer_by, safety::Rule::us);
  const double operator_window_min = safety::averaging_min(safety::Audience::radio_operator, safety::Rule::us);
  const safety::KeepOut passer_by = keep_out(safety::Audience::passer_by);
  const double owed_m = safety::evaluation_owed_within_m(emission);
  // The operator's averaging time is shorter: all sending of the public's window may fall into it.
  emission.busiest_share =
      safety::share_of_shorter_window(emission.busiest_share, public_window_min, operator_window_min);
  const safety::KeepOut radio_operator = keep_out(safety::Audience::radio_operator);
  if (!std::isfinite(passer_by.shown_m) || !std::isfinite(radio_operator.shown_m) || !std::isfinite(owed_m))
    return withhold(out, kAll, {Doubt::not_in_catalogue, L::antenna_frequency_mhz});
  put(out, R::safety_public_m, judge(plan, R::safety_public_m, passer_by.shown_m));
  put(out, R::safety_operator_m, judge(plan, R::safety_operator_m, radio_operator.shown_m));
  put(out, R::safety_owed_within_m, judge(plan, R::safety_owed_within_m, safety::round_up_m(owed_m)));
  // Nearer than lambda / 2 pi the formula alone may not stand: whoever looked at everything is at best at "tight".
  Figure looked = out[R::safety_left_to_look_at];
  if (looked.state == State::holds && (passer_by.within_reactive_zone || radio_operator.within_reactive_zone)) {
    looked.state = State::tight;
    looked.slack = kAtBestTight;
    looked.doubt = Doubt::evaluation_owed;
    looked.culprit = L::antenna_frequency_mhz;
    put(out, R::safety_left_to_look_at, looked);
  }
}

}  // namespace gs
