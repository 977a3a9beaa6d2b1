#include "app/mirror/keys.h"

#include <algorithm>

namespace gs::mirror {
namespace {

using platform::Key;
using Nodes = std::vector<Node>;

bool takes_focus(const Node& node) { return is_interactive(node.role) && !node.disabled; }

const Node* find(const Tree& tree, const std::string& id) {
  const auto at =
      std::find_if(tree.nodes.begin(), tree.nodes.end(), [&](const Node& node) { return node.id == id; });
  return at == tree.nodes.end() ? nullptr : &*at;
}

/// The next record in reading order for which `fits`, round the end; null when there is none.
template <class Fits>
const Node* next(const Tree& tree, const std::string& from, int direction, Fits fits) {
  const auto count = std::ptrdiff_t(tree.nodes.size());
  std::ptrdiff_t at = direction > 0 ? -1 : count;
  for (std::ptrdiff_t i = 0; i < count; ++i)
    if (tree.nodes[std::size_t(i)].id == from) at = i;
  for (std::ptrdiff_t n = 0; n < count; ++n) {
    at = (at + direction + count) % count;
    if (fits(tree.nodes[std::size_t(at)])) return &tree.nodes[std::size_t(at)];
  }
  return nullptr;
}

std::string keypad_key(const platform::KeyPress& press, const Tree& tree) {
  if (!find(tree, "keypad")) return {};
  if (press.key == Key::backspace) return "keypad:erase";
  if (press.key == Key::enter) return "keypad:set";
  if (press.key != Key::character) return {};
  if (press.code_point == '-') return "keypad:minus";
  const bool point = press.code_point == '.' || press.code_point == ',';
  for (const char* key : {"keypad:.", "keypad:,"})
    if (point && find(tree, key)) return key;
  return press.code_point >= '0' && press.code_point <= '9' ? "keypad:" + std::string(1, char(press.code_point))
                                                            : std::string{};
}

}  // namespace

KeyEffect effect_of(const platform::KeyPress& press, const Tree& tree, const std::string& focus) {
  KeyEffect effect;
  const Node* at = find(tree, focus);
  // Enter goes to an open keypad only while no other control has the keyboard.
  if (press.key != Key::enter || !at || at->id.rfind("keypad", 0) != 0) {
    if (std::string key = keypad_key(press, tree); !key.empty() && (press.key != Key::enter || !at)) {
      effect.press = std::move(key);
      return effect;
    }
  }
  if (press.key == Key::tab) {
    if (const Node* to = next(tree, focus, press.shift ? -1 : 1, takes_focus)) effect.focus = to->id;
    return effect;
  }
  if (!at) return effect;
  if (press.key == Key::enter || press.key == Key::space) {
    if (at->role != Role::slider) effect.press = at->id;
    return effect;
  }
  const int direction = press.key == Key::right || press.key == Key::up    ? 1
                        : press.key == Key::left || press.key == Key::down ? -1
                                                                           : 0;
  if (at->role == Role::slider) {
    if (direction != 0) effect.steps = direction;
    if (press.key == Key::page_up) effect.steps = 10;
    if (press.key == Key::page_down) effect.steps = -10;
    if (press.key == Key::home) effect.set = at->least;
    if (press.key == Key::end) effect.set = at->most;
    const bool figure = (press.code_point >= '0' && press.code_point <= '9') || press.code_point == '.' ||
                        press.code_point == ',' || (press.code_point == '-' && at->least < 0);
    if (press.key == Key::character && figure) effect.typed = char(press.code_point);
  } else if (at->role == Role::radio && direction != 0) {
    // down and right go on in a group, up and left go back
    const bool forward = press.key == Key::right || press.key == Key::down;
    const Node* to = next(tree, focus, forward ? 1 : -1,
                          [&](const Node& node) { return node.role == Role::radio && node.parent == at->parent; });
    if (to) {
      effect.focus = to->id;
      effect.press = to->id;
    }
  }
  return effect;
}

}  // namespace gs::mirror
