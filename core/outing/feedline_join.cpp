#include "core/outing/feedline_join.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/outing/antenna_setup.h"

namespace gs {
namespace {

using feedline::Complex;

constexpr double kAtRadio = 0, kAtAntenna = 1;  // order of the lever's options

/// The cable's line at a frequency. Dielectric loss is the term that grows with f; all else is in the conductors.
feedline::Line line_of(const feedline::Cable& cable, double roll_share, double frequency_mhz, double length_m) {
  const double dielectric = cable.k2_db_per_100m * frequency_mhz;
  const double total = feedline::attenuation_db_per_100m(cable, frequency_mhz) * roll_share;
  return feedline::line_from_nominal(cable.z0_ohm, cable.velocity_factor, std::max(0.0, total - dielectric),
                                     std::min(total, dielectric), frequency_mhz, length_m);
}

void join_cable(const Plan& plan, FeedlineJoin& join) {
  for (const L needed : {L::feedline_cable, L::feedline_length_m, L::antenna_frequency_mhz}) {
    if (plan.has(needed)) continue;
    join.cable_doubt = Doubt::missing;
    join.cable_culprit = needed;
    return;
  }
  join.cable = &feedline::cables()[std::size_t(plan[L::feedline_cable])];
  const double f_mhz = plan[L::antenna_frequency_mhz], roll_share = plan[L::feedline_roll_loss_pct] / 100;
  join.attenuation_db_per_100m = feedline::attenuation_db_per_100m(*join.cable, f_mhz) * roll_share;
  join.line = line_of(*join.cable, roll_share, f_mhz, plan[L::feedline_length_m]);
  join.matched_db = join.attenuation_db_per_100m * plan[L::feedline_length_m] / 100;
  if (f_mhz < join.cable->lowest_mhz || f_mhz > join.cable->highest_mhz) {
    join.cable_doubt = Doubt::outside_tested;
    join.cable_culprit = L::feedline_cable;
  }
}

bool cable_known(const FeedlineJoin& join) { return join.cable != nullptr; }

void take_impedance(Complex load_ohm, FeedlineJoin& join) {
  const double z0_ohm = join.cable->z0_ohm;
  join.load_ohm = load_ohm;
  join.swr_at_antenna = feedline::swr(load_ohm, z0_ohm);
  join.swr_at_radio = feedline::swr(feedline::input_impedance_ohm(join.line, load_ohm), z0_ohm);
  const double loss_db = feedline::total_loss_db(join.line, load_ohm);
  join.loss = {loss_db, loss_db, loss_db};
}

/// What height and ground may make of the antenna's resistance, as SWR at both ends.
SwrRange widest(const antenna::FeedPoint& feed, const FeedlineJoin& join) {
  SwrRange range;
  for (const Complex load_ohm : {feed.lowest_load_ohm, feed.highest_load_ohm}) {
    const double at_antenna = feedline::swr(load_ohm, join.cable->z0_ohm);
    const double at_radio = feedline::swr(feedline::input_impedance_ohm(join.line, load_ohm), join.cable->z0_ohm);
    range.at_antenna_most = std::max(range.at_antenna_most, at_antenna);
    range.at_radio_most = std::max(range.at_radio_most, at_radio);
    range.at_antenna_least = std::min(range.at_antenna_least, at_antenna);
    range.at_radio_least = std::min(range.at_radio_least, at_radio);
  }
  return range;
}

void join_load(const Plan& plan, FeedlineJoin& join) {
  const double z0_ohm = join.cable->z0_ohm;
  if (plan.has(L::antenna_feed_r_ohm)) {
    join.load_from = LoadFrom::impedance;
    take_impedance(Complex(plan[L::antenna_feed_r_ohm], plan[L::antenna_feed_x_ohm]), join);
    return;
  }
  if (!plan.has(L::feedline_measured_swr)) {
    if (plan.has(L::antenna_kind)) {
      const antenna::FeedPoint feed =
          antenna::feed_point(*antenna_kind(plan), plan[L::antenna_frequency_mhz], antenna_setup(plan));
      if (std::isfinite(feed.load_ohm.real()) && std::isfinite(feed.load_ohm.imag())) {
        join.load_from = LoadFrom::antenna_kind;
        take_impedance(feed.load_ohm, join);
        join.swr_range = widest(feed, join);
        return;
      }
    }
    join.load_doubt = Doubt::missing;
    join.load_culprit = L::feedline_measured_swr;
    return;
  }
  const double measured = plan[L::feedline_measured_swr];
  if (plan[L::feedline_measured_at] == kAtAntenna) {
    join.load_from = LoadFrom::swr_at_antenna;
    join.swr_at_antenna = measured;
    join.swr_at_radio = feedline::swr_at_radio(measured, join.matched_db);
  } else {
    join.load_from = LoadFrom::swr_at_radio;
    join.swr_at_radio = measured;
    join.swr_at_antenna = feedline::swr_at_load(measured, join.matched_db);
  }
  if (!std::isfinite(join.swr_at_antenna)) {
    join.load_doubt = Doubt::contradiction;
    join.load_culprit = L::feedline_measured_swr;
    return;
  }
  join.loss = feedline::loss_range_db(join.line, z0_ohm, join.swr_at_antenna);
}

}  // namespace

FeedlineJoin join_feedline(const Plan& plan) {
  FeedlineJoin join;
  join_cable(plan, join);
  if (cable_known(join)) join_load(plan, join);
  return join;
}

double matched_loss_at_db(const Plan& plan, double frequency_mhz) {
  if (!plan.has_all(L::feedline_cable, L::feedline_length_m)) return std::numeric_limits<double>::quiet_NaN();
  const feedline::Cable& cable = feedline::cables()[std::size_t(plan[L::feedline_cable])];
  return feedline::attenuation_db_per_100m(cable, frequency_mhz) * plan[L::feedline_roll_loss_pct] / 100 *
         plan[L::feedline_length_m] / 100;
}

std::vector<Clash> feedline_clashes(const Plan& plan, const Style& style) {
  const FeedlineJoin join = join_feedline(plan);
  if (!cable_known(join) || !plan.has(L::feedline_measured_swr)) return {};
  const double measured = plan[L::feedline_measured_swr];
  const auto say = [&](double swr) { return print_quantity(swr, Unit::none, 1, style).number; };
  if (join.load_doubt == Doubt::contradiction) {
    return {{L::feedline_measured_swr, L::feedline_cable,
             "SWR " + say(measured) + " cannot show at the radio: through this line even an open end shows " +
                 say(feedline::swr_of_open_end(join.matched_db)) +
                 ". Doubt the meter, the cable's loss or the length."}};
  }
  if (join.load_from != LoadFrom::impedance) return {};
  const bool by_radio = plan[L::feedline_measured_at] == kAtRadio;
  const double modelled = by_radio ? join.swr_at_radio : join.swr_at_antenna;
  // Portable meters and analysers agree to about a fifth: common practice, from memory.
  if (std::abs(measured - modelled) <= 0.2 * std::max(measured, modelled)) return {};
  return {{L::feedline_measured_swr, L::antenna_feed_r_ohm,
           "Measured SWR " + say(measured) + " does not agree with the feed-point impedance, which gives " +
               say(modelled) + " there. The plan uses the impedance: doubt one of the two."}};
}

}  // namespace gs
