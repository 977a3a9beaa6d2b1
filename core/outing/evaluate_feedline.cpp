// Radio and feed line: power that the radio lets go, through the line, to the antenna.
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/outing/evaluate_parts.h"
#include "core/radio/fold_back.h"

namespace gs {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

constexpr R kRestOnLossLaw[] = {R::feedline_matched_loss_db, R::feedline_total_loss_db,
                                R::feedline_arrives_pct,     R::feedline_power_to_antenna_w,
                                R::feedline_cable_matched_w, R::feedline_cable_swr_w,
                                R::feedline_swr_at_radio,    R::antenna_swr,
                                R::radio_turned_down_w,      R::feedline_radio_r_ohm,
                                R::feedline_radio_x_ohm,     R::feedline_highest_v};

/// Whether the figure owes nothing to the line's loss: an SWR is as given at the end where the load is known, and
/// the set turns down by what stands at its own end.
bool as_given(R id, LoadFrom from) {
  if (id == R::antenna_swr) return from == LoadFrom::impedance || from == LoadFrom::swr_at_antenna;
  if (id == R::feedline_swr_at_radio || id == R::radio_turned_down_w) return from == LoadFrom::swr_at_radio;
  return false;
}

double share_through(double loss_db) { return std::pow(10, -loss_db / 10); }

/// Radio and feed line together, since the radio's power rests on the SWR at its end of the line.
struct Watts {
  double leaves_w = kNaN;  // NaN: not known
  Doubtful why_not{Doubt::none, L::count};
};

Watts watts(const Plan& plan, const FeedlineJoin& join) {
  Watts result;
  if (!plan.has(L::radio_transmit_power_w)) {
    result.why_not = {Doubt::missing,
                      plan.has(L::radio_full_power_w) ? L::radio_transmit_power_w : L::radio_full_power_w};
  } else if (plan[L::radio_transmit_power_w] > plan[L::radio_full_power_w]) {
    result.why_not = {Doubt::impossible, L::radio_transmit_power_w};
  } else if (!join.cable) {
    result.why_not = {join.cable_doubt, join.cable_culprit};
  } else if (join.load_doubt != Doubt::none) {
    result.why_not = {join.load_doubt, join.load_culprit};
  } else {
    const double share = radio::power_share(join.swr_at_radio, plan[L::radio_fold_back_swr],
                                            radio::Tuner(int(plan[L::radio_tuner])));
    result.leaves_w = plan[L::radio_transmit_power_w] * share;
  }
  return result;
}

void put_weight(const Plan& plan, const FeedlineJoin& join, Outlook& out) {
  if (!plan.has_all(L::feedline_cable, L::feedline_length_m)) {
    withhold(out, {R::feedline_weight_g},
             {Doubt::missing, plan.has(L::feedline_cable) ? L::feedline_length_m : L::feedline_cable});
    return;
  }
  const feedline::Cable& cable = feedline::cables()[std::size_t(plan[L::feedline_cable])];
  const double second_m = join.second ? plan[L::feedline_second_length_m] : 0;
  if (!(cable.mass_g_per_m > 0)) {
    withhold(out, {R::feedline_weight_g}, {Doubt::not_in_catalogue, L::feedline_cable});
  } else if (join.second && !(join.second->mass_g_per_m > 0)) {
    withhold(out, {R::feedline_weight_g}, {Doubt::not_in_catalogue, L::feedline_second_cable});
  } else {
    const double second_g = join.second ? join.second->mass_g_per_m * second_m : 0;
    put(out, R::feedline_weight_g,
        judge(plan, R::feedline_weight_g, cable.mass_g_per_m * plan[L::feedline_length_m] + second_g));
  }
}

/// SWR on a line of z0_ohm when a meter of kMeterOhm reads `swr`, at most.
double swr_on_line(double swr, double z0_ohm) { return swr * std::max(z0_ohm / kMeterOhm, kMeterOhm / z0_ohm); }

/// Highest voltage on either cable: the sum of both waves grows and falls along a line in such a way that it is
/// highest at one of its ends.
double highest_voltage(const FeedlineJoin& join, double leaves_w) {
  double highest_v = 0;
  for (const feedline::Cable* cable : {join.cable, join.second}) {
    if (!cable) continue;
    const double z0_ohm = cable->z0_ohm;
    const double at_antenna = swr_on_line(join.swr_at_antenna, z0_ohm);
    const double at_radio = swr_on_line(join.swr_at_radio, z0_ohm);
    highest_v =
        std::max({highest_v, feedline::highest_voltage_v(leaves_w, z0_ohm, at_radio),
                  feedline::highest_voltage_v(leaves_w * share_through(join.loss.typical_db), z0_ohm, at_antenna)});
  }
  return highest_v;
}

/// What stands at the radio's end and what the cable must bear.
void put_at_radio(const Plan& plan, const FeedlineJoin& join, bool load_known, Doubtful no_load, const Watts& power,
                  Outlook& out) {
  if (load_known && join.impedance_known()) {
    const feedline::Complex z = feedline::input_impedance_ohm(join.run, join.load_ohm);
    put(out, R::feedline_radio_r_ohm, judge(plan, R::feedline_radio_r_ohm, z.real()));
    put(out, R::feedline_radio_x_ohm, judge(plan, R::feedline_radio_x_ohm, z.imag()));
  } else {
    withhold(out, {R::feedline_radio_r_ohm, R::feedline_radio_x_ohm},
             load_known ? Doubtful{Doubt::missing, L::antenna_feed_r_ohm} : no_load);
  }
  if (std::isfinite(power.leaves_w))
    put(out, R::feedline_highest_v, judge(plan, R::feedline_highest_v, highest_voltage(join, power.leaves_w)));
  else
    withhold(out, {R::feedline_highest_v}, power.why_not);
}

}  // namespace

