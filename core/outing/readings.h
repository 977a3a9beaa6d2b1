// Every result of the plan: one enumerator here and one row in readings.cpp.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/outing/table.h"

namespace gs {

enum class R : unsigned char {
  radio_turned_down_w,
  feedline_matched_loss_db,
  feedline_total_loss_db,
  feedline_arrives_pct,
  feedline_power_to_antenna_w,
  feedline_cable_matched_w,
  feedline_cable_swr_w,
  feedline_swr_at_radio,
  feedline_weight_g,
  antenna_swr,
  count,
};

inline constexpr std::size_t kReadingCount = std::size_t(R::count);
const Reading& reading(R id);
/// The reading with this key, or R::count.
R find_reading(std::string_view key);

}  // namespace gs
