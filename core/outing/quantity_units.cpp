#include "core/outing/quantity_units.h"

#include <algorithm>
#include <cmath>

#include "core/units.h"

namespace gs {
namespace {

// Prefixes: SI Brochure, 9th edition, table 7. Foot, inch, yard, mile, pound and ounce: NIST SP 811 (2008),
// appendix B.8, exact since 1959. Degree Fahrenheit: SP 811 B.8, t_C = (t_F - 32) / 1.8. dBm: level against 1 mW,
// ITU-R V.574 (from memory).
constexpr double kMetresPerYard = 3 * kMetresPerFoot;
constexpr double kMetresPerMile = 1609.344;
constexpr double kGramsPerOunce = kGramsPerPound / 16;
constexpr double kFahrenheitStep = 5.0 / 9.0;
constexpr double kFahrenheitZero = -160.0 / 9.0;

/// The first `offered` rows are the keypad's chips, the others are only read.
struct Rows {
  std::span<const UnitChoice> rows;
  std::size_t offered;
};

constexpr UnitChoice kNone[] = {{"", 1, 0, false}};
constexpr UnitChoice kWatt[] = {
    {"W", 1, 0, false}, {"mW", 1e-3, 0, false}, {"kW", 1e3, 0, false}, {"dBm", 1, 0, true}};
constexpr UnitChoice kVolt[] = {{"V", 1, 0, false}, {"mV", 1e-3, 0, false}, {"kV", 1e3, 0, false}};
constexpr UnitChoice kAmpere[] = {{"A", 1, 0, false}, {"mA", 1e-3, 0, false}, {"µA", 1e-6, 0, false}};
constexpr UnitChoice kAmpereHour[] = {{"Ah", 1, 0, false}, {"mAh", 1e-3, 0, false}};
constexpr UnitChoice kMilliampereHour[] = {{"mAh", 1, 0, false}, {"Ah", 1e3, 0, false}};
constexpr UnitChoice kDecibel[] = {{"dB", 1, 0, false}};
constexpr UnitChoice kMetre[] = {
    {"m", 1, 0, false},     {"ft", kMetresPerFoot, 0, false}, {"in", kMetresPerInch, 0, false},
    {"cm", 1e-2, 0, false}, {"mm", 1e-3, 0, false},           {"yd", kMetresPerYard, 0, false},
    {"km", 1e3, 0, false},  {"mi", kMetresPerMile, 0, false}};
constexpr UnitChoice kKilometre[] = {{"km", 1, 0, false},
                                     {"mi", kMetresPerMile / 1e3, 0, false},
                                     {"m", 1e-3, 0, false},
                                     {"ft", kMetresPerFoot / 1e3, 0, false},
                                     {"in", kMetresPerInch / 1e3, 0, false},
                                     {"cm", 1e-5, 0, false},
                                     {"mm", 1e-6, 0, false},
                                     {"yd", kMetresPerYard / 1e3, 0, false}};
constexpr UnitChoice kMegahertz[] = {
    {"MHz", 1, 0, false}, {"kHz", 1e-3, 0, false}, {"Hz", 1e-6, 0, false}, {"GHz", 1e3, 0, false}};
constexpr UnitChoice kKilohertz[] = {
    {"kHz", 1, 0, false}, {"Hz", 1e-3, 0, false}, {"MHz", 1e3, 0, false}, {"GHz", 1e6, 0, false}};
constexpr UnitChoice kOhm[] = {{"Ω", 1, 0, false}, {"kΩ", 1e3, 0, false}, {"mΩ", 1e-3, 0, false}};
constexpr UnitChoice kPercent[] = {{"%", 1, 0, false}};
constexpr UnitChoice kHour[] = {
    {"h", 1, 0, false}, {"min", 1.0 / 60, 0, false}, {"s", 1.0 / 3600, 0, false}, {"d", 24, 0, false}};
constexpr UnitChoice kMinute[] = {
    {"min", 1, 0, false}, {"h", 60, 0, false}, {"s", 1.0 / 60, 0, false}, {"d", 1440, 0, false}};
constexpr UnitChoice kSecond[] = {
    {"s", 1, 0, false}, {"min", 60, 0, false}, {"h", 3600, 0, false}, {"d", 86400, 0, false}};
constexpr UnitChoice kClock[] = {{"", 1, 0, false}};
constexpr UnitChoice kCelsius[] = {{"°C", 1, 0, false}, {"°F", kFahrenheitStep, kFahrenheitZero, false}};
constexpr UnitChoice kGram[] = {
    {"g", 1, 0, false}, {"kg", 1e3, 0, false}, {"oz", kGramsPerOunce, 0, false}, {"lb", kGramsPerPound, 0, false}};
constexpr UnitChoice kKilogram[] = {{"kg", 1, 0, false},
                                    {"g", 1e-3, 0, false},
                                    {"lb", kGramsPerPound / 1e3, 0, false},
                                    {"oz", kGramsPerOunce / 1e3, 0, false}};
constexpr UnitChoice kLitre[] = {{"L", 1, 0, false}, {"mL", 1e-3, 0, false}};
constexpr UnitChoice kWavelength[] = {{"λ", 1, 0, false}};
constexpr UnitChoice kSUnit[] = {{"S-units", 1, 0, false}};
constexpr UnitChoice kDegree[] = {{"°", 1, 0, false}};

Rows rows_of(Unit unit) {
  switch (unit) {
    case Unit::none:
      return {kNone, 1};
    case Unit::watt:
      return {kWatt, 4};
    case Unit::volt:
      return {kVolt, 2};
    case Unit::ampere:
      return {kAmpere, 2};
    case Unit::ampere_hour:
      return {kAmpereHour, 2};
    case Unit::milliampere_hour:
      return {kMilliampereHour, 2};
    case Unit::decibel:
      return {kDecibel, 1};
    case Unit::metre:
      return {kMetre, 4};
    case Unit::kilometre:
      return {kKilometre, 2};
    case Unit::megahertz:
      return {kMegahertz, 2};
    case Unit::kilohertz:
      return {kKilohertz, 2};
    case Unit::ohm:
      return {kOhm, 2};
    case Unit::percent:
      return {kPercent, 1};
    case Unit::hour:
      return {kHour, 2};
    case Unit::minute:
      return {kMinute, 2};
    case Unit::second:
      return {kSecond, 2};
    case Unit::clock_minute:
      return {kClock, 1};
    case Unit::celsius:
      return {kCelsius, 2};
    case Unit::gram:
      return {kGram, 4};
    case Unit::kilogram:
      return {kKilogram, 4};
    case Unit::litre:
      return {kLitre, 2};
    case Unit::wavelength:
      return {kWavelength, 1};
    case Unit::s_unit:
      return {kSUnit, 1};
    case Unit::degree:
      return {kDegree, 1};
    case Unit::text:
      break;
  }
  return {{}, 0};
}

/// `any_m`: a leading m and M mean the same, as nobody here counts millihertz or megainches.
struct Spelling {
  std::string_view text;
  Measure measure;
  std::string_view symbol;
  bool any_m = false;
};

using enum Measure;
// clang-format off
constexpr Spelling kSpellings[] = {
    {":1", number, ""},
    {"W", power, "W"}, {"watt", power, "W"}, {"watts", power, "W"}, {"mW", power, "mW"}, {"kW", power, "kW"},
    {"milliwatt", power, "mW", true}, {"milliwatts", power, "mW", true}, {"kilowatt", power, "kW"},
    {"kilowatts", power, "kW"}, {"dBm", power, "dBm"},
    {"V", voltage, "V"}, {"volt", voltage, "V"}, {"volts", voltage, "V"}, {"mV", voltage, "mV"}, {"kV", voltage, "kV"},
    {"A", current, "A"}, {"amp", current, "A"}, {"amps", current, "A"}, {"ampere", current, "A"},
    {"amperes", current, "A"}, {"mA", current, "mA"}, {"milliamp", current, "mA", true},
    {"milliamps", current, "mA", true}, {"µA", current, "µA"}, {"μA", current, "µA"}, {"uA", current, "µA"},
    {"Ah", charge, "Ah"}, {"mAh", charge, "mAh"}, {"amp-hour", charge, "Ah"}, {"amp-hours", charge, "Ah"},
    {"ampere-hours", charge, "Ah"},
    {"dB", level, "dB"}, {"decibel", level, "dB"}, {"decibels", level, "dB"},
    {"m", length, "m"}, {"metre", length, "m", true}, {"metres", length, "m", true}, {"meter", length, "m", true},
    {"meters", length, "m", true}, {"ft", length, "ft"}, {"foot", length, "ft"}, {"feet", length, "ft"},
    {"'", length, "ft"}, {"’", length, "ft"}, {"′", length, "ft"}, {"in", length, "in"}, {"inch", length, "in"},
    {"inches", length, "in"}, {"\"", length, "in"}, {"”", length, "in"}, {"″", length, "in"}, {"''", length, "in"},
    {"cm", length, "cm"}, {"mm", length, "mm"}, {"yd", length, "yd"}, {"yard", length, "yd"}, {"yards", length, "yd"},
    {"km", length, "km"}, {"mi", length, "mi", true}, {"mile", length, "mi", true}, {"miles", length, "mi", true},
    {"MHz", frequency, "MHz", true}, {"megahertz", frequency, "MHz", true}, {"kHz", frequency, "kHz"},
    {"kilohertz", frequency, "kHz"}, {"Hz", frequency, "Hz"}, {"GHz", frequency, "GHz"},
    {"Ω", resistance, "Ω"}, {"\u2126", resistance, "Ω"}, {"ohm", resistance, "Ω"}, {"ohms", resistance, "Ω"},
    {"kΩ", resistance, "kΩ"}, {"k\u2126", resistance, "kΩ"}, {"kohm", resistance, "kΩ"}, {"mΩ", resistance, "mΩ"},
    {"m\u2126", resistance, "mΩ"}, {"mohm", resistance, "mΩ"},
    {"%", share, "%"}, {"percent", share, "%"}, {"pct", share, "%"},
    {"min", time, "min", true}, {"mins", time, "min", true}, {"minute", time, "min", true},
    {"minutes", time, "min", true}, {"h", time, "h"}, {"hr", time, "h"}, {"hrs", time, "h"}, {"hour", time, "h"},
    {"hours", time, "h"}, {"s", time, "s"}, {"sec", time, "s"}, {"second", time, "s"}, {"seconds", time, "s"},
    {"d", time, "d"}, {"day", time, "d"}, {"days", time, "d"},
    {"°C", temperature, "°C"}, {"ºC", temperature, "°C"}, {"C", temperature, "°C"}, {"degC", temperature, "°C"},
    {"Celsius", temperature, "°C"}, {"°", temperature, "°C"}, {"°F", temperature, "°F"}, {"ºF", temperature, "°F"},
    {"F", temperature, "°F"}, {"degF", temperature, "°F"}, {"Fahrenheit", temperature, "°F"},
    {"g", weight, "g"}, {"gram", weight, "g"}, {"grams", weight, "g"}, {"kg", weight, "kg"}, {"kilo", weight, "kg"},
    {"kilos", weight, "kg"}, {"oz", weight, "oz"}, {"ounce", weight, "oz"}, {"ounces", weight, "oz"},
    {"lb", weight, "lb"}, {"lbs", weight, "lb"}, {"pound", weight, "lb"}, {"pounds", weight, "lb"},
    {"L", volume, "L"}, {"litre", volume, "L"}, {"litres", volume, "L"}, {"liter", volume, "L"},
    {"liters", volume, "L"}, {"mL", volume, "mL", true},
    {"λ", wavelengths, "λ"}, {"wavelength", wavelengths, "λ"}, {"wavelengths", wavelengths, "λ"},
    {"S", signal, "S-units"}, {"S-unit", signal, "S-units"}, {"S-units", signal, "S-units"},
    {"°", angle, "°"}, {"deg", angle, "°"}, {"degree", angle, "°"}, {"degrees", angle, "°"},
    {"Wh", energy, ""}, {"kWh", energy, ""}, {"J", energy, ""}, {"dBi", gain, ""}, {"dBd", gain, ""},
    {"awg", wire, ""}, {"gauge", wire, ""},
};
// clang-format on

char lower(char c) { return c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c; }

bool folds_to(std::string_view typed, const Spelling& row) {
  if (typed.size() != row.text.size()) return false;
  if (!row.any_m && typed[0] != row.text[0] && lower(typed[0]) == 'm') return false;
  return std::equal(typed.begin(), typed.end(), row.text.begin(),
                    [](char a, char b) { return lower(a) == lower(b); });
}

}  // namespace

std::span<const UnitChoice> all_choices(Unit unit) { return rows_of(unit).rows; }
std::span<const UnitChoice> unit_choices(Unit unit) { return rows_of(unit).rows.first(rows_of(unit).offered); }

double to_base(const UnitChoice& choice, double number) {
  return choice.decibel_milliwatt ? std::pow(10.0, number / 10) / 1000 : number * choice.factor + choice.offset;
}

double from_base(const UnitChoice& choice, double value) {
  return choice.decibel_milliwatt ? 10 * std::log10(value * 1000) : (value - choice.offset) / choice.factor;
}

Measure measure_of(Unit unit) {
  switch (unit) {
    case Unit::none:
      return number;
    case Unit::watt:
      return power;
    case Unit::volt:
      return voltage;
    case Unit::ampere:
      return current;
    case Unit::ampere_hour:
    case Unit::milliampere_hour:
      return charge;
    case Unit::decibel:
      return level;
    case Unit::metre:
    case Unit::kilometre:
      return length;
    case Unit::megahertz:
    case Unit::kilohertz:
      return frequency;
    case Unit::ohm:
      return resistance;
    case Unit::percent:
      return share;
    case Unit::hour:
    case Unit::minute:
    case Unit::second:
      return time;
    case Unit::clock_minute:
      return clock;
    case Unit::celsius:
      return temperature;
    case Unit::gram:
    case Unit::kilogram:
      return weight;
    case Unit::litre:
      return volume;
    case Unit::wavelength:
      return wavelengths;
    case Unit::s_unit:
      return signal;
    case Unit::degree:
      return angle;
    case Unit::text:
      break;
  }
  return words;
}

std::string_view measure_name(Measure measure) {
  constexpr std::string_view kNames[] = {"a plain number",
                                         "a power",
                                         "a voltage",
                                         "a current",
                                         "a battery capacity",
                                         "a level",
                                         "a length",
                                         "a frequency",
                                         "a resistance",
                                         "a share",
                                         "a duration",
                                         "a time of day",
                                         "a temperature",
                                         "a weight",
                                         "a length in wavelengths",
                                         "a signal strength",
                                         "an angle",
                                         "a volume",
                                         "words",
                                         "an energy (divide by the voltage)",
                                         "an antenna gain",
                                         "a wire size",
                                         ""};
  return kNames[std::size_t(measure)];
}

Meaning find_spelling(std::string_view spelling, Measure wanted) {
  if (spelling.empty()) return {count, {}};
  for (const bool own_kind : {true, false}) {
    for (const bool exact : {true, false}) {
      for (const Spelling& row : kSpellings) {
        if (own_kind && row.measure != wanted) continue;
        if (exact ? row.text == spelling : folds_to(spelling, row)) return {row.measure, row.symbol};
      }
    }
  }
  return {count, {}};
}

std::string choice_list(Unit unit) {
  const std::span<const UnitChoice> choices = unit_choices(unit);
  std::string list;
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (i > 0) list += i + 1 == choices.size() ? " or " : ", ";
    list += choices[i].symbol;
  }
  return list;
}

}  // namespace gs
