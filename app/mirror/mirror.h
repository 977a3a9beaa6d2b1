// What is on screen as an accessible tree. Parts write the records while they draw; the platform shows the tree to
// screen readers, keyboards and tests.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gs::mirror {

enum class Role : unsigned char {
  banner,
  navigation,
  main,
  group,
  list,
  listitem,
  dialog,
  radiogroup,
  table,
  row,
  columnheader,
  cell,  // containers and text cells
  heading,
  text,
  status,
  image,  // read only
  button,
  slider,
  radio,
  checkbox,  // interactive
};

/// One record. Rectangles in CSS px of the surface. Children name their container in `parent`.
struct Node {
  std::string id;      // the key of the lever, reading or control; unique on screen
  std::string parent;  // "" for the top level
  Role role = Role::text;
  std::string name;                               // accessible name; for text roles the text itself
  std::string value;                              // spoken value of a slider ("40 watts"), detail of an image
  double now = 0, least = 0, most = 0, step = 0;  // sliders
  int level = 0;                                  // headings
  signed char checked = -1, expanded = -1;        // -1: has no such state
  bool disabled = false, current = false, live = false;
  float x = 0, y = 0, w = 0, h = 0;
  float cut_top = 0, cut_bottom = 0;  // how much of it is scrolled out of sight there
  bool operator==(const Node&) const = default;
};

bool is_interactive(Role role);
std::string_view role_word(Role role);

/// One frame's tree, in reading order.
struct Tree {
  std::string title;
  std::string focus;  // id of the focused node, or ""
  std::vector<Node> nodes;
  bool operator==(const Tree&) const = default;
};

/// {"title","focus","nodes":[{"id","parent","role","name","value","now","min","max","step","level","checked","expanded",
/// "disabled","current","live","x","y","w","h","cut":[top,bottom]}]}; members that say nothing are left out.
std::string to_json(const Tree& tree);

}  // namespace gs::mirror
