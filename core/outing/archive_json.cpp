#include "core/outing/archive_json.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/outing/archive.h"
#include "core/outing/quantity.h"
#include "core/outing/utf8.h"

namespace gs {
namespace {

/// Takes the library's events. The members of the outermost object become entries, everything below becomes compact
/// text: no tree is built, so memory stays in proportion to the text whatever it holds.
class Splitter {
 public:
  Splitter(std::string_view text, int most_depth, JsonKind outermost = JsonKind::object)
      : text_(text), most_depth_(most_depth), outermost_(outermost) {}
  JsonObject result;

  bool null() { return scalar(JsonKind::null, "null"); }
  bool boolean(bool value) { return scalar(JsonKind::boolean, value ? "true" : "false"); }
  bool number_integer(std::int64_t value) { return scalar(JsonKind::number, std::to_string(value)); }
  bool number_unsigned(std::uint64_t value) { return scalar(JsonKind::number, std::to_string(value)); }
  bool number_float(double, const std::string& digits) { return scalar(JsonKind::number, digits); }
  bool string(std::string& value) {
    if (depth_ != 1) return scalar(JsonKind::text, json_quote(value));
    return scalar(JsonKind::text, std::move(value));
  }
  bool binary(const std::vector<std::uint8_t>&) { return refuse("This holds binary data, which JSON has not."); }
  bool key(std::string& name) {
    if (depth_ == 1) {
      next_.key = std::move(name);
      return true;
    }
    separate();
    next_.text += json_quote(name);
    next_.text += ':';
    return true;
  }
  bool start_object(std::size_t) { return open(JsonKind::object, '{'); }
  bool start_array(std::size_t) { return open(JsonKind::list, '['); }
  bool end_object() { return close('}'); }
  bool end_array() { return close(']'); }

  template <class Exception>
  bool parse_error(std::size_t position, const std::string&, const Exception&) {
    if (position > text_.size()) return refuse("This is cut short: it ends before its JSON does.");
    const std::size_t shown = position > 0 ? position - 1 : 0;
    const auto lines = std::count(text_.begin(), text_.begin() + std::ptrdiff_t(shown), '\n');
    return refuse("This is not JSON: line " + std::to_string(lines + 1) + " cannot be read.");
  }

 private:
  std::string_view text_;
  int most_depth_, depth_ = 0;
  JsonKind outermost_;
  JsonMember next_;

