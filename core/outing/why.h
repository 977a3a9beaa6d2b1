// Why a reading is what it is: formula in words, one line a factor with its provenance, source, assumptions,
// sensitivity.
#pragma once

#include <string>
#include <vector>

#include "core/outing/outlook.h"

namespace gs {

/// Provenance sign beside a value.
enum class Mark : unsigned char { none, published, second_hand, practice, memory, yours, computed };
std::string_view mark_word(Mark mark);

struct WhyLine {
  std::string text;
  Printed value;
  Mark mark = Mark::none;
  bool result = false;  // a rule stands above: this line follows from those before it
};

struct Why {
  std::string formula;
  std::vector<WhyLine> lines;
  std::string source, assumes, if_wrong;
};

/// Reasons of a reading under a plan; lines for what is known, missing levers named. Empty formula only for
/// readings of links that do not answer yet.
Why why(R id, const Plan& plan, const Style& style = {});

}  // namespace gs
