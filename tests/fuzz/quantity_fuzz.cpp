// The first byte picks the unit, the rest is what a person typed.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/outing/decimal.h"
#include "core/outing/quantity.h"

using namespace gs;

namespace {

void demand(bool holds) {
  if (!holds) __builtin_trap();
}

bool one_line(std::string_view text) {
  for (const char c : text)
    if (static_cast<unsigned char>(c) < 0x20) return false;
  return true;
}

/// What is printed must read back, whatever the style, and print the same again.
void demand_round_trip(double value, Unit unit, int digits, const Style& style) {
  const std::string text = say_quantity(value, unit, digits, style);
  demand(!text.empty() && one_line(text) && !speak_quantity(value, unit, digits, style).empty());
  if (text[0] == '<' || text[0] == '>' || text == "\u2013" || text.size() > 64) return;
  const Parsed back = read_quantity(text, unit);
  if (unit == Unit::clock_minute && std::round(value) > 2880) return;
  // Beyond 15 figures the change between units and back no longer keeps every printed one.
  if (std::fabs(value) < 1e9) demand(back.ok() && say_quantity(back.value, unit, digits, style) == text);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const Unit unit = Unit(data[0] % (unsigned(Unit::text) + 1));
  const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
  const Parsed parsed = read_quantity(text, unit);
  demand(std::isfinite(parsed.value));
  if (parsed.ok()) {
    demand(unit != Unit::text && text.size() <= 64);
    demand_round_trip(parsed.value, unit, data[0] / 64, {data[0] & 32 ? ',' : '.', size % 2 == 0, size % 3 == 0});
  } else {
    demand(parsed.value == 0 && one_line(parsed.trouble));
  }

  double number = 0, again = 0;
  if (read_number(text, number)) {
    demand(std::isfinite(number));
    demand(read_number(exact_text(number), again) && again == number &&
           std::signbit(again) == std::signbit(number));
    demand(read_number(fixed_text(number, 17), again));
  }
  return 0;
}
