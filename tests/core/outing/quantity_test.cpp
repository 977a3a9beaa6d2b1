#include "core/outing/quantity.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <vector>

#include "core/outing/quantity_units.h"

using namespace gs;

namespace {

constexpr Unit kUnits[] = {Unit::none,         Unit::watt,    Unit::volt,      Unit::ampere,    Unit::ampere_hour,
                           Unit::decibel,      Unit::metre,   Unit::kilometre, Unit::megahertz, Unit::kilohertz,
                           Unit::ohm,          Unit::percent, Unit::hour,      Unit::minute,    Unit::second,
                           Unit::clock_minute, Unit::celsius, Unit::gram,      Unit::kilogram,  Unit::litre,
                           Unit::wavelength,   Unit::s_unit,  Unit::text};

struct Row {
  const char* text;
  Unit unit;
  double value;
};

void check_rows(const std::vector<Row>& rows, double relative) {
  double worst = 0;
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const Parsed parsed = read_quantity(row.text, row.unit);
    CHECK_MESSAGE(parsed.ok(), parsed.trouble);
    const double error = std::fabs(parsed.value - row.value);
    CHECK(error <= relative * std::fabs(row.value));
    if (row.value != 0) worst = std::max(worst, error / std::fabs(row.value));
  }
  MESSAGE("worst relative error " << worst << ", allowed " << relative);
}

bool one_line(const std::string& text) {
  for (const char c : text)
    if (static_cast<unsigned char>(c) < 0x20) return false;
  return !text.empty();
}

}  // namespace

TEST_CASE("quantities: prefixes and factors as published") {
  // SI Brochure, 9th edition, table 7: milli 1e-3, micro 1e-6, centi 1e-2, kilo 1e3, mega 1e6, giga 1e9.
  // 1e-15: one multiplication and the nearest double of each factor.
  check_rows({{"360mA", Unit::ampere, 0.36},
              {"50 µA", Unit::ampere, 50e-6},
              {"2300 mAh", Unit::ampere_hour, 2.3},
              {"20 s", Unit::second, 20},
              {"1.5 min", Unit::second, 90},
              {"1:30", Unit::second, 90},
              {"1.5kW", Unit::watt, 1500},
              {"500 mW", Unit::watt, 0.5},
              {"250mV", Unit::volt, 0.25},
              {"14060kHz", Unit::megahertz, 14.06},
              {"0.4328 GHz", Unit::megahertz, 432.8},
              {"50 Hz", Unit::megahertz, 50e-6},
              {"15cm", Unit::metre, 0.15},
              {"2.5 mm", Unit::metre, 0.0025},
              {"3 km", Unit::metre, 3000},
              {"800 m", Unit::kilometre, 0.8},
              {"850 g", Unit::kilogram, 0.85},
              {"1.2 kg", Unit::gram, 1200},
              {"4.7 kΩ", Unit::ohm, 4700},
              {"20 mohm", Unit::ohm, 0.02}},
             1e-15);
  // NIST SP 811 (2008), appendix B.8, as printed there to seven figures (bold ones exact): foot 3.048 E-01 m, inch
  // 2.54 E-02 m, yard 9.144 E-01 m, mile 1.609 344 E+03 m; hour 3.6 E+03 s, minute 6.0 E+01 s, day 8.64 E+04 s.
  // From memory.
  check_rows({{"50ft", Unit::metre, 15.24},
              {"50'", Unit::metre, 15.24},
              {"50' 6\"", Unit::metre, 15.3924},
              {"50'6\"", Unit::metre, 15.3924},
              {"50'6''", Unit::metre, 15.3924},
              {"50′ 6″", Unit::metre, 15.3924},
              {"50’ 6”", Unit::metre, 15.3924},
              {"50' 6", Unit::metre, 15.3924},
              {"5 ft 6.5 in", Unit::metre, 1.6891},
              {"6 in", Unit::metre, 0.1524},
              {"6in.", Unit::metre, 0.1524},
              {"10 yd", Unit::metre, 9.144},
              {"2 mi", Unit::kilometre, 3.218688},
              {"1 mile", Unit::metre, 1609.344},
              {"90 s", Unit::minute, 1.5},
              {"1 d", Unit::hour, 24},
              {"90min", Unit::hour, 1.5},
              {"1.5h", Unit::minute, 90}},
             2e-15);
  // The same table: pound 4.535 924 E-01 kg, ounce 2.834 952 E-02 kg; good to half of the last printed figure.
  check_rows(
      {{"1 lb", Unit::kilogram, 0.4535924}, {"1oz", Unit::gram, 28.34952}, {"2 lb 8 oz", Unit::gram, 1133.981}},
      2e-7);
  // SP 811 B.8: t_C = (t_F - 32) / 1.8. Fixed points: water freezes at 32 F and boils at 212 F (by the old
  // definition).
  check_rows({{"212F", Unit::celsius, 100},
              {"-40 F", Unit::celsius, -40},
              {"50 °F", Unit::celsius, 10},
              {"40F", Unit::celsius, 8.0 / 1.8},
              {"-3 C", Unit::celsius, -3},
              {"\u22123 °C", Unit::celsius, -3}},
             2e-15);
  CHECK(read_quantity("32F", Unit::celsius).value == 0);
  // dBm: decibels above 1 mW (ITU-R V.574, from memory): 30 dBm is 1 W and each 10 dB a factor of ten.
  check_rows({{"0 dBm", Unit::watt, 0.001},
              {"30dBm", Unit::watt, 1},
              {"40 dbm", Unit::watt, 10},
              {"47 dBm", Unit::watt, 50.11872336272722}},
             1e-15);
}

