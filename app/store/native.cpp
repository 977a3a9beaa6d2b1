// Two copies of each record under the person's own data folder; a copy carries the checksum of its text.
#include <filesystem>
#include <fstream>
#include <set>
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

/// "outing" for "outing-7": how a note calls it.
std::string noun(const std::string& name) { return name.substr(0, name.find('-')); }

std::string read(const std::string& name, std::vector<std::string>& notes) {
  const fs::path dir = folder();
  bool damaged = false;
  for (const char* copy : {".a", ".b"}) {
    const fs::path path = dir / (name + copy);
    std::string text;
    const Found found = read_copy(path, text);
    if (found == Found::good) {
      if (damaged)
        notes.push_back("A damaged copy of the " + noun(name) + " was set aside; the other copy is in use.");
      return text;
    }
    if (found == Found::damaged) {
      damaged = true;
      std::error_code trouble;
      fs::rename(path, path.string() + ".damaged", trouble);
    }
  }
  if (damaged) notes.push_back("Both copies of the " + noun(name) + " are damaged; they were set aside.");
  return {};
}

}  // namespace

Kept load() {
  Kept kept;
  if (folder().empty()) {
    kept.notes.push_back("Nothing can be kept here: no home folder.");
    return kept;
  }
  std::set<std::string> names;
  std::error_code trouble;
  for (const fs::directory_entry& entry : fs::directory_iterator(folder(), trouble)) {
    const std::string extension = entry.path().extension().string(), name = entry.path().stem().string();
    if ((extension == ".a" || extension == ".b") && is_key(name)) names.insert(name);
  }
  for (const std::string& name : names)
    if (std::string text = read(name, kept.notes); !text.empty()) kept.records.emplace(name, std::move(text));
  return kept;
}

void save(std::string_view key, std::string_view text) {
  if (!is_key(key)) return;
  const fs::path dir = folder();
  std::error_code trouble;
  fs::create_directories(dir, trouble);
  // the second copy only once the first is whole
  const std::string name(key);
  if (write_copy(dir / (name + ".a"), text)) write_copy(dir / (name + ".b"), text);
}

void remove(std::string_view key) {
  if (!is_key(key)) return;
  std::error_code trouble;
  for (const char* copy : {".b", ".a"}) fs::remove(folder() / (std::string(key) + copy), trouble);
}

}  // namespace gs::store
