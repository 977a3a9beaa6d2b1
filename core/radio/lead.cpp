// wires() itself is written by assets/catalogues/make_tables.py.
#include "core/radio/lead.h"

#include <cmath>

#include "core/units.h"

namespace gs::radio {
namespace {

// IEC 60028 (1925): annealed copper at 20 C, 1/58 ohm mm2/m and 0.00393 per C; from memory, met by a textbook's
// table.
constexpr double kCopperOhmMm2PerM = 1.0 / 58;
constexpr double kCopperPerC = 0.00393;
constexpr double kCopperAtC = 20;

// A drop that was worked out may stand a rounding above the mark that it means to meet.
constexpr double kRounding = 1e-9;

}  // namespace

const Wire* find_wire(std::string_view key) {
  for (const Wire& wire : wires())
    if (wire.key == key) return &wire;
  return nullptr;
}

double wire_diameter_mm(int gauge) { return 0.127 * std::pow(92.0, (36 - gauge) / 39.0); }

double wire_ohm_per_m(int gauge, double temperature_c) {
  const double diameter_mm = wire_diameter_mm(gauge);
  const double area_mm2 = kPi / 4 * diameter_mm * diameter_mm;
  return kCopperOhmMm2PerM / area_mm2 * (1 + kCopperPerC * (temperature_c - kCopperAtC));
}

double lead_ohm(const Lead& lead) {
  return 2 * lead.length_m * wire_ohm_per_m(lead.gauge, lead.temperature_c) + lead.contacts_ohm;
}

double supply_v(double battery_v, double current_a, double lead_ohm) { return battery_v - current_a * lead_ohm; }

std::optional<double> constant_power_a(double source_v, double ohm, double power_w) {
  const double under_root = source_v * source_v - 4 * ohm * power_w;
  if (under_root < 0 || source_v <= 0) return std::nullopt;
  // The same root written so that it keeps its digits when the resistance is small or 0.
  return 2 * power_w / (source_v + std::sqrt(under_root));
}

const Wire* thinnest_wire(const Lead& lead, double current_a, double most_v) {
  for (const Wire& wire : wires()) {
    if (wire.retired || wire.carries_a < current_a) continue;
    Lead tried = lead;
    tried.gauge = wire.gauge;
    if (current_a * lead_ohm(tried) <= most_v * (1 + kRounding)) return &wire;
  }
  return nullptr;
}

double allowed_ohm(double resting_v, double least_v, double current_a) { return (resting_v - least_v) / current_a; }

}  // namespace gs::radio
