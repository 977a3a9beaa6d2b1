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
constexpr double kRaisedRadials = 4;       // what the raised kind's name says

bool above_0(double x) { return x > 0 && std::isfinite(x); }

FeedPoint of_whip(double frequency_mhz, const Setup& setup) {
  const double rod = std::min(setup.whip_m, raised_radial_m(frequency_mhz));
  const auto with_ground = [&](double ground_ohm) {
    return whip_feed({rod, setup.whip_diameter_m, frequency_mhz, setup.coil_at, setup.coil_q, ground_ohm});
  };
  const WhipFeed feed = with_ground(setup.vehicle_ground_ohm);
  const double lowest = std::min(kVehicleGroundLowestOhm, setup.vehicle_ground_ohm);
  const double highest = std::max(kVehicleGroundHighestOhm, setup.vehicle_ground_ohm);
  return {feed.feed_ohm, with_ground(lowest).feed_ohm, with_ground(highest).feed_ohm,
          swr_of_resistance(feed.feed_ohm), feed.efficiency};
}

}  // namespace

Rig rig_of(const Kind& kind, double frequency_mhz, const Setup& setup) {
  Rig rig{kind.shape, cut_length_m(kind, frequency_mhz, setup.wire)};
  if (kind.shape == Shape::vertical) rig.radial_m = setup.radial_waves * wavelength_m(frequency_mhz);
  if (kind.shape == Shape::ground_plane) rig.radial_m = rig.wire_m;
  if (kind.shape == Shape::whip) rig.wire_m = std::min(setup.whip_m, raised_radial_m(frequency_mhz));
  return rig;
}

double total_wire_m(const Kind& kind, double frequency_mhz, const Setup& setup) {
  if (kind.shape == Shape::whip) return 0;
  const Rig rig = rig_of(kind, frequency_mhz, setup);
  if (kind.shape == Shape::vertical) return rig.wire_m + setup.radial_count * rig.radial_m;
  if (kind.shape == Shape::ground_plane) return rig.wire_m + kRaisedRadials * rig.radial_m;
  if (kind.shape == Shape::sloper) return rig.wire_m + kCounterpoiseWaves * wavelength_m(frequency_mhz);
  return rig.wire_m;
}

double copper_loss_ohm(double length_m, double diameter_m, double frequency_mhz) {
  if (!above_0(length_m) || !above_0(diameter_m) || !above_0(frequency_mhz)) return kNone;
  const double depth_m = std::sqrt(kCopperOhmM / (kPi * frequency_mhz * 1e6 * kMu0));
  // All current in a skin of that depth; wire thinner than two depths is filled.
  const double skin_m = std::min(depth_m, diameter_m / 2);
  return kCopperOhmM / (kPi * skin_m * (diameter_m - skin_m)) * length_m / 2;
}

FeedPoint feed_point(const Kind& kind, double frequency_mhz, const Setup& setup) {
  if (kind.shape == Shape::whip) return of_whip(frequency_mhz, setup);
  const Rig rig = rig_of(kind, frequency_mhz, setup);
  GroundLoss ground{kind.ground_ohm, kind.ground_ohm, kind.ground_ohm};
  if (kind.shape == Shape::vertical) ground = radial_loss(setup.radial_count, setup.radial_waves);
  const double loss_ohm = ground.usual_ohm + copper_loss_ohm(rig.wire_m, setup.wire_diameter_m, frequency_mhz);
  const bool fed_at_maximum = kind.radiation_ohm == kind.feed_ohm;
  const double added = fed_at_maximum ? loss_ohm : 0;
  FeedPoint feed{};
  feed.resistance_ohm = (kind.feed_ohm + added) / kind.transformer_ratio;
  feed.lowest_ohm = kind.feed_lowest_ohm / kind.transformer_ratio;
  feed.highest_ohm = kind.feed_highest_ohm / kind.transformer_ratio;
  if (kind.shape == Shape::vertical) {
    feed.lowest_ohm = kind.feed_ohm + ground.lowest_ohm;
    feed.highest_ohm = kind.feed_ohm + ground.highest_ohm;
  }
  feed.lowest_ohm = std::min(feed.lowest_ohm, feed.resistance_ohm);
  feed.highest_ohm = std::max(feed.highest_ohm, feed.resistance_ohm);
  feed.swr = std::max(swr_of_resistance(feed.resistance_ohm), kind.usual_swr);
  feed.efficiency = kind.radiation_ohm / (kind.radiation_ohm + loss_ohm) * std::pow(10, -kind.transformer_db / 10);
  return feed;
}

}  // namespace gs::antenna
