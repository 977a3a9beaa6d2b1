// Earlier outings to and from a file.
#include <algorithm>
#include <cmath>

#include "core/outing/archive_rows.h"
#include "core/outing/past.h"
#include "core/sky/calendar.h"

namespace gs {
namespace {

constexpr double kMostPct = 100;

double within(const JsonMember& member, double most, RowReader& reader) {
  const double value = reader.number(member);
  if (value >= 0 && value <= most) return value;
  reader.wrong(member.key, "0 to " + exact_text(most) + " is wanted");
  return 0;
}

std::string text_of(const JsonMember& member, RowReader& reader) {
  if (member.kind != JsonKind::text) reader.wrong(member.key, "a text is wanted");
  return clean_text(member.text, kMostNameChars);
}

PastOuting read_past(const std::vector<JsonMember>& members, RowReader& reader) {
  PastOuting past;
  for (const JsonMember& member : members) {
    if (member.key == "name") {
      past.name = text_of(member, reader);
    } else if (member.key == "date") {
      past.date = text_of(member, reader);
      if (!past.date.empty() && !sky::read_date(past.date))
        reader.wrong("date", "a day such as 2026-06-13 is wanted");
    } else if (member.key == "contacts") {
      past.contacts = within(member, kMostPastContacts, reader);
    } else if (member.key == "on_air_min") {
      past.on_air_min = within(member, kMostPastMin, reader);
    } else if (member.key == "target") {
      past.target = within(member, kMostPastContacts, reader);
    } else if (member.key == "set_up_min") {
      past.set_up_min = within(member, kMostPastMin, reader);
    } else if (member.key == "started") {
      past.started_utc_s = reader.instant(member);
    } else if (member.key == "left_planned_pct") {
      past.left_planned_pct = within(member, kMostPct, reader);
    } else if (member.key == "left_pct") {
      past.left_pct = within(member, kMostPct, reader);
    } else if (member.key == "antenna") {
      past.antenna = text_of(member, reader);
    } else {
      reader.unknown.push_back(member);
    }
  }
  if (!(past.on_air_min > 0)) reader.wrong("on_air_min", "is missing");
  return past;
}

bool is_earlier(const PastOuting& one, const PastOuting& other) { return one.date < other.date; }

}  // namespace

LoadedHistory read_history(std::string_view text) {
  LoadedHistory loaded;
  Notes notes;
  OpenedFile file = open_file(text, "history", notes);
  loaded.refusal = std::move(file.refusal);
  if (!loaded.refusal.empty()) return loaded;
  KeptParts kept;
  std::vector<JsonMember>& top = kept[std::size_t(Part::top)];
  for (JsonMember& member : file.members) {
    if (member.key == "outings") {
      loaded.outings = read_rows<PastOuting>(member, kMostPast, read_past, top, notes);
      std::stable_sort(loaded.outings.begin(), loaded.outings.end(), is_earlier);
    } else {
      notes.add(member.key, "kept as it stands; this version does not use it.");
      top.push_back(std::move(member));
    }
  }
  // what was put aside is written behind the rows that could be used, before all else
  std::stable_partition(top.begin(), top.end(), [](const JsonMember& member) { return member.key == "outings"; });
  loaded.kept = pack_kept(kept);
  constexpr std::size_t kMuch = 50'000;
  if (text.size() > kMuch && write_history(loaded.outings, loaded.kept).size() > kMostFileBytes)
    return {{},
            {},
            "This is too large: written back it would pass " + std::to_string(kMostFileBytes) + " bytes.",
            {},
            false};
  loaded.notes = notes.take();
  loaded.newer = file.newer;
  return loaded;
}

std::string write_history(const std::vector<PastOuting>& outings, std::string_view kept) {
  const KeptParts parts = unpack_kept(kept);
  const std::vector<JsonMember>& top = parts[std::size_t(Part::top)];
  std::vector<std::string> lines{member_text("groundsheet", std::to_string(kFileVersion)),
                                 member_text("kind", json_quote("history"))};
  write_rows(lines, "outings", outings, top, [](const PastOuting& past) {
    std::vector<std::string> members{
        member_text("name", json_quote(past.name)), member_text("date", json_quote(past.date)),
        member_text("contacts", exact_text(past.contacts)), member_text("on_air_min", exact_text(past.on_air_min)),
        member_text("target", exact_text(past.target))};
    if (past.set_up_min > 0) members.push_back(member_text("set_up_min", exact_text(past.set_up_min)));
    if (past.started_utc_s)
      members.push_back(member_text("started", json_quote(pace::utc_text(*past.started_utc_s))));
    if (past.left_planned_pct)
      members.push_back(member_text("left_planned_pct", exact_text(*past.left_planned_pct)));
    if (past.left_pct) members.push_back(member_text("left_pct", exact_text(*past.left_pct)));
    if (!past.antenna.empty()) members.push_back(member_text("antenna", json_quote(past.antenna)));
    return members;
  });
  for (const JsonMember& member : top)
    if (member.key != "groundsheet" && member.key != "kind" && (member.key != "outings" || outings.empty()))
      lines.push_back(member_text(member.key, json_value(member)));
  return object_text(lines, "") + "\n";
}

}  // namespace gs
