// Small questions about contacts in a time.
#include <algorithm>
#include <cmath>

#include "core/outing/checks_sky.h"
#include "core/pace/pace.h"
namespace gs::sky_rows {
namespace {

constexpr Link kLink = Link::contacts;
constexpr std::string_view kOwn = "gamma-Poisson; docs/methods/pace";
constexpr double kMostPerHour = 600;

constexpr CheckInput kPerHour = input("per_hour", "Usual pace, contacts an hour", kLink, Unit::none, 1, 0.1,
                                      kMostPerHour, 1, "one's own count; operating time, not time on site");
constexpr CheckInput kSpread =
    input("spread_pct", "Pace spread", kLink, Unit::percent, 0, 0, pace::kMostSpreadPct, 5,
          "usual value: a guess of common practice, bands open and close", usually<40>);
constexpr CheckInput kTarget = input("target", "Target", kLink, Unit::none, 0, 0, 5000, 1,
                                     "usual value: ten, the common minimum in parks", usually<10>);
constexpr CheckInput kContacts =
    input("contacts", "Contacts counted", kLink, Unit::none, 0, 0, 10000, 1, "the log, duplicates left out");
constexpr CheckInput kMinutes =
    input("time_min", "In", kLink, Unit::minute, 0, 0.1, 10000, 5, "operating time, not time on site");

// ---- Will I make my target? ----

const CheckInput kTargetInputs[] = {
    kPerHour, kSpread, input("time_min", "Time on the air", kLink, Unit::minute, 0, 0, 2880, 5, "the clock's"),
    kTarget,
    input("sure_pct", "How sure", kLink, Unit::percent, 0, 1, 99, 1, "usual value: nine times in ten",
          usually<90>)};
const CheckResult kTargetResults[] = {
    result("expected", "Expected contacts", kLink, Unit::none, 1, Better::more, "pace times time"),
    result("chance_pct", "Chance of target", kLink, Unit::percent, 0, Better::more, kOwn, 50, 90),
    result("least", "Eight in ten outings bring at least", kLink, Unit::none, 0, Better::more, kOwn),
    result("most", "and at most", kLink, Unit::none, 0, Better::more, kOwn),
    result("sure_min", "Time to be that sure", kLink, Unit::minute, 0, Better::less, kOwn)};
std::string target(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kTargetInputs, in); !trouble.empty()) return trouble;
  const pace::Pace pace{in[0], in[1]};
  const int wanted = int(std::lround(in[3]));
  out[0] = pace::expected_contacts(pace, in[2]);
  out[1] = 100 * pace::chance_of_target(pace, in[2], wanted);
  if (const auto range = pace::contacts_range(pace, in[2], 0.8)) out[2] = range->least, out[3] = range->most;
  out[4] = pace::minutes_for(pace, wanted, in[4] / 100);
  constexpr double kMonth = 30 * 1440;
  return out[4] > kMonth ? "that sure one is not within a month: the spread allows a pace near nothing" : "";
}

// ---- What do my counts say? ----

const CheckInput kCountedInputs[] = {
    kContacts,
    kMinutes,
    input("more_contacts", "And on another outing", kLink, Unit::none, 0, 0, 10000, 1, "usual value: none",
          usually<0>),
    input("more_min", "In", kLink, Unit::minute, 0, 0, 10000, 5, "usual value: none", usually<0>),
    kTarget,
    input("within_min", "Within", kLink, Unit::minute, 0, 1, 2880, 5, "usual value: an hour", usually<60>)};
const CheckResult kCountedResults[] = {
    result("per_hour", "Pace, contacts an hour", kLink, Unit::none, 1, Better::more,
           "contacts over operating time"),
    result("spread_pct", "What the count leaves open", kLink, Unit::percent, 0, Better::less, "1 / sqrt(contacts)"),
    result("average_min", "Target takes on average", kLink, Unit::minute, 0, Better::less, "target over pace"),
    result("chance_pct", "Chance of target at just this pace", kLink, Unit::percent, 0, Better::more,
           "Poisson; docs/methods/pace"),
    result("open_chance_pct", "Chance, with what the count leaves open", kLink, Unit::percent, 0, Better::more,
           kOwn)};
std::string counted(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kCountedInputs, in); !trouble.empty()) return trouble;
  const double contacts = in[0] + in[2], minutes = in[1] + in[3];
  if (contacts <= 0) return "no contact was counted: that says only that the pace is low";
  const pace::Pace shown = pace::pace_from_count(contacts, minutes);
  const int wanted = int(std::lround(in[4]));
  out[0] = shown.per_hour;
  out[1] = shown.spread_pct;
  out[2] = wanted * 60 / shown.per_hour;
  out[3] = 100 * pace::chance_of_target({shown.per_hour, 0}, in[5], wanted);
  out[4] = 100 * pace::chance_of_target(shown, in[5], wanted);
  return {};
}

// ---- What is my pace now? ----

const CheckInput kUpdateInputs[] = {kPerHour, kSpread, kContacts, kMinutes};
const CheckResult kUpdateResults[] = {result("now_per_hour", "Pace, contacts an hour", kLink, Unit::none, 1,
                                             Better::more, "gamma prior and Poisson count; docs/methods/pace"),
                                      result("now_spread_pct", "Spread left", kLink, Unit::percent, 0, Better::less,
                                             "gamma prior and Poisson count; docs/methods/pace")};
std::string update(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kUpdateInputs, in); !trouble.empty()) return trouble;
  const pace::Pace now = pace::updated({in[0], in[1]}, in[2], in[3]);
  out[0] = now.per_hour;
  out[1] = now.spread_pct;
  return in[1] > 0 ? "" : "a pace without spread is certain: no count can change it";
}

// ---- What does a contact cost? ----

const CheckInput kChargeInputs[] = {
    input("current_a", "Average current", kLink, Unit::ampere, 2, 0, 50, 0.1, "as in the plan"), kPerHour};
const CheckResult kChargeResults[] = {result("mah_per_contact", "Charge per contact, mAh", kLink, Unit::none, 0,
                                             Better::less, "average current over pace")};
std::string charge(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kChargeInputs, in); !trouble.empty()) return trouble;
  out[0] = pace::charge_per_contact_mah(in[0], in[1]);
  return {};
}

const Check kChecks[] = {
    {"pace.target", "Will I make my target?", kLink, kTargetInputs, kTargetResults,
     "Your pace from earlier outings, in operating time.", kOwn, target},
    {"pace.counted", "What do my counts say about next time?", kLink, kCountedInputs, kCountedResults,
     "Count contacts and operating minutes in the log; leave set-up, meals and walks out.", kOwn, counted},
    {"pace.update", "What is my pace now?", kLink, kUpdateInputs, kUpdateResults,
     "Contacts and minutes since the start.", kOwn, update},
    {"pace.charge", "What does a contact cost the battery?", kLink, kChargeInputs, kChargeResults,
     "Average current of the plan, or ampere-hours used over hours.", "docs/methods/pace", charge},
};

}  // namespace

std::span<const Check> pace_part() { return kChecks; }

}  // namespace gs::sky_rows
