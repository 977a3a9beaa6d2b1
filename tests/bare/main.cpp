// What ours is measured against: the usual page of an immediate-mode program. Dear ImGui's own font, slider and
// text, its own GLFW input, drawn at every chance the screen gives. Same compiler, same options; never shipped.
#define GLFW_INCLUDE_ES3
#include <GLFW/glfw3.h>
#include <emscripten.h>

#include "imgui.h"
#include "imgui_impl_glfw.h"
#include "imgui_impl_opengl3.h"

// What the test reads: where the slider lies, its value, the text that rests on it.
// clang-format off
EM_JS(void, bare_tell, (float length_m, float loss_db, float left, float top, float right, float bottom), {
  const bare = globalThis.bare || (globalThis.bare = { frames: 0 });
  ++bare.frames;
  bare.length_m = length_m;
  bare.text = loss_db.toFixed(3);
  bare.box = [left, top, right, bottom];
});
// clang-format on

namespace {

GLFWwindow* window = nullptr;
float length_m = 15;

void frame() {
  glfwPollEvents();
  ImGui_ImplOpenGL3_NewFrame();
  ImGui_ImplGlfw_NewFrame();
  ImGui::NewFrame();
  ImGui::SetNextWindowPos({20, 20});
  ImGui::SetNextWindowSize({700, 120});
  ImGui::Begin("Bare");
  ImGui::SliderFloat("Length, m", &length_m, 0, 100);
  const ImVec2 from = ImGui::GetItemRectMin(), to = ImGui::GetItemRectMax();
  const float loss_db = 0.047F * length_m;  // any figure that follows the slider will do
  ImGui::Text("Loss %.3f dB", double(loss_db));
  ImGui::End();
  ImGui::Render();
  int width = 0, height = 0;
  glfwGetFramebufferSize(window, &width, &height);
  glViewport(0, 0, width, height);
  glClearColor(0.1F, 0.1F, 0.1F, 1);
  glClear(GL_COLOR_BUFFER_BIT);
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
  bare_tell(length_m, loss_db, from.x, from.y, to.x, to.y);
}

}  // namespace

int main() {
  if (!glfwInit()) return 1;
  window = glfwCreateWindow(1024, 768, "Bare", nullptr, nullptr);
  if (window == nullptr) return 1;
  glfwMakeContextCurrent(window);
  ImGui::CreateContext();
  ImGui::GetIO().IniFilename = nullptr;
  ImGui_ImplGlfw_InitForOpenGL(window, true);
  ImGui_ImplOpenGL3_Init("#version 300 es");
  emscripten_set_main_loop(frame, 0, 1);
  return 0;
}
