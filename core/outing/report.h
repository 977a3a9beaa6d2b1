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
/// null where the state is unknown. With a clock also "now": {"phase": "planning", "on_air" or "after", "utc",
/// "local_min", "on_air_min", "left_min", "pack_in_min", "counted", "target", "says": [sentence, ...]}: what the
/// sheet for being on the air says beside the readings.
std::string outlook_json(const Plan& plan, const Outlook& outlook, const Now& now = {});

/// The same shape, "kind": "check": inputs under "levers", results under "readings".
std::string check_json(const Check& check, const CheckValues& values, const CheckOutcome& outcome);

}  // namespace gs
