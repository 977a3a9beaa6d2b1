// The antenna by its kind: how long, does it fit, what it radiates.
#include <cmath>

#include "core/antenna/feed.h"
#include "core/outing/evaluate_parts.h"

namespace gs {

void put_antenna(const Plan& plan, Joined&, Outlook& out) {
  const Doubtful why = first_missing(plan, {L::antenna_kind, L::antenna_frequency_mhz});
  if (why.doubt != Doubt::none) {
    withhold(out, {R::antenna_cut_length_m, R::antenna_efficiency_pct, R::antenna_fits_m}, why);
    return;
  }
  const antenna::Kind& kind = antenna::kinds()[std::size_t(plan[L::antenna_kind])];
  const double f_mhz = plan[L::antenna_frequency_mhz];
  const double cut_m = antenna::cut_length_m(kind, f_mhz);
  if (std::isfinite(cut_m)) {
    put(out, R::antenna_cut_length_m, judge(plan, R::antenna_cut_length_m, cut_m));
  } else {
    withhold(out, {R::antenna_cut_length_m}, {Doubt::not_in_catalogue, L::antenna_kind});
  }
  const double efficiency = antenna::feed_point(kind, f_mhz).efficiency;
  if (std::isfinite(efficiency)) {
    put(out, R::antenna_efficiency_pct, judge(plan, R::antenna_efficiency_pct, 100 * efficiency));
  } else {
    withhold(out, {R::antenna_efficiency_pct}, {Doubt::not_in_catalogue, L::antenna_kind});
  }
  const Doubtful no_space = first_missing(plan, {L::antenna_apex_m, L::antenna_span_m});
  if (no_space.doubt != Doubt::none) {
    withhold(out, {R::antenna_fits_m}, no_space);
    return;
  }
  const antenna::Fit fit = antenna::fit(antenna::rig_of(kind, f_mhz),
                                        {.apex_m = plan[L::antenna_apex_m], .span_m = plan[L::antenna_span_m]});
  if (!std::isfinite(fit.room_m)) {
    withhold(out, {R::antenna_fits_m}, {Doubt::not_in_catalogue, L::antenna_kind});
    return;
  }
  Figure room = judge(plan, R::antenna_fits_m, fit.room_m);
  if (room.state != State::unknown) room.culprit = fit.height_binds() ? L::antenna_apex_m : L::antenna_span_m;
  put(out, R::antenna_fits_m, room);
}

}  // namespace gs
