// The outing along the clock: set-up and pack-down hatched, on the air solid, how long the battery lasts under it.
#include "app/parts/time_line.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

#include "app/parts/change.h"
#include "app/parts/ui.h"
#include "core/outing/outing_day.h"
#include "core/pace/clock.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Point;
using mirror::Role;
namespace type = look::type;

namespace {

/// Where the UTC day turns in the drawing; NaN where it does not, or the offset is not known.
double turn_of_day(const Plan& plan, double from, double to) {
  constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
  if (!plan.has(L::clock_utc_offset_min)) return kNaN;
  return pace::utc_midnight_between(from, to, plan[L::clock_utc_offset_min]).value_or(kNaN);
}

/// The middle of a label of half a width that stands under `at`, or so near beside it that it still is under it:
/// free of the stems, right of `least`, left of `most`. Nothing where there is no such place.
std::optional<float> beside_stems(float at, float half, float least, float most, const std::vector<float>& stems) {
  constexpr float kAir = 4;
  std::vector<float> places = {at};
  for (const float stem : stems) {
    places.push_back(stem - half - kAir);
    places.push_back(stem + half + kAir);
  }
  places.push_back(least + half);
  places.push_back(most - half);
  std::optional<float> best;
  for (const float place : places) {
    bool free = place - half >= least - 0.01F && place + half <= most + 0.01F && std::abs(place - at) <= half;
    for (const float stem : stems) free = free && std::abs(stem - place) >= half + kAir - 0.01F;
    if (free && (!best || std::abs(place - at) < std::abs(*best - at))) best = place;
  }
  return best;
}

}  // namespace

/// From a quarter of an hour before arrival to three quarters after leaving; held while an edge is dragged.
TimeScale Ui::time_scale() {
  const Plan& plan = session.plan();
  constexpr double kBefore = 15, kAfter = 45;
  const pace::Stay stay = stay_of(plan);
  TimeScale scale{stay.arrive_min - kBefore, stay.leave_by_min + kAfter};
  for (const TimeEdge& edge : time_edges(session)) {
    if (!hand.drag(edge.id)) continue;
    Scratch& press = hand.scratch;
    if (press.to <= press.from) press.from = scale.from_min, press.to = scale.to_min;
    scale = {press.from, press.to};
  }
  return scale;
}

