#include "core/antenna/whip.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/antenna/length.h"
#include "core/units.h"

namespace gs::antenna {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kQuarterWaveFtMhz = 234;  // as the equation of the source has it

bool above_0(double x) { return x > 0 && std::isfinite(x); }

bool is_short_whip(double height_m, double frequency_mhz, double coil_at) {
  return above_0(height_m) && above_0(frequency_mhz) && coil_at >= 0 && coil_at < 1 &&
         height_m <= wavelength_m(frequency_mhz) / 4;
}

/// The equation of loading_coil_uh, below 0 where the rod is longer than a quarter wave; NaN where a logarithm has
/// none.
double tuning_coil_uh(double height_m, double diameter_m, double frequency_mhz, double coil_at) {
  const double f = frequency_mhz, quarter_ft = kQuarterWaveFtMhz / f;
  const double height_ft = height_m / kMetresPerFoot, below_ft = coil_at * height_ft;
  const double diameter_in = diameter_m / kMetresPerInch;
  if (below_ft >= quarter_ft) return kNone;
  const double ln_wave = std::log(24 * (quarter_ft - below_ft) / diameter_in) - 1;
  const double ln_top = std::log(24 * (height_ft - below_ft) / diameter_in) - 1;
  if (!(ln_top > 0)) return kNone;
  const auto less_1 = [quarter_ft](double x_ft) { return x_ft * x_ft / quarter_ft / quarter_ft - 1; };
  const double first = ln_wave * less_1(quarter_ft - below_ft) / (quarter_ft - below_ft);
  const double second = ln_top * less_1(height_ft - below_ft) / (height_ft - below_ft);
  return 1e6 / (68 * kPi * kPi * f * f) * (first - second);
}

}  // namespace

double short_monopole_ohm(double height_m, double frequency_mhz) {
  if (!is_short_whip(height_m, frequency_mhz, 0)) return kNone;
  const double waves = height_m / wavelength_m(frequency_mhz);
  return 40 * kPi * kPi * waves * waves;
}

double whip_radiation_ohm(double height_m, double frequency_mhz, double coil_at) {
  if (!is_short_whip(height_m, frequency_mhz, coil_at)) return kNone;
  const double k = 2 * kPi / wavelength_m(frequency_mhz);
  const double below = k * height_m * coil_at, above = k * height_m - below;
  const double area_radians = std::sin(below) + std::cos(below) * std::tan(above / 2);
  return 40 * area_radians * area_radians;  // 160 pi^2 (A / lambda)^2 with A = area / k
}

double loading_coil_uh(double height_m, double diameter_m, double frequency_mhz, double coil_at) {
  if (!is_short_whip(height_m, frequency_mhz, coil_at) || !above_0(diameter_m)) return kNone;
  if (height_m / kMetresPerFoot >= kQuarterWaveFtMhz / frequency_mhz) return 0;
  const double uh = tuning_coil_uh(height_m, diameter_m, frequency_mhz, coil_at);
  return uh < 0 ? 0 : uh;
}

WhipFeed whip_feed(const Whip& whip) {
  WhipFeed feed{};
  feed.radiation_ohm = whip_radiation_ohm(whip.height_m, whip.frequency_mhz, whip.coil_at);
  feed.coil_uh = loading_coil_uh(whip.height_m, whip.diameter_m, whip.frequency_mhz, whip.coil_at);
  if (!above_0(whip.coil_q) || !(whip.ground_ohm >= 0) || !std::isfinite(feed.radiation_ohm + feed.coil_uh))
    return {kNone, kNone, kNone, kNone, kNone};
  // The coil carries less current than the foot; its loss seen from there falls with the square.
  const double at_coil = std::cos(2 * kPi / wavelength_m(whip.frequency_mhz) * whip.height_m * whip.coil_at);
  feed.coil_ohm = 2 * kPi * whip.frequency_mhz * feed.coil_uh / whip.coil_q * at_coil * at_coil;
  feed.feed_ohm = feed.radiation_ohm + feed.coil_ohm + whip.ground_ohm;
  feed.efficiency = feed.radiation_ohm / feed.feed_ohm;
  return feed;
}

double whip_reactance_ohm(const Whip& tuned, double frequency_mhz) {
  const double has_uh = tuning_coil_uh(tuned.height_m, tuned.diameter_m, tuned.frequency_mhz, tuned.coil_at);
  const double wants_uh = tuning_coil_uh(tuned.height_m, tuned.diameter_m, frequency_mhz, tuned.coil_at);
  const double at_coil = std::cos(2 * kPi / wavelength_m(frequency_mhz) * tuned.height_m * tuned.coil_at);
  return 2 * kPi * frequency_mhz * (has_uh - wants_uh) * at_coil * at_coil;
}

double whip_slope_ohm_per_mhz(const Whip& tuned) {
  constexpr double kStep = 1e-4;  // of the frequency
  const double step_mhz = kStep * tuned.frequency_mhz;
  return (whip_reactance_ohm(tuned, tuned.frequency_mhz) -
          whip_reactance_ohm(tuned, tuned.frequency_mhz - step_mhz)) /
         step_mhz;
}

double whip_khz_per_cm(const Whip& tuned) {
  constexpr double kStepM = 1e-4;
  // One more tenth of a millimetre above the coil: it sits at a lower share of the height.
  const double height_m = tuned.height_m + kStepM, coil_at = tuned.coil_at * tuned.height_m / height_m;
  const double has_uh = tuning_coil_uh(tuned.height_m, tuned.diameter_m, tuned.frequency_mhz, tuned.coil_at);
  const double wants_uh = tuning_coil_uh(height_m, tuned.diameter_m, tuned.frequency_mhz, coil_at);
  const double at_coil = std::cos(2 * kPi / wavelength_m(tuned.frequency_mhz) * tuned.height_m * tuned.coil_at);
  const double x_ohm = 2 * kPi * tuned.frequency_mhz * (has_uh - wants_uh) * at_coil * at_coil;
  return -x_ohm / whip_slope_ohm_per_mhz(tuned) * 1000 / (100 * kStepM);
}

double against_full_size_db(double efficiency) {
  if (!(efficiency > 0 && efficiency <= 1)) return kNone;
  return 10 * std::log10(efficiency) + kShortAgainstQuarterDb;
}

double whip_zenith_dbi(double frequency_mhz) {
  return frequency_mhz >= 4 && frequency_mhz <= 8 ? -70 + 55 * std::log10(frequency_mhz) : kNone;
}

double coil_uh(double turns, double diameter_m, double length_m) {
  if (!above_0(turns) || !above_0(diameter_m) || !above_0(length_m)) return kNone;
  const double radius_in = diameter_m / 2 / kMetresPerInch, length_in = length_m / kMetresPerInch;
  return radius_in * radius_in * turns * turns / (9 * radius_in + 10 * length_in);
}

}  // namespace gs::antenna
