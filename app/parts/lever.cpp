// One input of the outing in the person's hand: scale-bar slider, unfolding row, chips, list.
#include <algorithm>
#include <cmath>

#include "app/parts/scale.h"
#include "app/parts/scale_bar.h"
#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

namespace {

double most_of(const Lever& row, const Plan& plan) {
  const double cap = row.cap ? row.cap(plan) : row.most;
  return std::isfinite(cap) ? std::min(cap, row.most) : row.most;
}

/// Where a lever without a value starts when it is stepped: a plain place in its range.
double start_of(const Lever& row, double most) {
  return snapped(row, most, value_at(row.scale, row.least, most, 0.25), false);
}

bool differs_from_pin(const Session& session, L id) {
  const Plan* pinned = session.pinned_plan();
  const Plan& plan = session.plan();
  return pinned && pinned->has(id) && (!plan.has(id) || (*pinned)[id] != plan[id]);
}

ScaleBar bar_of(const Ui& ui, L id) {
  const Lever& row = lever(id);
  const Session& session = ui.session;
  const Plan& plan = session.plan();
  ScaleBar bar{
      .row = row, .text = value_text(plan, id, session.style()), .spoken = value_spoken(plan, id, session.style())};
  bar.most = most_of(row, plan);
  bar.known = plan.has(id);
  bar.value = bar.known ? plan[id] : start_of(row, bar.most);
  if (!differs_from_pin(session, id)) return bar;
  const Plan& pinned = *session.pinned_plan();
  bar.mark = pinned[id];
  bar.mark_text = "pinned " + value_text(pinned, id, session.style());
  bar.mark_spoken = ", pinned " + value_spoken(pinned, id, session.style());
  bar.mark_colour = ui.theme.pin;
  return bar;
}

}  // namespace

float Ui::slider_height(L id) const { return scale_bar_height(*this, bar_of(*this, id)); }

void Ui::slider(L id) {
  const ScaleMove move = scale_bar(*this, bar_of(*this, id));
  if (move.type) {
    session.view.panel = Panel::keypad;
    session.view.lever = id;
    session.view.typed.clear();
    session.view.unit = 0;
    wake_at(now_s);
  }
  if (!move.wanted) return;
  session.set(id, *move.wanted, move.gesture);
  wake_at(now_s);
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
