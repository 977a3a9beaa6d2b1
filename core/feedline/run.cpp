#include "core/feedline/run.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/units.h"

namespace gs::feedline {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kDbPerPowerNeper = kDbPerNeper / 2;

/// Voltage and current that rest on a wave of 1 and one of Gamma: x = x0 + x1 Gamma.
struct OfGamma {
  Complex v0, v1, i0, i1;
};

/// Waves 1 and Gamma of the reference impedance: power (1 - |Gamma|^2).
OfGamma waves(double reference_ohm) {
  const double root = std::sqrt(reference_ohm);
  return {root, root, 1 / root, -1 / root};
}

OfGamma moved(const Line& line, const OfGamma& at, double towards_source) {
  const Complex theta = line.gamma_per_m * line.length_m;
  const Complex c = std::cosh(theta), s = std::sinh(theta) * towards_source;
  const Complex z0 = line.z0_ohm;
  return {c * at.v0 + z0 * s * at.i0, c * at.v1 + z0 * s * at.i1, c * at.i0 + s / z0 * at.v0,
          c * at.i1 + s / z0 * at.v1};
}

/// A power that is a constant plus a sine of Gamma's phase.
struct PowerOfPhase {
  double constant = 0, per_rho2 = 0;
  Complex swing{};
  double mean(double rho) const { return constant + per_rho2 * rho * rho; }
  double half_swing(double rho) const { return std::abs(swing) * rho; }
};

/// Power lost on the line while `at` stands at its far end. In waves of the line's own Z0 nothing cancels: the form
/// of total_loss_db in line.cpp.
void add_lost(const Line& line, const OfGamma& at, PowerOfPhase& lost) {
  const Complex z0 = line.z0_ohm;
  const Complex a0 = 0.5 * (at.v0 + z0 * at.i0), a1 = 0.5 * (at.v1 + z0 * at.i1);
  const Complex b0 = 0.5 * (at.v0 - z0 * at.i0), b1 = 0.5 * (at.v1 - z0 * at.i1);
  const double neper = line.gamma_per_m.real() * line.length_m;
  const double turn = line.gamma_per_m.imag() * line.length_m;
  const double forward = z0.real() * std::expm1(2 * neper), backward = -z0.real() * std::expm1(-2 * neper);
  const Complex turned = Complex{0, -2 * std::sin(turn)} * std::polar(1.0, -turn);  // exp(-2 j turn) - 1
  const double stored = -2 * z0.imag();
  const double scale = 1 / std::norm(z0);
  lost.constant +=
      scale * (forward * std::norm(a0) + backward * std::norm(b0) + stored * (b0 * std::conj(a0) * turned).imag());
  lost.per_rho2 +=
      scale * (forward * std::norm(a1) + backward * std::norm(b1) + stored * (b1 * std::conj(a1) * turned).imag());
  // Im(z Gamma) = Re(-j z Gamma)
  const Complex cross = b1 * std::conj(a0) * turned - std::conj(b0) * a1 * std::conj(turned);
  lost.swing += scale * (2 * forward * std::conj(a0) * a1 + 2 * backward * std::conj(b0) * b1 +
                         stored * Complex{0, -1} * cross);
}

/// Where |Gamma| at this end may stand while |Gamma| = rho at the other one, whose waves `at` is made of.
struct Circle {
  double least, typical, most;
};
Circle circle(const OfGamma& at, double reference_ohm, double rho) {
  const Complex n0 = at.v0 - reference_ohm * at.i0, n1 = at.v1 - reference_ohm * at.i1;
  const Complex d0 = at.v0 + reference_ohm * at.i0, d1 = at.v1 + reference_ohm * at.i1;
  const double rho2 = rho * rho;
  const double below = std::norm(d0) - std::norm(d1) * rho2;
  if (below == 0) return {1, kInfinity, kInfinity};  // a line, not a circle: no bound
  const double centre = std::abs((n0 * std::conj(d0) - n1 * std::conj(d1) * rho2) / below);
  const double radius = rho * std::abs((n1 * d0 - n0 * d1) / below);
  return {std::abs(centre - radius), std::hypot(centre, radius), centre + radius};
}

double swr_of(double rho) { return rho >= 1 ? kInfinity : (1 + rho) / (1 - rho); }

struct AtLoad {
  OfGamma state;
  PowerOfPhase lost;
};
/// From waves at the load back to the radio, with what is lost on the way.
AtLoad back_from_load(const Run& run, double reference_ohm) {
  AtLoad result{waves(reference_ohm), {}};
  for (int i = run.count - 1; i >= 0; --i) {
    const Line& piece = run.pieces[std::size_t(i)];
    add_lost(piece, result.state, result.lost);
    result.state = moved(piece, result.state, 1);
  }
  return result;
}
AtLoad on_from_radio(const Run& run, double reference_ohm) {
  AtLoad result{waves(reference_ohm), {}};
  for (int i = 0; i < run.count; ++i) {
    const Line& piece = run.pieces[std::size_t(i)];
    result.state = moved(piece, result.state, -1);
    add_lost(piece, result.state, result.lost);
  }
  return result;
}

// Past this much loss one way nothing of the load is seen at the radio, and the far end's waves leave a double's
// digits.
constexpr double kEndlessDb = 150;

}  // namespace

