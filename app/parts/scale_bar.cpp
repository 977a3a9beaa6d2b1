#include "app/parts/scale_bar.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "app/parts/scale.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;
namespace metric = look::slider;

namespace {

constexpr double kRepeatAfterS = 0.4, kRepeatS = 1.0 / 6, kFastAfterS = 1.4, kFastS = 1.0 / 20;
constexpr float kFineDistance = 60;

/// A round stepper under a finger: 1 for each tap, then repeats while it is held.
int steps_of(Ui& ui, const std::string& id) {
  if (ui.hand.tapped(id)) return 1;
  if (!ui.hand.down(id)) return 0;
  Scratch& press = ui.hand.scratch;
  if (!std::exchange(press.begun, true)) press.repeat_until_s = ui.hand.down_since() + kRepeatAfterS;
  int steps = 0;
  while (ui.now_s >= press.repeat_until_s) {
    ++steps;
    press.repeat_until_s += press.repeat_until_s - ui.hand.down_since() > kFastAfterS ? kFastS : kRepeatS;
  }
  if (steps > 0) ui.hand.use_up();
  ui.wake_at(press.repeat_until_s);
  return steps;
}

int stepper(Ui& ui, Box box, const std::string& id, const std::string& spoken, Icon icon, bool enabled) {
  const bool pressed = enabled && ui.hand.down(id);
  const look::Point centre{box.mid_x(), box.mid_y()};
  const ImU32 ink = enabled ? ui.theme.ink : ui.theme.ink2;
  if (pressed) ui.pen.disc(centre, box.w / 2, ui.theme.solid);
  ui.pen.ring(centre, box.w / 2 - 1, enabled ? ui.theme.ink : ui.theme.rule, look::stroke::kRule);
  ui.pen.icon(icon, box.mid_x() - 12, box.mid_y() - 12, 24, pressed ? ui.theme.on_solid : ink);
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = spoken;
  record.disabled = !enabled;
  ui.target(std::move(record), box, box.w / 2);
  return enabled ? steps_of(ui, id) : 0;
}

/// Label beside the steppers, or above them where there is too little width for both.
struct Head {
  std::vector<std::string_view> label;
  float figure_w, hands_w, label_h;
  bool own_line;
};

Head head_of(const Ui& ui, const ScaleBar& bar) {
  const std::string_view name = bar.row.name;
  Head head{};
  head.figure_w =
      bar.known ? ui.pen.figure_width(bar.text, type::kValue) : ui.pen.width(bar.text, Face::bold, type::kBody);
  head.hands_w = 2 * metric::kStepper + std::max(96.0F, head.figure_w + 16) + 2 * space::kGap;
  const float beside = ui.w - head.hands_w - 12;
  head.own_line = ui.w < head.hands_w + 60 || ui.pen.lines(name, beside, Face::bold, type::kBody).size() > 2;
  head.label = ui.pen.lines(name, head.own_line ? ui.w : beside, Face::bold, type::kBody);
  head.label_h = float(head.label.size()) * type::line_height(type::kBody) +
                 (bar.mark_text.empty() ? 0 : type::line_height(type::kLabel));
  return head;
}

void draw_label(Ui& ui, const ScaleBar& bar, const Head& head, float base) {
  for (const std::string_view part : head.label) {
    ui.pen.text(ui.x, base, part, Face::bold, type::kBody, ui.theme.ink);
    base += type::line_height(type::kBody);
  }
  if (!bar.mark_text.empty()) ui.pen.text(ui.x, base, bar.mark_text, Face::regular, type::kLabel, bar.mark_colour);
}

/// The value with its dotted underline: tap to type.
bool figure_tapped(Ui& ui, const ScaleBar& bar, const Box& figure, float figure_w, float mid_y) {
  const std::string id = std::string(bar.row.key) + ":type";
  const look::Ground ground(ui.pen, ui.hand.down(id) ? ui.theme.fold : ui.theme.paper);
  if (ui.hand.down(id)) ui.pen.fill(figure, ui.theme.fold, 10);
  const float base = look::Pen::centred(mid_y, bar.known ? type::kValue : type::kBody);
  if (bar.known) {
    ui.pen.figure(figure.mid_x(), base, bar.text, type::kValue, ui.theme.ink, look::Align::centre);
  } else {
    ui.pen.text(figure.mid_x(), base, bar.text, Face::bold, type::kBody, ui.theme.ink2, look::Align::centre);
  }
  const look::Point under[] = {{figure.mid_x() - figure_w / 2, base + 8},
                               {figure.mid_x() + figure_w / 2, base + 8}};
  ui.pen.dashed(under, look::stroke::kNeed, ui.theme.ink, look::stroke::kRule);
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = "Type " + std::string(bar.row.name) + ", " + bar.spoken;
  return ui.target(std::move(record), figure, 10);
}

}  // namespace

float scale_bar_height(const Ui& ui, const ScaleBar& bar) {
  const Head head = head_of(ui, bar);
  const float top = head.own_line ? head.label_h + 4 + metric::kHead : std::max(metric::kHead, head.label_h + 8);
  return top + metric::kHit + type::line_height(type::kTick) + 2;
}

