#include "core/feedline/roll.h"

#include <algorithm>
#include <cmath>

#include "core/units.h"

namespace gs::feedline {
namespace {

constexpr double kCopperPerC = 0.00393;           // IEC 60028, at 20 C (from memory)
constexpr double kCopperSiemensPerM = 58e6;       // IEC 60028: 1/58 ohm mm2/m at 20 C
constexpr double kMagneticConstant = 4e-7 * kPi;  // H/m, good to 1e-9
constexpr double kWholeTemperatureC = 20;

}  // namespace

RollLoss catalogue_loss(const Cable& cable, double share, double frequency_mhz) {
  const double dielectric = cable.k2_db_per_100m * frequency_mhz;
  const double total = attenuation_db_per_100m(cable, frequency_mhz) * share;
  return {std::max(0.0, total - dielectric), std::min(total, dielectric)};
}

RollLoss measured_loss(const Cable& cable, MeasuredLoss one, double frequency_mhz) {
  const double stretch = one.db_per_100m / attenuation_db_per_100m(cable, one.frequency_mhz);
  const RollLoss by_catalogue = catalogue_loss(cable, 1, frequency_mhz);
  return {stretch * by_catalogue.conductor_db_per_100m, stretch * by_catalogue.dielectric_db_per_100m};
}

RollLoss measured_loss(const Cable& cable, MeasuredLoss one, MeasuredLoss other, double frequency_mhz) {
  const double f = one.frequency_mhz, g = other.frequency_mhz;
  if (f == g) return measured_loss(cable, {f, (one.db_per_100m + other.db_per_100m) / 2}, frequency_mhz);
  const double below = std::sqrt(f) * g - std::sqrt(g) * f;
  double k1 = (one.db_per_100m * g - other.db_per_100m * f) / below;
  double k2 = (other.db_per_100m * std::sqrt(f) - one.db_per_100m * std::sqrt(g)) / below;
  if (k1 < 0 || k2 < 0) {
    const bool root = k2 < 0;
    const auto term = [root](double x) { return root ? std::sqrt(x) : x; };
    const double u = term(f) / one.db_per_100m, v = term(g) / other.db_per_100m;
    const double only = (u + v) / (u * u + v * v);
    k1 = root ? only : 0;
    k2 = root ? 0 : only;
  }
  return {k1 * std::sqrt(frequency_mhz), k2 * frequency_mhz};
}

RollLoss at_temperature(RollLoss loss, double temperature_c) {
  loss.conductor_db_per_100m *= std::sqrt(std::max(0.0, 1 + kCopperPerC * (temperature_c - kWholeTemperatureC)));
  return loss;
}

double copper_floor_db_per_100m(double z0_ohm, double inner_mm, double outer_mm, double frequency_mhz) {
  const double skin_ohm = std::sqrt(kPi * frequency_mhz * 1e6 * kMagneticConstant / kCopperSiemensPerM);
  const double r_ohm_per_m = skin_ohm / kPi * (1 / inner_mm + 1 / outer_mm) * 1000;
  return 100 * kDbPerNeper * r_ohm_per_m / (2 * z0_ohm);
}

}  // namespace gs::feedline
