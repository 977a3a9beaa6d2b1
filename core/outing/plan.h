// The outing with every lever resolved to a number and its provenance: what everything is computed from.
#pragma once

#include <limits>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/outing/levers.h"
#include "core/outing/outing.h"
#include "core/sky/calendar.h"

namespace gs {

/// Where a lever's value comes from.
enum class From : unsigned char { missing, usual, yours };

/// One function of the kit: what all that does this job is worth together.
struct KitFunction {
  std::string name;
  double chance_pct, weight_g;  // that something does it; backups weighed too
  int pieces;
  bool vital;
};

/// What the kit list comes to. `known` is false for an empty list; nothing else counts then.
struct KitSummary {
  bool known = false;
  double chance_pct = 0, weight_g = 0;
  int single_points = 0;
  double volume_l = 0, set_up_min = 0;
  int to_pack = 0, to_charge = 0;  // items not ticked yet
  /// What the list answers of the chain: NaN where no item does. Of several batteries the first feeds the set and
  /// the others are spares; of several feed lines and sets the first counts.
  double battery_ah = std::numeric_limits<double>::quiet_NaN(), spare_ah = std::numeric_limits<double>::quiet_NaN();
  double feedline_m = std::numeric_limits<double>::quiet_NaN(),
         full_power_w = std::numeric_limits<double>::quiet_NaN();
  std::vector<KitFunction> functions;  // in the order of the list
};
KitSummary sum_up(std::span<const kit::Item> items);

struct Plan;

/// OwnPace with its antenna as the option's index; NaN for all antennas together.
struct PlanPace {
  double antenna, per_hour, spread_pct;
  int outings;
};

/// A stint with its levers resolved: the plan as it is while the stint lasts, without stints of its own. Empty
/// where the stint changes nothing or is a break.
struct StintPlan {
  double from_min;
  bool on_air;
  std::vector<Plan> plan;  // none or one
};

/// Numbers by lever in each lever's unit; choices as the option's index. A missing lever's number is NaN.
struct Plan {
  /// What usual values may rest on besides levers.
  struct Habits {
    double licence = std::numeric_limits<double>::quiet_NaN();  // option of rules.class
    std::vector<std::pair<L, double>> usual = {};               // own values that stand in for the table's
    std::vector<PlanPace> paces = {};                           // of earlier outings
    pace::ZoneDay zone = {};                                    // the machine's local clock on the outing's date
  };
  std::vector<double> x;
  std::vector<From> from;
  KitSummary kit{};
  Habits habits{};
  std::optional<sky::Date> date{};  // the outing's; nothing while it has none
  std::vector<StintPlan> stints{};  // by from_min
  Happened happened{};
  double operator[](L id) const { return x[std::size_t(id)]; }
  bool has(L id) const { return from[std::size_t(id)] != From::missing; }
  bool has_all() const { return true; }
  template <class... Rest>
  bool has_all(L first, Rest... rest) const {
    return has(first) && has_all(rest...);
  }
};

/// Fills in usual values. `set` is lever_count() long. Never fails: what is not known is missing.
/// The kit comes first, since usual values may rest on it.
Plan resolve(const Values& set, const Habits& habits = {}, KitSummary kit = {});
/// The same with kit, date, stints and what happened: the plan of an outing.
Plan resolve(const Outing& outing);
/// The pinned plan with kit, date and stints, but nothing that happened: as it was planned. Precondition:
/// outing.pinned.
Plan resolve_pinned(const Outing& outing);

/// What a number lever is when nobody sets it: the person's own usual value, else the table's; NaN where there is
/// none.
double usual_of(const Plan& plan, L id);

/// What earlier outings say of the pace under this plan: those with its kind of antenna where they are told apart,
/// else all of them. Null where there are none.
const PlanPace* own_pace(const Plan& plan);

/// A lever's number as people write it: no more decimals than it needs and its row allows. "15 m", "14.06 MHz".
std::string say_lever(const Lever& row, double value, const Style& style);
int digits_needed(double value, int most);

/// The option's key behind a choice lever's number.
std::string_view option_key(L id, double index);

/// Why this value cannot be set, in words ("Feed line length: 0 to 100 m"), or "" when it can.
std::string refusal(L id, const Value& value);

/// The outing with one lever changed. Precondition: refusal(id, value) is empty.
Outing with(Outing outing, L id, Value value);

/// Two levers, each valid alone, that cannot both be true; and figures that contradict each other.
struct Clash {
  L first, second;  // the first is the one to doubt
  std::string sentence;
};
std::vector<Clash> clashes(const Plan& plan, const Style& style = {});

}  // namespace gs
