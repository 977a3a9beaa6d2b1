// Outings and settings as JSON text. The only place that knows the JSON library.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/outing/outing.h"
#include "core/outing/settings.h"

namespace gs {

inline constexpr std::size_t kMostFileBytes = 1'000'000;
inline constexpr int kMostFileDepth = 16;
inline constexpr std::size_t kMostNameChars = 80;
inline constexpr std::size_t kMostNotesChars = 4000;
inline constexpr int kFileVersion = 1;
inline constexpr std::size_t kMostKitItems = 200;
inline constexpr double kMostItemGrams = 100'000;
inline constexpr int kMostBackups = 99;
inline constexpr double kMostItemLitres = 1000, kMostItemMinutes = 240, kMostItemAmount = 100'000;

/// What came out of reading a file. Refused: `refusal` says why in one line and the outing is empty.
/// `notes` tell what was read otherwise than written (unknown keys kept, a value outside its range left out, ...),
/// a line each, each naming the key. `newer` is true when the file's version number is above ours: never overwrite
/// it unasked.
struct LoadedOuting {
  Outing outing;
  std::string refusal;
  std::vector<std::string> notes;
  bool newer = false;
};

// `Outing::kept` is what a file held that this version does not know, as compact JSON in the order of the file:
// {"top": {key: value}, "levers": {..}, "pinned": {..}, "pinned_levers": {..}}. A part is absent when it is empty;
// "" when all are. Values of any kind are kept whole, numbers with the digits they came with. Rows of "stints",
// "on_air", "tally" and "measured" that could not be used stand there under their list's key.

/// Reads an outing file: {"groundsheet": 1, "kind": "outing", "name", "date", "levers": {key: value}, "pinned": {},
/// ...}. "pinned" is {"name": text, "levers": {key: value}}; nothing is pinned while its "levers" are absent. Never
/// throws. Refused: over 1 MB (also when it would be so written back), deeper than 16, not JSON, not an object, no
/// or wrong "groundsheet"/"kind". A lever value of the wrong type, not finite, or outside least..most is left out
/// and noted with the key and the range; an unknown choice key likewise. A number may stand as text with its unit
/// ("50ft"): read_quantity reads it, and it is noted. Names and text levers are cut to 80 characters, "notes" to
/// 4000 and may hold line breaks; other control characters are stripped, bad UTF-8 is replaced. Of a key that comes
/// twice the last counts. At most 40 notes, then one that counts the rest. "kit" is a list of at most 200 {"name":
/// text, "function": text, "weight_g": 0..100000, "backups": 0..99, "works_pct": 0..100, "vital": true or false};
/// only the name must be there, and an item without a function stands for itself. Written only where they say
/// something: "volume_l", "set_up_min", "charge", "charged", "packed", "stowed" (true or false), "cause", "lever"
/// (texts), "amount". Other members of an item are kept with it and noted. An item with a value out of range is
/// left out. Chances are held to a ten-thousandth of a percent. "stints": [{"from_min", "on_air": false for a
/// break, "levers": {key: value} of stint_levers()}], at most 48, put in order of time. "on_air": [{"from",
/// "until"}], "tally": [{"at", "count", "forgotten"}] and "measured":
/// [{"key", "value", "at"}] hold what happened; times are RFC 3339 texts. A row that cannot be used is noted and
/// kept.
LoadedOuting read_outing(std::string_view text);

/// Writes it, two-space indented, keys in table order, unset levers absent, then what was kept. Ends with a
/// newline. read_outing(write_outing(o)).outing == o for every o that read_outing or `with` can make. Texts are
/// written as they are: pass what a person types through clean_text(text, kMostNameChars) first, notes through
/// clean_lines(text, kMostNotesChars) (utf8.h); empty notes are not written. Kept
/// "pinned_levers" are only written while something is pinned.
std::string write_outing(const Outing& outing);

/// `kept` without the parts that belong to the pinned plan: for whoever pins another plan or takes the pin away.
std::string kept_without_pin(std::string_view kept);

struct LoadedSettings {
  Settings settings;
  std::string refusal;
  std::vector<std::string> notes;
};
LoadedSettings read_settings(std::string_view text);
std::string write_settings(const Settings& settings);

/// JSON string literal of UTF-8 text, with quotes, everything beyond printable ASCII but valid UTF-8 kept, the rest
/// escaped.
std::string json_quote(std::string_view text);

}  // namespace gs
