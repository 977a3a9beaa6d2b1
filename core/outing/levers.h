// Every input of the outing: one enumerator here and one row in levers.cpp.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/outing/readings.h"
#include "core/outing/table.h"

namespace gs {

enum class L : unsigned char {
  radio_full_power_w,
  radio_transmit_power_w,
  radio_tuner,
  radio_fold_back_swr,
  antenna_frequency_mhz,
  antenna_feed_r_ohm,
  antenna_feed_x_ohm,
  feedline_cable,
  feedline_length_m,
  feedline_roll_loss_pct,
  feedline_measured_swr,
  feedline_measured_at,
  count,
};

/// Plain levers plus two (limit, ease) for every judged reading. L::count counts the plain ones; as an id it is the
/// first limit, so it says "none" only where plain levers alone can stand.
std::size_t lever_count();
const Lever& lever(L id);
/// The lever with this key, or L(lever_count()).
L find_lever(std::string_view key);
inline bool is_lever(L id) { return std::size_t(id) < lever_count(); }

/// The levers that hold a judged reading's limit and ease. Only where is_judged(id).
L limit_lever(R id);
L ease_lever(R id);
bool is_judged(R id);

}  // namespace gs
