#include "app/parts/ui.h"

#include <algorithm>
#include <cmath>

namespace gs::parts {

using look::Box;
using mirror::Node;
using mirror::Role;

Ui::Ui(Session& the_session, look::Pen& the_pen, Hand& the_hand, Asked& the_asked, Typing& the_typing,
       Box the_surface, double time_s)
    : session(the_session),
      pen(the_pen),
      hand(the_hand),
      asked(the_asked),
      typing(the_typing),
      theme(the_pen.theme()),
      surface(the_surface),
      layout(look::layout_of(the_surface.w, the_surface.h)),
      now_s(time_s) {}

void Ui::column(float left, float width, float top) {
  x = left;
  w = width;
  y = top;
}

Box Ui::take(float height) {
  const Box box{x, y, w, height};
  y += height;
  return box;
}

void Ui::begin_scroll(std::string id, Box box) {
  // What is scrolled was measured by the frame before; Hand keeps it.
  pen.push_clip(box);
  hand.add({Target::Kind::scroll, id, box});
  const float offset = hand.offset(id);
  column(box.x, box.w, box.y - offset);
  scrolls_.push_back({std::move(id), box, box.y - offset});
}

void Ui::end_scroll() {
  const ScrollState state = std::move(scrolls_.back());
  scrolls_.pop_back();
  const float content = y - state.start_y;
  const float most = std::max(0.0F, content - state.box.h);
  const float offset = state.box.y - state.start_y;
  // Both went through sums of floats: bit for bit they may never agree, and each frame would ask for the next.
  constexpr float kUnseenPx = 0.05F;
  if (std::abs(hand.scroll(state.id, most) - offset) > kUnseenPx) wake_at(now_s);
  if (most > 0) {  // where one is, at the edge: a thin mark that is not a target
    const float bar_h = std::max(24.0F, state.box.h * state.box.h / content);
    const float bar_y = state.box.y + (state.box.h - bar_h) * (offset / most);
    pen.fill({state.box.right() - 4, bar_y, 3, bar_h}, theme.ink2, 1.5F);
  }
  pen.pop_clip();
  if (scroll_focus) {
    const float to = std::clamp(offset + *scroll_focus, 0.0F, most);
    scroll_focus.reset();
    if (std::abs(to - offset) > kUnseenPx) {
      hand.scroll_to(state.id, to);
      wake_at(now_s);
    } else {
      focus_in_sight = true;  // as far as it goes
    }
  }
}

bool Ui::visible(Box box) const {
  if (scrolls_.empty()) return true;
  const Box& area = scrolls_.back().box;
  return box.bottom() > area.y && box.y < area.bottom();
}

void Ui::open_group(Role role, std::string id, std::string name, Box box) {
  node(role, id, std::move(name), box);
  groups_.push_back(std::move(id));
}

void Ui::place(Node& record, Box box) const {
  record.parent = groups_.empty() ? std::string{} : groups_.back();
  record.x = box.x;
  record.y = box.y;
  record.w = box.w;
  record.h = box.h;
  if (scrolls_.empty() || record.role < Role::heading) return;  // containers are as large as what they hold
  const Box& area = scrolls_.back().box;
  record.cut_top = std::clamp(area.y - box.y, 0.0F, box.h);
  record.cut_bottom = std::clamp(box.bottom() - area.bottom(), 0.0F, box.h);
}

Node& Ui::node(Role role, std::string id, std::string name, Box box) {
  Node record;
  record.role = role;
  record.id = std::move(id);
  record.name = std::move(name);
  place(record, box);
  tree.nodes.push_back(std::move(record));
  return tree.nodes.back();
}

bool Ui::target(Node record, Box box, float radius, Target::Kind kind, Box thumb) {
  const std::string id = record.id;
  place(record, box);
  const bool enabled = !record.disabled;
  tree.nodes.push_back(std::move(record));
  Box reach = box;
  if (!scrolls_.empty()) {
    const Box& area = scrolls_.back().box;
    const float top = std::max(reach.y, area.y), bottom = std::min(reach.bottom(), area.bottom());
    reach = {reach.x, top, reach.w, std::max(0.0F, bottom - top)};
  }
  if (enabled && reach.h > 0) hand.add({kind, id, reach, thumb});
  if (focus == id) {
    pen.focus(box, radius);
    std::optional<float> off;
    if (!scrolls_.empty()) {
      const Box& area = scrolls_.back().box;
      constexpr float kAir = 8;
      if (box.h + 2 * kAir > area.h) {
        // higher than its window: its head at the top, or each end would call the other back
        if (std::abs(box.y - area.y) > 1) off = box.y - area.y;
      } else if (box.y < area.y) {
        off = box.y - area.y - kAir;
      } else if (box.bottom() > area.bottom()) {
        off = box.bottom() - area.bottom() + kAir;
      }
    }
    focus_in_sight = !off;
    if (show_focus && off) scroll_focus = off;
  }
  return enabled && hand.tapped(id);
}

look::Sign sign_of(State state) {
  switch (state) {
    case State::holds:
      return look::Sign::holds;
    case State::tight:
      return look::Sign::tight;
    case State::fails:
      return look::Sign::fails;
    case State::none:
    case State::unknown:
      return look::Sign::unknown;
  }
  return look::Sign::unknown;
}

ImU32 colour_of(const look::Theme& theme, State state) {
  switch (state) {
    case State::holds:
      return theme.holds;
    case State::tight:
      return theme.tight;
    case State::fails:
      return theme.fails;
    case State::none:
      return theme.ink;
    case State::unknown:
      return theme.ink2;
  }
  return theme.ink;
}

look::Icon icon_of(Link link) {
  switch (link) {
    case Link::battery:
      return look::Icon::battery;
    case Link::radio:
      return look::Icon::radio;
    case Link::feedline:
      return look::Icon::feed;
    case Link::antenna:
      return look::Icon::antenna;
    case Link::sky:
      return look::Icon::sky;
    case Link::contacts:
      return look::Icon::contacts;
    case Link::safety:
      return look::Icon::safety;
    case Link::clock:
      return look::Icon::clock;
    case Link::kit:
      return look::Icon::kit;
    case Link::count:
      break;
  }
  return look::Icon::count;
}

}  // namespace gs::parts
