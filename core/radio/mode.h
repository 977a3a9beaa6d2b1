// Modes, and what each takes while sending: of the set's power and of the battery's current. The two are not the
// same.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::radio {

struct Mode {
  std::string_view key;  // kept for ever: outing files hold it
  std::string_view name;
  bool retired;
  double average_power_share;  // average over peak envelope power while sending: for exposure
  Evidence power_evidence;
  std::string_view power_source;
  double current_share;  // average over key-down of the current above keyed idle, while sending: for the battery
  Evidence current_evidence;
  std::string_view current_source;
};

/// All rows, retired ones included, in catalogue order.
std::span<const Mode> modes();
/// The row with this key, or null.
const Mode* find_mode(std::string_view key);

}  // namespace gs::radio
