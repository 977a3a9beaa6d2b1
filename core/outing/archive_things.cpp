// The person's own things, to and from a file. Their levers are read and written by what reads and writes an
// outing's.
#include <algorithm>
#include <utility>

#include "core/outing/archive.h"
#include "core/outing/archive_parts.h"
#include "core/outing/own_things.h"
#include "core/outing/utf8.h"

namespace gs {
namespace {

std::string as_outing_text(std::string_view name, std::string_view levers) {
  return object_text(
      {member_text("groundsheet", std::to_string(kFileVersion)), member_text("kind", json_quote("outing")),
       member_text("name", json_quote(name)), member_text("levers", levers)},
      "");
}

OwnGroup find_group(std::string_view key) {
  for (int i = 0; i < int(OwnGroup::count); ++i)
    if (group_key(OwnGroup(i)) == key) return OwnGroup(i);
  return OwnGroup::count;
}

/// One row of "things"; an empty name where it cannot be used, which is noted.
OwnThing read_thing(const JsonMember& row, Notes& notes) {
  OwnThing thing;
  thing.group = OwnGroup::count;
  std::string levers = "{}", name;
  for (const JsonMember& member : read_json_object(row.text, kMostFileDepth).members) {
    if (member.key == "group" && member.kind == JsonKind::text) thing.group = find_group(member.text);
    if (member.key == "name" && member.kind == JsonKind::text) name = clean_text(member.text, kMostNameChars);
    if (member.key == "levers" && member.kind == JsonKind::object) levers = member.text;
  }
  if (thing.group == OwnGroup::count || name.empty()) {
    notes.add("things", (name.empty() ? "one without a name" : "\"" + name + "\", of a group that is not known,") +
                            std::string(" is left out."));
    return {};
  }
  LoadedOuting loaded = read_outing(as_outing_text(name, levers));
  for (const std::string& note : loaded.notes) notes.add(name, note);
  for (std::size_t i = 0; i < thing.set.size() && i < loaded.outing.set.size(); ++i)
    if (belongs_to(thing.group, L(i))) thing.set[i] = std::move(loaded.outing.set[i]);
  thing.kept = std::move(loaded.outing.kept);
  thing.name = std::move(name);
  return thing;
}

std::string thing_text(const OwnThing& thing) {
  Outing outing;
  outing.set = thing.set;
  outing.kept = thing.kept;
  std::string levers = "{}";
  for (const JsonMember& member : read_json_object(write_outing(outing), kMostFileDepth).members)
    if (member.key == "levers") levers = member.text;
  return "{" + member_text("group", json_quote(group_key(thing.group))) + ", " +
         member_text("name", json_quote(thing.name)) + ", " + member_text("levers", levers) + "}";
}

}  // namespace

LoadedThings read_things(std::string_view text) {
  LoadedThings loaded;
  Notes notes;
  OpenedFile file = open_file(text, "things", notes);
  loaded.refusal = std::move(file.refusal);
  if (!loaded.refusal.empty()) return loaded;
  loaded.newer = file.newer;
  for (const JsonMember& member : file.members) {
    if (member.key != "things") continue;
    if (member.kind != JsonKind::list) notes.add("things", "left out; a list is wanted.");
    for (const JsonMember& row : read_json_list(member.text, kMostFileDepth)) {
      if (loaded.things.size() == kMostOwnThings) {
        notes.add("things", "only the first 200 are read.");
        break;
      }
      OwnThing thing = read_thing(row, notes);
      if (!thing.name.empty()) loaded.things.push_back(std::move(thing));
    }
  }
  loaded.notes = notes.take();
  return loaded;
}

std::string write_things(const std::vector<OwnThing>& things) {
  std::string rows;
  for (const OwnThing& thing : things) rows.append(rows.empty() ? "\n    " : ",\n    ").append(thing_text(thing));
  return object_text(
             {member_text("groundsheet", std::to_string(kFileVersion)), member_text("kind", json_quote("things")),
              member_text("things", rows.empty() ? "[]" : "[" + rows + "\n  ]")},
             "") +
         "\n";
}

}  // namespace gs
