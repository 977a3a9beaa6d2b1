#include <cmath>

#include "core/outing/archive.h"
#include "core/outing/archive_parts.h"

namespace gs {
namespace {

std::string levers_text(const Values& values, const std::vector<JsonMember>& kept, std::string_view indent) {
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < values.size() && i < lever_count(); ++i) {
    const std::string_view key = lever(L(i)).key;
    if (const double* number = std::get_if<double>(&values[i])) {
      if (std::isfinite(*number)) lines.push_back(member_text(key, exact_text(*number)));
    } else if (const std::string* text = std::get_if<std::string>(&values[i])) {
      lines.push_back(member_text(key, json_quote(*text)));
    }
  }
  for (const JsonMember& member : kept)
    if (!is_lever(find_lever(member.key))) lines.push_back(member_text(member.key, json_value(member)));
  return object_text(lines, indent);
}

}  // namespace

std::string write_outing(const Outing& outing) {
  const KeptParts kept = unpack_kept(outing.kept);
  const auto part = [&kept](Part which) -> const std::vector<JsonMember>& { return kept[std::size_t(which)]; };
  std::vector<std::string> lines{
      member_text("groundsheet", std::to_string(kFileVersion)),
      member_text("kind", json_quote("outing")),
      member_text("name", json_quote(outing.name)),
      member_text("date", json_quote(outing.date)),
  };
  if (!outing.notes.empty()) lines.push_back(member_text("notes", json_quote(outing.notes)));
  lines.push_back(member_text("levers", levers_text(outing.set, part(Part::levers), "  ")));
  std::vector<std::string> pinned;
  if (outing.pinned || !outing.pinned_name.empty())
    pinned.push_back(member_text("name", json_quote(outing.pinned_name)));
  if (outing.pinned)
    pinned.push_back(member_text("levers", levers_text(*outing.pinned, part(Part::pinned_levers), "    ")));
  for (const JsonMember& member : part(Part::pinned))
    if (member.key != "name" && member.key != "levers")
      pinned.push_back(member_text(member.key, json_value(member)));
  if (!pinned.empty()) lines.push_back(member_text("pinned", object_text(pinned, "  ")));
  if (!outing.kit.empty()) lines.push_back(member_text("kit", kit_text(outing.kit, "  ")));
  write_day(outing, part(Part::top), lines);
  for (const JsonMember& member : part(Part::top))
    if (!is_outing_key(member.key) && !is_day_key(outing, member.key))
      lines.push_back(member_text(member.key, json_value(member)));
  return object_text(lines, "") + "\n";
}

}  // namespace gs
