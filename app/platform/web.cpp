// The browser as the machine. Every event arrives through the page's own scripts (web/page); GLFW only makes the
// context.
#include <GLFW/glfw3.h>
#include <emscripten.h>
#include <emscripten/eventloop.h>
#include <emscripten/html5.h>
#include <imgui.h>
#include <imgui_impl_opengl3.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <string>

#include "app/platform/platform.h"

// The page's side of each call stands in web/page/glue.js. Texts cross as pointer and length.
// clang-format off
EM_JS(void, page_take_canvas, (), { groundsheet.glue.drop_glfw_listeners(GLFW, Module.canvas); });
EM_JS(void, page_first_frame, (), { groundsheet.glue.first_frame(); });
EM_JS(void, page_measure, (), { groundsheet.surface.measure(); });
EM_JS(void, page_trouble, (const char* text), { groundsheet.boot.fail(UTF8ToString(text)); });
EM_JS(void, page_context, (int lost), { groundsheet.boot.context(!!lost); });
EM_JS(void, page_mirror, (const char* text, int size), { groundsheet.mirror.show(JSON.parse(UTF8ToString(text, size))); });
EM_JS(void, page_copy, (const char* text, int size), { groundsheet.glue.copy_text(UTF8ToString(text, size)); });
EM_JS(void, page_save_file, (const char* name, int name_size, const char* text, int size), {
  groundsheet.glue.save_file(UTF8ToString(name, name_size), UTF8ToString(text, size)); });
EM_JS(int, page_can_share, (), { return groundsheet.glue.can_share() ? 1 : 0; });
EM_JS(void, page_share_file, (const char* name, int name_size, const char* text, int size), {
  groundsheet.glue.share_file(UTF8ToString(name, name_size), UTF8ToString(text, size)); });
EM_JS(void, page_pick_file, (), { groundsheet.glue.pick_file(); });
EM_JS(void, page_open, (const char* page, int size), { groundsheet.glue.open_page(UTF8ToString(page, size)); });
EM_JS(void, page_keep_awake, (int on), { groundsheet.machine.keep_awake(!!on); });
EM_JS(void, page_vibrate, (int milliseconds), { groundsheet.machine.vibrate(milliseconds); });
EM_JS(void, page_print, (const char* json, int size), { groundsheet.machine.print(JSON.parse(UTF8ToString(json, size))); });
EM_JS(void, page_take_update, (), { groundsheet.install.take(); });
// clang-format on

