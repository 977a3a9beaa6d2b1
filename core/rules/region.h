// Which ITU Region a place lies in, roughly: enough for a usual value that a person can change.
#pragma once

#include "core/rules/bands.h"

namespace gs::rules {

/// The Region of a place, degrees on any datum; longitude wraps. By the lines A, B and C of the ITU Radio
/// Regulations, Article 5 (from memory), drawn straight between points on their great circles, and the parts of
/// northern Asia that belong to Region 1 by the parallel of 50 N: beside those lines the answer may be wrong.
/// Region two for what is no place.
Region region_of(double latitude_deg, double longitude_deg);

}  // namespace gs::rules
