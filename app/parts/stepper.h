// A number in a row: label, less, value, more.
#pragma once

#include <optional>
#include <string>

#include "app/parts/ui.h"

namespace gs::parts {

/// A number between two round steppers, a slider for keys and assistive technology. The new value when it moved.
struct Stepped {
  std::string id, name, text;
  double value, least, most, step;
};
std::optional<double> stepper_row(Ui& ui, const Stepped& row);

}  // namespace gs::parts
