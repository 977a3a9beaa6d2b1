// Small questions of the links sky, pace (with the clock) and kit, and short forms to write their rows with.
#pragma once

#include <span>
#include <string_view>

#include "core/outing/check_rows.h"

namespace gs {

std::span<const Check> sky_checks();  // all parts

namespace sky_rows {

std::span<const Check> sky_part();
std::span<const Check> wave_part();
std::span<const Check> pace_part();
std::span<const Check> clock_part();
std::span<const Check> kit_part();

template <int Value>
double usually(const Plan&) {
  return Value;
}

/// A number that the person gives: range, step and, where there is one, the usual value.
constexpr CheckInput input(std::string_view key, std::string_view name, Link link, Unit unit, int digits,
                           double least, double most, double step, std::string_view source,
                           double (*usual)(const Plan&) = nullptr, bool optional = false) {
  return {{.key = key,
           .name = name,
           .link = link,
           .unit = unit,
           .digits = digits,
           .least = least,
           .most = most,
           .step = step,
           .usual = usual,
           .optional = optional,
           .source = source}};
}
/// A result; judged where limit and ease differ.
constexpr CheckResult result(std::string_view key, std::string_view name, Link link, Unit unit, int digits,
                             Better better, std::string_view source, double limit = 0, double ease = 0) {
  return {
      {.key = key, .name = name, .link = link, .unit = unit, .digits = digits, .better = better, .source = source},
      limit,
      ease};
}

}  // namespace sky_rows
}  // namespace gs