namespace gs::platform {
namespace {

constexpr double kLongestWait_s = 86400;  // a browser timer holds at most 2^31 ms; an early frame does no harm

// web/page/input.js sends these figures.
static_assert(static_cast<int>(PointerKind::cancel) == 3 && static_cast<int>(Device::pen) == 2);
static_assert(static_cast<int>(Key::tab) == 0 && static_cast<int>(Key::character) == 13 &&
              static_cast<int>(Key::redo) == 15);
static_assert(static_cast<int>(MirrorAction::Verb::blur) == 3 && static_cast<int>(MirrorAction::Verb::cancel) == 6);

struct Machine {
  Host* host = nullptr;
  View view;
  int device_width = 1, device_height = 1;
  int frames_left = 0;
  unsigned frames_drawn = 0;
  bool frame_asked = false, running = false, drawing = false, context_lost = false, shown = false;
  double last_frame_s = 0;
  double due_s = INFINITY;  // of the one timer
  long timer = 0;
  std::string trouble;
};
Machine machine;

bool fail(const char* why) {
  machine.trouble = why;
  page_trouble(why);
  return false;
}

void draw() {
  if (!machine.running || machine.context_lost || machine.drawing) return;
  machine.drawing = true;
  const double now = now_s();
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = {static_cast<float>(machine.device_width), static_cast<float>(machine.device_height)};
  io.DisplayFramebufferScale = {1, 1};
  // After an idle hour one step of a tenth of a second: nothing that moves should jump to its end.
  io.DeltaTime = static_cast<float>(std::clamp(now - machine.last_frame_s, 1e-4, 0.1));
  machine.last_frame_s = now;
  machine.host->prepare();
  ImGui_ImplOpenGL3_NewFrame();
  ImGui::NewFrame();
  machine.host->frame();
  ImGui::Render();
  glViewport(0, 0, machine.device_width, machine.device_height);
  const ImVec4& paper = ImGui::GetStyle().Colors[ImGuiCol_WindowBg];
  glClearColor(paper.x, paper.y, paper.z, 1);
  glClear(GL_COLOR_BUFFER_BIT);
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
  ++machine.frames_drawn;
  machine.drawing = false;
  if (!machine.shown) {
    machine.shown = true;
    page_first_frame();
  }
}

EM_BOOL on_animation_frame(double, void*);

void ask_for_frame() {
  if (machine.frame_asked || !machine.running || machine.context_lost || machine.frames_left <= 0) return;
  machine.frame_asked = true;
  emscripten_request_animation_frame(on_animation_frame, nullptr);
}

EM_BOOL on_animation_frame(double, void*) {
  machine.frame_asked = false;
  machine.frames_left = std::max(machine.frames_left - 1, 0);  // before drawing, so that the frame may ask for more
  // Some browsers change the ratio without an event.
  if (static_cast<float>(emscripten_get_device_pixel_ratio()) != machine.view.pixel_ratio) page_measure();
  draw();
  ask_for_frame();
  return EM_FALSE;
}

EM_BOOL on_context_lost(int, const void*, void*) {
  machine.context_lost = true;
  page_context(1);
  return EM_TRUE;  // else the browser never restores it
}

EM_BOOL on_context_restored(int, const void*, void*) {
  machine.context_lost = false;
  ImGui_ImplOpenGL3_DestroyDeviceObjects();
  ImGui_ImplOpenGL3_CreateDeviceObjects();
  while (glGetError() != GL_NO_ERROR) {  // deleting objects of the dead context leaves one behind
  }
  page_context(0);
  wake(3);
  return EM_TRUE;
}

void on_timer(void*) {
  machine.due_s = INFINITY;
  wake(1);
}

}  // namespace

bool start(Host& host, int width, int height, const char* title) {
  machine.host = &host;
  if (!glfwInit()) return fail("The window library did not start.");
  page_take_canvas();
  glfwWindowHint(GLFW_ALPHA_BITS, 0);
  glfwWindowHint(GLFW_DEPTH_BITS, 0);
  glfwWindowHint(GLFW_STENCIL_BITS, 0);
  GLFWwindow* window = glfwCreateWindow(width, height, title, nullptr, nullptr);
  if (window == nullptr) return fail("This browser gave no WebGL 2 drawing surface.");
  glfwMakeContextCurrent(window);
  if (ImGui::GetCurrentContext() == nullptr) ImGui::CreateContext();
  ImGuiIO& io = ImGui::GetIO();
  io.IniFilename = nullptr;
  io.LogFilename = nullptr;
  io.BackendPlatformName = "groundsheet web page";
  if (!ImGui_ImplOpenGL3_Init("#version 300 es")) return fail("The drawing library did not start.");
  emscripten_set_webglcontextlost_callback("#canvas", nullptr, EM_TRUE, on_context_lost);
  emscripten_set_webglcontextrestored_callback("#canvas", nullptr, EM_TRUE, on_context_restored);
  machine.last_frame_s = now_s();
  page_measure();  // answers through gs_resize
  return true;
}

std::string_view trouble() { return machine.trouble; }

void run() {
  machine.running = true;
  wake(2);
  emscripten_exit_with_live_runtime();
}

void wake(int frames) {
  machine.frames_left = std::max(machine.frames_left, frames);
  ask_for_frame();
}

void wake_in(double seconds) {
  const double wait_s = std::clamp(seconds, 0.0, kLongestWait_s);
  const double due_s = now_s() + wait_s;
  if (!(due_s < machine.due_s)) return;
  if (std::isfinite(machine.due_s)) emscripten_clear_timeout(machine.timer);
  machine.due_s = due_s;
  machine.timer = emscripten_set_timeout(on_timer, wait_s * 1000, nullptr);
}

View view() { return machine.view; }
double now_s() { return emscripten_get_now() / 1000; }

void rebuild_font_texture() {
  if (machine.context_lost) return;  // the restored context makes its own
  ImGui_ImplOpenGL3_DestroyFontsTexture();
  ImGui_ImplOpenGL3_CreateFontsTexture();
}

void mirror(std::string_view json) { page_mirror(json.data(), static_cast<int>(json.size())); }
void copy_text(std::string_view text) { page_copy(text.data(), static_cast<int>(text.size())); }
std::string pasted_text() { return {}; }
void save_file(std::string_view name, std::string_view text) {
  page_save_file(name.data(), static_cast<int>(name.size()), text.data(), static_cast<int>(text.size()));
}
bool can_share() { return page_can_share() != 0; }
void share_file(std::string_view name, std::string_view text) {
  page_share_file(name.data(), static_cast<int>(name.size()), text.data(), static_cast<int>(text.size()));
}
bool pick_file() {
  page_pick_file();
  return true;
}
std::string_view open_page(std::string_view page) {
  page_open(page.data(), static_cast<int>(page.size()));
  return {};
}
void keep_awake(bool on) { page_keep_awake(on ? 1 : 0); }
void vibrate(int milliseconds) { page_vibrate(milliseconds); }
bool print(std::string_view json) {
  page_print(json.data(), static_cast<int>(json.size()));
  return true;
}
void take_update() { page_take_update(); }

}  // namespace gs::platform

