#include "core/sky/geodesic.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "core/units.h"

namespace gs::sky {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kDegree = kPi / 180;

// WGS-84: NGA.STND.0036 (equatorial radius and flattening are its defining constants).
constexpr double kEquatorKm = 6378.137, kFlattening = 1 / 298.257223563;
constexpr double kPolarKm = kEquatorKm * (1 - kFlattening);
constexpr double kSecondEccentricity2 = kFlattening * (2 - kFlattening) / ((1 - kFlattening) * (1 - kFlattening));
constexpr double kMeanSphereKm = 6371.0088;  // IUGG mean radius of the same ellipsoid
constexpr double kTiny = 1e-150;             // stands in for cos(90 degrees) and for a latitude of 0: keeps signs

// Gauss-Legendre nodes and weights for 16 points: Abramowitz and Stegun, table 25.4; worked out to 18 digits apart.
constexpr double kNodes[][2] = {
    {0.095012509837637440, 0.189450610455068496}, {0.281603550779258913, 0.182603415044923588},
    {0.458016777657227386, 0.169156519395002538}, {0.617876244402643748, 0.149595988816576732},
    {0.755404408355003033, 0.124628971255533872}, {0.865631202387831743, 0.095158511682492784},
    {0.944575023073232576, 0.062253523938647892}, {0.989400934991649932, 0.027152459411754094}};

/// Integral of f over [from, from + length]; length up to pi, where 16 points leave only rounding.
template <class F>
double integral(F f, double from, double length) {
  const double middle = from + length / 2, half = length / 2;
  double sum = 0;
  for (const auto& [node, weight] : kNodes) sum += weight * (f(middle - half * node) + f(middle + half * node));
  return sum * half;
}

/// sqrt(1 + k^2 sin^2 sigma): arc of the ellipsoid per arc of the auxiliary sphere, in polar radii.
double stretch(double sigma, double k2) {
  const double s = std::sin(sigma);
  return std::sqrt(1 + k2 * s * s);
}
double length_km(double sigma1, double sigma12, double k2) {
  return kPolarKm * integral([k2](double sigma) { return stretch(sigma, k2); }, sigma1, sigma12);
}
/// What the ellipsoid's longitude falls short of the sphere's.
double longitude_lag(double sigma1, double sigma12, double k2, double sin_a0) {
  const auto f = [k2](double sigma) { return (2 - kFlattening) / (1 + (1 - kFlattening) * stretch(sigma, k2)); };
  return kFlattening * sin_a0 * integral(f, sigma1, sigma12);
}

/// Sine and cosine of the latitude on the auxiliary sphere; the cosine never 0.
struct Reduced {
  double sin, cos;
};
Reduced reduced(double latitude_deg) {
  const double s = (1 - kFlattening) * std::sin(latitude_deg * kDegree);
  const double c = std::abs(latitude_deg) == 90 ? 0.0 : std::cos(latitude_deg * kDegree);
  const double norm = std::hypot(s, c);
  return {s / norm, std::max(c / norm, kTiny)};
}

/// Angle from vector a to b, 0 to pi; either may have any length.
double angle_between(double sin_a, double cos_a, double sin_b, double cos_b) {
  return std::atan2(std::max(0.0, cos_a * sin_b - sin_a * cos_b), cos_a * cos_b + sin_a * sin_b);
}

/// One geodesic that starts at bearing alpha1 and meets the second latitude going north.
struct Arc {
  double sin1, cos1, sin2, cos2;  // bearings at both ends
  double sigma1, sigma12, k2, longitude;
};
Arc arc(Reduced one, Reduced two, double sin1, double cos1) {
  const double sin_a0 = sin1 * one.cos, cos_a0 = std::hypot(cos1, sin1 * one.sin);
  // cos^2 b2 - cos^2 b1 as a product that keeps its digits both near the equator and near the poles.
  const double gain =
      one.cos < -one.sin ? (two.cos - one.cos) * (one.cos + two.cos) : (one.sin - two.sin) * (one.sin + two.sin);
  const double climb = std::sqrt(cos1 * cos1 * one.cos * one.cos + std::max(0.0, gain));
  Arc a{sin1, cos1, sin_a0 / two.cos, climb / two.cos, 0, 0, kSecondEccentricity2 * cos_a0 * cos_a0, 0};
  a.sigma1 = std::atan2(one.sin, cos1 * one.cos);
  a.sigma12 = angle_between(one.sin, cos1 * one.cos, two.sin, climb);
  const double omega12 = angle_between(sin_a0 * one.sin, cos1 * one.cos, sin_a0 * two.sin, climb);
  a.longitude = omega12 - longitude_lag(a.sigma1, a.sigma12, a.k2, sin_a0);
  return a;
}

double bearing_deg(double sin_a, double cos_a) {
  const double deg = std::atan2(sin_a, cos_a) / kDegree;
  return deg < 0 ? std::min(deg + 360, std::nextafter(360.0, 0.0)) : deg + 0.0;
}

double wrapped(double longitude_deg) { return std::remainder(longitude_deg, 360.0); }

}  // namespace

