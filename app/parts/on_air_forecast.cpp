// What is to come: contacts when packing starts against the target, its chance, and the charge at leave-by.
#include <algorithm>
#include <cmath>
#include <string_view>
#include <vector>

#include "app/parts/change.h"
#include "app/parts/on_air.h"

namespace gs::parts {

using look::Align;
using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;

namespace {

/// A round step that leaves at most four numbers on the axis.
int axis_step(double most) {
  for (const int step : {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000})
    if (most / step < 4) return step;
  return 10000;
}

/// Bar of what is there, box of what may be at the end, flag of the target.
void bar(Ui& ui, const Figure& expected, int count, int target) {
  look::Pen& pen = ui.pen;
  const look::Theme& theme = ui.theme;
  const Box box = ui.take(96);
  const double most = std::max({expected.high, double(target), double(count), 1.0}) * 1.2;
  const auto x_of = [&](double n) { return box.x + box.w * float(std::clamp(n / most, 0.0, 1.0)); };
  const float top = box.y + 34, high = 20, axis = box.y + 62;
  const Box done{box.x, top, x_of(count) - box.x, high};
  if (count > 0) {
    pen.fill(done, theme.solid);
    if (theme.on_solid != theme.paper) pen.outline(done, theme.ink, look::stroke::kLine);
    const look::Ground ground(pen, theme.solid);
    const std::string now = std::to_string(count) + " now";
    if (pen.width(now, Face::bold, type::kTick) < done.w - 12)
      pen.text(done.x + 8, look::Pen::centred(done.mid_y(), type::kTick), now, Face::bold, type::kTick,
               theme.on_solid);
  }
  const Box may{x_of(expected.low), top, std::max(3.0F, x_of(expected.high) - x_of(expected.low)), high};
  pen.fill(may, theme.water);
  pen.outline(may, theme.ink, look::stroke::kLine);
  const float mean_x = x_of(expected.value);
  pen.line({mean_x, top - 5}, {mean_x, top + high + 5}, theme.ink, look::stroke::kStrong + 1);
  const float flag_x = x_of(target);
  pen.pennant(flag_x, axis, axis - box.y - 4, theme.blue);
  const std::string flag = "target " + std::to_string(target);
  const float flag_w = pen.width(flag, Face::bold, type::kTick);
  const bool left_of = flag_x - flag_w - 8 >= box.x;
  pen.text(left_of ? flag_x - 8 : flag_x + 22, box.y + 16, flag, Face::bold, type::kTick, theme.blue,
           left_of ? Align::right : Align::left);
  pen.line({box.x, axis}, {box.right(), axis}, theme.ink, look::stroke::kLine);
  const int step = axis_step(most);
  for (int n = 0; n <= most; n += step) {
    const float at_x = x_of(n);
    pen.line({at_x, axis}, {at_x, axis + 8}, theme.ink, look::stroke::kLine);
    const std::string text = std::to_string(n);
    const float half = pen.width(text, Face::regular, type::kTick) / 2;
    if (n > 0 && x_of(n) - x_of(n - step) < 2 * half + 8 && n / step % 2 != 0) continue;
    pen.text(std::clamp(at_x, box.x + half, box.right() - half), axis + 25, text, Face::regular, type::kTick,
             theme.ink2, Align::centre);
  }
}

}  // namespace

void air_forecast(Ui& ui) {
  const Session& session = ui.session;
  const Outlook& out = session.outlook();
  const Figure& expected = out[R::pace_expected_contacts];
  const Figure& chance = out[R::pace_chance_of_target_pct];
  const Figure& pack_by = out[R::clock_pack_by_min];
  const int target = int(std::lround(session.plan()[L::pace_target]));
  const int count = contacts_in(session.outing().happened);
  if (expected.state == State::unknown || chance.state == State::unknown) {
    ui.paragraph("What is to come is not known: " +
                     reason(session.plan(), R::pace_expected_contacts, expected, session.style()) + ".",
                 "air:forecast", ui.theme.ink2);
    return;
  }
  look::Pen& pen = ui.pen;
  const std::string when = "By " + wall_clock(pack_by.value) + ", when packing starts";
  const std::string of = "chance of " + std::to_string(target);
  const bool wide = ui.w >= 560;
  const bool stacked = ui.w < 320;  // the chance below what is expected
  const Box box = ui.take(stacked ? 156 : 78);
  pen.text(box.x, box.y + 20, wide ? when : "when packing starts", Face::bold, type::kLabel, ui.theme.ink);
  const float chance_y = stacked ? box.y + 78 : box.y;
  pen.text(stacked ? box.x : box.right(), chance_y + 20, of, Face::bold, type::kLabel, ui.theme.ink,
           stacked ? Align::left : Align::right);
  const float base = box.y + 60;
  const std::string mean = figure_text(R::pace_expected_contacts, expected, session.style());
  const std::string low = say_quantity(expected.low, Unit::none, 0),
                    high = say_quantity(expected.high, Unit::none, 0);
  const float mean_w = pen.figure(box.x, base, mean, wide ? type::kHeadline : type::kFigure, ui.theme.ink);
  const std::string range = low + " to " + high;
  const std::string range_text = wide ? "expected, " + range + " likely" : range;
  const bool range_fits = pen.width(range_text, Face::regular, type::kBody) <= ui.w - mean_w - 14;
  const float range_size = range_fits ? type::kBody : type::kTick;
  const std::vector<std::string_view> range_lines =
      pen.lines(range_text, ui.w - mean_w - 14, Face::regular, range_size);
  for (std::size_t k = 0; k < range_lines.size(); ++k)
    pen.text(box.x + mean_w + 14, base - 17 * float(range_lines.size() - 1 - k), range_lines[k], Face::regular,
             range_size, ui.theme.ink);
  const std::string chance_text = figure_text(R::pace_chance_of_target_pct, chance, session.style());
  const ImU32 colour = chance.state == State::holds ? ui.theme.ink : colour_of(ui.theme, chance.state);
  const float chance_size = wide ? type::kHeadline : type::kFigure, chance_base = chance_y + 60;
  const float chance_w = pen.figure(stacked ? box.x : box.right(), chance_base, chance_text, chance_size, colour,
                                    stacked ? Align::left : Align::right);
  float sign_x = stacked ? box.x + chance_w + 22 : box.right() - chance_w - 22;
  if (wide) {
    const std::string_view word = state_word(chance.state);
    sign_x -= pen.width(word, Face::bold, type::kBody) + 8;
    pen.text(sign_x + 18, base - 2, word, Face::bold, type::kBody, colour_of(ui.theme, chance.state));
  }
  if (chance.state != State::none) pen.sign(sign_of(chance.state), {sign_x, chance_base - 9}, look::sign::kStrip);
  mirror::Node& node =
      ui.node(Role::status, "air:forecast",
              when + " " + mean + " contacts expected, " + range + " likely; " + of + " " +
                  figure_spoken(R::pace_chance_of_target_pct, chance, session.plan(), session.style()),
              box);
  node.live = false;  // it moves with every second; the count is what is spoken
  bar(ui, expected, count, target);
}

void air_battery(Ui& ui) {
  const Session& session = ui.session;
  const Figure& left = session.outlook()[R::power_left_at_leave_by_pct];
  const Plan& plan = session.plan();
  look::Pen& pen = ui.pen;
  const std::string label = "Battery at leave-by";
  const std::string reserve = "reserve " + value_text(plan, L::battery_reserve_pct, session.style());
  const std::string left_text = figure_text(R::power_left_at_leave_by_pct, left, session.style());
  const float left_w = left_text.empty() ? 40 : pen.figure_width(left_text, type::kValue);
  const std::vector<std::string_view> labels = pen.lines(label, ui.w - left_w - 12, Face::bold, type::kBody);
  const float rest = type::line_height(type::kBody) * float(labels.size() - 1);
  const Box box = ui.take(64 + rest);
  float base = box.y + 30 - type::line_height(type::kBody), label_w = 0;
  for (const std::string_view line : labels) {
    base += type::line_height(type::kBody);
    label_w = std::max(label_w, pen.text(box.x, base, line, Face::bold, type::kBody, ui.theme.ink));
  }
  std::string spoken;
  if (left.state == State::unknown) {
    pen.line({box.right() - 40, base - 6}, {box.right(), base - 6}, ui.theme.ink2, look::stroke::kStrong);
    spoken = "not known: " + reason(plan, R::power_left_at_leave_by_pct, left, session.style());
  } else {
    const float figure_w = pen.figure(box.right(), base + 2, left_text, type::kValue, ui.theme.ink, Align::right);
    const Box gauge{box.x + label_w + 24, box.y + 14, box.w - label_w - figure_w - 48, 22};
    if (gauge.w > 120) {
      const auto part = [&](double pct) { return gauge.w * float(std::clamp(pct / 100, 0.0, 1.0)); };
      const float kept = part(plan[L::battery_reserve_pct]), there = part(left.value);
      pen.fill(gauge, ui.theme.fold);
      if (there > kept) pen.fill({gauge.x + kept, gauge.y, there - kept, gauge.h}, ui.theme.ink);
      pen.hatch({gauge.x, gauge.y, kept, gauge.h}, ui.theme.contour);
      pen.outline(gauge, ui.theme.ink, look::stroke::kOutline);
      pen.text(gauge.x, gauge.bottom() + 20, reserve, Face::italic, type::kTick, ui.theme.contour);
    } else {
      pen.text(box.x, base + 24, reserve, Face::regular, type::kLabel, ui.theme.ink2);
    }
    spoken = figure_spoken(R::power_left_at_leave_by_pct, left, plan, session.style()) + ", " + reserve;
  }
  ui.node(Role::text, "air:battery", label + ", " + spoken, box);
}

}  // namespace gs::parts
