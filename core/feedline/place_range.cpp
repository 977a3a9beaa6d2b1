#include "core/feedline/place_range.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::feedline {
namespace {

constexpr int kPhases = 96;

/// A quantity over the phases, those of impossible loads not a number.
using OverPhases = std::array<double, kPhases>;

/// The least of a smooth periodic quantity: the vertex of the parabola through the least sample and its neighbours,
/// or that sample where a neighbour is impossible.
double least_of(const OverPhases& values) {
  std::size_t at = 0;
  for (std::size_t k = 1; k < kPhases; ++k)
    if (std::isnan(values[at]) || values[k] < values[at]) at = k;
  const double before = values[(at + kPhases - 1) % kPhases], after = values[(at + 1) % kPhases];
  const double bend = before - 2 * values[at] + after, slope = after - before;
  return bend > 0 ? values[at] - slope * slope / (8 * bend) : values[at];
}

double most_of(OverPhases values) {
  for (double& value : values) value = -value;
  return -least_of(values);
}

double swr_of_rho2(double rho2) {
  const double rho = std::sqrt(std::max(0.0, rho2));
  return (1 + rho) / (1 - std::min(rho, 1.0));
}

/// The load behind the run that makes its radio end show `z_ohm`.
Complex load_behind(const Run& run, Complex z_ohm) {
  VoltAmpere at{z_ohm, 1};
  for (int i = 0; i < run.count; ++i) {
    const Line& piece = run.pieces[std::size_t(i)];
    at = along(piece, at, -piece.length_m);
  }
  return at.volt / at.ampere;
}

}  // namespace

std::vector<PlaceRange> place_ranges(const Run& run, double reference_ohm, double swr, ReadAt read_at,
                                     double power_w, int per_piece) {
  std::vector<PlaceRange> ranges;
  if (!(swr >= 1) || !std::isfinite(swr)) return ranges;
  const double rho = reflection_from_swr(swr);
  // |Gamma|^2 and V^2 are smooth in the phase; SWR and V have corners where |Gamma| touches zero
  OverPhases impossible;
  impossible.fill(std::numeric_limits<double>::quiet_NaN());
  std::vector<OverPhases> rho2, volt2;
  for (std::size_t k = 0; k < kPhases; ++k) {
    const Complex gamma = std::polar(rho, 2 * kPi * double(k) / kPhases);
    const Complex z_ohm = reference_ohm * (1.0 + gamma) / (1.0 - gamma);
    const Complex load_ohm = read_at == ReadAt::radio ? load_behind(run, z_ohm) : z_ohm;
    const std::vector<Place> way = places(run, load_ohm, power_w, reference_ohm, per_piece);
    if (ranges.empty()) {
      for (const Place& place : way) ranges.push_back({place.from_radio_m, 0, 0, 0, 0});
      rho2.resize(way.size(), impossible);
      volt2.resize(way.size(), impossible);
    }
    for (std::size_t i = 0; i < way.size(); ++i) {
      const double reflection = reflection_from_swr(way[i].swr);
      rho2[i][k] = reflection * reflection;
      volt2[i][k] = way[i].volt_rms * way[i].volt_rms;
    }
  }
  for (std::size_t i = 0; i < ranges.size(); ++i)
    ranges[i] = {ranges[i].from_radio_m, swr_of_rho2(least_of(rho2[i])), swr_of_rho2(most_of(rho2[i])),
                 std::sqrt(std::max(0.0, least_of(volt2[i]))), std::sqrt(most_of(volt2[i]))};
  return ranges;
}

}  // namespace gs::feedline
