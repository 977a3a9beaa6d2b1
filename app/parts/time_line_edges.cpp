// The edges of the time line in the hand: a row of eyelets under it, dragged or stepped by five minutes.
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/parts/time_line.h"
#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Point;
using mirror::Role;
namespace space = look::space;

namespace {

constexpr double kStepMin = 5, kLeastOnAirMin = 5;
constexpr float kRowHigh = 52, kKnob = 11;

std::string clock_text(double minutes) { return say_result(minutes, Unit::clock_minute, 0); }

std::string lasting(std::string_view what, double minutes, const Style& style) {
  return std::string(what) + " " + speak_quantity(minutes, Unit::minute, 0, style);
}

/// Places of boxes 48 px wide and 8 px apart as near to where they belong as the row allows.
std::vector<float> spread(const std::vector<float>& wanted, float left, float right) {
  constexpr float kApart = space::kTarget + space::kGap;
  std::vector<float> at = wanted;
  float least = left + space::kTarget / 2;
  for (float& x : at) {
    x = std::max(x, least);
    least = x + kApart;
  }
  float most = right - space::kTarget / 2;
  for (auto it = at.rbegin(); it != at.rend(); ++it) {
    *it = std::min(*it, most);
    most = *it - kApart;
  }
  return at;
}

}  // namespace

std::vector<TimeEdge> time_edges(const Session& session) {
  const Plan& plan = session.plan();
  const Figure& pack_by = session.outlook()[R::clock_pack_by_min];
  if (pack_by.state == State::unknown) return {};
  const Style& style = session.style();
  const pace::Stay stay = stay_of(plan);
  const double arrive = stay.arrive_min, leave = stay.leave_by_min;
  const auto clock = [&](double minute) { return clock_text(shown_min(plan, minute)); };
  const double set_up = plan[L::clock_set_up_min], pack_down = plan[L::clock_pack_down_min];
  const double starts = arrive + set_up, packs = leave - pack_down;
  const auto most_of = [](L id, double value) { return std::min(value, lever(id).most); };
  std::vector<TimeEdge> edges = {
      {"timeline:arrive", "Arrive", clock(arrive), arrive, lever(L::clock_arrive_min).least,
       most_of(L::clock_arrive_min, packs - set_up - kLeastOnAirMin)},
      {"timeline:starts", "On the air from", clock(starts) + ", " + lasting("set-up", set_up, style), starts,
       arrive, most_of(L::clock_set_up_min, packs - kLeastOnAirMin - arrive) + arrive},
      {"timeline:packs", "Start packing", clock(packs) + ", " + lasting("pack-down", pack_down, style), packs,
       std::max(starts + kLeastOnAirMin, leave - lever(L::clock_pack_down_min).most), leave},
      {"timeline:leave", "Leave by", clock(leave), leave, starts + pack_down + kLeastOnAirMin,
       lever(L::clock_leave_by_min).most},
  };
  const std::vector<Stint>& stints = session.outing().stints;
  for (std::size_t i = 0; i < stints.size(); ++i) {
    const double at = running_min(plan, stints[i].from_min);
    if (at < starts || at > packs) continue;
    const double least = std::max(starts, i > 0 ? running_min(plan, stints[i - 1].from_min) : starts);
    const double most = std::min(packs, i + 1 < stints.size() ? running_min(plan, stints[i + 1].from_min) : packs);
    std::string words = stint_words(stints[i], style);
    words[0] = char(words[0] >= 'a' && words[0] <= 'z' ? words[0] - 'a' + 'A' : words[0]);
    edges.push_back({"timeline:stint:" + std::to_string(i), words + " from", clock(at), at, least, most, int(i)});
  }
  std::stable_sort(edges.begin(), edges.end(),
                   [](const TimeEdge& a, const TimeEdge& b) { return a.at_min < b.at_min; });
  return edges;
}

std::string stint_words(const Stint& stint, const Style& style) {
  if (!stint.on_air) return "break";
  std::string words;
  for (const auto& [id, value] : stint.set) {
    const Lever& row = lever(id);
    std::string text;
    if (const double* number = std::get_if<double>(&value)) {
      text = id == L::pace_per_hour ? say_lever(row, *number, style) + " an hour" : say_lever(row, *number, style);
    } else if (const std::string* key = std::get_if<std::string>(&value)) {
      for (const Option& option : row.options())
        if (option.key == *key) text = option.name;
    }
    words += (words.empty() ? "" : ", ") + text;
  }
  return words.empty() ? "as planned" : words;
}

std::vector<std::pair<double, double>> breaks_of(const Session& session, double from_min, double until_min) {
  std::vector<std::pair<double, double>> breaks;
  const std::vector<Stint>& stints = session.outing().stints;
  for (std::size_t i = 0; i < stints.size(); ++i) {
    if (stints[i].on_air) continue;
    const double off = std::max(from_min, running_min(session.plan(), stints[i].from_min));
    const double on = std::min(
        until_min, i + 1 < stints.size() ? running_min(session.plan(), stints[i + 1].from_min) : until_min);
    if (on > off) breaks.emplace_back(off, on);
  }
  return breaks;
}

