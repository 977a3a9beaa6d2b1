#include "core/outing/report.h"

#include <cmath>
#include <initializer_list>
#include <utility>

#include "core/outing/archive.h"
#include "core/outing/live.h"
#include "core/pace/utc.h"

namespace gs {
namespace {

std::string number(double value) { return std::isfinite(value) ? exact_text(value) : "null"; }

/// One JSON object on one line; members are already JSON.
std::string object(const std::vector<std::pair<std::string_view, std::string>>& members) {
  std::string text = "{";
  for (const auto& member : members)
    text += (text.size() > 1 ? ", " : "") + json_quote(member.first) + ": " + member.second;
  return text + "}";
}

std::string list(const std::vector<std::string>& items, const char* indent) {
  std::string text = "[";
  for (const std::string& item : items) text += (text.size() > 1 ? ",\n" : "\n") + std::string(indent) + item;
  return text + "\n]";
}

std::string unit_text(Unit unit) {
  const std::span<const UnitChoice> choices = unit_choices(unit);
  return json_quote(choices.empty() ? std::string_view{} : choices.front().symbol);
}

std::string_view from_word(From from) {
  switch (from) {
    case From::missing:
      return "missing";
    case From::usual:
      return "usual";
    case From::yours:
      return "yours";
  }
  return "";
}

std::string_view better_word(Better better) {
  switch (better) {
    case Better::more:
      return "more";
    case Better::less:
      return "less";
    case Better::neither:
      return "neither";
  }
  return "";
}

std::string options_json(const Lever& row) {
  std::string text = "[";
  for (const Option& option : row.options())
    text += (text.size() > 1 ? ", " : "") + object({{"key", json_quote(option.key)},
                                                    {"name", json_quote(option.name)},
                                                    {"retired", option.retired ? "true" : "false"}});
  return text + "]";
}

std::vector<std::pair<std::string_view, std::string>> lever_members(const Lever& row, bool has_usual) {
  std::vector<std::pair<std::string_view, std::string>> members{
      {"key", json_quote(row.key)}, {"name", json_quote(row.name)}, {"link", json_quote(link_key(row.link))}};
  if (row.kind == Kind::choice) {
    members.push_back({"options", options_json(row)});
  } else if (row.kind == Kind::text) {
    members.push_back({"kind", json_quote("text")});
  } else {
    members.push_back({"unit", unit_text(row.unit)});
    members.push_back({"least", number(row.least)});
    members.push_back({"most", number(row.most)});
    members.push_back({"step", number(row.step)});
  }
  members.push_back({"usual", has_usual ? "true" : "false"});
  members.push_back({"optional", row.optional ? "true" : "false"});
  members.push_back({"evidence", json_quote(evidence_word(row.evidence))});
  members.push_back({"source", json_quote(row.source)});
  return members;
}

std::vector<std::pair<std::string_view, std::string>> reading_members(const Reading& row) {
  return {{"key", json_quote(row.key)},
          {"name", json_quote(row.name)},
          {"link", json_quote(link_key(row.link))},
          {"unit", unit_text(row.unit)},
          {"better", json_quote(better_word(row.better))},
          {"source", json_quote(row.source)}};
}

std::string value_json(const Lever& row, double x) {
  if (!std::isfinite(x)) return "null";
  if (row.kind == Kind::choice) return json_quote(row.options()[std::size_t(x)].key);
  if (row.kind == Kind::text) return row.write ? json_quote(row.write(x)) : "null";
  return number(x);
}

std::string lever_value_json(const Lever& row, double x, From from) {
  return object({{"name", json_quote(row.name)},
                 {"value", value_json(row, x)},
                 {"unit", row.kind == Kind::choice ? json_quote("") : unit_text(row.unit)},
                 {"from", json_quote(from_word(from))}});
}

std::string figure_json(const Reading& row, const Figure& figure, const std::string& reason) {
  return object({{"name", json_quote(row.name)},
                 {"value", number(figure.value)},
                 {"unit", unit_text(row.unit)},
                 {"state", json_quote(figure.state == State::none ? "none" : state_word(figure.state))},
                 {"low", number(figure.low)},
                 {"high", number(figure.high)},
                 {"reason", json_quote(reason)}});
}

/// The outlook shape shared by plans and checks; rows are already "key": {...}.
std::string shaped(std::string_view kind, const std::vector<std::pair<std::string_view, std::string>>& head,
                   const std::vector<std::string>& levers, const std::vector<std::string>& readings) {
  std::string text = "{\n  \"groundsheet\": 1,\n  \"kind\": " + json_quote(kind);
  for (const auto& member : head) text += ",\n  " + json_quote(member.first) + ": " + member.second;
  const auto part = [&](std::string_view name, const std::vector<std::string>& rows) {
    text += ",\n  " + json_quote(name) + ": {";
    for (std::size_t i = 0; i < rows.size(); ++i) text += (i ? ",\n    " : "\n    ") + rows[i];
    text += rows.empty() ? "}" : "\n  }";
  };
  part("levers", levers);
  part("readings", readings);
  return text + "\n}\n";
}

std::string_view phase_key(Phase phase) {
  return phase == Phase::planning ? "planning" : phase == Phase::on_air ? "on_air" : "after";
}

std::string now_json(const Plan& plan, const Outlook& outlook, const Now& now) {
  const Live at = live(plan, outlook, now);
  std::string says = "[";
  for (const std::string& sentence : {say_late(at, {}), say_drying(at, {}), say_clock(at)})
    if (!sentence.empty()) says += (says.size() > 1 ? ", " : "") + json_quote(sentence);
  return object({{"phase", json_quote(phase_key(at.phase))},
                 {"utc", json_quote(pace::utc_text(now.utc_s))},
                 {"local_min", number(at.now_min)},
                 {"on_air_min", number(at.on_air_min)},
                 {"left_min", number(at.left_min)},
                 {"pack_in_min", number(at.pack_in_min)},
                 {"counted", number(at.counted)},
                 {"target", number(at.target)},
                 {"says", says + "]"}});
}

}  // namespace

std::string levers_json() {
  std::vector<std::string> rows;
  const Plan nothing_set =
      resolve(Values(lever_count()));  // limits and eases have their usual values from a catalogue
  for (std::size_t i = 0; i < lever_count(); ++i)
    rows.push_back(object(lever_members(lever(L(i)), lever(L(i)).usual || nothing_set.has(L(i)))));
  return list(rows, "  ") + "\n";
}

std::string readings_json() {
  std::vector<std::string> rows;
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    auto members = reading_members(reading(R(i)));
    members.push_back({"judged", is_judged(R(i)) ? "true" : "false"});
    rows.push_back(object(members));
  }
  return list(rows, "  ") + "\n";
}

