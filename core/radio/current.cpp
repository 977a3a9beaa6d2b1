// radio_classes() itself is written by assets/catalogues/make_tables.py.
#include "core/radio/current.h"

#include <algorithm>
#include <cmath>

namespace gs::radio {

double key_down_a(const SetCurrents& set, double power_w) {
  return set.keyed_idle_a + (set.full_power_a - set.keyed_idle_a) * std::sqrt(power_w / set.full_power_w);
}

double transmit_a(const SetCurrents& set, double power_w, const Mode& mode) {
  return set.keyed_idle_a + mode.current_share * (key_down_a(set, power_w) - set.keyed_idle_a);
}

double average_a(double receive_a, double transmit_a, double transmit_share) {
  return receive_a * (1 - transmit_share) + transmit_a * transmit_share;
}

FromReadings from_readings(std::span<const KeyedReading> readings, double full_power_w) {
  double mean_root = 0, mean_a = 0;
  for (const KeyedReading& one : readings) {
    mean_root += std::sqrt(one.power_w) / double(readings.size());
    mean_a += one.current_a / double(readings.size());
  }
  double squares = 0, products = 0;
  for (const KeyedReading& one : readings) {
    const double root = std::sqrt(one.power_w) - mean_root;
    squares += root * root;
    products += root * (one.current_a - mean_a);
  }
  if (!(squares > 1e-9) || !(full_power_w > 0)) return {0, 0, false};
  const double per_root_watt_a = products / squares;
  FromReadings found{};
  found.keyed_idle_a = mean_a - per_root_watt_a * mean_root;
  found.full_power_a = found.keyed_idle_a + per_root_watt_a * std::sqrt(full_power_w);
  found.sound = per_root_watt_a >= 0 && found.keyed_idle_a >= 0;
  for (const KeyedReading& one : readings) {
    const double law_a = found.keyed_idle_a + per_root_watt_a * std::sqrt(one.power_w);
    if (one.current_a > 0) found.worst_miss = std::max(found.worst_miss, std::abs(law_a / one.current_a - 1));
  }
  return found;
}

FromReadings from_two_readings(double low_w, double low_a, double high_w, double high_a, double full_power_w) {
  if (!(low_w < high_w)) return {0, 0, false};
  const KeyedReading two[] = {{low_w, low_a}, {high_w, high_a}};
  return from_readings(two, full_power_w);
}

double efficiency_pct(double power_w, double supply_v, double current_a) {
  return 100 * power_w / (supply_v * current_a);
}

SetCurrents usual_currents(double full_power_w) {
  const std::span<const RadioClass> rows = radio_classes();
  const auto in_proportion = [full_power_w](const RadioClass& row) {
    const double k = full_power_w / row.full_power_w;
    return SetCurrents{full_power_w, row.full_power_a * k, row.keyed_idle_a * k, row.receive_a};
  };
  if (full_power_w <= rows.front().full_power_w) return in_proportion(rows.front());
  for (std::size_t i = 1; i < rows.size(); ++i) {
    const RadioClass &a = rows[i - 1], &b = rows[i];
    if (full_power_w > b.full_power_w) continue;
    const double t = (full_power_w - a.full_power_w) / (b.full_power_w - a.full_power_w);
    const auto between = [t](double from, double to) { return from + t * (to - from); };
    return {full_power_w, between(a.full_power_a, b.full_power_a), between(a.keyed_idle_a, b.keyed_idle_a),
            between(a.receive_a, b.receive_a)};
  }
  return in_proportion(rows.back());
}

}  // namespace gs::radio
