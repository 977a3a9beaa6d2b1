// A desktop window through GLFW and OpenGL 3.
#include <GLFW/glfw3.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>

#include "app/platform/page_texts.h"
#include "app/platform/platform.h"
#include "imgui.h"
#include "imgui_impl_glfw.h"
#include "imgui_impl_opengl3.h"

namespace gs::platform {
namespace {

struct State {
  GLFWwindow* window = nullptr;
  Host* host = nullptr;
  std::string trouble;
  int frames = 0;
  double wake_at_s = -1;  // next known change; -1: none
  bool down = false;
};

State& state() {
  static State the;
  return the;
}

void point(PointerKind kind) {
  double x = 0, y = 0;
  glfwGetCursorPos(state().window, &x, &y);
  state().host->pointer({kind, Device::mouse, 0, float(x), float(y)});
}

void on_button(GLFWwindow*, int button, int action, int) {
  if (button != GLFW_MOUSE_BUTTON_LEFT) return;
  state().down = action == GLFW_PRESS;
  point(state().down ? PointerKind::down : PointerKind::up);
}
void on_move(GLFWwindow*, double, double) {
  if (state().down) point(PointerKind::move);
}
void on_scroll(GLFWwindow* window, double dx, double dy) {
  double x = 0, y = 0;
  glfwGetCursorPos(window, &x, &y);
  constexpr double kPxPerNotch = 60;
  state().host->wheel(float(x), float(y), float(-dx * kPxPerNotch), float(-dy * kPxPerNotch));
}
void on_key(GLFWwindow*, int key, int, int action, int mods) {
  if (action == GLFW_RELEASE) return;
  const bool shift = mods & GLFW_MOD_SHIFT;
  if (mods & (GLFW_MOD_CONTROL | GLFW_MOD_SUPER)) {
    if (key == GLFW_KEY_Z) state().host->key({shift ? Key::redo : Key::undo});
    if (key == GLFW_KEY_A) state().host->key({Key::select_all});
    if (key == GLFW_KEY_C) state().host->key({Key::copy});
    if (key == GLFW_KEY_X) state().host->key({Key::cut});
    if (key == GLFW_KEY_V) state().host->key({Key::paste});
    return;
  }
  const struct {
    int glfw;
    Key key;
  } keys[] = {{GLFW_KEY_TAB, Key::tab},
              {GLFW_KEY_ENTER, Key::enter},
              {GLFW_KEY_KP_ENTER, Key::enter},
              {GLFW_KEY_SPACE, Key::space},
              {GLFW_KEY_ESCAPE, Key::escape},
              {GLFW_KEY_LEFT, Key::left},
              {GLFW_KEY_RIGHT, Key::right},
              {GLFW_KEY_UP, Key::up},
              {GLFW_KEY_DOWN, Key::down},
              {GLFW_KEY_PAGE_UP, Key::page_up},
              {GLFW_KEY_PAGE_DOWN, Key::page_down},
              {GLFW_KEY_HOME, Key::home},
              {GLFW_KEY_END, Key::end},
              {GLFW_KEY_BACKSPACE, Key::backspace},
              {GLFW_KEY_DELETE, Key::erase_next}};
  for (const auto& entry : keys)
    if (entry.glfw == key) state().host->key({entry.key, shift});
}
void on_character(GLFWwindow*, unsigned code_point) {
  if (code_point != ' ') state().host->key({Key::character, false, code_point});
}
void on_change(GLFWwindow*, int, int) { state().host->view_changed(); }
void on_refresh(GLFWwindow*) { wake(1); }
void on_scale(GLFWwindow*, float, float) { state().host->view_changed(); }
void on_drop(GLFWwindow*, int count, const char** paths) {
  if (count < 1) return;
  std::ifstream file(paths[0], std::ios::binary);
  std::string text(std::istreambuf_iterator<char>(file), {});
  const std::string path = paths[0];
  state().host->file_picked(path.substr(path.find_last_of('/') + 1), text);
}

void draw() {
  State& the = state();
  the.host->prepare();
  ImGui_ImplOpenGL3_NewFrame();
  ImGui_ImplGlfw_NewFrame();
  int w = 0, h = 0;
  glfwGetFramebufferSize(the.window, &w, &h);
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = {float(w), float(h)};  // everything is drawn in device px
  io.DisplayFramebufferScale = {1, 1};
  ImGui::NewFrame();
  the.host->frame();
  ImGui::Render();
  glViewport(0, 0, w, h);
  const ImVec4 paper = ImGui::GetStyle().Colors[ImGuiCol_WindowBg];
  glClearColor(paper.x, paper.y, paper.z, 1);
  glClear(GL_COLOR_BUFFER_BIT);
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
  glfwSwapBuffers(the.window);
}

}  // namespace

bool start(Host& host, int width, int height, const char* title) {
  State& the = state();
  the.host = &host;
  if (!glfwInit()) {
    the.trouble = "no display: a window cannot be opened here";
    return false;
  }
  glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
  glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 0);
  the.window = glfwCreateWindow(width, height, title, nullptr, nullptr);
  if (!the.window) {
    the.trouble = "OpenGL 3 is not available here";
    glfwTerminate();
    return false;
  }
  glfwMakeContextCurrent(the.window);
  glfwSwapInterval(1);
  ImGui::CreateContext();
  ImGui::GetIO().IniFilename = nullptr;
  ImGui_ImplGlfw_InitForOpenGL(the.window,
                               false);  // our own callbacks: the parts read events, not the mouse's state
  ImGui_ImplOpenGL3_Init("#version 130");
  glfwSetMouseButtonCallback(the.window, on_button);
  glfwSetCursorPosCallback(the.window, on_move);
  glfwSetScrollCallback(the.window, on_scroll);
  glfwSetKeyCallback(the.window, on_key);
  glfwSetCharCallback(the.window, on_character);
  glfwSetFramebufferSizeCallback(the.window, on_change);
  glfwSetWindowSizeCallback(the.window, on_change);
  glfwSetWindowRefreshCallback(the.window, on_refresh);
  glfwSetWindowContentScaleCallback(the.window, on_scale);
  glfwSetDropCallback(the.window, on_drop);
  return true;
}

