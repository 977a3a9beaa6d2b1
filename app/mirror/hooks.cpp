#include "app/mirror/hooks.h"

#include "imgui.h"
#include "imgui_internal.h"

namespace gs::mirror {
namespace {

std::vector<std::string>& seen() {
  static std::vector<std::string> items;  // one watcher: the hooks are Dear ImGui's and know no owner
  return items;
}

}  // namespace

void watch_stray_items() {
  seen().clear();
  ImGui::GetCurrentContext()->TestEngineHookItems = true;
}

const std::vector<std::string>& stray_items() { return seen(); }

}  // namespace gs::mirror

// The four functions that Dear ImGui asks for.
void ImGuiTestEngineHook_ItemAdd(ImGuiContext*, ImGuiID, const ImRect&, const ImGuiLastItemData*) {}
void ImGuiTestEngineHook_ItemInfo(ImGuiContext* context, ImGuiID id, const char* label, ImGuiItemStatusFlags) {
  const bool own_debug_window = context->CurrentWindow && context->CurrentWindow->IsFallbackWindow;
  if (!own_debug_window) gs::mirror::seen().push_back(label && *label ? label : std::to_string(id));
}
void ImGuiTestEngineHook_Log(ImGuiContext*, const char*, ...) {}
const char* ImGuiTestEngine_FindItemDebugLabel(ImGuiContext*, ImGuiID) { return nullptr; }
