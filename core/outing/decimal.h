// Decimal text of doubles, both ways, without a word from the locale.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace gs {

/// Reads digits with at most one '.' (or ',' where `comma` allows it) and an exponent from the start of `text`, no
/// sign. Returns the bytes read, 0 when there is no digit. Correctly rounded; too large gives infinity.
std::size_t scan_decimal(std::string_view text, bool comma, double& value);

/// |value| as d.ddd * 10^exponent: the fewest of 15, 16 or 17 digits that read back to the same bits, no trailing
/// zeros.
struct Decimal {
  std::string digits;  // at least one; "0" for zero
  int exponent = 0;
  int precision = 15;  // how many digits were needed
};
Decimal shortest_decimal(double finite);

/// Plain decimals, rounded half away from zero at the shortest decimal ("0.15" to one decimal is "0.2", as a person
/// who sees 0.15 expects, although the double nearest to it lies below). "-0" never. Finite only; decimals 0 to 17.
std::string fixed_text(double finite, int decimals);

}  // namespace gs
