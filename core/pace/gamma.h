// Shares of the gamma and beta distributions: what exact intervals and waiting times are made of.
#pragma once

namespace gs::pace {

/// Regularised lower incomplete gamma function P(shape, x): the chance that a gamma variable of this shape and rate
/// 1 is at most x. shape > 0, x >= 0; NaN outside. Series below shape + 1, Lentz's continued fraction above; 1e-13
/// relative in the smaller tail for shapes up to 1e5. Source: Abramowitz and Stegun 6.5.29 and 6.5.31 (from
/// memory).
double gamma_share(double shape, double x);
/// 1 - P without cancellation.
double gamma_rest(double shape, double x);

/// The x at which gamma_share is `share` (0 to 1): bisection and secant on the function above, 1e-12 relative. 0 at
/// 0, infinite at 1; NaN outside.
double gamma_quantile(double shape, double share);

/// Regularised incomplete beta function I_x(a, b): chance that a beta(a, b) variable is at most x. a, b > 0 and
/// 0 <= x <= 1; NaN outside. Continued fraction, 1e-12. Source: Abramowitz and Stegun 26.5.8 (from memory).
double beta_share(double a, double b, double x);

/// Garwood's exact interval of a mean from a count of it: each tail outside holds (1 - confidence) / 2. Gamma
/// quantiles at shapes n and n + 1, equal to half the chi-square quantiles at 2n and 2n + 2 degrees of freedom; the
/// lower end is 0 for no count. count >= 0, 0 < confidence < 1; NaN outside. Source: Garwood, Biometrika 28 (1936),
/// 437 (from memory).
struct MeanRange {
  double low, high;
};
MeanRange exact_interval(double count, double confidence);

}  // namespace gs::pace
