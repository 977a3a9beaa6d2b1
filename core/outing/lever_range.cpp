#include "core/outing/lever_range.h"

#include <algorithm>
#include <cmath>

namespace gs {

double most_of(const Plan& plan, L id) {
  const Lever& row = lever(id);
  const double cap = row.cap ? row.cap(plan) : row.most;
  return std::isfinite(cap) ? std::clamp(cap, row.least, row.most) : row.most;
}

}  // namespace gs
