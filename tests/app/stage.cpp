#include "tests/app/stage.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "app/store/journal.h"
#include "app/store/store.h"
#include "imgui.h"

namespace gs::stage {

Machine& machine() {
  static Machine the;
  return the;
}

Stage::Stage(float width, float height, float ratio) {
  Machine fresh;
  fresh.outing = machine().outing;
  fresh.settings = machine().settings;
  fresh.records = machine().records;
  fresh.journal = machine().journal;
  fresh.utc_s = machine().utc_s;
  fresh.change = machine().change;
  machine() = fresh;
  machine().view.width = width;
  machine().view.height = height;
  machine().view.pixel_ratio = ratio;
  ImGui::CreateContext();
  ImGuiIO& io = ImGui::GetIO();
  io.IniFilename = nullptr;
  io.BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset;
  shell_ = new Shell;
  settle();
}

Stage::~Stage() {
  delete shell_;
  ImGui::DestroyContext();
  machine().outing.clear();
  machine().settings.clear();
  machine().records.clear();
  machine().journal.clear();
  machine().utc_s = Machine{}.utc_s;
  machine().change = {};
}

void Stage::frame() {
  Machine& m = machine();
  m.now_s += 1.0 / 60;
  m.utc_s += 1.0 / 60;
  shell_->prepare();
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = {m.view.width * m.view.pixel_ratio, m.view.height * m.view.pixel_ratio};
  io.DeltaTime = 1.0F / 60;
  ImGui::NewFrame();
  shell_->frame();
  ImGui::Render();
  ++m.frames_drawn;
}

void Stage::settle() {
  Machine& m = machine();
  m.frames_wanted = std::max(m.frames_wanted, 2);
  for (int n = 0; m.frames_wanted > 0; ++n) {
    REQUIRE_MESSAGE(n < 500, "frames never end");
    --m.frames_wanted;
    frame();
  }
}

const mirror::Node* Stage::find(std::string_view id) const {
  const auto& nodes = tree().nodes;
  const auto at = std::find_if(nodes.begin(), nodes.end(), [&](const mirror::Node& node) { return node.id == id; });
  return at == nodes.end() ? nullptr : &*at;
}

const mirror::Node& Stage::at(std::string_view id) const {
  const mirror::Node* node = find(id);
  REQUIRE_MESSAGE(node != nullptr, "not on screen: " << std::string(id));
  return *node;
}

void Stage::touch(platform::PointerKind kind, float x, float y, platform::Device device) {
  shell_->pointer({kind, device, 7, x, y});
}

/// Scrolls as a finger would until the record's middle can be reached.
void Stage::bring_into_sight(std::string_view id) {
  for (int tries = 0; tries < 30; ++tries) {
    const mirror::Node node = at(id);
    const float y = node.y + node.h / 2;
    const parts::Target* area = nullptr;
    for (const parts::Target& target : shell_->targets()) {
      if (target.id == id && target.box.holds(node.x + node.w / 2, y)) return;
      const bool beside = node.x + node.w / 2 >= target.box.x && node.x + node.w / 2 < target.box.right();
      if (target.kind == parts::Target::Kind::scroll && beside) area = &target;
    }
    if (area == nullptr) return;
    const look::Box box = area->box;
    shell_->wheel(box.mid_x(), box.mid_y(), 0, y - box.mid_y());
    settle();
  }
}

void Stage::tap(std::string_view id, platform::Device device) {
  bring_into_sight(id);
  const mirror::Node node = at(id);
  const float x = node.x + node.w / 2, y = node.y + node.h / 2;
  touch(platform::PointerKind::down, x, y, device);
  frame();
  touch(platform::PointerKind::up, x, y, device);
  settle();
}

void Stage::drag(float x0, float y0, float x1, float y1, int steps, platform::Device device) {
  touch(platform::PointerKind::down, x0, y0, device);
  frame();
  for (int i = 1; i <= steps; ++i) {
    const float t = float(i) / float(steps);
    touch(platform::PointerKind::move, x0 + (x1 - x0) * t, y0 + (y1 - y0) * t, device);
    frame();
  }
  touch(platform::PointerKind::up, x1, y1, device);
  settle();
}

void Stage::press(platform::Key key, bool shift) {
  shell_->key({key, shift});
  settle();
}

void Stage::type(char character) {
  shell_->key({platform::Key::character, false, static_cast<unsigned char>(character)});
  settle();
}

void Stage::open_sample() {
  tap("begin:sample");
  REQUIRE(find("chain:feedline") != nullptr);
}

}  // namespace gs::stage

// --- the machine itself
// -----------------------------------------------------------------------------------------------------

namespace gs::platform {

bool start(Host&, int, int, const char*) { return true; }
std::string_view trouble() { return {}; }
void run() {}
void wake(int frames) { stage::machine().frames_wanted = std::max(stage::machine().frames_wanted, frames); }
void wake_in(double seconds) { stage::machine().wake_in_s = seconds; }
View view() { return stage::machine().view; }
double now_s() { return stage::machine().now_s; }
void rebuild_font_texture() {}
void mirror(std::string_view json) { stage::machine().mirror_json = json; }
void copy_text(std::string_view text) { stage::machine().copied = text; }
std::string pasted_text() { return stage::machine().copied; }
void save_file(std::string_view name, std::string_view text) {
  stage::machine().saved_name = name;
  stage::machine().saved_text = text;
}
bool can_share() { return stage::machine().shares; }
void share_file(std::string_view name, std::string_view text) {
  stage::machine().shared_name = name;
  stage::machine().saved_text = text;
}
bool pick_file() {
  stage::machine().asked_for_file = true;
  return false;
}
std::string_view open_page(std::string_view page) {
  stage::machine().opened_page = page;
  return "# A page\n\nIts words.\n";
}
Today today() { return {stage::machine().date, stage::machine().utc_offset_min}; }
pace::ZoneDay zone_on(std::string_view) {
  return {double(stage::machine().utc_offset_min), stage::machine().change};
}
double utc_now_s() { return stage::machine().utc_s; }
void keep_awake(bool on) { stage::machine().kept_awake = on; }
void vibrate(int) { ++stage::machine().buzzes; }
bool print(std::string_view json) {
  stage::machine().printed = json;
  return true;
}
void take_update() { stage::machine().took_update = true; }

}  // namespace gs::platform

namespace gs::store {

Kept load() {
  Kept kept;
  for (const auto& [key, text] : stage::machine().records) kept.records.emplace(key, text);
  if (!stage::machine().outing.empty()) kept.records.emplace("outing", stage::machine().outing);
  if (!stage::machine().settings.empty()) kept.records.emplace("settings", stage::machine().settings);
  return kept;
}

void save(std::string_view key, std::string_view text) {
  REQUIRE(is_key(key));
  stage::Machine& m = stage::machine();
  const bool outing = key.substr(0, 6) == "outing";
  if (outing && !m.saves) return;
  (key == "outing" ? m.outing : key == "settings" ? m.settings : m.records[std::string(key)]) = text;
}

void remove(std::string_view key) {
  if (key == "outing") stage::machine().outing.clear();
  stage::machine().records.erase(std::string(key));
}

void note(std::string_view line) { stage::machine().journal.emplace_back(line); }
std::vector<std::string> noted() { return stage::machine().journal; }
void forget_noted() { stage::machine().journal.clear(); }

}  // namespace gs::store
