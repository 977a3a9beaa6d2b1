// One's own earlier outings: a short list beside the outings themselves, from which the usual pace comes.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/outing/now.h"
#include "core/outing/outing.h"
#include "core/outing/plan.h"
#include "core/pace/pace.h"

namespace gs {

/// What is kept of an outing. Counts and minutes only.
struct PastOuting {
  std::string name, date;  // ISO 8601, or ""
  double contacts = 0, on_air_min = 0, target = 0;
  double set_up_min = 0;  // as it took; 0 where not known
  std::string antenna;    // option's key, or ""
  std::string kept = {};  // members of its row that this version does not know, a compact JSON object, or ""
  std::optional<double> started_utc_s = {};  // when it was first on the air: what tells it from all others
  std::optional<double> left_planned_pct = {}, left_pct = {};  // battery at leave-by: planned, and as measured
  bool operator==(const PastOuting&) const = default;
};
inline constexpr std::size_t kMostPast = 2000;
inline constexpr double kMostPastContacts = 100'000, kMostPastMin = 10'000;

/// The row of an outing that was on the air and has ended; nothing before, and nothing for less than a minute.
std::optional<PastOuting> past_of(const Outing& outing, const Now& now);

/// Whether two rows tell of one outing: by their start, where one is without it by name and date.
bool is_same_outing(const PastOuting& one, const PastOuting& other);

/// The list with this one in it, in order of date; another row of the same outing is replaced, and of more than
/// kMostPast the oldest is left out.
std::vector<PastOuting> with_past(std::vector<PastOuting> past, PastOuting outing);

/// What an outing can have been planned by: the rows that began before it was on the air; all of them where it was
/// not yet.
std::vector<PastOuting> past_before(const std::vector<PastOuting>& past, const Outing& outing);

/// The usual pace: the guess where there is none, else what they say; pace/prior.h. Outings with the same antenna
/// count alone where there are three of them or more.
pace::Pace usual_pace_from(const std::vector<PastOuting>& past, pace::Pace guess, std::string_view antenna);

/// The same for every kind of antenna that counts alone, and first for all outings together, from pace::kGuess;
/// to what the levers can hold. Empty where no outing says anything.
std::vector<OwnPace> own_paces(const std::vector<PastOuting>& past);

/// Where the plan's usual pace comes from, as a sentence of its own: "The pace, 8.4 an hour, is from your 3
/// outings." A guess, an adopted value and one that was set here say so.
std::string say_pace_from(const Plan& plan, const Style& style);

/// {"groundsheet": 1, "kind": "history", "outings": [{"name", "date", "contacts", "on_air_min", "target",
/// "set_up_min", "antenna", "started", "left_planned_pct", "left_pct"}]} both ways, with the limits and the manners
/// of outing files (archive.h): what cannot be used is noted and kept. read_history(write_history(h)) gives h.
struct LoadedHistory {
  std::vector<PastOuting> outings;
  std::string kept;  // as Outing::kept
  std::string refusal;
  std::vector<std::string> notes;
  bool newer = false;
};
LoadedHistory read_history(std::string_view text);
std::string write_history(const std::vector<PastOuting>& outings, std::string_view kept = {});

/// "date,name,contacts,on_air_min,per_hour,target,set_up_min,antenna,left_planned_pct,left_pct", a row each, RFC
/// 4180. What is not known is empty.
std::string history_csv(const std::vector<PastOuting>& outings);

}  // namespace gs
