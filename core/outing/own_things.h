// What a person owns and takes on many outings: my battery, my radio, my cable, my antenna. Kept apart from any
// outing, taken from one and put into another.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/outing/outing.h"

namespace gs {

enum class OwnGroup : unsigned char { battery, radio, cable, antenna, count };

/// The levers that belong to the thing and not to the outing, as they were set; all others are not set.
struct OwnThing {
  OwnGroup group = OwnGroup::battery;
  std::string name;  // at most 80 characters, never empty
  Values set = Values(lever_count());
  std::string kept;  // levers of later versions, as Outing::kept has them
  bool operator==(const OwnThing&) const = default;
};

std::string_view group_key(OwnGroup group);     // "battery": in files
std::string_view group_word(OwnGroup group);    // "battery": "my battery"
std::string_view group_plural(OwnGroup group);  // "Batteries"

/// Whether the lever is a thing's own. What changes from outing to outing is not: how warm or empty the battery is,
/// the power and mode one chooses, where the antenna hangs, what was measured.
bool belongs_to(OwnGroup group, L id);
/// Whether the outing says anything of its own about this thing.
bool has_own(OwnGroup group, const Outing& outing);
/// "LiFePO4, 12 Ah": what tells it from others, for want of a name.
std::string own_summary(const OwnThing& thing, const Style& style);

/// Takes it from the outing. `name` is cleaned; an empty one becomes the summary.
OwnThing take_own(OwnGroup group, std::string_view name, const Outing& outing);
/// The outing with this thing in the place of what it had: levers of the group that the thing does not say are not
/// set.
Outing with_own(Outing outing, const OwnThing& thing);

inline constexpr std::size_t kMostOwnThings = 200;

struct LoadedThings {
  std::vector<OwnThing> things;
  std::string refusal;             // not empty: why the text is no such file; nothing is read then
  std::vector<std::string> notes;  // what was left out or read otherwise
  bool newer = false;              // of a later version: never written over
};
/// {"groundsheet": 1, "kind": "things", "things": [{"group", "name", "levers": {key: value}}]}; levers as in an
/// outing file. Never throws. Things of an unknown group or without a name are left out and noted; so are those
/// beyond 200.
LoadedThings read_things(std::string_view text);
std::string write_things(const std::vector<OwnThing>& things);

}  // namespace gs
