// One input of the outing in the person's hand: number, unfolding row, chips.
#include <cmath>

#include "app/parts/dial.h"
#include "core/outing/lever_range.h"

namespace gs::parts {

using look::Icon;
namespace type = look::type;
namespace space = look::space;

namespace {

bool differs_from_pin(const Session& session, L id) {
  const Plan* pinned = session.pinned_plan();
  const Plan& plan = session.plan();
  return pinned && pinned->has(id) && (!plan.has(id) || (*pinned)[id] != plan[id]);
}

Dial dial_of(const Session& session, L id) {
  const Lever& row = lever(id);
  const Plan& plan = session.plan();
  const double most = most_of(plan, id);
  Dial dial{.key = std::string(row.key),
            .row = row,
            .most = most,
            .value = plan.has(id) ? plan[id] : dial_start(row, most),
            .known = plan.has(id),
            .text = value_text(plan, id, session.style()),
            .spoken = value_spoken(plan, id, session.style())};
  if (differs_from_pin(session, id)) {
    const Plan& pinned = *session.pinned_plan();
    dial.pinned = pinned[id];
    dial.pin_text = "pinned " + value_text(pinned, id, session.style());
    dial.pin_spoken = value_spoken(pinned, id, session.style());
  }
  return dial;
}

}  // namespace

float Ui::slider_height(L id) const { return dial_height(*this, dial_of(session, id)); }

void Ui::slider(L id) {
  const Dialled done = dial(*this, dial_of(session, id));
  if (done.wanted) {
    session.set(id, *done.wanted, done.gesture);
    wake_at(now_s);
  }
  if (done.typing) {
    session.view.panel = Panel::keypad;
    session.view.lever = id;
    session.view.typed = *done.typing;
    session.view.unit = 0;
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
