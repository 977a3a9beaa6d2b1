// What matters about each option of a long choice under this plan: a line of words, and what they are sorted by.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/outing/plan.h"

namespace gs {

struct OptionNote {
  std::size_t option;  // index among the lever's options
  std::string words;   // "0.21 dB, 1050 g a 10 m", or ""
};

/// The options that are offered, and the one that is chosen, in the order that helps to choose: cables by loss at
/// the plan's frequency, least first; a lead's wires by resistance, thickest first; others as the catalogue has
/// them.
std::vector<OptionNote> noted_options(const Plan& plan, L id, const Style& style);
/// The order in words: "least loss first, at 14.200 MHz"; "" where it is the catalogue's.
std::string order_words(const Plan& plan, L id, const Style& style);
/// Whether every word of what is sought stands in the name or the words, whatever their case; "" finds all.
bool found_by(std::string_view sought, std::string_view name, std::string_view words);

}  // namespace gs
