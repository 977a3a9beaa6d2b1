// Small questions about the feed line, in three files: rolls and their loss, SWR along the line, what a cable is.
#pragma once

#include <span>
#include <string_view>

#include "core/outing/check_rows.h"

namespace gs::feedline_rows {

std::span<const Check> swr_part();
std::span<const Check> cable_part();
std::span<const Check> own_part();

/// A number that the person gives.
constexpr Lever number(std::string_view key, std::string_view name, Unit unit, int digits, double least,
                       double most, double step, std::string_view source, double (*usual)(const Plan&) = nullptr) {
  return {.key = key,
          .name = name,
          .link = Link::feedline,
          .unit = unit,
          .digits = digits,
          .least = least,
          .most = most,
          .step = step,
          .scale = least > 0 ? Scale::log : Scale::linear,
          .usual = usual,
          .source = source};
}
constexpr Reading told(std::string_view key, std::string_view name, Unit unit, int digits, Better better,
                       std::string_view source) {
  return {.key = key,
          .name = name,
          .link = Link::feedline,
          .unit = unit,
          .digits = digits,
          .better = better,
          .source = source};
}

inline std::span<const Option> cable_options() { return lever(L::feedline_cable).options(); }
constexpr Lever kCable{.key = "cable",
                       .name = "Cable",
                       .link = Link::feedline,
                       .kind = Kind::choice,
                       .options = cable_options,
                       .source = "the cable catalogue"};
constexpr Lever kFrequency =
    number("frequency_mhz", "Frequency", Unit::megahertz, 3, 1.8, 54, 0.05, "as in the plan");
constexpr Lever kLength = number("length_m", "Length", Unit::metre, 1, 0, 500, 0.5, "any roll that one carries");

/// "" or that the cable's law is stretched at this frequency.
std::string outside_range(const feedline::Cable& cable, double frequency_mhz);

}  // namespace gs::feedline_rows
