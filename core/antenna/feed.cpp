#include "core/antenna/feed.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/antenna/match.h"
#include "core/antenna/radials.h"
#include "core/units.h"

namespace gs::antenna {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kCopperOhmM = 1.7241e-8;  // annealed copper at 20 C, IEC 60028 (memory)
constexpr double kMu0 = 4e-7 * kPi;        // H/m
constexpr double kMostOrder = 99, kMostAngle = 1.45;
constexpr double kRaisedRadials = 4;  // what the raised kind's name says

bool above_0(double x) { return x > 0 && std::isfinite(x); }

/// The loads behind a transformer from what the line sees at resonance: X over R is `t` at the usual resistance and
/// the reactance stays when height or ground change R. An end-fed wire is a parallel circuit.
void put_loads(bool parallel, double t, double usual_ohm, FeedPoint& feed) {
  const std::complex<double> off(1, t);
  const double x_ohm = t * usual_ohm, b_s = t / usual_ohm;
  const auto load = [&](double r_ohm) {
    return parallel ? 1.0 / std::complex<double>(1 / r_ohm, b_s) : std::complex<double>(r_ohm, x_ohm);
  };
  feed.load_ohm = parallel ? usual_ohm / off : usual_ohm * off;
  feed.lowest_load_ohm = load(feed.lowest_ohm);
  feed.highest_load_ohm = load(feed.highest_ohm);
}

FeedPoint of_whip(double frequency_mhz, const Setup& setup) {
  const double rod = std::min(setup.whip_m, raised_radial_m(frequency_mhz));
  const double dip_mhz = std::isfinite(setup.dip_mhz) ? setup.dip_mhz : frequency_mhz;
  const auto with_ground = [&](double ground_ohm) {
    return whip_feed({rod, setup.whip_diameter_m, frequency_mhz, setup.coil_at, setup.coil_q, ground_ohm});
  };
  const WhipFeed whip = with_ground(setup.vehicle_ground_ohm);
  const double lowest = std::min(kVehicleGroundLowestOhm, setup.vehicle_ground_ohm);
  const double highest = std::max(kVehicleGroundHighestOhm, setup.vehicle_ground_ohm);
  FeedPoint feed{};
  feed.resistance_ohm = whip.feed_ohm;
  feed.lowest_ohm = with_ground(lowest).feed_ohm;
  feed.highest_ohm = with_ground(highest).feed_ohm;
  feed.swr = swr_of_resistance(feed.resistance_ohm);
  feed.efficiency = feed.least_efficiency = feed.most_efficiency = whip.efficiency;
  if (!setup.ground_measured) {
    feed.least_efficiency = with_ground(highest).efficiency;
    feed.most_efficiency = with_ground(lowest).efficiency;
  }
  feed.resonance_mhz = dip_mhz;
  const Whip tuned{rod, setup.whip_diameter_m, dip_mhz, setup.coil_at, setup.coil_q, setup.vehicle_ground_ohm};
  feed.q = dip_mhz * whip_slope_ohm_per_mhz(tuned) / (2 * whip.feed_ohm);
  put_loads(false, whip_reactance_ohm(tuned, frequency_mhz) / whip.feed_ohm, feed.resistance_ohm, feed);
  return feed;
}

}  // namespace

Rig rig_of(const Kind& kind, double frequency_mhz, const Setup& setup) {
  Rig rig{kind.shape, std::isfinite(setup.wire_m) ? setup.wire_m : cut_length_m(kind, frequency_mhz, setup.wire)};
  if (kind.non_resonant() && !std::isfinite(setup.wire_m))
    rig.wire_m = kAnyLengthWaves * wavelength_m(frequency_mhz);
  if (kind.over_radials()) rig.radial_m = setup.radial_waves * wavelength_m(frequency_mhz);
  if (kind.shape == Shape::ground_plane) rig.radial_m = rig.wire_m;
  if (kind.shape == Shape::whip) rig.wire_m = std::min(setup.whip_m, raised_radial_m(frequency_mhz));
  return rig;
}

double total_wire_m(const Kind& kind, double frequency_mhz, const Setup& setup) {
  if (kind.shape == Shape::whip) return 0;
  const Rig rig = rig_of(kind, frequency_mhz, setup);
  if (kind.over_radials()) return rig.wire_m + setup.radial_count * rig.radial_m;
  if (kind.shape == Shape::ground_plane) return rig.wire_m + kRaisedRadials * rig.radial_m;
  if (kind.shape == Shape::sloper) return rig.wire_m + kCounterpoiseWaves * wavelength_m(frequency_mhz);
  return rig.wire_m * kind.wires;
}

double first_resonance_mhz(const Kind& kind, double frequency_mhz, const Setup& setup) {
  if (std::isfinite(setup.dip_mhz)) return setup.dip_mhz;
  if (kind.non_resonant()) return kNone;
  if (std::isfinite(setup.wire_m) && !kind.is_whip()) return cut_frequency_mhz(kind, setup.wire_m, setup.wire);
  return above_0(frequency_mhz) ? frequency_mhz : kNone;
}

int nearest_order(const Kind& kind, double frequency_mhz, double first_mhz) {
  if (!above_0(frequency_mhz) || !above_0(first_mhz)) return 1;
  // f_n / f_1 = (n - 0.05) / 0.95 turned round; a loop has no end and its resonances are plain multiples
  const bool loop = kind.shape == Shape::loop;
  const double n = loop ? frequency_mhz / first_mhz : frequency_mhz / first_mhz * (1 - kEndEffect) + kEndEffect;
  if (kind.end_fed() || loop) return std::max(1, int(std::lround(std::min(n, kMostOrder))));
  return std::max(1, 2 * int(std::floor(std::min(n, kMostOrder) / 2)) + 1);
}

