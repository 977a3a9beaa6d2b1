// How far a lever may go under a plan.
#pragma once

#include "core/outing/plan.h"

namespace gs {

/// The most that a lever may be: its row's, or less where another lever caps it (transmit power by full power), but
/// never under its least. The row's where what caps it is not known. Precondition: the lever is a number.
double most_of(const Plan& plan, L id);

}  // namespace gs
