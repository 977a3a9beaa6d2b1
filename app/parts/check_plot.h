// How a check's answer moves with one of its inputs.
#pragma once

#include "app/parts/ui.h"

namespace gs::parts {

/// The first result over the input that was moved last, else the first number that is known; results in the same
/// unit beside it, limit and ease as zones where it is judged, and what is given marked on the curve. Nothing where
/// the input leaves the answer as it is.
void check_plot(Ui& ui, const Check& check, const CheckValues& values);

}  // namespace gs::parts