TEST_CASE("quantities: bare numbers, decimal signs, blanks and signs") {
  check_rows({{"5", Unit::watt, 5},
              {"7,5", Unit::metre, 7.5},
              {"7.5", Unit::metre, 7.5},
              {"7,", Unit::metre, 7},
              {".5", Unit::metre, 0.5},
              {"  7.5 m\t", Unit::metre, 7.5},
              {"7.5\u00A0m", Unit::metre, 7.5},
              {"7.5\u202Fm\u00A0", Unit::metre, 7.5},
              {"\u22123", Unit::decibel, -3},
              {"+3 dB", Unit::decibel, 3},
              {"- 3", Unit::celsius, -3},
              {"1e3", Unit::watt, 1000},
              {"2.5E-1 A", Unit::ampere, 0.25},
              {"14,060", Unit::megahertz, 14.06},
              {"007", Unit::none, 7},
              {"1.6", Unit::none, 1.6},
              {"1.6:1", Unit::none, 1.6},
              {"40 %", Unit::percent, 40},
              {"40%", Unit::percent, 40},
              {"S7", Unit::s_unit, 7},
              {"7 S-units", Unit::s_unit, 7},
              {"0.5 λ", Unit::wavelength, 0.5},
              {"5 w", Unit::watt, 5},
              {"14.06 mhz", Unit::megahertz, 14.06},
              {"15 Metres", Unit::metre, 15},
              {"90 Min", Unit::minute, 90},
              {"50 \u2126", Unit::ohm, 50}},
             0);
  CHECK_FALSE(std::signbit(read_quantity("-0", Unit::decibel).value));
  CHECK_FALSE(std::signbit(read_quantity("-0:00", Unit::hour).value));
}

TEST_CASE("quantities: durations and times of day") {
  // 60 minutes an hour; a time of day as ISO 8601-1 writes it, run on past midnight.
  check_rows({{"1h30", Unit::hour, 1.5},
              {"1h30", Unit::minute, 90},
              {"2 h 20", Unit::minute, 140},
              {"2 h 20 min", Unit::minute, 140},
              {"2 H 5", Unit::minute, 125},
              {"1:30", Unit::hour, 1.5},
              {"1:30", Unit::minute, 90},
              {"1:30 h", Unit::minute, 90},
              {"-5:30", Unit::minute, -330},
              {"\u22121h30", Unit::minute, -90},
              {"1 d 2 h", Unit::hour, 26},
              {"5 min 30 s", Unit::minute, 5.5},
              {"45", Unit::minute, 45},
              {"1,5", Unit::hour, 1.5},
              {"19:20", Unit::clock_minute, 1160},
              {"7:05", Unit::clock_minute, 425},
              {"07:05", Unit::clock_minute, 425},
              {"0:00", Unit::clock_minute, 0},
              {"25:30", Unit::clock_minute, 1530},
              {"48:00", Unit::clock_minute, 2880},
              {"19h20", Unit::clock_minute, 1160},
              {"19 h 20", Unit::clock_minute, 1160},
              {"7h", Unit::clock_minute, 420},
              {"7 pm", Unit::clock_minute, 1140},
              {"7:05 PM", Unit::clock_minute, 1145},
              {"12:10 am", Unit::clock_minute, 10},
              {"12pm", Unit::clock_minute, 720},
              {"1160", Unit::clock_minute, 1160},
              {"1160 min", Unit::clock_minute, 1160}},
             1e-15);
}

