// How many there are: in figures, as tally strokes with a dot for each one still wanted, and when they came.
#include <algorithm>
#include <cmath>

#include "app/parts/change.h"
#include "app/parts/on_air.h"
#include "core/pace/utc.h"

namespace gs::parts {

using look::Align;
using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

int target_of(const Session& session) { return int(std::lround(session.plan()[L::pace_target])); }

/// Strokes in fives from the left, as high as one row of them may be, else in rows; of more than fit the last rows.
void strokes(Ui& ui, Box box, int count, int wanted) {
  constexpr float kLeastHigh = 36, kBetween = 12;
  if (look::Pen::tally_width(kLeastHigh, 5, 0) > box.w) return;
  float high = box.h;
  while (high > kLeastHigh && look::Pen::tally_width(high, count, wanted) > box.w) high -= 2;
  int a_row = 5;
  while (look::Pen::tally_width(high, a_row + 5, 0) <= box.w) a_row += 5;
  const int rows = std::max(1, int((box.h + kBetween) / (high + kBetween)));
  if (count > rows * a_row) count -= (count - rows * a_row + a_row - 1) / a_row * a_row;
  for (int row = 0; row < rows && (count > 0 || wanted > 0); ++row) {
    const int here = std::min(count, a_row);
    int dots = count > a_row ? 0 : wanted;
    while (dots > 0 && look::Pen::tally_width(high, here, dots) > box.w) --dots;
    ui.pen.tally(box.x, box.y + float(row) * (high + kBetween), high, here, dots, ui.theme.ink, ui.theme.ink2);
    count -= here;
    wanted -= dots;
  }
}

struct PaceWords {
  std::string figure, range;  // "5.8", "an hour, 3.6 to 7.9"
};
PaceWords pace_words(const Session& session) {
  const Figure& pace = session.outlook()[R::pace_now_per_hour];
  if (pace.state == State::unknown) return {};
  const auto say = [&](double value) { return say_quantity(value, Unit::none, 1, session.style()); };
  return {say(pace.value), "an hour, " + say(pace.low) + " to " + say(pace.high)};
}

/// One pace with its range. Returns the width.
float draw_pace(Ui& ui, float x, float base, bool large) {
  PaceWords words = pace_words(ui.session);
  if (words.figure.empty()) return 0;
  const float size = large ? type::kFigure : type::kLabel, small = large ? type::kBody : type::kTick;
  const float between = large ? 12 : 6;
  const float room = ui.right() - x - between - ui.pen.width(words.figure, Face::bold, size);
  if (ui.pen.width(words.range, Face::regular, small) > room) words.range = "an hour";  // the mirror has it all
  const float width =
      ui.pen.width(words.figure, Face::bold, size) + between + ui.pen.width(words.range, Face::regular, small);
  const float figure_w = ui.pen.text(x, base, words.figure, Face::bold, size, ui.theme.ink);
  ui.pen.text(x + figure_w + between, base, words.range, Face::regular, small, ui.theme.ink);
  return width;
}

/// "last one at 18:09, 3 min ago", or "".
std::string last_words(const Session& session) {
  const auto& tally = session.outing().happened.tally;
  if (tally.empty()) return {};
  const Tap& tap = tally.back();
  std::string last =
      tap.forgotten ? std::to_string(tap.count) + " forgotten" : "last one at " + clock_at(session, tap.at_utc_s);
  const double waited_s = session.now().utc_s - tap.at_utc_s;
  if (pace::is_instant(session.now().utc_s) && waited_s >= 0)
    last += ", " + say_quantity(std::floor(waited_s / 60), Unit::minute, 0, session.style()) + " ago";
  return last;
}

}  // namespace

