// One input of the outing in the person's hand: scale-bar slider, unfolding row, chips, list.
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/parts/scale.h"
#include "app/parts/ui.h"

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

double most_of(const Lever& row, const Plan& plan) {
  const double cap = row.cap ? row.cap(plan) : row.most;
  return std::isfinite(cap) ? std::min(cap, row.most) : row.most;
}

/// Where a lever without a value starts when it is stepped: a plain place in its range.
double start_of(const Lever& row, double most) {
  return snapped(row, most, value_at(row.scale, row.least, most, 0.25), false);
}

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

/// Head of a slider: the label beside the steppers, or above them where there is too little width for both.
struct SliderHead {
  std::vector<std::string_view> label;
  float figure_w, hands_w, label_h;
  bool own_line;
};

SliderHead slider_head(const Ui& ui, L id, const std::string& text, bool known, bool shows_pin) {
  const std::string_view name = lever(id).name;
  SliderHead head{};
  head.figure_w = known ? ui.pen.figure_width(text, type::kValue) : ui.pen.width(text, Face::bold, type::kBody);
  head.hands_w = 2 * metric::kStepper + std::max(96.0F, head.figure_w + 16) + 2 * space::kGap;
  const float beside = ui.w - head.hands_w - 12;
  head.own_line = ui.w < head.hands_w + 60 || ui.pen.lines(name, beside, Face::bold, type::kBody).size() > 2;
  head.label = ui.pen.lines(name, head.own_line ? ui.w : beside, Face::bold, type::kBody);
  head.label_h =
      float(head.label.size()) * type::line_height(type::kBody) + (shows_pin ? type::line_height(type::kLabel) : 0);
  return head;
}

bool differs_from_pin(const Session& session, L id) {
  const Plan* pinned = session.pinned_plan();
  const Plan& plan = session.plan();
  return pinned && pinned->has(id) && (!plan.has(id) || (*pinned)[id] != plan[id]);
}

}  // namespace

float Ui::slider_height(L id) const {
  const SliderHead head = slider_head(*this, id, value_text(session.plan(), id, session.style()),
                                      session.plan().has(id), differs_from_pin(session, id));
  const float top = head.own_line ? head.label_h + 4 + metric::kHead : std::max(metric::kHead, head.label_h + 8);
  return top + metric::kHit + type::line_height(type::kTick) + 2;
}

