// The person's own things beside the open outing. Their record is written whole; one of a newer version, or one
// that cannot be read, is left alone and said.
#include <algorithm>

#include "app/session.h"
#include "core/outing/archive.h"

namespace gs {

void Session::load_things(std::string_view text) {
  LoadedThings loaded = read_things(text);
  things_ = std::move(loaded.things);
  things_trouble_.clear();
  if (!loaded.refusal.empty())
    things_trouble_ = "What was kept of them cannot be read and is left as it is: " + loaded.refusal;
  if (loaded.newer) things_trouble_ = "A newer version keeps them: they can be used here, and changed there.";
}

void Session::follow_things(std::string_view text, bool refused) {
  const std::vector<OwnThing> mine = things_;
  load_things(text);
  if (!refused || !things_trouble_.empty()) return;
  // both windows changed the list: what only this one has comes behind
  for (const OwnThing& thing : mine)
    if (std::find(things_.begin(), things_.end(), thing) == things_.end()) things_.push_back(thing);
  things_unsaved_ = true;
}

std::size_t Session::add_things(const std::vector<OwnThing>& things) {
  if (!may_change_things()) return 0;
  std::size_t added = 0;
  for (const OwnThing& thing : things) {
    if (things_.size() >= kMostOwnThings) break;
    if (std::find(things_.begin(), things_.end(), thing) != things_.end()) continue;
    things_.push_back(thing);
    ++added;
  }
  things_unsaved_ = things_unsaved_ || added > 0;
  return added;
}

bool Session::may_change_things() {
  if (things_trouble_.empty()) return true;
  notes.push_back(things_trouble_);
  return false;
}

void Session::keep_thing(OwnGroup group) {
  if (!may_change_things()) return;
  if (things_.size() >= kMostOwnThings) {
    notes.push_back("200 things are kept already; throw one away first.");
    return;
  }
  things_.push_back(take_own(group, "", outing_));
  things_unsaved_ = true;
}

void Session::use_thing(std::size_t at) {
  if (at >= things_.size()) return;
  history_.record(outing_, things_[at].name, false);
  outing_ = with_own(std::move(outing_), things_[at]);
  last_gesture_ = 0;
  last_lever_.reset();
  changed();
}

std::string Session::rename_thing(std::size_t at, const std::string& name) {
  if (at >= things_.size() || !things_trouble_.empty()) return "It cannot be renamed here.";
  if (name.empty()) return "A name is wanted, so that it can be found again.";
  if (things_[at].name == name) return {};
  things_[at].name = name;
  things_unsaved_ = true;
  return {};
}

void Session::drop_thing(std::size_t at) {
  if (at >= things_.size() || !may_change_things()) return;
  dropped_thing_ = std::move(things_[at]);
  things_.erase(things_.begin() + std::ptrdiff_t(at));
  things_unsaved_ = true;
}

void Session::bring_back_thing() {
  if (!dropped_thing_ || !may_change_things()) return;
  things_.push_back(std::move(*dropped_thing_));
  dropped_thing_.reset();
  things_unsaved_ = true;
}

}  // namespace gs
