// A number in the person's hand, whatever it belongs to: label, less, value to type, more, scale bar.
#pragma once

#include <limits>
#include <optional>
#include <string>

#include "app/parts/ui.h"

namespace gs::parts {

/// What is shown. `value` is where it stands, or where it would start while it is not known.
struct Dial {
  std::string key;  // id of its records
  const Lever& row;
  double most;  // at most the row's
  double value;
  bool known;
  std::string text, spoken;
  std::string note{};  // under the label: "from the plan"
  double pinned = std::numeric_limits<double>::quiet_NaN();
  std::string pin_text{}, pin_spoken{};
};

/// What the hand, a key or an assistive technology wants of it.
struct Dialled {
  std::optional<double> wanted;
  int gesture = 0;                    // equal for all steps of one drag
  std::optional<std::string> typing;  // the keypad is wanted, with what was typed so far
};

Dialled dial(Ui& ui, const Dial& dial);
float dial_height(const Ui& ui, const Dial& dial);
/// Where a number without a value starts when it is stepped: a plain place in its range.
double dial_start(const Lever& row, double most);

}  // namespace gs::parts
