#include "core/outing/decimal.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "core/outing/quantity.h"

namespace gs {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// strtod and snprintf take their decimal sign from LC_NUMERIC. Nothing here calls setlocale, and a program around
/// us that does cannot hurt either: strtod is only shown whole digits with an exponent, and of snprintf's text only
/// the digits count.
double digits_to_double(const std::string& digits, long exponent) {
  return std::strtod((digits + "e" + std::to_string(exponent)).c_str(), nullptr);
}

}  // namespace

std::size_t scan_decimal(std::string_view text, bool comma, double& value) {
  std::string digits;
  std::size_t at = 0;
  long exponent = 0;
  bool any = false, fraction = false;
  for (; at < text.size(); ++at) {
    const char c = text[at];
    if (is_digit(c)) {
      any = true;
      if (fraction) --exponent;
      if (c != '0' || !digits.empty()) digits += c;  // leading zeros tell strtod nothing
    } else if (!fraction && (c == '.' || (comma && c == ','))) {
      fraction = true;
    } else {
      break;
    }
  }
  if (!any) return 0;
  if (at < text.size() && (text[at] == 'e' || text[at] == 'E')) {
    std::size_t ahead = at + 1;
    const bool minus = ahead < text.size() && text[ahead] == '-';
    if (minus || (ahead < text.size() && text[ahead] == '+')) ++ahead;
    if (ahead < text.size() && is_digit(text[ahead])) {
      constexpr long kFarBeyond = 100'000'000;  // no text that fits a file brings this back into a double's range
      long power = 0;
      for (; ahead < text.size() && is_digit(text[ahead]); ++ahead)
        power = std::min(kFarBeyond, power * 10 + (text[ahead] - '0'));
      exponent += minus ? -power : power;
      at = ahead;
    }
  }
  value = digits.empty() ? 0 : digits_to_double(digits, exponent);
  return at;
}

bool read_number(std::string_view text, double& value) {
  const bool minus = !text.empty() && text[0] == '-';
  if (minus || (!text.empty() && text[0] == '+')) text.remove_prefix(1);
  double magnitude = 0;
  const std::size_t read = scan_decimal(text, false, magnitude);
  if (read == 0 || read != text.size() || !std::isfinite(magnitude)) return false;
  value = minus ? -magnitude : magnitude;
  return true;
}

Decimal shortest_decimal(double finite) {
  Decimal decimal;
  const double magnitude = std::fabs(finite);
  if (!(magnitude > 0)) return {"0", 0, 15};
  for (decimal.precision = 15; decimal.precision <= 17; ++decimal.precision) {
    char text[64];
    std::snprintf(text, sizeof text, "%.*e", decimal.precision - 1, magnitude);
    decimal.digits.clear();
    const char* c = text;
    for (; *c != '\0' && *c != 'e'; ++c)
      if (is_digit(*c)) decimal.digits += *c;
    decimal.exponent = int(std::strtol(c + 1, nullptr, 10));
    if (!(digits_to_double(decimal.digits, decimal.exponent - decimal.precision + 1) != magnitude)) break;
  }
  decimal.precision = std::min(decimal.precision, 17);
  decimal.digits.erase(decimal.digits.find_last_not_of('0') + 1);
  return decimal;
}

std::string exact_text(double value) {
  if (!std::isfinite(value)) return "null";  // no such number exists in a file
  const Decimal decimal = shortest_decimal(value);
  const int exponent = decimal.exponent;
  std::string text = decimal.digits;
  if (exponent < -4 || exponent >= decimal.precision) {  // where C's %g changes over
    if (text.size() > 1) text.insert(1, 1, '.');
    const std::string power = std::to_string(std::abs(exponent));
    text += (exponent < 0 ? "e-" : "e+") + std::string(power.size() < 2 ? "0" : "") + power;
  } else if (exponent < 0) {
    text.insert(0, "0." + std::string(std::size_t(-exponent - 1), '0'));
  } else if (text.size() <= std::size_t(exponent)) {
    text.append(std::size_t(exponent) + 1 - text.size(), '0');
  } else if (text.size() > std::size_t(exponent) + 1) {
    text.insert(std::size_t(exponent) + 1, 1, '.');
  }
  return std::signbit(value) ? "-" + text : text;
}

std::string fixed_text(double finite, int decimals) {
  const int places = std::clamp(decimals, 0, 17);
  const Decimal decimal = shortest_decimal(finite);
  const int kept = decimal.exponent + 1 + places;  // digits that stay
  std::string digits;                              // the rounded value in units of the last place
  if (kept >= 0) {
    const std::size_t stay = std::size_t(kept);
    digits = decimal.digits.substr(0, stay);
    digits.append(stay - digits.size(), '0');
    if (stay < decimal.digits.size() && decimal.digits[stay] >= '5') {
      auto last = digits.rbegin();
      for (; last != digits.rend() && *last == '9'; ++last) *last = '0';
      if (last == digits.rend()) {
        digits.insert(0, 1, '1');
      } else {
        ++*last;
      }
    }
  }
  const bool zero = digits.find_first_not_of('0') == std::string::npos;
  if (digits.size() < std::size_t(places) + 1) digits.insert(0, std::size_t(places) + 1 - digits.size(), '0');
  if (places > 0) digits.insert(digits.size() - std::size_t(places), 1, '.');
  return std::signbit(finite) && !zero ? "-" + digits : digits;
}

}  // namespace gs
