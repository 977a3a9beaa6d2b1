// Where the native store keeps its files.
#pragma once

#include <cstdlib>
#include <filesystem>

namespace gs::store {

/// The person's own data folder; empty where the machine names none.
inline std::filesystem::path folder() {
  namespace fs = std::filesystem;
  if (const char* given = std::getenv("GROUNDSHEET_DATA"); given && *given) return given;
  if (const char* data = std::getenv("XDG_DATA_HOME"); data && *data) return fs::path(data) / "groundsheet";
  if (const char* home = std::getenv("HOME"); home && *home) return fs::path(home) / ".local/share/groundsheet";
  return {};
}

}  // namespace gs::store
