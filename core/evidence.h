// How well a catalogue figure is known. Every catalogue row carries one of these beside its source.
#pragma once

#include <string_view>

namespace gs {

enum class Evidence : unsigned char {
  seen,         // the figure stood in a source that was read
  second_hand,  // read in a source that quotes a maker, a standard or a measurement
  memory,       // recalled; the source could not be reached
  practice,     // common practice of the trade
};

/// Words for a person. Source: own wording.
constexpr std::string_view evidence_word(Evidence evidence) {
  switch (evidence) {
    case Evidence::seen:
      return "published";
    case Evidence::second_hand:
      return "second hand";
    case Evidence::memory:
      return "memory";
    case Evidence::practice:
      return "practice";
  }
  return "";
}

}  // namespace gs
