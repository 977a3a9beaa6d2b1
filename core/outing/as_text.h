// A reading or a check as plain text, for a message or a note: value, unit, state, what it rests on, source.
#pragma once

#include <string>

#include "core/outing/checks.h"
#include "core/outing/outlook.h"

namespace gs {

/// Several lines without a last line break. The first holds name, value and state or why it is not known; then
/// formula, a line for each factor with its provenance, source, assumptions, and what a tenth of error does.
std::string reading_as_text(R id, const Plan& plan, const Outlook& outlook, const Style& style);

/// The question, each input with where it comes from, each result with its state, and the source.
std::string check_as_text(const Check& check, const CheckValues& values, const CheckOutcome& outcome,
                          const Style& style);

}  // namespace gs