std::string checks_json() {
  std::vector<std::string> rows;
  for (const Check& check : checks()) {
    std::vector<std::string> inputs, results;
    for (const CheckInput& input : check.inputs) {
      auto members = lever_members(input.row, input.row.usual != nullptr);
      if (input.plan != L::count) members.push_back({"from_plan", json_quote(lever(input.plan).key)});
      if (input.plan_reading != R::count)
        members.push_back({"from_plan", json_quote(reading(input.plan_reading).key)});
      inputs.push_back(object(members));
    }
    for (const CheckResult& result : check.results) {
      auto members = reading_members(result.row);
      if (result.put_into != L::count) members.push_back({"put_into", json_quote(lever(result.put_into).key)});
      results.push_back(object(members));
    }
    rows.push_back(object({{"key", json_quote(check.key)},
                           {"question", json_quote(check.question)},
                           {"link", json_quote(link_key(check.link))},
                           {"source", json_quote(check.source)},
                           {"inputs", list(inputs, "    ")},
                           {"results", list(results, "    ")}}));
  }
  return list(rows, "  ") + "\n";
}

std::string outlook_json(const Plan& plan, const Outlook& outlook, const Now& now) {
  std::vector<std::string> levers, readings;
  for (std::size_t i = 0; i < lever_count(); ++i) {
    const Lever& row = lever(L(i));
    if (row.applies && !row.applies(plan)) continue;
    levers.push_back(json_quote(row.key) + ": " + lever_value_json(row, plan.x[i], plan.from[i]));
  }
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    const Figure& figure = outlook[R(i)];
    readings.push_back(json_quote(reading(R(i)).key) + ": " +
                       figure_json(reading(R(i)), figure, reason(plan, R(i), figure)));
  }
  std::string sentences = "[";
  for (const Clash& clash : clashes(plan))
    sentences += (sentences.size() > 1 ? ", " : "") + json_quote(clash.sentence);
  std::vector<std::pair<std::string_view, std::string>> head{{"clashes", sentences + "]"}};
  if (pace::is_instant(now.utc_s)) head.push_back({"now", now_json(plan, outlook, now)});
  return shaped("outlook", head, levers, readings);
}

std::string check_json(const Check& check, const CheckValues& values, const CheckOutcome& outcome) {
  std::vector<std::string> levers, readings;
  for (std::size_t i = 0; i < check.inputs.size(); ++i) {
    const Lever& row = check.inputs[i].row;
    levers.push_back(json_quote(row.key) + ": " + lever_value_json(row, values.x[i], values.from[i]));
  }
  for (std::size_t i = 0; i < check.results.size(); ++i) {
    const Figure& figure = outcome.results[i];
    readings.push_back(
        json_quote(check.results[i].row.key) + ": " +
        figure_json(check.results[i].row, figure, figure.state == State::unknown ? outcome.reason : std::string{}));
  }
  return shaped("check",
                {{"check", json_quote(check.key)},
                 {"question", json_quote(check.question)},
                 {"reason", json_quote(outcome.reason)}},
                levers, readings);
}

}  // namespace gs
