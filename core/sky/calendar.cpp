#include "core/sky/calendar.h"

#include <cstdio>

namespace gs::sky {
namespace {

constexpr int kJulianDayOf2000 = 2451545;  // the day whose noon is JD 2451545.0 = 1 January 2000, 12 h

bool is_leap(int year) { return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0); }

int days_in(int year, int month) {
  constexpr int kDays[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return month == 2 && is_leap(year) ? 29 : kDays[month - 1];
}

/// Whole number of `count` digits, or -1.
int digits(std::string_view text, std::size_t at, std::size_t count) {
  int value = 0;
  for (std::size_t i = at; i < at + count; ++i) {
    if (text[i] < '0' || text[i] > '9') return -1;
    value = value * 10 + (text[i] - '0');
  }
  return value;
}

}  // namespace

bool is_date(Date date) {
  return date.year >= 1900 && date.year <= 2100 && date.month >= 1 && date.month <= 12 && date.day >= 1 &&
         date.day <= days_in(date.year, date.month);
}

int day_number(Date date) {
  const int before_march = (date.month - 14) / 12;  // -1 in January and February, else 0
  const int years = date.year + 4800 + before_march, months = date.month - 2 - 12 * before_march;
  const int julian_day = 1461 * years / 4 + 367 * months / 12 - 3 * ((years + 100) / 100) / 4 + date.day - 32075;
  return julian_day - kJulianDayOf2000;
}

Date date_of(int number) {
  int l = number + kJulianDayOf2000 + 68569;
  const int n = 4 * l / 146097;
  l -= (146097 * n + 3) / 4;
  const int i = 4000 * (l + 1) / 1461001;
  l -= 1461 * i / 4 - 31;
  const int j = 80 * l / 2447;
  return {100 * (n - 49) + i + j / 11, j + 2 - 12 * (j / 11), l - 2447 * j / 80};
}

std::optional<Date> read_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const Date date{digits(text, 0, 4), digits(text, 5, 2), digits(text, 8, 2)};
  return is_date(date) ? std::optional(date) : std::nullopt;
}

std::string date_text(Date date) {
  char text[48];
  std::snprintf(text, sizeof text, "%04d-%02d-%02d", date.year, date.month, date.day);
  return text;
}

std::string day_words(Date date) {
  // day 0, 1 January 2000, was a Saturday
  constexpr const char* kDays[] = {"Sat", "Sun", "Mon", "Tue", "Wed", "Thu", "Fri"};
  constexpr const char* kMonths[] = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                     "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
  const int weekday = (day_number(date) % 7 + 7) % 7;
  return std::string(kDays[weekday]) + " " + std::to_string(date.day) + " " + kMonths[date.month - 1];
}

}  // namespace gs::sky
