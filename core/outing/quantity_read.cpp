// What a person typed, as a number in the base unit. docs/methods/quantity.md tells it in prose.
#include <cmath>
#include <cstddef>

#include "core/outing/decimal.h"
#include "core/outing/quantity.h"
#include "core/outing/quantity_units.h"
#include "core/outing/utf8.h"

namespace gs {
namespace {

constexpr std::size_t kMostBytes = 64;
constexpr double kMostClockMin = 48 * 60;

Parsed refuse(std::string trouble) { return {0, std::move(trouble)}; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// The person's own words inside a sentence: one line, short, valid UTF-8.
std::string quoted(std::string_view text) { return "\"" + clean_text(text, 24) + "\""; }

/// Bytes of the blank at the start: space, tab and the no-break, thin and narrow spaces that other programs set
/// before units.
std::size_t blank_bytes(std::string_view text) {
  if (text.empty()) return 0;
  const Rune rune = first_rune(text);
  const char32_t p = rune.point;
  return p == ' ' || p == '\t' || p == 0xA0 || p == 0x2009 || p == 0x202F ? rune.bytes : 0;
}

/// Walks over the text; never past its end.
struct Cursor {
  std::string_view rest;
  bool done() const { return rest.empty(); }
  char peek() const { return rest.empty() ? '\0' : rest[0]; }
  void skip_blanks() {
    while (const std::size_t bytes = blank_bytes(rest)) rest.remove_prefix(bytes);
  }
  bool take(std::string_view token) {
    if (!rest.starts_with(token)) return false;
    rest.remove_prefix(token.size());
    return true;
  }
  bool number(double& value) {
    const std::size_t bytes = scan_decimal(rest, true, value);
    rest.remove_prefix(bytes);
    return bytes > 0;
  }
  /// Everything up to a blank, a digit or a decimal sign that a digit follows; a closing full stop ("in.") is
  /// dropped.
  std::string_view word() {
    std::size_t bytes = 0;
    while (bytes < rest.size() && !is_digit(rest[bytes]) && blank_bytes(rest.substr(bytes)) == 0) ++bytes;
    std::string_view found = rest.substr(0, bytes);
    rest.remove_prefix(bytes);
    if (found.size() > 1 && found.back() == '.' && !is_digit(peek())) found.remove_suffix(1);
    return found;
  }
};

bool take_minus(Cursor& cursor) {
  const bool minus = cursor.take("-") || cursor.take("\u2212");
  if (!minus) cursor.take("+");
  cursor.skip_blanks();
  return minus;
}

std::string group_trouble(std::string_view text) {
  return quoted(text) + " can be read two ways: write one number with at most one decimal sign.";
}

std::string wanted(Unit unit) {
  const std::string list = choice_list(unit);
  return std::string(measure_name(measure_of(unit))) + " is wanted" + (list.empty() ? "." : ": " + list + ".");
}

/// The row of `unit` that a spelling names, or null and why not.
const UnitChoice* find_choice(std::string_view spelling, Unit unit, std::string& trouble) {
  const Meaning meaning = find_spelling(spelling, measure_of(unit));
  if (meaning.measure == measure_of(unit)) {
    for (const UnitChoice& choice : all_choices(unit))
      if (choice.symbol == meaning.symbol) return &choice;
  }
  if (meaning.measure == Measure::count) {
    trouble = quoted(spelling) + " is not a unit known here; " + wanted(unit);
  } else {
    trouble = quoted(spelling) + " is " + std::string(measure_name(meaning.measure)) + "; " + wanted(unit);
  }
  return nullptr;
}

/// A smaller unit that may follow a larger one: "50' 6\"", "2 h 20". Bare: the number may stand without its unit.
struct Below {
  std::string_view larger, smaller;
  double many;
  bool bare;
};
constexpr Below kBelow[] = {{"ft", "in", 12, true},
                            {"d", "h", 24, false},
                            {"h", "min", 60, true},
                            {"min", "s", 60, false},
                            {"lb", "oz", 16, true}};

const Below* find_below(std::string_view larger) {
  for (const Below& row : kBelow)
    if (row.larger == larger) return &row;
  return nullptr;
}

Parsed finish(double value) {
  if (!std::isfinite(value)) return refuse("That number is too large.");
  return {value + 0.0, {}};  // adding zero turns -0 into 0
}

/// "7" in "1:07", two digits below 60; -1 when it is not that.
int minute_digits(Cursor& cursor) {
  const std::string_view rest = cursor.rest;
  const auto digit = [rest](std::size_t i) { return i < rest.size() && is_digit(rest[i]); };
  if (!digit(0) || !digit(1) || digit(2) || rest[0] > '5') return -1;
  cursor.rest.remove_prefix(2);
  return (rest[0] - '0') * 10 + (rest[1] - '0');
}

/// "1:30" as hours and minutes, with or without an h behind it; in seconds as minutes and seconds.
Parsed read_colon_duration(Cursor cursor, double hours, double sign, Unit unit) {
  const int minutes = minute_digits(cursor);
  cursor.skip_blanks();
  if (!cursor.take("h")) cursor.take("H");
  if (minutes < 0 || !cursor.done() || hours != std::floor(hours))
    return refuse("A duration with a colon is hours and two digits of minutes, such as 1:30.");
  const double total_min = hours * 60 + minutes;
  return finish(sign * (unit == Unit::hour ? total_min / 60 : total_min));
}

Parsed read_amount(std::string_view text, Unit unit) {
  Cursor cursor{text};
  const double sign = take_minus(cursor) ? -1 : 1;
  if (measure_of(unit) == Measure::signal && (cursor.peek() == 'S' || cursor.peek() == 's') &&
      cursor.rest.size() > 1 && is_digit(cursor.rest[1]))
    cursor.rest.remove_prefix(1);  // "S7"
  double total = 0;
  const UnitChoice* larger = nullptr;
  do {
    double number = 0;
    const std::string_view before = cursor.rest;
    if (!cursor.number(number)) {
      return refuse(larger ? quoted(before) + " is left over." : "There is no number in " + quoted(text) + ".");
    }
    if (!std::isfinite(number)) return refuse("That number is too large.");
    if (!larger && measure_of(unit) == Measure::time && cursor.take(":"))
      return read_colon_duration(cursor, number, sign, unit);
    if (cursor.peek() == '.' || cursor.peek() == ',') return refuse(group_trouble(text));
    cursor.skip_blanks();
    const Below* below = larger ? find_below(larger->symbol) : nullptr;
    std::string_view spelling = cursor.rest;
    if (unit == Unit::none && spelling == ":1") {
      cursor.rest = {};
    } else {
      spelling = cursor.word();
    }
    if (spelling.empty() && !cursor.done()) return refuse(group_trouble(text));
    std::string trouble;
    const UnitChoice* choice = &unit_choices(unit)[0];
    if (!spelling.empty()) {
      choice = find_choice(spelling, unit, trouble);
    } else if (larger) {
      choice = below && below->bare ? find_choice(below->smaller, unit, trouble) : nullptr;
    }
    if (larger && (!choice || !below || choice->symbol != below->smaller))
      return refuse(quoted(before) + " does not fit behind " + std::string(larger->symbol) + ".");
    if (!choice) return refuse(trouble);
    if (below && !(number < below->many))
      return refuse(std::string(below->smaller) + " behind " + std::string(below->larger) + " must be less than " +
                    exact_text(below->many) + ".");
    cursor.skip_blanks();
    if (!cursor.done() && number != std::floor(number))
      return refuse("Only the last number of " + quoted(text) + " may have decimals.");
    total += to_base(*choice, sign * number);
    larger = choice;
  } while (!cursor.done());
  return finish(total);
}

/// "19:20", "25:30", "19h20", "7 pm", "01:30 next day", or bare minutes from midnight.
Parsed read_clock(std::string_view text) {
  for (const std::string_view next : {" the next day", " next day"}) {
    if (!text.ends_with(next)) continue;
    Parsed first = read_clock(text.substr(0, text.size() - next.size()));
    if (!first.ok()) return first;
    constexpr double kDayMin = 1440;
    if (first.value >= kDayMin || text.find(':') > text.size())
      return refuse(quoted(text) + " is not understood. A time of the next day is written as 01:30 next day.");
    return finish(first.value + kDayMin);
  }
  constexpr std::string_view kHow = "A time of day is written as 19:20, from 0:00 to 48:00.";
  Cursor cursor{text};
  double number = 0;
  if (!is_digit(text[0]) || !cursor.number(number))
    return refuse(quoted(text) + " is not understood. " + std::string(kHow));
  cursor.skip_blanks();
  if (cursor.done() || cursor.rest == "min") {
    // 7.05 is five past seven to some and seven minutes to others
    if (text.find_first_of(".,") < text.size())
      return refuse(quoted(text) + " can be read two ways. " + std::string(kHow));
    if (!(number <= kMostClockMin)) return refuse(std::string(kHow));
    return finish(number);
  }
  double minutes = 0;
  const bool colon = cursor.take(":"), letter = !colon && (cursor.take("h") || cursor.take("H"));
  if (letter) cursor.skip_blanks();
  if (colon || (letter && !cursor.done())) minutes = minute_digits(cursor);
  cursor.skip_blanks();
  if (!cursor.done() && !letter) {
    const std::string_view half = cursor.word();
    const bool am = half == "am" || half == "AM" || half == "a.m",
               pm = half == "pm" || half == "PM" || half == "p.m";
    if (!(am || pm) || number < 1 || number > 12)
      return refuse(quoted(text) + " is not understood. " + std::string(kHow));
    number = (number < 12 ? number : 0) + (pm ? 12 : 0);
  }
  const double total_min = number * 60 + minutes;
  if (minutes < 0 || !cursor.done() || number != std::floor(number) || !(total_min <= kMostClockMin))
    return refuse(quoted(text) + " is not understood. " + std::string(kHow));
  return finish(total_min);
}

}  // namespace

Parsed read_quantity(std::string_view text, Unit unit) {
  if (unit == Unit::text) return refuse("Words are wanted here, not a number.");
  if (text.size() > kMostBytes) return refuse("That is longer than 64 bytes.");
  Cursor cursor{text};
  cursor.skip_blanks();
  text = cursor.rest;
  for (std::size_t end = text.size(); end > 0;) {  // blanks at the end, which may be two or three bytes long
    --end;
    if ((static_cast<unsigned char>(text[end]) & 0xC0u) == 0x80u) continue;
    if (blank_bytes(text.substr(end)) != text.size() - end) break;
    text = text.substr(0, end);
  }
  if (text.empty()) return refuse("Nothing is written here.");
  return unit == Unit::clock_minute ? read_clock(text) : read_amount(text, unit);
}

}  // namespace gs
