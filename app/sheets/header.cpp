#include <algorithm>

#include "app/sheets/sheets.h"
#include "core/outing/rules_rows.h"
#include "core/rules/bands.h"

namespace gs::sheets {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;

namespace {

Icon theme_icon(ThemeName name) {
  return name == ThemeName::daylight ? Icon::sun : name == ThemeName::dusk ? Icon::dusk : Icon::moon;
}

std::string_view theme_word(ThemeName name) {
  return name == ThemeName::daylight ? "daylight" : name == ThemeName::dusk ? "dusk" : "night";
}

/// "20 m SSB"; the frequency where it lies in no band.
std::string signal_words(const Session& session) {
  const Plan& plan = session.plan();
  std::string_view band;
  if (plan.has(L::rules_region))
    band = rules::band_of(plan[L::antenna_frequency_mhz], region_at(plan[L::rules_region]));
  const std::size_t unit = band.find_first_not_of("0123456789.");
  const std::string where = band.empty() || unit == std::string_view::npos
                                ? value_text(plan, L::antenna_frequency_mhz, session.style())
                                : std::string(band.substr(0, unit)) + "\u00A0" + std::string(band.substr(unit));
  return plan.has(L::radio_mode) ? where + " " + value_text(plan, L::radio_mode, session.style()) : where;
}

}  // namespace

void header(parts::Ui& ui) {
  Session& session = ui.session;
  look::Pen& pen = ui.pen;
  const Box bar{ui.surface.x, ui.surface.y, ui.surface.w, look::chain::kHeader};
  constexpr float kSize = 48;
  // while one counts, nothing stands near that takes a step of the plan back instead of a contact
  const bool counting = session.view.sheet == Sheet::on_air && session.phase() == Phase::on_air;
  // where too little is left for the name it has the line of the mark, and what else is pressed the line below
  constexpr float kApart = 8, kNameRoom = 84, kCloseMark = 30, kCloser = 30;
  const int hands = counting ? 2 : session.can_undo() ? 4 : 3;
  const float taken = (kSize + kApart) * float(hands) + kSize + ui.margin();
  const bool two_lines =
      !counting && (ui.phone() || ui.layout == look::Layout::on_side) && ui.surface.w - taken < kNameRoom;
  ui.open_group(Role::banner, "header", "Groundsheet", {bar.x, bar.y, bar.w, two_lines ? bar.h + kSize : bar.h});
  const float hands_right = std::min(bar.right() - 2, two_lines ? bar.right() : bar.right() - ui.margin() + 12);
  float right = hands_right, hands_y = bar.y;
  const auto icon = [&](std::string_view id, std::string_view spoken, Icon what, ImU32 colour) {
    right -= kSize;
    const float at = right;
    right -= kApart;
    return ui.icon_button({at, hands_y, kSize, kSize}, id, spoken, what, colour);
  };
  // Drawn from the right; the mirror's order follows below in reading order, so the mark comes first. On a phone
  // the name would not stand beside a mark with air around it: both are one target, the mark smaller.
  const std::string name = session.outing().name.empty() ? "New outing" : session.outing().name;
  const float name_full = pen.width(name, Face::bold, type::kLabel);
  const float beside = ui.surface.w - taken - kApart;
  const bool close = ui.phone() && !two_lines && !counting && name_full > beside && name_full <= beside + kCloser;
  const Box mark = close ? Box{bar.x + 4, bar.y, kCloseMark + 4 + name_full, kSize}
                         : Box{bar.x + std::max(2.0F, ui.margin() - 6), bar.y, kSize, kSize};
  const float name_x = close ? mark.x + kCloseMark + 2 : mark.right() + 4;
  if (ui.hand.down("home")) pen.fill(mark, ui.theme.fold, look::radius::kChip);
  const look::Ground under(pen, ui.hand.down("home") ? ui.theme.fold : ui.theme.paper);
  pen.brand(mark.x + (close ? 1 : 6), mark.y + (close ? 10 : 7), close ? 28 : 34, ui.theme.ink);
  mirror::Node home;
  home.role = Role::button;
  home.id = "home";
  home.name = "Overview";
  home.current = session.view.sheet == Sheet::overview;
  if (ui.target(std::move(home), mark)) {
    session.view.sheet = Sheet::overview;
    session.view.panel = Panel::none;
    ui.hand.scroll_to("overview", 0);
    ui.wake_at(ui.now_s);
  }
  const std::size_t title_at = ui.tree.nodes.size();
  ui.node(Role::heading, "outing:name", name, {mark.right(), bar.y, 10, bar.h}).level = 1;

  if (icon("more", "More: outing, text size, files", Icon::more, ui.theme.ink)) {
    session.view.sheet = Sheet::more;
    session.view.panel = Panel::none;
    ui.wake_at(ui.now_s);
  }
  const float name_right = right;
  if (two_lines) right = hands_right, hands_y = bar.bottom();
  const ThemeName next = ThemeName((int(session.settings.theme) + 1) % int(ThemeName::count));
  if (icon("theme",
           "Theme " + std::string(theme_word(session.settings.theme)) + ", change to " +
               std::string(theme_word(next)),
           theme_icon(session.settings.theme), ui.theme.ink)) {
    session.settings.theme = next;
    ui.wake_at(ui.now_s);
  }
  if (!counting && session.can_undo() && icon("undo", "Undo " + session.undo_names(), Icon::undo, ui.theme.ink)) {
    session.undo();
    ui.wake_at(ui.now_s);
  }
  const bool pinned = session.outing().pinned.has_value();
  const std::string pin_words = !pinned ? "Pin this plan"
                                : session.outing().pinned_name.empty()
                                    ? "Pinned"
                                    : "Pinned at " + session.outing().pinned_name;
  bool pin_tapped = false;
  if (counting) {
    // the plan stays as it is pinned
  } else if (ui.phone()) {
    pin_tapped = icon("pin", pin_words, Icon::pin, ui.theme.pin);
  } else {
    const float text_w = pen.width(pin_words, Face::bold, type::kLabel);
    const Box box{right - text_w - 48, bar.y, text_w + 48, kSize};
    right = box.x - kApart;
    if (ui.hand.down("pin")) pen.fill(box, ui.theme.fold, look::radius::kChip);
    const look::Ground ground(pen, ui.hand.down("pin") ? ui.theme.fold : ui.theme.paper);
    pen.icon(Icon::pin, box.x + 10, box.mid_y() - 12, 24, ui.theme.pin);
    pen.text(box.x + 38, look::Pen::centred(box.mid_y(), type::kLabel), pin_words, Face::bold, type::kLabel,
             ui.theme.pin);
    mirror::Node record;
    record.role = Role::button;
    record.id = "pin";
    record.name = pin_words;
    pin_tapped = ui.target(std::move(record), box);
  }
  if (pin_tapped) {
    if (!pinned) {
      session.pin();
    } else {
      session.view.panel = session.view.panel == Panel::pin ? Panel::none : Panel::pin;
    }
    ui.wake_at(ui.now_s);
  }
  const float base = look::Pen::centred(bar.y + kSize / 2, type::kLead);
  const float room = close ? name_full : (two_lines ? name_right : right) - mark.right() - 8;
  float name_w = pen.width(name, Face::bold, type::kLead);
  const auto lines = pen.lines(name, room, Face::bold, type::kLabel);
  if (name_w > room && room < 60 && look::Pen::breaks_word(lines)) {
    name_w = room;  // no room for a word: the mirror has the name
  } else if (name_w > room && lines.size() == 1) {
    name_w = pen.text(name_x, base, name, Face::bold, type::kLabel, ui.theme.ink);
  } else if (name_w > room && lines.size() > 1) {
    // two small lines rather than half a name
    pen.text(name_x, bar.y + kSize / 2 - 3, lines[0], Face::bold, type::kLabel, ui.theme.ink);
    const std::string_view rest = std::string_view(name).substr(std::size_t(lines[1].data() - name.data()));
    pen.text(name_x, bar.y + kSize / 2 + 17, pen.elided(rest, room, Face::bold, type::kLabel), Face::bold,
             type::kLabel, ui.theme.ink);
    name_w = room;
  } else {
    name_w = pen.text(name_x, base, pen.elided(name, room, Face::bold, type::kLead), Face::bold, type::kLead,
                      ui.theme.ink);
  }
  const Plan& plan = session.plan();
  std::string second = plan.date ? sky::day_words(*plan.date) : session.outing().date;
  if (plan.has(L::antenna_frequency_mhz)) second += (second.empty() ? "" : " \u00B7 ") + signal_words(session);
  if (!second.empty() && name_w + 24 + pen.width(second, Face::regular, type::kLabel) < room)
    pen.text(mark.right() + name_w + 20, base, second, Face::regular, type::kLabel, ui.theme.ink2);
  ui.tree.nodes[title_at].w = name_w;
  ui.close_group();
  ui.y = bar.bottom() + (two_lines ? kSize + kApart : 0);

  if (session.view.panel == Panel::pin && pinned) {
    const float top = ui.y + 4;
    ui.column(ui.surface.x + ui.margin(), ui.surface.w - 2 * ui.margin(), top);
    const bool across = ui.w >= 330;
    const float each = across ? (ui.w - 16) / 3 : ui.w, step = across ? each + 8 : 64;
    ui.open_group(Role::group, "pin:choices", "The pin", {ui.x, top, ui.w, across ? 56.0F : 2 * step + 56});
    const struct {
      const char* id;
      const char* label;
    } items[] = {{"pin:move", "Move pin here"}, {"pin:back", "Go back to pin"}, {"pin:out", "Take pin out"}};
    for (int i = 0; i < 3; ++i) {
      const Box place =
          across ? Box{ui.x + float(i) * step, top, each, 56} : Box{ui.x, top + float(i) * step, each, 56};
      if (!ui.button_in(place, items[i].id, items[i].label, parts::Weight::plain, Icon::count, type::kLabel))
        continue;
      if (i == 0) session.pin();
      if (i == 1) session.go_to_pin();
      if (i == 2) session.unpin();
      session.view.panel = Panel::none;
      ui.wake_at(ui.now_s);
    }
    ui.close_group();
    ui.y = top + (across ? 64 : 2 * step + 64);
  }
}

}  // namespace gs::sheets
