// Fits the loss law to points of attenuation: for the catalogue's own constants, and for a roll that somebody
// measured.
#pragma once

#include <span>

namespace gs::feedline {

struct LossPoint {
  double frequency_mhz, attenuation_db_per_100m;
};

/// Constants of k0 + k1 sqrt(f) + k2 f, dB/100 m, f in MHz, each >= 0.
struct LossLaw {
  double k0_db_per_100m = 0, k1_db_per_100m = 0, k2_db_per_100m = 0;
};

/// Attenuation by the law in dB/100 m; frequency_mhz >= 0 (NaN below).
double attenuation_db_per_100m(const LossLaw& law, double frequency_mhz);

/// Least squares of the relative error with all constants >= 0. `with_constant` allows k0 (steel-cored cable, whose
/// loss flattens towards low frequency); without it k0 is 0. Frequencies and losses finite and > 0: other points
/// are passed over. With fewer distinct frequencies than terms, the terms with the highest powers are left out. No
/// points: all zero. A term that brings nothing (relative error better by less than 1e-10) stays out. Source:
/// linear least squares on every subset of active terms (non-negative least squares by enumeration).
LossLaw fit_loss(std::span<const LossPoint> points, bool with_constant);

}  // namespace gs::feedline
