// Small questions about the antenna, one file a subject; checks_antenna.cpp joins them.
#pragma once

#include "core/outing/check_rows.h"

namespace gs {

std::span<const Check> antenna_checks();

namespace antenna_rows {

std::span<const Check> length_checks();
std::span<const Check> space_checks();
std::span<const Check> rope_checks();
std::span<const Check> whip_checks();
std::span<const Check> swr_checks();
std::span<const Check> theory_checks();
std::span<const Check> trim_checks();
std::span<const Check> pull_checks();
std::span<const Check> band_checks();

/// The antenna catalogue as options, and bare or insulated wire.
std::span<const Option> kind_options();
std::span<const Option> wire_options();

inline constexpr Lever kKind{.key = "kind",
                             .name = "Antenna",
                             .link = Link::antenna,
                             .kind = gs::Kind::choice,
                             .options = kind_options,
                             .source = "the antenna catalogue"};
/// Bare or insulated, bare where nothing is said.
constexpr Lever wire_row(std::string_view source) {
  return {.key = "wire",
          .name = "Wire",
          .link = Link::antenna,
          .kind = gs::Kind::choice,
          .options = wire_options,
          .usual = [](const Plan&) { return 0.0; },
          .source = source};
}

/// A number that is asked for. `usual` null: the person must give it, or may leave it out where the check says so.
constexpr Lever asked(std::string_view key, std::string_view name, Unit unit, int digits, double least, double most,
                      double step, std::string_view source, double (*usual)(const Plan&) = nullptr) {
  return {.key = key,
          .name = name,
          .link = Link::antenna,
          .unit = unit,
          .digits = digits,
          .least = least,
          .most = most,
          .step = step,
          .usual = usual,
          .source = source};
}

constexpr Reading told(std::string_view key, std::string_view name, Unit unit, int digits, std::string_view source,
                       Better better = Better::neither) {
  return {.key = key,
          .name = name,
          .link = Link::antenna,
          .unit = unit,
          .digits = digits,
          .better = better,
          .source = source};
}

inline constexpr Lever kFrequency =
    asked("frequency_mhz", "Frequency", Unit::megahertz, 3, 1.8, 54, 0.05, "as in the plan");

}  // namespace antenna_rows
}  // namespace gs
