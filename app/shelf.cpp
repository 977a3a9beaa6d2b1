#include "app/shelf.h"

#include <algorithm>

#include "core/outing/archive.h"

namespace gs {
namespace {

KeptOuting read_kept(std::string_view key, std::string text) {
  KeptOuting kept;
  kept.key = key;
  LoadedOuting loaded = read_outing(text);
  kept.text = std::move(text);
  kept.trouble = std::move(loaded.refusal);
  kept.newer = loaded.newer;
  kept.name = std::move(loaded.outing.name);
  kept.date = std::move(loaded.outing.date);
  return kept;
}

auto at_key(std::vector<KeptOuting>& list, std::string_view key) {
  return std::find_if(list.begin(), list.end(), [&](const KeptOuting& one) { return one.key == key; });
}

/// In its place by number, or over the one that is there.
void place(std::vector<KeptOuting>& list, KeptOuting kept, std::string_view stem) {
  if (const auto at = at_key(list, kept.key); at != list.end()) {
    *at = std::move(kept);
    return;
  }
  const int number = record_number(kept.key, stem);
  const auto after = std::find_if(list.begin(), list.end(),
                                  [&](const KeptOuting& one) { return record_number(one.key, stem) > number; });
  list.insert(after, std::move(kept));
}

}  // namespace

int record_number(std::string_view key, std::string_view stem) {
  constexpr std::size_t kMostDigits = 8;
  if (key.substr(0, stem.size()) != stem) return 0;
  key.remove_prefix(stem.size());
  if (key.empty()) return 1;
  if (key[0] != '-' || key.size() < 2 || key.size() > 1 + kMostDigits || key[1] == '0') return 0;
  int number = 0;
  for (const char c : key.substr(1)) {
    if (c < '0' || c > '9') return 0;
    number = 10 * number + (c - '0');
  }
  return number;
}

bool Shelf::found(std::string_view key, std::string text) {
  if (const int number = record_number(key, "outing"); number > 0) {
    last_outing_ = std::max(last_outing_, number);
    place(outings_, read_kept(key, std::move(text)), "outing");
    return true;
  }
  if (const int number = record_number(key, "bin"); number > 0) {
    last_binned_ = std::max(last_binned_, number);
    place(bin_, read_kept(key, std::move(text)), "bin");
    return true;
  }
  return false;
}

void Shelf::lost(std::string_view key) {
  for (std::vector<KeptOuting>* list : {&outings_, &bin_})
    if (const auto at = at_key(*list, key); at != list->end()) list->erase(at);
}

const KeptOuting* Shelf::find(std::string_view key) const {
  const auto at =
      std::find_if(outings_.begin(), outings_.end(), [&](const KeptOuting& one) { return one.key == key; });
  return at == outings_.end() ? nullptr : &*at;
}

std::string Shelf::fresh_key() const {
  return last_outing_ == 0 ? "outing" : "outing-" + std::to_string(last_outing_ + 1);
}

void Shelf::put(const std::string& key, const Outing& outing) {
  KeptOuting kept;
  kept.key = key;
  kept.text = write_outing(outing);
  kept.name = outing.name;
  kept.date = outing.date;
  last_outing_ = std::max(last_outing_, record_number(key, "outing"));
  write(kept);
  place(outings_, std::move(kept), "outing");
}

void Shelf::release(std::string_view key) {
  if (const auto at = at_key(outings_, key); at != outings_.end()) at->newer = false;
}

void Shelf::throw_away(std::string_view key) {
  const auto at = at_key(outings_, key);
  if (at == outings_.end()) return;
  KeptOuting gone = std::move(*at);
  outings_.erase(at);
  const std::string was =
      std::exchange(gone.key, "bin-" + std::to_string(last_binned_ = std::max(1, last_binned_) + 1));
  write(gone);  // first into the bin, then off the shelf: whatever happens between, it is somewhere
  writes_.push_back({was, std::nullopt});
  bin_.push_back(std::move(gone));
  while (bin_.size() > kMostBinned) {
    writes_.push_back({bin_.front().key, std::nullopt});
    bin_.erase(bin_.begin());
  }
}

std::string Shelf::bring_back(std::string_view bin_key) {
  const auto at = at_key(bin_, bin_key);
  if (at == bin_.end()) return {};
  KeptOuting back = std::move(*at);
  bin_.erase(at);
  const std::string was = std::exchange(back.key, fresh_key());
  last_outing_ = std::max(last_outing_, record_number(back.key, "outing"));
  write(back);
  writes_.push_back({was, std::nullopt});
  outings_.push_back(back);
  return back.key;
}

}  // namespace gs
