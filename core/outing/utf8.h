// UTF-8 as it comes from files and keyboards: decoded one character at a time, cleaned for names.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace gs {

/// One decoded character. Not valid: `point` is U+FFFD and `bytes` is 1, so that a reader always moves on.
struct Rune {
  char32_t point;
  std::size_t bytes;
  bool valid;
};

/// First character of a text that is not empty. Overlong forms, surrogates and points above U+10FFFF are not valid
/// (RFC 3629, section 3 and the table of section 4).
Rune first_rune(std::string_view text);

/// Appends a code point of at most U+10FFFF that is not a surrogate.
void append_rune(std::string& text, char32_t point);

/// Controls (C0, DEL, C1), line and paragraph separators and direction overrides: nothing a name on one line may
/// hold.
bool is_control(char32_t point);

/// At most `most_chars` characters, controls dropped, bytes that are not UTF-8 replaced by U+FFFD. Idempotent.
std::string clean_text(std::string_view text, std::size_t most_chars);

/// The same for words on several lines: '\n' stays, "\r\n" and a lone '\r' become one. Idempotent.
std::string clean_lines(std::string_view text, std::size_t most_chars);

}  // namespace gs