double detuning(const Kind& kind, double frequency_mhz, double first_mhz, double wire_m, double diameter_m,
                double resistance_ohm) {
  if (!above_0(frequency_mhz) || !above_0(first_mhz) || !above_0(wire_m) || !above_0(diameter_m) ||
      !above_0(resistance_ohm))
    return kNone;
  const int order = nearest_order(kind, frequency_mhz, first_mhz);
  const bool loop = kind.shape == Shape::loop;
  const double at_mhz = loop ? order * first_mhz : first_mhz * ((order - kEndEffect) / (1 - kEndEffect));
  const bool upright = kind.over_radials() || kind.shape == Shape::ground_plane;
  const double half_m = upright ? wire_m : loop ? wire_m / 4 : wire_m / 2;
  const double za_ohm = (upright ? 60 : loop ? 240 : 120) * std::max(0.1, std::log(2 * half_m / diameter_m) - 1);
  // A quarter wave away the tangent has run to infinity; the next resonance takes over before that.
  const double angle = std::clamp(order * kPi / 2 * (frequency_mhz / at_mhz - 1), -kMostAngle, kMostAngle);
  return za_ohm * std::tan(angle) / resistance_ohm;
}

double width_mhz(double frequency_mhz, double q, double swr) {
  if (!above_0(frequency_mhz) || !above_0(q) || !(swr > 1)) return kNone;
  return frequency_mhz * (swr - 1) / (q * std::sqrt(swr));
}

double copper_loss_ohm(double length_m, double diameter_m, double frequency_mhz) {
  if (!above_0(length_m) || !above_0(diameter_m) || !above_0(frequency_mhz)) return kNone;
  const double depth_m = std::sqrt(kCopperOhmM / (kPi * frequency_mhz * 1e6 * kMu0));
  // All current in a skin of that depth; wire thinner than two depths is filled.
  const double skin_m = std::min(depth_m, diameter_m / 2);
  return kCopperOhmM / (kPi * skin_m * (diameter_m - skin_m)) * length_m / 2;
}

FeedPoint feed_point(const Kind& kind, double frequency_mhz, const Setup& setup) {
  if (kind.is_whip()) return of_whip(frequency_mhz, setup);
  const Rig rig = rig_of(kind, frequency_mhz, setup);
  GroundLoss ground{kind.ground_ohm, kind.ground_ohm, kind.ground_ohm};
  if (kind.over_radials()) ground = radial_loss(setup.radial_count, setup.radial_waves);
  // Each of two wires carries half of what the feed point of one would: the loss, seen from there, is twice one
  // wire's.
  const double loss_ohm =
      ground.usual_ohm + kind.wires * copper_loss_ohm(rig.wire_m, setup.wire_diameter_m, frequency_mhz);
  const double transformer_db = std::isfinite(setup.transformer_db) ? setup.transformer_db : kind.transformer_db;
  FeedPoint feed{kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone, kNone};
  const auto efficiency = [&](double ground_ohm, double core_db) {
    const double lost_ohm = loss_ohm - ground.usual_ohm + ground_ohm;
    return kind.radiation_ohm / (kind.radiation_ohm + lost_ohm) * std::pow(10, -core_db / 10);
  };
  feed.efficiency = efficiency(ground.usual_ohm, transformer_db);
  const bool any_core = !setup.transformer_measured && (kind.end_fed() || kind.non_resonant());
  feed.least_efficiency = efficiency(ground.highest_ohm, any_core ? kPoorTransformerDb : transformer_db);
  feed.most_efficiency = efficiency(ground.lowest_ohm, any_core ? kGoodTransformerDb : transformer_db);
  if (kind.non_resonant()) return feed;
  const bool fed_at_maximum = kind.radiation_ohm == kind.feed_ohm;
  const double added = fed_at_maximum ? loss_ohm : 0;
  feed.resistance_ohm = (kind.feed_ohm + added) / kind.transformer_ratio;
  feed.lowest_ohm = kind.feed_lowest_ohm / kind.transformer_ratio;
  feed.highest_ohm = kind.feed_highest_ohm / kind.transformer_ratio;
  if (kind.over_radials()) {
    feed.lowest_ohm = kind.feed_ohm + ground.lowest_ohm;
    feed.highest_ohm = kind.feed_ohm + ground.highest_ohm;
  }
  feed.lowest_ohm = std::min(feed.lowest_ohm, feed.resistance_ohm);
  feed.highest_ohm = std::max(feed.highest_ohm, feed.resistance_ohm);
  feed.swr = std::max(swr_of_resistance(feed.resistance_ohm), kind.usual_swr);

  const double first_mhz = feed.resonance_mhz = first_resonance_mhz(kind, frequency_mhz, setup);
  const double at_maximum_ohm = (kind.radiation_ohm + loss_ohm) / (kind.wires * kind.wires);
  const auto off = [&](double f_mhz) {
    return detuning(kind, f_mhz, first_mhz, rig.wire_m, setup.wire_diameter_m, at_maximum_ohm);
  };
  constexpr double kStep = 1e-4;  // of the frequency: the slope at the dip
  feed.q = off(first_mhz * (1 + kStep)) / (2 * kStep);
  // On its own resonance the reactance is nil, not the rounding of a quotient.
  const double t = first_mhz == frequency_mhz ? 0 : off(frequency_mhz);
  // An end-fed wire shows at its transformer what such wires usually show, not what the transformer was wound for.
  const double usual_ohm = kind.end_fed() ? kReferenceOhm * feed.swr : feed.resistance_ohm;
  put_loads(kind.end_fed(), t, usual_ohm, feed);
  return feed;
}

}  // namespace gs::antenna
