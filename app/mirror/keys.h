// What a key does to the focused record: used natively, and for sliders on the page.
#pragma once

#include <optional>
#include <string>

#include "app/mirror/mirror.h"
#include "app/platform/platform.h"

namespace gs::mirror {

struct KeyEffect {
  std::optional<std::string> focus;  // moves to this record
  std::string press;                 // id that is pressed
  int steps = 0;                     // of the focused slider
  std::optional<double> set;         // of the focused slider
  std::string typed;                 // a figure that begins on the focused slider
};

/// Tab and Shift+Tab move through the interactive records in reading order, round the ends; Enter and Space press;
/// arrows step a slider by 1, Page keys by 10, Home and End go to its ends, digits, point and minus begin to
/// type its value; arrows move between the options of a radio
/// group; digits, point, Backspace and Enter press an open keypad's keys.
KeyEffect effect_of(const platform::KeyPress& press, const Tree& tree, const std::string& focus);

}  // namespace gs::mirror
