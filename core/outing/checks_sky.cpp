// Small questions about distance, sun and hops.
#include "core/outing/checks_sky.h"

#include <algorithm>
#include <cmath>

#include "core/sky/geodesic.h"
#include "core/sky/hop.h"
#include "core/sky/sun.h"

namespace gs {
namespace sky_rows {
namespace {

constexpr Link kLink = Link::sky;
constexpr std::string_view kOwn = "docs/methods/sky";

constexpr CheckInput kLatitude = input("latitude_deg", "Latitude, degrees north", kLink, Unit::none, 4, -90, 90,
                                       0.1, "WGS-84; south is negative");
constexpr CheckInput kLongitude = input("longitude_deg", "Longitude, degrees east", kLink, Unit::none, 4, -180, 180,
                                        0.1, "WGS-84; west is negative");
constexpr CheckInput kLayer =
    input("layer_km", "Layer height", kLink, Unit::kilometre, 0, 60, 600, 10,
          "F layer 250 to 400 km by hour and season, E layer 110 km: common practice", usually<300>);

// ---- How far and which way? ----

const CheckInput kPathInputs[] = {kLatitude, kLongitude,
                                  input("to_latitude_deg", "Other latitude, degrees north", kLink, Unit::none, 4,
                                        -90, 90, 0.1, "WGS-84; south is negative"),
                                  input("to_longitude_deg", "Other longitude, degrees east", kLink, Unit::none, 4,
                                        -180, 180, 0.1, "WGS-84; west is negative")};
const CheckResult kPathResults[] = {result("distance_km", "Distance", kLink, Unit::kilometre, 0, Better::neither,
                                           "geodesic on WGS-84; docs/methods/sky"),
                                    result("bearing_deg", "Bearing from true north, degrees", kLink, Unit::none, 0,
                                           Better::neither, "geodesic on WGS-84; docs/methods/sky"),
                                    result("back_deg", "Bearing back, degrees", kLink, Unit::none, 0,
                                           Better::neither, "arrival bearing turned round"),
                                    result("long_km", "The long way round", kLink, Unit::kilometre, 0,
                                           Better::neither, "40 030 km less the short way, good to 0.4 %")};
std::string path(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kPathInputs, in); !trouble.empty()) return trouble;
  const sky::Place here{in[0], in[1]}, there{in[2], in[3]};
  const sky::Path way = sky::shortest_path(here, there);
  out[0] = way.distance_km;
  out[1] = way.bearing_deg;
  out[2] = way.arrival_bearing_deg < 180 ? way.arrival_bearing_deg + 180 : way.arrival_bearing_deg - 180;
  out[3] = sky::long_path(here, there).distance_km;
  return {};
}

// ---- When is it light? ----

const CheckInput kSunInputs[] = {
    kLatitude,
    kLongitude,
    input("year", "Year", kLink, Unit::none, 0, 1900, 2100, 1, "range of the solar position's series"),
    input("month", "Month", kLink, Unit::none, 0, 1, 12, 1, "Gregorian calendar"),
    input("day", "Day", kLink, Unit::none, 0, 1, 31, 1, "Gregorian calendar"),
    input("utc_offset_min", "UTC offset", kLink, Unit::minute, 0, -720, 840, 15,
          "local clock before UTC; UTC-4 is -4 h"),
    input("time_min", "Local time", kLink, Unit::clock_minute, 0, 0, 2880, 15, "usual value: noon by the clock",
          usually<720>)};
const CheckResult kSunResults[] = {result("sunrise_min", "Sunrise", kLink, Unit::clock_minute, 0, Better::neither,
                                          "centre 0.833 degrees down; docs/methods/sky"),
                                   result("sunset_min", "Sunset", kLink, Unit::clock_minute, 0, Better::neither,
                                          "centre 0.833 degrees down; docs/methods/sky"),
                                   result("layer_dawn_min", "First sun at 100 km", kLink, Unit::clock_minute, 0,
                                          Better::neither, "sun 10.1 degrees down; docs/methods/sky"),
                                   result("layer_dusk_min", "Last sun at 100 km", kLink, Unit::clock_minute, 0,
                                          Better::neither, "sun 10.1 degrees down; docs/methods/sky"),
                                   result("elevation_deg", "Sun above the horizon, degrees", kLink, Unit::none, 1,
                                          Better::neither, "Meeus, Astronomical Algorithms, ch. 25")};
std::string sun(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kSunInputs, in); !trouble.empty()) return trouble;
  const sky::Place place{in[0], in[1]};
  const sky::Date date{int(std::lround(in[2])), int(std::lround(in[3])), int(std::lround(in[4]))};
  if (!sky::is_date(date)) return "this month has no such day";
  out[4] = sky::sun_at(place, date, in[6] - in[5]).elevation_deg;
  const sky::Crossings ground = sky::sun_crossings(place, date, in[5]);
  const sky::Crossings layer = sky::sun_crossings(place, date, in[5], sky::kLayerElevationDeg);
  const std::optional<double> times[] = {ground.rise_min, ground.set_min, layer.rise_min, layer.set_min};
  bool all = true;
  for (std::size_t i = 0; i < 4; ++i) {
    if (times[i]) out[i] = *times[i];
    all = all && times[i].has_value();
  }
  if (!ground.rise_min && !ground.set_min)
    return ground.up_at_midnight ? "the sun stays up all day" : "the sun stays down all day";
  return all ? ""
             : "on this date it does not come to that: the nights are too light or the clock's day is too short";
}

