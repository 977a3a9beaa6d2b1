// Where an outing can begin.
#pragma once

#include "core/outing/outing.h"

namespace gs::sheets {

/// The sample outing that is built in (assets/outings/a-first-demo.json).
Outing sample_outing();

}  // namespace gs::sheets
