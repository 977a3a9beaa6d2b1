// What stands along the line when only an SWR is known, its phase not: never one value, a least and a most.
#pragma once

#include <vector>

#include "core/feedline/run.h"

namespace gs::feedline {

/// SWR against the meter's reference and V rms at one place, over every load that shows the SWR.
struct PlaceRange {
  double from_radio_m, swr_least, swr_most, volt_least, volt_most;
};

/// Which end the SWR was read at.
enum class ReadAt : unsigned char { antenna, radio };

/// As places() of run.h, over 96 phases of the reflection at the end where the SWR was read; loads that would have
/// to give power are left out. Extremes between two phases by a parabola: within 0.1 % of the SWR up to 8. 1 <= swr
/// < infinity, power_w > 0 into the run, per_piece >= 1, reference_ohm > 0; empty otherwise, and where no passive
/// load can show that SWR. Source: line.h, place by place.
std::vector<PlaceRange> place_ranges(const Run& run, double reference_ohm, double swr, ReadAt at, double power_w,
                                     int per_piece);

}  // namespace gs::feedline