TEST_CASE("quantities: refused with a reason that names what was wrong") {
  struct Refused {
    std::string text;
    Unit unit;
    const char* says;
  };
  const std::vector<Refused> rows = {{"", Unit::watt, "Nothing"},
                                     {" \t\u00A0", Unit::watt, "Nothing"},
                                     {"abc", Unit::watt, "no number"},
                                     {"-", Unit::watt, "no number"},
                                     {".", Unit::watt, "no number"},
                                     {"W", Unit::watt, "no number"},
                                     {"--5", Unit::watt, "no number"},
                                     {"nan", Unit::watt, "no number"},
                                     {"inf", Unit::watt, "no number"},
                                     {"0x10", Unit::watt, "\"x\" is not a unit"},
                                     {"5 foo", Unit::watt, "\"foo\" is not a unit"},
                                     {"5 W", Unit::metre, "\"W\" is a power; a length is wanted"},
                                     {"5 m", Unit::minute, "\"m\" is a length; a duration"},
                                     {"5 min", Unit::metre, "a duration; a length"},
                                     {"12awg", Unit::metre, "a wire size; a length"},
                                     {"40 Wh", Unit::ampere_hour, "an energy"},
                                     {"2 dBi", Unit::decibel, "an antenna gain"},
                                     {"5 MW", Unit::watt, "not a unit"},
                                     {"360 MA", Unit::ampere, "not a unit"},
                                     {"5 M", Unit::metre, "not a unit"},
                                     {"20 MΩ", Unit::ohm, "not a unit"},
                                     {"1e999", Unit::watt, "too large"},
                                     {"1e308 kW", Unit::watt, "too large"},
                                     {"9999 dBm", Unit::watt, "too large"},
                                     {"1,000.5", Unit::watt, "two ways"},
                                     {"1.000.000", Unit::watt, "two ways"},
                                     {"1 000", Unit::watt, "two ways"},
                                     {"1\u202F000 W", Unit::watt, "two ways"},
                                     {"5 W 3", Unit::watt, "does not fit"},
                                     {"5 W x", Unit::watt, "left over"},
                                     {"5 ft 12 in", Unit::metre, "less than 12"},
                                     {"1 h 60", Unit::hour, "less than 60"},
                                     {"1 h -5", Unit::hour, "left over"},
                                     {"5 in 2 ft", Unit::metre, "does not fit"},
                                     {"1.5 ft 6 in", Unit::metre, "decimals"},
                                     {"1.5h30", Unit::hour, "decimals"},
                                     {"1:3", Unit::hour, "two digits"},
                                     {"1:60", Unit::hour, "two digits"},
                                     {"1.5:30", Unit::hour, "two digits"},
                                     {"1:300", Unit::hour, "two digits"},
                                     {"1:30:10", Unit::hour, "two digits"},
                                     {"2h.5", Unit::hour, "not a unit"},
                                     {"7", Unit::text, "Words"},
                                     {std::string(65, '5'), Unit::watt, "64"},
                                     {"5\n3", Unit::watt, "not a unit"},
                                     {std::string("5\0W", 3), Unit::watt, "not a unit"},
                                     {"5 \xff\xfe", Unit::watt, "not a unit"},
                                     {"48:01", Unit::clock_minute, "48:00"},
                                     {"2881", Unit::clock_minute, "48:00"},
                                     {"7:5", Unit::clock_minute, "19:20"},
                                     {"7:60", Unit::clock_minute, "19:20"},
                                     {"-7:05", Unit::clock_minute, "19:20"},
                                     {"13 pm", Unit::clock_minute, "19:20"},
                                     {"0 am", Unit::clock_minute, "19:20"},
                                     {"19.20", Unit::clock_minute, "two ways"},
                                     {"19:20:30", Unit::clock_minute, "19:20"},
                                     {"noon", Unit::clock_minute, "19:20"},
                                     {"5 W", Unit::clock_minute, "19:20"}};
  for (const Refused& row : rows) {
    CAPTURE(row.text);
    const Parsed parsed = read_quantity(row.text, row.unit);
    CHECK_FALSE(parsed.ok());
    CHECK(parsed.value == 0);
    CHECK(one_line(parsed.trouble));
    CHECK_MESSAGE(parsed.trouble.find(row.says) != std::string::npos, parsed.trouble);
  }
}

