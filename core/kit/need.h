// What an outing needs, whatever it is called in the bag.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/evidence.h"
#include "core/kit/kit.h"

namespace gs::kit {

/// One job. `key` is an item's function.
struct Need {
  enum class Grade : unsigned char { vital, wise, safety };  // safety: never left at home to save weight
  std::string_view key, name;
  Grade grade;
  std::string_view words;
  Evidence evidence;
  std::string_view source;
};

/// All of them, the vital ones first, in catalogue order.
std::span<const Need> needs();
/// The need with this key, or null.
const Need* find_need(std::string_view key);

/// Needs that nothing in the list serves. Items with trouble serve nothing.
std::vector<const Need*> unserved(std::span<const Item> items);
/// Functions of grade safety, for may_stay_home.
std::vector<std::string_view> never_left();

}  // namespace gs::kit
