#include "app/mirror/mirror.h"

#include <cmath>
#include <cstdio>
#include <iterator>

#include "core/outing/archive.h"

namespace gs::mirror {
namespace {

constexpr std::string_view kWords[] = {"banner",  "navigation", "main",   "group", "list",         "listitem",
                                       "dialog",  "radiogroup", "table",  "row",   "columnheader", "cell",
                                       "heading", "text",       "status", "image", "button",       "slider",
                                       "radio",   "checkbox",   "textbox"};
static_assert(std::size(kWords) == std::size_t(Role::textbox) + 1, "one word for every role, in the same order");

void put(std::string& out, std::string_view key, const std::string& json) {
  if (out.back() != '{') out += ',';
  out += '"';
  out += key;
  out += "\":";
  out += json;
}

std::string tenth(float px) { return exact_text(std::round(double(px) * 10) / 10); }

/// Packed with red lowest, as Dear ImGui does by default.
std::string colour_text(unsigned packed) {
  char text[12];
  std::snprintf(text, sizeof text, "\"#%02x%02x%02x\"", packed & 0xFF, packed >> 8 & 0xFF, packed >> 16 & 0xFF);
  return text;
}

std::string node_json(const Node& node) {
  std::string out = "{";
  put(out, "id", json_quote(node.id));
  if (!node.parent.empty()) put(out, "parent", json_quote(node.parent));
  put(out, "role", json_quote(role_word(node.role)));
  put(out, "name", json_quote(node.name));
  if (!node.value.empty()) put(out, "value", json_quote(node.value));
  if (!node.trouble.empty()) put(out, "trouble", json_quote(node.trouble));
  if (node.role == Role::slider) {
    put(out, "now", exact_text(node.now));
    put(out, "min", exact_text(node.least));
    put(out, "max", exact_text(node.most));
    put(out, "step", exact_text(node.step));
  }
  if (node.role == Role::textbox) put(out, "max", exact_text(node.most));
  if (node.level > 0) put(out, "level", std::to_string(node.level));
  if (node.checked >= 0) put(out, "checked", node.checked ? "true" : "false");
  if (node.expanded >= 0) put(out, "expanded", node.expanded ? "true" : "false");
  if (node.disabled) put(out, "disabled", "true");
  if (node.current) put(out, "current", "true");
  if (node.live) put(out, "live", "true");
  if (node.many_lines) put(out, "lines", "true");
  put(out, "x", tenth(node.x));
  put(out, "y", tenth(node.y));
  put(out, "w", tenth(node.w));
  put(out, "h", tenth(node.h));
  if (node.cut_top > 0 || node.cut_bottom > 0)
    put(out, "cut", "[" + tenth(node.cut_top) + "," + tenth(node.cut_bottom) + "]");
  return out + "}";
}

}  // namespace

bool is_interactive(Role role) {
  return role == Role::button || role == Role::slider || role == Role::radio || role == Role::checkbox ||
         role == Role::textbox;
}

std::string_view role_word(Role role) { return kWords[std::size_t(role)]; }

std::string to_json(const Tree& tree) {
  std::string out = "{\"title\":" + json_quote(tree.title) + ",\"focus\":" + json_quote(tree.focus) +
                    ",\"skin\":[" + colour_text(tree.skin.ink) + "," + colour_text(tree.skin.paper) + "," +
                    colour_text(tree.skin.edge) + "," + tenth(tree.skin.letter_px) + "],\"nodes\":[";
  for (std::size_t i = 0; i < tree.nodes.size(); ++i) out += (i ? "," : "") + node_json(tree.nodes[i]);
  return out + "]}";
}

}  // namespace gs::mirror
