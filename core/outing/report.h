// The tables and results as JSON text: what the command line prints and what reference docs are made from.
#pragma once

#include <string>

#include "core/outing/checks.h"
#include "core/outing/outlook.h"

namespace gs {

std::string levers_json();    // array of the lever table
std::string readings_json();  // array of the reading table
std::string checks_json();    // array of the check table

/// {"groundsheet": 1, "kind": "outlook", "clashes": [sentence, ...], "levers": {...}, "readings": {...}}. Value
/// null where the state is unknown.
std::string outlook_json(const Plan& plan, const Outlook& outlook);

/// The same shape, "kind": "check": inputs under "levers", results under "readings".
std::string check_json(const Check& check, const CheckValues& values, const CheckOutcome& outcome);

}  // namespace gs