void Ui::time_line() {
  const Plan& plan = session.plan();
  const Outlook& out = session.outlook();
  const Figure& on_air = out[R::clock_on_air_min];
  if (on_air.state == State::unknown) {
    const std::string why_not = "Not known: " + reason(plan, R::clock_on_air_min, on_air, session.style());
    const float lines_h =
        float(pen.lines(why_not, w - 28, Face::regular, type::kLabel).size()) * type::line_height(type::kLabel);
    const Box box = take(55 + lines_h);
    pen.dashed_box({box.x, box.y + 12, box.w, 19 + lines_h}, look::stroke::kDash, theme.ink2, look::stroke::kLine);
    pen.paragraph(box.x + 14, box.y + 38, box.w - 28, why_not, Face::regular, type::kLabel, theme.ink2);
    node(Role::image, "timeline", "The outing along the clock", box).value = why_not;
    return;
  }
  // drawn as time runs; only what is said of it goes by what the clock shows then
  const OutingDay day = day_of(plan, session.now());
  const double arrive = stay_of(plan).arrive_min, leave = stay_of(plan).leave_by_min;
  const double pack_by = day.pack_by_min, starts = day.starts_min;
  const auto clock = [&](double minute) { return wall_clock(shown_min(plan, minute)); };
  const auto said = [&](double minute) { return say_result(shown_min(plan, minute), Unit::clock_minute, 0); };
  const double ends = starts + on_air.value;  // the battery may end it before packing starts
  const Figure& lasts = out[R::power_lasts_until_min];
  const bool battery_known = lasts.state != State::unknown;
  const TimeScale scale = time_scale();
  const std::vector<TimeEdge> edges = time_edges(session);
  const double from = scale.from_min, to = scale.to_min;
  const std::string arrive_text = clock(arrive) + " arrive", leave_text = clock(leave) + " leave by";
  // arrival and leaving over each other where both are too wide for one line
  const float arrive_width = pen.width(arrive_text, Face::bold, type::kLabel);
  const bool stacked = arrive_width + 16 + pen.width(leave_text, Face::bold, type::kLabel) > w;
  if (stacked) gap(22);
  const double midnight = turn_of_day(plan, from, to);
  const std::string midnight_text = "UTC midnight";
  const float midnight_half = pen.width(midnight_text, Face::bold, type::kTick) / 2;
  // behind the time to leave where there is room, else in a row of its own above: below, the stems would cross it
  const auto share_of = [&](double minute) { return float(std::clamp((minute - from) / (to - from), 0.0, 1.0)); };
  const float leave_right = std::max(w * share_of(leave), w * share_of(arrive) + arrive_width + 16 +
                                                              pen.width(leave_text, Face::bold, type::kLabel));
  const float midnight_mid =
      std::clamp(w * share_of(std::isnan(midnight) ? from : midnight), midnight_half, w - midnight_half);
  const bool midnight_above = !stacked && midnight_mid - midnight_half > leave_right + 8;
  if (!std::isnan(midnight) && !midnight_above) gap(22);
  const Box box = take(92);
  const auto x_of = [&](double minute) { return box.x + box.w * share_of(minute); };
  const float top = box.y + 30, height = 32, foot = top + height;
  const auto hatched = [&](double a, double b) {
    const Box part{x_of(a), top, x_of(b) - x_of(a), height};
    pen.fill(part, theme.soil);
    pen.hatch(part, theme.contour);
    pen.outline(part, theme.ink, look::stroke::kHair);
  };
  hatched(arrive, starts);
  hatched(pack_by, leave);
  const Box air{x_of(starts), top, x_of(ends) - x_of(starts), height};
  if (ends < pack_by - 0.5)
    pen.dashed_box({x_of(ends), top, x_of(pack_by) - x_of(ends), height}, look::stroke::kDash, theme.ink2,
                   look::stroke::kLine);
  pen.fill(air, theme.solid);
  pen.outline(air, theme.ink, look::stroke::kLine);
  for (const auto& [off, on] : breaks_of(session, starts, ends)) {
    const Box gap_box{x_of(off), top, x_of(on) - x_of(off), height};
    pen.fill(gap_box, theme.paper);
    pen.outline(gap_box, theme.ink, look::stroke::kHair);
  }
  for (const Stint& stint : session.outing().stints)
    if (const double at = running_min(plan, stint.from_min); stint.on_air && at > starts && at < ends)
      pen.line({x_of(at), top + 2}, {x_of(at), foot - 2}, theme.on_solid, look::stroke::kRule);
  const std::string minutes = say_quantity(on_air.value, Unit::minute, 0, session.style());
  {
    const look::Ground ground(pen, theme.solid);
    const std::string long_text = "on the air " + minutes;
    const bool fits = pen.width(long_text, Face::bold, type::kLabel) < air.w - 8;
    const std::string& text = fits ? long_text : minutes;
    if (session.outing().stints.empty() && pen.width(text, Face::bold, type::kLabel) < air.w - 4)
      pen.text(air.mid_x(), look::Pen::centred(air.mid_y(), type::kLabel), text, Face::bold, type::kLabel,
               theme.on_solid, look::Align::centre);
  }
  pen.text(x_of(arrive), stacked ? top - 32 : top - 10, arrive_text, Face::bold, type::kLabel, theme.ink);
  pen.text(std::min(box.right(), box.x + leave_right), top - 10, leave_text, Face::bold, type::kLabel, theme.ink,
           look::Align::right);
  pen.line({box.x, foot}, {box.right(), foot}, theme.ink, look::stroke::kLine);
  // whole hours, as many as have room
  std::vector<float> stems;
  for (const TimeEdge& edge : edges) stems.push_back(x_of(edge.at_min));
  const double hours = (to - from) / 60;
  const int step = box.w / float(hours) > 64 ? 1 : 2;
  float free_from = box.x;
  for (int hour = int(std::ceil(from / 60)); hour * 60 < to; ++hour) {
    const float at_x = x_of(hour * 60);
    pen.line({at_x, foot}, {at_x, foot + 8}, theme.ink, look::stroke::kLine);
    if (hour % step != 0) continue;
    const std::string text = clock(hour * 60);
    const float half = pen.width(text, Face::regular, type::kTick) / 2;
    if (const auto mid = beside_stems(at_x, half, free_from, box.right(), stems)) {
      pen.text(*mid, foot + 25, text, Face::regular, type::kTick, theme.ink2, look::Align::centre);
      free_from = *mid + half + 6;
    }
  }
  std::string sentence = "Arrive " + said(arrive) + ", on the air from " + said(starts) + " for " + minutes +
                         ", start packing at " + said(pack_by) + ", leave by " + said(leave);
  if (!std::isnan(midnight)) {
    const float at_x = x_of(midnight);
    const Point mark[] = {{at_x, top - 4}, {at_x, foot}};
    pen.dashed(mark, look::stroke::kDash, theme.blue, look::stroke::kLine);
    sentence += ", UTC midnight at " + said(midnight);
    pen.text(box.x + midnight_mid,
             top - 10 -
                 (midnight_above ? 0.0F
                  : stacked      ? 44.0F
                                 : 22.0F),
             midnight_text, Face::bold, type::kTick, theme.blue, look::Align::centre);
  }
  if (battery_known)
    sentence += ", battery until " + say_result(lasts.value, Unit::clock_minute, 0) + ", " +
                std::string(state_word(out[R::power_spare_min].state));
  node(Role::image, "timeline", "The outing along the clock", box).value = sentence;
  if (const double now = minute_now(plan, session.now()); now >= from && now <= to) {
    pen.now_mark(x_of(now), top - 8, foot, theme.ink);
    wake_at(now_s + 60);  // it moves on
  }
  time_line_edges(scale, {box.x, top, box.w, height});
  if (battery_known) {
    const float line_y = take(36).y + 20;
    const State state = out[R::power_spare_min].state;
    const ImU32 colour = colour_of(theme, state);
    const std::string text = "battery to " + say_result(lasts.value, Unit::clock_minute, 0);
    const float end_x = x_of(pack_by + out[R::power_spare_min].value),
                text_w = pen.width(text, Face::bold, type::kLabel);
    pen.line({x_of(starts), line_y}, {end_x, line_y}, colour, look::stroke::kChainStrip);
    pen.sign(sign_of(state), {std::min(end_x, box.right() - 10), line_y}, look::sign::kList);
    const bool right_of = end_x + 20 + text_w <= box.right();
    pen.text(right_of ? end_x + 18 : std::max(box.x + text_w, std::min(end_x, box.right()) - 18),
             right_of ? line_y + 6 : line_y - 12, text, Face::bold, type::kLabel, colour,
             right_of ? look::Align::left : look::Align::right);
  }
}

}  // namespace gs::parts