std::string_view trouble() { return state().trouble; }

void run() {
  State& the = state();
  wake(2);
  while (!glfwWindowShouldClose(the.window)) {
    if (the.frames > 0) {
      --the.frames;
      draw();
      glfwPollEvents();
      continue;
    }
    if (the.wake_at_s < 0) {
      glfwWaitEvents();
    } else if (const double wait_s = the.wake_at_s - now_s(); wait_s > 0) {
      glfwWaitEventsTimeout(wait_s);
    } else {
      the.wake_at_s = -1;
      wake(1);
    }
  }
  ImGui_ImplOpenGL3_Shutdown();
  ImGui_ImplGlfw_Shutdown();
  ImGui::DestroyContext();
  glfwDestroyWindow(the.window);
  glfwTerminate();
}

void wake(int frames) { state().frames = std::max(state().frames, frames); }

void wake_in(double seconds) {
  const double at = now_s() + std::max(0.0, seconds);
  double& due = state().wake_at_s;
  if (due < 0 || at < due) due = at;
}

View view() {
  View result;
  int w = 0, h = 0, pixel_w = 0, pixel_h = 0;
  glfwGetWindowSize(state().window, &w, &h);
  glfwGetFramebufferSize(state().window, &pixel_w, &pixel_h);
  result.width = float(w);
  result.height = float(h);
  result.pixel_ratio = w > 0 ? float(pixel_w) / float(w) : 1;
  return result;
}

double now_s() { return glfwGetTime(); }
void rebuild_font_texture() {
  ImGui_ImplOpenGL3_DestroyFontsTexture();
  ImGui_ImplOpenGL3_CreateFontsTexture();
}
void mirror(std::string_view) {}  // no screen reader bridge natively yet: the page is the accessible one
void copy_text(std::string_view text) { glfwSetClipboardString(state().window, std::string(text).c_str()); }
std::string pasted_text() {
  const char* text = glfwGetClipboardString(state().window);
  return text ? text : "";
}

void save_file(std::string_view name, std::string_view text) {
  const char* home = std::getenv("HOME");
  const std::string path = (home ? std::string(home) + "/" : std::string()) + std::string(name);
  std::ofstream file(path, std::ios::binary);
  file << text;
  state().host->stored(bool(file.flush()));
}
bool can_share() { return false; }
void share_file(std::string_view name, std::string_view text) { save_file(name, text); }
bool pick_file() { return false; }
std::string_view open_page(std::string_view page) {
  for (const PageText& one : kPageTexts)
    if (one.page == page) return one.text;
  return {};
}
void keep_awake(bool) {}  // a desktop's own saver is left alone
void vibrate(int) {}
bool print(std::string_view) { return false; }
void take_update() {}

}  // namespace gs::platform
