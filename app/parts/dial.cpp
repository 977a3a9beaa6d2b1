#include "app/parts/dial.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "app/parts/plot.h"
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
constexpr float kAbove = 4;  // with the head's own air 8 px to a row above

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

/// The head: the label beside the steppers, or above them where there is too little width for both. Where even
/// steppers and value are too wide for one line, the value stands between label and steppers.
struct Head {
  std::vector<std::string_view> label, note, pin;
  float figure_size, figure_w, hands_w, label_h;
  bool own_line, value_line;
  float height() const {
    const float hands = value_line ? 2 * metric::kHead : metric::kHead;
    return own_line ? label_h + 4 + hands : std::max(metric::kHead, label_h + 8);
  }
};

Head head_of(const Ui& ui, const Dial& dial) {
  Head head{};
  head.figure_size = dial.known ? type::kValue : type::kBody;
  head.figure_w =
      dial.known ? ui.pen.figure_width(dial.text, type::kValue) : ui.pen.width(dial.text, Face::bold, type::kBody);
  head.hands_w = 2 * metric::kStepper + std::max(96.0F, head.figure_w + 16) + 2 * space::kGap;
  const float beside = ui.w - head.hands_w - 12;
  const std::vector<std::string_view> lines = ui.pen.lines(dial.row.name, beside, Face::bold, type::kBody);
  head.own_line = ui.w < head.hands_w + 60 || lines.size() > 2 || look::Pen::breaks_word(lines);
  head.value_line = ui.w < 2 * metric::kStepper + std::max(space::kTarget, head.figure_w + 4) + 2 * space::kGap;
  const float room = head.own_line ? ui.w : beside;
  head.label = ui.pen.lines(dial.row.name, room, Face::bold, type::kBody);
  head.note = ui.pen.lines(dial.note, room, Face::regular, type::kLabel);
  head.pin = ui.pen.lines(dial.pin_text, room, Face::regular, type::kLabel);
  if (dial.note.empty()) head.note.clear();
  if (dial.pin_text.empty()) head.pin.clear();
  head.label_h = float(head.label.size()) * type::line_height(type::kBody) +
                 float(head.note.size() + head.pin.size()) * type::line_height(type::kLabel);
  return head;
}

void draw_label(Ui& ui, const Head& head, float base) {
  for (const std::string_view line : head.label) {
    ui.pen.text(ui.x, base, line, Face::bold, type::kBody, ui.theme.ink);
    base += type::line_height(type::kBody);
  }
  for (const auto& [lines, colour] : {std::pair{&head.note, ui.theme.ink2}, std::pair{&head.pin, ui.theme.pin}}) {
    for (const std::string_view line : *lines) {
      ui.pen.text(ui.x, base, line, Face::regular, type::kLabel, colour);
      base += type::line_height(type::kLabel);
    }
  }
}

std::string mark_text(const Ui& ui, const Lever& row, double value) {
  return print_quantity(value, row.unit, digits_needed(value, row.digits), ui.session.style()).number;
}

