#include "core/outing/happened.h"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

#include "core/outing/plan.h"
#include "core/pace/utc.h"

namespace gs {
namespace {

bool add(Happened& happened, Tap tap) {
  tap.at_utc_s = pace::to_millisecond(tap.at_utc_s);
  if (!pace::is_instant(tap.at_utc_s) || happened.tally.size() >= kMostTaps) return false;
  happened.tally.push_back(std::move(tap));
  return true;
}

}  // namespace

int contacts_in(const Happened& happened) {
  int count = 0;
  for (const Tap& tap : happened.tally) count += tap.count;
  return count;
}

bool add_contact(Happened& happened, double utc_s) { return add(happened, {.at_utc_s = utc_s}); }

bool add_forgotten(Happened& happened, double utc_s, int count) {
  if (count < 1 || count > kMostForgotten) return false;
  return add(happened, {.at_utc_s = utc_s, .count = count, .forgotten = true});
}

bool take_back(Happened& happened) {
  if (happened.tally.empty()) return false;
  happened.tally.pop_back();
  return true;
}

bool is_on_air(const Happened& happened) { return !happened.on_air.empty() && !happened.on_air.back().until_utc_s; }

bool start_on_air(Happened& happened, double utc_s) {
  utc_s = pace::to_millisecond(utc_s);
  if (!pace::is_instant(utc_s) || is_on_air(happened) || happened.on_air.size() >= kMostOnAir) return false;
  if (!happened.on_air.empty()) utc_s = std::max(utc_s, *happened.on_air.back().until_utc_s);
  happened.on_air.push_back({utc_s, {}});
  return true;
}

bool end_on_air(Happened& happened, double utc_s) {
  utc_s = pace::to_millisecond(utc_s);
  if (!pace::is_instant(utc_s) || !is_on_air(happened)) return false;
  utc_s = std::max(utc_s, happened.on_air.back().from_utc_s);
  if (!happened.tally.empty()) utc_s = std::max(utc_s, happened.tally.back().at_utc_s);
  happened.on_air.back().until_utc_s = utc_s;
  return true;
}

std::string measure(Happened& happened, std::string key, Value value, std::optional<double> utc_s) {
  const L id = find_lever(key);
  if (std::holds_alternative<std::monostate>(value)) return "A value is wanted";
  if (is_lever(id)) {
    if (std::string why = refusal(id, value); !why.empty()) return why;
  } else if (find_reading(key) != R::count) {
    const double* number = std::get_if<double>(&value);
    if (!number || !std::isfinite(*number)) return "A number is wanted";
  } else {
    return "Nothing that this version knows has the key " + key;
  }
  if (utc_s) {
    utc_s = pace::to_millisecond(*utc_s);
    if (!pace::is_instant(*utc_s)) return "The time is not one of our years";
  }
  if (happened.measured.size() >= kMostMeasured) return "The list of what was measured is full";
  happened.measured.push_back({std::move(key), std::move(value), utc_s, {}});
  return {};
}

const Measured* last_measured(const Happened& happened, std::string_view key) {
  const auto at = std::find_if(happened.measured.rbegin(), happened.measured.rend(),
                               [key](const Measured& row) { return row.key == key; });
  return at == happened.measured.rend() ? nullptr : &*at;
}

}  // namespace gs
