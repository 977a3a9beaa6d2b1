// Usual things that people carry, with weights and chances to start a list from. Not a log of anything that failed.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::kit {

/// One catalogue row. Weight and chance are round figures to be replaced by one's own scales and memory.
struct UsualItem {
  std::string_view key;  // kept for ever: outing files hold it
  std::string_view name, function;
  bool retired;     // no longer offered, still read from old files
  double weight_g;  // of one piece
  double works;     // 0..1: chance that it works all through an outing
  bool vital;
  Evidence weight_evidence;
  std::string_view weight_source;
  Evidence works_evidence;
  std::string_view works_source;
};

/// All rows, retired ones included, in catalogue order.
std::span<const UsualItem> usual_items();
/// The row with this key, or null.
const UsualItem* find_usual_item(std::string_view key);

}  // namespace gs::kit
