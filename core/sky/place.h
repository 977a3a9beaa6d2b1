// A place on the globe.
#pragma once

namespace gs::sky {

/// Degrees on WGS-84: latitude -90..90 (north positive), longitude -180..180 (east positive).
struct Place {
  double latitude_deg = 0, longitude_deg = 0;
};

/// Both finite, latitude within -90..90, longitude within -360..360 (which people type; functions wrap it).
constexpr bool is_place(Place p) {
  return p.latitude_deg >= -90 && p.latitude_deg <= 90 && p.longitude_deg >= -360 && p.longitude_deg <= 360;
}

}  // namespace gs::sky
