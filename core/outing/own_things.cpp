#include "core/outing/own_things.h"

#include <algorithm>
#include <iterator>

#include "core/outing/archive.h"
#include "core/outing/plan.h"
#include "core/outing/utf8.h"

namespace gs {
namespace {

struct GroupRow {
  std::string_view key, word, plural;
  std::string_view stems[2];    // of lever keys
  std::string_view not_own[6];  // of the outing, not of the thing
};
constexpr GroupRow kGroups[] = {
    {"battery",
     "battery",
     "Batteries",
     {"battery.", ""},
     {"battery.temperature_c", "battery.used_ah", "battery.reserve_pct", "", "", ""}},
    {"radio",
     "radio",
     "Radios",
     {"radio.", "lead."},
     {"radio.transmit_power_w", "radio.mode", "radio.transmit_share_pct", "", "", ""}},
    {"cable",
     "cable",
     "Cables",
     {"feedline.", ""},
     {"feedline.measured_swr", "feedline.measured_at", "", "", "", ""}},
    {"antenna",
     "antenna",
     "Antennas",
     {"antenna.", ""},
     {"antenna.frequency_mhz", "antenna.apex_m", "antenna.span_m", "", "", ""}},
};
static_assert(std::size(kGroups) == std::size_t(OwnGroup::count), "one row a group, in the same order");

const GroupRow& row_of(OwnGroup group) { return kGroups[std::min(std::size_t(group), std::size(kGroups) - 1)]; }

/// The levers that tell a thing from others of its kind, most telling first.
constexpr L kTelling[][2] = {{L::battery_chemistry, L::battery_capacity_ah},
                             {L::radio_full_power_w, L::radio_receive_current_a},
                             {L::feedline_cable, L::feedline_length_m},
                             {L::antenna_kind, L::antenna_feed_r_ohm}};

}  // namespace

std::string_view group_key(OwnGroup group) { return row_of(group).key; }
std::string_view group_word(OwnGroup group) { return row_of(group).word; }
std::string_view group_plural(OwnGroup group) { return row_of(group).plural; }

bool belongs_to(OwnGroup group, L id) {
  if (std::size_t(id) >= std::size_t(L::count)) return false;  // limits are the person's, not the thing's
  const std::string_view key = lever(id).key;
  const GroupRow& row = row_of(group);
  if (std::find(std::begin(row.not_own), std::end(row.not_own), key) != std::end(row.not_own)) return false;
  return std::any_of(std::begin(row.stems), std::end(row.stems),
                     [&](std::string_view stem) { return !stem.empty() && key.substr(0, stem.size()) == stem; });
}

bool has_own(OwnGroup group, const Outing& outing) {
  for (std::size_t i = 0; i < outing.set.size(); ++i)
    if (belongs_to(group, L(i)) && !std::holds_alternative<std::monostate>(outing.set[i])) return true;
  return false;
}

std::string own_summary(const OwnThing& thing, const Style& style) {
  std::string text;
  const Plan plan = resolve(thing.set);
  const auto add = [&](L id) {
    if (std::holds_alternative<std::monostate>(thing.set[std::size_t(id)]) || !plan.has(id)) return;
    const Lever& row = lever(id);
    text += text.empty() ? "" : ", ";
    if (row.kind == Kind::choice) {
      text += row.options()[std::size_t(plan[id])].name;
    } else if (row.kind == Kind::number) {
      text += say_lever(row, plan[id], style);
    }
  };
  for (const L id : kTelling[std::size_t(thing.group)]) add(id);
  return text.empty() ? std::string(group_word(thing.group)) : text;
}

OwnThing take_own(OwnGroup group, std::string_view name, const Outing& outing) {
  OwnThing thing;
  thing.group = group;
  for (std::size_t i = 0; i < outing.set.size(); ++i)
    if (belongs_to(group, L(i))) thing.set[i] = outing.set[i];
  thing.name = clean_text(name, kMostNameChars);
  if (thing.name.empty()) thing.name = clean_text(own_summary(thing, {}), kMostNameChars);
  return thing;
}

Outing with_own(Outing outing, const OwnThing& thing) {
  for (std::size_t i = 0; i < outing.set.size(); ++i)
    if (belongs_to(thing.group, L(i))) outing = with(std::move(outing), L(i), thing.set[i]);
  return outing;
}

}  // namespace gs
