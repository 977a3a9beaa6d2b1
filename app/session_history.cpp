// The history beside the open outing: an outing that was ended goes in, follows what is still changed in it, can be
// taken out and brought back. Its record is written whole, as that of the person's own things is.
#include <algorithm>

#include "app/session.h"
#include "core/outing/archive.h"

namespace gs {

void Session::load_past(std::string_view text) {
  LoadedHistory loaded = read_history(text);
  past_ = std::move(loaded.outings);
  past_kept_ = std::move(loaded.kept);
  past_trouble_.clear();
  if (!loaded.refusal.empty())
    past_trouble_ = "The history that was kept cannot be read and is left as it is: " + loaded.refusal;
  if (loaded.newer) past_trouble_ = "A newer version keeps the history: it counts here, and is changed there.";
  paces_ = own_paces(past_);
  work_out_again();
}

void Session::follow_past(std::string_view text, bool refused) {
  const std::vector<PastOuting> mine = past_;
  load_past(text);
  if (!refused || !past_trouble_.empty()) return;
  // both windows changed the list: what only this one has goes in as well
  for (const PastOuting& one : mine)
    if (std::find(past_.begin(), past_.end(), one) == past_.end()) past_ = with_past(std::move(past_), one);
  past_changed();
}

void Session::past_changed() {
  past_unsaved_ = true;
  paces_ = own_paces(past_);
  work_out_again();
}

bool Session::in_history() const { return past_row() != past_.end(); }

std::vector<PastOuting>::const_iterator Session::past_row() const {
  if (outing_.happened.on_air.empty()) return past_.end();
  PastOuting here;
  here.name = outing_.name;
  here.date = outing_.date;
  here.started_utc_s = outing_.happened.on_air.front().from_utc_s;
  return std::find_if(past_.begin(), past_.end(), [&](const PastOuting& one) { return is_same_outing(one, here); });
}

void Session::put_into_history() {
  if (!past_trouble_.empty()) return;
  if (std::optional<PastOuting> row = past_of(outing_, now_)) {
    if (const auto had = past_row(); had != past_.end()) row->kept = had->kept;
    past_ = with_past(std::move(past_), std::move(*row));
    past_changed();
  }
}

/// What is changed in an outing afterwards, its name or what was measured, is changed in its row. What was planned
/// stays as it was when it ended.
void Session::refresh_history() {
  const auto row = past_row();
  if (row == past_.end() || !past_trouble_.empty() || phase() != Phase::after) return;
  std::optional<PastOuting> fresh = past_of(outing_, now_);
  if (!fresh) return;
  fresh->kept = row->kept;
  fresh->target = row->target;
  fresh->left_planned_pct = row->left_planned_pct;
  if (*fresh == *row) return;
  past_ = with_past(std::move(past_), std::move(*fresh));
  past_changed();
}

void Session::drop_past(std::size_t at) {
  if (at >= past_.size() || !past_trouble_.empty()) return;
  dropped_past_ = std::move(past_[at]);
  past_.erase(past_.begin() + std::ptrdiff_t(at));
  past_changed();
}

void Session::bring_back_past() {
  if (!dropped_past_ || !past_trouble_.empty()) return;
  past_ = with_past(std::move(past_), std::move(*dropped_past_));
  dropped_past_.reset();
  past_changed();
}

std::size_t Session::add_past(const std::vector<PastOuting>& outings) {
  if (!past_trouble_.empty()) return 0;
  std::size_t added = 0;
  for (const PastOuting& one : outings) {
    if (std::any_of(past_.begin(), past_.end(), [&](const PastOuting& had) { return is_same_outing(had, one); }))
      continue;
    past_ = with_past(std::move(past_), one);
    ++added;
  }
  if (added > 0) past_changed();
  return added;
}

}  // namespace gs