// What the page calls. Each input draws one frame; the host asks for more where something moves on.
namespace {
using namespace gs::platform;  // NOLINT: these functions are the namespace's outer face
}

extern "C" {

EMSCRIPTEN_KEEPALIVE void* gs_alloc(int size) { return std::malloc(static_cast<std::size_t>(size)); }
EMSCRIPTEN_KEEPALIVE void gs_free(void* memory) { std::free(memory); }
EMSCRIPTEN_KEEPALIVE unsigned gs_frames() { return machine.frames_drawn; }
EMSCRIPTEN_KEEPALIVE void gs_wake(int frames) { wake(frames); }

/// CSS px of the surface, its device px, device px a CSS px, safe area in CSS px.
EMSCRIPTEN_KEEPALIVE void gs_resize(float width, float height, int device_width, int device_height,
                                    float pixel_ratio, float left, float top, float right, float bottom,
                                    int reduced_motion) {
  machine.view = {width, height, pixel_ratio, left, top, right, bottom, reduced_motion != 0};
  machine.device_width = std::max(device_width, 1);
  machine.device_height = std::max(device_height, 1);
  if (machine.host == nullptr || !machine.running) return;
  machine.host->view_changed();
  draw();  // at once: the browser has just emptied the canvas and would show it
  wake(2);
}

EMSCRIPTEN_KEEPALIVE void gs_pointer(int kind, int device, int id, float x, float y) {
  machine.host->pointer({static_cast<PointerKind>(kind), static_cast<Device>(device), id, x, y});
  wake(1);
}

EMSCRIPTEN_KEEPALIVE void gs_wheel(float x, float y, float dx, float dy) {
  machine.host->wheel(x, y, dx, dy);
  wake(1);
}

EMSCRIPTEN_KEEPALIVE void gs_key(int key, int shift, unsigned code_point) {
  machine.host->key({static_cast<Key>(key), shift != 0, code_point});
  wake(1);
}

EMSCRIPTEN_KEEPALIVE void gs_act(const char* id, int size, int verb, double number) {
  machine.host->act(
      {std::string(id, static_cast<std::size_t>(size)), static_cast<MirrorAction::Verb>(verb), number});
  wake(1);
}

/// What a text field of the page holds: verbs type, commit and cancel.
EMSCRIPTEN_KEEPALIVE void gs_text(const char* id, int size, const char* text, int text_size, int verb) {
  machine.host->act({std::string(id, static_cast<std::size_t>(size)), static_cast<MirrorAction::Verb>(verb), 0,
                     std::string(text, static_cast<std::size_t>(text_size))});
  wake(1);
}

EMSCRIPTEN_KEEPALIVE void gs_stored(int ok) {
  machine.host->stored(ok != 0);
  wake(1);
}

EMSCRIPTEN_KEEPALIVE void gs_kept_elsewhere(const char* key, int key_size, const char* text, int size,
                                            int refused) {
  machine.host->kept_elsewhere({key, static_cast<std::size_t>(key_size)}, {text, static_cast<std::size_t>(size)},
                               refused != 0);
  wake(1);
}

EMSCRIPTEN_KEEPALIVE void gs_file_picked(const char* name, int name_size, const char* text, int size) {
  machine.host->file_picked({name, static_cast<std::size_t>(name_size)}, {text, static_cast<std::size_t>(size)});
  wake(1);
}

EMSCRIPTEN_KEEPALIVE void gs_update_waits() {
  machine.host->update_waits();
  wake(1);
}

}  // extern "C"