/// A map's scale bar: segments that end at round numbers, both ends of the range named, and of the round numbers
/// as many as have room.
void draw_scale(Ui& ui, const Dial& dial, Box bar) {
  const Lever& row = dial.row;
  PlotAxis axis{.unit = row.unit, .least = row.least, .most = dial.most, .log = row.scale == Scale::log};
  if (track_of(row) == Track::near) axis.marks = round_numbers((dial.most - row.least) / 100, dial.most);
  const auto x_of = [&](double v) {
    return bar.x + bar.w * float(place_of(track_of(row), row.least, dial.most, v));
  };
  constexpr std::size_t kSegments = 12;
  std::vector<float> ends;
  for (const double mark : axis_marks(axis, kSegments)) ends.push_back(x_of(mark));
  ui.pen.scale_track(bar, ends, ui.theme.ink2);
  const float base = ui.y + type::kTick - 2;
  const auto width = [&](double value) {
    return ui.pen.width(mark_text(ui, row, value), Face::regular, type::kTick);
  };
  const float left_end = bar.x + width(row.least), right_start = bar.right() - width(dial.most);
  ui.pen.text(bar.x, base, mark_text(ui, row, row.least), Face::regular, type::kTick, ui.theme.ink2);
  ui.pen.text(bar.right(), base, mark_text(ui, row, dial.most), Face::regular, type::kTick, ui.theme.ink2,
              look::Align::right);
  constexpr float kApart = 14;
  for (std::size_t most = 7; most >= 2; --most) {
    std::vector<double> shown;
    float free_from = left_end + kApart;
    bool fits = true;
    for (const double mark : axis_marks(axis, most)) {
      const float half = width(mark) / 2, at = x_of(mark);
      if (at - half < left_end + kApart || at + half > right_start - kApart) continue;
      fits = fits && at - half >= free_from;
      free_from = at + half + kApart;
      shown.push_back(mark);
    }
    if (!fits) continue;
    for (const double mark : shown) {
      ui.pen.line({x_of(mark), bar.bottom()}, {x_of(mark), bar.bottom() + 6}, ui.theme.ink2, look::stroke::kLine);
      ui.pen.text(x_of(mark), base, mark_text(ui, row, mark), Face::regular, type::kTick, ui.theme.ink2,
                  look::Align::centre);
    }
    return;
  }
}

/// The value: dotted underline, tap to type.
bool typed_value(Ui& ui, const Dial& dial, Box box, float figure_w) {
  const std::string id = dial.key + ":type";
  const look::Ground ground(ui.pen, ui.hand.down(id) ? ui.theme.fold : ui.theme.paper);
  if (ui.hand.down(id)) ui.pen.fill(box, ui.theme.fold, 10);
  const float base = look::Pen::centred(box.mid_y(), dial.known ? type::kValue : type::kBody);
  if (dial.known) {
    ui.pen.figure(box.mid_x(), base, dial.text, type::kValue, ui.theme.ink, look::Align::centre);
  } else {
    ui.pen.text(box.mid_x(), base, dial.text, Face::bold, type::kBody, ui.theme.ink2, look::Align::centre);
  }
  const look::Point under[] = {{box.mid_x() - figure_w / 2, base + 8}, {box.mid_x() + figure_w / 2, base + 8}};
  ui.pen.dashed(under, look::stroke::kNeed, ui.theme.ink, look::stroke::kRule);
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = "Type " + std::string(dial.row.name) + ", " + dial.spoken;
  return ui.target(std::move(record), box, 10);
}

}  // namespace

double dial_start(const Lever& row, double most) {
  return snapped(row, most, value_at(track_of(row), row.least, most, 0.25), false);
}

float dial_height(const Ui& ui, const Dial& dial) {
  return kAbove + head_of(ui, dial).height() + metric::kHit + type::line_height(type::kTick) + 2;
}

