// The scale-bar slider with its steppers and its figure: for levers of the outing, and for what a question asks of
// them.
#pragma once

#include <optional>
#include <string>

#include "app/parts/ui.h"

namespace gs::parts {

struct ScaleBar {
  const Lever& row;            // key of the records, name, range, step, scale, unit
  std::string text, spoken;    // the value as it stands, or what is missing
  double value = 0, most = 1;  // value: where a lever without one would start
  bool known = true;
  std::optional<double> mark{};  // a pennant on the bar, and what it says under the name
  std::string mark_text{}, mark_spoken{};
  ImU32 mark_colour = 0;
};

/// What a hand or a key wants of it.
struct ScaleMove {
  std::optional<double> wanted;
  int gesture = 0;    // one for all steps of a drag
  bool type = false;  // the figure was tapped: keypad
};
ScaleMove scale_bar(Ui& ui, const ScaleBar& bar);
float scale_bar_height(const Ui& ui, const ScaleBar& bar);

}  // namespace gs::parts
