#include <algorithm>
#include <cmath>

#include "core/outing/archive.h"
#include "core/outing/archive_parts.h"
#include "core/outing/plan.h"
#include "core/outing/rules_rows.h"

namespace gs {
namespace {

constexpr std::string_view kThemes[] = {"daylight", "dusk", "night"};
static_assert(std::size(kThemes) == std::size_t(ThemeName::count), "one key for every theme, in the same order");
constexpr double kLeastTextPct = 100, kMostTextPct = 200;

/// Reads one member. Gives what was wanted when it cannot be had, "" when it could.
std::string read_setting(const JsonMember& member, Settings& settings) {
  const auto flag = [&member](bool& value) -> std::string {
    if (member.kind != JsonKind::boolean) return "true or false is wanted";
    value = member.text == "true";
    return {};
  };
  if (member.key == "theme") {
    const auto at = std::find(std::begin(kThemes), std::end(kThemes), member.text);
    if (member.kind != JsonKind::text || at == std::end(kThemes)) return "daylight, dusk or night is wanted";
    settings.theme = ThemeName(at - std::begin(kThemes));
  } else if (member.key == "text_pct") {
    double pct = 0;
    if (member.kind != JsonKind::number || !read_number(member.text, pct) || pct < kLeastTextPct ||
        pct > kMostTextPct || pct != std::floor(pct))
      return "a whole number from 100 to 200 is wanted";
    settings.text_pct = int(pct);
  } else if (member.key == "left_hand") {
    return flag(settings.left_hand);
  } else if (member.key == "decimal_sign") {
    if (member.kind != JsonKind::text || (member.text != "." && member.text != ","))
      return "\".\" or \",\" is wanted";
    settings.style.decimal_sign = member.text[0];
  } else if (member.key == "feet") {
    return flag(settings.style.feet);
  } else if (member.key == "fahrenheit") {
    return flag(settings.style.fahrenheit);
  } else if (member.key == "licence") {
    const std::span<const Option> classes = licence_options();
    const auto known = [&member](const Option& option) { return option.key == member.text; };
    if (member.kind != JsonKind::text ||
        (!member.text.empty() && std::none_of(classes.begin(), classes.end(), known)))
      return "a licence class is wanted";
    settings.licence = member.text;
  } else if (member.key == "usual") {
    const JsonObject values = read_json_object(json_value(member), kMostFileDepth);
    if (!values.trouble.empty()) return "a list of levers and their usual values is wanted";
    for (const JsonMember& row : values.members) {
      OwnUsual own{row.key, 0};
      const L id = find_lever(row.key);
      const bool number = row.kind == JsonKind::number && read_number(row.text, own.value);
      const bool fits = is_lever(id) && lever(id).kind == Kind::number && number && refusal(id, own.value).empty();
      if (fits && settings.usual.size() < kMostOwnUsual) settings.usual.push_back(std::move(own));
    }
  } else {
    return "this version does not know it";
  }
  return {};
}

std::string_view truth(bool value) { return value ? "true" : "false"; }

}  // namespace

LoadedSettings read_settings(std::string_view text) {
  LoadedSettings loaded;
  Notes notes;
  OpenedFile file = open_file(text, "settings", notes);
  loaded.refusal = std::move(file.refusal);
  if (!loaded.refusal.empty()) return loaded;
  for (const JsonMember& member : file.members) {
    if (member.key == "own_items") {
      loaded.settings.own_items = read_kit(member, notes);
      continue;
    }
    const std::string why = read_setting(member, loaded.settings);
    if (!why.empty()) notes.add(member.key, "left out; " + why + ".");
  }
  loaded.notes = notes.take();
  return loaded;
}

std::string write_settings(const Settings& settings) {
  std::vector<std::string> usual;
  for (const OwnUsual& own : settings.usual) usual.push_back(member_text(own.key, exact_text(own.value)));
  const std::size_t theme = std::min(std::size_t(settings.theme), std::size(kThemes) - 1);
  std::vector<std::string> members{
      member_text("groundsheet", std::to_string(kFileVersion)),
      member_text("kind", json_quote("settings")),
      member_text("theme", json_quote(kThemes[theme])),
      member_text("text_pct", std::to_string(settings.text_pct)),
      member_text("left_hand", truth(settings.left_hand)),
      member_text("decimal_sign", json_quote(settings.style.decimal_sign == ',' ? "," : ".")),
      member_text("feet", truth(settings.style.feet)),
      member_text("fahrenheit", truth(settings.style.fahrenheit)),
      member_text("licence", json_quote(settings.licence))};
  if (!settings.own_items.empty()) members.push_back(member_text("own_items", kit_text(settings.own_items, "  ")));
  if (!usual.empty()) members.push_back(member_text("usual", object_text(usual, "  ")));
  return object_text(members, "") + "\n";
}

}  // namespace gs
