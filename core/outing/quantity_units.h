// Which units there are, how people spell them and which kind each measures. For the reader and the printer only.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/outing/quantity.h"

namespace gs {

/// What a unit measures. The last three are never asked for: they are known so that a refusal can name them.
enum class Measure : unsigned char {
  number,
  power,
  voltage,
  current,
  charge,
  level,
  length,
  frequency,
  resistance,
  share,
  time,
  clock,
  temperature,
  weight,
  wavelengths,
  signal,
  angle,
  volume,
  words,
  energy,
  gain,
  wire,
  count,
};

Measure measure_of(Unit unit);

/// "a power", "a length": for sentences.
std::string_view measure_name(Measure measure);

/// Every row that this unit can be read in, those of unit_choices first.
std::span<const UnitChoice> all_choices(Unit unit);

/// What a spelling stands for: the kind and the symbol of its row. Nothing found: Measure::count.
struct Meaning {
  Measure measure;
  std::string_view symbol;
};

/// Looks among the spellings of `wanted` first, then among all. Case is free, except that a leading m never turns
/// into M nor M into m (milli and mega) unless the row says so.
Meaning find_spelling(std::string_view spelling, Measure wanted);

/// "m, ft, in or cm": what may be written for this unit.
std::string choice_list(Unit unit);

}  // namespace gs