Dialled dial(Ui& ui, const Dial& dial) {
  look::Pen& pen = ui.pen;
  Hand& hand = ui.hand;
  const Lever& row = dial.row;
  const std::string& key = dial.key;
  const std::string name(row.name);
  const double value = dial.value, most = dial.most;
  const bool shows_pin = !dial.pin_text.empty();

  ui.gap(kAbove);
  const Head laid = head_of(ui, dial);
  const float line = type::line_height(type::kBody);
  if (laid.own_line) {
    draw_label(ui, laid, ui.y + type::kBody);
    ui.gap(laid.label_h + 4);
  }
  Box figure{};
  if (laid.value_line) {
    const Box value_box = ui.take(metric::kHead);
    figure = {value_box.x, value_box.y + 4, value_box.w, value_box.h - 8};
  }
  const Box head = ui.take(laid.own_line ? metric::kHead : std::max(metric::kHead, laid.label_h + 8));
  if (!laid.own_line)
    draw_label(ui, laid, look::Pen::centred(head.mid_y(), type::kBody) - (laid.label_h - line) / 2);
  const float hands_x = laid.own_line ? head.x : head.right() - laid.hands_w;
  const Box less{hands_x, head.mid_y() - metric::kStepper / 2, metric::kStepper, metric::kStepper};
  const Box more{head.right() - metric::kStepper, less.y, metric::kStepper, metric::kStepper};
  if (!laid.value_line)
    figure = {less.right() + space::kGap, head.y + 4, more.x - less.right() - 2 * space::kGap, head.h - 8};

  // the record of the slider stands before its steppers, as it is read
  const Box hit = ui.take(metric::kHit);
  const float bar_x = hit.x + metric::kThumb, bar_w = hit.w - 2 * metric::kThumb;
  const Box bar{bar_x, hit.mid_y() - metric::kBar / 2, bar_w, metric::kBar};
  const auto x_of = [&](double v) { return bar_x + bar_w * float(place_of(track_of(row), row.least, most, v)); };
  const Box thumb{x_of(value) - metric::kThumbDragged, hit.mid_y() - metric::kThumbDragged,
                  2 * metric::kThumbDragged, 2 * metric::kThumbDragged};
  mirror::Node record;
  record.role = Role::slider;
  record.id = key;
  record.name = name;
  record.value = dial.spoken + (shows_pin ? ", pinned " + dial.pin_spoken : std::string{});
  record.now = value;
  record.least = row.least;
  record.most = most;
  record.step = row.step;

  const Drag* drag = hand.drag(key);
  draw_scale(ui, dial, bar);
  if (shows_pin) pen.pennant(x_of(dial.pinned), bar.y, 20, ui.theme.pin);
  if (dial.known) {
    pen.thumb({x_of(value), bar.mid_y()}, drag && !drag->ended);
  } else {
    pen.disc({x_of(value), bar.mid_y()}, metric::kThumb, ui.theme.paper);
    pen.dashed_ring({x_of(value), bar.mid_y()}, metric::kThumb - 3, ui.theme.ink2, 3);
  }
  ui.target(std::move(record), hit, 12, Target::Kind::slide, thumb);

  Dialled result;
  if (drag) {
    // A drag that began on the thumb keeps its distance; value at the start comes from the first frame of the
    // gesture.
    if (!std::exchange(hand.scratch.begun, true))
      hand.scratch.grip = drag->on_thumb ? x_of(value) - drag->from_x : 0;
    const bool fine = std::abs(drag->y - bar.mid_y()) > kFineDistance;
    const double at =
        value_at(track_of(row), row.least, most, double(drag->x + hand.scratch.grip - bar_x) / double(bar_w));
    result.wanted = snapped(row, most, at, fine);
    result.gesture = drag->gesture;
  }
  if (const auto set = ui.asked.set.find(key); set != ui.asked.set.end())
    result.wanted = std::clamp(set->second, row.least, row.most);
  if (const auto typed = ui.asked.typed.find(key); typed != ui.asked.typed.end()) {
    result.typing = typed->second;
    for (char& c : *result.typing)
      if (c == '.' || c == ',') c = ui.session.style().decimal_sign;
  }
  int steps = stepper(ui, less, key + ":less", "Less " + name, Icon::minus, !dial.known || value > row.least) * -1;
  steps += stepper(ui, more, key + ":more", "More " + name, Icon::plus, !dial.known || value < most);
  if (const auto step = ui.asked.steps.find(key); step != ui.asked.steps.end()) steps += step->second;
  if (steps != 0) {
    result.wanted = dial.known
                        ? snapped(row, most, value + steps * step_at(row, steps < 0 ? value * 0.999 : value), false)
                        : value;
    result.gesture = hand.gesture();
  }
  if (typed_value(ui, dial, figure, laid.figure_w)) result.typing = std::string{};
  ui.gap(type::line_height(type::kTick) + 2);
  if (dial.known && result.wanted && *result.wanted == value) result.wanted.reset();
  return result;
}

}  // namespace gs::parts
