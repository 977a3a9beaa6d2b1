// The open outing and the others on the shelf: which one is open, and that none is lost on the way from one to the
// next.
#include "app/session.h"
#include "core/outing/archive.h"
#include "core/outing/utf8.h"

namespace gs {
namespace {

std::string named(const std::string& name) { return name.empty() ? "the outing without a name" : name; }

std::string with_suffix(const std::string& name, std::string_view suffix) {
  const std::string stem = name.empty() ? "Outing" : name;
  return clean_text(stem, kMostNameChars - suffix.size()) + std::string(suffix);
}

}  // namespace

void Session::start_with(const std::string& key) {
  const KeptOuting* open = shelf.find(key);
  if (open && !open->trouble.empty())
    notes.push_back("The kept outing could not be read: " + open->trouble + " It stays in the list of outings.");
  for (const KeptOuting& kept : shelf.outings())
    if (kept.trouble.empty() && (!open || !open->trouble.empty() || kept.key == open->key)) {
      key_ = kept.key;
      restore(read_outing(kept.text).outing);
      if (open && kept.key == open->key) return;
    }
  if (!shelf.find(key_)) return;
  if (!shelf.find(key_)->trouble.empty()) key_ = shelf.fresh_key();
}

void Session::put_away() {
  if (!unsaved_) return;
  if (held()) {
    // a newer version's record stays as it is: what was changed here goes beside it
    key_ = shelf.fresh_key();
    outing_.name = with_suffix(outing_.name, ", changed");
  }
  unsaved_ = false;
  shelf.put(key_, outing_);
}

void Session::keep_over() {
  shelf.release(key_);
  unsaved_ = true;
  put_away();
}

void Session::open(Outing outing, std::string what) {
  put_away();
  // one that holds nothing yet gives its place; any other stays on the shelf
  const bool untouched = outing_ == Outing{} && !held();
  history_.record(outing_, std::move(what), false, true, key_);
  if (!untouched) key_ = shelf.fresh_key();
  outing_ = std::move(outing);
  last_lever_.reset();
  changed();
  put_away();
}

std::string Session::open_kept(const std::string& key) {
  if (key == key_) return {};
  put_away();
  const KeptOuting* kept = shelf.find(key);
  if (!kept) return "It is no longer there.";
  LoadedOuting loaded = read_outing(kept->text);
  if (!loaded.refusal.empty()) return named(kept->name) + " cannot be opened: " + loaded.refusal;
  history_.record(outing_, "opening " + named(loaded.outing.name), false, true, key_);
  key_ = key;
  restore(std::move(loaded.outing));
  return {};
}

void Session::duplicate(const std::string& key) {
  put_away();
  const KeptOuting* kept = shelf.find(key);
  if (!kept) return;
  LoadedOuting loaded = read_outing(kept->text);
  if (!loaded.refusal.empty()) return;
  loaded.outing.name = with_suffix(loaded.outing.name, ", copy");
  loaded.outing.happened = {};  // what happened, happened on the one
  shelf.put(shelf.fresh_key(), loaded.outing);
}

std::string Session::rename_kept(const std::string& key, const std::string& name) {
  if (name.empty()) return "A name is wanted, so that it can be found again.";
  if (key == key_) {
    if (name != outing_.name) rename(name);
    return {};
  }
  const KeptOuting* kept = shelf.find(key);
  if (!kept) return "It is no longer there.";
  LoadedOuting loaded = read_outing(kept->text);
  if (!loaded.refusal.empty()) return "It cannot be renamed: " + loaded.refusal;
  if (loaded.newer) return "A newer version made it; open it there to rename it.";
  loaded.outing.name = name;
  shelf.put(key, loaded.outing);
  return {};
}

void Session::throw_away(const std::string& key) {
  put_away();
  shelf.throw_away(key);
  if (key != key_) return;
  // another one takes its place: the newest that can be opened, or an empty one
  key_ = shelf.fresh_key();
  history_ = {};  // its steps would bring it back under a key that is gone
  Outing next;
  for (const KeptOuting& kept : shelf.outings()) {
    LoadedOuting loaded = read_outing(kept.text);
    if (!loaded.refusal.empty()) continue;
    key_ = kept.key;
    next = std::move(loaded.outing);
  }
  restore(std::move(next));
}

void Session::follow(const std::string& key, std::string text, bool refused) {
  const std::string mine = outing_.name;
  if (key != key_) {
    const KeptOuting* ours = refused ? shelf.find(key) : nullptr;
    if (ours) {
      LoadedOuting loaded = read_outing(ours->text);
      loaded.outing.name = with_suffix(loaded.outing.name, ", second");
      if (loaded.refusal.empty()) shelf.put(shelf.fresh_key(), loaded.outing);
    }
    shelf.found(key, std::move(text));
    return;
  }
  LoadedOuting theirs = read_outing(text);
  shelf.found(key, std::move(text));
  if (refused || unsaved_ || !theirs.refusal.empty()) {
    // both windows changed it: this one's goes beside the other's
    key_ = shelf.fresh_key();
    outing_.name = with_suffix(outing_.name, ", second");
    unsaved_ = true;
    put_away();
    notes.push_back(named(mine) +
                    " was changed in another window at the same time. Both are kept; this is now \u201C" +
                    outing_.name + "\u201D.");
    return;
  }
  if (theirs.outing == outing_) return;
  history_.record(outing_, "what another window changed", false);
  restore(std::move(theirs.outing));
}

}  // namespace gs
