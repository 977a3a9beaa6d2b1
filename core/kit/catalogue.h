// Usual things that people carry, with weights and chances to start a list from. Not a log of anything that failed.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::kit {

/// How far the things are carried. Bits, for rows that go with several.
enum class Style : unsigned char { car = 1, carry = 2, backpack = 4 };

/// One catalogue row. Weight and chance are round figures to be replaced by one's own scales and memory.
struct UsualItem {
  std::string_view key;  // kept for ever: outing files hold it
  std::string_view name, function;
  bool retired;     // no longer offered, still read from old files
  double weight_g;  // of one piece
  double volume_l;
  double set_up_min;  // its share of setting up, once
  double works;       // 0..1: chance that it works all through an outing and was not left at home
  bool vital;
  bool charge;             // wants charging the evening before
  std::string_view lever;  // key of the lever that it answers, "" for none
  double amount;           // what it answers, in that lever's unit
  int styles;              // of kit::Style, bits
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
