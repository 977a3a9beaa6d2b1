// What must not wait for the outing to be saved: a line for each contact, on disk at once, read back at the next
// start.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gs::store {

/// Puts one line away, in order. Natively it is on its way to the disk when this returns; on the web within a few
/// milliseconds. `line` holds no line break.
void note(std::string_view line);
/// The whole lines that were there at start, in the order of noting. A torn or altered one is left out.
std::vector<std::string> noted();
/// All lines are in a saved outing and may go.
void forget_noted();

}  // namespace gs::store
