// Walks UTF-8 text one code point at a time.
#pragma once

#include <cstddef>
#include <string_view>

namespace gs::look {

inline constexpr char32_t kReplacement = 0xFFFD;

/// The code point at byte `i`, which must be below the size; moves `i` behind it. A malformed byte gives
/// kReplacement and moves by one.
inline char32_t next_code_point(std::string_view text, std::size_t& i) {
  const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
  const unsigned char lead = byte(i++);
  if (lead < 0x80) return lead;
  const int more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : lead >= 0xC2 ? 1 : 0;
  if (more == 0 || lead > 0xF4 || i + std::size_t(more) > text.size()) return kReplacement;
  char32_t code = lead & (0x3FU >> more);
  for (std::size_t k = i; k < i + std::size_t(more); ++k) {
    if ((byte(k) & 0xC0U) != 0x80U) return kReplacement;
    code = (code << 6U) | (byte(k) & 0x3FU);
  }
  i += std::size_t(more);
  return code;
}

}  // namespace gs::look
