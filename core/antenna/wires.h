// Antenna wire as it is sold, and the transformers people wind: catalogue rows.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::antenna {

/// One row of assets/catalogues/antenna-wires.csv.
struct WireRow {
  std::string_view key, name;
  bool retired;
  double diameter_mm, mass_g_per_m, breaking_n;
  Evidence evidence;
  std::string_view source;
};
std::span<const WireRow> wires();

/// A tenth of the breaking load is what one pulls with: handbook line (second hand).
inline constexpr double kWorkingShare = 0.1;

/// One row of assets/catalogues/antenna-transformers.csv: impedance ratio and loss as measured.
struct TransformerRow {
  std::string_view key, name;
  bool retired;
  double ratio, loss_db;
  Evidence evidence;
  std::string_view source;
};
std::span<const TransformerRow> transformers();

}  // namespace gs::antenna
