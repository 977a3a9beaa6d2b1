#include "core/rules/region.h"

#include <cmath>
#include <iterator>
#include <span>

namespace gs::rules {
namespace {

struct Corner {
  double latitude_deg, longitude_deg;
};

// From north to south. ITU Radio Regulations 5.6 to 5.9, from memory; longitudes east, line C counted on past 180.
// The lines' great circles have corners of their own between, worked out on a sphere.
constexpr Corner kLineA[] = {{90, 40}, {40, 40}, {34.9, 47.5}, {29.3, 54.1}, {23.5, 60}, {-90, 60}};
constexpr Corner kLineB[] = {{90, -10}, {72, -10},   {67.2, -22.3}, {61.7, -30.4}, {56, -35.9},
                             {50, -40}, {30.3, -31}, {10.2, -25.1}, {-10, -20},    {-90, -20}};
constexpr Corner kLineC[] = {{90, 191},   {65.5, 191},   {62.2, 182.1}, {58.4, 175.1}, {54.3, 169.6}, {50, 165},
                             {37.2, 176}, {23.8, 183.8}, {10, 190},     {10, 240},     {-90, 240}};
constexpr double kNorthernAsiaDeg = 50;

double longitude_at(std::span<const Corner> line, double latitude_deg) {
  for (std::size_t i = 1; i < line.size(); ++i) {
    const Corner &north = line[i - 1], &south = line[i];
    if (latitude_deg < south.latitude_deg || north.latitude_deg == south.latitude_deg) continue;
    const double along = (north.latitude_deg - latitude_deg) / (north.latitude_deg - south.latitude_deg);
    return std::lerp(north.longitude_deg, south.longitude_deg, along);
  }
  return line.back().longitude_deg;
}

}  // namespace

Region region_of(double latitude_deg, double longitude_deg) {
  if (!(std::abs(latitude_deg) <= 90) || !std::isfinite(longitude_deg)) return Region::two;
  double east = std::fmod(longitude_deg + 180, 360);
  if (east < 0) east += 360;
  east -= 180;
  const double from_b = longitude_at(kLineB, latitude_deg), to_c = longitude_at(kLineC, latitude_deg) - 360;
  if (east >= to_c && east < from_b) return Region::two;
  const bool before_a = east >= from_b && east < longitude_at(kLineA, latitude_deg);
  return before_a || latitude_deg >= kNorthernAsiaDeg ? Region::one : Region::three;
}

}  // namespace gs::rules