Line pad(double loss_db, double z0_ohm) { return {Complex{loss_db / kDbPerNeper, 0}, z0_ohm, 1}; }

double matched_loss_db(const Run& run) {
  double sum_db = 0;
  for (int i = 0; i < run.count; ++i) sum_db += matched_loss_db(run.pieces[std::size_t(i)]);
  return sum_db;
}

Complex input_impedance_ohm(const Run& run, Complex load_ohm) {
  for (int i = run.count - 1; i >= 0; --i) load_ohm = input_impedance_ohm(run.pieces[std::size_t(i)], load_ohm);
  return load_ohm;
}

double total_loss_db(const Run& run, Complex load_ohm) {
  double sum_db = load_ohm.real() > 0 ? 0 : kInfinity;
  for (int i = run.count - 1; i >= 0; --i) {
    const Line& piece = run.pieces[std::size_t(i)];
    sum_db += total_loss_db(piece, load_ohm);
    load_ohm = input_impedance_ohm(piece, load_ohm);
  }
  return sum_db;
}

SwrRange swr_range_at_radio(const Run& run, double reference_ohm, double swr_at_load) {
  if (!(swr_at_load >= 1)) return {kNone, kNone, kNone};
  if (matched_loss_db(run) > kEndlessDb) {
    const double only = swr(input_impedance_ohm(run, reference_ohm), reference_ohm);
    return {only, only, only};
  }
  const Circle rho =
      circle(back_from_load(run, reference_ohm).state, reference_ohm, reflection_from_swr(swr_at_load));
  return {swr_of(rho.least), swr_of(rho.typical), swr_of(rho.most)};
}

SwrRange swr_range_at_load(const Run& run, double reference_ohm, double swr_at_radio) {
  if (!(swr_at_radio >= 1)) return {kNone, kNone, kNone};
  if (matched_loss_db(run) > kEndlessDb) return {1, kInfinity, kInfinity};
  const Circle rho =
      circle(on_from_radio(run, reference_ohm).state, reference_ohm, reflection_from_swr(swr_at_radio));
  constexpr double kRounding = 1e-9;  // an open end read back through the run
  if (rho.least > 1 + kRounding) return {kNone, kNone, kNone};
  const double typical = rho.typical < 1 ? rho.typical : (std::min(1.0, rho.least) + 1) / 2;
  return {swr_of(rho.least), swr_of(typical), swr_of(rho.most)};
}

