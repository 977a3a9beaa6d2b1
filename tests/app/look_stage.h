// A Dear ImGui frame without a screen, so that tests see what the pen puts into the draw list.
#pragma once

#include <cmath>
#include <vector>

#include "app/look/pen.h"
#include "imgui.h"

namespace look_stage {

class Stage {
 public:
  explicit Stage(float scale, gs::ThemeName name = gs::ThemeName::daylight)
      : context_(ImGui::CreateContext()),
        fonts_(gs::look::build_fonts(*ImGui::GetIO().Fonts, scale)),
        theme_(gs::look::theme(name)) {
    ImGui::GetIO().IniFilename = nullptr;
    ImGui::GetIO().DisplaySize = {1024 * scale, 768 * scale};
    ImGui::NewFrame();
  }
  ~Stage() {
    ImGui::EndFrame();
    ImGui::DestroyContext(context_);
  }
  Stage(const Stage&) = delete;
  Stage& operator=(const Stage&) = delete;

  gs::look::Pen pen() { return {list(), fonts_, theme_}; }
  const gs::look::Fonts& fonts() const { return fonts_; }
  static ImDrawList& list() { return *ImGui::GetBackgroundDrawList(); }

  /// The vertices that `draw` adds.
  template <class Draw>
  static std::vector<ImDrawVert> drawn(Draw draw) {
    const int before = list().VtxBuffer.Size;
    draw();
    return {list().VtxBuffer.Data + before, list().VtxBuffer.Data + list().VtxBuffer.Size};
  }

  /// Area in square device px of the triangles that `draw` adds and whose three corners have full colour.
  template <class Draw>
  static double area(Draw draw) {
    const int before = list().IdxBuffer.Size;
    draw();
    double sum = 0;
    for (int i = before; i < list().IdxBuffer.Size; i += 3) {
      const auto at = [&](int k) { return list().VtxBuffer[int(list().IdxBuffer[i + k])]; };
      const ImDrawVert a = at(0), b = at(1), c = at(2);
      if ((a.col & b.col & c.col & IM_COL32_A_MASK) != IM_COL32_A_MASK) continue;
      sum += std::fabs(double(b.pos.x - a.pos.x) * double(c.pos.y - a.pos.y) -
                       double(c.pos.x - a.pos.x) * double(b.pos.y - a.pos.y)) /
             2;
    }
    return sum;
  }

  /// Whether any triangle that `draw` adds covers the point (device px).
  template <class Draw>
  static bool covers(float x, float y, Draw draw) {
    const int before = list().IdxBuffer.Size;
    draw();
    for (int i = before; i < list().IdxBuffer.Size; i += 3) {
      int left = 0, right = 0;
      for (int k = 0; k < 3; ++k) {
        const ImVec2 a = list().VtxBuffer[int(list().IdxBuffer[i + k])].pos;
        const ImVec2 b = list().VtxBuffer[int(list().IdxBuffer[i + (k + 1) % 3])].pos;
        ((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) > 0 ? left : right) += 1;
      }
      if (left == 0 || right == 0) return true;
    }
    return false;
  }

 private:
  ImGuiContext* context_;
  gs::look::Fonts fonts_;
  const gs::look::Theme& theme_;
};

struct Bounds {
  float x0 = 1e9F, y0 = 1e9F, x1 = -1e9F, y1 = -1e9F;
};

inline Bounds bounds(const std::vector<ImDrawVert>& vertices) {
  Bounds b;
  for (const ImDrawVert& v : vertices) {
    b.x0 = std::fmin(b.x0, v.pos.x), b.x1 = std::fmax(b.x1, v.pos.x);
    b.y0 = std::fmin(b.y0, v.pos.y), b.y1 = std::fmax(b.y1, v.pos.y);
  }
  return b;
}

inline constexpr float kRatios[] = {1, 1.25F, 1.5F, 2, 2.625F, 3, 5.25F};

}  // namespace look_stage