void air_count(Ui& ui) {
  const Session& session = ui.session;
  const int count = contacts_in(session.outing().happened), target = target_of(session);
  const bool narrow = ui.w < 560;
  const bool stacked = ui.w < 320;  // what stands beside the count stands under it
  const Box box = ui.take(stacked ? 232 : narrow ? 118 : 140);
  const std::string figures = std::to_string(count), last = last_words(session);
  float size = ui.pen.digits_size(narrow ? 132 : type::kCount);
  size =
      std::min(size, size * box.w * (stacked ? 0.9F : 0.32F) / std::max(1.0F, ui.pen.digits_width(figures, size)));
  const float base = box.y + (narrow ? 108 : 124);
  const float beside = box.x + ui.pen.digits(box.x, base, figures, size, ui.theme.ink) + 24;
  const std::string of = "of " + std::to_string(target) + (narrow ? "" : " contacts");
  const int wanted = std::max(0, target - count);
  if (stacked) {
    const std::string since =
        last.find(", ") == std::string::npos ? "" : "last " + last.substr(last.find(", ") + 2);
    ui.pen.text(box.x, base + 32, of, Face::bold, type::kValue, ui.theme.ink);
    draw_pace(ui, box.x, base + 58, false);
    ui.pen.text(box.x, base + 80, since, Face::regular, type::kTick, ui.theme.ink2);
    strokes(ui, {box.x, base + 88, box.w, 36}, count, wanted);
  } else if (narrow) {
    strokes(ui, {beside, box.y + 8, box.right() - beside, 40}, count, wanted);
    const std::string since =
        last.find(", ") == std::string::npos ? "" : "last " + last.substr(last.find(", ") + 2);
    ui.pen.text(beside, base - 2, of, Face::bold, type::kValue, ui.theme.ink);
    draw_pace(ui, beside, base - 36, false);
    ui.pen.text(box.right(), base - 2, since, Face::regular, type::kTick, ui.theme.ink2, Align::right);
  } else {
    ui.pen.text(beside, base - 80, last, Face::regular, type::kLabel, ui.theme.ink2);
    ui.pen.text(beside, base - 46, of, Face::bold, type::kValue, ui.theme.ink);
    const float pace_w = draw_pace(ui, beside, base, true);
    const float left = std::max(beside + pace_w + 32, box.x + box.w * 0.55F);
    strokes(ui, {left, box.y + 16, box.right() - left, 92}, count, wanted);
  }
  const PaceWords words = pace_words(session);
  mirror::Node& node =
      ui.node(Role::status, "air:count",
              figures + " of " + std::to_string(target) + " contacts" + (last.empty() ? "" : ", " + last) +
                  (words.figure.empty() ? "" : "; pace " + words.figure + " " + words.range),
              box);
  node.live = true;
}

void air_strokes(Ui& ui) {
  const Session& session = ui.session;
  const Happened& happened = session.outing().happened;
  const double pack_by_min = day_of(session.plan(), session.now()).pack_by_min;
  if (happened.on_air.empty()) return;
  const auto local = [&](double utc_s) { return local_min_of(session.plan(), session.now(), utc_s); };
  const double from = local(happened.on_air.front().from_utc_s), now = local(session.now().utc_s);
  double to = std::isfinite(now) ? std::max(now, from + 5) : from + 5;
  if (std::isfinite(pack_by_min)) to = std::max(to, pack_by_min);
  if (!std::isfinite(from) || !(to > from)) return;
  const Box box = ui.take(84);
  const float top = box.y + 14, foot = box.y + 48;
  const auto x_of = [&](double minute) {
    return box.x + box.w * float(std::clamp((minute - from) / (to - from), 0.0, 1.0));
  };
  std::string spoken;
  if (std::isfinite(now) && to > now) {
    const Box left{x_of(now), top, box.right() - x_of(now), foot - top};
    ui.pen.fill(left, ui.theme.fold);
    const look::Ground ground(ui.pen, ui.theme.fold);
    const std::string text = say_quantity(std::floor(to - now), Unit::minute, 0, session.style()) + " left";
    if (ui.pen.width(text, Face::bold, type::kLabel) < left.w - 16)
      ui.pen.text(left.mid_x(), look::Pen::centred(left.mid_y(), type::kLabel), text, Face::bold, type::kLabel,
                  ui.theme.ink, Align::centre);
    spoken = text;
  }
  ui.pen.line({box.x, foot}, {box.right(), foot}, ui.theme.ink, look::stroke::kLine);
  for (const Tap& tap : happened.tally) {
    const float at_x = x_of(local(tap.at_utc_s));
    const look::Point stroke[] = {{at_x, top + 6}, {at_x, foot - 3}};
    if (tap.forgotten) {
      ui.pen.dashed(stroke, look::stroke::kDash, ui.theme.ink, look::stroke::kStrong);
    } else {
      ui.pen.polyline(stroke, ui.theme.ink, 4);
    }
  }
  if (std::isfinite(now)) ui.pen.now_mark(x_of(now), top - 6, foot, ui.theme.ink);
  for (const auto& [minute, align] : {std::pair{from, Align::left}, {to, Align::right}}) {
    const float at_x = align == Align::left ? box.x : box.right();
    ui.pen.line({at_x, foot}, {at_x, foot + 8}, ui.theme.ink, look::stroke::kLine);
    ui.pen.text(at_x, foot + 26, wall_clock(std::floor(shown_min(session.plan(), minute))), Face::regular,
                type::kTick, ui.theme.ink2, align);
  }
  constexpr std::size_t kSpokenMost = 12;
  const auto& tally = happened.tally;
  std::string times;
  for (std::size_t i = tally.size() > kSpokenMost ? tally.size() - kSpokenMost : 0; i < tally.size(); ++i)
    times += (times.empty() ? "" : ", ") + clock_at(session, tally[i].at_utc_s);
  ui.node(Role::image, "air:strokes", "When they came", box).value =
      (times.empty() ? "none yet" : (tally.size() > kSpokenMost ? "the last at " : "at ") + times) +
      (spoken.empty() ? "" : "; " + spoken);
}

}  // namespace gs::parts
