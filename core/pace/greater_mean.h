// The mean of the greater of two counts that share a pace which is only roughly known.
#pragma once

namespace gs::pace {

/// One of two counts: what is counted already, whole, and the mean of what is still to come; both 0 or more.
struct Count {
  int counted = 0;
  double mean = 0;
};

/// The mean of the greater of the two. Given the pace both are Poisson and independent; the pace is gamma with
/// `shape` above 0, and certain where that is infinite. Exact to rounding: given how many come in all, which day
/// each falls on is a walk, and the mean of what the walk is above zero grows by what it has at zero. NaN for
/// impossible input.
double greater_mean(double shape, Count one, Count other);

}  // namespace gs::pace
