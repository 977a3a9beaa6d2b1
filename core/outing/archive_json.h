// JSON text taken apart one object at a time. The archive's own: archive_json.cpp alone includes the JSON library.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gs {

enum class JsonKind : unsigned char { null, boolean, number, text, list, object };

/// A member's value: the characters of a text, for all others its JSON without blanks. Numbers keep the digits they
/// came with.
struct JsonMember {
  std::string key;
  JsonKind kind = JsonKind::null;
  std::string text;
};

/// Members in the order of the text; of keys that came twice only the last, and the key in `twice`.
struct JsonObject {
  std::vector<JsonMember> members;
  std::vector<std::string> twice;
  std::string trouble;  // not empty: why the text is no object, in one line; members are empty then
};

/// Takes an object apart. Never throws. Recursion does not grow with the text; deeper than `most_depth` is refused
/// at once.
JsonObject read_json_object(std::string_view text, int most_depth);

/// The elements of a list, keys empty; nothing where the text is no list. Otherwise as above.
std::vector<JsonMember> read_json_list(std::string_view text, int most_depth);

/// A text that the reader takes: bytes that are not UTF-8 become U+FFFD, numbers beyond a double's range become
/// texts.
struct Repaired {
  std::string text;
  bool bad_utf8 = false, too_large = false;
};
Repaired repair_json(std::string_view text);

/// The member's value as JSON.
std::string json_value(const JsonMember& member);

}  // namespace gs
