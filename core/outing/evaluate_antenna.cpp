// The antenna by its kind: how long, does it fit, what it radiates, how to trim it.
#include <cmath>
#include <limits>

#include "core/antenna/hang.h"
#include "core/outing/antenna_setup.h"
#include "core/outing/evaluate_parts.h"

namespace gs {
namespace {

void put_or(Outlook& out, const Plan& plan, R id, double value, Doubtful why) {
  if (std::isfinite(value)) {
    put(out, id, judge(plan, id, value));
  } else {
    withhold(out, {id}, why);
  }
}

/// Change of length at each free end that brings the dip to the frequency; 0 while nobody read a dip or gave a
/// length: as cut.
double trim_m(const antenna::Kind& kind, double f_mhz, const antenna::Setup& setup) {
  if (kind.non_resonant() || (!std::isfinite(setup.dip_mhz) && !std::isfinite(setup.wire_m))) return 0;
  const double dip_mhz = antenna::first_resonance_mhz(kind, f_mhz, setup);
  const double length_m = antenna::rig_of(kind, f_mhz, setup).wire_m;
  if (kind.is_whip()) {
    const double khz_per_cm = antenna::whip_khz_per_cm(
        {length_m, setup.whip_diameter_m, dip_mhz, setup.coil_at, setup.coil_q, setup.vehicle_ground_ohm});
    return (f_mhz - dip_mhz) * 1000 / khz_per_cm / 100;
  }
  const double change_m = antenna::trimmed_length_m(length_m, dip_mhz, f_mhz) - length_m;
  return kind.two_ends() ? change_m / 2 : change_m;
}

/// Room over the obstacle, NaN where there is none to be counted.
double put_obstacle(const Plan& plan, const antenna::Rig& rig, const antenna::Space& space, Outlook& out) {
  constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
  const Doubtful no_obstacle = first_missing(plan, {L::antenna_obstacle_m, L::antenna_obstacle_high_m});
  if (no_obstacle.doubt != Doubt::none) {
    withhold(out, {R::antenna_clears_m}, no_obstacle);
    return kNone;
  }
  const double over_m = antenna::clear_over_m(antenna::sketch(rig, space), plan[L::antenna_obstacle_m],
                                              plan[L::antenna_obstacle_high_m]);
  put_or(out, plan, R::antenna_clears_m, over_m, {Doubt::no_wire_there, L::antenna_obstacle_m});
  return over_m;
}

void put_space(const Plan& plan, const antenna::Rig& rig, Outlook& out) {
  static constexpr std::initializer_list<R> kNeedSpace = {R::antenna_fits_m, R::antenna_low_m, R::antenna_clears_m,
                                                          R::antenna_rope_m};
  const Doubtful no_space = first_missing(plan, {L::antenna_apex_m, L::antenna_span_m});
  if (no_space.doubt != Doubt::none) return withhold(out, kNeedSpace, no_space);
  const antenna::Space space = antenna_space(plan);
  const antenna::Fit fit = antenna::fit(rig, space);
  if (!std::isfinite(fit.room_m)) return withhold(out, kNeedSpace, {Doubt::not_in_catalogue, L::antenna_kind});
  const double over_m = put_obstacle(plan, rig, space, out);
  const bool runs_in = over_m < fit.room_m;
  Figure room = judge(plan, R::antenna_fits_m, runs_in ? over_m : fit.room_m);
  if (room.state != State::unknown)
    room.culprit = runs_in ? L::antenna_obstacle_m : fit.height_binds() ? L::antenna_apex_m : L::antenna_span_m;
  put(out, R::antenna_fits_m, room);
  const antenna::Hang hung = antenna::hang(rig, space);
  put(out, R::antenna_low_m, judge(plan, R::antenna_low_m, std::max(0.0, hung.low_m)));
  put(out, R::antenna_rope_m, judge(plan, R::antenna_rope_m, hung.rope_m + hung.throw_line_m));
}

}  // namespace

void put_antenna(const Plan& plan, Joined&, Outlook& out) {
  const Doubtful why = first_missing(plan, {L::antenna_kind, L::antenna_frequency_mhz});
  if (why.doubt != Doubt::none)
    return withhold(out,
                    {R::antenna_cut_length_m, R::antenna_efficiency_pct, R::antenna_fits_m, R::antenna_trim_m,
                     R::antenna_low_m, R::antenna_clears_m, R::antenna_width_mhz, R::antenna_against_full_db,
                     R::antenna_all_wire_m, R::antenna_rope_m},
                    why);
  const antenna::Kind& kind = *antenna_kind(plan);
  const double f_mhz = plan[L::antenna_frequency_mhz];
  const antenna::Setup setup = antenna_setup(plan);
  const Doubtful not_of_kind{Doubt::not_in_catalogue, L::antenna_kind};
  const Doubtful no_length{Doubt::no_own_length, L::antenna_kind};
  put_or(out, plan, R::antenna_cut_length_m, antenna::cut_length_m(kind, f_mhz, setup.wire), no_length);
  const antenna::FeedPoint feed = antenna::feed_point(kind, f_mhz, setup);
  if (!std::isfinite(feed.efficiency)) {
    withhold(out, {R::antenna_efficiency_pct}, not_of_kind);
  } else {
    put(out, R::antenna_efficiency_pct,
        ranged(plan, R::antenna_efficiency_pct, 100 * feed.efficiency, 100 * feed.least_efficiency,
               100 * feed.most_efficiency));
  }
  put_or(out, plan, R::antenna_width_mhz, antenna::width_mhz(f_mhz, feed.q), no_length);
  const double full_db =
      kind.is_whip() ? antenna::against_full_size_db(feed.efficiency) : 10 * std::log10(feed.efficiency);
  put_or(out, plan, R::antenna_against_full_db, full_db, not_of_kind);
  const antenna::Rig rig = antenna::rig_of(kind, f_mhz, setup);
  put_or(out, plan, R::antenna_all_wire_m, antenna::total_wire_m(kind, f_mhz, setup), not_of_kind);
  put_or(out, plan, R::antenna_trim_m, trim_m(kind, f_mhz, setup), not_of_kind);
  put_space(plan, rig, out);
}

}  // namespace gs
