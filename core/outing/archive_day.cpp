// Stints, and what happened, to and from a file.
#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>
#include <utility>

#include "core/outing/archive.h"
#include "core/outing/archive_rows.h"
#include "core/outing/plan.h"
#include "core/outing/quantity.h"
#include "core/outing/utf8.h"
#include "core/pace/utc.h"

namespace gs {
namespace {

Value plain_value(const JsonMember& member, RowReader& reader) {
  if (member.kind == JsonKind::text) return clean_text(member.text, kMostNameChars);
  return reader.number(member);
}

Stint read_stint(const std::vector<JsonMember>& members, RowReader& reader) {
  Stint stint;
  bool timed = false;
  for (const JsonMember& member : members) {
    if (member.key == "from_min") {
      stint.from_min = reader.number(member);
      timed = true;
    } else if (member.key == "on_air") {
      stint.on_air = reader.flag(member);
    } else if (member.key == "levers") {
      if (member.kind != JsonKind::object) reader.wrong("levers", "an object is wanted");
      for (const JsonMember& one : read_json_object(member.text, kMostFileDepth).members)
        if (const L id = find_lever(one.key); is_lever(id)) {
          stint.set.emplace_back(id, plain_value(one, reader));
        } else {
          reader.wrong(one.key, "no lever of a stint");
        }
    } else {
      reader.unknown.push_back(member);
    }
  }
  if (!timed) reader.wrong("from_min", "is missing");
  if (std::string why = refusal(stint); !why.empty()) reader.wrong("stint", why);
  return stint;
}

OnAir read_on_air(const std::vector<JsonMember>& members, RowReader& reader) {
  OnAir span;
  for (const JsonMember& member : members) {
    if (member.key == "from") {
      span.from_utc_s = reader.instant(member);
    } else if (member.key == "until") {
      span.until_utc_s = reader.instant(member);
    } else {
      reader.wrong(member.key, "not known in this list");
    }
  }
  if (span.from_utc_s == 0) reader.wrong("from", "is missing");
  if (span.until_utc_s && *span.until_utc_s < span.from_utc_s) reader.wrong("until", "is before from");
  return span;
}

Tap read_tap(const std::vector<JsonMember>& members, RowReader& reader) {
  Tap tap;
  for (const JsonMember& member : members) {
    if (member.key == "at") {
      tap.at_utc_s = reader.instant(member);
    } else if (member.key == "count") {
      const double count = reader.number(member);
      if (!(count >= 1 && count <= kMostForgotten && count == std::floor(count))) {
        reader.wrong("count", "a whole number from 1 to 999 is wanted");
      } else {
        tap.count = int(count);
      }
    } else if (member.key == "forgotten") {
      tap.forgotten = reader.flag(member);
    } else {
      reader.unknown.push_back(member);
    }
  }
  if (tap.at_utc_s == 0) reader.wrong("at", "is missing");
  return tap;
}

Measured read_measured(const std::vector<JsonMember>& members, RowReader& reader) {
  Measured row;
  for (const JsonMember& member : members) {
    if (member.key == "key" && member.kind == JsonKind::text) {
      row.key = clean_text(member.text, kMostNameChars);
    } else if (member.key == "value") {
      row.value = plain_value(member, reader);
    } else if (member.key == "at") {
      row.at_utc_s = reader.instant(member);
    } else {
      reader.unknown.push_back(member);
    }
  }
  const L id = find_lever(row.key);
  if (row.key.empty()) reader.wrong("key", "is missing");
  if (std::holds_alternative<std::monostate>(row.value)) reader.wrong("value", "is missing");
  if (is_lever(id))
    if (std::string why = refusal(id, row.value); !why.empty()) reader.wrong("value", why);
  if (find_reading(row.key) != R::count && !std::holds_alternative<double>(row.value))
    reader.wrong("value", "a number is wanted");
  return row;
}

std::string value_json(const Value& value) {
  if (const double* number = std::get_if<double>(&value)) return exact_text(*number);
  if (const std::string* text = std::get_if<std::string>(&value)) return json_quote(*text);
  return "null";
}

std::string instant_json(double utc_s) { return json_quote(pace::utc_text(utc_s)); }

}  // namespace

bool read_day(const JsonMember& member, Outing& outing, std::vector<JsonMember>& aside, Notes& notes) {
  // an empty list says nothing; as it stands it stays where it stood
  if (member.text == "[]") return false;
  if (member.key == "stints") {
    outing.stints = read_rows<Stint>(member, kMostStints, read_stint, aside, notes);
    std::stable_sort(outing.stints.begin(), outing.stints.end(),
                     [](const Stint& a, const Stint& b) { return a.from_min < b.from_min; });
  } else if (member.key == "on_air") {
    std::optional<OnAir> last;
    const auto read = [&last](const std::vector<JsonMember>& members, RowReader& reader) {
      const OnAir span = read_on_air(members, reader);
      if (last && !(last->until_utc_s && *last->until_utc_s <= span.from_utc_s))
        reader.wrong("from", "the one above has not ended by then");
      if (reader.trouble.empty()) last = span;
      return span;
    };
    outing.happened.on_air = read_rows<OnAir>(member, kMostOnAir, read, aside, notes);
  } else if (member.key == "tally") {
    outing.happened.tally = read_rows<Tap>(member, kMostTaps, read_tap, aside, notes);
  } else if (member.key == "measured") {
    outing.happened.measured = read_rows<Measured>(member, kMostMeasured, read_measured, aside, notes);
  } else {
    return false;
  }
  return true;
}

void aside_first(std::vector<JsonMember>& kept) {
  constexpr std::string_view kKeys[] = {"stints", "on_air", "tally", "measured"};
  const auto place = [&](const JsonMember& member) {
    return std::find(std::begin(kKeys), std::end(kKeys), member.key) - std::begin(kKeys);
  };
  std::stable_sort(kept.begin(), kept.end(),
                   [&](const JsonMember& one, const JsonMember& other) { return place(one) < place(other); });
}

bool is_day_key(const Outing& outing, std::string_view key) {
  return (key == "stints" && !outing.stints.empty()) || (key == "on_air" && !outing.happened.on_air.empty()) ||
         (key == "tally" && !outing.happened.tally.empty()) ||
         (key == "measured" && !outing.happened.measured.empty());
}

void write_day(const Outing& outing, const std::vector<JsonMember>& kept, std::vector<std::string>& lines) {
  write_rows(lines, "stints", outing.stints, kept, [](const Stint& stint) {
    std::vector<std::string> members{member_text("from_min", exact_text(stint.from_min))};
    if (!stint.on_air) members.push_back(member_text("on_air", "false"));
    std::string set;
    for (const auto& [id, value] : stint.set)
      set += (set.empty() ? "" : ", ") + member_text(lever(id).key, value_json(value));
    if (!set.empty()) members.push_back(member_text("levers", "{" + set + "}"));
    return members;
  });
  write_rows(lines, "on_air", outing.happened.on_air, kept, [](const OnAir& span) {
    std::vector<std::string> members{member_text("from", instant_json(span.from_utc_s))};
    if (span.until_utc_s) members.push_back(member_text("until", instant_json(*span.until_utc_s)));
    return members;
  });
  write_rows(lines, "tally", outing.happened.tally, kept, [](const Tap& tap) {
    std::vector<std::string> members{member_text("at", instant_json(tap.at_utc_s))};
    if (tap.count != 1) members.push_back(member_text("count", std::to_string(tap.count)));
    if (tap.forgotten) members.push_back(member_text("forgotten", "true"));
    return members;
  });
  write_rows(lines, "measured", outing.happened.measured, kept, [](const Measured& row) {
    std::vector<std::string> members{member_text("key", json_quote(row.key)),
                                     member_text("value", value_json(row.value))};
    if (row.at_utc_s) members.push_back(member_text("at", instant_json(*row.at_utc_s)));
    return members;
  });
}

}  // namespace gs
