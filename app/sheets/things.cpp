// The person's own things: kept from the open outing, put into it, renamed, thrown away.
#include <algorithm>

#include "app/platform/platform.h"
#include "app/sheets/sheets.h"
#include "core/outing/archive.h"
#include "core/outing/own_things.h"

namespace gs::sheets {

using look::Icon;
using mirror::Role;
using parts::Ui;
using parts::Weight;
namespace space = look::space;

namespace {

Icon icon_of(OwnGroup group) {
  constexpr Icon kIcons[] = {Icon::battery, Icon::radio, Icon::feed, Icon::antenna};
  return kIcons[std::min(std::size_t(group), std::size(kIcons) - 1)];
}

void thing_row(Ui& ui, std::size_t at) {
  Session& session = ui.session;
  const OwnThing thing = session.things()[at];  // copied: what is done may change the list
  const std::string id = "thing:" + std::to_string(at), summary = own_summary(thing, session.style());
  const std::string beside = summary == thing.name ? std::string(group_word(thing.group)) : summary;
  const bool open = session.view.unfolded == id;
  if (ui.row(id, thing.name, beside, beside, open ? 1 : 0, false)) {
    session.view.unfolded = open ? std::string{} : id;
    ui.wake_at(ui.now_s);
  }
  if (open) {
    Session* const keeper = &session;  // outlives every frame
    ui.gap();
    ui.text_field({.id = id + ":rename",
                   .label = "Name",
                   .value = thing.name,
                   .hint = {},
                   .most_chars = kMostNameChars,
                   .commit = [keeper, at](const std::string& name) { return keeper->rename_thing(at, name); }});
    ui.gap();
    const bool in_use = take_own(thing.group, thing.name, session.outing()).set == thing.set;
    if (ui.button(id + ":use", in_use ? "In use on this outing" : "Use on this outing", Weight::plain,
                  in_use ? Icon::check : Icon::count) &&
        !in_use)
      session.use_thing(at);
    ui.gap();
    if (ui.button(id + ":bin", "Throw away " + thing.name, Weight::plain, Icon::count)) {
      session.drop_thing(at);
      session.view.unfolded.clear();
      ui.wake_at(ui.now_s);
    }
    ui.gap();
  }
  ui.rule();
}

void group_of_things(Ui& ui, OwnGroup group) {
  Session& session = ui.session;
  const std::string key(group_key(group));
  ui.section(group_plural(group), "things:" + key);
  int count = 0;
  for (std::size_t i = 0; i < session.things().size(); ++i) {
    if (session.things()[i].group != group) continue;
    thing_row(ui, i);
    ++count;
  }
  if (count == 0) ui.paragraph("None kept yet.", "things:" + key + ":none", ui.theme.ink2);
  ui.gap();
  if (!has_own(group, session.outing())) {
    ui.paragraph("This outing says nothing of a " + std::string(group_word(group)) + " of its own.",
                 "things:" + key + ":nothing", ui.theme.ink2);
  } else {
    const OwnThing here = take_own(group, "", session.outing());
    const bool kept = std::any_of(session.things().begin(), session.things().end(),
                                  [&](const OwnThing& one) { return one.group == group && one.set == here.set; });
    if (kept) {
      ui.paragraph("The one on this outing is kept.", "things:" + key + ":kept", ui.theme.ink2);
    } else if (session.things_trouble().empty() &&
               ui.button("things:" + key + ":keep", "Keep this outing's " + std::string(group_word(group)),
                         Weight::plain, icon_of(group))) {
      const std::size_t before = session.things().size();
      session.keep_thing(group);
      if (session.things().size() > before) session.view.unfolded = "thing:" + std::to_string(before);
      ui.wake_at(ui.now_s);
    }
  }
  ui.gap(16);
}

}  // namespace

void things(Ui& ui) {
  Session& session = ui.session;
  const float left = ui.surface.x + ui.margin(), width = ui.surface.w - 2 * ui.margin(), top = ui.y;
  ui.open_group(Role::main, "main", "My own things", {ui.surface.x, top, ui.surface.w, ui.surface.bottom() - top});
  ui.begin_scroll("things", {ui.surface.x, top, ui.surface.w, ui.surface.bottom() - top});
  ui.column(left, width, ui.y + 12);
  ui.title("My own things", "sheet");
  ui.gap();
  ui.paragraph(
      "What you take on many outings. Keep it from one, use it on another; how warm the battery is, the power you "
      "choose "
      "and what was measured stay with the outing.",
      "things:words", ui.theme.ink);
  if (!session.things_trouble().empty()) {
    ui.gap();
    ui.paragraph(session.things_trouble(), "things:trouble", ui.theme.fails);
  }
  ui.gap(16);
  const bool two = width > 760;
  const float each = two ? (width - 40) / 2 : width, start = ui.y;
  ui.column(left, each, start);
  group_of_things(ui, OwnGroup::battery);
  group_of_things(ui, OwnGroup::radio);
  const float first_bottom = ui.y;
  if (two) ui.column(left + each + 40, each, start);
  group_of_things(ui, OwnGroup::cable);
  group_of_things(ui, OwnGroup::antenna);
  if (session.dropped_thing()) {
    if (ui.button("things:back", "Bring back " + session.dropped_thing()->name, Weight::plain, Icon::undo)) {
      session.bring_back_thing();
      ui.wake_at(ui.now_s);
    }
  }
  ui.y = std::max(ui.y, first_bottom) + 8;
  ui.column(left, width, ui.y);
  if (!session.things().empty() && ui.button("things:save", "Save them all as a file", Weight::plain, Icon::count))
    platform::save_file("my-own-things.json", write_things(session.things()));
  ui.gap();
  if (ui.button("things:open", "Add from a file", Weight::plain, Icon::count) && !platform::pick_file()) {
    session.notes.push_back("Drop the file onto this window.");
    ui.wake_at(ui.now_s);
  }
  ui.gap(24);
  ui.end_scroll();
  ui.close_group();
}

}  // namespace gs::sheets
