// Dates as plain numbers. No clock is read here: the date is always handed in.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace gs::sky {

/// A date of the Gregorian calendar.
struct Date {
  int year = 2000, month = 1, day = 1;
  friend bool operator==(const Date&, const Date&) = default;
};

/// Years 1900 to 2100, in which the solar position is good, and a day that the month has.
bool is_date(Date date);

/// Days since 1 January 2000 (0). Any date of the Gregorian calendar; month and day must exist. Inverse: date_of.
/// Source: Fliegel and Van Flandern's integer formula for the Julian day number, Explanatory Supplement to the
/// Astronomical Almanac (formula from memory, checked against published Julian days).
int day_number(Date date);
Date date_of(int day_number);

/// Reads "2026-06-13"; nothing for any other form or a date that is_date refuses. date_text writes the same form.
std::optional<Date> read_date(std::string_view text);
std::string date_text(Date date);
/// "Sat 13 Jun": for where the year is plain. The date must be one (is_date).
std::string day_words(Date date);

}  // namespace gs::sky