void put_feedline(const Plan& plan, Joined& joined, Outlook& out) {
  joined.line = join_feedline(plan);
  const FeedlineJoin& join = joined.line;
  if (join.cable) {
    put(out, R::feedline_matched_loss_db, judge(plan, R::feedline_matched_loss_db, join.matched_db));
  } else {
    withhold(out, {R::feedline_matched_loss_db}, {join.cable_doubt, join.cable_culprit});
  }

  put_weight(plan, join, out);

  const bool load_known = join.cable && join.load_doubt == Doubt::none;
  const Doubtful no_load =
      join.cable ? Doubtful{join.load_doubt, join.load_culprit} : Doubtful{join.cable_doubt, join.cable_culprit};
  if (load_known) {
    put(out, R::feedline_total_loss_db,
        ranged(plan, R::feedline_total_loss_db, join.loss.typical_db, join.loss.least_db, join.loss.most_db));
    put(out, R::feedline_arrives_pct,
        ranged(plan, R::feedline_arrives_pct, 100 * share_through(join.loss.typical_db),
               100 * share_through(join.loss.most_db), 100 * share_through(join.loss.least_db)));
    put(out, R::feedline_swr_at_radio,
        ranged(plan, R::feedline_swr_at_radio, join.swr_at_radio, join.radio_range.least, join.radio_range.most));
    put(out, R::antenna_swr,
        ranged(plan, R::antenna_swr, join.swr_at_antenna, join.antenna_range.least, join.antenna_range.most));
  } else {
    withhold(out, {R::feedline_total_loss_db, R::feedline_arrives_pct, R::feedline_swr_at_radio, R::antenna_swr},
             no_load);
  }

  const Watts power = watts(plan, join);
  put_at_radio(plan, join, load_known, no_load, power, out);
  joined.leaves_w = power.leaves_w;
  joined.no_watts = power.why_not;
  joined.to_antenna_w = power.leaves_w * share_through(join.loss.least_db);
  if (std::isfinite(power.leaves_w)) {
    const double w = power.leaves_w;
    const auto arrives = [w](double loss_db) { return w * share_through(loss_db); };
    const double matched_w = w - arrives(join.matched_db);
    const auto because_of_swr = [&](double loss_db) { return w - arrives(loss_db) - matched_w; };
    put(out, R::radio_turned_down_w, judge(plan, R::radio_turned_down_w, plan[L::radio_transmit_power_w] - w));
    put(out, R::feedline_power_to_antenna_w,
        ranged(plan, R::feedline_power_to_antenna_w, arrives(join.loss.typical_db), arrives(join.loss.most_db),
               arrives(join.loss.least_db)));
    put(out, R::feedline_cable_matched_w, judge(plan, R::feedline_cable_matched_w, matched_w));
    put(out, R::feedline_cable_swr_w,
        ranged(plan, R::feedline_cable_swr_w, because_of_swr(join.loss.typical_db),
               because_of_swr(join.loss.least_db), because_of_swr(join.loss.most_db)));
  } else {
    withhold(out,
             {R::radio_turned_down_w, R::feedline_power_to_antenna_w, R::feedline_cable_matched_w,
              R::feedline_cable_swr_w},
             power.why_not);
  }

  if (join.cable_doubt == Doubt::outside_tested) {
    for (const R id : kRestOnLossLaw) {
      Figure& figure = out.at[std::size_t(id)];
      if (figure.state == State::unknown || as_given(id, join.load_from)) continue;
      figure.doubt = join.cable_doubt;
      figure.culprit = join.cable_culprit;
    }
  }
}

}  // namespace gs