void Ui::slider(L id) {
  const Lever& row = lever(id);
  const Plan& plan = session.plan();
  const std::string key(row.key);
  const double most = most_of(row, plan);
  const bool known = plan.has(id);
  const double value = known ? plan[id] : start_of(row, most);
  const Plan* pinned = session.pinned_plan();
  const bool shows_pin = differs_from_pin(session, id);

  // head: label, pinned value below it, then less, value, more
  const std::string text = value_text(plan, id, session.style());
  const std::string pin_text = shows_pin ? "pinned " + value_text(*pinned, id, session.style()) : std::string{};
  const SliderHead laid = slider_head(*this, id, text, known, shows_pin);
  const auto& [label, figure_w, hands_w, label_h, own_line] = laid;
  const float line = type::line_height(type::kBody);
  if (own_line) {
    float base = y + type::kBody;
    for (const std::string_view part : label) {
      pen.text(x, base, part, Face::bold, type::kBody, theme.ink);
      base += line;
    }
    if (shows_pin) pen.text(x, base, pin_text, Face::regular, type::kLabel, theme.pin);
    gap(label_h + 4);
  }
  const Box head = take(own_line ? metric::kHead : std::max(metric::kHead, label_h + 8));
  if (!own_line) {
    float base = look::Pen::centred(head.mid_y(), type::kBody) - (label_h - line) / 2;
    for (const std::string_view part : label) {
      pen.text(head.x, base, part, Face::bold, type::kBody, theme.ink);
      base += line;
    }
    if (shows_pin) pen.text(head.x, base, pin_text, Face::regular, type::kLabel, theme.pin);
  }
  const float hands_x = own_line ? head.x : head.right() - hands_w;
  const float hands_right = head.right();
  const Box less{hands_x, head.mid_y() - metric::kStepper / 2, metric::kStepper, metric::kStepper};
  const Box more{hands_right - metric::kStepper, less.y, metric::kStepper, metric::kStepper};
  const Box figure{less.right() + space::kGap, head.y + 4, more.x - less.right() - 2 * space::kGap, head.h - 8};
  const std::string name(row.name);

  // the record of the slider stands before its steppers, as it is read
  const Box hit = take(metric::kHit);
  const float bar_x = hit.x + metric::kThumb, bar_w = hit.w - 2 * metric::kThumb;
  const Box bar{bar_x, hit.mid_y() - metric::kBar / 2, bar_w, metric::kBar};
  const auto x_of = [&](double v) { return bar_x + bar_w * float(place_of(row.scale, row.least, most, v)); };
  const Box thumb{x_of(value) - metric::kThumbDragged, hit.mid_y() - metric::kThumbDragged,
                  2 * metric::kThumbDragged, 2 * metric::kThumbDragged};
  mirror::Node record;
  record.role = Role::slider;
  record.id = key;
  record.name = name;
  record.value = value_spoken(plan, id, session.style()) +
                 (shows_pin ? ", pinned " + value_spoken(*pinned, id, session.style()) : std::string{});
  record.now = value;
  record.least = row.least;
  record.most = most;
  record.step = row.step;

  const Drag* drag = hand.drag(key);
  pen.track(bar, theme.ink2);
  if (shows_pin) pen.pennant(x_of((*pinned)[id]), bar.y, 20, theme.pin);
  if (known) {
    pen.thumb({x_of(value), bar.mid_y()}, drag && !drag->ended);
  } else {
    pen.disc({x_of(value), bar.mid_y()}, metric::kThumb, theme.paper);
    pen.dashed_ring({x_of(value), bar.mid_y()}, metric::kThumb - 3, theme.ink2, 3);
  }
  target(std::move(record), hit, 12, Target::Kind::slide, thumb);

  std::optional<double> wanted;
  int gesture = 0;
  if (drag) {
    // A drag that began on the thumb keeps its distance; value at the start comes from the first frame of the
    // gesture.
    if (!std::exchange(hand.scratch.begun, true))
      hand.scratch.grip = drag->on_thumb ? x_of(value) - drag->from_x : 0;
    const bool fine = std::abs(drag->y - bar.mid_y()) > kFineDistance;
    const double at =
        value_at(row.scale, row.least, most, double(drag->x + hand.scratch.grip - bar_x) / double(bar_w));
    wanted = snapped(row, most, at, fine);
    gesture = drag->gesture;
  }
  if (const auto set = asked.set.find(key); set != asked.set.end())
    wanted = std::clamp(set->second, row.least, most);
  int steps = stepper(*this, less, key + ":less", "Less " + name, Icon::minus, !known || value > row.least) * -1;
  steps += stepper(*this, more, key + ":more", "More " + name, Icon::plus, !known || value < most);
  if (const auto step = asked.steps.find(key); step != asked.steps.end()) steps += step->second;
  if (steps != 0) {
    const double from = known ? value : start_of(row, most);
    wanted = known ? snapped(row, most, from + steps * step_at(row, steps < 0 ? from * 0.999 : from), false) : from;
    gesture = hand.gesture();
  }
  // the value: dotted underline, tap to type
  {
    const look::Ground ground(pen, hand.down(key + ":type") ? theme.fold : theme.paper);
    if (hand.down(key + ":type")) pen.fill(figure, theme.fold, 10);
    const float base = look::Pen::centred(head.mid_y(), known ? type::kValue : type::kBody);
    if (known) {
      pen.figure(figure.mid_x(), base, text, type::kValue, theme.ink, look::Align::centre);
    } else {
      pen.text(figure.mid_x(), base, text, Face::bold, type::kBody, theme.ink2, look::Align::centre);
    }
    const look::Point under[] = {{figure.mid_x() - figure_w / 2, base + 8},
                                 {figure.mid_x() + figure_w / 2, base + 8}};
    pen.dashed(under, look::stroke::kNeed, theme.ink, look::stroke::kRule);
    mirror::Node type_record;
    type_record.role = Role::button;
    type_record.id = key + ":type";
    type_record.name = "Type " + name + ", " + value_spoken(plan, id, session.style());
    if (target(std::move(type_record), figure, 10)) {
      session.view.panel = Panel::keypad;
      session.view.lever = id;
      session.view.typed.clear();
      session.view.unit = 0;
      wake_at(now_s);
    }
  }
  // ends of the scale
  const float tick_base = y + type::kTick - 2;
  pen.text(bar.x, tick_base,
           print_quantity(row.least, row.unit, digits_needed(row.least, row.digits), session.style()).number,
           Face::regular, type::kTick, theme.ink2, look::Align::left);
  pen.text(bar.right(), tick_base,
           print_quantity(most, row.unit, digits_needed(most, row.digits), session.style()).number, Face::regular,
           type::kTick, theme.ink2, look::Align::right);
  gap(type::line_height(type::kTick) + 2);
  if (wanted && (!known || *wanted != value)) {
    session.set(id, *wanted, gesture);
    wake_at(now_s);
  }
}

