// Every sheet and panel at every layout: what the hand can reach is in the mirror, large enough, named, once; texts
// are readable.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "app/mirror/hooks.h"
#include "imgui.h"
#include "tests/app/screens.h"

using namespace gs;
using stage::Screen;
using stage::screens;
using stage::Stage;

namespace {

struct Surface {
  float w, h;
  int text_pct;
};
constexpr Surface kSurfaces[] = {{1440, 900, 100}, {1024, 768, 100}, {820, 1180, 100}, {390, 844, 100},
                                 {844, 390, 100},  {1024, 768, 200}, {390, 844, 200}};

void set_screen(Stage& stage, const Screen& screen, const Surface& surface) {
  screen.open(stage);
  stage.session().settings.text_pct = surface.text_pct;
  stage.settle();
  stage.settle();
}

}  // namespace

TEST_CASE("what the hand can reach and what the mirror names are the same, once, and large enough") {
  int reached = 0;
  double least = 1e9;
  for (const Surface& surface : kSurfaces) {
    for (const Screen& screen : screens()) {
      Stage stage(surface.w, surface.h);
      set_screen(stage, screen, surface);
      const float text = stage.shell().text_scale();
      INFO(screen.name << " at " << surface.w << "x" << surface.h << ", text " << surface.text_pct << " %");
      std::set<std::string> ids;
      for (const mirror::Node& node : stage.tree().nodes) {
        CHECK_MESSAGE(ids.insert(node.id).second, "twice in the mirror: " << node.id);
        if (!node.parent.empty())
          CHECK_MESSAGE(ids.count(node.parent) == 1, node.id << " before its container " << node.parent);
        if (mirror::is_interactive(node.role)) CHECK_MESSAGE(!node.name.empty(), node.id << " has no name");
        if (node.role == mirror::Role::slider)
          CHECK_MESSAGE(!node.value.empty(), node.id << " has no spoken value");
      }
      for (const parts::Target& target : stage.shell().targets()) {
        if (target.kind == parts::Target::Kind::scroll) continue;
        ++reached;
        const mirror::Node* node = stage.find(target.id);
        REQUIRE_MESSAGE(node != nullptr, "reachable but not in the mirror: " << target.id);
        CHECK_MESSAGE(mirror::is_interactive(node->role), target.id << " is not interactive in the mirror");
        CHECK_MESSAGE(std::abs(node->x - target.box.x * text) < 0.1F,
                      target.id << " stands elsewhere in the mirror");
        CHECK_MESSAGE(node->w / text >= 47.9F, target.id << " is " << node->w / text << " px wide");
        CHECK_MESSAGE(node->h / text >= 47.9F, target.id << " is " << node->h / text << " px high");
        CHECK_MESSAGE(node->x >= -0.5F, target.id << " leaves the surface on the left");
        CHECK_MESSAGE(node->x + node->w <= surface.w + 0.5F, target.id << " leaves the surface on the right");
        least = std::min(least, double(std::min(node->w, node->h) / text));
      }
    }
  }
  MESSAGE(reached << " targets looked at, smallest side " << least << " px");
}

TEST_CASE("an interactive record that is in sight can be reached") {
  int looked_at = 0;
  for (const Surface& surface : kSurfaces) {
    for (const Screen& screen : screens()) {
      Stage stage(surface.w, surface.h);
      set_screen(stage, screen, surface);
      const float text = stage.shell().text_scale();
      INFO(screen.name << " at " << surface.w << "x" << surface.h);
      for (const mirror::Node& node : stage.tree().nodes) {
        if (!mirror::is_interactive(node.role) || node.disabled) continue;
        ++looked_at;
        bool reachable = false, inside_scroll = false;
        for (const parts::Target& target : stage.shell().targets()) {
          if (target.id == node.id) reachable = true;
          const look::Box& box = target.box;
          if (target.kind == parts::Target::Kind::scroll && node.y / text < box.bottom() - 1 &&
              (node.y + node.h) / text > box.y + 1 && node.x / text < box.right() &&
              (node.x + node.w) / text > box.x)
            inside_scroll = true;
        }
        CHECK_MESSAGE((reachable || !inside_scroll), node.id << " is in sight and cannot be reached");
      }
    }
  }
  MESSAGE(looked_at << " interactive records looked at");
}

TEST_CASE("no item is drawn past our own parts, and one that is would be found") {
  Stage stage(1024, 768);
  mirror::watch_stray_items();
  for (const Screen& screen : screens()) {
    stage.session().open(Outing{}, "a new outing");
    stage.session().view = View{};
    stage.settle();
    screen.open(stage);
    stage.settle();
  }
  CHECK_MESSAGE(mirror::stray_items().empty(),
                "first: " << (mirror::stray_items().empty() ? "" : mirror::stray_items().front()));
  ImGui::NewFrame();
  ImGui::Begin("Stray");
  ImGui::Button("A button without a record");
  ImGui::End();
  ImGui::Render();
  const auto& strays = mirror::stray_items();
  CHECK(std::find(strays.begin(), strays.end(), "A button without a record") != strays.end());
}

TEST_CASE("every text that is drawn has the contrast its theme promises") {
  for (const ThemeName name : {ThemeName::daylight, ThemeName::dusk, ThemeName::night}) {
    const double needed = name == ThemeName::night ? 4.5 : 7.0;
    double least = 21;
    std::string worst;
    int texts = 0;
    for (const Surface& surface : kSurfaces) {
      for (const Screen& screen : screens()) {
        Stage stage(surface.w, surface.h);
        stage.session().settings.theme = name;
        set_screen(stage, screen, surface);
        std::vector<look::TextRecord> drawn;
        stage.shell().record_texts(&drawn);
        stage.frame();
        stage.shell().record_texts(nullptr);
        REQUIRE(!drawn.empty());
        for (const look::TextRecord& record : drawn) {
          ++texts;
          const double ratio = look::contrast(record.colour, record.ground);
          if (ratio >= least) continue;
          least = ratio;
          worst = record.text + " on " + screen.name;
        }
      }
    }
    MESSAGE("theme " << int(name) << ": " << texts << " texts drawn, lowest contrast " << least << " (" << worst
                     << "), needed " << needed);
    CHECK(least >= needed);
  }
}

TEST_CASE("no text leaves the surface") {
  int texts = 0;
  for (const Surface& surface : kSurfaces) {
    for (const Screen& screen : screens()) {
      Stage stage(surface.w, surface.h);
      set_screen(stage, screen, surface);
      std::vector<look::TextRecord> drawn;
      stage.shell().record_texts(&drawn);
      stage.frame();
      stage.shell().record_texts(nullptr);
      INFO(screen.name << " at " << surface.w << "x" << surface.h << ", text " << surface.text_pct << " %");
      const float text = stage.shell().text_scale();
      for (const look::TextRecord& record : drawn) {
        ++texts;
        CHECK_MESSAGE(record.rect.x >= -0.5F, "cut on the left: " << record.text);
        CHECK_MESSAGE(record.rect.right() * text <= surface.w + 0.5F, "cut on the right: " << record.text);
      }
    }
  }
  MESSAGE(texts << " texts looked at");
}
