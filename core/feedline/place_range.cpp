#include "core/feedline/place_range.h"

#include <algorithm>
#include <cmath>

#include "core/units.h"

namespace gs::feedline {
namespace {

constexpr int kPhases = 96;

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
  for (int k = 0; k < kPhases; ++k) {
    const Complex gamma = std::polar(rho, 2 * kPi * k / kPhases);
    const Complex z_ohm = reference_ohm * (1.0 + gamma) / (1.0 - gamma);
    const Complex load_ohm = read_at == ReadAt::radio ? load_behind(run, z_ohm) : z_ohm;
    const std::vector<Place> way = places(run, load_ohm, power_w, reference_ohm, per_piece);
    if (ranges.empty())
      for (const Place& place : way)
        ranges.push_back({place.from_radio_m, place.swr, place.swr, place.volt_rms, place.volt_rms});
    for (std::size_t i = 0; i < way.size(); ++i) {
      PlaceRange& range = ranges[i];
      range.swr_least = std::min(range.swr_least, way[i].swr);
      range.swr_most = std::max(range.swr_most, way[i].swr);
      range.volt_least = std::min(range.volt_least, way[i].volt_rms);
      range.volt_most = std::max(range.volt_most, way[i].volt_rms);
    }
  }
  return ranges;
}

}  // namespace gs::feedline
