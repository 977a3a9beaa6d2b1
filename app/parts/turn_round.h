// The value that a turned panel is asked to reach, as a row: for its slider and for the keypad.
#pragma once

#include <string>

#include "app/session.h"

namespace gs::parts {

std::string turn_name(const Turn& turn);  // "Runtime to reach"
/// Range, step and unit; `name` is kept by the caller as long as the row.
Lever turn_row(const Turn& turn, std::string_view name);

}  // namespace gs::parts
