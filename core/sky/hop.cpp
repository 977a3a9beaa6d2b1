#include "core/sky/hop.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::sky {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kDegree = kPi / 180;
constexpr double kHalfRoundKm = kPi * kEarthRadiusKm;

bool is_length(double x) { return x > 0 && std::isfinite(x); }
bool is_take_off(double deg) { return deg >= 0 && deg <= 90; }

}  // namespace

double take_off_deg(double hop_km, double layer_km) {
  if (!is_length(hop_km) || !is_length(layer_km) || hop_km >= kHalfRoundKm) return kNaN;
  const double half = hop_km / 2 / kEarthRadiusKm;
  // tan of eq. (13) multiplied through by sin(half) (R + h), with 1 - cos written without loss of digits.
  const double sagitta = 2 * std::pow(std::sin(half / 2), 2);
  const double up = layer_km - (kEarthRadiusKm + layer_km) * sagitta;
  return std::atan2(up, (kEarthRadiusKm + layer_km) * std::sin(half)) / kDegree;
}

double hop_km(double take_off, double layer_km) {
  if (!is_take_off(take_off) || !is_length(layer_km)) return kNaN;
  const double elevation = take_off * kDegree, ratio = layer_km / kEarthRadiusKm;
  // Half angle at the earth's centre; tan of it from the ray's own length, which keeps short hops exact.
  const double s = std::sin(elevation), c = std::cos(elevation);
  const double ray = std::sqrt(s * s + ratio * (2 + ratio)) - s;  // to the layer, in earth radii
  return 2 * kEarthRadiusKm * std::atan2(std::max(0.0, ray * c), 1 + ray * s);
}

int hops_needed(double distance_km, double layer_km, double least_deg) {
  const double longest = hop_km(least_deg, layer_km);
  if (!is_length(distance_km) || distance_km > 2 * kHalfRoundKm || !(longest > 0)) return 0;
  constexpr double kMostHops = 1e6;
  const double hops = std::ceil(distance_km / longest * (1 - 1e-12));  // a whole number of longest hops is enough
  return hops <= kMostHops ? std::max(1, int(hops)) : 0;
}

double ray_km(double hop_km, double layer_km) {
  if (!is_length(hop_km) || !is_length(layer_km) || hop_km >= kHalfRoundKm) return kNaN;
  const double s = std::sin(hop_km / 4 / kEarthRadiusKm);
  return 2 * std::sqrt(layer_km * layer_km + 4 * kEarthRadiusKm * (kEarthRadiusKm + layer_km) * s * s);
}

double incidence_deg(double take_off, double layer_km) {
  if (!is_take_off(take_off) || !is_length(layer_km)) return kNaN;
  return std::asin(kEarthRadiusKm * std::cos(take_off * kDegree) / (kEarthRadiusKm + layer_km)) / kDegree;
}

double mirror_km_from_m3000(double m3000) {
  if (!(m3000 >= 1.5 && m3000 <= 6)) return kNaN;
  return std::min(1490 / m3000 - 176, 500.0);
}

double skip_km(double frequency_mhz, double critical_mhz, double layer_km) {
  if (!is_length(frequency_mhz) || !is_length(critical_mhz) || !is_length(layer_km)) return kNaN;
  if (frequency_mhz <= critical_mhz) return 0;
  // The steepest ray that still comes back meets the layer at sec i = f/fc.
  const double incidence = std::acos(critical_mhz / frequency_mhz);
  const double cos_take_off = (kEarthRadiusKm + layer_km) / kEarthRadiusKm * std::sin(incidence);
  if (cos_take_off > 1) return std::numeric_limits<double>::infinity();
  return hop_km(std::acos(cos_take_off) / kDegree, layer_km);
}

double wavelength_m(double frequency_mhz) {
  return is_length(frequency_mhz) ? kSpeedOfLightMPerS / (frequency_mhz * 1e6) : kNaN;
}

double lowest_lobe_deg(double frequency_mhz, double height_m) {
  if (!is_length(frequency_mhz) || !is_length(height_m)) return kNaN;
  return std::asin(std::min(1.0, wavelength_m(frequency_mhz) / 4 / height_m)) / kDegree;
}

}  // namespace gs::sky
