// What is carried, to and from a file.
#include <cmath>
#include <utility>

#include "core/outing/archive.h"
#include "core/outing/archive_parts.h"
#include "core/outing/quantity.h"
#include "core/outing/utf8.h"

namespace gs {
namespace {

// A chance is held to a ten-thousandth of a percent: dividing by 100 alone would not come back to the same bits.
constexpr double kPartsOfOne = 1e6, kPartsOfPercent = 1e4;

struct Flag {
  std::string_view key;
  bool kit::Item::*of;
};
constexpr Flag kFlags[] = {{"charge", &kit::Item::charge},
                           {"charged", &kit::Item::charged},
                           {"packed", &kit::Item::packed},
                           {"stowed", &kit::Item::stowed}};

/// An item on its way out of a file; `trouble` says what was wrong with it first.
struct ItemReader {
  kit::Item item;
  std::string trouble;

  void wrong(const JsonMember& member, std::string_view wanted) {
    if (trouble.empty()) trouble = clean_text(member.key, kMostNameChars) + " must be " + std::string(wanted) + ".";
  }
  double number(const JsonMember& member, double most, std::string_view wanted) {
    double value = 0;
    if (member.kind == JsonKind::number && read_number(member.text, value) && value >= 0 && value <= most)
      return value == 0 ? 0 : value;  // no minus before a zero
    wrong(member, wanted);
    return 0;
  }
  std::string text(const JsonMember& member) {
    if (member.kind != JsonKind::text) wrong(member, "a text");
    return member.kind == JsonKind::text ? clean_text(member.text, kMostNameChars) : std::string{};
  }
  bool flag(const JsonMember& member) {
    if (member.kind != JsonKind::boolean) wrong(member, "true or false");
    return member.text == "true";
  }
  /// Members that are only written where they say more than the usual.
  bool take_more(const JsonMember& member) {
    for (const Flag& row : kFlags)
      if (member.key == row.key) {
        item.*row.of = flag(member);
        return true;
      }
    if (member.key == "volume_l") {
      item.volume_l = number(member, kMostItemLitres, "0 to 1000 litres");
    } else if (member.key == "set_up_min") {
      item.set_up_min = number(member, kMostItemMinutes, "0 to 240 minutes");
    } else if (member.key == "cause") {
      item.cause = text(member);
    } else if (member.key == "lever") {
      item.lever = text(member);
    } else if (member.key == "amount") {
      item.amount = number(member, kMostItemAmount, "0 to 100000");
    } else {
      return false;
    }
    return true;
  }
  /// False for a member that is not known.
  bool take(const JsonMember& member) {
    if (member.key == "name") {
      item.name = text(member);
    } else if (member.key == "function") {
      item.function = text(member);
    } else if (member.key == "weight_g") {
      item.weight_g = number(member, kMostItemGrams, "0 to 100000 grams");
    } else if (member.key == "backups") {
      const double backups = number(member, kMostBackups, "a whole number, 0 to 99");
      if (backups != std::floor(backups)) wrong(member, "a whole number, 0 to 99");
      item.backups = int(backups);
    } else if (member.key == "works_pct") {
      item.works = std::round(number(member, 100, "0 to 100 %") * kPartsOfPercent) / kPartsOfOne;
    } else if (member.key == "vital") {
      item.vital = flag(member);
    } else {
      return take_more(member);
    }
    return true;
  }
};

}  // namespace

std::vector<kit::Item> read_kit(const JsonMember& member, Notes& notes) {
  std::vector<kit::Item> items;
  if (member.kind != JsonKind::list) {
    notes.add("kit", "left out; a list is wanted.");
    return items;
  }
  const std::vector<JsonMember> elements = read_json_list(member.text, kMostFileDepth);
  for (std::size_t i = 0; i < elements.size(); ++i) {
    const std::string which = "kit item " + std::to_string(i + 1);
    if (items.size() == kMostKitItems) {
      notes.add(which, "left out with all after it; " + std::to_string(kMostKitItems) + " items are the most.");
      break;
    }
    if (elements[i].kind != JsonKind::object) {
      notes.add(which, "left out; an object is wanted.");
      continue;
    }
    ItemReader reader;
    for (const JsonMember& one : read_json_object(elements[i].text, kMostFileDepth).members)
      if (!reader.take(one)) {
        notes.add(which + " " + one.key, "kept as it is; this version does not know it.");
        reader.item.kept += ", " + json_quote(one.key) + ": " + json_value(one);
      }
    kit::Item& item = reader.item;
    if (reader.trouble.empty() && item.name.empty()) reader.trouble = "name is missing.";
    if (!reader.trouble.empty()) {
      notes.add(which, "left out. " + reader.trouble);
      continue;
    }
    // Two items without a function are not each other's spares.
    if (item.function.empty()) item.function = item.name;
    items.push_back(std::move(item));
  }
  return items;
}

std::string kit_text(const std::vector<kit::Item>& items, std::string_view indent) {
  std::string text = "[";
  for (std::size_t i = 0; i < items.size(); ++i) {
    const kit::Item& item = items[i];
    const double works_pct = std::round(item.works * kPartsOfOne) / kPartsOfPercent;
    text.append(i > 0 ? ",\n" : "\n").append(indent).append("  {");
    text += member_text("name", json_quote(item.name)) + ", " + member_text("function", json_quote(item.function)) +
            ", " + member_text("weight_g", exact_text(item.weight_g)) + ", " +
            member_text("backups", std::to_string(item.backups)) + ", " +
            member_text("works_pct", exact_text(works_pct)) + ", " +
            member_text("vital", item.vital ? "true" : "false");
    const auto say = [&text](std::string_view key, const std::string& value) {
      text += ", " + member_text(key, value);
    };
    if (item.volume_l > 0) say("volume_l", exact_text(item.volume_l));
    if (item.set_up_min > 0) say("set_up_min", exact_text(item.set_up_min));
    for (const Flag& row : kFlags)
      if (item.*row.of) say(row.key, "true");
    if (!item.cause.empty()) say("cause", json_quote(item.cause));
    if (!item.lever.empty()) say("lever", json_quote(item.lever));
    if (item.amount > 0) say("amount", exact_text(item.amount));
    text += item.kept + "}";
  }
  return text.append("\n").append(indent).append("]");
}

}  // namespace gs