  bool refuse(std::string why) {
    if (result.trouble.empty()) result.trouble = std::move(why);
    return false;
  }
  /// A comma unless something has just been opened or named; a closing quote can never be taken for one of these.
  void separate() {
    if (next_.text.empty()) return;
    const char last = next_.text.back();
    if (last != '{' && last != '[' && last != ':') next_.text += ',';
  }
  bool scalar(JsonKind kind, std::string text) {
    if (depth_ == 0) return refuse("This is not a JSON object.");
    if (depth_ == 1) {
      next_.kind = kind;
      next_.text = std::move(text);
      take();
    } else {
      separate();
      next_.text += text;
    }
    return true;
  }
  bool open(JsonKind kind, char bracket) {
    if (depth_ == 0 && kind != outermost_) return refuse("This is not a JSON object.");
    if (depth_ >= most_depth_)
      return refuse("This is nested deeper than " + std::to_string(kMostFileDepth) + " levels.");
    if (depth_ == 1) {
      next_.kind = kind;
      next_.text.clear();
    }
    if (depth_ > 0) {
      separate();
      next_.text += bracket;
    }
    ++depth_;
    return true;
  }
  bool close(char bracket) {
    --depth_;
    if (depth_ > 0) next_.text += bracket;
    if (depth_ == 1) take();
    return true;
  }
  void take() {
    result.members.push_back(std::move(next_));
    next_ = {};
  }
};

/// Of members that share a key the last stays, at its own place.
void drop_earlier(JsonObject& object) {
  std::unordered_map<std::string_view, std::size_t> last;
  for (std::size_t i = 0; i < object.members.size(); ++i) last[object.members[i].key] = i;
  if (last.size() == object.members.size()) return;
  std::vector<bool> stays(object.members.size(), false);
  for (const auto& [key, at] : last) stays[at] = true;
  last.clear();
  std::vector<JsonMember> kept;
  for (std::size_t i = 0; i < object.members.size(); ++i) {
    if (stays[i]) {
      kept.push_back(std::move(object.members[i]));
    } else {
      object.twice.push_back(std::move(object.members[i].key));
    }
  }
  std::sort(object.twice.begin(), object.twice.end());
  object.twice.erase(std::unique(object.twice.begin(), object.twice.end()), object.twice.end());
  object.members = std::move(kept);
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// RFC 8259, section 6: no plus, no leading zero, digits on both sides of the point.
bool is_json_number(std::string_view token) {
  std::size_t at = 0;
  const auto digits = [&] {
    const std::size_t start = at;
    while (at < token.size() && is_digit(token[at])) ++at;
    return at > start;
  };
  const auto take = [&](char c) { return at < token.size() && token[at] == c && (++at, true); };
  take('-');
  if (!take('0') && !digits()) return false;
  if (take('.') && !digits()) return false;
  if (take('e') || take('E')) {
    if (!take('+')) take('-');
    if (!digits()) return false;
  }
  return at == token.size();
}

/// Whether a sound JSON number exceeds every double. Only these are touched: what is broken stays for the parser to
/// refuse.
bool overflows(std::string_view token) {
  double ignored = 0;
  return is_json_number(token) && !read_number(token, ignored);
}

}  // namespace

Repaired repair_json(std::string_view text) {
  constexpr std::string_view kNumberChars = "0123456789+-.eE";
  Repaired repaired;
  repaired.text.reserve(text.size());
  bool inside = false;  // a string
  for (std::size_t at = 0; at < text.size();) {
    const char c = text[at];
    if (static_cast<unsigned char>(c) >= 0x80) {
      const Rune rune = first_rune(text.substr(at));
      append_rune(repaired.text, rune.point);
      repaired.bad_utf8 |= !rune.valid;
      at += rune.bytes;
    } else if (!inside && (is_digit(c) || c == '-')) {
      const std::size_t end = std::min(text.find_first_not_of(kNumberChars, at), text.size());
      const std::string_view token = text.substr(at, end - at);
      // a number in a key's place is refused by the parser; quoted it would pass
      const std::size_t after = text.find_first_not_of(" \t\r\n", end);
      const bool as_key = after != std::string_view::npos && text[after] == ':';
      if (!as_key && overflows(token)) {
        repaired.text.append(1, '"').append(token).append(1, '"');
        repaired.too_large = true;
      } else {
        repaired.text += token;
      }
      at = end;
    } else {
      if (c == '"') inside = !inside;
      repaired.text += c;
      ++at;
      if (inside && c == '\\' && at < text.size() && static_cast<unsigned char>(text[at]) < 0x80)
        repaired.text += text[at++];
    }
  }
  return repaired;
}

JsonObject read_json_object(std::string_view text, int most_depth) {
  Splitter splitter(text, most_depth);
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) {
    splitter.result.trouble = "This is empty.";
  } else if (text.find('\0') != std::string_view::npos) {
    splitter.result.trouble = "This is not text: it holds zero bytes.";  // the library takes one for the end
  } else if (!nlohmann::json::sax_parse(text.begin(), text.end(), &splitter) && splitter.result.trouble.empty()) {
    splitter.result.trouble = "This is not JSON.";
  }
  if (!splitter.result.trouble.empty()) splitter.result.members.clear();
  drop_earlier(splitter.result);
  return std::move(splitter.result);
}

std::vector<JsonMember> read_json_list(std::string_view text, int most_depth) {
  Splitter splitter(text, most_depth, JsonKind::list);
  const bool whole = nlohmann::json::sax_parse(text.begin(), text.end(), &splitter);
  return whole ? std::move(splitter.result.members) : std::vector<JsonMember>{};
}

std::string json_value(const JsonMember& member) {
  return member.kind == JsonKind::text ? json_quote(member.text) : member.text;
}

std::string json_quote(std::string_view text) {
  constexpr char kHex[] = "0123456789abcdef";
  std::string quoted = "\"";
  while (!text.empty()) {
    const Rune rune = first_rune(text);
    text.remove_prefix(rune.bytes);
    if (rune.point == '"' || rune.point == '\\') {
      quoted += '\\';
      append_rune(quoted, rune.point);
    } else if (rune.point == '\n') {
      quoted += "\\n";
    } else if (rune.point == '\t') {
      quoted += "\\t";
    } else if (rune.point < 0x20 || rune.point == 0x7F) {
      quoted += "\\u00";
      quoted += kHex[rune.point >> 4];
      quoted += kHex[rune.point & 15];
    } else {
      append_rune(quoted, rune.point);
    }
  }
  return quoted + '"';
}

}  // namespace gs