ScaleMove scale_bar(Ui& ui, const ScaleBar& bar) {
  const Lever& row = bar.row;
  const std::string key(row.key), name(row.name);
  const Head laid = head_of(ui, bar);
  if (laid.own_line) {
    draw_label(ui, bar, laid, ui.y + type::kBody);
    ui.gap(laid.label_h + 4);
  }
  const Box head = ui.take(laid.own_line ? metric::kHead : std::max(metric::kHead, laid.label_h + 8));
  if (!laid.own_line)
    draw_label(ui, bar, laid,
               look::Pen::centred(head.mid_y(), type::kBody) - (laid.label_h - type::line_height(type::kBody)) / 2);
  const float hands_x = laid.own_line ? head.x : head.right() - laid.hands_w;
  const Box less{hands_x, head.mid_y() - metric::kStepper / 2, metric::kStepper, metric::kStepper};
  const Box more{head.right() - metric::kStepper, less.y, metric::kStepper, metric::kStepper};
  const Box figure{less.right() + space::kGap, head.y + 4, more.x - less.right() - 2 * space::kGap, head.h - 8};

  // the record of the slider stands before its steppers, as it is read
  const Box hit = ui.take(metric::kHit);
  const Box track{hit.x + metric::kThumb, hit.mid_y() - metric::kBar / 2, hit.w - 2 * metric::kThumb, metric::kBar};
  const auto x_of = [&](double v) {
    return track.x + track.w * float(place_of(row.scale, row.least, bar.most, v));
  };
  const Box thumb{x_of(bar.value) - metric::kThumbDragged, hit.mid_y() - metric::kThumbDragged,
                  2 * metric::kThumbDragged, 2 * metric::kThumbDragged};
  mirror::Node record;
  record.role = Role::slider;
  record.id = key;
  record.name = name;
  record.value = bar.spoken + bar.mark_spoken;
  record.now = bar.value;
  record.least = row.least;
  record.most = bar.most;
  record.step = row.step;

  const Drag* drag = ui.hand.drag(key);
  ui.pen.track(track, ui.theme.ink2);
  if (bar.mark) ui.pen.pennant(x_of(*bar.mark), track.y, 20, bar.mark_colour);
  if (bar.known) {
    ui.pen.thumb({x_of(bar.value), track.mid_y()}, drag && !drag->ended);
  } else {
    ui.pen.disc({x_of(bar.value), track.mid_y()}, metric::kThumb, ui.theme.paper);
    ui.pen.dashed_ring({x_of(bar.value), track.mid_y()}, metric::kThumb - 3, ui.theme.ink2, 3);
  }
  ui.target(std::move(record), hit, 12, Target::Kind::slide, thumb);

  ScaleMove move;
  if (drag) {
    // A drag that began on the thumb keeps its distance; value at the start comes from the first frame of the
    // gesture.
    if (!std::exchange(ui.hand.scratch.begun, true))
      ui.hand.scratch.grip = drag->on_thumb ? x_of(bar.value) - drag->from_x : 0;
    const bool fine = std::abs(drag->y - track.mid_y()) > kFineDistance;
    const double at = value_at(row.scale, row.least, bar.most,
                               double(drag->x + ui.hand.scratch.grip - track.x) / double(track.w));
    move.wanted = snapped(row, bar.most, at, fine);
    move.gesture = drag->gesture;
  }
  if (const auto set = ui.asked.set.find(key); set != ui.asked.set.end())
    move.wanted = std::clamp(set->second, row.least, bar.most);
  int steps =
      stepper(ui, less, key + ":less", "Less " + name, Icon::minus, !bar.known || bar.value > row.least) * -1;
  steps += stepper(ui, more, key + ":more", "More " + name, Icon::plus, !bar.known || bar.value < bar.most);
  if (const auto step = ui.asked.steps.find(key); step != ui.asked.steps.end()) steps += step->second;
  if (steps != 0) {
    const double from = bar.value;
    move.wanted = bar.known
                      ? snapped(row, bar.most, from + steps * step_at(row, steps < 0 ? from * 0.999 : from), false)
                      : from;
    move.gesture = ui.hand.gesture();
  }
  move.type = figure_tapped(ui, bar, figure, laid.figure_w, head.mid_y());
  // ends of the scale
  const float tick_base = ui.y + type::kTick - 2;
  const auto end_text = [&](double v) {
    return print_quantity(v, row.unit, digits_needed(v, row.digits), ui.session.style()).number;
  };
  ui.pen.text(track.x, tick_base, end_text(row.least), Face::regular, type::kTick, ui.theme.ink2,
              look::Align::left);
  ui.pen.text(track.right(), tick_base, end_text(bar.most), Face::regular, type::kTick, ui.theme.ink2,
              look::Align::right);
  ui.gap(type::line_height(type::kTick) + 2);
  if (move.wanted && bar.known && *move.wanted == bar.value) move.wanted.reset();
  return move;
}

}  // namespace gs::parts
