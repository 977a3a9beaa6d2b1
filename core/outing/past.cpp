#include "core/outing/past.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "core/outing/csv.h"
#include "core/outing/outing_day.h"
#include "core/outing/outlook.h"
#include "core/outing/quantity.h"
#include "core/pace/prior.h"

namespace gs {
namespace {

constexpr std::size_t kEnoughAlike = 3;
constexpr double kLeastMin = 1;  // a shorter time on the air says nothing of a pace

double to_tenth(double value) { return std::round(value * 10) / 10; }

/// The battery at leave-by as it was planned and as it was read; nothing where not known.
void note_battery(const Plan& plan, PastOuting& past) {
  Plan planned = plan;
  planned.happened = {};
  const double left_pct = evaluate(planned)[R::power_left_at_leave_by_pct].value;
  if (left_pct >= 0 && left_pct <= 100) past.left_planned_pct = std::round(left_pct);
  const Measured* read = last_measured(plan.happened, reading(R::power_left_at_leave_by_pct).key);
  const double* pct = read ? std::get_if<double>(&read->value) : nullptr;
  if (pct && *pct >= 0 && *pct <= 100) past.left_pct = *pct;
}

bool says_something(const PastOuting& one) { return one.on_air_min >= kLeastMin; }

}  // namespace

std::optional<PastOuting> past_of(const Outing& outing, const Now& now) {
  const Plan plan = resolve(outing);
  const OutingDay day = day_of(plan, now);
  if (day.phase != Phase::after || !(day.past_min >= kLeastMin)) return {};
  PastOuting past;
  past.name = outing.name;
  past.date = outing.date;
  past.contacts = contacts_in(outing.happened);
  past.on_air_min = std::min(to_tenth(day.past_min), kMostPastMin);
  past.target = plan[L::pace_target];
  const double set_up_min = day.starts_min - stay_of(plan).arrive_min;
  if (set_up_min > 0 && set_up_min <= lever(L::clock_set_up_min).most) past.set_up_min = std::round(set_up_min);
  if (plan.has(L::antenna_kind)) past.antenna = option_key(L::antenna_kind, plan[L::antenna_kind]);
  past.started_utc_s = outing.happened.on_air.front().from_utc_s;
  note_battery(plan, past);
  return past;
}

bool is_same_outing(const PastOuting& one, const PastOuting& other) {
  if (one.started_utc_s && other.started_utc_s) return *one.started_utc_s == *other.started_utc_s;
  return one.name == other.name && one.date == other.date;
}

std::vector<PastOuting> with_past(std::vector<PastOuting> past, PastOuting outing) {
  std::erase_if(past, [&](const PastOuting& one) { return is_same_outing(one, outing); });
  const auto at =
      std::upper_bound(past.begin(), past.end(), outing, [](const PastOuting& one, const PastOuting& other) {
        return std::pair(std::string_view(one.date), one.started_utc_s.value_or(0)) <
               std::pair(std::string_view(other.date), other.started_utc_s.value_or(0));
      });
  past.insert(at, std::move(outing));
  if (past.size() > kMostPast) past.erase(past.begin());
  return past;
}

std::vector<PastOuting> past_before(const std::vector<PastOuting>& past, const Outing& outing) {
  if (outing.happened.on_air.empty()) return past;
  const double started_utc_s = outing.happened.on_air.front().from_utc_s;
  std::vector<PastOuting> before;
  std::copy_if(past.begin(), past.end(), std::back_inserter(before), [&](const PastOuting& one) {
    return one.started_utc_s ? *one.started_utc_s < started_utc_s : one.date < outing.date;
  });
  return before;
}

pace::Pace usual_pace_from(const std::vector<PastOuting>& past, pace::Pace guess, std::string_view antenna) {
  std::vector<pace::Counted> all, alike;
  for (const PastOuting& one : past) {
    all.push_back({one.contacts, one.on_air_min});
    if (!antenna.empty() && one.antenna == antenna) alike.push_back(all.back());
  }
  return pace::prior_from(guess, alike.size() >= kEnoughAlike ? alike : all);
}

std::vector<OwnPace> own_paces(const std::vector<PastOuting>& past) {
  std::vector<OwnPace> paces;
  const auto add = [&](std::string_view antenna, long count) {
    const pace::Pace usual = usual_pace_from(past, pace::kGuess, antenna);
    const auto held = [](L id, double value) { return std::clamp(value, lever(id).least, lever(id).most); };
    paces.push_back({std::string(antenna), held(L::pace_per_hour, to_tenth(usual.per_hour)),
                     held(L::pace_spread_pct, std::round(usual.spread_pct)), int(count)});
  };
  const auto all = std::count_if(past.begin(), past.end(), says_something);
  if (all == 0) return paces;
  add("", all);
  for (const Option& kind : lever(L::antenna_kind).options()) {
    const auto alike = std::count_if(past.begin(), past.end(), [&](const PastOuting& one) {
      return says_something(one) && one.antenna == kind.key;
    });
    if (std::size_t(alike) >= kEnoughAlike) add(kind.key, alike);
  }
  return paces;
}

std::string say_pace_from(const Plan& plan, const Style& style) {
  const std::string pace =
      "The pace, " + say_lever(lever(L::pace_per_hour), plan[L::pace_per_hour], style) + " an hour, is ";
  if (plan.from[std::size_t(L::pace_per_hour)] == From::yours) return pace + "as you set it.";
  for (const auto& [id, value] : plan.habits.usual)
    if (id == L::pace_per_hour) return pace + "what you adopted after an outing.";
  const PlanPace* own = own_pace(plan);
  if (!own) return pace + "a guess until outings of your own say more.";
  return pace + "from your " + (own->outings == 1 ? "one outing" : std::to_string(own->outings) + " outings") +
         (std::isnan(own->antenna) ? "." : " with this antenna.");
}

std::string history_csv(const std::vector<PastOuting>& outings) {
  std::string text =
      "date,name,contacts,on_air_min,per_hour,target,set_up_min,antenna,left_planned_pct,left_pct\r\n";
  const auto tenth = [](double value) { return exact_text(to_tenth(value)); };
  const auto maybe = [](const std::optional<double>& value) { return value ? exact_text(*value) : std::string{}; };
  for (const PastOuting& one : outings)
    text += one.date + "," + csv_cell(one.name) + "," + exact_text(one.contacts) + "," + tenth(one.on_air_min) +
            "," + tenth(one.contacts * 60 / one.on_air_min) + "," + exact_text(one.target) + "," +
            (one.set_up_min > 0 ? tenth(one.set_up_min) : "") + "," + csv_cell(one.antenna) + "," +
            maybe(one.left_planned_pct) + "," + maybe(one.left_pct) + "\r\n";
  return text;
}

}  // namespace gs
