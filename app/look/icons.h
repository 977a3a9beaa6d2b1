// Our own icons: strokes on a 24 px grid.
#pragma once

#include <array>
#include <cstddef>
#include <span>

namespace gs::look {

enum class Icon : unsigned char {
  battery,
  radio,
  feed,
  antenna,
  sky,
  contacts,
  safety,
  clock,
  kit,
  pin,
  undo,
  why,
  turn,
  sun,
  dusk,
  moon,
  more,
  plus,
  minus,
  check,
  close,
  erase,
  chev,
  down,
  keypad,
  person,
  child,
  stake,
  count
};

/// One stroke of an icon. `at` holds x, y pairs (line, closed) or cx, cy, r (circle, dashed, dot) or cx, cy, r,
/// from, to (arc; radians clockwise from +x, y down).
struct IconStroke {
  static constexpr std::size_t kMost = 10;
  enum class Kind : unsigned char { line, closed, circle, dashed, dot, arc } kind;
  unsigned char count;
  std::array<float, kMost> at;
};

/// The strokes of an icon; empty for Icon::count.
std::span<const IconStroke> strokes(Icon icon);

}  // namespace gs::look
