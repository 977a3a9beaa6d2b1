// One cell of a table for other programs.
#pragma once

#include <string>
#include <string_view>

namespace gs {

/// A cell by RFC 4180: quotes doubled, the whole in quotes where it holds a comma, a quote or a line break.
inline std::string csv_cell(std::string_view text) {
  if (text.find_first_of(",\"\r\n") == std::string_view::npos) return std::string(text);
  std::string quoted = "\"";
  for (const char c : text) quoted.append(c == '"' ? 2 : 1, c);
  return quoted + '"';
}

}  // namespace gs
