#include "core/outing/field_card.h"

#include <algorithm>
#include <cmath>

#include "core/outing/archive.h"
#include "core/pace/clock.h"
#include "core/safety/caution.h"

namespace gs {
namespace {

constexpr std::size_t kColumns = 78;
constexpr int kMostBoxes = 40;

/// A local time with UTC beside it where the offset is known: "16:30 (20:30 UTC)".
std::string both_clocks(const Plan& plan, double local_min) {
  local_min = std::round(local_min);  // both clocks show the same minute
  std::string text = say_result(local_min, Unit::clock_minute, 0);
  if (pace::comes_twice(local_min, clock_change(plan))) return text + " (comes twice that day)";
  if (!plan.has(L::clock_utc_offset_min)) return text;
  const pace::UtcTime utc = pace::utc_of(running_min(plan, local_min), plan[L::clock_utc_offset_min]);
  return text + " (" + wall_clock(utc.minute_of_day) + " UTC" +
         (utc.day_shift > 0   ? ", next day"
          : utc.day_shift < 0 ? ", day before"
                              : "") +
         ")";
}

std::string lever_text(const Plan& plan, L id, const Style& style) {
  const Lever& row = lever(id);
  if (row.kind == Kind::choice) return std::string(row.options()[std::size_t(plan[id])].name);
  if (row.kind == Kind::text) return row.write(plan[id]);
  if (row.unit == Unit::clock_minute) return both_clocks(plan, plan[id]);
  return say_lever(row, plan[id], style);
}

/// What was set, and usual values that a result hangs on first; then every known result.
CardPart link_part(Link link, const Plan& plan, const Outlook& outlook, const Style& style) {
  CardPart part{std::string(link_name(link)), {}, {}};
  for (std::size_t i = 0; i < std::size_t(L::count); ++i)
    if (lever(L(i)).link == link && plan.from[i] == From::yours)
      part.rows.emplace_back(lever(L(i)).name, lever_text(plan, L(i), style));
  for (std::size_t i = 0; i < kReadingCount; ++i) {
    const R id = R(i);
    const Reading& row = reading(id);
    const Figure& figure = outlook[id];
    if (row.link != link || figure.state == State::unknown || !std::isfinite(figure.value)) continue;
    std::string text =
        row.unit == Unit::clock_minute ? both_clocks(plan, figure.value) : say_reading(id, figure.value, style);
    if (figure.state == State::tight || figure.state == State::fails)
      text += ", " + std::string(state_word(figure.state));
    part.rows.emplace_back(row.name, std::move(text));
  }
  return part;
}

CardPart stints_part(const Plan& plan, const Outing& outing, const Style& style) {
  CardPart part{"Changes while on the air", {}, {}};
  for (std::size_t i = 0; i < outing.stints.size(); ++i) {
    const Stint& stint = outing.stints[i];
    std::string words = stint.on_air ? "" : "break";
    for (const auto& [id, value] : stint.set) {
      const StintPlan& changed = plan.stints[i];
      if (!changed.plan.empty() && changed.plan.front().has(id))
        words += (words.empty() ? "" : ", ") + lower_first(std::string(lever(id).name)) + " " +
                 lever_text(changed.plan.front(), id, style);
    }
    part.rows.emplace_back("from " + both_clocks(plan, stint.from_min), words.empty() ? "as planned" : words);
  }
  return part;
}

CardPart cautions_part() {
  CardPart part{"Before and while", {}, {}};
  for (const safety::Caution& caution : safety::cautions())
    part.lines.push_back((caution.kind == safety::Caution::Kind::know ? "" : "[ ] ") + std::string(caution.words));
  part.lines.push_back("Local rules, the makers' instructions and licensed practice come first.");
  return part;
}

CardPart kit_part(const Outing& outing) {
  CardPart part{"Kit", {}, {}};
  for (const kit::Item& item : outing.kit) {
    const std::string pieces = item.backups > 0 ? ", " + std::to_string(item.backups + 1) + " pieces" : "";
    part.lines.push_back("[ ] " + item.name + pieces);
  }
  return part;
}

CardPart tally_part(const Plan& plan) {
  const int target = int(std::lround(plan[L::pace_target]));
  CardPart part{"Contacts", {}, {}};
  std::string boxes;
  for (int i = 1; i <= std::min(target, kMostBoxes); ++i) boxes += std::string(i > 1 ? " " : "") + "[ ]";
  part.lines.push_back(boxes + (target > kMostBoxes ? " ..." : ""));
  return part;
}

std::string padded(const std::string& what, const std::string& how_much) {
  const std::size_t used = what.size() + how_much.size() + 2;
  return "  " + what + " " + std::string(used + 2 < kColumns ? kColumns - used - 2 : 1, '.') + " " + how_much +
         "\n";
}

}  // namespace

FieldCard field_card(const Outing& outing, const Plan& plan, const Outlook& outlook, const Style& style) {
  FieldCard card;
  card.title = outing.name.empty() ? "Outing" : outing.name;
  if (!outing.date.empty()) card.title += ", " + outing.date;
  const Verdict words = verdict(plan, outlook, style);
  card.parts.push_back({"", {}, {words.headline + (words.cause.empty() ? "" : " " + words.cause)}});
  for (const Link link : {Link::clock, Link::battery, Link::radio, Link::feedline, Link::antenna, Link::sky,
                          Link::contacts, Link::safety, Link::kit}) {
    CardPart part = link_part(link, plan, outlook, style);
    if (!part.rows.empty()) card.parts.push_back(std::move(part));
    if (link == Link::clock && !outing.stints.empty()) card.parts.push_back(stints_part(plan, outing, style));
  }
  card.parts.push_back(cautions_part());
  if (!outing.kit.empty()) card.parts.push_back(kit_part(outing));
  card.parts.push_back(tally_part(plan));
  return card;
}

std::string card_text(const FieldCard& card) {
  std::string text = card.title + "\n";
  for (const CardPart& part : card.parts) {
    text += "\n" + (part.heading.empty() ? "" : part.heading + "\n");
    for (const auto& [what, how_much] : part.rows) text += padded(what, how_much);
    for (const std::string& line : part.lines) text += (part.heading.empty() ? "" : "  ") + line + "\n";
  }
  return text;
}

std::string card_json(const FieldCard& card) {
  std::string text = "{\"title\":" + json_quote(card.title) + ",\"parts\":[";
  bool first_part = true;
  for (const CardPart& part : card.parts) {
    text += std::string(first_part ? "" : ",") + "{\"heading\":" + json_quote(part.heading) + ",\"rows\":[";
    first_part = false;
    for (std::size_t i = 0; i < part.rows.size(); ++i)
      text += std::string(i ? "," : "") + "[" + json_quote(part.rows[i].first) + "," +
              json_quote(part.rows[i].second) + "]";
    text += "],\"lines\":[";
    for (std::size_t i = 0; i < part.lines.size(); ++i)
      text += std::string(i ? "," : "") + json_quote(part.lines[i]);
    text += "]}";
  }
  return text + "]}";
}

}  // namespace gs
