#include "core/pace/utc.h"

#include <chrono>
#include <cmath>
#include <cstdint>

namespace gs::pace {
namespace {

constexpr double kDayS = 86400;
constexpr double kFirstS = 946684800, kEndS = 4102444800;  // 2000-01-01 and 2100-01-01

/// The number that so many digits make, or -1.
int digits(std::string_view text, std::size_t from, std::size_t count) {
  if (text.size() < from + count) return -1;
  int value = 0;
  for (std::size_t i = from; i < from + count; ++i) {
    if (text[i] < '0' || text[i] > '9') return -1;
    value = value * 10 + (text[i] - '0');
  }
  return value;
}

/// "2026-06-13" at the start of a text as days since 1970.
std::optional<int> read_days(std::string_view text) {
  const int year = digits(text, 0, 4), month = digits(text, 5, 2), day = digits(text, 8, 2);
  if (text.size() < 10 || text[4] != '-' || text[7] != '-' || year < 0 || month < 0 || day < 0) return {};
  const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(unsigned(month)),
                                         std::chrono::day(unsigned(day))};
  if (!date.ok()) return {};
  return std::chrono::sys_days(date).time_since_epoch().count();
}

/// Milliseconds from the digits behind a point, the rest rounded off; `at` moves past them. -1 where none stands.
int read_fraction_ms(std::string_view text, std::size_t& at) {
  double ms = 0, place = 100;
  const std::size_t start = at;
  for (; at < text.size() && text[at] >= '0' && text[at] <= '9'; ++at, place /= 10) ms += place * (text[at] - '0');
  return at > start ? int(std::lround(ms)) : -1;
}

/// "Z" or "+02:00" up to the end of the text, in minutes.
std::optional<int> read_offset_min(std::string_view text) {
  if (text == "Z" || text == "z") return 0;
  if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':') return {};
  const int hours = digits(text, 1, 2), minutes = digits(text, 4, 2);
  if (hours < 0 || hours > 23 || minutes < 0 || minutes > 59) return {};
  return (text[0] == '-' ? -1 : 1) * (hours * 60 + minutes);
}

std::string two(std::int64_t number) { return {char('0' + number / 10 % 10), char('0' + number % 10)}; }

}  // namespace

bool is_instant(double utc_s) { return utc_s >= kFirstS && utc_s < kEndS; }

double to_millisecond(double utc_s) { return std::round(utc_s * 1000) / 1000; }

std::optional<double> read_utc(std::string_view text) {
  const std::optional<int> days = read_days(text);
  if (!days || text.size() < 20 || (text[10] != 'T' && text[10] != 't') || text[13] != ':' || text[16] != ':')
    return {};
  const int hour = digits(text, 11, 2), minute = digits(text, 14, 2), second = digits(text, 17, 2);
  if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 59) return {};
  std::size_t at = 19;
  int ms = 0;
  if (text[at] == '.') ms = read_fraction_ms(text, ++at);
  const std::optional<int> offset_min = read_offset_min(text.substr(at));
  if (ms < 0 || !offset_min) return {};
  const std::int64_t whole = std::int64_t(*days) * 86400 + hour * 3600 + minute * 60 + second - *offset_min * 60;
  const double utc_s = double(whole * 1000 + ms) / 1000;
  if (!is_instant(utc_s)) return {};
  return utc_s;
}

std::string utc_text(double utc_s) {
  if (!is_instant(utc_s) || !is_instant(to_millisecond(utc_s))) return {};
  const std::int64_t all_ms = std::llround(utc_s * 1000), seconds = all_ms / 1000, ms = all_ms % 1000;
  const std::chrono::year_month_day date{std::chrono::sys_days(std::chrono::days(seconds / 86400))};
  std::string text = std::to_string(int(date.year())) + "-" + two(unsigned(date.month())) + "-" +
                     two(unsigned(date.day())) + "T" + two(seconds / 3600 % 24) + ":" + two(seconds / 60 % 60) +
                     ":" + two(seconds % 60);
  if (ms > 0) text += "." + std::to_string(ms + 1000).substr(1);
  return text + "Z";
}

std::string clock_text(double utc_s, bool seconds) {
  if (!is_instant(utc_s)) return {};
  const std::int64_t whole = std::int64_t(utc_s);
  return two(whole / 3600 % 24) + ":" + two(whole / 60 % 60) + (seconds ? ":" + two(whole % 60) : "");
}

double utc_day(double utc_s) { return std::floor(utc_s / kDayS); }

}  // namespace gs::pace