Path shortest_path(Place from, Place to) {
  if (!is_place(from) || !is_place(to)) return {kNaN, kNaN, kNaN};
  // Every pair is turned into one whose first latitude is the larger in size and south, and whose way leads east.
  const double turn_deg = wrapped(to.longitude_deg - from.longitude_deg), away = std::abs(turn_deg) * kDegree;
  double east = turn_deg < 0 ? -1 : 1, lat1 = from.latitude_deg, lat2 = to.latitude_deg;
  const bool swapped = std::abs(lat1) < std::abs(lat2);
  if (swapped) std::swap(lat1, lat2), east = -east;
  const double south = lat1 < 0 ? 1 : -1;
  Reduced one = reduced(lat1 * south);
  const Reduced two = reduced(lat2 * south);
  one.sin = std::min(one.sin, -kTiny);

  Arc a{};
  double km = 0;
  if (turn_deg == 0 || std::abs(turn_deg) == 180 || std::abs(lat1) == 90) {
    // Along a meridian, over the pole where they face each other: the polar way round is the shorter one.
    const double sin1 = std::abs(turn_deg) == 180 ? 0 : std::sin(away), cos1 = std::cos(away);
    a = {sin1, cos1, 0, 1, std::atan2(one.sin, cos1 * one.cos), 0, kSecondEccentricity2, 0};
    a.sigma12 = angle_between(one.sin, cos1 * one.cos, two.sin, two.cos);
    constexpr double kSamePlace = 1e-100;
    if (a.sigma12 < kSamePlace) return {0, 0, 0};
    km = length_km(a.sigma1, a.sigma12, a.k2);
  } else if (lat1 == 0 && away <= kPi * (1 - kFlattening)) {
    a = {1, 0, 1, 0, 0, 0, 0, 0};  // along the equator, but for the last degree before the antipode
    km = kEquatorKm * away;
  } else {
    // Longitude gained grows with the starting bearing from 0 (due north) to pi (due south): one root.
    // Regula falsi with the Illinois halving gets there in some ten steps; where it is slow, as next to the
    // antipode, bisection finishes what it left.
    constexpr int kQuickSteps = 16, kAllSteps = kQuickSteps + 64;
    constexpr double kEnough = 1e-15;  // radians between two steps: the next one would be rounding
    double low = 0, high = kPi, low_off = -away, high_off = kPi - away, last = -1;
    for (int i = 0, side = 0; i < kAllSteps && high - low > kEnough; ++i) {
      const bool quick = i < kQuickSteps;
      const double at = quick ? (low * high_off - high * low_off) / (high_off - low_off) : (low + high) / 2;
      a = arc(one, two, std::sin(at), std::cos(at));
      const double off = a.longitude - away;
      if (off == 0 || std::abs(at - last) < kEnough) break;
      last = at;
      if (off < 0) {
        if (side == -1) high_off /= 2;
        low = at, low_off = off, side = -1;
      } else {
        if (side == 1) low_off /= 2;
        high = at, high_off = off, side = 1;
      }
    }
    km = length_km(a.sigma1, a.sigma12, a.k2);
  }

  if (swapped) std::swap(a.sin1, a.sin2), std::swap(a.cos1, a.cos2);
  const double across = swapped ? -east : east, along = swapped ? -south : south;
  return {km, bearing_deg(a.sin1 * across, a.cos1 * along), bearing_deg(a.sin2 * across, a.cos2 * along)};
}

Path long_path(Place from, Place to) {
  const Path shorter = shortest_path(from, to);
  const auto turned = [](double bearing) { return bearing < 180 ? bearing + 180 : bearing - 180; };
  return {2 * kPi * kMeanSphereKm - shorter.distance_km, turned(shorter.bearing_deg),
          turned(shorter.arrival_bearing_deg)};
}

Place destination(Place from, double start_bearing_deg, double distance_km) {
  constexpr double kMostKm = 20015;
  if (!is_place(from) || !std::isfinite(start_bearing_deg) || !(distance_km >= 0 && distance_km <= kMostKm))
    return {kNaN, kNaN};
  const double bearing = std::remainder(start_bearing_deg, 360.0) * kDegree;
  const Reduced one = reduced(from.latitude_deg);
  const double sin1 = std::sin(bearing), cos1 = std::cos(bearing);
  const double sin_a0 = sin1 * one.cos, cos_a0 = std::hypot(cos1, sin1 * one.sin),
               k2 = kSecondEccentricity2 * cos_a0 * cos_a0;
  const double sigma1 = std::atan2(one.sin, cos1 * one.cos);
  double sigma12 = distance_km / kPolarKm;
  for (int i = 0; i < 8; ++i) {  // quadratic from within 0.4 %: the fourth step is rounding
    const double left_km = distance_km - length_km(sigma1, sigma12, k2);
    sigma12 += left_km / (kPolarKm * stretch(sigma1 + sigma12, k2));
  }
  const double sigma2 = sigma1 + sigma12, s = std::sin(sigma2), c = std::cos(sigma2);
  const double sin_b2 = cos_a0 * s, cos_b2 = std::hypot(sin_a0, cos_a0 * c);
  const double omega1 = std::atan2(sin_a0 * std::sin(sigma1), std::cos(sigma1)), omega2 = std::atan2(sin_a0 * s, c);
  const double gained = omega2 - omega1 - longitude_lag(sigma1, sigma12, k2, sin_a0);
  return {std::atan2(sin_b2, (1 - kFlattening) * cos_b2) / kDegree, wrapped(from.longitude_deg + gained / kDegree)};
}

}  // namespace gs::sky
