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

/// A file name a person recognises, without its ending: letters and digits of the outing's name.
std::string file_stem(const Outing& outing);

}  // namespace gs::sheets
