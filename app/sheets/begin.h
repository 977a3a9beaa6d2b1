// Where an outing can begin.
#pragma once

#include "core/outing/outing.h"

namespace gs::sheets {

/// The sample outing that is built in (assets/outings/a-first-demo.json).
Outing sample_outing();

/// An outing of today in which nothing else is set: date and UTC offset come from the machine's clock, once.
Outing new_outing();

}  // namespace gs::sheets