TEST_CASE("quantities: every row of every unit can be typed, and goes there and back") {
  for (const Unit unit : kUnits) {
    const auto offered = unit_choices(unit), all = all_choices(unit);
    REQUIRE(offered.size() <= all.size());
    CHECK((unit == Unit::text) == offered.empty());
    if (offered.empty()) continue;
    CHECK(to_base(offered[0], 3) == 3);  // the base unit stands first
    for (const UnitChoice& choice : all) {
      CAPTURE(choice.symbol);
      const Parsed parsed = read_quantity("3 " + std::string(choice.symbol), unit);
      CHECK_MESSAGE(parsed.ok(), parsed.trouble);
      CHECK(parsed.value == to_base(choice, 3));
      CHECK(from_base(choice, to_base(choice, 3)) == doctest::Approx(3).epsilon(1e-14));
      CHECK_FALSE(speak_quantity(3, unit, 0).empty());
    }
  }
}

TEST_CASE("quantities: printed for a screen") {
  const auto say = [](double value, Unit unit, int digits) { return say_quantity(value, unit, digits); };
  CHECK(say(32.94, Unit::watt, 1) == "32.9 W");
  CHECK(say(-3, Unit::celsius, 0) == "\u22123 °C");
  CHECK(say(-0.04, Unit::decibel, 1) == "0.0 dB");
  CHECK(say(1.62, Unit::none, 1) == "1.6");
  CHECK(say(12, Unit::s_unit, 0) == "12 S-units");
  CHECK(print_quantity(140, Unit::minute, 3).number == "2 h 20");
  CHECK(print_quantity(140, Unit::minute, 3).unit.empty());
  CHECK(say(45.4, Unit::minute, 0) == "45 min");
  CHECK(say(59.6, Unit::minute, 0) == "1 h 00");
  CHECK(say(0.75, Unit::hour, 0) == "45 min");
  CHECK(say(25.5, Unit::hour, 0) == "25 h 30");
  CHECK(say(-90, Unit::minute, 0) == "\u22121 h 30");
  CHECK(say(-0.2, Unit::minute, 0) == "0 min");
  CHECK(say(1160, Unit::clock_minute, 0) == "19:20");
  CHECK(say(425, Unit::clock_minute, 0) == "07:05");
  CHECK(say(1530, Unit::clock_minute, 0) == "25:30");
  for (const Unit unit : kUnits) {
    CHECK(say(std::nan(""), unit, 0) == "\u2013");
    CHECK(say(-HUGE_VAL, unit, 0) == "\u2013");
  }
  // half away from zero at the decimals a person sees: 0.15 and 2.675 are a hair less as doubles
  CHECK(say(0.15, Unit::none, 1) == "0.2");
  CHECK(say(2.675, Unit::none, 2) == "2.68");
  CHECK(say(-2.5, Unit::none, 0) == "\u22123");
  CHECK(say(0.5, Unit::none, 0) == "1");
  CHECK(say(9.996, Unit::none, 2) == "10.00");
  CHECK(say(1e22, Unit::none, 0) == "10000000000000000000000");
  // a share is never none nor all before it is
  CHECK(say(0.3, Unit::percent, 0) == "< 1 %");
  CHECK(say(99.7, Unit::percent, 0) == "> 99 %");
  CHECK(say(0, Unit::percent, 0) == "0 %");
  CHECK(say(100, Unit::percent, 0) == "100 %");
  CHECK(say(100.3, Unit::percent, 0) == "100 %");
  CHECK(say(99.7, Unit::percent, 1) == "99.7 %");
  const Style ours{',', true, true};
  CHECK(say_quantity(15.24, Unit::metre, 1, ours) == "50,0 ft");
  CHECK(say_quantity(-40, Unit::celsius, 0, ours) == "\u221240 °F");
  CHECK(say_quantity(453.59237, Unit::gram, 0, ours) == "1,00 lb");
  CHECK(say_quantity(1.609344, Unit::kilometre, 1, ours) == "1,0 mi");
}

