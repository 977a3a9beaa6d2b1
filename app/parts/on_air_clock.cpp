// The one place with seconds: UTC, the turn of the UTC day, and how long until packing starts.
#include <algorithm>
#include <cmath>

#include "app/parts/on_air.h"
#include "core/pace/utc.h"

namespace gs::parts {

using look::Align;
using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

constexpr double kDayS = 86400;

struct Told {
  std::string over, figure, under;
};

Told utc_now(const Session& session) {
  const double utc_s = session.now().utc_s;
  if (!pace::is_instant(utc_s)) return {"UTC", "", "no clock here"};
  return {"UTC", pace::clock_text(utc_s, true), clock_at(session, utc_s) + " local"};
}

Told to_midnight(const Session& session) {
  const double utc_s = session.now().utc_s;
  if (!pace::is_instant(utc_s)) return {"to UTC midnight", "", ""};
  const double midnight_s = (pace::utc_day(utc_s) + 1) * kDayS;
  return {"to UTC midnight", say_quantity(std::ceil((midnight_s - utc_s) / 60), Unit::minute, 0, session.style()),
          "at " + clock_at(session, midnight_s)};
}

Told to_packing(const Session& session) {
  const Live now = live(session);
  if (!std::isfinite(now.pack_in_min)) return {"start packing", "", "not known"};
  const std::string under = "at " + wall_clock(now.pack_by_min) + ", leave by " + wall_clock(now.leave_by_min);
  const double left = std::floor(now.pack_in_min);
  if (left > 0) return {"start packing in", say_quantity(left, Unit::minute, 0, session.style()), under};
  return {"start packing", wall_clock(now.pack_by_min), "it is time: leave by " + wall_clock(now.leave_by_min)};
}

void column(Ui& ui, const char* id, const Told& told, float x, Align align, float size, Box box, ImU32 colour) {
  look::Pen& pen = ui.pen;
  pen.text(x, box.y + 18, told.over, Face::regular, type::kLabel, ui.theme.ink2, align);
  const float base = box.y + 24 + size * 0.9F;
  if (told.figure.empty()) {
    const float left = align == Align::left ? x : align == Align::right ? x - 48 : x - 24;
    pen.line({left, base - 12}, {left + 48, base - 12}, ui.theme.ink2, look::stroke::kStrong);
  } else {
    pen.figure(x, base, told.figure, size, colour, align);
  }
  pen.text(x, base + 26, told.under, Face::regular, type::kLabel, ui.theme.ink2, align);
  ui.node(Role::text, id, told.over + " " + (told.figure.empty() ? "not known" : told.figure) + ", " + told.under,
          box);
}

}  // namespace

void air_clock(Ui& ui) {
  const bool narrow = ui.w < 560;
  const float size = narrow ? type::kFigure : type::kHeadline;
  const Told utc = utc_now(ui.session), midnight = to_midnight(ui.session), packing = to_packing(ui.session);
  const auto widest = [&](const Told& told) {
    return std::max({ui.pen.figure_width(told.figure, size), ui.pen.width(told.over, Face::regular, type::kLabel),
                     ui.pen.width(told.under, Face::regular, type::kLabel)});
  };
  const bool stacked = narrow && widest(utc) + widest(packing) + 16 > ui.w;
  const float high = narrow ? 92 : 100;
  const Box box = ui.take(stacked ? 2 * high : high);
  const bool doubtful = live(ui.session).clock_doubtful;
  const float half = box.w / 2, third = box.w / 3;
  const ImU32 utc_colour = doubtful ? ui.theme.ink2 : ui.theme.blue;
  if (narrow) {
    Told shorter = utc;
    const std::string in = "UTC midnight in " + midnight.figure;
    if (!midnight.figure.empty() && ui.pen.width(in, Face::regular, type::kLabel) < (stacked ? box.w : half))
      shorter.under = in;
    column(ui, "air:utc", shorter, box.x, Align::left, size, {box.x, box.y, stacked ? box.w : half, high},
           utc_colour);
  } else {
    column(ui, "air:utc", utc, box.x, Align::left, size, {box.x, box.y, third, box.h}, utc_colour);
    column(ui, "air:midnight", midnight, box.mid_x() + 12, Align::centre, size,
           {box.x + third, box.y, third, box.h}, ui.theme.ink);
  }
  if (doubtful) ui.pen.dashed_ring({box.x + 48, box.y + 12}, 8, ui.theme.ink2, look::stroke::kRule);
  if (stacked) {
    Told shorter = packing;
    if (widest(packing) > box.w) shorter.under = shorter.under.substr(0, shorter.under.find(','));
    column(ui, "air:packing", shorter, box.x, Align::left, size, {box.x, box.y + high, box.w, high}, ui.theme.ink);
  } else {
    column(ui, "air:packing", packing, box.right(), Align::right, size,
           {narrow ? box.mid_x() : box.x + 2 * third, box.y, narrow ? half : third, box.h}, ui.theme.ink);
  }
}

}  // namespace gs::parts