void Ui::lever_chips(L id) {
  const Lever& row = lever(id);
  const Plan& plan = session.plan();
  std::vector<Chip> items;
  std::vector<std::string> keys;
  for (std::size_t i = 0; i < row.options().size(); ++i) {
    const Option& option = row.options()[i];
    const bool chosen = plan.has(id) && std::size_t(plan[id]) == i;
    if (option.retired && !chosen) continue;
    items.push_back({std::string(row.key) + "=" + std::string(option.key), std::string(option.name), {}, chosen});
    keys.push_back(std::string(option.key));
  }
  const int tapped = chips(row.key, row.name, items);
  if (tapped >= 0) {
    session.set(id, keys[std::size_t(tapped)]);
    wake_at(now_s);
  }
}

void Ui::lever_list(L id) {
  const Lever& row = lever(id);
  const Plan& plan = session.plan();
  open_group(Role::radiogroup, std::string(row.key), std::string(row.name), {x, y, w, 0});
  for (std::size_t i = 0; i < row.options().size(); ++i) {
    const Option& option = row.options()[i];
    const bool chosen = plan.has(id) && std::size_t(plan[id]) == i;
    if (option.retired && !chosen) continue;
    const std::string item = std::string(row.key) + "=" + std::string(option.key);
    const Box box = take(space::kRow);
    const ImU32 fill = hand.down(item) ? theme.fold : theme.paper;
    const look::Ground ground(pen, fill);
    if (hand.down(item)) pen.fill(box, fill);
    pen.ring({box.x + 14, box.mid_y()}, 10, theme.ink, look::stroke::kRule);
    if (chosen) pen.disc({box.x + 14, box.mid_y()}, 6, theme.ink);
    pen.text(box.x + 36, look::Pen::centred(box.mid_y(), type::kBody), option.name,
             chosen ? Face::bold : Face::regular, type::kBody, theme.ink);
    mirror::Node record;
    record.role = Role::radio;
    record.id = item;
    record.name = option.name;
    record.checked = chosen ? 1 : 0;
    if (target(std::move(record), box, 0)) {
      session.set(id, std::string(option.key));
      session.view.panel = Panel::none;
      wake_at(now_s);
    }
    rule();
  }
  close_group();
}

void Ui::lever_row(L id) {
  const Lever& row_of = lever(id);
  const Plan& plan = session.plan();
  if (row_of.applies && !row_of.applies(plan)) return;
  const std::string key = std::string(row_of.key) + ":row";
  const bool open = session.view.unfolded == key;
  std::string value = value_text(plan, id, session.style());
  std::string spoken = value_spoken(plan, id, session.style());
  if (plan.from[std::size_t(id)] == From::usual) spoken += ", usual";
  if (row(key, row_of.name, value, spoken, open ? 1 : 0, plan.from[std::size_t(id)] != From::usual)) {
    session.view.unfolded = open ? std::string{} : key;
    wake_at(now_s);
  }
  if (!open) return;
  if (row_of.kind == Kind::choice) {
    row_of.options().size() > 6 ? lever_list(id) : lever_chips(id);
  } else {
    slider(id);
  }
  const bool mine = plan.from[std::size_t(id)] == From::yours;
  if (mine && (row_of.usual || row_of.optional)) {
    gap();
    const std::string label = row_of.usual ? "Back to usual" : "Take it out";
    if (button_in(take(space::kTarget), key + ":usual", label, Weight::plain, Icon::count, type::kBody, true,
                  label + ", " + std::string(row_of.name))) {
      session.set(id, Value{});
      wake_at(now_s);
    }
  }
  gap();
}

}  // namespace gs::parts
