// The keypad, for whichever number is typed. What is typed and in which unit stands in the session's view.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <utility>

#include "app/parts/ui.h"

namespace gs::parts {

struct KeypadAsk {
  const Lever& row;
  double most;                                                 // at most the row's
  double usual;                                                // NaN: none
  std::string was;                                             // in words
  std::function<std::pair<std::string, State>(double)> would;  // what a value in range would do, before it is set
};

struct KeypadAnswer {
  std::optional<double> set;  // in the row's unit, in range
  bool usual = false, closed = false;
};

KeypadAnswer keypad(Ui& ui, const KeypadAsk& ask);

}  // namespace gs::parts
