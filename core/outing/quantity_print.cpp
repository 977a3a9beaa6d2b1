#include <algorithm>
#include <cmath>
#include <optional>

#include "core/outing/decimal.h"
#include "core/outing/quantity.h"
#include "core/outing/quantity_units.h"

namespace gs {
namespace {

constexpr std::string_view kMinus = "\u2212";
constexpr std::string_view kNotKnown = "\u2013";

/// ASCII decimals as a screen shows them: U+2212 and the person's decimal sign.
std::string dressed(std::string text, const Style& style) {
  const std::size_t point = text.find('.');
  if (style.decimal_sign == ',' && point != std::string::npos) text[point] = ',';
  if (!text.empty() && text[0] == '-') text.replace(0, 1, kMinus);
  return text;
}

std::string two_digits(double whole) {
  const std::string text = fixed_text(whole, 0);
  return text.size() < 2 ? "0" + text : text;
}

/// Whole minutes, hours split off. Rounding comes first, so that 59.6 min is an hour and never "60 min".
struct Clockwork {
  bool minus;
  double hours, minutes;
};
Clockwork split(double minutes) {
  const double whole = std::round(std::fabs(minutes));
  const double hours = std::floor(whole / 60);
  return {minutes < 0 && whole > 0, hours, whole - hours * 60};
}

/// Beyond this whole minutes are no longer exact in a double, and no outing lasts that long.
bool is_time(double value) { return std::fabs(value) < 1e12; }

double minutes_of(double value, Unit unit) { return unit == Unit::hour ? value * 60 : value; }

/// The row that a value is shown in, and the decimals that then say as much.
struct Shown {
  std::string_view symbol;
  int more_digits = 0;
};
Shown shown_in(Unit unit, double value, const Style& style) {
  if (unit == Unit::celsius && style.fahrenheit) return {"°F"};
  if (style.feet) {
    if (unit == Unit::metre) return {"ft"};
    if (unit == Unit::kilometre) return {"mi"};
    if (unit == Unit::kilogram) return {"lb"};
    if (unit == Unit::gram) return {"lb", 2};  // 1 g is 0.0022 lb
  }
  if (unit == Unit::gram && std::fabs(value) >= 999.5) return {"kg", 1};
  const auto choices = unit_choices(unit);
  return {choices.empty() ? std::string_view{} : choices[0].symbol};
}

/// Printed in hours and minutes; seconds are printed as they are.
bool is_clockwork(Unit unit) {
  const Measure measure = measure_of(unit);
  return measure == Measure::clock || (measure == Measure::time && unit != Unit::second);
}

struct Word {
  std::string_view symbol, one, many;
};
// clang-format off
constexpr Word kWords[] = {
    {"W", "watt", "watts"}, {"V", "volt", "volts"}, {"A", "ampere", "amperes"},
    {"Ah", "ampere hour", "ampere hours"},
    {"mAh", "milliampere hour", "milliampere hours"}, {"dB", "decibel", "decibels"}, {"m", "metre", "metres"},
    {"ft", "foot", "feet"}, {"km", "kilometre", "kilometres"}, {"mi", "mile", "miles"},
    {"MHz", "megahertz", "megahertz"}, {"kHz", "kilohertz", "kilohertz"}, {"Ω", "ohm", "ohms"},
    {"%", "percent", "percent"},
    {"h", "hour", "hours"}, {"min", "minute", "minutes"}, {"s", "second", "seconds"},
    {"°C", "degree Celsius", "degrees Celsius"},
    {"°F", "degree Fahrenheit", "degrees Fahrenheit"}, {"g", "gram", "grams"}, {"kg", "kilogram", "kilograms"},
    {"L", "litre", "litres"},
    {"lb", "pound", "pounds"}, {"λ", "wavelength", "wavelengths"}, {"S-units", "S-unit", "S-units"},
    {"°", "degree", "degrees"},
};
// clang-format on

std::string with_word(std::string number, std::string_view symbol) {
  for (const Word& word : kWords)
    if (word.symbol == symbol) return number + " " + std::string(number == "1" ? word.one : word.many);
  return number;
}

std::string speak_duration(const Clockwork& time) {
  std::string text = time.minus ? "minus " : "";
  if (time.hours > 0) text += with_word(fixed_text(time.hours, 0), "h");
  if (time.hours > 0 && time.minutes > 0) text += " ";
  if (time.minutes > 0 || !(time.hours > 0)) text += with_word(fixed_text(time.minutes, 0), "min");
  return text;
}

}  // namespace

Printed print_quantity(double value, Unit unit, int digits, const Style& style) {
  if (!std::isfinite(value)) return {std::string(kNotKnown), ""};
  const Measure measure = measure_of(unit);
  if (is_clockwork(unit)) {
    if (!is_time(value)) return {std::string(kNotKnown), ""};
    const Clockwork time = split(minutes_of(value, unit));
    const std::string minus(time.minus ? kMinus : "");
    if (measure == Measure::clock) return {minus + two_digits(time.hours) + ":" + two_digits(time.minutes), ""};
    if (!(time.hours > 0)) return {minus + fixed_text(time.minutes, 0), "min"};
    return {minus + fixed_text(time.hours, 0) + " h " + two_digits(time.minutes), ""};
  }
  const Shown shown = shown_in(unit, value, style);
  double number = value;
  for (const UnitChoice& choice : unit_choices(unit))
    if (choice.symbol == shown.symbol) number = from_base(choice, value);
  if (!std::isfinite(number)) return {std::string(kNotKnown), ""};
  std::string text = fixed_text(number, digits + shown.more_digits);
  if (unit == Unit::percent && digits == 0) {
    if (value > 0 && text == "0") text = "< 1";
    if (value < 100 && text == "100") text = "> 99";
  }
  return {dressed(std::move(text), style), std::string(shown.symbol)};
}

std::string say_quantity(double value, Unit unit, int digits, const Style& style) {
  const Printed printed = print_quantity(value, unit, digits, style);
  // SI Brochure, 9th edition, 5.4.3: no space before the sign of a plane angle
  return printed.number + (printed.unit.empty() || unit == Unit::degree ? "" : " ") + printed.unit;
}

namespace {

/// What day a time of day is on, from the outing's: "", " next day", ...; nothing where it is too far off to be
/// read as a time.
std::optional<std::string_view> day_words(double rounded_min) {
  if (rounded_min < -1440 || rounded_min >= 2880) return {};
  return rounded_min < 0 ? " the day before" : rounded_min < 1440 ? "" : " next day";
}
std::string_view far_off(double minute) { return minute < 0 ? "more than a day before" : "more than two days on"; }

}  // namespace

std::string wall_clock(double minute) {
  const double rounded = is_time(minute) ? std::round(minute) : std::nan("");
  return print_quantity(rounded - 1440 * std::floor(rounded / 1440), Unit::clock_minute, 0).number;
}

std::string say_result(double value, Unit unit, int digits, const Style& style) {
  if (measure_of(unit) != Measure::clock || !is_time(value)) return say_quantity(value, unit, digits, style);
  const double minute = std::round(value);
  const auto day = day_words(minute);
  return day ? wall_clock(minute) + std::string(*day) : std::string(far_off(minute));
}

std::string say_result_range(double low, double high, Unit unit, int digits, const Style& style) {
  const std::string from = say_result(low, unit, digits, style), to = say_result(high, unit, digits, style);
  if (measure_of(unit) != Measure::clock || !is_time(low) || !is_time(high)) return from + " to " + to;
  const auto day = day_words(std::round(low)), last = day_words(std::round(high));
  if (!day && !last && from == to) return from;
  return (day && last && *day == *last ? wall_clock(low) : from) + " to " + to;
}

std::string say_span(double minutes) {
  const double whole = std::round(minutes);
  if (!is_time(whole) || whole < 60 || std::fmod(whole, 60) != 0) return say_quantity(whole, Unit::minute, 0);
  return whole == 60 ? "an hour" : fixed_text(whole / 60, 0) + " hours";
}

std::string speak_quantity(double value, Unit unit, int digits, const Style& style) {
  if (!std::isfinite(value)) return "not known";
  const Measure measure = measure_of(unit);
  if (measure == Measure::time && is_clockwork(unit) && is_time(value))
    return speak_duration(split(minutes_of(value, unit)));
  Printed printed = print_quantity(value, unit, digits, style);
  if (printed.number == kNotKnown) return "not known";
  std::string before;
  const auto say_first = [&](std::string_view sign, const char* words) {
    if (!printed.number.starts_with(sign)) return;
    printed.number.erase(0, sign.size());
    before = words;
  };
  say_first(kMinus, "minus ");
  say_first("< ", "less than ");
  say_first("> ", "more than ");
  if (measure == Measure::clock) {
    if (before.empty() && std::round(value) >= 1440 && std::round(value) < 2880)
      return wall_clock(value) + " the next day";
    if (!before.empty() || std::round(value) > 2880) return say_result(value, unit, digits, style);
  }
  return before + with_word(std::move(printed.number), printed.unit);
}

}  // namespace gs