void move_edge(Session& session, const TimeEdge& edge, double to_min, int gesture) {
  const Plan& plan = session.plan();
  to_min = std::clamp(to_min, edge.least_min, std::max(edge.least_min, edge.most_min));
  const pace::Stay stay = stay_of(plan);
  if (edge.stint >= 0) {
    std::vector<Stint> stints = session.outing().stints;
    to_min = shown_min(plan, to_min);
    stints[std::size_t(edge.stint)].from_min = to_min;
    session.set_stints(std::move(stints), edge.name + " " + clock_text(to_min), gesture);
  } else if (edge.id == "timeline:arrive") {
    session.set(L::clock_arrive_min, shown_min(plan, to_min), gesture);
  } else if (edge.id == "timeline:starts") {
    session.set(L::clock_set_up_min, to_min - stay.arrive_min, gesture);
  } else if (edge.id == "timeline:packs") {
    session.set(L::clock_pack_down_min, stay.leave_by_min - to_min, gesture);
  } else if (edge.id == "timeline:leave") {
    session.set(L::clock_leave_by_min, shown_min(plan, to_min), gesture);
  }
}

void Ui::time_line_edges(const TimeScale& scale, Box bar) {
  std::vector<TimeEdge> edges = time_edges(session);
  const Box row = take(kRowHigh);
  // where not all have room, the later stints are left to their own rows
  const auto room = std::size_t((row.w + space::kGap) / (space::kTarget + space::kGap));
  for (std::size_t i = edges.size(); i-- > 0 && edges.size() > room;)
    if (edges[i].stint >= 0) edges.erase(edges.begin() + std::ptrdiff_t(i));
  // still too many: set-up and pack-down have levers of their own
  for (const char* lesser : {"timeline:packs", "timeline:starts"})
    if (edges.size() > room) std::erase_if(edges, [&](const TimeEdge& edge) { return edge.id == lesser; });
  const double px_per_min = double(bar.w) / (scale.to_min - scale.from_min);
  const auto x_of = [&](double minute) { return bar.x + float((minute - scale.from_min) * px_per_min); };
  std::vector<float> wanted;
  for (const TimeEdge& edge : edges) wanted.push_back(x_of(edge.at_min));
  const std::vector<float> at = spread(wanted, row.x, row.right());
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const TimeEdge& edge = edges[i];
    const Point knob{at[i], row.y + 28};
    const Drag* drag = hand.drag(edge.id);
    const bool held = drag && !drag->ended;
    const float foot_x = std::clamp(wanted[i], bar.x, bar.right());
    const Point stem[] = {{foot_x, bar.bottom()}, {foot_x, row.y + 6}, {knob.x, row.y + 14}, {knob.x, knob.y}};
    pen.polyline(stem, theme.ink2, look::stroke::kLine);
    pen.disc(knob, kKnob + look::sign::kHalo, pen.ground());
    pen.disc(knob, held ? kKnob + 3 : kKnob, theme.ink);
    pen.disc(knob, held ? 4 : kKnob - 4, pen.ground());
    if (!held) pen.disc(knob, 3, theme.ink);
    mirror::Node record;
    record.role = Role::slider;
    record.id = edge.id;
    record.name = edge.name;
    record.value = edge.spoken;
    record.now = edge.at_min;
    record.least = edge.least_min;
    record.most = std::max(edge.least_min, edge.most_min);
    record.step = kStepMin;
    const Box hit{knob.x - space::kTarget / 2, row.y + 2, space::kTarget, space::kTarget};
    target(std::move(record), hit, space::kTarget / 2, Target::Kind::slide, hit);
    std::optional<double> to;
    int gesture = 0;
    if (drag) {
      // what moves is the edge, not the eyelet, which may stand beside it
      if (!std::exchange(hand.scratch.begun, true)) hand.scratch.grip = wanted[i] - drag->from_x;
      const double minute = scale.from_min + double(drag->x + hand.scratch.grip - bar.x) / px_per_min;
      to = std::round(minute / kStepMin) * kStepMin;
      gesture = drag->gesture;
    }
    if (const auto set = asked.set.find(edge.id); set != asked.set.end()) to = set->second;
    if (const auto step = asked.steps.find(edge.id); step != asked.steps.end()) {
      to = (std::floor(edge.at_min / kStepMin + (step->second > 0 ? 0 : 1 - 1e-9)) + step->second) * kStepMin;
      gesture = hand.gesture();
    }
    if (to && *to != edge.at_min) {
      move_edge(session, edge, *to, gesture);
      wake_at(now_s);
    }
  }
}

}  // namespace gs::parts
