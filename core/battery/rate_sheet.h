// A maker's sheet of amperes and hours: does it contradict itself, and which law carries it to other loads?
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "core/battery/kinetic.h"

namespace gs::battery {

/// One point: a full battery gives `current_a` > 0 for `hours` > 0.
struct Rate {
  double current_a, hours;
};

/// Two points of which the gentler load gives less charge in all, or lasts no longer: no battery can do that.
/// Indices into `sheet`, the gentler one first; nothing where all agree.
struct Contradiction {
  std::size_t gentler, harder;
};
std::optional<Contradiction> contradiction(std::span<const Rate> sheet);

/// Wells that carry the sheet: least squares of the logarithm of the current at each time. Nothing with fewer than
/// three points or a sheet that contradicts itself. rate_per_h is kept within 0.02..50, share within 0.05..0.95.
std::optional<Wells> fit_wells(std::span<const Rate> sheet);

/// Peukert's law of 1897, I^n t = constant: the straight line through logarithms, least squares over all points.
/// Nothing with fewer than two points, or an exponent below 1, which no battery has.
struct Peukert {
  double exponent;
  double ah;  // charge at one ampere: the constant K of I^n t = K
};
std::optional<Peukert> fit_peukert(std::span<const Rate> sheet);
double hours_at(const Peukert& law, double current_a);

}  // namespace gs::battery