TEST_CASE("quantities: in words") {
  const auto speak = [](double value, Unit unit, int digits) { return speak_quantity(value, unit, digits); };
  CHECK(speak(1, Unit::watt, 0) == "1 watt");
  CHECK(speak(40, Unit::watt, 0) == "40 watts");
  CHECK(speak(32.94, Unit::watt, 1) == "32.9 watts");
  CHECK(speak(15, Unit::metre, 0) == "15 metres");
  CHECK(speak(1.6, Unit::none, 1) == "1.6");
  CHECK(speak(-3, Unit::celsius, 0) == "minus 3 degrees Celsius");
  CHECK(speak(-1, Unit::celsius, 0) == "minus 1 degree Celsius");
  CHECK(speak(140, Unit::minute, 0) == "2 hours 20 minutes");
  CHECK(speak(61, Unit::minute, 0) == "1 hour 1 minute");
  CHECK(speak(2, Unit::hour, 0) == "2 hours");
  CHECK(speak(0, Unit::minute, 0) == "0 minutes");
  CHECK(speak(1160, Unit::clock_minute, 0) == "19:20");
  CHECK(speak(1530, Unit::clock_minute, 0) == "01:30 the next day");
  CHECK(speak(0.3, Unit::percent, 0) == "less than 1 percent");
  CHECK(speak(14.06, Unit::megahertz, 3) == "14.060 megahertz");
  CHECK(speak_quantity(0.3048, Unit::metre, 0, {'.', true, false}) == "1 foot");
  CHECK(speak(std::nan(""), Unit::watt, 0) == "not known");
}

