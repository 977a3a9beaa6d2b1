#include "app/parts/hand.h"

#include <algorithm>
#include <cmath>

namespace gs::parts {
namespace {

constexpr float kSlop = 8;             // px a finger may wander before a press becomes something else
constexpr float kForgive = 16;         // px outside a target where lifting still counts as a tap
constexpr double kSlideAfterS = 0.15;  // a resting finger on a track takes hold of it
constexpr double kFlingTimeS = 0.325;  // time constant of a fling; common practice, from memory
constexpr float kFlingStop = 20;       // px/s

}  // namespace

void Hand::pointer(const platform::Pointer& event, float x, float y, double now_s) {
  events_.push_back({event, x, y, now_s});
}

void Hand::wheel(float x, float y, float dy) {
  if (const Target* area = top(x, y, true)) {
    Area& state = scroll_[area->id];
    state.offset = std::clamp(state.offset + dy, 0.0F, state.most);
    state.speed = 0;
  }
}

const Target* Hand::top(float x, float y, bool scrolls) const {
  for (auto it = targets_.rbegin(); it != targets_.rend(); ++it)
    if ((it->kind == Target::Kind::scroll) == scrolls && it->box.holds(x, y)) return &*it;
  return nullptr;
}

void Hand::begin_frame(double now_s) {
  tapped_ = std::move(tapped_next_);
  tapped_next_.clear();
  if (drag_over_) {
    drag_id_.clear();
    drag_over_ = false;
  }
  const double dt = std::clamp(now_s - frame_s_, 0.0, 0.1);
  frame_s_ = now_s;
  for (auto& [id, area] : scroll_) {
    if (area.speed == 0 || (mode_ == Mode::scroll && scrolled_ == id)) continue;
    area.offset = std::clamp(area.offset + area.speed * float(dt), 0.0F, area.most);
    area.speed *= float(std::exp(-dt / kFlingTimeS));
    if (reduced_motion || std::abs(area.speed) < kFlingStop || area.offset <= 0 || area.offset >= area.most)
      area.speed = 0;
  }
  for (const Event& event : events_) handle(event);
  events_.clear();
  if (mode_ == Mode::wait_slide && now_s - down_since_ >= kSlideAfterS)
    start_slide({{}, start_x_, start_y_, now_s}, false);
}

std::vector<double> Hand::taps(std::string_view id) const {
  const auto at = tapped_.find(id);
  return at == tapped_.end() ? std::vector<double>{} : at->second;
}

void Hand::end_frame() {
  targets_ = std::move(next_);
  next_.clear();
}

void Hand::again() {
  next_.clear();
  tapped_.clear();
}

void Hand::handle(const Event& event) {
  switch (event.what.kind) {
    case platform::PointerKind::down:
      if (mode_ == Mode::idle) start(event);
      break;
    case platform::PointerKind::move:
      if (event.what.id == pointer_ && mode_ != Mode::idle) move(event);
      break;
    case platform::PointerKind::up:
      if (event.what.id == pointer_ && mode_ != Mode::idle) finish(event);
      break;
    case platform::PointerKind::cancel:
      if (event.what.id != pointer_) break;
      if (mode_ == Mode::slide) {
        drag_.ended = true;
        drag_over_ = true;
      }
      mode_ = Mode::idle;
      captured_.clear();
      break;
  }
}

void Hand::start(const Event& event) {
  pointer_ = event.what.id;
  touch_ = event.what.device != platform::Device::mouse;
  start_x_ = event.x;
  start_y_ = last_y_ = event.y;
  down_since_ = last_s_ = event.at_s;
  used_up_ = false;
  scratch = {};
  ++gesture_;
  const Target* area = top(event.x, event.y, true);
  scrolled_ = area ? area->id : std::string{};
  bool was_moving = false;
  if (area) {
    was_moving = scroll_[area->id].speed != 0;
    scroll_[area->id].speed = 0;
  }
  const Target* target = top(event.x, event.y, false);
  captured_ = target && !was_moving ? target->id : std::string{};  // a finger that stops a fling presses nothing
  if (captured_.empty()) {
    mode_ = Mode::lost;
    return;
  }
  captured_target_ = *target;
  if (target->kind == Target::Kind::tap) {
    mode_ = Mode::press;
  } else if (!touch_ || target->thumb.holds(event.x, event.y)) {
    start_slide(event, target->thumb.holds(event.x, event.y));
  } else {
    mode_ = Mode::wait_slide;
  }
}

void Hand::start_slide(const Event& event, bool on_thumb) {
  mode_ = Mode::slide;
  drag_id_ = captured_;
  drag_over_ = false;
  drag_ = {event.x, event.y, event.x, on_thumb, gesture_, false};
}

void Hand::move(const Event& event) {
  const float dx = std::abs(event.x - start_x_), dy = std::abs(event.y - start_y_);
  if (mode_ == Mode::slide) {
    drag_.x = event.x;
    drag_.y = event.y;
    return;
  }
  if (mode_ == Mode::scroll) {
    Area& area = scroll_[scrolled_];
    const float by = last_y_ - event.y;
    const double dt = event.at_s - last_s_;
    area.offset = std::clamp(area.offset + by, 0.0F, area.most);
    if (dt > 0) area.speed = 0.7F * float(by / dt) + 0.3F * area.speed;
    last_y_ = event.y;
    last_s_ = event.at_s;
    return;
  }
  if (std::max(dx, dy) <= kSlop) return;
  const bool can_scroll = touch_ && !scrolled_.empty() && scroll_[scrolled_].most > 0;
  if (mode_ == Mode::wait_slide && dx > dy) {
    start_slide(event, false);
  } else if (can_scroll && (dy >= dx || mode_ != Mode::wait_slide)) {
    mode_ = Mode::scroll;
    captured_.clear();
    last_y_ = event.y;
    last_s_ = event.at_s;
  } else if (mode_ == Mode::wait_slide || !captured_target_.box.grown(kForgive).holds(event.x, event.y)) {
    mode_ = Mode::lost;
    captured_.clear();
  }
}

void Hand::finish(const Event& event) {
  if (mode_ == Mode::press && !used_up_ && captured_target_.box.grown(kForgive).holds(event.x, event.y)) {
    tapped_[captured_].push_back(event.at_s);
  } else if (mode_ == Mode::wait_slide) {
    start_slide(event, false);  // a tap on the track: straight there
  }
  if (mode_ == Mode::slide) {
    drag_.x = event.x;
    drag_.y = event.y;
    drag_.ended = true;
    drag_over_ = true;
  }
  if (mode_ == Mode::scroll && event.at_s - last_s_ > 0.08) scroll_[scrolled_].speed = 0;
  mode_ = Mode::idle;
  captured_.clear();
}

float Hand::scroll(std::string_view id, float most) {
  Area& area = scroll_[std::string(id)];
  area.most = std::max(0.0F, most);
  area.offset = std::clamp(area.offset, 0.0F, area.most);
  return area.offset;
}

bool Hand::moving() const {
  if (mode_ == Mode::wait_slide) return true;
  return std::any_of(scroll_.begin(), scroll_.end(), [](const auto& entry) { return entry.second.speed != 0; });
}

}  // namespace gs::parts
