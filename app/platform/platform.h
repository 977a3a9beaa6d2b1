// What the program asks of the machine it runs on: one implementation natively, one for the web. Nothing else in
// app/ knows which one it is.
#pragma once

#include <string>
#include <string_view>

#include "core/pace/zone.h"

namespace gs::platform {

/// The surface in CSS (logical, text scale not applied) px, and how many device px one of them is.
struct View {
  float width = 0, height = 0;  // whole surface
  float pixel_ratio = 1;
  float inset_left = 0, inset_top = 0, inset_right = 0, inset_bottom = 0;  // the device's safe area
  bool reduced_motion = false;
};

enum class Device : unsigned char { mouse, touch, pen };
enum class PointerKind : unsigned char { down, move, up, cancel };

/// One pointer event; x, y in CSS px of the surface.
struct Pointer {
  PointerKind kind;
  Device device;
  int id;
  float x, y;
};

enum class Key : unsigned char {
  tab,
  enter,
  space,
  escape,
  left,
  right,
  up,
  down,
  page_up,
  page_down,
  home,
  end,
  backspace,
  character,
  undo,
  redo,
  erase_next,  // Delete
  select_all,
  copy,
  cut,
  paste
};

/// One key press (repeats included). `character` carries the typed character in `code_point`.
struct KeyPress {
  Key key;
  bool shift = false;
  unsigned code_point = 0;
};

/// What an assistive technology, or the page's own elements, did to a mirror node.
struct MirrorAction {
  std::string id;
  enum class Verb : unsigned char { press, set, focus, blur, type, commit, cancel } verb;
  double number = 0;   // for set
  std::string text{};  // for type (what stands in the field now) and commit
};

/// What the platform calls. One object, alive for the whole run.
class Host {
 public:
  virtual ~Host() = default;
  virtual void prepare() {}  // before the backend's new frame: fonts may be built anew here
  virtual void frame() = 0;  // between the backend's new frame and its rendering
  virtual void pointer(const Pointer&) = 0;
  virtual void wheel(float x, float y, float dx, float dy) = 0;  // CSS px, dy > 0 scrolls down
  virtual void key(const KeyPress&) = 0;
  virtual void act(const MirrorAction&) = 0;
  virtual void view_changed() = 0;   // size, ratio, insets, motion
  virtual void stored(bool ok) = 0;  // outcome of the last save
  /// Another window keeps this text under this key now (empty: took it away). `refused`: what this one wanted to
  /// keep there did not go in, since the other window's came first.
  virtual void kept_elsewhere(std::string_view key, std::string_view text, bool refused) = 0;
  virtual void file_picked(std::string_view name, std::string_view text) = 0;
  virtual void update_waits() = 0;  // a newer build is complete and waits for the person's word
};

/// Opens the window or takes the canvas, makes the OpenGL context and Dear ImGui's renderer. False: `trouble()`
/// says why.
bool start(Host& host, int width, int height, const char* title);
std::string_view trouble();
/// Runs until the window closes. On the web: arranges the first frame and returns at once; the page keeps the
/// program.
void run();

void wake(int frames = 1);     // draw that many frames soon; without a wake nothing is drawn
void wake_in(double seconds);  // one frame at the next known change; the earliest request counts
View view();
double now_s();                         // monotonic
void rebuild_font_texture();            // after the atlas was built anew
void mirror(std::string_view json);     // the accessible tree; called only when it differs from the last one
void copy_text(std::string_view text);  // to the clipboard
std::string pasted_text();              // from it; empty where the page's own field takes a paste
void save_file(std::string_view name, std::string_view text);  // hands the person a file
bool can_share();  // the system has a sheet that hands things to other programs
void share_file(std::string_view name, std::string_view text);  // through it; where it refuses, as save_file
bool pick_file();  // asks for one; answers through file_picked. False: a file is dropped on the window here
/// Opens a page of our own ("licences.html") in a new tab: empty. Where there are no tabs: the page's text, to be
/// shown instead.
std::string_view open_page(std::string_view page);
/// The day and the clock's offset as this machine has them now: what a new outing starts from.
struct Today {
  std::string date;        // ISO 8601, local
  int utc_offset_min = 0;  // how far the local clock stands before UTC (UTC-4: -240)
};
Today today();
/// The machine's zone on a date (ISO 8601); offset not known for what is no date.
pace::ZoneDay zone_on(std::string_view date);
double utc_now_s();  // seconds of UTC since 1970-01-01 as this machine's clock has them; it may be set back
/// Asks the machine not to darken the screen while `on`; asked again by itself when the page comes back into sight.
/// Where that is not offered nothing happens.
void keep_awake(bool on);
void vibrate(int milliseconds);  // a short buzz under the finger, where the machine has one
/// Sets words for paper and opens the machine's printing: {"title", "parts": [{"heading", "rows": [[label, value]],
/// "lines": [text]}]}. False: there is none here.
bool print(std::string_view json);
void take_update();  // the person said so: start the waiting build

}  // namespace gs::platform
