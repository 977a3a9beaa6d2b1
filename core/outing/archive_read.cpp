#include <chrono>
#include <limits>
#include <utility>

#include "core/outing/archive.h"
#include "core/outing/archive_parts.h"
#include "core/outing/plan.h"
#include "core/outing/utf8.h"

namespace gs {
namespace {

/// A calendar day of four, two and two digits, as ISO 8601-1 5.2.2.1 has it.
bool is_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const auto number = [text](std::size_t from, std::size_t digits) {
    int value = 0;
    for (std::size_t i = from; i < from + digits; ++i) {
      if (text[i] < '0' || text[i] > '9') return -1;
      value = value * 10 + (text[i] - '0');
    }
    return value;
  };
  const int year = number(0, 4), month = number(5, 2), day = number(8, 2);
  if (year < 0 || month < 0 || day < 0) return false;
  return std::chrono::year_month_day(std::chrono::year(year), std::chrono::month(unsigned(month)),
                                     std::chrono::day(unsigned(day)))
      .ok();
}

/// The text that a member holds as a name; other kinds are left out and noted.
std::string read_name(const JsonMember& member, std::string_view key, Notes& notes) {
  if (member.kind != JsonKind::text) {
    notes.add(key, "left out; a text is wanted.");
    return {};
  }
  std::string name = clean_text(member.text, kMostNameChars);
  if (name != member.text)
    notes.add(key, "shortened to what a name may hold: 80 characters, none of them controls.");
  return name;
}

std::string read_notes(const JsonMember& member, Notes& notes) {
  if (member.kind != JsonKind::text) {
    notes.add("notes", "left out; a text is wanted.");
    return {};
  }
  std::string words = clean_lines(member.text, kMostNotesChars);
  if (words != member.text)
    notes.add("notes", "shortened to what they may hold: 4000 characters, of controls line breaks alone.");
  return words;
}

/// A short sign of what stood there: numbers and texts as they were, the rest by kind.
std::string shown(const JsonMember& member) {
  switch (member.kind) {
    case JsonKind::text:
      return "\"" + clean_text(member.text, 24) + "\"";
    case JsonKind::list:
      return "a list";
    case JsonKind::object:
      return "an object";
    default:
      return clean_text(member.text, 24);
  }
}

Value read_value(L id, const JsonMember& member, std::string_view key, Notes& notes) {
  const Lever& row = lever(id);
  Value value;
  std::string why;
  if (row.kind == Kind::number && member.kind == JsonKind::number) {
    double number = 0;
    if (read_number(member.text, number)) value = number;
  } else if (row.kind == Kind::number && member.kind == JsonKind::text) {
    const Parsed parsed = read_quantity(member.text, row.unit);
    if (parsed.ok()) {
      value = parsed.value;
    } else {
      why = parsed.trouble;
    }
  } else if (row.kind == Kind::choice && member.kind == JsonKind::text) {
    value = member.text;
  } else if (row.kind == Kind::text && member.kind == JsonKind::text) {
    return read_name(member, key, notes);
  }
  if (std::holds_alternative<std::monostate>(value)) {
    if (why.empty()) why = row.kind == Kind::number ? "A number is wanted." : "A text is wanted.";
    // the range as the plan words it, whatever stood there
    if (row.kind == Kind::number) why += " " + refusal(id, std::numeric_limits<double>::quiet_NaN()) + ".";
  } else if (why = refusal(id, value); !why.empty()) {
    why += ".";
    value = {};
  } else if (row.kind == Kind::number && member.kind == JsonKind::text) {
    notes.add(key,
              shown(member) + " was read as " + say_quantity(std::get<double>(value), row.unit, row.digits) + ".");
  }
  if (!why.empty()) notes.add(key, shown(member) + " is left out. " + why);
  return value;
}

/// A file on its way into an outing.
struct Reader {
  Outing outing;
  KeptParts kept;
  Notes notes;

