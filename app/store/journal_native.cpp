// One file that is only ever appended to: "checksum line" a line, flushed as it is written.
#include <fstream>

#include "app/store/checksum.h"
#include "app/store/folder.h"
#include "app/store/journal.h"

namespace gs::store {
namespace {

std::filesystem::path path() { return folder() / "tally.journal"; }

constexpr std::size_t kSumDigits = 16;

}  // namespace

void note(std::string_view line) {
  if (folder().empty()) return;
  std::error_code trouble;
  std::filesystem::create_directories(folder(), trouble);
  std::ofstream file(path(), std::ios::binary | std::ios::app);
  file << checksum(line) << ' ' << line << '\n';
  file.flush();
}

std::vector<std::string> noted() {
  std::vector<std::string> lines;
  if (folder().empty()) return lines;
  std::ifstream file(path(), std::ios::binary);
  for (std::string whole; std::getline(file, whole);) {
    if (whole.size() <= kSumDigits + 1) continue;
    std::string line = whole.substr(kSumDigits + 1);
    if (whole.compare(0, kSumDigits, checksum(line)) == 0) lines.push_back(std::move(line));
  }
  return lines;
}

void forget_noted() {
  std::error_code trouble;
  std::filesystem::remove(path(), trouble);
}

}  // namespace gs::store
