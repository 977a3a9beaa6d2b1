// What a person may set a lever to.
#pragma once

#include <string>
#include <variant>

namespace gs {

/// Not set, a number in the lever's unit, or a choice's key.
using Value = std::variant<std::monostate, double, std::string>;

}  // namespace gs
