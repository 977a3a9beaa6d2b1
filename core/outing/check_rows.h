// What the rows of every link's checks are written with: one file checks_<link>.cpp a link, joined in checks.cpp.
#pragma once

#include <string>

#include "core/outing/checks.h"

namespace gs {

std::string needs(const Lever& row);  // "needs Measured SWR"
/// The first input without a number, said; "" when all are there.
std::string first_needed(std::span<const CheckInput> inputs, std::span<const double> in);

/// The check's inputs with the plan's levers filled in where check_wires.cpp names them.
std::vector<CheckInput> wired(const Check& check);

std::span<const Check> feedline_checks();

}  // namespace gs
