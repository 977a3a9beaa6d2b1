#include "core/outing/decimal.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "core/outing/quantity.h"

using namespace gs;

namespace {

std::string bits(double value) {
  std::uint64_t raw = 0;
  std::memcpy(&raw, &value, sizeof raw);
  return std::to_string(raw);
}

}  // namespace

TEST_CASE("decimals: exact text gives the same bits, 10,000 times") {
  constexpr unsigned kSeed = 20261125;
  std::mt19937_64 random(kSeed);
  std::size_t longest = 0;
  for (int i = 0; i < 10'000; ++i) {
    std::uint64_t raw = random();
    if (i % 2) raw = (raw & 0x800FFFFFFFFFFFFFu) | (0x3F0u + random() % 32) << 52;  // everyday sizes
    double value = 0, back = 0;
    std::memcpy(&value, &raw, sizeof value);
    if (!std::isfinite(value)) continue;
    const std::string text = exact_text(value);
    CAPTURE(text);
    REQUIRE(read_number(text, back));
    CHECK(bits(back) == bits(value));
    longest = std::max(longest, text.size());
    // the C library as outside check: the same double comes out of strtod in the C locale
    CHECK(bits(std::strtod(text.c_str(), nullptr)) == bits(value));
  }
  MESSAGE("seed " << kSeed << ": longest text " << longest << " bytes");
  for (const auto& [value, text] :
       std::vector<std::pair<double, std::string>>{{0.1, "0.1"},
                                                   {1e-9, "1e-09"},
                                                   {-0.0, "-0"},
                                                   {100, "100"},
                                                   {1e15, "1e+15"},
                                                   {123456.75, "123456.75"},
                                                   {0.0001, "0.0001"},
                                                   {0.00001, "1e-05"},
                                                   {1.0 / 3, "0.3333333333333333"},
                                                   {1.7976931348623157e308, "1.7976931348623157e+308"}}) {
    CHECK(exact_text(value) == text);
  }
}

TEST_CASE("decimals: rounding agrees with the C library away from ties") {
  constexpr unsigned kSeed = 20261126;
  std::mt19937 random(kSeed);
  int compared = 0;
  for (int i = 0; i < 10'000; ++i) {
    const double value = (double(random()) - 2147483648.0) / std::pow(10.0, double(random() % 10));
    const int digits = int(random() % 7);
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", digits, value);
    if (fixed_text(value, digits + 1).back() == '5') continue;  // a tie perhaps, where the two differ by intent
    std::string expected = text;
    if (expected.find_first_not_of("-0.") == std::string::npos && expected[0] == '-') expected.erase(0, 1);
    CHECK(fixed_text(value, digits) == expected);
    ++compared;
  }
  MESSAGE("seed " << kSeed << ": " << compared << " compared");
  CHECK(compared > 8000);
}

TEST_CASE("decimals: strict numbers") {
  double value = 7;
  for (const char* text :
       {"", " 1", "1 ", "1,5", "+", "-", ".", "1e", "1e+", "0x10", "inf", "nan", "1..2", "--1", "1e999"}) {
    CAPTURE(text);
    CHECK_FALSE(read_number(text, value));
    CHECK(value == 7);
  }
  for (const auto& [text, expected] :
       std::vector<std::pair<std::string, double>>{{"1", 1},
                                                   {"-1.5", -1.5},
                                                   {"+2", 2},
                                                   {"1e3", 1000},
                                                   {".5", 0.5},
                                                   {"5.", 5},
                                                   {"1e-999", 0},
                                                   {"0e999999999999999999999", 0},
                                                   {"0." + std::string(5000, '0') + "1e5001", 1}}) {
    CHECK(read_number(text, value));
    CHECK(value == expected);
  }
}
