// The outing with every lever resolved to a number and its provenance: what everything is computed from.
#pragma once

#include <string>
#include <vector>

#include "core/outing/levers.h"
#include "core/outing/outing.h"

namespace gs {

/// Where a lever's value comes from.
enum class From : unsigned char { missing, usual, yours };

/// Numbers by lever in each lever's unit; choices as the option's index. A missing lever's number is NaN.
struct Plan {
  std::vector<double> x;
  std::vector<From> from;
  double operator[](L id) const { return x[std::size_t(id)]; }
  bool has(L id) const { return from[std::size_t(id)] != From::missing; }
  bool has_all() const { return true; }
  template <class... Rest>
  bool has_all(L first, Rest... rest) const {
    return has(first) && has_all(rest...);
  }
};

/// Fills in usual values. `set` is lever_count() long. Never fails: what is not known is missing.
Plan resolve(const Values& set);

/// A lever's number as people write it: no more decimals than it needs and its row allows. "15 m", "14.06 MHz".
std::string say_lever(const Lever& row, double value, const Style& style);
int digits_needed(double value, int most);

/// The option's key behind a choice lever's number.
std::string_view option_key(L id, double index);

/// Why this value cannot be set, in words ("Feed line length: 0 to 100 m"), or "" when it can.
std::string refusal(L id, const Value& value);

/// The outing with one lever changed. Precondition: refusal(id, value) is empty.
Outing with(Outing outing, L id, Value value);

/// Two levers, each valid alone, that cannot both be true; and figures that contradict each other.
struct Clash {
  L first, second;  // the first is the one to doubt
  std::string sentence;
};
std::vector<Clash> clashes(const Plan& plan, const Style& style = {});

}  // namespace gs
