// Where an outing can begin.
#pragma once

#include <string>
#include <vector>

#include "core/outing/outing.h"

namespace gs::sheets {

/// Outings that are built in (assets/outings), in the order of their file names.
std::vector<Outing> demo_outings();

/// The sample outing that is built in (assets/outings/a-first-demo.json).
Outing sample_outing();

/// An outing of today in which nothing else is set: date and UTC offset come from the machine's clock, once.
Outing new_outing();

}  // namespace gs::sheets
