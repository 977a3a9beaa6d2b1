// The browser's storage. web/page/store.js reads both copies before the program starts and writes them behind its
// back.
#include <emscripten.h>

#include <algorithm>
#include <cstdlib>

#include "app/store/store.h"

// clang-format off
EM_JS(char*, page_kept, (int which), { return groundsheet.glue.to_heap(groundsheet.store.kept(which)); });
EM_JS(void, page_keep, (int which, const char* text, int size), { groundsheet.store.keep(which, UTF8ToString(text, size)); });
// clang-format on

namespace gs::store {
namespace {

enum What : int { outing = 0, settings = 1, notes = 2 };  // as in web/page/store.js

std::string kept(What what) {
  char* text = page_kept(what);  // zero-terminated, ours to free
  if (text == nullptr) return {};
  std::string copy = text;
  std::free(text);
  return copy;
}

}  // namespace

Kept load() {
  Kept found{kept(outing), kept(settings), {}};
  const std::string lines = kept(notes);  // one sentence a line
  for (std::size_t from = 0; from < lines.size();) {
    const std::size_t to = std::min(lines.find('\n', from), lines.size());
    if (to > from) found.notes.push_back(lines.substr(from, to - from));
    from = to + 1;
  }
  return found;
}

void save_outing(std::string_view text) { page_keep(outing, text.data(), static_cast<int>(text.size())); }
void save_settings(std::string_view text) { page_keep(settings, text.data(), static_cast<int>(text.size())); }

}  // namespace gs::store