  void keep(Part part, JsonMember member, const std::string& shown_key) {
    // The lists that later versions fill stand empty in every file: nothing to tell then.
    if (member.text != "[]" && member.text != "{}")
      notes.add(shown_key, "kept as it stands; this version does not use it.");
    kept[std::size_t(part)].push_back(std::move(member));
  }

  /// `before`: "" or "pinned ", so that a note says which of the two plans it means.
  bool read_levers(const JsonMember& member, Values& values, Part rest, const std::string& before) {
    if (member.kind != JsonKind::object) {
      notes.add(before + "levers", "left out; an object is wanted.");
      return false;
    }
    JsonObject object = read_json_object(member.text, kMostFileDepth);
    for (const std::string& key : object.twice) notes.add(before + key, "stands there twice; the last one counts.");
    for (JsonMember& one : object.members) {
      const L id = find_lever(one.key);
      const std::string key = before + one.key;
      if (is_lever(id)) {
        values[std::size_t(id)] = read_value(id, one, key, notes);
      } else {
        keep(rest, std::move(one), key);
      }
    }
    return true;
  }

  /// "levers" makes it a pinned plan; without them nothing is pinned.
  void read_pinned(const JsonMember& member) {
    if (member.kind != JsonKind::object) return notes.add("pinned", "left out; an object is wanted.");
    JsonObject object = read_json_object(member.text, kMostFileDepth);
    for (const std::string& key : object.twice)
      notes.add("pinned " + key, "stands there twice; the last one counts.");
    for (JsonMember& one : object.members) {
      if (one.key == "name") {
        outing.pinned_name = read_name(one, "pinned name", notes);
      } else if (one.key == "levers") {
        Values values(lever_count());
        if (read_levers(one, values, Part::pinned_levers, "pinned ")) outing.pinned = std::move(values);
      } else {
        std::string key = "pinned " + one.key;
        keep(Part::pinned, std::move(one), key);
      }
    }
  }

  void read_member(JsonMember member) {
    if (member.key == "name") {
      outing.name = read_name(member, "name", notes);
    } else if (member.key == "date") {
      const bool text = member.kind == JsonKind::text;
      if (text && (member.text.empty() || is_date(member.text))) {
        outing.date = member.text;
      } else {
        notes.add("date", shown(member) + " is left out; a day such as 2026-06-13 is wanted.");
      }
    } else if (member.key == "notes") {
      outing.notes = read_notes(member, notes);
    } else if (member.key == "levers") {
      read_levers(member, outing.set, Part::levers, "");
    } else if (member.key == "pinned") {
      read_pinned(member);
    } else if (member.key == "kit") {
      outing.kit = read_kit(member, notes);
    } else if (!read_day(member, outing, kept[std::size_t(Part::top)], notes)) {
      const std::string key = member.key;
      keep(Part::top, std::move(member), key);
    }
  }
};

}  // namespace

LoadedOuting read_outing(std::string_view text) {
  LoadedOuting loaded;
  Reader reader;
  OpenedFile file = open_file(text, "outing", reader.notes);
  loaded.refusal = std::move(file.refusal);
  if (!loaded.refusal.empty()) return loaded;
  for (JsonMember& member : file.members) reader.read_member(std::move(member));
  aside_first(reader.kept[std::size_t(Part::top)]);
  reader.outing.kept = pack_kept(reader.kept);
  // Line breaks and replaced bytes can make a file of strange members longer: one that could not be opened again is
  // not opened.
  constexpr std::size_t kMuch = 50'000;
  if (text.size() > kMuch && write_outing(reader.outing).size() > kMostFileBytes) {
    loaded.refusal = "This is too large: written back it would pass " + std::to_string(kMostFileBytes) + " bytes.";
    return loaded;
  }
  loaded.outing = std::move(reader.outing);
  loaded.notes = reader.notes.take();
  loaded.newer = file.newer;
  return loaded;
}

}  // namespace gs
