// Words are made on demand, never stored: reasons, verdict, changes.
#include <algorithm>
#include <cmath>

#include "core/outing/outlook.h"
#include "core/outing/rules_join.h"

namespace gs {
namespace {

/// "82 % arrive" style: the binding reading against its limit.
std::string against_limit(const Plan& plan, R id, const Figure& figure, const Style& style) {
  const std::string limit = say_lever(lever(limit_lever(id)), plan[limit_lever(id)], style);
  return lower_first(std::string(reading(id).name)) + " " + say_reading(id, figure.value, style) + ", limit " +
         limit;
}

}  // namespace

std::string say_reading(R id, double value, const Style& style) {
  const Reading& row = reading(id);
  if (row.in_words) return row.in_words(value, style, false);
  return say_result(value, row.unit, row.digits, style);
}

std::string speak_reading(R id, double value, const Style& style) {
  const Reading& row = reading(id);
  if (row.in_words) return row.in_words(value, style, true);
  return speak_quantity(value, row.unit, row.digits, style);
}

std::string say_range(R id, const Figure& figure, const Style& style) {
  if (figure.state == State::unknown) return {};
  const Reading& row = reading(id);
  const std::string low = say_reading(id, figure.low, style), high = say_reading(id, figure.high, style);
  if (low == high) return {};
  return row.in_words ? low + " to " + high
                      : say_result_range(figure.low, figure.high, row.unit, row.digits, style);
}

std::string lower_first(std::string text) {
  if (text.size() > 1 && text[0] >= 'A' && text[0] <= 'Z' && !(text[1] >= 'A' && text[1] <= 'Z'))
    text[0] = char(text[0] - 'A' + 'a');
  return text;
}

std::string reason(const Plan& plan, R, const Figure& figure, const Style& style) {
  switch (figure.doubt) {
    case Doubt::none:
      return {};
    case Doubt::missing:
      return "needs " + lower_first(std::string(lever(figure.culprit).name));
    case Doubt::evaluation_owed:
      return "an evaluation is owed: people may stand nearer than a formula alone can say";
    case Doubt::not_looked_at:
      return lower_first(std::string(lever(figure.culprit).name)) + " not looked at yet";
    case Doubt::people_too_near:
      return "people stand nearer than the keep-out";
    case Doubt::line_too_near:
      return "a power line is too near for what may fall or be thrown";
    case Doubt::line_near:
      return "a power line is hardly farther off than what may fall or be thrown";
    case Doubt::line_not_paced:
      return "looked, but no distance was given";
    case Doubt::no_wire_there:
      return "no wire passes over it";
    case Doubt::no_own_length:
      return "no length of it resonates by itself: a coil or a matching unit sees to that";
    case Doubt::not_allowed:
      return say_rules(plan, style);
    case Doubt::not_allowed_anywhere:
      return "this licence class has no place for it";
    case Doubt::no_kit:
      return "needs a kit list";
    case Doubt::no_minutes:
      return "no item of the kit says its minutes";
    case Doubt::no_date:
      return "needs the outing's date";
    case Doubt::no_horizon:
      return "the sun does not come to the horizon on this date";
    case Doubt::later:
      return "this link does not answer yet";
    case Doubt::not_in_catalogue:
      return "the catalogue does not have it for this " + lower_first(std::string(lever(figure.culprit).name));
    case Doubt::no_fuse:
      return "no fuse carries this current and saves this wire: take thicker wire";
    case Doubt::outside_tested: {
      if (lever(figure.culprit).link != Link::feedline)
        return "outside the loads, voltages and temperatures that battery tables were tested at: the range counts";
      if (figure.culprit == L::feedline_own_second_at_mhz)
        return "outside the two frequencies at which this cable was measured";
      const bool second = figure.culprit == L::feedline_second_cable;
      const L of = second ? L::feedline_second_cable : L::feedline_cable;
      const feedline::Cable& cable = feedline::cables()[std::size_t(plan[of])];
      const auto say = [&](double mhz) { return say_quantity(mhz, Unit::megahertz, digits_needed(mhz, 2), style); };
      const std::string whose = second ? "second cable's law tested " : "cable's law tested ";
      if (cable.lowest_mhz == cable.highest_mhz) return whose + "at " + say(cable.lowest_mhz) + " only";
      return whose + "from " + say(cable.lowest_mhz) + " to " + say(cable.highest_mhz);
    }
    case Doubt::contradiction:
    case Doubt::impossible:
      for (const Clash& clash : clashes(plan, style))
        if (clash.first == figure.culprit || clash.second == figure.culprit) return clash.sentence;
      return "two figures contradict each other";
  }
  return {};
}

Verdict verdict(const Plan& plan, const Outlook& outlook, const Style& style) {
  Verdict result;
  const std::vector<Clash> clash = clashes(plan, style);
  int known = 0, unknown_links = 0;
  Standing worst{};
  Link worst_link = Link::count, first_unknown = Link::count;
  for (const Link link : kChain) {
    const Standing now = standing(outlook, link);
    if (now.state == State::unknown) {
      ++unknown_links;
      if (first_unknown == Link::count && now.binds != R::count) first_unknown = link;
      continue;
    }
    if (known++ == 0 || now.slack < worst.slack) {
      worst = now;
      worst_link = link;
    }
  }
  if (!clash.empty()) {
    result.headline = "Two figures do not go together.";
    result.cause = clash.front().sentence;
    result.state = State::fails;
    return result;
  }
  if (outlook[R::rules_room_khz].state == State::fails) {
    result.headline = "This may not be transmitted.";
    result.cause = say_rules(plan, style);
    result.state = State::fails;
    result.binds = R::rules_room_khz;
    return result;
  }
  const auto not_known = [&] {
    return unknown_links == 0   ? std::string{}
           : unknown_links == 1 ? std::string(" One link is not known.")
                                : " " + std::to_string(unknown_links) + " links are not known.";
  };
  if (known == 0) {
    result.headline = "Nothing known yet.";
    if (first_unknown != Link::count) {
      const R id = standing(outlook, first_unknown).binds;
      result.cause = std::string(link_name(first_unknown)) + " " + reason(plan, id, outlook[id], style) + ".";
    }
    return result;
  }
  result.state = worst.state;
  result.binds = worst.binds;
  const std::string name(link_name(worst_link));
  if (worst.state == State::holds) {
    result.headline = unknown_links == 0 ? "The chain holds."
                      : known == 1       ? name + " holds."
                                         : "What is known holds.";
    const std::string detail = against_limit(plan, worst.binds, outlook[worst.binds], style);
    result.cause = (known == 1 ? std::string{} : name + " is nearest: ") + detail + ".";
    if (known == 1 && !result.cause.empty() && result.cause[0] >= 'a' && result.cause[0] <= 'z')
      result.cause[0] = char(result.cause[0] - 'a' + 'A');
  } else {
    result.headline = worst.state == State::fails ? "The chain fails." : "The chain is tight.";
    result.cause = name + (worst.state == State::fails ? " fails: " : " is tight: ") +
                   against_limit(plan, worst.binds, outlook[worst.binds], style) + ".";
  }
  result.cause += not_known();
  return result;
}

Change compare(R id, const Figure& now, const Figure& pinned) {
  if (!std::isfinite(now.value) || !std::isfinite(pinned.value)) return {};
  const Reading& row = reading(id);
  Change change{Change::Kind::same, now.value - pinned.value};
  if (say_reading(id, now.value) == say_reading(id, pinned.value)) return change;
  if (row.better == Better::neither) {
    change.kind = Change::Kind::other;
  } else {
    change.kind = (change.delta > 0) == (row.better == Better::more) ? Change::Kind::better : Change::Kind::worse;
  }
  return change;
}

std::string say_change(R id, const Change& change, const Style& style) {
  if (change.kind == Change::Kind::none) return {};
  if (change.kind == Change::Kind::same) return "same";
  const Reading& row = reading(id);
  // Two printed figures that differ are at least one last digit apart, also where rounding alone parts them.
  const double delta = std::max(std::abs(change.delta), std::pow(10.0, -row.digits));
  // points are counted, not rounded to "< 1" as shares are
  const Unit counted = row.unit == Unit::percent ? Unit::none : row.unit;
  const Printed text = print_quantity(delta, counted, row.digits, style);
  const std::string unit = row.unit != Unit::percent ? text.unit : text.number == "1" ? "point" : "points";
  return (change.delta > 0 ? "+" : "\u2212") + text.number + (unit.empty() ? "" : " " + unit);
}

}  // namespace gs
