// The rows of the lever table, one file levers_<link>.cpp a link or two; joined by id in levers.cpp.
#pragma once

#include <span>
#include <vector>

#include "core/outing/levers.h"

namespace gs {

struct LeverRow {
  L id;
  Lever row;
};
std::span<const LeverRow> radio_levers();
std::span<const LeverRow> power_levers();
std::span<const LeverRow> antenna_levers();
std::span<const LeverRow> feedline_levers();
std::span<const LeverRow> outing_levers();  // site, clock, pace
std::span<const LeverRow> safety_levers();  // safety, rules

/// Options of a choice lever from a catalogue's rows (key, name, retired).
template <class Rows>
std::vector<Option> options_of(const Rows& rows) {
  std::vector<Option> options;
  for (const auto& row : rows) options.push_back({row.key, row.name, row.retired});
  return options;
}

}  // namespace gs
