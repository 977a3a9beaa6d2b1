// Stints, and what happened, to and from a file.
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/outing/archive.h"
#include "core/outing/archive_parts.h"
#include "core/outing/plan.h"
#include "core/outing/quantity.h"
#include "core/outing/utf8.h"
#include "core/pace/utc.h"

namespace gs {
namespace {

constexpr std::string_view kInstantWanted = "a time such as 2026-06-13T22:09:14Z";

/// A row on its way out of a file: `trouble` says what was wrong with it first, `kept` holds what is not known.
struct RowReader {
  std::string trouble;
  std::vector<JsonMember> unknown;

  void wrong(std::string_view key, std::string_view why) {
    if (trouble.empty()) trouble = clean_text(key, kMostNameChars) + ": " + std::string(why) + ".";
  }
  bool flag(const JsonMember& member) {
    if (member.kind != JsonKind::boolean) wrong(member.key, "true or false is wanted");
    return member.text == "true";
  }
  double instant(const JsonMember& member) {
    const auto utc_s = member.kind == JsonKind::text ? pace::read_utc(member.text) : std::nullopt;
    if (!utc_s) wrong(member.key, std::string(kInstantWanted) + " is wanted");
    return utc_s.value_or(0);
  }
  double number(const JsonMember& member) {
    double value = 0;
    if (member.kind != JsonKind::number || !read_number(member.text, value))
      wrong(member.key, "a number is wanted");
    return value == 0 ? 0 : value;  // no minus before a zero
  }
  std::string kept() const {
    std::string text;
    for (const JsonMember& member : unknown)
      text.append(text.empty() ? "{" : ",").append(json_quote(member.key)).append(":").append(json_value(member));
    return text.empty() ? text : text + "}";
  }
};

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

/// Reads a list row by row. What cannot be read is noted and put aside whole, so that nothing of a file is lost.
template <class Row, class Read>
std::vector<Row> read_rows(const JsonMember& member, std::size_t most, Read read, std::vector<JsonMember>& aside,
                           Notes& notes) {
  std::vector<Row> rows;
  std::string unread;
  const auto put_aside = [&](const JsonMember& one) {
    unread.append(unread.empty() ? "[" : ",").append(json_value(one));
  };
  if (member.kind != JsonKind::list) {
    notes.add(member.key, "kept as it stands; a list is wanted.");
    unread.append("[").append(json_value(member));
  }
  std::size_t number = 0, too_many = 0;
  for (const JsonMember& one : read_json_list(member.text, kMostFileDepth)) {
    const std::string which = member.key + " " + std::to_string(++number);
    if (rows.size() >= most) {
      ++too_many;
      put_aside(one);
      continue;
    }
    RowReader reader;
    if (one.kind != JsonKind::object) reader.wrong("row", "an object is wanted");
    Row row = read(read_json_object(one.text, kMostFileDepth).members, reader);
    if (!reader.trouble.empty()) {
      notes.add(which, "not used, but kept. " + reader.trouble);
      put_aside(one);
      continue;
    }
    if constexpr (requires { row.kept; }) row.kept = reader.kept();
    rows.push_back(std::move(row));
  }
  if (too_many > 0)
    notes.add(member.key, std::to_string(most) + " rows are the most; " + std::to_string(too_many) +
                              " more are kept but not used.");
  if (!unread.empty()) aside.push_back({member.key, JsonKind::list, unread + "]"});
  return rows;
}

/// Rows as a list over several lines, and behind them those of the same list that could not be read. Nothing is
/// written where there are no rows: what was put aside stands among the kept members then.
template <class Row, class Write>
void write_rows(std::vector<std::string>& lines, std::string_view key, const std::vector<Row>& rows,
                const std::vector<JsonMember>& kept, Write write) {
  if (rows.empty()) return;
  std::string text = "[";
  for (const Row& row : rows) {
    std::vector<std::string> members = write(row);
    if constexpr (requires { row.kept; }) {
      if (!row.kept.empty())
        for (const JsonMember& member : read_json_object(row.kept, kMostFileDepth).members)
          members.push_back(member_text(member.key, json_value(member)));
    }
    text += text.size() > 1 ? ",\n    {" : "\n    {";
    for (std::size_t i = 0; i < members.size(); ++i) text.append(i > 0 ? ", " : "").append(members[i]);
    text += "}";
  }
  for (const JsonMember& member : kept)
    if (member.key == key)
      for (const JsonMember& one : read_json_list(member.text, kMostFileDepth)) text += ",\n    " + json_value(one);
  lines.push_back(member_text(key, text + "\n  ]"));
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