// ---- What take-off angle does that distance need? ----

const CheckInput kHopInputs[] = {
    input("distance_km", "Distance", kLink, Unit::kilometre, 0, 1, 20000, 50, "from the plan or a map"), kLayer,
    input("hops", "Hops", kLink, Unit::none, 0, 1, 20, 1, "left out: the fewest that keep 3 degrees", nullptr,
          true)};
const CheckResult kHopResults[] = {
    result("hops_used", "Hops", kLink, Unit::none, 0, Better::less, kOwn),
    result("take_off_deg", "Take-off angle, degrees", kLink, Unit::none, 1, Better::more,
           "ITU-R P.533-14 eq. (13), second hand; 3 and less is not counted on", 0, 3),
    result("from_250_km_deg", "With the layer at 250 km, degrees", kLink, Unit::none, 1, Better::neither,
           "the same"),
    result("from_400_km_deg", "With the layer at 400 km, degrees", kLink, Unit::none, 1, Better::neither,
           "the same"),
    result("ray_km", "Length of the ray", kLink, Unit::kilometre, 0, Better::neither,
           "ITU-R P.533-14 eq. (19), second hand")};
std::string hop(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1)})
    if (!std::isfinite(in[i])) return needs(kHopInputs[i].row);
  const int fewest = sky::hops_needed(in[0], in[1], sky::kLeastTakeOffDeg);
  const int hops = std::isfinite(in[2]) ? std::max(1, int(std::lround(in[2]))) : fewest;
  if (hops == 0) return "no hop of this layer reaches there";
  const double each = in[0] / hops;
  out[0] = hops;
  out[1] = sky::take_off_deg(each, in[1]);
  out[2] = sky::take_off_deg(each, 250);
  out[3] = sky::take_off_deg(each, 400);
  out[4] = hops * sky::ray_km(each, in[1]);
  return out[1] < 0 ? "so long a hop lies behind the horizon" : "";
}

const CheckInput kReachInputs[] = {input("take_off_deg", "Take-off angle, degrees", kLink, Unit::none, 1, 0, 90, 1,
                                         "from the antenna's pattern or height"),
                                   kLayer};
const CheckResult kReachResults[] = {
    result("hop_km", "One hop reaches", kLink, Unit::kilometre, 0, Better::neither, kOwn),
    result("incidence_deg", "Meets the layer at, degrees from the vertical", kLink, Unit::none, 1, Better::neither,
           "law of sines"),
    result("times_critical", "Highest frequency, times the critical one", kLink, Unit::none, 2, Better::neither,
           "secant law, flat layer")};
std::string reach(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kReachInputs, in); !trouble.empty()) return trouble;
  out[0] = sky::hop_km(in[0], in[1]);
  out[1] = sky::incidence_deg(in[0], in[1]);
  out[2] = 1 / std::cos(out[1] * std::acos(-1.0) / 180);
  return {};
}

const Check kChecks[] = {
    {"sky.path", "How far and which way?", kLink, kPathInputs, kPathResults,
     "Take both places from a map in degrees; west and south are negative.", kOwn, path},
    {"sky.sun", "When is it light, here and up there?", kLink, kSunInputs, kSunResults,
     "Place, date and how far the local clock stands before UTC.", kOwn, sun},
    {"sky.hop", "What take-off angle does that distance need?", kLink, kHopInputs, kHopResults,
     "The distance from a map; the layer's height is only known to some tens of km, so look at all three angles.",
     kOwn, hop},
    {"sky.reach", "How far does this take-off angle reach?", kLink, kReachInputs, kReachResults,
     "The angle at which the antenna radiates most.", kOwn, reach},
};

}  // namespace

std::span<const Check> sky_part() { return kChecks; }

}  // namespace sky_rows

std::span<const Check> sky_checks() {
  static const std::vector<Check> all = [] {
    std::vector<Check> rows;
    for (const std::span<const Check> part : {sky_rows::sky_part(), sky_rows::wave_part(), sky_rows::pace_part(),
                                              sky_rows::clock_part(), sky_rows::kit_part()})
      rows.insert(rows.end(), part.begin(), part.end());
    return rows;
  }();
  return all;
}

}  // namespace gs
