#include "core/outing/feedline_join.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/feedline/roll.h"
#include "core/outing/antenna_setup.h"

namespace gs {
namespace {

using feedline::Complex;
using feedline::RollLoss;

// No antenna shows more: what lies above is an open or shorted end by another name, and bounds nothing.
constexpr double kHighestAntennaSwr = 1000;

constexpr double kAtRadio = 0, kAtAntenna = 1;  // order of the lever's options

/// What was measured on the roll, if anything was.
struct Own {
  feedline::MeasuredLoss one, other;
};
Own own_losses(const Plan& plan) {
  Own own;
  if (plan.has_all(L::feedline_own_loss_db, L::feedline_own_at_mhz))
    own.one = {plan[L::feedline_own_at_mhz], plan[L::feedline_own_loss_db]};
  if (own.one.known() && plan.has_all(L::feedline_own_second_db, L::feedline_own_second_at_mhz))
    own.other = {plan[L::feedline_own_second_at_mhz], plan[L::feedline_own_second_db]};
  return own;
}

RollLoss first_roll(const Plan& plan, const feedline::Cable& cable, double frequency_mhz) {
  const Own own = own_losses(plan);
  const double share = plan.has(L::feedline_roll_loss_pct) ? plan[L::feedline_roll_loss_pct] / 100 : 1;
  const RollLoss loss = own.other.known() ? measured_loss(cable, own.one, own.other, frequency_mhz)
                        : own.one.known() ? measured_loss(cable, own.one, frequency_mhz)
                                          : catalogue_loss(cable, share, frequency_mhz);
  return at_temperature(loss, plan[L::feedline_temperature_c]);
}

feedline::Line line_of(const feedline::Cable& cable, RollLoss loss, double frequency_mhz, double length_m) {
  return feedline::line_from_nominal(cable.z0_ohm, cable.velocity_factor, loss.conductor_db_per_100m,
                                     loss.dielectric_db_per_100m, frequency_mhz, length_m);
}

const feedline::Cable* second_cable(const Plan& plan) {
  const bool there = plan.has(L::feedline_second_cable) && plan[L::feedline_second_length_m] > 0;
  return there ? &feedline::cables()[std::size_t(plan[L::feedline_second_cable])] : nullptr;
}

double attenuation_of_second(const Plan& plan, const feedline::Cable& cable, double frequency_mhz) {
  return at_temperature(catalogue_loss(cable, 1, frequency_mhz), plan[L::feedline_temperature_c])
      .total_db_per_100m();
}

/// Outside the range that the figures were tested in, and the lever that says so.
void tested_range(const Plan& plan, double f_mhz, FeedlineJoin& join) {
  const Own own = own_losses(plan);
  const auto outside = [&](double lowest_mhz, double highest_mhz, L culprit) {
    if (join.cable_doubt != Doubt::none || (f_mhz >= lowest_mhz && f_mhz <= highest_mhz)) return;
    join.cable_doubt = Doubt::outside_tested;
    join.cable_culprit = culprit;
  };
  if (own.other.known())
    outside(std::min(own.one.frequency_mhz, own.other.frequency_mhz),
            std::max(own.one.frequency_mhz, own.other.frequency_mhz), L::feedline_own_second_at_mhz);
  else if (!own.one.known() || own.one.frequency_mhz != f_mhz)
    outside(join.cable->lowest_mhz, join.cable->highest_mhz, L::feedline_cable);
  if (join.second) outside(join.second->lowest_mhz, join.second->highest_mhz, L::feedline_second_cable);
}

void join_cable(const Plan& plan, FeedlineJoin& join) {
  for (const L needed : {L::feedline_cable, L::feedline_length_m, L::antenna_frequency_mhz}) {
    if (plan.has(needed)) continue;
    join.cable_doubt = Doubt::missing;
    join.cable_culprit = needed;
    return;
  }
  join.cable = &feedline::cables()[std::size_t(plan[L::feedline_cable])];
  join.second = second_cable(plan);
  const double f_mhz = plan[L::antenna_frequency_mhz], length_m = plan[L::feedline_length_m];
  const RollLoss loss = first_roll(plan, *join.cable, f_mhz);
  join.attenuation_db_per_100m = loss.total_db_per_100m();
  join.matched_db = join.attenuation_db_per_100m * length_m / 100;
  join.meter_impedance = join.cable->z0_ohm == kMeterOhm && (!join.second || join.second->z0_ohm == kMeterOhm);

  if (const double plugs_db = plan[L::feedline_plug_pairs] * kPlugPairDb; plugs_db > 0) {
    join.run.add(feedline::pad(plugs_db, kMeterOhm));
    join.matched_db += plugs_db;
  }
  join.run.add(line_of(*join.cable, loss, f_mhz, length_m));
  if (join.second) {
    const RollLoss second = at_temperature(catalogue_loss(*join.second, 1, f_mhz), plan[L::feedline_temperature_c]);
    join.run.add(line_of(*join.second, second, f_mhz, plan[L::feedline_second_length_m]));
    join.matched_db += second.total_db_per_100m() * plan[L::feedline_second_length_m] / 100;
  }
  if (const double choke_db = plan[L::feedline_choke_db]; choke_db > 0) {
    join.run.add(feedline::pad(choke_db, join.second ? join.second->z0_ohm : join.cable->z0_ohm));
    join.matched_db += choke_db;
  }
  tested_range(plan, f_mhz, join);
}

bool cable_known(const FeedlineJoin& join) { return join.cable != nullptr; }

void take_impedance(Complex load_ohm, FeedlineJoin& join) {
  join.load_ohm = load_ohm;
  join.swr_at_antenna = feedline::swr(load_ohm, kMeterOhm);
  join.swr_at_radio = feedline::swr(feedline::input_impedance_ohm(join.run, load_ohm), kMeterOhm);
  join.antenna_range = {join.swr_at_antenna, join.swr_at_antenna, join.swr_at_antenna};
  join.radio_range = {join.swr_at_radio, join.swr_at_radio, join.swr_at_radio};
  const double loss_db = feedline::total_loss_db(join.run, load_ohm);
  join.loss = {loss_db, loss_db, loss_db};
}

/// The load of the antenna's kind as it hangs, when the catalogue knows one.
bool kind_load(const Plan& plan, antenna::FeedPoint& feed) {
  if (!plan.has_all(L::antenna_kind, L::antenna_frequency_mhz)) return false;
  feed = antenna::feed_point(*antenna_kind(plan), plan[L::antenna_frequency_mhz], antenna_setup(plan));
  return std::isfinite(feed.load_ohm.real()) && std::isfinite(feed.load_ohm.imag());
}

/// What height and ground may make of the antenna's resistance, as SWR at both ends.
void widen(const antenna::FeedPoint& feed, FeedlineJoin& join) {
  const auto hold = [](feedline::SwrRange& range, double swr) {
    range.least = std::min(range.least, swr);
    range.most = std::max(range.most, swr);
  };
  for (const Complex load_ohm : {feed.lowest_load_ohm, feed.highest_load_ohm}) {
    hold(join.antenna_range, feedline::swr(load_ohm, kMeterOhm));
    hold(join.radio_range, feedline::swr(feedline::input_impedance_ohm(join.run, load_ohm), kMeterOhm));
  }
}

/// The textbook's closed form where every cable is of the meter's impedance, held within what the phases allow.
double typical_loss_db(const FeedlineJoin& join, const feedline::LossRange& range) {
  if (!join.meter_impedance) return std::clamp(range.typical_db, range.least_db, range.most_db);
  return std::clamp(feedline::closed_form_loss_db(join.matched_db, join.swr_at_antenna), range.least_db,
                    range.most_db);
}

void take_swr(double measured, bool at_antenna, FeedlineJoin& join) {
  using feedline::SwrRange;
  const auto holding = [&join](SwrRange range, double typical) {
    if (!join.meter_impedance) return range;
    return SwrRange{std::min(range.least, typical), typical, std::max(range.most, typical)};
  };
  if (at_antenna) {
    join.load_from = LoadFrom::swr_at_antenna;
    join.antenna_range = {measured, measured, measured};
    join.radio_range = holding(swr_range_at_radio(join.run, kMeterOhm, measured),
                               feedline::swr_at_radio(measured, join.matched_db));
  } else {
    join.load_from = LoadFrom::swr_at_radio;
    join.radio_range = {measured, measured, measured};
    join.antenna_range = swr_range_at_load(join.run, kMeterOhm, measured);
    const double textbook = feedline::swr_at_load(measured, join.matched_db);
    // what no load shows behind a line of its own impedance is no reading, whatever the loss angle allows
    if (join.meter_impedance && !std::isfinite(textbook))
      join.antenna_range.typical = textbook;
    else
      join.antenna_range = holding(join.antenna_range, textbook);
  }
  join.swr_at_antenna = join.antenna_range.typical;
  join.swr_at_radio = join.radio_range.typical;
  if (!std::isfinite(join.swr_at_antenna)) {
    join.load_doubt = Doubt::contradiction;
    join.load_culprit = L::feedline_measured_swr;
    return;
  }
  join.loss = at_antenna ? loss_range_db(join.run, kMeterOhm, measured)
                         : loss_range_from_radio_db(join.run, kMeterOhm, measured);
  if (std::isnan(join.loss.least_db))  // only by rounding: the textbook's circle touches the edge
    join.loss = loss_range_db(join.run, kMeterOhm, join.swr_at_antenna);
  join.antenna_range.least = std::min(join.swr_at_antenna, join.antenna_range.least);
  join.antenna_range.most = std::max(join.swr_at_antenna, std::min(join.antenna_range.most, kHighestAntennaSwr));
  if (!std::isfinite(join.loss.most_db))
    join.loss.most_db = loss_range_db(join.run, kMeterOhm, join.antenna_range.most).most_db;
  join.loss.most_db = std::max(join.loss.least_db, join.loss.most_db);
  join.loss.typical_db = typical_loss_db(join, join.loss);
}

void join_load(const Plan& plan, FeedlineJoin& join) {
  antenna::FeedPoint feed;
  if (plan.has(L::antenna_feed_r_ohm)) {
    join.load_from = LoadFrom::impedance;
    take_impedance(Complex(plan[L::antenna_feed_r_ohm], plan[L::antenna_feed_x_ohm]), join);
  } else if (plan.has(L::feedline_measured_swr)) {
    take_swr(plan[L::feedline_measured_swr], plan[L::feedline_measured_at] == kAtAntenna, join);
  } else if (kind_load(plan, feed)) {
    join.load_from = LoadFrom::antenna_kind;
    take_impedance(feed.load_ohm, join);
    widen(feed, join);
  } else {
    join.load_doubt = Doubt::missing;
    join.load_culprit = L::feedline_measured_swr;
  }
}

}  // namespace

FeedlineJoin join_feedline(const Plan& plan) {
  FeedlineJoin join;
  join_cable(plan, join);
  if (cable_known(join)) join_load(plan, join);
  return join;
}

double attenuation_at_db_per_100m(const Plan& plan, double frequency_mhz) {
  if (!plan.has(L::feedline_cable)) return std::numeric_limits<double>::quiet_NaN();
  return first_roll(plan, feedline::cables()[std::size_t(plan[L::feedline_cable])], frequency_mhz)
      .total_db_per_100m();
}

feedline::LossRange loss_range_at_db(const Plan& plan, double frequency_mhz) {
  constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
  Plan there = plan;
  there.x[std::size_t(L::antenna_frequency_mhz)] = frequency_mhz;
  const FeedlineJoin join = join_feedline(there);
  if (!join.cable || join.load_doubt != Doubt::none || !join.swr_alone()) return {kNaN, kNaN, kNaN};
  return join.loss;
}

double matched_loss_at_db(const Plan& plan, double frequency_mhz) {
  if (!plan.has_all(L::feedline_cable, L::feedline_length_m)) return std::numeric_limits<double>::quiet_NaN();
  double loss_db = attenuation_at_db_per_100m(plan, frequency_mhz) * plan[L::feedline_length_m] / 100;
  if (const feedline::Cable* second = second_cable(plan))
    loss_db += attenuation_of_second(plan, *second, frequency_mhz) * plan[L::feedline_second_length_m] / 100;
  return loss_db + plan[L::feedline_plug_pairs] * kPlugPairDb + plan[L::feedline_choke_db];
}

bool modelled_load(const Plan& plan, feedline::Complex& load_ohm) {
  if (!plan.has(L::antenna_feed_r_ohm)) {
    antenna::FeedPoint feed;
    const bool known = kind_load(plan, feed);
    if (known) load_ohm = feed.load_ohm;
    return known;
  }
  load_ohm = Complex(plan[L::antenna_feed_r_ohm], plan[L::antenna_feed_x_ohm]);
  return true;
}

bool MeasuredBeside::agree() const { return std::abs(measured - modelled) <= 0.2 * std::max(measured, modelled); }

MeasuredBeside measured_beside(const Plan& plan, const FeedlineJoin& join) {
  MeasuredBeside beside;
  Complex load_ohm;
  if (!cable_known(join) || !plan.has(L::feedline_measured_swr) || !modelled_load(plan, load_ohm)) return beside;
  beside.known = true;
  beside.at_radio = plan[L::feedline_measured_at] == kAtRadio;
  beside.measured = plan[L::feedline_measured_swr];
  beside.modelled =
      feedline::swr(beside.at_radio ? feedline::input_impedance_ohm(join.run, load_ohm) : load_ohm, kMeterOhm);
  return beside;
}

std::vector<Clash> feedline_clashes(const Plan& plan, const Style& style) {
  const FeedlineJoin join = join_feedline(plan);
  if (!cable_known(join) || !plan.has(L::feedline_measured_swr)) return {};
  const double measured = plan[L::feedline_measured_swr];
  const auto say = [&](double swr) { return print_quantity(swr, Unit::none, 1, style).number; };
  if (join.load_doubt == Doubt::contradiction) {
    const double open =
        feedline::swr_range_at_radio(join.run, kMeterOhm, std::numeric_limits<double>::infinity()).most;
    return {{L::feedline_measured_swr, L::feedline_cable,
             "SWR " + say(measured) + " cannot show at the radio: through this line even an open end shows " +
                 say(join.meter_impedance ? feedline::swr_of_open_end(join.matched_db) : open) +
                 ". Doubt the meter, the cable's loss or the length."}};
  }
  if (join.load_from != LoadFrom::impedance) return {};
  const MeasuredBeside beside = measured_beside(plan, join);
  if (beside.agree()) return {};
  return {{L::feedline_measured_swr, L::antenna_feed_r_ohm,
           "Measured SWR " + say(measured) + " does not agree with the feed-point impedance, which gives " +
               say(beside.modelled) + " there. The plan uses the impedance: doubt one of the two."}};
}

}  // namespace gs
