#include "core/outing/as_text.h"

#include <cmath>

#include "core/outing/plan.h"
#include "core/outing/why.h"

namespace gs {
namespace {

void add(std::string& text, std::string_view label, std::string_view words) {
  if (words.empty()) return;
  text += "\n";
  text += label;
  text += words;
}

std::string state_words(const Figure& figure) {
  const bool has_state = figure.state != State::none && figure.state != State::unknown;
  return has_state ? ", " + std::string(state_word(figure.state)) : std::string{};
}

std::string input_value(const CheckInput& input, double x, const Style& style) {
  if (!std::isfinite(x)) return "not given";
  if (input.row.kind == Kind::choice) return std::string(input.row.options()[std::size_t(x)].name);
  return say_lever(input.row, x, style);
}

}  // namespace

std::string reading_as_text(R id, const Plan& plan, const Outlook& outlook, const Style& style) {
  const Reading& row = reading(id);
  const Figure& figure = outlook[id];
  const std::string said = reason(plan, id, figure, style);
  std::string text = std::string(row.name) + ": ";
  if (figure.state == State::unknown) {
    text += "not known" + (said.empty() ? std::string{} : ": " + said);
  } else {
    text += say_reading(id, figure.value, style) + state_words(figure);
    add(text, "May be ", say_range(id, figure, style));
    if (figure.doubt != Doubt::none) add(text, "But: ", said);
  }
  const Why because = why(id, plan, style);
  add(text, "How: ", because.formula);
  for (const WhyLine& line : because.lines) {
    std::string value = line.value.number + (line.value.unit.empty() ? "" : " " + line.value.unit);
    if (const std::string_view mark = mark_word(line.mark); !mark.empty()) value += " (" + std::string(mark) + ")";
    add(text, "- " + line.text + ": ", value);
  }
  add(text, "Source: ", because.source);
  add(text, "Assumes: ", because.assumes);
  add(text, "If wrong: ", because.if_wrong);
  return text;
}

std::string check_as_text(const Check& check, const CheckValues& values, const CheckOutcome& outcome,
                          const Style& style) {
  std::string text(check.question);
  for (std::size_t i = 0; i < check.inputs.size(); ++i) {
    const CheckInput& input = check.inputs[i];
    std::string value = input_value(input, values.x[i], style);
    if (std::isfinite(values.x[i])) value += values.from[i] == From::usual ? " (usual)" : " (yours)";
    add(text, "- " + std::string(input.row.name) + ": ", value);
  }
  for (std::size_t i = 0; i < check.results.size(); ++i) {
    const Reading& row = check.results[i].row;
    const Figure& figure = outcome.results[i];
    add(text, std::string(row.name) + ": ",
        figure.state == State::unknown
            ? std::string("not known")
            : say_result(figure.value, row.unit, row.digits, style) + state_words(figure));
  }
  add(text, "", outcome.reason);
  add(text, "Source: ", check.source);
  return text;
}

}  // namespace gs
