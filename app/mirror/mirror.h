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
  checkbox,
  textbox,  // interactive
};

/// One record. Rectangles in CSS px of the surface. Children name their container in `parent`.
struct Node {
  std::string id;      // the key of the lever, reading or control; unique on screen
  std::string parent;  // "" for the top level
  Role role = Role::text;
  std::string name;     // accessible name; for text roles the text itself
  std::string value;    // spoken value of a slider ("40 watts"), detail of an image, what stands in a textbox
  std::string trouble;  // textbox: why what was typed cannot be, shown below it
  double now = 0, least = 0, most = 0, step = 0;  // sliders; most characters of a textbox
  int level = 0;                                  // headings
  signed char checked = -1, expanded = -1;        // -1: has no such state
  bool disabled = false, current = false, live = false;
  bool many_lines = false;  // textbox
  float x = 0, y = 0, w = 0, h = 0;
  float cut_top = 0, cut_bottom = 0;  // how much of it is scrolled out of sight there
  bool operator==(const Node&) const = default;
};

bool is_interactive(Role role);
std::string_view role_word(Role role);

/// How a text field looks where the machine lays one of its own over ours: opaque colours as Dear ImGui packs them,
/// letters in CSS px.
struct Skin {
  unsigned ink = 0, paper = 0, edge = 0;
  float letter_px = 0;
  bool operator==(const Skin&) const = default;
};

/// One frame's tree, in reading order.
struct Tree {
  std::string title;
  std::string focus;  // id of the focused node, or ""
  Skin skin;          // of text fields
  std::vector<Node> nodes;
  bool operator==(const Tree&) const = default;
};

/// {"title","focus","skin":[ink,paper,edge,letter],"nodes":[{"id","parent","role","name","value","trouble","now","min",
/// "max","step","level","checked","expanded","disabled","current","live","lines","x","y","w","h","cut":[top,bottom]}]};
/// members that say nothing are left out. Colours are "#rrggbb".
std::string to_json(const Tree& tree);

}  // namespace gs::mirror
