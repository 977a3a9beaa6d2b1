// Maidenhead locator: a place in 4, 6 or 8 characters, and back.
#pragma once

#include <string>
#include <string_view>

#include "core/sky/place.h"

namespace gs::sky {

// Definition: longitude counted from 180 W and latitude from the south pole, in pairs, longitude first: field A-R
// (20 by 10 degrees), square 0-9 (2 by 1), subsquare a-x (5' by 2.5'), extended square 0-9 (0.5' by 0.25'). Adopted
// by the IARU Region 1 VHF working group at Maidenhead, 1980; on WGS-84 since 1999. Second hand: the handbook was
// not seen.

/// What a locator stands for: the middle of its cell, the cell's size, or why the text is no locator.
struct ReadLocator {
  Place centre;
  double height_deg = 0, width_deg = 0;
  std::string trouble;  // empty: valid
  bool ok() const { return trouble.empty(); }
};

/// Reads 4, 6 or 8 characters, either case, blanks at the ends passed over. Everything else is refused with the
/// character that is wrong and what belongs there.
ReadLocator read_locator(std::string_view text);

/// The locator of a place with 4, 6 or 8 characters; "" for any other count or no place (is_place). A place on a
/// line belongs to the cell east and north of it (within 1e-9 of a cell: 5 um); the pole to the top row; 180 E is
/// 180 W.
std::string locator_of(Place place, int characters);

/// A locator as one whole number below 2^53, for tables that hold numbers: NaN for text that is no locator.
/// locator_from_number gives the text back in its usual case, "" for a number that is no locator's.
double locator_number(std::string_view text);
std::string locator_from_number(double number);

}  // namespace gs::sky
