#include "core/outing/beside.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/outing/csv.h"
#include "core/outing/outing_day.h"
#include "core/pace/utc.h"

namespace gs {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

Beside of_lever(const Plan& plan, L id, double happened) {
  const Lever& row = lever(id);
  const bool fits = std::isfinite(happened) && refusal(id, happened).empty();
  return {std::string(row.key),
          std::string(row.name),
          row.unit,
          row.digits,
          Better::neither,
          plan[id],
          fits ? happened : kNaN,
          fits};
}

Beside of_reading(const Outlook& planned, R id, double happened, std::string follows) {
  const Reading& row = reading(id);
  return {std::string(row.key), std::string(row.name), row.unit, row.digits,
          row.better,           planned[id].value,     happened, false,
          std::move(follows)};
}

double number_of(const Measured& row) {
  const double* number = std::get_if<double>(&row.value);
  return number ? *number : kNaN;
}

/// Minutes from arrival to the first start, as they were; what the day did before arrival is not ours.
double set_up_taken(const Plan& plan, const Now& now) {
  const double started = local_min_of(plan, now, plan.happened.on_air.front().from_utc_s);
  return std::round(started - stay_of(plan).arrive_min);
}

Plan as_planned(const Plan& plan) {
  Plan planned = plan;
  planned.happened = {};
  return planned;
}

std::string number_cell(double value) { return std::isfinite(value) ? exact_text(value) : std::string{}; }

constexpr L kMeasurableLevers[] = {L::radio_receive_current_a, L::feedline_measured_swr, L::clock_pack_down_min};
constexpr R kMeasurableReadings[] = {R::power_supply_at_key_down_v, R::power_left_at_leave_by_pct};

}  // namespace

std::vector<Beside> planned_beside_happened(const Plan& plan, const Now& now) {
  std::vector<Beside> rows;
  if (plan.happened.on_air.empty()) return rows;
  const Outlook planned = evaluate(as_planned(plan));
  const OutingDay day = day_of(plan, now);
  const int counted = contacts_in(plan.happened);
  if (plan.has(L::clock_arrive_min)) rows.push_back(of_lever(plan, L::clock_set_up_min, set_up_taken(plan, now)));
  const double per_hour = day.past_min > 0 ? std::round(600.0 * counted / day.past_min) / 10 : kNaN;
  rows.push_back(of_lever(plan, L::pace_per_hour, per_hour));
  rows.back().better = Better::more;
  rows.front().better = plan.has(L::clock_arrive_min) ? Better::less : rows.front().better;
  const auto last_of_key = [&](const Measured& row) { return &row == last_measured(plan.happened, row.key); };
  for (const Measured& row : plan.happened.measured)
    if (const L id = find_lever(row.key); is_lever(id) && lever(id).kind == Kind::number && last_of_key(row))
      rows.push_back(of_lever(plan, id, number_of(row)));
  rows.push_back(of_reading(planned, R::clock_on_air_min, day.past_min, "set-up, breaks, end"));
  rows.push_back(of_reading(planned, R::pace_expected_contacts, counted, "pace, time on the air"));
  for (const Measured& row : plan.happened.measured)
    if (const R id = find_reading(row.key); id != R::count && last_of_key(row))
      rows.push_back(of_reading(planned, id, number_of(row), "measured"));
  return rows;
}

double chance_again_pct(const Outing& outing, const std::vector<OwnUsual>& adopted) {
  Outing again = outing;
  again.happened = {};
  for (const OwnUsual& own : adopted)
    if (const L id = find_lever(own.key); is_lever(id) && refusal(id, own.value).empty())
      again = with(std::move(again), id, own.value);
  return evaluate(resolve(again))[R::pace_chance_of_target_pct].value;
}

std::vector<Measurable> measurable(const Plan& plan) {
  std::vector<Measurable> rows;
  for (const L id : kMeasurableLevers) {
    const Lever& row = lever(id);
    if (!row.applies || row.applies(plan))
      rows.push_back({row.key, row.name, row.unit, row.digits, row.least, row.most, row.step});
  }
  for (const R id : kMeasurableReadings) {
    const Reading& row = reading(id);
    const bool percent = row.unit == Unit::percent;
    rows.push_back({row.key, row.name, row.unit, row.digits, 0, percent ? 100.0 : 60.0, percent ? 1.0 : 0.1});
  }
  return rows;
}

std::string tally_csv(const Plan& plan, const Now& now) {
  std::string text = "utc,local,count,forgotten\n";
  for (const Tap& tap : plan.happened.tally) {
    const double local = local_min_of(plan, now, tap.at_utc_s);
    text += pace::utc_text(tap.at_utc_s) + "," +
            (std::isfinite(local) ? wall_clock(std::floor(shown_min(plan, local))) : std::string{}) + "," +
            std::to_string(tap.count) + "," + (tap.forgotten ? "yes" : "no") + "\n";
  }
  return text;
}

std::string beside_csv(const std::vector<Beside>& rows) {
  std::string text = "key,name,unit,planned,happened\n";
  for (const Beside& row : rows) {
    const std::span<const UnitChoice> units = unit_choices(row.unit);
    const std::string unit = units.empty() ? std::string{} : std::string(units.front().symbol);
    text += row.key + "," + csv_cell(row.name) + "," + csv_cell(unit) + "," + number_cell(row.planned) + "," +
            number_cell(row.happened) + "\n";
  }
  return text;
}

}  // namespace gs
