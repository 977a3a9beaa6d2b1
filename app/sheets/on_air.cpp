// Being on the air: one large button, what it has counted, and what is to come. The only sheet with seconds.
#include "app/parts/on_air.h"

#include <algorithm>
#include <cmath>

#include "app/parts/change.h"
#include "app/platform/platform.h"
#include "app/sheets/sheets.h"
#include "core/pace/utc.h"

namespace gs::sheets {

using look::Box;
using look::Icon;
using mirror::Role;
using parts::Ui;
namespace type = look::type;
namespace space = look::space;

namespace {

constexpr int kBuzzMs = 30;

/// The instant of a press: now, less what has passed since by the clock that only runs forward.
double utc_of_press(const Ui& ui, double press_s) { return ui.session.now().utc_s - (ui.now_s - press_s); }

void hands(Ui& ui, Box contact, Box undo) {
  Session& session = ui.session;
  if (parts::contact_button(ui, contact)) {
    for (const double press_s : ui.hand.taps("air:contact")) {
      if (!session.count_contact(utc_of_press(ui, press_s), press_s)) continue;
      session.view.flash_until_s = ui.now_s + double(look::motion::kCountFlash);
      platform::vibrate(kBuzzMs);
    }
    ui.wake_at(ui.now_s);
  }
  if (parts::undo_button(ui, undo) && session.take_back_contact()) ui.wake_at(ui.now_s);
}

void lesser_buttons(Ui& ui) {
  View& view = ui.session.view;
  ui.gap(12);
  if (ui.button("air:forgotten", "Some I forgot", parts::Weight::plain, Icon::plus)) {
    view.panel = Panel::forgotten;
    view.typed.clear();
    ui.wake_at(ui.now_s);
  }
  ui.gap();
  if (ui.button("air:end", "End being on the air", parts::Weight::plain, Icon::count)) {
    ui.session.leave_air(ui.session.now().utc_s);
    view.sheet = Sheet::after;
    view.panel = Panel::none;
    ui.wake_at(ui.now_s);
  }
  ui.gap();
}

void told(Ui& ui) {
  parts::air_clock(ui);
  ui.rule();
  parts::air_sentences(ui);
  ui.gap(10);
  parts::air_count(ui);
  if (!ui.phone()) parts::air_strokes(ui);
  ui.rule();
  ui.gap(8);
  parts::air_forecast(ui);
  ui.rule();
  parts::air_battery(ui);
  if (!ui.phone()) return;
  ui.rule();
  parts::air_strokes(ui);  // below what has to be in sight
}

/// With little height or width the chain scrolls with what is told: the button needs the room.
void chain_along(Ui& ui, Box area) {
  if (!ui.low() && !ui.slim()) return;
  ui.gap(4);
  parts::chain_small(ui, area);
}

void info(Ui& ui, Box area, float margin, bool with_buttons) {
  ui.begin_scroll("air", area);
  chain_along(ui, area);
  ui.column(area.x + margin, area.w - margin - std::max(margin, ui.slim() ? 8.0F : 14.0F), ui.y + 8);
  if (ui.session.view.panel == Panel::forgotten) {
    parts::forgotten_pad(ui);
  } else {
    told(ui);
    if (with_buttons) lesser_buttons(ui);
  }
  ui.gap(8);
  ui.end_scroll();
}

void counting(Ui& ui) {
  const Box all{ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y};
  const float margin = ui.margin();
  const bool flat = ui.low() && ui.surface.w >= 400;  // large letters on a phone on its side
  const bool beside = ui.layout == look::Layout::tablet || ui.layout == look::Layout::wide ||
                      ui.layout == look::Layout::on_side || flat;
  if (!beside) {
    const float high = ui.phone() ? std::min(space::kContactPhone, all.h * 0.34F) : space::kContactTablet;
    const float undo_h = ui.phone() ? 60.0F : 0.0F, between = ui.phone() ? 12.0F : 0.0F;
    const float foot = high + undo_h + between + 16;
    info(ui, {all.x, all.y, all.w, all.h - foot - space::kGuard}, margin, true);
    const float top = all.bottom() - foot;
    const float left = all.x + margin, wide = all.w - 2 * margin;
    if (ui.phone()) return hands(ui, {left, top, wide, high}, {left, top + high + between, wide, undo_h});
    constexpr float kUndoWide = 190;
    const bool left_hand = ui.session.settings.left_hand;
    const float rest = wide - kUndoWide - 16;
    return hands(ui, {left_hand ? left : left + kUndoWide + 16, top, rest, high},
                 {left_hand ? left + rest + 16 : left, top, kUndoWide, high});
  }
  const float hand_w = ui.layout == look::Layout::wide ? 440 : std::min(380.0F, all.w * (flat ? 0.36F : 0.4F));
  const bool left_hand = ui.session.settings.left_hand;
  const float hand_x = left_hand ? all.x + margin : all.right() - margin - hand_w;
  const float info_w = all.w - 2 * margin - hand_w - space::kGuard;
  const bool low = ui.layout == look::Layout::on_side || flat;
  info(ui, {left_hand ? hand_x + hand_w + space::kGuard : all.x + margin, all.y, info_w, all.h - 8}, 0, low);
  const float high = std::min(space::kContactTablet, all.h - 60 - 12 - 16);
  const Box contact{hand_x, all.y + 8, hand_w, high}, undo{hand_x, contact.bottom() + 12, hand_w, 60};
  hands(ui, contact, undo);
  if (low) return;
  ui.column(hand_x, hand_w, undo.bottom() + space::kGuard - 12);
  lesser_buttons(ui);
}

/// When the plan begins, and what beginning later costs.
std::string about_the_start(const Session& session) {
  const Live now = parts::live(session);
  if (!std::isfinite(now.planned_start_min)) return {};
  const std::string planned = "By the plan you are on the air from " + wall_clock(now.planned_start_min) + ".";
  const std::string late = say_late(now, session.style());
  if (late.empty()) return planned;
  const Figure& chance = session.outlook()[R::pace_chance_of_target_pct];
  if (chance.state == State::unknown) return planned + " Now it is " + late;
  return planned + " Now it is " + late + " Leave by stays. Chance of the target from now on: " +
         parts::figure_text(R::pace_chance_of_target_pct, chance, session.style()) + ".";
}

void start(Ui& ui) {
  Session& session = ui.session;
  ui.begin_scroll("air", {ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y});
  chain_along(ui, ui.surface);
  ui.column(ui.surface.x + ui.margin(), std::min(ui.surface.w - 2 * ui.margin() - 14, 760.0F), ui.y + 8);
  ui.title(session.outing().happened.on_air.empty() ? "Not on the air yet" : "Off the air", "sheet");
  ui.gap();
  parts::air_clock(ui);
  ui.rule();
  parts::air_sentences(ui);
  ui.gap();
  const platform::Today today = platform::today();
  if (std::isfinite(minute_now(session.plan(), session.now()))) {
    if (const std::string cost = about_the_start(session); !cost.empty())
      ui.paragraph(cost, "air:cost", ui.theme.ink);
    ui.gap(16);
    if (ui.button("air:start",
                  session.outing().happened.on_air.empty() ? "Start being on the air" : "On the air again",
                  parts::Weight::main, Icon::contacts) &&
        session.go_on_air(session.now().utc_s)) {
      ui.hand.scroll_to("air", 0);
      ui.wake_at(ui.now_s);
    }
  } else {
    const std::string date = session.outing().date;
    ui.paragraph(date.empty() ? "The outing has no date. Contacts are counted on the day itself."
                              : "The outing is planned for " + date + ". Contacts are counted on the day itself.",
                 "air:not_today", ui.theme.ink);
    ui.gap(16);
    if (ui.button("air:today", "Set its date to today, " + today.date, parts::Weight::plain, Icon::clock)) {
      session.set_date(today.date);
      ui.wake_at(ui.now_s);
    }
  }
  const double ahead = zone_ahead_min(session.plan(), session.now());
  if (ahead != 0) {
    ui.gap();
    if (ui.button("air:zone:use", "Use this device's zone for the outing", parts::Weight::plain, Icon::count)) {
      session.set(L::clock_utc_offset_min, double(today.utc_offset_min));
      ui.wake_at(ui.now_s);
    }
  }
  ui.gap(16);
  ui.paragraph(
      "On the air you tap once for each contact. Groundsheet keeps the times and nothing else: who it was belongs "
      "into "
      "your own notes.",
      "air:words", ui.theme.ink2);
  ui.gap(24);
  ui.end_scroll();
}

}  // namespace

void on_air(Ui& ui) {
  const bool counts = ui.session.phase() == Phase::on_air;
  if (counts && ui.layout == look::Layout::portrait) {
    ui.chain_strip(Link::contacts);
  } else if (!ui.low() && !ui.slim()) {
    parts::chain_small(ui, ui.surface);
  }
  ui.open_group(Role::main, "main", "On the air", {ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y});
  counts ? counting(ui) : start(ui);
  ui.close_group();
  const double utc_s = ui.session.now().utc_s;
  ui.wake_at(ui.now_s + 1 - (utc_s - std::floor(utc_s)));  // when the next second has come
}

}  // namespace gs::sheets
