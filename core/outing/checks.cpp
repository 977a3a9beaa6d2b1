#include "core/outing/checks.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/outing/check_rows.h"
#include "core/outing/checks_antenna.h"
#include "core/outing/checks_power.h"
#include "core/outing/checks_safety.h"
#include "core/outing/checks_sky.h"

namespace gs {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

}  // namespace

std::string needs(const Lever& row) { return "needs " + std::string(row.name); }

std::string first_needed(std::span<const CheckInput> inputs, std::span<const double> in) {
  for (std::size_t i = 0; i < inputs.size(); ++i)
    if (!std::isfinite(in[i])) return needs(inputs[i].row);
  return {};
}

std::span<const Check> checks() {
  static std::vector<std::vector<CheckInput>> inputs;  // what the rows' spans look at
  static const std::vector<Check> all = [] {
    std::vector<Check> rows;
    for (const std::span<const Check> part :
         {power_checks(), feedline_checks(), antenna_checks(), sky_checks(), safety_checks()})
      rows.insert(rows.end(), part.begin(), part.end());
    for (Check& row : rows) {
      inputs.push_back(wired(row));
      row.inputs = inputs.back();  // the inner vectors stay where they are
    }
    return rows;
  }();
  return all;
}

const Check* find_check(std::string_view key) {
  const std::span<const Check> all = checks();
  const auto at = std::find_if(all.begin(), all.end(), [key](const Check& row) { return row.key == key; });
  return at == all.end() ? nullptr : &*at;
}

CheckValues resolve_check(const Check& check, const std::vector<Value>& given, const Plan& plan) {
  CheckValues values{std::vector<double>(check.inputs.size(), kNaN),
                     std::vector<From>(check.inputs.size(), From::missing)};
  const Outlook outlook = evaluate(plan);
  for (std::size_t i = 0; i < check.inputs.size(); ++i) {
    const CheckInput& input = check.inputs[i];
    double x = kNaN;
    From from = From::yours;
    if (const double* number = std::get_if<double>(&given[i]); number && input.row.kind == Kind::number)
      x = *number;
    if (const std::string* key = std::get_if<std::string>(&given[i]); key && input.row.kind == Kind::choice) {
      const std::span<const Option> options = input.row.options();
      for (std::size_t k = 0; k < options.size(); ++k)
        if (options[k].key == *key) x = double(k);
    }
    if (!std::isfinite(x) && input.plan != L::count && plan.has(input.plan) &&
        (plan.from[std::size_t(input.plan)] == From::yours || !input.only_if_set)) {
      const double value = plan[input.plan];
      const bool in_range = input.row.kind != Kind::number || (value >= input.row.least && value <= input.row.most);
      if (in_range) {
        x = value;
        from = plan.from[std::size_t(input.plan)];
      }
    }
    if (!std::isfinite(x) && input.plan_reading != R::count) {
      x = outlook[input.plan_reading].value;
      from = From::yours;
    }
    if (!std::isfinite(x) && input.row.usual) {
      x = input.row.usual(plan);
      from = From::usual;
    }
    if (!std::isfinite(x)) continue;
    values.x[i] = x;
    values.from[i] = from;
  }
  return values;
}

CheckOutcome work_out(const Check& check, const CheckValues& values) {
  std::vector<double> numbers(check.results.size(), kNaN);
  CheckOutcome outcome{{}, check.work(values.x, numbers)};
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    const CheckResult& row = check.results[i];
    Figure figure = unknown(Doubt::missing, L::count);
    if (std::isfinite(numbers[i])) {
      figure = {.value = numbers[i],
                .low = numbers[i],
                .high = numbers[i],
                .slack = kNaN,
                .state = State::none,
                .doubt = Doubt::none};
      if (row.limit != row.ease) {
        figure.slack = (figure.value - row.limit) / (row.ease - row.limit);
        figure.state = figure.slack >= 1 ? State::holds : figure.slack >= 0 ? State::tight : State::fails;
      }
    }
    outcome.results.push_back(figure);
  }
  return outcome;
}

ReadValue read_value(const Lever& row, std::string_view text) {
  const std::string name(row.key);
  if (row.kind == Kind::choice) {
    std::string keys;
    for (const Option& option : row.options()) {
      if (option.key == text) return {std::string(option.key), {}};
      if (!option.retired) keys += (keys.empty() ? "" : ", ") + std::string(option.key);
    }
    return {{}, name + ": \"" + std::string(text.substr(0, 40)) + "\" is not one of " + keys};
  }
  if (row.kind == Kind::text) {
    const std::string why = row.wrong ? row.wrong(text) : std::string{};
    if (!why.empty()) return {{}, name + ": " + why};
    return {std::string(text), {}};
  }
  const Parsed parsed = read_quantity(text, row.unit);
  if (!parsed.ok()) return {{}, name + ": " + parsed.trouble};
  if (parsed.value < row.least || parsed.value > row.most)
    return {{},
            name + ": " + std::string(text.substr(0, 40)) + " is outside " +
                print_quantity(row.least, row.unit, digits_needed(row.least, row.digits)).number + " to " +
                say_lever(row, row.most, {})};
  return {parsed.value, {}};
}

}  // namespace gs
