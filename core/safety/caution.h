// What can hurt someone, as data: what must be looked at, what to do, what to know.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::safety {

struct Caution {
  enum class Kind : unsigned char { look, act, know };  // look: safety is not known until somebody looked at it
  enum class When : unsigned char { always, battery, mast, tree, vehicle };
  std::string_view key;
  Kind kind;
  When when;  // what the outing must have for the row to be shown; rows to look at are always shown
  std::string_view name;
  std::string_view mark;    // key of the lever that says it was looked at or done; "" for what is only to know
  std::string_view sheets;  // keys of the links that raise it, with blanks between; all stand on the safety sheet
  std::string_view brief;   // words in a line
  // of kind look, else "": a question, the answer that it was looked at and is well, and the other one
  std::string_view ask, clear, trouble;
  std::string_view words;
  Evidence evidence;
  std::string_view source;
};
std::span<const Caution> cautions();
const Caution* find_caution(std::string_view key);
/// Whether the link with this key raises the row.
bool is_raised_by(const Caution& caution, std::string_view link_key);

/// How many rows of kind look are not among the keys that were looked at. Safety is not known while it is above 0,
/// whatever the distances say.
std::size_t left_to_look_at(std::span<const std::string_view> looked_at);

}  // namespace gs::safety
