// Two copies of each record under the person's own data folder; a copy carries the checksum of its text.
#include <filesystem>
#include <fstream>
#include <sstream>

#include "app/store/checksum.h"
#include "app/store/folder.h"
#include "app/store/store.h"

namespace gs::store {
namespace {

namespace fs = std::filesystem;

std::string header_of(std::string_view text) { return checksum(text) + "\n"; }

bool write_copy(const fs::path& path, std::string_view text) {
  const fs::path fresh = path.string() + ".new";
  {
    std::ofstream file(fresh, std::ios::binary | std::ios::trunc);
    file << header_of(text) << text;
    if (!file.flush()) return false;
  }
  std::error_code trouble;
  fs::rename(fresh, path, trouble);  // replaces whole: a reader sees the old copy or the new one
  return !trouble;
}

enum class Found { none, good, damaged };

Found read_copy(const fs::path& path, std::string& text) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return Found::none;
  std::ostringstream all;
  all << file.rdbuf();
  const std::string whole = all.str();
  const std::size_t end = whole.find('\n');
  if (end == std::string::npos) return Found::damaged;
  text = whole.substr(end + 1);
  return whole.substr(0, end + 1) == header_of(text) ? Found::good : Found::damaged;
}

void save(const char* name, std::string_view text) {
  const fs::path dir = folder();
  std::error_code trouble;
  fs::create_directories(dir, trouble);
  // the second copy only once the first is whole
  if (write_copy(dir / (std::string(name) + ".a"), text)) write_copy(dir / (std::string(name) + ".b"), text);
}

std::string read(const char* name, std::vector<std::string>& notes) {
  const fs::path dir = folder();
  bool damaged = false;
  for (const char* copy : {".a", ".b"}) {
    const fs::path path = dir / (std::string(name) + copy);
    std::string text;
    const Found found = read_copy(path, text);
    if (found == Found::good) {
      if (damaged)
        notes.push_back(std::string("A damaged copy of the ") + name + " was set aside; the other copy is in use.");
      return text;
    }
    if (found == Found::damaged) {
      damaged = true;
      std::error_code trouble;
      fs::rename(path, path.string() + ".damaged", trouble);
    }
  }
  if (damaged) notes.push_back(std::string("Both copies of the ") + name + " are damaged; they were set aside.");
  return {};
}

}  // namespace

Kept load() {
  Kept kept;
  if (folder().empty()) {
    kept.notes.push_back("Nothing can be kept here: no home folder.");
    return kept;
  }
  kept.outing = read("outing", kept.notes);
  kept.settings = read("settings", kept.notes);
  return kept;
}

void save_outing(std::string_view text) { save("outing", text); }
void save_settings(std::string_view text) { save("settings", text); }

}  // namespace gs::store
