// What the archive's readers and writers share. The archive's own.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "core/kit/kit.h"
#include "core/outing/archive_json.h"
#include "core/outing/outing.h"

namespace gs {

/// Lines for the person, at most 40 and then one that counts the rest: a hostile file must not fill memory with
/// complaints.
class Notes {
 public:
  void add(std::string_view key, std::string_view words);
  std::vector<std::string> take();

 private:
  std::vector<std::string> lines_;
  std::size_t more_ = 0;
};

/// A file taken apart and known to be ours.
struct OpenedFile {
  std::vector<JsonMember> members;  // without "groundsheet" and "kind"
  std::string refusal;              // not empty: members are empty
  bool newer = false;
};
OpenedFile open_file(std::string_view text, std::string_view kind, Notes& notes);

/// "top" and so on: where in a file the members stood that this version does not know.
enum class Part : unsigned char { top, levers, pinned, pinned_levers, count };
using KeptParts = std::array<std::vector<JsonMember>, std::size_t(Part::count)>;
std::string pack_kept(const KeptParts& parts);
KeptParts unpack_kept(std::string_view kept);

/// Member texts ("\"key\": value") as an object over several lines; `indent` is that of the line it starts on.
std::string object_text(const std::vector<std::string>& members, std::string_view indent);
std::string member_text(std::string_view key, std::string_view value);

/// "kit": [{"name", "function", "weight_g", "backups", "works_pct", "vital"}] both ways; archive_kit.cpp. Items
/// that cannot be are left out and noted. Text is "" for an empty list.
std::vector<kit::Item> read_kit(const JsonMember& member, Notes& notes);
std::string kit_text(const std::vector<kit::Item>& items, std::string_view indent);

/// "stints", "on_air", "tally" and "measured" both ways; archive_day.cpp. False where the member is none of these,
/// or empty. Rows that cannot be used go to `aside` under the list's own key, are kept with the unknown members,
/// and come behind the others when written.
bool read_day(const JsonMember& member, Outing& outing, std::vector<JsonMember>& aside, Notes& notes);
void write_day(const Outing& outing, const std::vector<JsonMember>& kept, std::vector<std::string>& lines);
/// What was put aside of these lists, to the front and in their order: written and read again it then stands where
/// it stood, wherever the rows that could be used are written.
void aside_first(std::vector<JsonMember>& kept);
/// Whether write_day writes this key for this outing, so that what was kept under it is not written again.
bool is_day_key(const Outing& outing, std::string_view key);

/// Whether a member at the top of an outing file has a meaning to this version.
bool is_outing_key(std::string_view key);

}  // namespace gs
