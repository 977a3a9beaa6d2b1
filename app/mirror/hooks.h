// Dear ImGui's item hooks: whoever draws an item past our own parts is found out, since such an item has no mirror
// record.
#pragma once

#include <string>
#include <vector>

namespace gs::mirror {

/// Turns the hooks on for the current context and forgets what was seen.
void watch_stray_items();
/// Labels (or ids) of interactive items that Dear ImGui has seen since.
const std::vector<std::string>& stray_items();

}  // namespace gs::mirror
