// Keeps the worst departure of a run of comparisons and prints it, so that a test says how close it came.
#pragma once

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>

namespace gs::test {

class Closeness {
 public:
  Closeness(const char* what, const char* unit) : what_(what), unit_(unit) {}
  Closeness(const Closeness&) = delete;
  Closeness& operator=(const Closeness&) = delete;
  ~Closeness() { std::printf("  %s: %d compared, worst %.3g %s\n", what_, count_, worst_, unit_); }

  /// True while `got` is within `tolerance` of `wanted`. NaN never is.
  bool within(double got, double wanted, double tolerance) {
    const double off = got == wanted ? 0.0 : std::abs(got - wanted);
    ++count_;
    if (!(off <= worst_)) worst_ = off;
    return off <= tolerance;
  }

 private:
  const char* what_;
  const char* unit_;
  int count_ = 0;
  double worst_ = 0;
};

}  // namespace gs::test
