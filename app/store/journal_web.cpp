// The browser's side stands in web/page/journal.js; its lines were read before the program started.
#include <emscripten.h>

#include <algorithm>
#include <cstdlib>

#include "app/store/journal.h"

// clang-format off
EM_JS(void, page_note, (const char* line, int size), { groundsheet.journal.note(UTF8ToString(line, size)); });
EM_JS(char*, page_noted, (), { return groundsheet.glue.to_heap(groundsheet.journal.noted()); });
EM_JS(void, page_forget_noted, (), { groundsheet.journal.forget(); });
// clang-format on

namespace gs::store {

void note(std::string_view line) { page_note(line.data(), static_cast<int>(line.size())); }

std::vector<std::string> noted() {
  std::vector<std::string> lines;
  char* all = page_noted();  // zero-terminated, ours to free
  if (all == nullptr) return lines;
  const std::string text = all;
  std::free(all);
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t to = std::min(text.find('\n', from), text.size());
    if (to > from) lines.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  return lines;
}

void forget_noted() { page_forget_noted(); }

}  // namespace gs::store
