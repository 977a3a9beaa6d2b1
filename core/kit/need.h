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
  std::string_view key, name;
  bool vital;  // without it there is no outing; else it is wise to have
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

}  // namespace gs::kit
