#include "core/outing/past.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/outing/outing_day.h"
#include "core/outing/quantity.h"
#include "core/pace/prior.h"

namespace gs {
namespace {

constexpr std::size_t kEnoughAlike = 3;

/// RFC 4180: quotes doubled, the whole in quotes where it holds a comma, a quote or a line break.
std::string csv_field(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (const char c : text) quoted.append(c == '"' ? 2 : 1, c);
  return quoted + '"';
}

}  // namespace

std::optional<PastOuting> past_of(const Outing& outing, const Now& now) {
  const Plan plan = resolve(outing);
  const OutingDay day = day_of(plan, now);
  if (day.phase != Phase::after || !(day.past_min >= 1)) return {};
  PastOuting past;
  past.name = outing.name;
  past.date = outing.date;
  past.contacts = contacts_in(outing.happened);
  past.on_air_min = std::min(std::round(day.past_min * 10) / 10, kMostPastMin);
  past.target = plan[L::pace_target];
  const double set_up_min = day.starts_min - plan[L::clock_arrive_min];
  if (set_up_min > 0 && set_up_min <= lever(L::clock_set_up_min).most) past.set_up_min = std::round(set_up_min);
  if (plan.has(L::antenna_kind)) past.antenna = option_key(L::antenna_kind, plan[L::antenna_kind]);
  return past;
}

std::vector<PastOuting> with_past(std::vector<PastOuting> past, PastOuting outing) {
  std::erase_if(past, [&](const PastOuting& one) { return one.name == outing.name && one.date == outing.date; });
  const auto at =
      std::upper_bound(past.begin(), past.end(), outing,
                       [](const PastOuting& one, const PastOuting& other) { return one.date < other.date; });
  past.insert(at, std::move(outing));
  if (past.size() > kMostPast) past.erase(past.begin());
  return past;
}

pace::Pace usual_pace_from(const std::vector<PastOuting>& past, pace::Pace guess, std::string_view antenna) {
  std::vector<pace::Counted> all, alike;
  for (const PastOuting& one : past) {
    all.push_back({one.contacts, one.on_air_min});
    if (!antenna.empty() && one.antenna == antenna) alike.push_back(all.back());
  }
  return pace::prior_from(guess, alike.size() >= kEnoughAlike ? alike : all);
}

std::string history_csv(const std::vector<PastOuting>& outings) {
  std::string text = "date,name,contacts,on_air_min,per_hour,target,set_up_min,antenna\r\n";
  const auto tenth = [](double value) { return exact_text(std::round(value * 10) / 10); };
  for (const PastOuting& one : outings)
    text += one.date + "," + csv_field(one.name) + "," + exact_text(one.contacts) + "," + tenth(one.on_air_min) +
            "," + tenth(one.contacts * 60 / one.on_air_min) + "," + exact_text(one.target) + "," +
            (one.set_up_min > 0 ? tenth(one.set_up_min) : "") + "," + csv_field(one.antenna) + "\r\n";
  return text;
}

}  // namespace gs
