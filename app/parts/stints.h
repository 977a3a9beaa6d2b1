// The stints' editor: what changes while one is on the air, and when.
#pragma once

#include "app/parts/ui.h"

namespace gs::parts {

/// A row a stint, the open one with all it may change; buttons for one more and for a break. Fills the column.
void stints(Ui& ui);

}  // namespace gs::parts
