#include "core/outing/plan.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "core/outing/feedline_join.h"
#include "core/outing/now.h"
#include "core/outing/radio_readings.h"
#include "core/pace/clock.h"

namespace gs {
namespace {

double option_index(const Lever& row, const std::string& key) {
  const std::span<const Option> options = row.options();
  const auto at =
      std::find_if(options.begin(), options.end(), [&](const Option& option) { return option.key == key; });
  return at == options.end() ? std::numeric_limits<double>::quiet_NaN() : double(at - options.begin());
}

}  // namespace

Plan resolve(const Values& set, const Habits& habits, KitSummary kit) {
  const std::size_t count = lever_count();
  Plan plan{std::vector<double>(count, std::numeric_limits<double>::quiet_NaN()),
            std::vector<From>(count, From::missing)};
  plan.kit = std::move(kit);
  for (const OwnUsual& own : habits.usual) {
    const L id = find_lever(own.key);
    if (is_lever(id) && lever(id).kind == Kind::number && refusal(id, own.value).empty())
      plan.habits.usual.emplace_back(id, own.value);
  }
  plan.habits.zone = habits.zone;
  for (const OwnPace& own : habits.paces)
    plan.habits.paces.push_back({own.antenna.empty() ? std::numeric_limits<double>::quiet_NaN()
                                                     : option_index(lever(L::antenna_kind), own.antenna),
                                 own.per_hour, own.spread_pct, own.outings});
  if (!habits.licence.empty()) plan.habits.licence = option_index(lever(L::rules_class), habits.licence);
  for (std::size_t i = 0; i < count; ++i) {
    const Lever& row = lever(L(i));
    if (row.applies && !row.applies(plan)) continue;
    if (row.kind == Kind::text) {
      const std::string* text = std::get_if<std::string>(&set[i]);
      if (!text || text->empty() || !row.read) continue;
      plan.x[i] = row.read(*text);
      if (!std::isfinite(plan.x[i])) continue;
      plan.from[i] = From::yours;
      continue;
    }
    double value = std::numeric_limits<double>::quiet_NaN();
    // a bare number where a choice's key belongs would pass for an index: as good as not set
    if (const double* number = std::get_if<double>(&set[i]); number && row.kind == Kind::number) value = *number;
    if (const std::string* key = std::get_if<std::string>(&set[i]); key && row.kind == Kind::choice)
      value = option_index(row, *key);
    From from = From::yours;
    if (!std::isfinite(value)) {
      value = usual_of(plan, L(i));
      from = From::usual;
    }
    if (!std::isfinite(value)) continue;
    plan.x[i] = value;
    plan.from[i] = from;
  }
  return plan;
}

const PlanPace* own_pace(const Plan& plan) {
  const PlanPace* all = nullptr;
  for (const PlanPace& pace : plan.habits.paces) {
    if (std::isnan(pace.antenna)) all = &pace;
    if (plan.has(L::antenna_kind) && pace.antenna == plan[L::antenna_kind]) return &pace;
  }
  return all;
}

double usual_of(const Plan& plan, L id) {
  for (const auto& [own, value] : plan.habits.usual)
    if (own == id) return value;
  if (std::size_t(id) >= std::size_t(L::count)) return usual_limit(plan, id);
  return lever(id).usual ? lever(id).usual(plan) : std::numeric_limits<double>::quiet_NaN();
}

namespace {

Plan planned(const Outing& outing, const Values& set) {
  Plan plan = resolve(set, outing.habits, sum_up(outing.kit));
  plan.date = sky::read_date(outing.date);
  for (const Stint& stint : outing.stints) {
    StintPlan row{running_min(plan, stint.from_min), stint.on_air, {}};
    if (stint.on_air && !stint.set.empty()) {
      Values values = set;
      for (const auto& [id, value] : stint.set) values[std::size_t(id)] = value;
      Plan changed = resolve(values, outing.habits, plan.kit);
      changed.date = plan.date;
      row.plan.push_back(std::move(changed));
    }
    plan.stints.push_back(std::move(row));
  }
  return plan;
}

}  // namespace

Plan resolve(const Outing& outing) {
  Plan plan = planned(outing, outing.set);
  plan.happened = outing.happened;
  return plan;
}

Plan resolve_pinned(const Outing& outing) { return planned(outing, *outing.pinned); }

int digits_needed(double value, int most) {
  int digits = 0;
  for (double scale = 1; digits < most && std::abs(value * scale - std::round(value * scale)) > 1e-6; ++digits)
    scale *= 10;
  return digits;
}

std::string say_lever(const Lever& row, double value, const Style& style) {
  return say_quantity(value, row.unit, digits_needed(value, row.digits), style);
}

std::string_view option_key(L id, double index) {
  const std::span<const Option> options = lever(id).options();
  return index >= 0 && index < double(options.size()) ? options[std::size_t(index)].key : std::string_view{};
}

std::string refusal(L id, const Value& value) {
  const Lever& row = lever(id);
  if (std::holds_alternative<std::monostate>(value)) return {};
  if (row.kind == Kind::text) {
    const std::string* text = std::get_if<std::string>(&value);
    if (!text) return std::string(row.name) + ": a text is wanted";
    const std::string why = row.wrong ? row.wrong(*text) : std::string{};
    return why.empty() ? why : std::string(row.name) + ": " + why;
  }
  if (row.kind == Kind::choice) {
    const std::string* key = std::get_if<std::string>(&value);
    if (key && std::isfinite(option_index(row, *key))) return {};
    return std::string(row.name) + ": not one of its choices";
  }
  const double* number = std::get_if<double>(&value);
  if (number && *number >= row.least && *number <= row.most) return {};
  return std::string(row.name) + ": " +
         print_quantity(row.least, row.unit, digits_needed(row.least, row.digits)).number + " to " +
         say_lever(row, row.most, {});
}

Outing with(Outing outing, L id, Value value) {
  outing.set[std::size_t(id)] = std::move(value);
  return outing;
}

std::vector<Clash> clashes(const Plan& plan, const Style& style) {
  std::vector<Clash> found;
  const double full_w = plan[L::radio_full_power_w];
  if (plan[L::radio_transmit_power_w] > full_w) {
    found.push_back({L::radio_transmit_power_w, L::radio_full_power_w,
                     "Transmit power " +
                         say_lever(lever(L::radio_transmit_power_w), plan[L::radio_transmit_power_w], style) +
                         " is more than the radio's full power " +
                         say_lever(lever(L::radio_full_power_w), full_w, style) + "."});
  }
  if (radio_readings(plan).size() >= 2 && plan.has(L::radio_full_power_w) && !currents_from_readings(plan).sound) {
    found.push_back(
        {L::radio_read_two_a, L::radio_read_one_a,
         "The readings of power and current cannot all be true: current grows with the root of power, from "
         "an idle current above 0. They are not used."});
  }
  if (plan[L::radio_keyed_idle_current_a] > plan[L::radio_full_power_current_a]) {
    found.push_back({L::radio_keyed_idle_current_a, L::radio_full_power_current_a,
                     "Keyed idle current is more than the full-power current: doubt one of the two."});
  }
  if (plan.has_all(L::clock_arrive_min, L::clock_leave_by_min)) {
    const pace::OnAir air = pace::on_air(stay_of(plan));
    if (air.trouble == pace::NoTime::leaves_first) {
      found.push_back(
          {L::clock_leave_by_min, L::clock_arrive_min,
           "Leave by is not after arrive. Past midnight the clock counts on: 01:00 of the next day is 25:00."});
    } else if (air.trouble == pace::NoTime::work_fills_it) {
      found.push_back({L::clock_leave_by_min, L::clock_set_up_min,
                       "Set-up and pack-down take " + say_quantity(air.short_by_min, Unit::minute, 0, style) +
                           " more than the stay has."});
    }
  }
  for (const Limit& row : limits()) {
    const R id = find_reading(row.reading_key);
    if (id == R::count) continue;
    const double limit = plan[limit_lever(id)], ease = plan[ease_lever(id)];
    const bool more = reading(id).better == Better::more;
    if (limit == ease || (ease > limit) != more) {
      found.push_back({ease_lever(id), limit_lever(id),
                       std::string(lever(ease_lever(id)).name) + " must stand on the better side of its limit."});
    }
  }
  for (Clash& clash : feedline_clashes(plan, style)) found.push_back(std::move(clash));
  return found;
}

}  // namespace gs
