// Lists of rows in files: read one by one, what cannot be used kept whole. The archive's own.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/outing/archive.h"
#include "core/outing/archive_parts.h"
#include "core/outing/quantity.h"
#include "core/outing/utf8.h"
#include "core/pace/utc.h"

namespace gs {

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
    if (!utc_s) wrong(member.key, "a time such as 2026-06-13T22:09:14Z is wanted");
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

}  // namespace gs
