// All outings that are kept on this machine, as records under their keys: what lies on the shelf, and what was
// thrown away lately. Knows no storage: it tells which records are to be written.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/outing/outing.h"

namespace gs {

/// One kept outing. A text that cannot be read stays as it is and says why.
struct KeptOuting {
  std::string key;  // "outing", "outing-2", ... or "bin-1", ...
  std::string text;
  std::string name, date;
  std::string trouble;  // not empty: why it cannot be opened
  bool newer = false;   // a newer version wrote it: never written over unasked
};

/// A record that is to be put away, or to be taken away where there is no text.
struct RecordWrite {
  std::string key;
  std::optional<std::string> text;
};

class Shelf {
 public:
  static constexpr std::size_t kMostBinned = 10;

  /// A record as it was found at start or was kept by another window. False: it is none of the shelf's.
  bool found(std::string_view key, std::string text);
  /// Another window took it away.
  void lost(std::string_view key);

  const std::vector<KeptOuting>& outings() const { return outings_; }  // oldest key first
  const std::vector<KeptOuting>& bin() const { return bin_; }          // oldest first
  const KeptOuting* find(std::string_view key) const;
  std::string fresh_key() const;  // never one that is or was in use here

  void put(const std::string& key, const Outing& outing);
  /// The person said that a newer version's record may be written over.
  void release(std::string_view key);
  /// Into the bin, which holds the last ten; bring_back gives the new key, "" for an unknown one.
  void throw_away(std::string_view key);
  std::string bring_back(std::string_view bin_key);

  std::vector<RecordWrite> take_writes() { return std::exchange(writes_, {}); }

 private:
  void write(const KeptOuting& record) { writes_.push_back({record.key, record.text}); }
  std::vector<KeptOuting> outings_, bin_;
  std::vector<RecordWrite> writes_;
  int last_outing_ = 0, last_binned_ = 0;  // highest numbers seen
};

/// "outing" is 1, "outing-7" is 7; 0 for what is no such key. `stem`: "outing" or "bin".
int record_number(std::string_view key, std::string_view stem);

}  // namespace gs
