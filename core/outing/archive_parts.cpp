#include "core/outing/archive_parts.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/outing/archive.h"
#include "core/outing/utf8.h"

namespace gs {
namespace {

constexpr std::size_t kMostNotes = 40;
constexpr std::string_view kPartNames[] = {"top", "levers", "pinned", "pinned_levers"};

const JsonMember* find(const std::vector<JsonMember>& members, std::string_view key) {
  const auto at = std::find_if(members.begin(), members.end(), [key](const JsonMember& m) { return m.key == key; });
  return at == members.end() ? nullptr : &*at;
}

/// Why this object is not a file of this kind, or "".
std::string stranger(const std::vector<JsonMember>& members, std::string_view kind, double& version) {
  const JsonMember* mark = find(members, "groundsheet");
  if (!mark) return "This is not a Groundsheet file: \"groundsheet\" is missing.";
  if (mark->kind != JsonKind::number || !read_number(mark->text, version) || version < 1 ||
      version != std::floor(version))
    return "This is not a Groundsheet file: \"groundsheet\" must be a version number from 1.";
  const JsonMember* name = find(members, "kind");
  if (!name || name->kind != JsonKind::text || name->text != kind)
    return "This is no file of " +
           std::string(kind == "outing"    ? "an outing"
                       : kind == "history" ? "earlier outings"
                                           : kind) +
           ": \"kind\" must be \"" + std::string(kind) + "\".";
  return {};
}

}  // namespace

void Notes::add(std::string_view key, std::string_view words) {
  if (lines_.size() < kMostNotes) {
    lines_.push_back(clean_text(key, kMostNameChars) + ": " + std::string(words));
  } else {
    ++more_;
  }
}

std::vector<std::string> Notes::take() {
  if (more_ > 0) lines_.push_back("And " + std::to_string(more_) + " more like these.");
  more_ = 0;
  return std::exchange(lines_, {});
}

OpenedFile open_file(std::string_view text, std::string_view kind, Notes& notes) {
  OpenedFile file;
  if (text.size() > kMostFileBytes) {
    file.refusal = "This is too large: " + std::to_string(text.size()) + " bytes, where " +
                   std::to_string(kMostFileBytes) + " is the most.";
    return file;
  }
  const Repaired repaired = repair_json(text);
  JsonObject object = read_json_object(repaired.text, kMostFileDepth);
  double version = 0;
  file.refusal = !object.trouble.empty() ? object.trouble : stranger(object.members, kind, version);
  if (!file.refusal.empty()) return file;
  file.newer = version > kFileVersion;
  if (file.newer) notes.add("groundsheet", "written by a newer version; read as far as this one knows.");
  if (repaired.bad_utf8) notes.add("text", "bytes that are not UTF-8 were replaced by U+FFFD.");
  if (repaired.too_large) notes.add("text", "numbers beyond all range were taken as words.");
  for (const std::string& key : object.twice) notes.add(key, "stands there twice; the last one counts.");
  std::erase_if(object.members, [](const JsonMember& m) { return m.key == "groundsheet" || m.key == "kind"; });
  file.members = std::move(object.members);
  return file;
}

std::string pack_kept(const KeptParts& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (parts[i].empty()) continue;
    text += text.empty() ? "{" : ",";
    text += json_quote(kPartNames[i]) + ":{";
    for (const JsonMember& member : parts[i]) {
      if (text.back() != '{') text += ',';
      text += json_quote(member.key) + ":" + json_value(member);
    }
    text += '}';
  }
  return text.empty() ? text : text + "}";
}

KeptParts unpack_kept(std::string_view kept) {
  KeptParts parts;
  if (kept.empty()) return parts;
  // one level for the parts themselves
  JsonObject object = read_json_object(kept, kMostFileDepth + 1);
  for (const JsonMember& member : object.members) {
    const auto name = std::find(std::begin(kPartNames), std::end(kPartNames), member.key);
    if (name != std::end(kPartNames) && member.kind == JsonKind::object)
      parts[std::size_t(name - std::begin(kPartNames))] = read_json_object(member.text, kMostFileDepth).members;
  }
  return parts;
}

std::string kept_without_pin(std::string_view kept) {
  KeptParts parts = unpack_kept(kept);
  parts[std::size_t(Part::pinned)].clear();
  parts[std::size_t(Part::pinned_levers)].clear();
  return pack_kept(parts);
}

std::string object_text(const std::vector<std::string>& members, std::string_view indent) {
  if (members.empty()) return "{}";
  std::string text = "{";
  for (std::size_t i = 0; i < members.size(); ++i)
    text.append(i > 0 ? ",\n" : "\n").append(indent).append("  ").append(members[i]);
  return text.append("\n").append(indent).append("}");
}

std::string member_text(std::string_view key, std::string_view value) {
  return json_quote(key).append(": ").append(value);
}

bool is_outing_key(std::string_view key) {
  constexpr std::string_view kKeys[] = {"groundsheet", "kind", "name", "date", "notes", "levers", "pinned", "kit"};
  return std::find(std::begin(kKeys), std::end(kKeys), key) != std::end(kKeys);
}

}  // namespace gs
