#include "core/outing/utf8.h"

namespace gs {

Rune first_rune(std::string_view text) {
  constexpr Rune kBad{0xFFFD, 1, false};
  const auto byte = [text](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) return {lead, 1, true};
  std::size_t bytes = 0;
  char32_t point = 0, least = 0;
  if (lead >= 0xC2 && lead <= 0xDF) {
    bytes = 2, point = lead & 0x1Fu, least = 0x80;
  } else if (lead >= 0xE0 && lead <= 0xEF) {
    bytes = 3, point = lead & 0x0Fu, least = 0x800;
  } else if (lead >= 0xF0 && lead <= 0xF4) {
    bytes = 4, point = lead & 0x07u, least = 0x10000;
  }
  if (bytes == 0 || text.size() < bytes) return kBad;
  for (std::size_t i = 1; i < bytes; ++i) {
    if ((byte(i) & 0xC0u) != 0x80u) return kBad;
    point = point << 6 | (byte(i) & 0x3Fu);
  }
  const bool surrogate = point >= 0xD800 && point <= 0xDFFF;
  if (point < least || point > 0x10FFFF || surrogate) return kBad;
  return {point, bytes, true};
}

void append_rune(std::string& text, char32_t point) {
  const auto put = [&text](char32_t byte) { text += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (point < 0x80) {
    put(point);
  } else if (point < 0x800) {
    put(0xC0 | point >> 6), put(0x80 | (point & 0x3F));
  } else if (point < 0x10000) {
    put(0xE0 | point >> 12), put(0x80 | (point >> 6 & 0x3F)), put(0x80 | (point & 0x3F));
  } else {
    put(0xF0 | point >> 18), put(0x80 | (point >> 12 & 0x3F)), put(0x80 | (point >> 6 & 0x3F));
    put(0x80 | (point & 0x3F));
  }
}

bool is_control(char32_t point) {
  return point < 0x20 || (point >= 0x7F && point <= 0x9F) || point == 0x2028 || point == 0x2029 ||
         (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069);
}

namespace {

std::string cleaned(std::string_view text, std::size_t most_chars, bool breaks) {
  std::string clean;
  for (std::size_t chars = 0; !text.empty() && chars < most_chars;) {
    Rune rune = first_rune(text);
    text.remove_prefix(rune.bytes);
    if (breaks && rune.point == '\r') {
      if (text.starts_with('\n')) continue;
      rune.point = '\n';
    }
    if (is_control(rune.point) && !(breaks && rune.point == '\n')) continue;
    append_rune(clean, rune.point);
    ++chars;
  }
  return clean;
}

}  // namespace

std::string clean_text(std::string_view text, std::size_t most_chars) { return cleaned(text, most_chars, false); }

std::string clean_lines(std::string_view text, std::size_t most_chars) { return cleaned(text, most_chars, true); }

}  // namespace gs
