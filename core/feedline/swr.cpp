#include "core/feedline/swr.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::feedline {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kDbPerPowerNeper = kDbPerNeper / 2;  // 10 / ln 10

// 1 - |Gamma| of an SWR. Everything near total reflection is worked from this, for 1 - rho would lose its digits.
double shortfall(double swr) { return 2 / (swr + 1); }

// 1 - rho^2: the share of the power arriving at the load that the load takes.
double taken_share(double swr) { return std::isinf(swr) ? 0.0 : shortfall(swr) * 2 * (swr / (swr + 1)); }

// What matched loss leaves of |Gamma| on the way there and back, less 1 (<= 0).
double round_trip_less_1(double matched_db) { return std::expm1(-matched_db / kDbPerPowerNeper); }

bool is_swr(double swr) { return swr >= 1; }  // false for NaN

}  // namespace

double reflection(Complex z_ohm, double reference_ohm) {
  if (!std::isfinite(z_ohm.real()) || !std::isfinite(z_ohm.imag())) return 1.0;
  return std::abs(z_ohm - reference_ohm) / std::abs(z_ohm + reference_ohm);
}

double swr_from_reflection(double rho) {
  if (!(rho >= 0)) return kNone;
  return rho >= 1 ? kInfinity : (1 + rho) / (1 - rho);
}

double reflection_from_swr(double swr) {
  if (!is_swr(swr)) return kNone;
  return std::isinf(swr) ? 1.0 : (swr - 1) / (swr + 1);
}

double swr(Complex z_ohm, double reference_ohm) {
  const double r = z_ohm.real(), x = z_ohm.imag(), z0 = reference_ohm;
  const double sum = std::hypot(r + z0, x), difference = std::hypot(r - z0, x);
  if (!std::isfinite(sum) || !std::isfinite(difference)) return kInfinity;
  // (1 + rho) / (1 - rho) with sum^2 - difference^2 = 4 r z0 written out, which keeps a high SWR exact.
  return r > 0 ? std::max(1.0, (sum + difference) / z0 * ((sum + difference) / (4 * r))) : kInfinity;
}

double return_loss_db(double rho) { return -20 * std::log10(rho) + 0.0; }

double mismatch_loss_db(double rho) { return -kDbPerPowerNeper * std::log1p(-rho * rho) + 0.0; }

double swr_at_radio(double swr_at_load, double matched_db) {
  if (!is_swr(swr_at_load) || !(matched_db >= 0)) return kNone;
  const double lost = round_trip_less_1(matched_db);
  const double short_of_1 = -lost + (1 + lost) * shortfall(swr_at_load);
  return short_of_1 > 0 ? std::max(1.0, (2 - short_of_1) / short_of_1) : kInfinity;
}

double swr_at_load(double swr_at_radio, double matched_db) {
  if (!is_swr(swr_at_radio) || !(matched_db >= 0)) return kNone;
  const double lost = round_trip_less_1(matched_db), seen = shortfall(swr_at_radio);
  const double left = seen + lost;  // (1 - rho at the load) times the round trip
  if (left > 0) return std::max(1.0, (2 * (1 + lost) - left) / left);
  // An open end read back from swr_of_open_end may stand a rounding away from exactly total reflection.
  constexpr double kRounding = 4 * std::numeric_limits<double>::epsilon();
  return -left <= kRounding * seen ? kInfinity : kNone;
}

double swr_of_open_end(double matched_db) { return swr_at_radio(kInfinity, matched_db); }

double closed_form_loss_db(double matched_db, double swr_at_load) {
  if (!is_swr(swr_at_load) || !(matched_db >= 0)) return kNone;
  const double taken = taken_share(swr_at_load), rho = reflection_from_swr(swr_at_load);
  if (!(taken > 0)) return kInfinity;
  // (A^2 - rho^2) / (A (1 - rho^2)) less 1, divided through by A, with A = 10^(matched/10).
  const double power_neper = matched_db / kDbPerPowerNeper;
  const double back = 1 + rho * rho * std::exp(-power_neper);
  constexpr double kFarFromOverflow = 500;
  if (power_neper > kFarFromOverflow) return matched_db + 10 * std::log10(back / taken);
  return kDbPerPowerNeper * std::log1p(std::expm1(power_neper) * back / taken);
}

LossRange loss_range_db(const Line& line, double nominal_z0_ohm, double swr_at_load) {
  const double typical = closed_form_loss_db(std::max(0.0, matched_loss_db(line)), swr_at_load);
  const double taken = taken_share(swr_at_load), rho = reflection_from_swr(swr_at_load);
  if (!is_swr(swr_at_load) || !(taken > 0)) return {typical, typical, typical};

  // Voltage and current at the load for waves 1 and b = rho e^(j phi) of the nominal impedance, taken apart into
  // the line's own forward wave (u + v b) and backward wave (v + u b). Power is then a constant plus the real part
  // of b times a constant: a sine of the phase, whose extremes need no search.
  const Complex z0 = line.z0_ohm;
  const double root = std::sqrt(nominal_z0_ohm);
  const Complex u = 0.5 * (root + z0 / root), v = 0.5 * (root - z0 / root);
  const double uu = std::norm(u), vv = std::norm(v), rho2 = rho * rho;
  const Complex cross = v * std::conj(u);
  const double neper = line.gamma_per_m.real() * line.length_m;
  const double turn = line.gamma_per_m.imag() * line.length_m;

  constexpr double kEndlessNeper = 20;  // the backward wave at the input is below the last bit of a double
  if (neper > kEndlessNeper) {
    const auto loss_db = [&](double amplitude) {
      const double share = amplitude * amplitude * z0.real() / std::norm(z0) / taken;
      return 2 * neper * kDbPerPowerNeper + 10 * std::log10(share);
    };
    const double least = loss_db(std::abs(u) - rho * std::abs(v)), most = loss_db(std::abs(u) + rho * std::abs(v));
    return {least, std::clamp(typical, least, most), most};
  }

  const double forward = z0.real() * std::expm1(2 * neper), backward = -z0.real() * std::expm1(-2 * neper);
  const Complex stored = Complex{0, 2 * z0.imag()} * Complex{0, -2 * std::sin(turn)} * std::polar(1.0, -turn);
  const double steady = forward * (uu + rho2 * vv) + backward * (vv + rho2 * uu) +
                        (stored * (cross + rho2 * std::conj(cross))).real();
  const double swing =
      rho * std::abs(2 * forward * cross + 2 * backward * std::conj(cross) + stored * uu + std::conj(stored) * vv);
  const auto loss_db = [&](double lost_power) {
    return lost_power <= 0 ? 0.0 : kDbPerPowerNeper * std::log1p(lost_power / std::norm(z0) / taken);
  };
  const double least = loss_db(steady - swing), most = loss_db(steady + swing);
  return {least, std::clamp(typical, least, most), most};
}

double loss_from_open_end_db(double swr) {
  return is_swr(swr) ? kDbPerPowerNeper * std::log1p(2 / (swr - 1)) : kNone;
}

}  // namespace gs::feedline
