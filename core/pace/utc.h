// Instants of UTC as numbers and as text. No clock is read here.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace gs::pace {

// An instant: seconds since 1970-01-01 00:00:00 UTC without leap seconds, as RFC 3339 texts and the clocks of
// machines count them. Ours lie from the year 2000 to before 2100.
bool is_instant(double utc_s);

/// To the nearest millisecond, which a double holds exactly enough to come back from text to the same bits.
double to_millisecond(double utc_s);

/// Reads "2026-06-13T22:09:14.250Z" (RFC 3339, section 5.6): Z or an offset, seconds with or without fraction; no
/// leap second. Nothing for any other form, a day that the month has not, or outside our years.
std::optional<double> read_utc(std::string_view text);
/// "2026-06-13T22:09:14.250Z"; the fraction is left out where it is 0. "" where it is no instant of ours.
std::string utc_text(double utc_s);
/// "22:09:14" and "22:09", cut and not rounded: a clock shows a second when it has come.
std::string clock_text(double utc_s, bool seconds);

/// The UTC day of an instant, counted from 1970-01-01.
double utc_day(double utc_s);

}  // namespace gs::pace
