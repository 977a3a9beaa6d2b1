// How far people stay away, from the power that may arrive at the antenna, and whether anybody looked.
#include <algorithm>
#include <cmath>

#include "core/outing/exposure_join.h"
#include "core/outing/overhead_join.h"

namespace gs {
namespace {

constexpr double kAtBestTight = 0.5;  // of slack: between limit and ease
constexpr double kTooNear = -1;

/// Whoever looked at everything is at best at "tight" where people may stand nearer than a formula alone can say,
/// and fails where they stand nearer than the keep-out. Without a paced distance they may stand right at the
/// keep-out.
void lower(const Plan& plan, const ExposureJoin& join, Figure& looked) {
  if (looked.state != State::holds) return;
  const bool paced = plan.has(L::safety_people_m);
  const double keep_out_m = std::max(join.passer_by.shown_m, join.radio_operator.shown_m);
  const double nearest_m = paced ? plan[L::safety_people_m] : keep_out_m;
  const bool too_near = nearest_m < keep_out_m;
  if (!too_near && nearest_m >= join.owed_within_m) return;
  looked.state = too_near ? State::fails : State::tight;
  looked.slack = too_near ? kTooNear : kAtBestTight;
  looked.doubt = too_near ? Doubt::people_too_near : Doubt::evaluation_owed;
  looked.culprit = too_near ? L::safety_people_m : L::antenna_frequency_mhz;
}

/// What is left to look at fails under a power line that is too near, whatever else was looked at.
void put_lines(const Plan& plan, Outlook& out) {
  const OverheadJoin join = join_overhead(plan);
  if (join.antenna.doubt != Doubt::none) {
    withhold(out, {R::safety_stay_off_m}, join.antenna);
  } else {
    put(out, R::safety_stay_off_m, judge(plan, R::safety_stay_off_m, join.stay_off_m));
  }
  if (!std::isfinite(join.room_m)) return withhold(out, {R::safety_line_room_m}, join.room);
  put(out, R::safety_line_room_m, judge(plan, R::safety_line_room_m, join.room_m));
  Figure& left = out.at[std::size_t(R::safety_left_to_look_at)];
  if (left.state == State::fails) return;  // people too near were said first
  if (join.room_m < 0) {
    left = judge(plan, R::safety_left_to_look_at, 1);
    if (left.state == State::unknown) return;  // its limits are impossible
    left.state = State::fails;
    left.slack = kTooNear;
    left.doubt = Doubt::line_too_near;
    left.culprit = L::safety_line_m;
  } else if (join.room_m < join.clearance_m && left.state == State::holds) {
    left.state = State::tight;
    left.slack = kAtBestTight;
    left.doubt = Doubt::line_near;
    left.culprit = L::safety_line_m;
  }
}

void put_exposure(const Plan& plan, const Joined& joined, Outlook& out) {
  const ExposureJoin join = join_exposure(plan, joined.to_antenna_w);
  if (join.doubtful.doubt != Doubt::none)
    return withhold(out, {R::safety_public_m, R::safety_operator_m, R::safety_owed_within_m}, join.doubtful);
  put(out, R::safety_public_m, judge(plan, R::safety_public_m, join.passer_by.shown_m));
  put(out, R::safety_operator_m, judge(plan, R::safety_operator_m, join.radio_operator.shown_m));
  put(out, R::safety_owed_within_m, judge(plan, R::safety_owed_within_m, safety::round_up_m(join.owed_within_m)));
  lower(plan, join, out.at[std::size_t(R::safety_left_to_look_at)]);
}

}  // namespace

void put_safety(const Plan& plan, Joined& joined, Outlook& out) {
  put(out, R::safety_left_to_look_at, judge(plan, R::safety_left_to_look_at, 0));
  for (const L looked : {L::safety_looked_at_coax, L::safety_looked_at_fuse, L::safety_looked_at_lines})
    if (plan[looked] == 0) withhold(out, {R::safety_left_to_look_at}, {Doubt::not_looked_at, looked});
  put_exposure(plan, joined, out);
  put_lines(plan, out);
}

}  // namespace gs
