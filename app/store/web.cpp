// The browser's storage. web/page/store.js reads both copies before the program starts and writes them behind its
// back.
#include <emscripten.h>

#include <algorithm>
#include <cstdlib>

#include "app/store/store.h"

// clang-format off
EM_JS(char*, page_kept_keys, (), { return groundsheet.glue.to_heap(groundsheet.store.keys().join('\n')); });
EM_JS(char*, page_kept, (const char* key, int size), {
  return groundsheet.glue.to_heap(groundsheet.store.kept(UTF8ToString(key, size))); });
EM_JS(char*, page_store_notes, (), { return groundsheet.glue.to_heap(groundsheet.store.notes()); });
EM_JS(void, page_keep, (const char* key, int key_size, const char* text, int size), {
  groundsheet.store.keep(UTF8ToString(key, key_size), UTF8ToString(text, size)); });
EM_JS(void, page_remove, (const char* key, int size), { groundsheet.store.remove(UTF8ToString(key, size)); });
// clang-format on

namespace gs::store {
namespace {

/// A text that the page left in our memory, zero-terminated and ours to free.
std::string taken(char* text) {
  if (text == nullptr) return {};
  std::string copy = text;
  std::free(text);
  return copy;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t to = std::min(text.find('\n', from), text.size());
    if (to > from) lines.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  return lines;
}

}  // namespace

Kept load() {
  Kept found;
  for (std::string& key : lines_of(taken(page_kept_keys()))) {
    std::string text = taken(page_kept(key.data(), static_cast<int>(key.size())));
    if (is_key(key)) found.records.emplace(std::move(key), std::move(text));
  }
  found.notes = lines_of(taken(page_store_notes()));
  return found;
}

void save(std::string_view key, std::string_view text) {
  page_keep(key.data(), static_cast<int>(key.size()), text.data(), static_cast<int>(text.size()));
}
void remove(std::string_view key) { page_remove(key.data(), static_cast<int>(key.size())); }

}  // namespace gs::store