LossRange loss_range_db(const Run& run, double reference_ohm, double swr_at_load) {
  if (!(swr_at_load >= 1)) return {kNone, kNone, kNone};
  const double rho = reflection_from_swr(swr_at_load);
  const double taken = std::isinf(swr_at_load) ? 0 : 4 * swr_at_load / ((swr_at_load + 1) * (swr_at_load + 1));
  if (!(taken > 0)) return {kInfinity, kInfinity, kInfinity};
  const PowerOfPhase lost = back_from_load(run, reference_ohm).lost;
  const auto db = [&](double lost_power) {
    return kDbPerPowerNeper * std::log1p(std::max(0.0, lost_power) / taken);
  };
  const double mean = lost.mean(rho), half = lost.half_swing(rho);
  return {db(mean - half), db(mean), db(mean + half)};
}

LossRange loss_range_from_radio_db(const Run& run, double reference_ohm, double swr_at_radio) {
  const SwrRange load = swr_range_at_load(run, reference_ohm, swr_at_radio);
  if (std::isnan(load.least)) return {kNone, kNone, kNone};
  const double through_db = matched_loss_db(run);
  if (through_db > kEndlessDb) return {through_db, through_db, kInfinity};
  const PowerOfPhase lost = on_from_radio(run, reference_ohm).lost;
  const double rho = reflection_from_swr(swr_at_radio), into = 1 - rho * rho;
  const auto db = [&](double lost_power) {
    const double lost_share = std::max(0.0, lost_power) / into;
    return lost_share < 1 ? -kDbPerPowerNeper * std::log1p(-lost_share) : kInfinity;
  };
  const double mean = lost.mean(rho), half = lost.half_swing(rho);
  const double least = db(mean - half), most = db(mean + half);
  double typical = db(mean);
  if (!std::isfinite(typical)) typical = loss_range_db(run, reference_ohm, load.typical).typical_db;
  return {least, std::clamp(typical, least, most), most};
}

VoltAmpere along(const Line& line, VoltAmpere at_load, double distance_m) {
  const Complex theta = line.gamma_per_m * distance_m;
  const Complex c = std::cosh(theta), s = std::sinh(theta);
  return {c * at_load.volt + line.z0_ohm * s * at_load.ampere, c * at_load.ampere + s / line.z0_ohm * at_load.volt};
}

std::vector<Place> places(const Run& run, Complex load_ohm, double power_w, double reference_ohm, int per_piece) {
  std::vector<Place> result;
  if (!(load_ohm.real() > 0) || !(power_w > 0) || per_piece < 1) return result;
  double length_m = 0;
  for (int i = 0; i < run.count; ++i)
    if (run.pieces[std::size_t(i)].gamma_per_m.imag() > 0) length_m += run.pieces[std::size_t(i)].length_m;
  const double arrives_w = power_w * std::pow(10, -total_loss_db(run, load_ohm) / 10);
  const double ampere = std::sqrt(arrives_w / load_ohm.real());
  VoltAmpere at{load_ohm * ampere, ampere};
  double from_radio_m = length_m;
  for (int i = run.count - 1; i >= 0; --i) {
    const Line& piece = run.pieces[std::size_t(i)];
    const bool has_length = piece.gamma_per_m.imag() > 0;  // plugs and choke are drawn as a point
    for (int k = 0; has_length && k <= per_piece; ++k) {
      const double back_m = piece.length_m * k / per_piece;
      const VoltAmpere here = along(piece, at, back_m);
      result.push_back({from_radio_m - back_m, std::abs(here.volt), std::abs(here.ampere),
                        swr(here.volt / here.ampere, reference_ohm)});
    }
    at = along(piece, at, piece.length_m);
    if (has_length) from_radio_m -= piece.length_m;
  }
  std::reverse(result.begin(), result.end());
  return result;
}

double highest_voltage_v(double power_w, double z0_ohm, double swr) { return std::sqrt(power_w * z0_ohm * swr); }

}  // namespace gs::feedline
