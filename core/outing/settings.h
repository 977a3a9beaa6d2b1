// How a person likes the tool, apart from any outing.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/kit/kit.h"
#include "core/outing/quantity.h"

namespace gs {

enum class ThemeName : unsigned char { daylight, dusk, night, count };

/// A value that a person's own outings made usual: it stands in for the table's.
struct OwnUsual {
  std::string key;  // of a number lever
  double value = 0;
  bool operator==(const OwnUsual&) const = default;
};
inline constexpr std::size_t kMostOwnUsual = 60;

struct Settings {
  ThemeName theme = ThemeName::daylight;
  int text_pct = 100;  // 100 to 200
  bool left_hand = false;
  Style style;                            // decimal sign, feet, Fahrenheit
  std::string licence = {};               // an option's key of rules.class, "" for none
  std::vector<kit::Item> own_items = {};  // of the person's own making, to take along again
  std::vector<OwnUsual> usual = {};
  bool operator==(const Settings& o) const {
    return theme == o.theme && text_pct == o.text_pct && left_hand == o.left_hand && licence == o.licence &&
           own_items == o.own_items && usual == o.usual && style.decimal_sign == o.style.decimal_sign &&
           style.feet == o.style.feet && style.fahrenheit == o.style.fahrenheit;
  }
};

}  // namespace gs
