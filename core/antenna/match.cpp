#include "core/antenna/match.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::antenna {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

bool above_0(double x) { return x > 0 && std::isfinite(x); }

double height_of(double swr) { return swr + 1 / swr; }

}  // namespace

double swr_of_resistance(double resistance_ohm, double reference_ohm) {
  if (!above_0(resistance_ohm) || !above_0(reference_ohm)) return kNone;
  return std::max(resistance_ohm, reference_ohm) / std::min(resistance_ohm, reference_ohm);
}

double reflected_share(double swr) {
  if (!(swr >= 1)) return kNone;
  const double rho = 1 - 2 / (swr + 1);
  return rho * rho;
}

TransformerRatio transformer_ratio(double resistance_ohm, double reference_ohm) {
  const double ratio = swr_of_resistance(resistance_ohm, reference_ohm);
  return {ratio, std::sqrt(ratio)};
}

double voltage_rms_v(double power_w, double resistance_ohm) {
  return power_w >= 0 && resistance_ohm >= 0 ? std::sqrt(power_w * resistance_ohm) : kNone;
}

double quarter_wave_line_ohm(double one_ohm, double other_ohm) {
  return above_0(one_ohm) && above_0(other_ohm) ? std::sqrt(one_ohm) * std::sqrt(other_ohm) : kNone;
}

double transformer_loss_db(double through_db, double ratio) {
  return std::isfinite(through_db) && ratio >= 1 && std::isfinite(ratio) ? through_db - 10 * std::log10(ratio)
                                                                         : kNone;
}

double series_resistor_ohm(double ratio) {
  return ratio >= 1 && std::isfinite(ratio) ? (ratio - 1) * kReferenceOhm : kNone;
}

double core_share(double core_s, double loaded_s) {
  return above_0(core_s) && above_0(loaded_s) ? std::min(1.0, core_s / loaded_s) : kNone;
}

SwrBand swr_band(std::span<const SwrReading> readings, double edge_swr) {
  constexpr SwrBand kNothing{kNone, kNone, kNone, kNone, kNone, kNone};
  const double count = double(readings.size());
  if (readings.size() < 3 || !(edge_swr >= 1)) return kNothing;
  double middle = 0, reach = 0;
  for (const SwrReading& reading : readings) {
    if (!above_0(reading.frequency_mhz) || !(reading.swr >= 1) || !std::isfinite(reading.swr)) return kNothing;
    middle += reading.frequency_mhz / count;
  }
  for (const SwrReading& reading : readings) reach = std::max(reach, std::abs(reading.frequency_mhz - middle));
  if (!(reach > 0)) return kNothing;

  // Polynomials 1, x, x^2 - turn x - level that are orthogonal over the readings, x within -1 to 1.
  const auto x_of = [&](const SwrReading& reading) { return (reading.frequency_mhz - middle) / reach; };
  double x2 = 0, x3 = 0;
  for (const SwrReading& reading : readings) {
    x2 += x_of(reading) * x_of(reading);
    x3 += x_of(reading) * x_of(reading) * x_of(reading);
  }
  const double turn = x3 / x2, level = x2 / count;
  double mean = 0, slope = 0, bend = 0, bend_norm = 0;
  for (const SwrReading& reading : readings) {
    const double x = x_of(reading), square = x * x - turn * x - level, u = height_of(reading.swr);
    mean += u / count;
    slope += u * x / x2;
    bend += u * square;
    bend_norm += square * square;
  }
  constexpr double kTwoFrequenciesOnly = 1e-12;
  if (bend_norm < kTwoFrequenciesOnly) return kNothing;
  bend /= bend_norm;
  if (!(bend > 0)) return kNothing;

  const double tilt = slope - bend * turn;
  const double lowest_x = -tilt / (2 * bend), lowest = mean - bend * level - tilt * tilt / (4 * bend);
  SwrBand band{middle + reach * lowest_x, kNone, kNone, kNone, 0, kNone};
  band.q = band.resonant_mhz * std::sqrt(bend) / (2 * reach);
  const double half = std::max(lowest, 2.0) / 2;  // readings rounded to a tenth may put the vertex below SWR 1
  band.lowest_swr = half + std::sqrt(half * half - 1);
  const double over = height_of(edge_swr) - lowest;
  if (over >= 0) {
    const double side = reach * std::sqrt(over / bend);
    band.low_mhz = band.resonant_mhz - side;
    band.high_mhz = band.resonant_mhz + side;
    band.width_mhz = 2 * side;
  }
  return band;
}

}  // namespace gs::antenna
