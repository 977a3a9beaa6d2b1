// Turns pointer events into taps, drags and scrolling over the targets of the frame before. One finger at a time;
// what a press means is decided by where it began and where it first moves.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "app/look/pen.h"
#include "app/platform/platform.h"

namespace gs::parts {

/// A place that answers to the hand, as it was drawn. Later ones lie above earlier ones.
struct Target {
  enum class Kind : unsigned char { tap, slide, scroll } kind;
  std::string id;
  look::Box box;      // logical px, already cut by the clip
  look::Box thumb{};  // slide: where a touch drags at once
};

/// What a part remembers for the length of one press; cleared when a finger comes down.
struct Scratch {
  bool begun = false;
  float grip = 0;             // slider: thumb's centre minus where the finger took hold
  double repeat_until_s = 0;  // stepper: repeats are done up to this time
  double from = 0, to = 0;    // time line: ends of its scale, which must not move under the finger
  double px_per_m = 0;        // drawing to scale: its scale, origin and height when a handle was taken
  look::Point origin{};
  float height = 0;
};

/// A drag over a slider, in logical px.
struct Drag {
  float x, y;     // where the finger is
  float from_x;   // where it began
  bool on_thumb;  // it began on the thumb: keep the finger's distance to it
  int gesture;    // one number for the whole drag
  bool ended;     // the finger has just left
};

class Hand {
 public:
  /// Logical px. `now_s` is monotonic time.
  void pointer(const platform::Pointer& event, float x, float y, double now_s);
  void wheel(float x, float y, float dy);

  /// Before a frame is drawn: works through what came since, over the targets of the last frame.
  void begin_frame(double now_s);
  void add(Target target) { next_.push_back(std::move(target)); }
  void end_frame();
  /// The frame is drawn once more because something changed: what was done is not done twice.
  void again();

  bool tapped(std::string_view id) const { return tapped_.count(id) != 0; }
  /// When it was tapped since the last frame, monotonic seconds: more than one time where a frame took long.
  std::vector<double> taps(std::string_view id) const;
  bool down(std::string_view id) const { return captured_ == id && mode_ == Mode::press; }
  double down_since() const { return down_since_; }
  float down_x() const { return start_x_; }  // where it began
  /// The press was used up by holding: no tap follows.
  void use_up() { used_up_ = true; }
  const Drag* drag(std::string_view id) const { return drag_id_ == id ? &drag_ : nullptr; }
  bool dragging() const { return !drag_id_.empty(); }
  int gesture() const { return gesture_; }
  const std::vector<Target>& targets() const { return targets_; }
  bool pressing() const { return mode_ != Mode::idle; }
  /// As if tapped: keyboard, assistive technology.
  void press(const std::string& id, double now_s) { tapped_next_[id].push_back(now_s); }

  /// How far the area is scrolled, logical px; kept within 0..most.
  float scroll(std::string_view id, float most);
  float offset(const std::string& id) { return scroll_[id].offset; }
  void scroll_to(const std::string& id, float offset) { scroll_[id].offset = offset; }
  /// True while a fling runs: another frame is needed.
  bool moving() const;
  bool reduced_motion = false;
  Scratch scratch;

 private:
  enum class Mode : unsigned char { idle, press, wait_slide, slide, scroll, lost };
  struct Event {
    platform::Pointer what;
    float x, y;
    double at_s;
  };
  struct Area {
    float offset = 0, speed = 0, most = 0;
  };
  void handle(const Event& event);
  void start(const Event& event);
  void move(const Event& event);
  void finish(const Event& event);
  const Target* top(float x, float y, bool scrolls) const;
  void start_slide(const Event& event, bool on_thumb);

  std::vector<Target> targets_, next_;
  std::vector<Event> events_;
  std::map<std::string, std::vector<double>, std::less<>> tapped_, tapped_next_;
  std::map<std::string, Area, std::less<>> scroll_;
  Mode mode_ = Mode::idle;
  std::string captured_, scrolled_, drag_id_;
  Target captured_target_{};
  Drag drag_{};
  float start_x_ = 0, start_y_ = 0, last_y_ = 0;
  double down_since_ = 0, last_s_ = 0, frame_s_ = 0;
  int pointer_ = -1, gesture_ = 0;
  bool used_up_ = false, touch_ = false, drag_over_ = false;
};

}  // namespace gs::parts
