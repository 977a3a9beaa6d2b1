#include "core/outing/radio_readings.h"

namespace gs {

std::vector<radio::KeyedReading> radio_readings(const Plan& plan) {
  constexpr L kPairs[][2] = {{L::radio_read_one_w, L::radio_read_one_a},
                             {L::radio_read_two_w, L::radio_read_two_a},
                             {L::radio_read_three_w, L::radio_read_three_a}};
  std::vector<radio::KeyedReading> readings;
  for (const auto& [power, current] : kPairs)
    if (plan.has_all(power, current)) readings.push_back({plan[power], plan[current]});
  return readings;
}

radio::FromReadings currents_from_readings(const Plan& plan) {
  const std::vector<radio::KeyedReading> readings = radio_readings(plan);
  if (readings.size() < 2 || !plan.has(L::radio_full_power_w)) return {0, 0, false};
  return radio::from_readings(readings, plan[L::radio_full_power_w]);
}

}  // namespace gs
