// A machine without a screen for the app's tests: the platform and store of tests/app/stage.cpp, a shell, hands and
// keys.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "app/shell.h"

namespace gs::stage {

/// What the program asked of the machine since the stage was set.
struct Machine {
  platform::View view;
  double now_s = 1;
  int frames_wanted = 0;
  double wake_in_s = -1;
  int frames_drawn = 0;
  std::string mirror_json, copied, saved_name, saved_text, opened_page;
  bool asked_for_file = false, took_update = false;
  std::string outing, settings;                // the store's two oldest records
  std::map<std::string, std::string> records;  // its others
  bool shares = true;                          // the system has a share sheet
  std::string shared_name;
  bool saves = true;  // false: saving an outing comes too late
  std::vector<std::string> journal;
  double utc_s = 1781373600;  // 2026-06-13 18:00:00 UTC
  std::string date = "2026-06-13";
  int utc_offset_min = -240;
  pace::ClockChange change;  // of the machine's clock, on every date
  bool kept_awake = false;
  int buzzes = 0;
  std::string printed;
};
Machine& machine();

/// A shell on a surface of this size; the store holds what `machine()` holds.
class Stage {
 public:
  Stage(float width, float height, float ratio = 1);
  ~Stage();
  Stage(const Stage&) = delete;
  Stage& operator=(const Stage&) = delete;

  Shell& shell() { return *shell_; }
  Session& session() { return shell_->session(); }
  const mirror::Tree& tree() const { return shell_->tree(); }
  void frame();   // one frame, a 60th of a second later
  void settle();  // frames until none is wanted
  const mirror::Node* find(std::string_view id) const;
  const mirror::Node& at(std::string_view id) const;  // fails the test when it is not there
  void bring_into_sight(std::string_view id);         // at text size 100 %
  void tap(std::string_view id, platform::Device device = platform::Device::touch);
  void touch(platform::PointerKind kind, float x, float y, platform::Device device = platform::Device::touch);
  /// Down at one place, `steps` moves, up at the other; CSS px.
  void drag(float x0, float y0, float x1, float y1, int steps = 8,
            platform::Device device = platform::Device::touch);
  void press(platform::Key key, bool shift = false);
  void type(char character);
  void open_sample();

 private:
  Shell* shell_;
};

}  // namespace gs::stage
