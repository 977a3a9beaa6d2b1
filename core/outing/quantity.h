// Values with units as people write them: read from text, printed for a screen.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace gs {

/// The base unit of a number. Files and the plan hold bare numbers in these.
enum class Unit : unsigned char {
  none,  // SWR, counts, ratios
  watt,
  volt,
  ampere,
  ampere_hour,
  milliampere_hour,
  decibel,
  metre,      // lengths people rig: m, ft, in, cm
  kilometre,  // distances on the globe: km, mi
  megahertz,
  kilohertz,  // distances on the dial
  ohm,
  percent,
  hour,          // a duration, printed "2 h 20"
  minute,        // a duration in minutes, printed "45 min", "2 h 20"
  second,        // a short duration, printed "20 s"
  clock_minute,  // minutes from local midnight of the date, printed "19:20"; may pass 1440
  celsius,
  gram,
  kilogram,
  litre,  // room in a bag
  wavelength,
  s_unit,
  degree,  // angles
  text,    // not a number at all
};

/// One way of writing a unit: value_in_base = number * factor + offset, or 10^(number/10)/1000 W for dBm.
struct UnitChoice {
  std::string_view symbol;
  double factor, offset;
  bool decibel_milliwatt;
};

/// The ways a person may write this unit, the base unit first: the keypad's row of unit chips. Empty for text.
std::span<const UnitChoice> unit_choices(Unit unit);
double to_base(const UnitChoice& choice, double number);
double from_base(const UnitChoice& choice, double value);

/// How a person likes figures written (settings, not part of an outing).
struct Style {
  char decimal_sign = '.';  // '.' or ','
  bool feet = false;        // lengths in ft, weights in lb
  bool fahrenheit = false;
  bool operator==(const Style&) const = default;
};

/// Outcome of reading: either a value in the base unit, or what is wrong in words that a person can act on.
struct Parsed {
  double value = 0;
  std::string trouble;  // empty: value is valid (finite)
  bool ok() const { return trouble.empty(); }
};

/// Reads "50ft", "50' 6\"", "7,5", "7.5 m", "360mA", "1h30", "2 h 20", "19:20", "40F", "-3 C", "12awg" (where a
/// wire is asked for this is not the place), "14.06 MHz", "14060kHz", "40 %", "47 dBm", "5". A bare number is in
/// the base unit. `m` is metre, `min` minute; `M` mega in MHz only. Spaces (also U+00A0, U+202F) between number and
/// unit are free; U+2212 reads as minus; one comma or point is a decimal sign, a group separator is refused as
/// ambiguous. Refused with a reason: empty, no number, unknown unit, unit of another kind (names both), not finite,
/// text left over, longer than 64 bytes. Never throws, never depends on the locale.
Parsed read_quantity(std::string_view text, Unit unit);

/// A figure split for setting: number and unit stand in different sizes.
struct Printed {
  std::string number;  // "32.9", "2 h 20", "−3" (U+2212), "19:20"
  std::string unit;    // "W", "%", "" where the number says it all
};

/// Grams from 1000 up print as kilograms with one decimal more.
/// Prints `value` (base unit) with `digits` decimals, rounded half away from zero, no "-0". Durations and clock
/// ignore digits. Not finite prints as U+2013 alone. Percent never reads "0" or "100" while the value is strictly
/// between: then "< 1", "> 99" (only when digits == 0 and the value is not exactly 0 or 100).
Printed print_quantity(double value, Unit unit, int digits, const Style& style = {});
/// "32.9 W": number, a plain space, unit.
std::string say_quantity(double value, Unit unit, int digits, const Style& style = {});
/// In words for a screen reader: "32.9 watts", "15 metres", "2 hours 20 minutes", "minus 3 degrees Celsius".
std::string speak_quantity(double value, Unit unit, int digits, const Style& style = {});

/// A time of day as a sentence has it: "19:20", "09:05 next day", "22:40 the day before", and in words alone where
/// it is two days off or more. As `say_quantity` where the unit is no time of day; readings and results are said
/// so, while levers keep "33:05", which is how they are typed. A day that both ends share is said once.
std::string say_result(double value, Unit unit, int digits, const Style& style = {});
std::string say_result_range(double low, double high, Unit unit, int digits, const Style& style = {});
/// What a clock on the wall shows, whichever the day: "01:30" for minute 1530; U+2013 where it is not finite.
std::string wall_clock(double minute);
/// A length of time within a sentence: "an hour", "2 hours", "45 min", "1 h 30". Minutes, 0 or more.
std::string say_span(double minutes);

/// Decimal text of a finite double that reads back to the same bits, no locale ("0.1", "1e-09"); for files.
std::string exact_text(double value);
/// Strict decimal number, whole text, C locale; nothing on failure.
bool read_number(std::string_view text, double& value);

}  // namespace gs
