// The program between platform and sheets: draws when something changed, keeps what changed, passes on hands and
// keys.
#pragma once

#include <string>
#include <vector>

#include "app/look/fonts.h"
#include "app/mirror/mirror.h"
#include "app/parts/ui.h"
#include "app/platform/platform.h"
#include "app/session.h"

namespace gs {

class Shell : public platform::Host {
 public:
  /// Reads what was kept. The Dear ImGui context must exist before the first prepare().
  Shell();
  ~Shell() override;

  void prepare() override;
  void frame() override;
  void pointer(const platform::Pointer& event) override;
  void wheel(float x, float y, float dx, float dy) override;
  void key(const platform::KeyPress& press) override;
  void act(const platform::MirrorAction& action) override;
  void view_changed() override;
  void stored(bool ok) override;
  void kept_elsewhere(std::string_view key, std::string_view text, bool refused) override;
  void file_picked(std::string_view name, std::string_view text) override;
  void update_waits() override;

  Session& session() { return session_; }
  /// CSS px a logical px: the person's text size, held where even the narrowest layout would not fit.
  float text_scale() const;
  const mirror::Tree& tree() const { return tree_; }
  const std::vector<parts::Target>& targets() const { return hand_.targets(); }
  /// For tests: every text of the last frame with its colour and ground.
  void record_texts(std::vector<look::TextRecord>* into) { record_ = into; }

 private:
  void draw(parts::Ui& ui);
  void draw_notes(parts::Ui& ui);
  void draw_sheet(parts::Ui& ui);
  void publish(parts::Ui& ui);
  void move_focus(const mirror::Tree& tree);
  void give_keyboard(std::string id);
  void keep();

  Session session_;
  look::Fonts fonts_;
  parts::Hand hand_;
  parts::Asked asked_;
  parts::Typing typing_;
  mirror::Tree tree_;
  std::string focus_, opener_;  // opener: what had the keyboard when the panel opened
  std::string type_opener_;     // the same of a keypad within a panel
  std::string shown_focus_;     // what was brought into sight since it got the keyboard
  struct Opened {
    Panel panel = Panel::none;
    bool types = false;
    bool operator==(const Opened&) const = default;
  } opened_;
  Settings kept_settings_;
  bool awake_ = false;  // as the platform was told
  bool update_waits_ = false, store_failed_ = false;
  std::string open_key_;  // which outing the store has as the open one
  std::vector<look::TextRecord>* record_ = nullptr;
};

}  // namespace gs
