// The shortest way between two places on WGS-84.
#pragma once

#include "core/sky/place.h"

namespace gs::sky {

/// Bearings in degrees from true north through east, [0, 360). `arrival_bearing_deg` is the heading on arrival:
/// turn it by 180 for the bearing back.
struct Path {
  double distance_km = 0, bearing_deg = 0, arrival_bearing_deg = 0;
};

/// Shortest path between any two places, antipodes included; all NaN where either is no place. The same place: 0
/// km, bearing 0. Where several ways are equally short (exact antipodes) one of them. Accuracy: 1e-6 m against
/// published geodesics; bearings 1e-9 degree except over a few metres. Method: Bessel's auxiliary sphere, both
/// integrals by Gauss-Legendre quadrature, the starting bearing between brackets, which also holds near the
/// antipode. Source: Karney, Algorithms for geodesics, J. Geodesy 87 (2013) 43-55, secs. 2, 4.
Path shortest_path(Place from, Place to);

/// The other way round: 40 030 km less the short way (circumference of a sphere of 6371.0088 km), bearings turned
/// by 180. Good to 0.4 % of the short way's length; NaN where shortest_path is.
Path long_path(Place from, Place to);

/// Where one arrives after distance_km (0 to 20 000) on this bearing. NaN for no place, or a distance outside 0..20
/// 015. Source: the same integrals, distance solved for by Newton's method.
Place destination(Place from, double bearing_deg, double distance_km);

}  // namespace gs::sky
