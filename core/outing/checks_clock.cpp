// Small questions about the clock and the UTC day.
#include <algorithm>
#include <cmath>

#include "core/outing/checks_sky.h"
#include "core/pace/clock.h"
namespace gs::sky_rows {
namespace {

constexpr Link kLink = Link::clock;
constexpr double kMostLocalMin = 2880;
constexpr std::string_view kOwn = "docs/methods/pace";

constexpr CheckInput clock_input(std::string_view key, std::string_view name, std::string_view source) {
  return input(key, name, kLink, Unit::clock_minute, 0, 0, kMostLocalMin, 5, source);
}
constexpr CheckInput kOffset = input("utc_offset_min", "UTC offset", kLink, Unit::minute, 0, -720, 840, 15,
                                     "local clock before UTC; UTC-4 is -4 h; zones run from -12 to +14 h");

// ---- How long am I on the air? ----

const CheckInput kStayInputs[] = {
    clock_input("arrive_min", "Arrive", "local time"),
    clock_input("leave_by_min", "Leave by", "local time; past midnight it counts on: 25:00"),
    input("set_up_min", "Set-up", kLink, Unit::minute, 0, 0, 480, 5,
          "usual value: a wire in a tree takes 5 to 10 min; common practice", usually<10>),
    input("pack_down_min", "Pack-down", kLink, Unit::minute, 0, 0, 480, 5,
          "usual value: as long as the set-up; common practice", usually<10>)};
const CheckResult kStayResults[] = {
    result("on_air_min", "Time on the air", kLink, Unit::minute, 0, Better::more,
           "leave by, less pack-down, less arrival and set-up"),
    result("starts_min", "First call at", kLink, Unit::clock_minute, 0, Better::neither, "arrival and set-up"),
    result("pack_by_min", "Start packing at", kLink, Unit::clock_minute, 0, Better::neither,
           "leave by, less pack-down"),
    result("work_pct", "Share of the stay that is work", kLink, Unit::percent, 0, Better::less,
           "set-up and pack-down over the stay")};
std::string stay(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kStayInputs, in); !trouble.empty()) return trouble;
  const pace::OnAir air = pace::on_air({in[0], in[1], in[2], in[3]});
  if (air.trouble == pace::NoTime::leaves_first)
    return "leave by is not after arrival: past midnight it counts on, 01:00 is 25:00";
  out[0] = air.minutes;
  out[1] = air.starts_min;
  out[2] = air.pack_by_min;
  out[3] = 100 * (in[2] + in[3]) / (in[1] - in[0]);
  if (air.trouble == pace::NoTime::work_fills_it)
    return "set-up and pack-down fill the stay: " + say_quantity(air.short_by_min, Unit::minute, 0) +
           " too little for any time on the air";
  return {};
}

// ---- What is that in UTC? ----

const CheckInput kUtcInputs[] = {clock_input("local_min", "Local time", "the clock on the table"), kOffset};
const CheckResult kUtcResults[] = {
    result("utc_min", "UTC", kLink, Unit::clock_minute, 0, Better::neither, "local time less the offset"),
    result("day_shift", "Days after the local date", kLink, Unit::none, 0, Better::neither,
           "-1 is the day before, 1 the day after"),
    result("turns_at_min", "UTC day turns next at, local", kLink, Unit::clock_minute, 0, Better::neither,
           "00:00 UTC by the local clock")};
std::string utc(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kUtcInputs, in); !trouble.empty()) return trouble;
  const pace::UtcTime then = pace::utc_of(in[0], in[1]);
  out[0] = then.minute_of_day;
  out[1] = then.day_shift;
  out[2] = pace::local_of({0, then.day_shift + 1}, in[1]);
  return {};
}

// ---- Which UTC day do they count for? ----

const CheckInput kDaysInputs[] = {
    kOffset,
    clock_input("first_until_min", "First contacts until", "local time of the last of them"),
    input("first_contacts", "First contacts", kLink, Unit::none, 0, 0, 10000, 1, "the log, duplicates left out"),
    clock_input("more_from_min", "More contacts from", "local time of the first of them; not before the others"),
    input("more_contacts", "More contacts", kLink, Unit::none, 0, 0, 10000, 1, "the log, duplicates left out"),
    input("minimum", "Minimum on one day", kLink, Unit::none, 0, 1, 1000, 1,
          "usual value: ten, the common minimum in parks; summits four", usually<10>)};
const CheckResult kDaysResults[] = {result("first_day", "On the first UTC day", kLink, Unit::none, 0, Better::more,
                                           "a contact belongs to the UTC date at its start"),
                                    result("next_day", "On the next UTC day", kLink, Unit::none, 0, Better::more,
                                           "a contact belongs to the UTC date at its start"),
                                    result("short_of_minimum", "Short of the minimum on the better day", kLink,
                                           Unit::none, 0, Better::less, "minimum less the better day"),
                                    result("short_by_start", "Short where the outing counts by its start", kLink,
                                           Unit::none, 0, Better::less, "minimum less all contacts")};
std::string days(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kDaysInputs, in); !trouble.empty()) return trouble;
  if (in[3] < in[1]) return "the later contacts begin before the first ones end";
  const bool turns = pace::utc_of(in[3], in[0]).day_shift > pace::utc_of(in[1], in[0]).day_shift;
  const double all = in[2] + in[4];
  out[0] = turns ? in[2] : all;
  out[1] = turns ? in[4] : 0;
  out[2] = std::max(0.0, in[5] - std::max(out[0], out[1]));
  out[3] = std::max(0.0, in[5] - all);
  return out[2] > 0 && out[3] <= 0 ? "rules differ: look up whether UTC days count, or the outing by its start"
                                   : "";
}

const Check kChecks[] = {
    {"clock.on_air", "How long am I on the air?", kLink, kStayInputs, kStayResults,
     "Time your own set-up once, from the car door to the first call.", kOwn, stay},
    {"clock.utc", "What is that in UTC?", kLink, kUtcInputs, kUtcResults,
     "The offset of the place on that date, summer time included.", kOwn, utc},
    {"clock.utc_days", "Which UTC day do my contacts count for?", kLink, kDaysInputs, kDaysResults,
     "Split the log where there was a pause, or at 00:00 UTC.", "common practice; docs/methods/pace", days},
};

}  // namespace

std::span<const Check> clock_part() { return kChecks; }

}  // namespace gs::sky_rows