TEST_CASE("quantities: what is printed reads back, 10,000 times") {
  constexpr unsigned kSeed = 20261124;
  std::mt19937 random(kSeed);
  double worst = 0;  // in units of half the last printed place
  for (int i = 0; i < 10'000; ++i) {
    const Unit unit = kUnits[random() % (std::size(kUnits) - 1)];  // all but text
    const int digits = int(random() % 4);
    const Style style{random() % 2 ? '.' : ',', random() % 2 == 0, random() % 2 == 0};
    const bool clock = unit == Unit::clock_minute;
    double value = std::pow(10.0, double(random() % 6000) / 1000 - 2);
    if (clock) value = double(random() % 288'000) / 100;
    if (!clock && random() % 3 == 0) value = -value;
    const Printed printed = print_quantity(value, unit, digits, style);
    if (printed.number[0] == '<' || printed.number[0] == '>') continue;
    const std::string text = say_quantity(value, unit, digits, style);
    CAPTURE(text);
    const Parsed parsed = read_quantity(text, unit);
    REQUIRE_MESSAGE(parsed.ok(), parsed.trouble);
    CHECK(say_quantity(parsed.value, unit, digits, style) == text);
    // half of the last place, in the base unit
    double half = 0.5 * std::pow(10.0, -digits);
    if (unit == Unit::hour) half = 0.5 / 60;
    if (unit == Unit::minute || clock) half = 0.5;
    for (const UnitChoice& choice : unit_choices(unit))
      if (choice.symbol == printed.unit && unit != Unit::hour && unit != Unit::minute) half *= choice.factor;
    if (unit == Unit::gram && style.feet) half /= 100;
    const double off = std::fabs(parsed.value - value) / half;
    worst = std::max(worst, off);
    CHECK(off <= 1 + 1e-9);  // value up to 1e4, half place from 1e-7: double keeps nine figures of the quotient
  }
  MESSAGE("seed " << kSeed << ": read back within " << worst << " of half the last place");
}

TEST_CASE("quantities: no text crashes, passes for an infinite value or is refused without a reason") {
  constexpr unsigned kSeed = 20261127;
  std::mt19937 random(kSeed);
  const std::vector<std::string> bits_of_text = {
      "1",      "7",      "30", "9999", "e",  "e308", ".",  ",",  ":", "-",  "+",    "\u2212", " ",
      "\u00A0", "\u202F", "h",  "min",  "s",  "d",    "m",  "ft", "'", "\"", "in",   "W",      "mW",
      "dBm",    "°",      "F",  "lb",   "oz", "pm",   "am", "%",  "S", "Ω",  "\xff", "\xc3",   std::string(1, '\0'),
      "\n"};
  int read = 0;
  for (int i = 0; i < 20'000; ++i) {
    std::string text;
    const std::size_t pieces = random() % 8;
    for (std::size_t k = 0; k < pieces; ++k)
      text += i % 2 ? bits_of_text[random() % bits_of_text.size()] : std::string(1, char(random() % 256));
    for (const Unit unit : kUnits) {
      const Parsed parsed = read_quantity(text, unit);
      const bool sound =
          std::isfinite(parsed.value) && (parsed.ok() || (parsed.value == 0 && one_line(parsed.trouble)));
      if (!sound) FAIL("unit " << int(unit) << " text " << text);
      read += parsed.ok();
    }
  }
  MESSAGE("seed " << kSeed << ": " << read << " of " << 20'000 * std::size(kUnits) << " were read");
  CHECK(read > 1000);
}

// A day has 1440 minutes: 33:05 is five past nine on the day after.
TEST_CASE("quantities: a result past midnight says its day, and levers read what was printed") {
  const auto at = [](double minute) { return say_result(minute, Unit::clock_minute, 0); };
  const auto between = [](double low, double high) { return say_result_range(low, high, Unit::clock_minute, 0); };
  CHECK(at(545) == "09:05");
  CHECK(at(33 * 60 + 5) == "09:05 next day");
  CHECK(at(1440) == "00:00 next day");
  CHECK(at(1439.6) == "00:00 next day");
  CHECK(at(2879) == "23:59 next day");
  CHECK(at(54 * 60 + 17) == "more than two days on");
  CHECK(at(-80) == "22:40 the day before");
  CHECK(at(-3000) == "more than a day before");
  CHECK(at(std::nan("")) == "\u2013");
  CHECK(between(600, 660) == "10:00 to 11:00");
  CHECK(between(23 * 60, 25 * 60) == "23:00 to 01:00 next day");
  CHECK(between(25 * 60, 26 * 60) == "01:00 to 02:00 next day");
  CHECK(between(33 * 60 + 5, 54 * 60 + 17) == "09:05 next day to more than two days on");
  CHECK(between(50 * 60, 60 * 60) == "more than two days on");
  CHECK(say_result(32.94, Unit::watt, 1) == "32.9 W");
  CHECK(say_result_range(1, 2, Unit::watt, 0) == "1 W to 2 W");
  CHECK(wall_clock(1530) == "01:30");
  CHECK(wall_clock(-1) == "23:59");
  CHECK(wall_clock(std::nan("")) == "\u2013");
  CHECK(speak_quantity(54 * 60 + 17, Unit::clock_minute, 0) == "more than two days on");
  CHECK(speak_quantity(-80, Unit::clock_minute, 0) == "22:40 the day before");
  CHECK(say_span(60) == "an hour");
  CHECK(say_span(120) == "2 hours");
  CHECK(say_span(90) == "1 h 30");
  CHECK(say_span(45.2) == "45 min");
  CHECK(read_quantity("01:30 next day", Unit::clock_minute).value == 1530);
  CHECK(read_quantity("1:30 am the next day", Unit::clock_minute).value == 1530);
  CHECK_FALSE(read_quantity("25:30 next day", Unit::clock_minute).ok());
  CHECK_FALSE(read_quantity("next day", Unit::clock_minute).ok());
}
