// Outside check values of pace and kit. Every row says where it comes from and how well it is known.
#pragma once

#include "core/evidence.h"

namespace gs::test {

/// Poisson probabilities as printed, four decimals. cumulative: chance of at most `count`, else of exactly `count`.
struct PoissonRow {
  double mean;
  int count;
  bool cumulative;
  double printed;
};
inline constexpr const char* kPoissonSource =
    "printed Poisson tables: a university's statistics tables; a reprinted cumulative table; a textbook's appendix "
    "(seen)";
inline constexpr PoissonRow kPoisson[] = {
    {10, 5, false, .0378},  {10, 7, false, .0901},  {10, 9, false, .1251},  {10, 10, false, .1251},
    {10, 12, false, .0948}, {10, 15, false, .0347}, {5, 0, false, .0067},   {5, 4, false, .1755},
    {5, 5, false, .1755},   {5, 10, false, .0181},  {20, 10, false, .0058}, {20, 15, false, .0516},
    {20, 19, false, .0888}, {8, 4, false, .0573},   {8, 8, false, .1396},   {2.5, 4, false, .1336},
    {1, 0, true, .3679},    {1, 1, true, .7358},    {1, 2, true, .9197},    {1, 3, true, .9810},
    {1, 4, true, .9963},    {2, 3, true, .8571},    {2.5, 3, true, .7576},  {4, 0, true, .0183},
    {4, 3, true, .4335},    {4, 4, true, .6288},    {4, 9, true, .9919},    {5, 3, true, .2650},
    {5, 4, true, .4405},    {5, 9, true, .9682},    {5, 10, true, .9863},   {10, 3, true, .0103},
    {10, 4, true, .0293}};

/// Chance of at least `target` around a mean with a gamma shape; shape 0 stands for plain Poisson. Worked out
/// apart.
struct SpreadRow {
  double mean, shape;
  int target;
  double chance;
};
inline constexpr const char* kSpreadSource = "negative binomial summed apart from this code, to the digits here";
inline constexpr SpreadRow kSpread[] = {{20, 0, 10, .995}, {20, 10, 10, .935}, {20, 4, 10, .842},
                                        {20, 2, 10, .736}, {20, 1, 10, .614},  {22.5, 2.25, 10, .795}};

/// Mean number needed for a chance of a target: quantiles of the gamma distribution, worked out apart.
struct NeedRow {
  int target;
  double chance, mean;
};
inline constexpr const char* kNeedSource =
    "gamma quantiles of general-purpose statistics software, to the digits here";
inline constexpr NeedRow kNeed[] = {{10, .5, 9.669},   {10, .8, 12.519}, {10, .9, 14.206}, {10, .95, 15.705},
                                    {10, .99, 18.783}, {4, .5, 3.672},   {4, .8, 5.515},   {4, .9, 6.681},
                                    {4, .95, 7.754},   {4, .99, 10.045}};

/// Gamma prior (shape, rate) with counts added, as published; mean of what comes out.
struct UpdateRow {
  double shape, rate, counted, time, mean_after;
  double half_step;
  const char* source;
};
inline constexpr UpdateRow kUpdates[] = {
    {10, 2, 11, 4, 3.5, 1e-9,
     "textbook on Bayes rules, ch. 5: gamma(10, 2), counts 6 2 2 1, gives gamma(21, 6) (second hand)"},
    {20, 1, 24, 1, 22, 1e-9, "university notes on Bayesian inference, sec. 1.3: counts 20, 24 (seen)"},
    {44, 2, 23, 1, 22.33, .0051, "the same, third count 23 (seen)"},
    {2.25, 0.075, 67, 44.0 / 60, 85.67, .0051, "worked out apart: 30 +- 20 an hour, then 67 in 44 min"},
    {2.25, 0.075, 45, 175.0 / 60, 15.79, .0051,
     "worked out apart: the same, then 12, 25 and 8 in 60, 75 and 40 min"}};

}  // namespace gs::test
