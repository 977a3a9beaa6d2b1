// Small questions beside the plan: one row in checks_<link>.cpp each, with inputs and results of their own.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/outing/outlook.h"

namespace gs {

/// An input of a check: a lever-like row. `plan` names the lever whose value is taken while the person gives none;
/// count: none.
struct CheckInput {
  Lever row;
  L plan = L::count;
  R plan_reading = R::count;  // or the reading it is taken from
  bool only_if_set = false;   // the plan's usual value gives way to the check's own
};

/// A result: a reading-like row, judged when ease != limit. `put_into` names the lever that the result may be put
/// into.
struct CheckResult {
  Reading row;
  double limit = 0, ease = 0;
  L put_into = L::count;
};

struct Check {
  std::string_view key, question;
  Link link;
  std::span<const CheckInput> inputs;
  std::span<const CheckResult> results;
  std::string_view measure;  // how to measure, in a sentence or two
  std::string_view source;
  /// Numbers by input (NaN: not given) to numbers by result (NaN: not known). Returns why something is not known or
  /// to be taken with care, or "".
  std::string (*work)(std::span<const double> in, std::span<double> out);
};

std::span<const Check> checks();
const Check* find_check(std::string_view key);

/// Inputs by row: what the person gave, else what the plan has, else the usual value, else NaN.
struct CheckValues {
  std::vector<double> x;
  std::vector<From> from;
};
struct CheckOutcome {
  std::vector<Figure> results;  // by result row
  std::string reason;           // "" or why something is not known or to be taken with care
};

/// `given` has one Value per input (monostate: not given).
CheckValues resolve_check(const Check& check, const std::vector<Value>& given, const Plan& plan);
CheckOutcome work_out(const Check& check, const CheckValues& values);

/// Reads one input's text ("3.2", "50ft", "open"); trouble in words when it cannot be.
struct ReadValue {
  Value value;
  std::string trouble;
};
ReadValue read_value(const Lever& row, std::string_view text);

}  // namespace gs
